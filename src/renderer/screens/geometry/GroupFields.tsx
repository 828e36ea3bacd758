import type { FindingText } from '../../../shared/report/document.ts'
import { ChoiceField, QuantityField } from '../../parts/fields/PartField.tsx'
import { keyed } from '../../parts/keyed.ts'
import { StateTag } from '../../parts/Mark.tsx'
import type { GeometryField, GeometryGroup } from './fields.ts'
import { PLATES } from './plates.tsx'

/** One group: how it is measured, what the plan still asks for, and its fields. */
export function GroupFields(props: {
  readonly group: GeometryGroup
  readonly asked: readonly FindingText[]
  readonly values: Readonly<Record<string, string>>
  readonly problemAt: (place: string) => string | null
  readonly onChange: (place: string, value: string) => void
}) {
  const { group } = props
  const Picture = PLATES[group.id]
  return (
    <section id={`group-${group.id}`} className="geometry-group" aria-labelledby={`title-${group.id}`}>
      <div className="geometry-how">
        <h2 id={`title-${group.id}`} tabIndex={-1}>
          {group.title}
        </h2>
        {Picture !== undefined && <Picture />}
        <p className="quiet">{group.how}</p>
      </div>
      <div className="geometry-fields">
        <Asked findings={props.asked} />
        <div className="fields">
          {group.fields.map((field) => (
            <div key={field.place} data-place={field.place}>
              <OneField
                field={field}
                value={props.values[field.place] ?? ''}
                problem={props.problemAt(field.place)}
                onChange={(value) => props.onChange(field.place, value)}
              />
            </div>
          ))}
        </div>
      </div>
    </section>
  )
}

/** What the plan asks for here. */
export function Asked({ findings }: { readonly findings: readonly FindingText[] }) {
  if (findings.length === 0) return null
  return (
    <ul className="plain asked">
      {keyed(findings, (finding) => finding.title).map(({ key, item }) => (
        <li key={key}>
          <StateTag state={item.severity} /> <strong>{item.title}</strong>
          <span className="second">{item.todo}</span>
        </li>
      ))}
    </ul>
  )
}

function OneField({
  field,
  ...typing
}: {
  readonly field: GeometryField
  readonly value: string
  readonly problem: string | null
  readonly onChange: (value: string) => void
}) {
  switch (field.takes) {
    case 'quantity':
      return <QuantityField label={field.label} dimension={field.dimension} hint={field.hint} {...typing} />
    case 'choice':
      return <ChoiceField label={field.label} choices={field.choices} {...typing} />
    default:
      return (
        <label className="tickable">
          <input
            type="checkbox"
            checked={typing.value === 'yes'}
            onChange={(event) => typing.onChange(event.target.checked ? 'yes' : '')}
          />
          {field.label}
        </label>
      )
  }
}
