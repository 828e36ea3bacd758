import type { FindingText } from '../../../shared/report/document.ts'
import { ChoiceField, QuantityField, TextField } from '../../parts/fields/PartField.tsx'
import { LIMIT_FIELDS, LIMIT_KINDS, LIMIT_SIDES } from './fields.ts'
import { kindOf, type LimitForm, newLimit, sideOf } from './form.ts'
import { Asked } from './GroupFields.tsx'
import { Stop } from './plates.tsx'

/** Everything that can end the travel, a line each. */
export function LimitsFields(props: {
  readonly limits: readonly LimitForm[]
  readonly asked: readonly FindingText[]
  readonly problemAt: (place: string) => string | null
  readonly onChange: (limits: readonly LimitForm[]) => void
}) {
  const { limits, problemAt, onChange } = props
  const set = (at: number, limit: LimitForm) => onChange(limits.map((one, other) => (other === at ? limit : one)))
  return (
    <section id="group-limits" className="geometry-group" aria-labelledby="title-limits">
      <div className="geometry-how">
        <h2 id="title-limits" tabIndex={-1}>
          What can end the travel
        </h2>
        <Stop />
        <p className="quiet">
          Each by the travel it was met at, or by an angle, or at a stop by the gap and how far from the kingpin it is. Box and ram follow
          from their own sizes where these are entered.
        </p>
      </div>
      <div className="geometry-fields">
        <Asked findings={props.asked} />
        {limits.length === 0 && <p>None yet.</p>}
        <ol className="plain limit-forms">
          {limits.map((limit, at) => (
            <li key={limit.id}>
              <fieldset>
                <legend>
                  Limit {at + 1}: {limit.what}, {limit.side}
                </legend>
                <div className="fields">
                  <ChoiceField
                    label="What"
                    needed
                    choices={LIMIT_KINDS}
                    value={limit.what}
                    problem={problemAt(`limits[${at}].what`)}
                    onChange={(what) => set(at, { ...limit, what: kindOf(what) })}
                  />
                  <ChoiceField
                    label="Side"
                    needed
                    choices={LIMIT_SIDES}
                    value={limit.side}
                    problem={problemAt(`limits[${at}].side`)}
                    onChange={(side) => set(at, { ...limit, side: sideOf(side) })}
                  />
                  {LIMIT_FIELDS.map(({ key, label, dimension, hint }) => (
                    <div key={key} data-place={`limits.${at}.${key}`}>
                      <QuantityField
                        label={label}
                        dimension={dimension}
                        hint={hint}
                        value={limit.values[key] ?? ''}
                        problem={problemAt(`limits[${at}].${key}`)}
                        onChange={(value) => set(at, { ...limit, values: { ...limit.values, [key]: value } })}
                      />
                    </div>
                  ))}
                  <TextField
                    label="Note"
                    value={limit.note}
                    problem={problemAt(`limits[${at}].note`)}
                    onChange={(note) => set(at, { ...limit, note })}
                  />
                </div>
                <button
                  type="button"
                  className="button button-small button-danger"
                  onClick={() => onChange(limits.filter((_, other) => other !== at))}
                >
                  Take out limit {at + 1}
                </button>
              </fieldset>
            </li>
          ))}
        </ol>
        <div className="tools">
          {(['left', 'right'] as const).map((side) => (
            <button
              key={side}
              type="button"
              className="button"
              onClick={() => onChange([...limits, newLimit(limits, 'knuckle stop', side)])}
            >
              Add a stop on the {side}
            </button>
          ))}
          <button type="button" className="button" onClick={() => onChange([...limits, newLimit(limits, 'tyre contact', 'both')])}>
            Add a tyre contact
          </button>
        </div>
      </div>
    </section>
  )
}
