import type { VerdictText } from '../../../shared/contract/contract.ts'
import { keyed } from '../keyed.ts'
import { StateTag } from '../Mark.tsx'

/** A verdict in full: shape and word, why, on which conditions, what to measure, and what the rule rests on. */
export function VerdictView({ verdict, asJoined }: { readonly verdict: VerdictText; readonly asJoined?: boolean }) {
  const met = asJoined === true && verdict.kind === 'fits if'
  return (
    <div className={`verdict state-${met ? 'good' : verdict.state}`}>
      <p className="verdict-word">
        {met ? <StateTag state="good" text="fits, as joined" /> : <StateTag state={verdict.state} text={verdict.word} />}
      </p>
      <Lines items={verdict.reasons} />
      {verdict.conditions.length > 0 && (
        <div>
          <p className="verdict-head">{met ? 'Named on the joint' : 'It needs'}</p>
          <Lines items={verdict.conditions} />
        </div>
      )}
      {verdict.measure.length > 0 && (
        <div>
          <p className="verdict-head">Measure first</p>
          <Lines items={verdict.measure} />
        </div>
      )}
      {verdict.sources.length > 0 && (
        <details className="verdict-sources">
          <summary>what this rests on</summary>
          <Lines items={verdict.sources.map((source) => `${source.cites} (${source.mark})`)} />
        </details>
      )}
    </div>
  )
}

function Lines({ items }: { readonly items: readonly string[] }) {
  if (items.length === 0) return null
  return (
    <ul className="plain">
      {keyed(items, (item) => item).map(({ key, item }) => (
        <li key={key}>{item}</li>
      ))}
    </ul>
  )
}
