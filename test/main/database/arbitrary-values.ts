import fc from 'fast-check'
import type { QuantityRange } from '../../../src/shared/model/fields.ts'
import type { Dimension } from '../../../src/shared/quantities/dimension.ts'
import { parseQuantity } from '../../../src/shared/quantities/parse.ts'
import { UNITS, unitSize } from '../../../src/shared/quantities/units.ts'

const LETTERS = [...'abcdefghijklmnopqrstuvwxyz0123456789']
// put together by hand: fc.stringMatching takes ten times as long, and every record has an id
export const id = fc
  .tuple(
    fc.constantFrom(...LETTERS),
    fc.oneof(fc.string({ unit: fc.constantFrom(...LETTERS, '-'), maxLength: 11 }), fc.constant('-'.repeat(63))),
  )
  .map(([first, rest]) => first + rest)
export const ids = (least: number, most: number) => fc.uniqueArray(id, { minLength: least, maxLength: most })

/** Text as it comes from a keyboard, a catalogue or a mischief-maker; no half surrogates and no U+0000, which the database refuses. */
export const text = (minLength: number, maxLength: number) =>
  fc
    .oneof(
      { weight: 4, arbitrary: fc.string({ unit: 'grapheme', minLength, maxLength: 24 }) },
      { weight: 2, arbitrary: fc.string({ unit: 'binary', minLength, maxLength: 24 }) },
      fc.constantFrom("'; DROP TABLE part; --", ' ', '\u{1f529}\ufe0f', '\r\n', '١٢٣', 'null', '%_"`', '\ufeffx', 'é vs e\u0301'),
      fc.constant('x'.repeat(maxLength)),
    )
    .filter((s) => s.length >= minLength && s.length <= maxLength && s.isWellFormed() && !s.includes('\0'))
export const name = text(1, 200)
export const note = text(0, 4000)
export const day = fc
  .date({ min: new Date('0001-01-01T00:00:00Z'), max: new Date('9999-12-31T00:00:00Z'), noInvalidDate: true })
  .map((d) => d.toISOString().slice(0, 10))
export const price = fc.stringMatching(/^\d{1,9}(\.\d{1,2})?$/)
export const yes = fc.constant(true as const)
export const helpers = fc.integer({ min: 0, max: 20 })

const number = fc.oneof(
  fc.record({ size: fc.double({ min: 0, max: 1, noNaN: true }), digits: fc.integer({ min: 1, max: 15 }), comma: fc.boolean() }),
  fc.record({ whole: fc.nat(12), top: fc.integer({ min: 1, max: 63 }), bottom: fc.constantFrom(2, 4, 8, 16, 32, 64), dash: fc.boolean() }),
)

/** A quantity within `range`, in any unit of the dimension and any spelling of it. */
export function typed(dimension: Dimension, { positive, min, max = 1 }: QuantityRange): fc.Arbitrary<string> {
  const low = positive ? 0 : (min ?? 0)
  const units = UNITS.filter((u) => u.dimension === dimension).flatMap((u) =>
    u.spellings.map((spelling) => ({ spelling, size: unitSize(u) })),
  )
  return fc
    .record({
      unit: fc.constantFrom(...units),
      n: number,
      space: fc.constantFrom('', ' ', '  '),
      edge: fc.constantFrom('', ' '),
      minus: fc.constantFrom('-', '−', '- '),
    })
    .map(({ unit, n, space, edge, minus }) => {
      if ('whole' in n) return `${n.whole === 0 ? '' : n.whole + (n.dash ? '-' : ' ')}${n.top}/${n.bottom}${space}${unit.spelling}${edge}`
      // the small end matters as much as the large one: a third power reaches it without leaving the rest out
      const value = (low + n.size ** 3 * (max - low)) / unit.size
      const digits = Math.abs(value).toPrecision(n.digits)
      return `${value < 0 ? minus : ''}${n.comma ? digits.replace('.', ',') : digits}${space}${unit.spelling}${edge}`
    })
    .filter((s) => {
      const read = parseQuantity(s, dimension)
      if (!read.ok) return false
      const v = read.value.si as number
      return (positive ? v > 0 : min === undefined || v >= min) && v <= max
    })
}
