import { fail, issue, ok, type Result } from '../result/result.ts'
import { type Dimension, si, type Typed } from './dimension.ts'
import { findUnit, findUnitAnywhere, type Unit } from './units.ts'

/** A number as typed, kept as an exact fraction so that 31.75 mm and 1 1/4 in become the very same metres. */
interface ExactNumber {
  readonly num: bigint
  readonly den: bigint
}

const MAX_TYPED = 64
const DECIMAL = String.raw`(?:\d+(?:[.,]\d+)?|[.,]\d+)(?:[eE][+-]?\d{1,2})?`
/** whole and fraction ("1 1/4", "1-1/4"), plain fraction ("3/8"), or decimal */
const NUMBER = new RegExp(String.raw`^(?:(\d+)(?:\s+|\s*-\s*)(\d+)\s*/\s*(\d+)|(\d+)\s*/\s*(\d+)|(${DECIMAL}))`)
const FRACTION_SIGNS = /[¼½¾⅐-⅞]/g

/**
 * Reads a quantity of the dimension asked for, as a person types it: "1 1/4 in", `1-1/4"`, "31.75 mm", "5 ft 6 in",
 * "85 lbf·ft", "1500 psi", "2° 30′", "1.5 in/ft", "1:8" (a ratio).
 *
 * @param typed what was typed; kept to the letter in the result
 * @param dimension what is asked for
 * @param bareUnit the unit of a number that comes without one; leave out where the unit must be typed
 * @returns the value in base SI beside what was typed, or issues: `quantity.empty`, `.not_a_number`, `.no_unit`,
 *   `.unknown_unit`, `.wrong_dimension`, `.ambiguous_comma`, `.zero_denominator`, `.too_long`
 */
export function parseQuantity<D extends Dimension>(typed: string, dimension: D, bareUnit?: string): Result<Typed<D>> {
  const facts = { typed: typed.slice(0, MAX_TYPED), dimension }
  if (typed.length > MAX_TYPED) return fail(issue('quantity.too_long', [], { ...facts, longest: MAX_TYPED }))
  let rest = typed
    .replace(FRACTION_SIGNS, (sign) => ` ${sign.normalize('NFKC')}`)
    .replaceAll('⁄', '/')
    .trim()
  if (rest === '') return fail(issue('quantity.empty', [], facts))

  if (dimension === 'ratio') {
    const oneIn = new RegExp(`^(${DECIMAL})\\s*:\\s*(${DECIMAL})$`).exec(rest)
    if (oneIn) return readRatio(typed, dimension, oneIn[1] as string, oneIn[2] as string, facts)
  }

  const sign = /^[-−+]\s*/.exec(rest)
  if (sign) rest = rest.slice(sign[0].length)
  const parts: { number: ExactNumber; unit: Unit }[] = []
  do {
    const read = readNumber(rest)
    if (read === 'not_a_number') return fail(issue('quantity.not_a_number', [], facts))
    if (read === 'ambiguous_comma') return fail(issue('quantity.ambiguous_comma', [], facts))
    if (read === 'zero_denominator') return fail(issue('quantity.zero_denominator', [], facts))
    rest = read.rest.trimStart()
    const { spelling, after } = takeUnit(rest)
    rest = after
    const wanted = spelling === '' && dimension !== 'ratio' ? bareUnit : spelling
    if (wanted === undefined) return fail(issue('quantity.no_unit', [], facts))
    const unit = findUnit(wanted, dimension)
    if (!unit) {
      const other = findUnitAnywhere(wanted)
      return other
        ? fail(issue('quantity.wrong_dimension', [], { ...facts, unit: wanted, got: other.dimension }))
        : fail(issue('quantity.unknown_unit', [], { ...facts, unit: wanted }))
    }
    parts.push({ number: read.number, unit })
  } while (rest !== '')
  if (!descending(parts.map((p) => p.unit))) return fail(issue('quantity.not_a_number', [], facts))

  const magnitude = sum(parts)
  const value = sign && /[-−]/.test(sign[0]) ? -magnitude : magnitude
  const first = parts[0] as { unit: Unit }
  const based = first.unit.offset === undefined ? value : value + first.unit.offset
  if (!Number.isFinite(based)) return fail(issue('quantity.not_a_number', [], facts))
  return ok({ typed, si: si(based, dimension) })
}

function readRatio<D extends Dimension>(
  typed: string,
  dimension: D,
  a: string,
  b: string,
  facts: Record<string, string>,
): Result<Typed<D>> {
  const top = decimal(a)
  const bottom = decimal(b)
  if (!top || !bottom) return fail(issue('quantity.ambiguous_comma', [], facts))
  if (bottom.num === 0n) return fail(issue('quantity.zero_denominator', [], facts))
  return ok({ typed, si: si(toNumber(top.num * bottom.den, top.den * bottom.num), dimension) })
}

function readNumber(text: string): { number: ExactNumber; rest: string } | 'not_a_number' | 'ambiguous_comma' | 'zero_denominator' {
  const m = NUMBER.exec(text)
  if (!m) return 'not_a_number'
  const rest = text.slice(m[0].length)
  const [, whole, top, bottom, plainTop, plainBottom, plain] = m
  if (plain !== undefined) {
    const number = decimal(plain)
    return number ? { number, rest } : 'ambiguous_comma'
  }
  const den = BigInt((bottom ?? plainBottom) as string)
  if (den === 0n) return 'zero_denominator'
  const num = BigInt((top ?? plainTop) as string) + BigInt(whole ?? '0') * den
  return { number: { num, den }, rest }
}

/** "31,75" is 31.75 in half of Europe and "1,500" is 1500 in America: a comma before exactly three digits is not guessed at. */
function decimal(text: string): ExactNumber | undefined {
  if (/\d,\d{3}(?!\d)/.test(text)) return undefined
  const [mantissa, exponent = '0'] = text.replace(',', '.').toLowerCase().split('e') as [string, string?]
  const [whole, fraction = ''] = mantissa.split('.') as [string, string?]
  const shift = BigInt(Number(exponent) - fraction.length)
  const digits = BigInt(`${whole}${fraction}` || '0')
  return shift >= 0n ? { num: digits * 10n ** shift, den: 1n } : { num: digits, den: 10n ** -shift }
}

/** The letters up to the next number that starts a further part ("5 ft 6 in", "2° 30′"); a digit inside a unit ("in2") stays with it. */
function takeUnit(text: string): { spelling: string; after: string } {
  const next = /(?<=[a-z°º'"′″’”.²³⁴])\s+(?=[\d.,])|(?<=['"′’°º])(?=\d)/i.exec(text)
  if (!next) return { spelling: text.trim(), after: '' }
  return { spelling: text.slice(0, next.index).trim(), after: text.slice(next.index + next[0].length) }
}

function descending(units: readonly Unit[]): boolean {
  if (units.length < 2) return true
  // 10 °C and 5 °F do not add up, and a turn and a radian share no exact unit
  if (units.some((u) => u.offset !== undefined || u.pi !== units[0]?.pi)) return false
  const sizes = units.map((u) => Number(u.size[0]) / Number(u.size[1]))
  return sizes.every((s, i) => i === 0 || s < (sizes[i - 1] as number))
}

function sum(parts: readonly { number: ExactNumber; unit: Unit }[]): number {
  let num = 0n
  let den = 1n
  for (const { number, unit } of parts) {
    const n = number.num * unit.size[0]
    const d = number.den * unit.size[1]
    num = num * d + n * den
    den *= d
  }
  return toNumber(num, den) * (parts[0]?.unit.pi ? Math.PI : 1)
}

/** Nearest double of a fraction; a single rounding when both halves fit 53 bits after cancelling, which every size in a shop does. */
function toNumber(num: bigint, den: bigint): number {
  const g = gcd(num < 0n ? -num : num, den)
  return Number(num / g) / Number(den / g)
}

function gcd(a: bigint, b: bigint): bigint {
  while (b !== 0n) [a, b] = [b, a % b]
  return a === 0n ? 1n : a
}
