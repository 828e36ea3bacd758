import type { Dimension } from '../../../shared/quantities/dimension.ts'
import { useQuantity } from '../../app/asking.ts'
import { FieldShell } from './FieldShell.tsx'
import type { Field } from './kinds.ts'

interface Typing {
  readonly value: string
  readonly problem: string | null
  readonly onChange: (value: string) => void
}

const DIMENSION_WORD: Partial<Record<Dimension, string>> = {
  length: 'length',
  pressure: 'pressure',
  flow: 'flow',
  volume: 'volume',
  angle: 'angle',
}

/** One field of a part, whatever goes into it. */
export function PartField({ field, ...typing }: { readonly field: Field } & Typing) {
  switch (field.takes) {
    case 'quantity':
      return <QuantityField label={field.label} dimension={field.dimension} hint={field.hint} {...typing} />
    case 'choice':
      return <ChoiceField label={field.label} choices={field.choices} {...typing} />
    case 'note':
      return (
        <FieldShell label={field.label} problem={typing.problem} wide>
          {({ id, describedBy, invalid }) => (
            <textarea
              id={id}
              rows={2}
              aria-describedby={describedBy}
              aria-invalid={invalid}
              value={typing.value}
              onChange={(event) => typing.onChange(event.target.value)}
            />
          )}
        </FieldShell>
      )
    default:
      return <TextField label={field.label} hint={field.hint} needed={'needed' in field} {...typing} />
  }
}

/** Plain words. */
export function TextField(props: { readonly label: string; readonly hint?: string | undefined; readonly needed?: boolean } & Typing) {
  return (
    <FieldShell label={props.label} hint={props.hint} problem={props.problem}>
      {({ id, describedBy, invalid }) => (
        <input
          id={id}
          type="text"
          autoComplete="off"
          required={props.needed ?? false}
          aria-describedby={describedBy}
          aria-invalid={invalid}
          value={props.value}
          onChange={(event) => props.onChange(event.target.value)}
        />
      )}
    </FieldShell>
  )
}

/** A quantity typed with its unit; under it, what the program makes of it, in both systems. */
export function QuantityField(props: { readonly label: string; readonly dimension: Dimension; readonly hint: string } & Typing) {
  const read = useQuantity(props.value, props.dimension)
  const known = props.value.trim() === '' ? undefined : read.data
  const also = known?.ok === true ? [...new Set([known.value.inch, known.value.metric])].map((text) => `= ${text}`).join(' ') : undefined
  const wrong = known?.ok === false ? known.problems.map((problem) => problem.sentence).join(' ') : props.problem
  const word = DIMENSION_WORD[props.dimension]
  return (
    <FieldShell label={props.label} hint={word === undefined ? props.hint : `${word}, such as ${props.hint}`} also={also} problem={wrong}>
      {({ id, describedBy, invalid }) => (
        <input
          id={id}
          type="text"
          autoComplete="off"
          spellCheck={false}
          aria-describedby={describedBy}
          aria-invalid={invalid}
          value={props.value}
          onChange={(event) => props.onChange(event.target.value)}
        />
      )}
    </FieldShell>
  )
}

/** One of a few words; empty where it is not said. */
export function ChoiceField(props: { readonly label: string; readonly choices: readonly string[]; readonly needed?: boolean } & Typing) {
  const asked = props.needed === true || props.label === 'State'
  return (
    <FieldShell label={props.label} problem={props.problem}>
      {({ id, describedBy, invalid }) => (
        <select
          id={id}
          aria-describedby={describedBy}
          aria-invalid={invalid}
          value={props.value}
          onChange={(event) => props.onChange(event.target.value)}
        >
          {!asked && <option value="">not said</option>}
          {props.choices.map((choice) => (
            <option key={choice} value={choice}>
              {choice}
            </option>
          ))}
        </select>
      )}
    </FieldShell>
  )
}
