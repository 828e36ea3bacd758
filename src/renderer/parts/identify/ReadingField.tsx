import { QuantityField, TextField } from '../fields/PartField.tsx'
import type { Reading } from './readings.ts'

/** One reading with its unit. A spread may stand behind it ("22.1 ± 0.05 mm"), which only the whole question understands. */
export function ReadingField(props: {
  readonly reading: Reading
  readonly value: string
  readonly problem: string | null
  readonly onChange: (value: string) => void
}) {
  const { reading, ...typing } = props
  const plain = reading.length && !/[±]|\+\/?-/.test(props.value)
  return plain ? (
    <QuantityField label={reading.label} dimension="length" hint={reading.hint} {...typing} />
  ) : (
    <TextField label={reading.label} hint={reading.hint} {...typing} />
  )
}
