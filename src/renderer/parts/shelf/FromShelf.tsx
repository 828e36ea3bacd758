import { useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { call } from '../../app/client.ts'
import { useSettled } from '../../app/later.ts'
import { useNotice } from '../../app/notice.tsx'
import { useDoing } from '../desk/useDoing.ts'
import { FieldShell } from '../fields/FieldShell.tsx'
import { Scroller } from '../Scroller.tsx'
import { Sheet } from '../Sheet.tsx'
import { usePages } from './ask.ts'

/** Rows shown at most; who wants another searches. */
const MOST = 40

/** Looks along the shelf and copies parts into a build, one or many. */
export function FromShelf(props: { readonly build: string; readonly revision: number; readonly onClose: () => void }) {
  const [query, setQuery] = useState('')
  const [picked, setPicked] = useState<ReadonlyMap<string, string>>(new Map())
  const { total, refused, rowAt } = usePages({ query: useSettled(query, 80), sort: 'name' }, 0, MOST - 1)
  const { busy, run } = useDoing()
  const client = useQueryClient()
  const tell = useNotice()
  const rows = Array.from({ length: Math.min(MOST, total ?? 0) }, (_, at) => rowAt(at)).filter((row) => row !== undefined)
  const toggle = (id: string, name: string) =>
    setPicked((now) => {
      const next = new Map(now)
      if (!next.delete(id)) next.set(id, name)
      return next
    })
  const add = async () => {
    const done = await run(() => call('shelf.toBuild', { ids: [...picked.keys()], build: props.build, basedOn: props.revision }))
    await client.invalidateQueries()
    if (done === null) return
    tell(picked.size === 1 ? `${[...picked.values()][0]} is in the build.` : `${picked.size} parts are in the build.`)
    props.onClose()
  }
  return (
    <Sheet title="Add from the shelf" wide onClose={props.onClose}>
      <FieldShell label="Search the shelf" hint="name, number, supplier or end">
        {({ id, describedBy }) => (
          <input
            id={id}
            type="search"
            autoComplete="off"
            spellCheck={false}
            maxLength={200}
            aria-describedby={describedBy}
            value={query}
            onChange={(event) => setQuery(event.target.value)}
          />
        )}
      </FieldShell>
      <p role="status" className="quiet">
        {refused ?? (total === null ? '' : total === 0 ? 'No part is like that.' : `${total} ${total === 1 ? 'part' : 'parts'}`)}
        {total !== null && total > MOST && `, the first ${MOST} shown`}
      </p>
      <Scroller label="Parts on the shelf" className="pick-list">
        <ul className="choices">
          {rows.map((row) => (
            <li key={row.id}>
              <label className="choice">
                <input type="checkbox" checked={picked.has(row.id)} onChange={() => toggle(row.id, row.name)} />
                <span className="choice-text">
                  <span>{row.name}</span>
                  <span className="quiet">
                    {row.kind} · {row.ends.map((end) => end.connection).join(' · ') || 'no ends'}
                  </span>
                </span>
              </label>
            </li>
          ))}
        </ul>
      </Scroller>
      <div className="sheet-foot">
        <Button className="button button-strong" isDisabled={busy || picked.size === 0} onPress={() => void add()}>
          {picked.size === 0 ? 'Put into the build' : `Put ${picked.size} into the build`}
        </Button>
        <Button className="button" onPress={props.onClose}>
          Close
        </Button>
      </div>
    </Sheet>
  )
}
