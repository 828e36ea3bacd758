import type { ShelfAdapter } from './types.ts'

/** Chains of more adapters than this are not a way across but a leak waiting: chosen, no published source. */
export const MOST_ADAPTERS = 4
/** A part with more ends than this is a manifold, not an adapter. */
export const MOST_ENDS = 8

/** What a piece costs a chain, in the order in which it counts. Everything adds up along the chain. */
export interface Cost {
  /** ends left open, each of them a place that can leak */
  readonly open: number
  readonly toBuy: number
  readonly unknownPrices: number
  readonly cents: number
  readonly unknownLengths: number
  /** m; of a piece to buy: how far from plain it is, since its length is not known anyway */
  readonly length: number
}

const CENTS = 2 ** 23
const STEPS = 2 ** 12
const STEP = 0.25e-3
/** Room for MOST_ADAPTERS pieces in each field, so that no field ever runs over into the one before it. */
const FIELD = { length: 2 ** 14, unknownLengths: 2 ** 3, cents: 2 ** 25, unknownPrices: 2 ** 3, toBuy: 2 ** 3 }
/** Weight of one leak point; the 5 bits above it keep sums exact in a double's 53. */
export const LEAK = FIELD.length * FIELD.unknownLengths * FIELD.cents * FIELD.unknownPrices * FIELD.toBuy

/**
 * One number that orders chains of up to MOST_ADAPTERS pieces by leak points, then pieces to buy, then price, then length,
 * with the unknown behind the known: what a shortest-path search of a graph library can add up. Prices above 83 886.07 and
 * lengths above 1.02 m count as these in the search; lengths count in quarters of a millimetre.
 */
export const weight = (c: Cost): number =>
  c.open * LEAK +
  (((c.toBuy * FIELD.unknownPrices + c.unknownPrices) * FIELD.cents + Math.min(c.cents, CENTS - 1)) * FIELD.unknownLengths +
    c.unknownLengths) *
    FIELD.length +
  Math.min(Math.round(c.length / STEP), STEPS - 1)

/** "42.50" in hundredths. */
export function cents(price: string): number {
  const [whole = '0', part = ''] = price.split('.')
  return Number(whole) * 100 + Number(part.padEnd(2, '0'))
}

/** Hundredths as "42.50". */
export const asPrice = (hundredths: number): string => `${Math.floor(hundredths / 100)}.${String(hundredths % 100).padStart(2, '0')}`

/** What a part of the shelf costs a chain that runs through two of its ends. */
export const costOf = (part: ShelfAdapter): Cost => ({
  open: part.ends.length - 2,
  toBuy: 0,
  unknownPrices: part.price === undefined ? 1 : 0,
  cents: part.price === undefined ? 0 : cents(part.price),
  unknownLengths: part.length === undefined ? 1 : 0,
  length: part.length ?? 0,
})
