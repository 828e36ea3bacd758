import type { LedgerSide } from '../../../shared/report/live/ledger.ts'
import type { LiveSteering } from '../../../shared/report/live/steering.ts'
import { Mark, StateTag } from '../Mark.tsx'

/** Who stops the wheels on each side, in order, each lighting up by shape and word as the picture comes to it. */
export function LiveLedger({ live, sides }: { readonly live: LiveSteering; readonly sides: readonly LedgerSide[] }) {
  return (
    <div className="ledger">
      {sides.map(({ side, stops, margin, chance }) => (
        <section key={side} aria-label={`Limits to the ${side}`}>
          <h3>To the {side}</h3>
          {stops.length > 0 && (
            <ol className="ledger-list">
              {live.limits
                .filter((limit) => limit.side === side)
                .map((limit) => (
                  <li key={limit.key} className={`limit state-${limit.state}`} data-limit={limit.key} data-state={limit.state}>
                    <Mark state={limit.state} />
                    <span className="limit-what">
                      <span className="limit-letter" aria-hidden="true">
                        {limit.letter}
                      </span>{' '}
                      {limit.what}
                    </span>
                    <span className="limit-travel">{limit.travel}</span>
                    <span className="limit-word">{limit.word}</span>
                  </li>
                ))}
            </ol>
          )}
          <p className="quiet">
            {margin}
            {chance !== '' && `; ${chance}`}.
          </p>
        </section>
      ))}
    </div>
  )
}

/** Angles, true rolling and ram at the place shown. */
export function ReadOuts({ live }: { readonly live: LiveSteering }) {
  return (
    <dl className="read-outs">
      {live.readOuts.map(({ id, label, value, state }) => (
        <div key={id}>
          <dt>{label}</dt>
          <dd data-read={id}>{state === undefined ? value : <StateTag state={state} text={value} />}</dd>
        </div>
      ))}
    </dl>
  )
}
