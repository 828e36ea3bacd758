import { useQuery, useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import { useLocation } from 'wouter'
import type { PartFile } from '../../../shared/model/part.ts'
import { call, messageOf } from '../../app/client.ts'
import { useNotice } from '../../app/notice.tsx'
import type { Units } from '../../app/queries.ts'
import { useUnits } from '../../app/units.ts'
import { Confirm } from '../../parts/Confirm.tsx'
import { Arrived } from '../../parts/desk/Arrived.tsx'
import { Desk, shelfPartAddress } from '../../parts/desk/Desk.tsx'
import { useDoing } from '../../parts/desk/useDoing.ts'
import { keyOfShelf } from '../../parts/editor/drafts.ts'
import { PartEditor, type Save } from '../../parts/editor/PartEditor.tsx'
import { useForgetShelf } from '../../parts/shelf/ask.ts'
import { ToBuild } from '../../parts/shelf/ToBuild.tsx'

/** A part of the shelf in its fields; a new one where none is named. */
export function ShelfPart({ id }: { readonly id: string | null }) {
  const [units, setUnits] = useUnits()
  const stored = useQuery({
    queryKey: ['shelf part', id],
    queryFn: () => call('shelf.read', { id: id ?? '' }),
    enabled: id !== null,
    staleTime: 0,
  })
  const title = id === null ? 'New part' : stored.data?.ok === true ? stored.data.value.part.name : 'Part'
  return (
    <Desk title={title} below="On the shelf" here="shelf" units={units} onUnits={setUnits}>
      {id === null ? (
        <Editing stored={null} units={units} />
      ) : (
        <Arrived of={stored} what="Reading the part">
          {({ part }) => <Editing stored={part} units={units} />}
        </Arrived>
      )}
    </Desk>
  )
}

function Editing({ stored, units }: { readonly stored: PartFile | null; readonly units: Units }) {
  const [, go] = useLocation()
  const tell = useNotice()
  const forget = useForgetShelf()
  const client = useQueryClient()
  const { busy, run } = useDoing()
  const [open, setOpen] = useState<'none' | 'to build' | 'remove'>('none')

  const save = async ({ part }: Save) => {
    try {
      const answer = await call('shelf.save', { part, replace: stored !== null })
      if (!answer.ok) return answer.problems.map((problem) => (problem.code === 'shelf.exists' ? { ...problem, place: 'id' } : problem))
      client.setQueryData(['shelf part', answer.value.id], { ok: true, value: { part } })
      await forget()
      tell(`${part.name} is on the shelf.`)
      if (stored === null) go(shelfPartAddress(answer.value.id), { replace: true })
      return []
    } catch (error) {
      return [{ code: 'window', place: '', sentence: messageOf(error) }]
    }
  }
  const duplicate = async (id: string) => {
    const done = await run(() => call('shelf.duplicate', { id }))
    if (done === null) return
    await forget()
    tell('Duplicated. This is the copy.')
    go(shelfPartAddress(done.part.id))
  }
  const remove = async (id: string) => {
    if ((await run(() => call('shelf.remove', { id }))) === null) return
    go('/shelf')
    await forget()
    tell('The part is off the shelf.')
  }
  return (
    <>
      <PartEditor place={keyOfShelf(stored?.id ?? null)} stored={stored} units={units} saving="Save to the shelf" onSave={save}>
        {stored !== null && (
          <div className="tools">
            <button type="button" className="button" disabled={busy} onClick={() => setOpen('to build')}>
              Add to a build…
            </button>
            <button type="button" className="button" disabled={busy} onClick={() => void duplicate(stored.id)}>
              Duplicate
            </button>
            <button type="button" className="button" disabled={busy} onClick={() => setOpen('remove')}>
              Delete…
            </button>
            <p className="quiet">
              Id in files: <code>{stored.id}</code>
            </p>
          </div>
        )}
      </PartEditor>
      {stored !== null && open === 'to build' && <ToBuild ids={[stored.id]} names={stored.name} onClose={() => setOpen('none')} />}
      {stored !== null && open === 'remove' && (
        <Confirm
          title={`Delete ${stored.name}?`}
          keep="Keep it"
          act="Delete"
          busy={busy}
          onClose={() => setOpen('none')}
          onAct={() => void remove(stored.id)}
        >
          <p>Copies in builds stay as they are.</p>
        </Confirm>
      )}
    </>
  )
}
