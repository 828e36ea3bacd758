import type { FindingText } from '../../../shared/report/document.ts'
import { GoThere } from '../GoThere.tsx'
import { StateTag } from '../Mark.tsx'
import { NumberButton } from '../NumberButton.tsx'
import { useNumbers } from '../working/WorkingProvider.tsx'

/** One judgement in full: what, about what, the evidence, why it matters and what to do. */
export function Finding({ finding }: { readonly finding: FindingText }) {
  return (
    <article className={`finding state-${finding.severity}`}>
      <header>
        <StateTag state={finding.severity} />
        <h3>{finding.title}</h3>
        {finding.aboutText !== '' && <p className="quiet">{finding.aboutText}</p>}
      </header>
      <FindingDetail finding={finding} />
    </article>
  )
}

/** The finding without its heading. */
export function FindingDetail({ finding }: { readonly finding: FindingText }) {
  const numbers = useNumbers()
  const named = finding.numbers.flatMap((id) => numbers.find(id) ?? [])
  return (
    <dl className="finding-detail">
      {finding.evidence.length > 0 && (
        <div>
          <dt>Found</dt>
          <dd>
            <ul className="evidence">
              {finding.evidence.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </dd>
        </div>
      )}
      {finding.why !== '' && (
        <div>
          <dt>Why</dt>
          <dd>{finding.why}</dd>
        </div>
      )}
      {finding.todo !== '' && (
        <div>
          <dt>Do</dt>
          <dd>
            <span className="todo">{finding.todo}</span> <GoThere finding={finding} />
          </dd>
        </div>
      )}
      {named.length > 0 && (
        <div>
          <dt>Rests on</dt>
          <dd>
            <ul className="rests-on">
              {named.map((number) => (
                <li key={number.id}>
                  {number.label} <NumberButton id={number.id}>{number.value}</NumberButton>
                </li>
              ))}
            </ul>
          </dd>
        </div>
      )}
    </dl>
  )
}
