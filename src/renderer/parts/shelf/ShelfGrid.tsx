import { useVirtualizer } from '@tanstack/react-virtual'
import { type KeyboardEvent, type RefObject, useEffect, useRef, useState } from 'react'
import type { ShelfRow } from '../../../shared/contract/contract.ts'
import { type Ask, usePages } from './ask.ts'
import { Cells, COLUMNS } from './ShelfCells.tsx'

const rem = (): number => Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16
/** Height of every row, rem, as style/shelf.css has it: measuring each would cost more than drawing it. */
const ROW = 3.5

/** A table that is a grid, as ARIA in HTML allows: one stop for Tab, and the arrows move along its rows. */
const grid = (count: number, active: number | null) =>
  ({
    role: 'grid',
    tabIndex: 0,
    'aria-multiselectable': true,
    'aria-rowcount': count + 1,
    'aria-activedescendant': active === null ? undefined : `shelf-row-${active}`,
  }) as const

/** What the keyboard does on a row. */
export interface RowKeys {
  readonly open: (row: ShelfRow) => void
  readonly duplicate: (row: ShelfRow) => void
  readonly remove: () => void
  readonly search: () => void
  readonly add: () => void
}

/** How the answer to the question stands. */
export interface Found {
  /** null until the first answer */
  readonly total: number | null
  readonly refused: string | null
}

/**
 * The shelf as a table of which only the rows in sight are there, however many there are. One stop for Tab; arrows, Page and
 * Home/End move along the rows, Enter opens one, Space marks it.
 */
export function ShelfGrid(props: {
  readonly ask: Ask
  readonly box: RefObject<HTMLTableElement | null>
  readonly marked: ReadonlyMap<string, string>
  readonly onMark: (id: string, name: string) => void
  readonly onActive: (row: ShelfRow | undefined) => void
  readonly onFound: (found: Found) => void
  readonly keys: RowKeys
}) {
  const { ask, marked, onActive, onFound } = props
  const [scroller, setScroller] = useState<HTMLDivElement | null>(null)
  const [count, setCount] = useState(0)
  // another question begins at its first answer
  const question = JSON.stringify(ask)
  const [at, setAt] = useState({ question, active: 0 })
  const active = at.question === question ? at.active : 0
  const asked = useRef(question)
  useEffect(() => {
    if (asked.current === question) return
    asked.current = question
    scroller?.scrollTo({ top: 0 })
  }, [question, scroller])
  const [height] = useState(() => ROW * rem())
  const virtual = useVirtualizer({
    count,
    getScrollElement: () => scroller,
    estimateSize: () => height,
    overscan: 8,
  })
  const shown = virtual.getVirtualItems()
  const pages = usePages(ask, shown[0]?.index ?? 0, shown.at(-1)?.index ?? 0, active)
  const { total, refused } = pages
  useEffect(() => {
    if (total !== null) setCount(total)
    onFound({ total, refused })
  }, [total, refused, onFound])
  const activeRow = pages.rowAt(active)
  useEffect(() => onActive(activeRow), [activeRow, onActive])

  const go = (to: number) => {
    const next = Math.max(0, Math.min(count - 1, to))
    setAt({ question, active: next })
    virtual.scrollToIndex(next)
  }
  const page = Math.max(1, Math.floor((scroller?.clientHeight ?? 0) / height) - 1)
  const onKeyDown = (event: KeyboardEvent) => {
    const does = actionOf(event, { go, active, count, page, row: activeRow, onMark: props.onMark, keys: props.keys })
    if (does === null) return
    event.preventDefault()
    does()
  }
  const inSight = shown.some((item) => item.index === active)
  const before = shown[0]?.start ?? 0
  const after = virtual.getTotalSize() - (shown.at(-1)?.end ?? 0)
  return (
    <div ref={setScroller} className="shelf-scroll">
      <table
        ref={props.box}
        {...grid(count, inSight ? active : null)}
        className="shelf"
        aria-label="Parts on the shelf"
        // room for the rows that are not there; the head stays in sight all the same, since it sticks
        style={{ marginTop: before, marginBottom: after }}
        onKeyDown={onKeyDown}
      >
        <thead>
          <tr aria-rowindex={1}>
            {COLUMNS.map(({ title, name }) => (
              <th key={name} scope="col" className={`shelf-${name}`}>
                {title === '' ? <span className="unseen">Marked</span> : title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {shown.map((item) => {
            const row = pages.rowAt(item.index)
            return (
              <tr
                key={item.key}
                id={`shelf-row-${item.index}`}
                data-active={item.index === active}
                aria-rowindex={item.index + 2}
                aria-selected={row !== undefined && marked.has(row.id)}
                onClick={() => setAt({ question, active: item.index })}
                onDoubleClick={() => row !== undefined && props.keys.open(row)}
              >
                <Cells row={row} marked={row !== undefined && marked.has(row.id)} onMark={props.onMark} />
              </tr>
            )
          })}
        </tbody>
      </table>
    </div>
  )
}

interface Moves {
  readonly go: (to: number) => void
  readonly active: number
  readonly count: number
  readonly page: number
  readonly row: ShelfRow | undefined
  readonly onMark: (id: string, name: string) => void
  readonly keys: RowKeys
}

/** What a key does on the list; null where it does nothing of its own. Letters alone count only here, where no text is typed. */
function actionOf(event: KeyboardEvent, { go, active, count, page, row, onMark, keys }: Moves): (() => void) | null {
  if (event.altKey) return null
  if (event.ctrlKey || event.metaKey) return event.key.toLowerCase() === 'd' && row !== undefined ? () => keys.duplicate(row) : null
  switch (event.key) {
    case 'ArrowDown':
      return () => go(active + 1)
    case 'ArrowUp':
      return () => go(active - 1)
    case 'PageDown':
      return () => go(active + page)
    case 'PageUp':
      return () => go(active - page)
    case 'Home':
      return () => go(0)
    case 'End':
      return () => go(count - 1)
    case 'Enter':
      return row === undefined ? null : () => keys.open(row)
    case ' ':
      return row === undefined ? null : () => onMark(row.id, row.name)
    case 'Delete':
      return row === undefined ? null : keys.remove
    case '/':
      return keys.search
    case 'n':
      return keys.add
    default:
      return null
  }
}
