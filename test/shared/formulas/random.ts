import fc from 'fast-check'
import type { FormulaCard } from '../../../src/shared/formulas/card.ts'
import { parseQuantity } from '../../../src/shared/quantities/parse.ts'

export type Values = Record<string, number>

/** The example's values in base SI. */
export function exampleValues(card: FormulaCard, given: Readonly<Record<string, string>>): Values {
  const values: Values = {}
  for (const [symbol, typed] of Object.entries(given)) {
    const spec = card.symbols[symbol]
    if (!spec) throw new Error(`${card.id}: example names ${symbol}`)
    const read = parseQuantity(typed, spec.dimension)
    if (!read.ok) throw new Error(`${card.id}: ${symbol} = ${typed}: ${JSON.stringify(read.issues)}`)
    values[symbol] = read.value.si
  }
  return values
}

export function withinCard(card: FormulaCard, values: Values): boolean {
  const inRange = Object.entries(card.symbols).every(([symbol, s]) => {
    const v = values[symbol] as number
    return v >= (s.min ?? -Infinity) && v <= (s.max ?? Infinity) && v > (s.above ?? -Infinity) && v < (s.below ?? Infinity)
  })
  return inRange && (card.requires ?? []).every((r) => r.holds(values as never))
}

/**
 * Inputs about those of the examples (a quarter to four times each), within the card's range. The steps between
 * neighbouring values are 0.1 %, so that differences of like values keep enough digits to be compared to 1e-9.
 */
export function inputsOf(card: FormulaCard): fc.Arbitrary<Values> {
  return fc
    .integer({ min: 0, max: card.examples.length - 1 })
    .chain((n) => {
      const about = exampleValues(card, card.examples[n]?.given ?? {})
      return fc.record(
        Object.fromEntries(
          Object.entries(about).map(([s, v]) => [s, fc.integer({ min: -1386, max: 1386 }).map((k) => v * Math.exp(k / 1000))]),
        ),
      )
    })
    .filter((values) => withinCard(card, values))
}

export const close = (a: number, b: number, relative: number): boolean =>
  a === b || Math.abs(a - b) <= relative * Math.max(Math.abs(a), Math.abs(b))
