import { useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import { Link } from 'wouter'
import type { BuildFile } from '../../../shared/model/build.ts'
import type { PartFile } from '../../../shared/model/part.ts'
import { useBuildFile } from '../../app/build-file.ts'
import { call } from '../../app/client.ts'
import { useNotice } from '../../app/notice.tsx'
import { useUnits } from '../../app/units.ts'
import { Confirm } from '../../parts/Confirm.tsx'
import { Arrived } from '../../parts/desk/Arrived.tsx'
import { Desk, jointsAddress, partAddress, partsAddress } from '../../parts/desk/Desk.tsx'
import { useDoing } from '../../parts/desk/useDoing.ts'
import { useSteps } from '../../parts/desk/useSteps.ts'
import { keyOfBuild, useDrafts } from '../../parts/editor/drafts.ts'
import { StateSelect } from '../../parts/fields/StateSelect.tsx'
import { changePart, jointsOf, removePart } from '../../parts/joints/steps.ts'
import { Scroller } from '../../parts/Scroller.tsx'
import { forgetShelf } from '../../parts/shelf/ask.ts'
import { FromShelf } from '../../parts/shelf/FromShelf.tsx'

/** The parts of a build: taken from the shelf or written by hand, with how far each has come. */
export function BuildParts({ id }: { readonly id: string }) {
  const read = useBuildFile(id)
  const file = read.data?.ok === true ? read.data.value.file : undefined
  const [units, setUnits] = useUnits(file?.build.units ?? 'inch')
  return (
    <Desk
      title="Parts"
      {...(file === undefined ? {} : { below: `${file.build.name} · revision ${file.build.revision}` })}
      here="parts"
      build={{ id, name: file?.build.name ?? 'Build' }}
      units={units}
      onUnits={setUnits}
    >
      <Arrived of={read} what="Reading the build">
        {(value) => <Shown file={value.file} id={id} revision={value.revision} />}
      </Arrived>
    </Desk>
  )
}

function Shown({ file, id, revision }: { readonly file: BuildFile; readonly id: string; readonly revision: number }) {
  const act = useSteps(id)
  const client = useQueryClient()
  const tell = useNotice()
  const { busy, run } = useDoing()
  const [removing, setRemoving] = useState<PartFile | null>(null)
  const [taking, setTaking] = useState(false)
  const drafts = useDrafts()

  const toShelf = async (part: PartFile) => {
    const done = await run(() => call('shelf.fromBuild', { build: id, ids: [part.id] }))
    if (done === null) return
    await forgetShelf(client)
    tell(`${part.name} is on the shelf, too.`)
  }
  const going = removing === null ? [] : jointsOf(file, removing.id)
  return (
    <div className="work">
      <div className="tools">
        <Link href={`${partsAddress(id)}/new`} className="button button-strong">
          {drafts.has(keyOfBuild(id, null)) ? 'Go on with the new part' : 'New part'}
        </Link>
        <button type="button" className="button" onClick={() => setTaking(true)}>
          Add from the shelf…
        </button>
        <Link href={jointsAddress(id)} className="button">
          Joints
        </Link>
      </div>
      {file.parts.length === 0 ? (
        <p>No parts yet. Take them from the shelf, or write them by hand; then join their ends.</p>
      ) : (
        <Scroller label="Parts of the build" className="work-table">
          <table className="grid">
            <caption className="unseen">Parts of the build</caption>
            <thead>
              <tr>
                <th scope="col">Part</th>
                <th scope="col">Kind</th>
                <th scope="col">Ends</th>
                <th scope="col" className="align-right">
                  Price
                </th>
                <th scope="col">State</th>
                <th scope="col">
                  <span className="unseen">What to do with it</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {file.parts.map((part) => (
                <tr key={part.id}>
                  <th scope="row">
                    <Link href={partAddress(id, part.id)}>{part.name}</Link>
                    {(part.quantity ?? 1) > 1 && <span className="second">{part.quantity} of them</span>}
                    {drafts.has(keyOfBuild(id, part.id)) && <span className="second">with changes not saved yet</span>}
                  </th>
                  <td>{part.kind}</td>
                  <td>
                    <ul className="plain">
                      {part.ends.map((end) => (
                        <li key={end.name}>
                          <span className="quiet">{end.name}</span> {end.connection}
                        </li>
                      ))}
                    </ul>
                  </td>
                  <td className="align-right">{part.price}</td>
                  <td>
                    <StateSelect
                      label={`State of ${part.name}`}
                      state={part.state}
                      onChoose={(state) =>
                        act(
                          changePart(part.id, (one) => ({ ...one, state })),
                          `${part.name}: ${state}.`,
                        )
                      }
                    />
                  </td>
                  <td>
                    <span className="row-tools">
                      <button type="button" className="button button-small" disabled={busy} onClick={() => void toShelf(part)}>
                        To the shelf<span className="unseen"> goes {part.name}</span>
                      </button>
                      <button type="button" className="button button-small button-danger" onClick={() => setRemoving(part)}>
                        Remove…<span className="unseen"> {part.name}</span>
                      </button>
                    </span>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroller>
      )}
      {taking && <FromShelf build={id} revision={revision} onClose={() => setTaking(false)} />}
      {removing !== null && (
        <Confirm
          title={`Remove ${removing.name}?`}
          keep="Keep it"
          act="Remove"
          onClose={() => setRemoving(null)}
          onAct={() => {
            setRemoving(null)
            void act(removePart(removing.id), `${removing.name} is out of the build.`).then(() => document.getElementById('desk')?.focus())
          }}
        >
          {going.length === 0 ? (
            <p>No joint holds it.</p>
          ) : (
            <>
              <p>
                {going.length === 1 ? 'One joint goes' : `${going.length} joints go`} with it, and out of the torques and tasks that name
                it:
              </p>
              <ul className="list">
                {going.map((joint) => (
                  <li key={joint.id}>{joint.name ?? `${joint.a} with ${joint.b}`}</li>
                ))}
              </ul>
            </>
          )}
        </Confirm>
      )}
    </div>
  )
}
