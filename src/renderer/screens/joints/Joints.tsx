import { useRef, useState } from 'react'
import { Link } from 'wouter'
import type { BuildFile } from '../../../shared/model/build.ts'
import { useBuildFile } from '../../app/build-file.ts'
import { type Units, useBuild } from '../../app/queries.ts'
import { useUnits } from '../../app/units.ts'
import { Confirm } from '../../parts/Confirm.tsx'
import { Arrived } from '../../parts/desk/Arrived.tsx'
import { Desk, partAddress, partsAddress } from '../../parts/desk/Desk.tsx'
import { type Act, useSteps } from '../../parts/desk/useSteps.ts'
import { type From, JoinSheet } from '../../parts/joints/JoinSheet.tsx'
import { JointCard } from '../../parts/joints/JointCard.tsx'
import { addJoint, type JointFile, jointBetween, leaveOpen, removeJoint, unjoinedEnds } from '../../parts/joints/steps.ts'

/** The joints of a build, each with its verdict as it stands, and the ends that wait for one. */
export function Joints({ id }: { readonly id: string }) {
  const read = useBuildFile(id)
  const file = read.data?.ok === true ? read.data.value.file : undefined
  const [units, setUnits] = useUnits(file?.build.units ?? 'inch')
  return (
    <Desk
      title="Joints"
      {...(file === undefined ? {} : { below: `${file.build.name} · revision ${file.build.revision}` })}
      here="joints"
      build={{ id, name: file?.build.name ?? 'Build' }}
      units={units}
      onUnits={setUnits}
    >
      <Arrived of={read} what="Reading the build">
        {(value) => <Shown file={value.file} id={id} revision={value.revision} units={units} />}
      </Arrived>
    </Desk>
  )
}

function Shown(props: { readonly file: BuildFile; readonly id: string; readonly revision: number; readonly units: Units }) {
  const { file, id, revision, units } = props
  const act = useSteps(id)
  const plan = useBuild(id, units)
  const planned = plan.data?.ok === true && plan.data.value.summary.revision === revision ? plan.data.value.findings : null
  const [from, setFrom] = useState<From | null>(null)
  const [apart, setApart] = useState<JointFile | null>(null)
  const [arrived, setArrived] = useState<string | null>(null)
  const [troubled, setTroubled] = useState(false)
  const findingsAt = (at: number) => planned?.filter((finding) => finding.about[0] === 'joints' && finding.about[1] === at) ?? null
  const troubles = file.joints.filter((_, at) => (findingsAt(at) ?? []).length > 0).length
  const unjoined = unjoinedEnds(file)
  const waiting = unjoined.filter(({ end }) => end.leftOpen !== true)
  const open = unjoined.filter(({ end }) => end.leftOpen === true)

  // the button that was pressed is gone with its line, so the focus goes to what heads the list
  const waitingHead = useRef<HTMLHeadingElement>(null)
  const jointsHead = useRef<HTMLHeadingElement>(null)
  const actOnEnds: Act = async (step, said) => {
    const done = await act(step, said)
    if (done) waitingHead.current?.focus()
    return done
  }
  return (
    <div className="work joints-page">
      <section aria-labelledby="waiting" className="waiting-ends">
        <h2 id="waiting" ref={waitingHead} tabIndex={-1}>
          Ends that wait <span className="count">{waiting.length}</span>
        </h2>
        {file.parts.length === 0 && (
          <p>
            This build has no parts yet. <Link href={partsAddress(id)}>Add some first.</Link>
          </p>
        )}
        {waiting.length === 0 ? (
          <p>Every end is joined or left open on purpose.</p>
        ) : (
          <ul className="plain ends-waiting">
            {waiting.map(({ part, end, ref }) => (
              <li key={ref}>
                <span>
                  <Link href={partAddress(id, part.id)}>{part.name}</Link>, {end.name}
                  <code className="second">{end.connection}</code>
                </span>
                <span className="row-tools">
                  <button
                    type="button"
                    className="button button-small"
                    aria-haspopup="dialog"
                    onClick={() => setFrom({ ref, part: part.name, end: end.name, connection: end.connection })}
                  >
                    Join…<span className="unseen">{` ${part.name}, ${end.name}`}</span>
                  </button>
                  <button
                    type="button"
                    className="button button-small"
                    onClick={() => void actOnEnds(leaveOpen(part.id, end.name, true), `${part.name}, ${end.name}: left open on purpose.`)}
                  >
                    Leave open<span className="unseen">{` ${part.name}, ${end.name}`}</span>
                  </button>
                </span>
              </li>
            ))}
          </ul>
        )}
        {open.length > 0 && (
          <details>
            <summary>{open.length === 1 ? 'One end is' : `${open.length} ends are`} left open on purpose</summary>
            <ul className="plain ends-waiting">
              {open.map(({ part, end, ref }) => (
                <li key={ref}>
                  <span>
                    {part.name}, {end.name}
                    <code className="second">{end.connection}</code>
                  </span>
                  <button
                    type="button"
                    className="button button-small"
                    onClick={() => void actOnEnds(leaveOpen(part.id, end.name, false), `${part.name}, ${end.name} waits for a joint.`)}
                  >
                    Not open<span className="unseen">{` ${part.name}, ${end.name}`}</span>
                  </button>
                </li>
              ))}
            </ul>
          </details>
        )}
      </section>
      <section aria-labelledby="joints" className="joints">
        <h2 id="joints" ref={jointsHead} tabIndex={-1}>
          Joints <span className="count">{file.joints.length}</span>
        </h2>
        {(troubles > 0 || troubled) && (
          <label className="tickable">
            <input type="checkbox" checked={troubled} onChange={(event) => setTroubled(event.target.checked)} />
            only the {troubles} with something to put right
          </label>
        )}
        {file.joints.length === 0 && <p>None yet. Pick an end that waits, and see what goes on it.</p>}
        <ol className="plain">
          {file.joints.map((joint, at) => {
            const findings = findingsAt(at)
            if (troubled && findings?.length === 0) return null
            return (
              <JointCard
                key={joint.id}
                build={id}
                file={file}
                joint={joint}
                number={at + 1}
                units={units}
                findings={findings}
                arrived={arrived === joint.id}
                onStep={act}
                onGone={() => jointsHead.current?.focus()}
                onRemove={() => setApart(joint)}
              />
            )
          })}
        </ol>
      </section>
      {from !== null && (
        <JoinSheet
          build={id}
          revision={revision}
          from={from}
          units={units}
          onClose={() => setFrom(null)}
          onJoin={async (to, aids) => {
            const named = jointBetween(file, from.ref, to, aids).id
            const done = await act(addJoint(from.ref, to, aids), 'Joined.')
            setFrom(null)
            if (done) setArrived(named)
          }}
        />
      )}
      {apart !== null && (
        <Confirm
          title="Take this joint apart?"
          keep="Keep it"
          act="Take it apart"
          onClose={() => setApart(null)}
          onAct={() => {
            setApart(null)
            void actOnEnds(removeJoint(apart.id), 'Taken apart.')
          }}
        >
          <p>
            {apart.name ?? `${apart.a} with ${apart.b}`}: both ends wait again. {apart.note !== undefined && 'Its note goes with it.'}
          </p>
        </Confirm>
      )}
    </div>
  )
}
