import { useEffect, useRef, useState } from 'react'
import { Link } from 'wouter'
import type { BuildFile } from '../../../shared/model/build.ts'
import type { FindingText } from '../../../shared/report/document.ts'
import { useVerdict } from '../../app/asking.ts'
import type { Units } from '../../app/queries.ts'
import { Arrived } from '../desk/Arrived.tsx'
import { partAddress } from '../desk/Desk.tsx'
import type { Act } from '../desk/useSteps.ts'
import { keyed } from '../keyed.ts'
import { Aids } from './Aids.tsx'
import { endAt, type JointFile, toggleAid } from './steps.ts'
import { VerdictView } from './VerdictView.tsx'
import { WayAcross } from './WayAcross.tsx'

/** A joint: its two ends as typed, the verdict on them now, what goes with it, and the way across where they do not meet. */
export function JointCard(props: {
  readonly build: string
  readonly file: BuildFile
  readonly joint: JointFile
  readonly number: number
  readonly units: Units
  /** what the plan says about this joint; null while the plan is on its way */
  readonly findings: readonly FindingText[] | null
  readonly arrived: boolean
  readonly onStep: Act
  /** the joint is there no more, others are */
  readonly onGone: () => void
  readonly onRemove: () => void
}) {
  const { file, joint, units, findings } = props
  const [a, b] = [endAt(file, joint.a), endAt(file, joint.b)]
  const verdict = useVerdict(a?.end.connection ?? '', b?.end.connection ?? '', units)
  const [seeking, setSeeking] = useState(false)
  const heading = useRef<HTMLHeadingElement>(null)
  const { arrived } = props
  useEffect(() => {
    if (!arrived) return
    heading.current?.focus({ preventScroll: true })
    heading.current?.scrollIntoView({ block: 'center' })
  }, [arrived])
  if (a === undefined || b === undefined) return null
  const called = joint.name ?? `${a.part.name} with ${b.part.name}`
  const kind = verdict.data?.ok === true ? verdict.data.value.kind : null
  const apart = kind === 'does not fit' || kind === 'goes together and is wrong'
  const unmet = findings?.some((finding) => finding.about[2] === 'with') ?? true
  return (
    <li className="joint">
      <article aria-labelledby={`joint-${joint.id}`}>
        <header>
          <h3 id={`joint-${joint.id}`} ref={heading} tabIndex={-1}>
            {props.number} {called}
          </h3>
          <button type="button" className="button button-small button-danger" onClick={props.onRemove}>
            Take apart…<span className="unseen"> {called}</span>
          </button>
        </header>
        <dl className="joint-ends">
          {[a, b].map(({ part, end }) => (
            <div key={`${part.id}/${end.name}`}>
              <dt>
                <Link href={partAddress(props.build, part.id)}>{part.name}</Link>, {end.name}
              </dt>
              <dd>
                <code>{end.connection}</code>
              </dd>
            </div>
          ))}
        </dl>
        <Arrived of={verdict} what="Judging">
          {(value) => <VerdictView verdict={value} asJoined={!unmet} />}
        </Arrived>
        {findings !== null && findings.length > 0 && (
          <ul className="plain joint-findings">
            {keyed(findings, (finding) => finding.title).map(({ key, item }) => (
              <li key={key}>{item.todo}</li>
            ))}
          </ul>
        )}
        <details className="joint-aids" open={kind === 'fits if' && unmet && findings !== null}>
          <summary>
            What goes with it<span className="unseen"> ({called})</span>: {joint.with?.join(', ') ?? 'nothing named'}
          </summary>
          <Aids
            legend={`Named on ${called}`}
            chosen={joint.with ?? []}
            onToggle={(aid) => props.onStep(toggleAid(joint.id, aid), `${called}: ${aid} changed.`)}
          />
        </details>
        {apart &&
          (seeking ? (
            <WayAcross
              file={file}
              joint={joint}
              called={called}
              a={a.end.connection}
              b={b.end.connection}
              units={units}
              onStep={props.onStep}
              onGone={props.onGone}
              onChanged={() => heading.current?.focus()}
            />
          ) : (
            <p>
              <button type="button" className="button button-strong" onClick={() => setSeeking(true)}>
                Find a way across<span className="unseen"> for {called}</span>
              </button>
            </p>
          ))}
      </article>
    </li>
  )
}
