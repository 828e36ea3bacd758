import { mm } from '../../quantities/make.ts'
import { SEAL_OF } from './thread.ts'
import type { Expected, Further, ThreadCandidate, ThreadReadings } from './types.ts'

/** Candidates beyond these are not worth a measurement of their own. */
const LEADING = 5
/** What ten turns can be measured to with a calliper, and a crest with a micrometer. Chosen: what a shop has. */
const TEN_TURNS_WITHIN = mm(0.02)
const CREST_WITHIN = mm(0.01)
/** Length of thread over which a taper of 1 in 16 is looked for: 0.6 mm on diameter. */
const TAPER_OVER = mm(10)

interface Way {
  readonly property: Further['property']
  readonly within?: number
  readonly over?: Further['over']
  readonly apart: (x: ThreadCandidate, y: ThreadCandidate) => boolean
  readonly reads: (c: ThreadCandidate) => Expected
}

/** A thread as one names it: "7/8-14", with LH where it is left-hand. */
export const nameOf = (c: ThreadCandidate): string => `${c.thread.designation}${c.hand === 'left' ? ' LH' : ''}`

/** Seals that a candidate can show; a plain thread shows none. */
const seals = (c: ThreadCandidate): readonly string[] => [...new Set(['none', ...c.ports.map((p) => SEAL_OF[p.family])])]

/** Ways to tell threads apart, the handiest first. */
const WAYS: readonly Way[] = [
  {
    property: 'pitch over ten turns',
    within: TEN_TURNS_WITHIN,
    apart: (x, y) => Math.abs(x.thread.pitch - y.thread.pitch) * 10 > 2 * TEN_TURNS_WITHIN,
    reads: (c) => ({ of: nameOf(c), si: c.thread.pitch * 10, dimension: 'length' }),
  },
  {
    property: 'taper',
    over: TAPER_OVER,
    within: mm(0.1),
    apart: (x, y) => x.thread.tapered !== y.thread.tapered,
    reads: (c) => ({ of: nameOf(c), si: c.thread.tapered ? TAPER_OVER / 16 : 0, dimension: 'length' }),
  },
  {
    property: 'flank angle',
    apart: (x, y) => x.thread.flankAngle !== y.thread.flankAngle,
    reads: (c) => ({ of: nameOf(c), si: (c.thread.flankAngle * Math.PI) / 180, dimension: 'angle' }),
  },
  {
    property: 'crest diameter',
    within: CREST_WITHIN,
    apart: (x, y) => x.crest.least > y.crest.most + 2 * CREST_WITHIN || y.crest.least > x.crest.most + 2 * CREST_WITHIN,
    reads: (c) => ({ of: nameOf(c), si: (c.crest.least + c.crest.most) / 2, dimension: 'length' }),
  },
]

/**
 * The further measurement that tells the leading candidates apart: the one that parts the most pairs of them, pairs with the
 * first counting before others. Where only the seal is open it is the look of the seal; null where nothing is left to tell apart.
 */
export function furtherOf(candidates: readonly ThreadCandidate[], r: ThreadReadings): Further | null {
  const consistent = candidates.filter((c) => c.match === 'consistent')
  const leading = (consistent.length >= 2 ? consistent : candidates).slice(0, LEADING)
  const [first] = leading
  if (!first) return null
  if (leading.length === 1) return sealOf(first, r)
  const pairs = leading.flatMap((x, i) => leading.slice(i + 1).map((y) => [x, y] as const))
  const parts = (w: Way) => pairs.reduce((n, [x, y]) => n + (w.apart(x, y) ? (x === first ? LEADING ** 2 : 1) : 0), 0)
  const best = WAYS.map((way) => ({ way, parted: parts(way) })).reduce((a, b) => (b.parted > a.parted ? b : a))
  if (best.parted > 0) {
    const { property, within, over, reads } = best.way
    return { property, expected: leading.map(reads), ...(within === undefined ? {} : { within }), ...(over === undefined ? {} : { over }) }
  }
  const bySeal = sealOf(first, r)
  if (bySeal) return bySeal
  return { property: 'papers', expected: leading.map((c) => ({ of: nameOf(c), looks: [c.thread.family] })) }
}

/** One thread, several ways of sealing: the look tells which. */
function sealOf(c: ThreadCandidate, r: ThreadReadings): Further | null {
  if (r.seal !== undefined || c.ports.length === 0) return null
  return {
    property: 'seal',
    expected: [
      ...c.ports.map((p) => ({ of: `${p.family} ${p.size}`, looks: [SEAL_OF[p.family]] })),
      { of: nameOf(c), looks: [seals(c)[0] as string] },
    ],
  }
}
