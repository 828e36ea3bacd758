import type { Match } from './types.ts'

/** Offs closer than this say the same: it is far finer than any reading. */
const SAME = 1e-3

/** Puts candidates in order, consistent ones first, and gives those that explain the readings equally well the same rank. */
export function ranked<C extends { readonly match: Match; readonly off: number }>(found: readonly C[]): readonly (C & { rank: number })[] {
  const order = [...found].sort((x, y) => Number(x.match !== 'consistent') - Number(y.match !== 'consistent') || x.off - y.off)
  let rank = 0
  return order.map((c, i) => {
    const before = order[i - 1]
    if (!before || before.match !== c.match || c.off - before.off > SAME) rank = i + 1
    return { ...c, rank }
  })
}
