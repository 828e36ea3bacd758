import type { RamCandidate } from '../forces-types.ts'
import type { StandardRam } from './candidates.ts'

/** So many that pass and so many that lost are kept in the plan, beside the build's own ram and the smallest that passes. */
const [PASSED, LOST] = [10, 10]

/**
 * What of a ranking is worth reading: the smallest that passes and the bores next to it, of each bore the least ram that passes, and
 * the losers whose bore is nearest, one for each bore and reason. The build's own ram stands among them wherever it is ranked, so
 * that a crowd of small ones never hides it.
 *
 * @param ranked best first
 * @param own of the same list, the ram that the build has; null: it has none
 * @param rams the sizes, to know a bore by
 */
export function worthReading(
  ranked: readonly RamCandidate[],
  own: RamCandidate | null,
  rams: readonly StandardRam[],
): readonly RamCandidate[] {
  const bores = new Map(rams.map((ram) => [ram.bore, ram.D]))
  const middle = ranked.find((c) => c.smallest) ?? own ?? ranked[0]
  const far = (c: RamCandidate): number => Math.abs(Math.log((bores.get(c.bore) ?? 1) / (bores.get(middle?.bore ?? '') ?? 1)))
  const firsts = firstOfEach(ranked, ({ bore, ended, lost }) => [bore, ended, ...lost].join(' '))
  const nearest = (list: readonly RamCandidate[], most: number) => [...list].sort((a, b) => far(a) - far(b)).slice(0, most)
  const kept = new Set([
    ...(own ? [own] : []),
    ...ranked.slice(0, 1),
    ...nearest(
      firsts.filter((c) => c.lost.length === 0),
      PASSED,
    ),
    // every way to lose is told of once before any is told of again
    ...nearest(
      firstOfEach(
        [...firsts].sort((a, b) => far(a) - far(b)).filter((c) => c.lost.length === 1),
        ({ lost }) => lost.join(' '),
      ),
      LOST,
    ),
    ...nearest(
      firsts.filter((c) => c.lost.length > 0),
      LOST,
    ),
  ])
  return ranked.filter((c) => kept.has(c))
}

function firstOfEach(list: readonly RamCandidate[], key: (c: RamCandidate) => string): readonly RamCandidate[] {
  const seen = new Set<string>()
  return list.filter((c) => !seen.has(key(c)) && seen.add(key(c)))
}
