import { useEnd } from '../../app/asking.ts'
import type { Units } from '../../app/queries.ts'

/** An end as the program understands it, in words, with its facts to open. Nothing while it is not understood. */
export function EndReading({ typed, units }: { readonly typed: string; readonly units: Units }) {
  const read = useEnd(typed, units)
  if (typed.trim() === '' || read.data?.ok !== true) return null
  const { line, facts } = read.data.value
  return (
    <div className="understood">
      <p>
        <span className="understood-word">understood as</span> {line}
      </p>
      {facts.length > 0 && (
        <details>
          <summary>
            what that means<span className="unseen"> for {line}</span>
          </summary>
          <dl className="facts">
            {facts.map((fact) => (
              <div key={fact.label}>
                <dt>{fact.label}</dt>
                <dd>{fact.value}</dd>
              </div>
            ))}
          </dl>
        </details>
      )}
    </div>
  )
}
