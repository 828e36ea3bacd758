import { useCallback, useMemo, useRef, useState } from 'react'
import { Link, useLocation } from 'wouter'
import type { ShelfRow } from '../../../shared/contract/contract.ts'
import { call } from '../../app/client.ts'
import { keep } from '../../app/download.ts'
import { useNotice } from '../../app/notice.tsx'
import { useUnits } from '../../app/units.ts'
import { Confirm } from '../../parts/Confirm.tsx'
import { Desk, shelfPartAddress } from '../../parts/desk/Desk.tsx'
import { useDoing } from '../../parts/desk/useDoing.ts'
import { keyOfShelf, useDrafts } from '../../parts/editor/drafts.ts'
import { type Ask, useForgetShelf } from '../../parts/shelf/ask.ts'
import { CsvImport, type Table } from '../../parts/shelf/CsvImport.tsx'
import { ShelfBar } from '../../parts/shelf/ShelfBar.tsx'
import { type Found, ShelfGrid } from '../../parts/shelf/ShelfGrid.tsx'
import { ToBuild } from '../../parts/shelf/ToBuild.tsx'

/** The question last asked, so that the shelf is found as it was left. */
let lastAsk: Ask = { query: '', sort: 'name' }

/** The same bound as the contract's. */
const LARGEST = 30_000_000

type Open =
  | { readonly kind: 'none' }
  | { readonly kind: 'table'; readonly table: Table }
  | { readonly kind: 'to build' }
  | { readonly kind: 'remove' }

/** The parts the user has or knows: looked through, marked, copied into builds, brought in and given out as tables. */
export function Shelf() {
  const [units, setUnits] = useUnits()
  const [ask, setAsk] = useState(lastAsk)
  const [found, setFound] = useState<Found>({ total: null, refused: null })
  const [active, setActive] = useState<ShelfRow | undefined>(undefined)
  const [marked, setMarked] = useState<ReadonlyMap<string, string>>(new Map())
  const [open, setOpen] = useState<Open>({ kind: 'none' })
  const [, go] = useLocation()
  const tell = useNotice()
  const forget = useForgetShelf()
  const { busy, run } = useDoing()
  const search = useRef<HTMLInputElement>(null)
  const box = useRef<HTMLTableElement>(null)
  const picker = useRef<HTMLInputElement>(null)
  const newDraft = useDrafts().get(keyOfShelf(null))

  const change = (next: Ask) => {
    lastAsk = next
    setAsk(next)
  }
  const close = useCallback(() => setOpen({ kind: 'none' }), [])
  const mark = (id: string, name: string) =>
    setMarked((now) => {
      const next = new Map(now)
      if (!next.delete(id)) next.set(id, name)
      return next
    })
  const chosen = useMemo(
    () => (marked.size > 0 ? [...marked] : active === undefined ? [] : [[active.id, active.name] as const]),
    [marked, active],
  )
  const said = chosen.length === 1 ? (chosen[0]?.[1] ?? '') : `${chosen.length} parts`

  const duplicate = async (row: { readonly id: string }) => {
    const done = await run(() => call('shelf.duplicate', { id: row.id }))
    if (done === null) return
    await forget()
    tell('Duplicated. This is the copy.')
    go(shelfPartAddress(done.part.id))
  }
  const remove = async () => {
    for (const [id] of chosen) if ((await run(() => call('shelf.remove', { id }))) === null) break
    setMarked(new Map())
    close()
    await forget()
    tell(`${said} ${chosen.length === 1 ? 'is' : 'are'} off the shelf.`)
  }
  const take = async (file: File) => {
    if (file.size > LARGEST) return tell('The file is larger than 30 MB. It was not read.', 'trouble')
    const text = await file.text()
    const tried = await run(() => call('shelf.importCsv', { text, dryRun: true }))
    if (tried !== null) setOpen({ kind: 'table', table: { from: file.name, text, tried } })
  }
  const give = async () => {
    const file = await run(() => call('shelf.exportCsv', {}))
    if (file !== null) tell(await keep(file))
  }

  const none = chosen.length === 0
  return (
    <Desk title="Shelf" below="Parts you have or know, whatever build they may go into" here="shelf" units={units} onUnits={setUnits}>
      <div className="shelf-page">
        <div className="tools">
          <Link href="/shelf/new" className="button button-strong">
            {newDraft === undefined ? 'New part' : 'Go on with the new part'}
          </Link>
          <button type="button" className="button" disabled={none || busy} onClick={() => setOpen({ kind: 'to build' })}>
            Add to a build…
          </button>
          <button
            type="button"
            className="button"
            disabled={active === undefined || busy}
            onClick={() => active !== undefined && void duplicate(active)}
          >
            Duplicate
          </button>
          <button type="button" className="button" disabled={none || busy} onClick={() => setOpen({ kind: 'remove' })}>
            Delete…
          </button>
          <span className="tools-gap" />
          <button type="button" className="button" disabled={busy} onClick={() => picker.current?.click()}>
            Import a table…
          </button>
          <button type="button" className="button" disabled={busy} onClick={() => void give()}>
            Export as a table
          </button>
          <input
            ref={picker}
            type="file"
            hidden
            aria-label="Table of parts"
            accept=".csv,text/csv"
            onChange={(event) => {
              const [file] = event.target.files ?? []
              if (file !== undefined) void take(file)
              event.target.value = ''
            }}
          />
        </div>
        <ShelfBar ask={ask} search={search} onChange={change} onLeave={() => box.current?.focus()} />
        <p className="shelf-count" role="status">
          {found.refused !== null ? found.refused : countOf(found.total, ask)}
          {marked.size > 0 && ` · ${marked.size} marked`}
        </p>
        <ShelfGrid
          ask={ask}
          box={box}
          marked={marked}
          onMark={mark}
          onActive={setActive}
          onFound={setFound}
          keys={{
            open: (row) => go(shelfPartAddress(row.id)),
            duplicate: (row) => void duplicate(row),
            remove: () => setOpen({ kind: 'remove' }),
            search: () => search.current?.focus(),
            add: () => go('/shelf/new'),
          }}
        />
        <p className="quiet shelf-keys">
          On the list: arrows move, Enter opens, Space marks, <kbd>/</kbd> searches, <kbd>n</kbd> begins a new part, <kbd>Ctrl</kbd>+
          <kbd>D</kbd> duplicates, <kbd>Delete</kbd> deletes.
        </p>
      </div>
      {open.kind === 'table' && <CsvImport table={open.table} onClose={close} />}
      {open.kind === 'to build' && <ToBuild ids={chosen.map(([id]) => id)} names={said} onClose={close} />}
      {open.kind === 'remove' && (
        <Confirm title={`Delete ${said}?`} keep="Keep it" act="Delete" busy={busy} onClose={close} onAct={() => void remove()}>
          <p>Copies in builds stay as they are.</p>
        </Confirm>
      )}
    </Desk>
  )
}

function countOf(total: number | null, ask: Ask): string {
  if (total === null) return ''
  const filtered = ask.query.trim() !== '' || ask.kinds !== undefined || ask.states !== undefined || ask.families !== undefined
  const parts = `${total} ${total === 1 ? 'part' : 'parts'}`
  if (total === 0) return filtered ? 'No part is like that.' : 'Nothing on the shelf yet: write a new part, or import a table.'
  return filtered ? `${parts} found` : parts
}
