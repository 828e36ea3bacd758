import { clampLoadFactor } from '../../formulas/forces/strength.ts'
import { ramAnnulusArea, ramCapArea } from '../../formulas/hydraulics/ram.ts'
import { columnEuler, columnStepped } from '../../formulas/strength/column.ts'
import { tubeSecondMoment } from '../../formulas/strength/tube.ts'
import { si } from '../../quantities/dimension.ts'
import type { RamCandidate, RamLoss } from '../forces-types.ts'
import type { StandardRam } from './candidates.ts'

/** All that candidates are held against, in plain numbers; null: not known, and then not asked. */
export interface RamNeeds {
  readonly relief: number
  readonly efficiency: number
  /** points of the travel: demand each turn, the share of the ram's force, its sign (null: not known), the box's own force */
  readonly points: readonly {
    readonly demandLeft: number
    readonly demandRight: number
    readonly share: number
    readonly sign: 1 | -1 | null
    readonly box: number
  }[]
  readonly rockFactor: number
  /** way the ram goes from stop to stop, and the room wanted over it */
  readonly way: number | null
  readonly room: number
  /** what a ram has beside its stroke, pin to pin, and the shortest and longest it may be with the clamp somewhere on the rod */
  readonly dead: number | null
  readonly place: { readonly shortest: number; readonly longest: number; readonly shiftLow: number; readonly shiftHigh: number } | null
  readonly flow: number | null
  readonly boxVolume: number
  /** longest time from stop to stop */
  readonly slowest: number | null
  readonly rodWanted: number
  /** length of a body over its stroke, and its diameter over the bore */
  readonly body: { readonly overStroke: number; readonly overBore: number } | null
  readonly tieRod: {
    readonly e: number
    readonly a: number
    readonly L: number
    readonly A: number
    readonly I: number
    readonly Z: number
    readonly E: number
    readonly S_y: number
    readonly box: number
    readonly wanted: number
  } | null
}

/** What a bore and rod bring, whatever their stroke. */
interface Pair {
  readonly push: number
  readonly pull: number
  readonly capArea: number
  readonly annulus: number
  readonly margin: number | null
  readonly tieRodFactor: number | null
}

/** Every candidate held against the needs: those that pass first and the smallest before all, then those that lost by least. */
export function rankRams(rams: readonly StandardRam[], needs: RamNeeds): readonly RamCandidate[] {
  const pairs = new Map<string, Pair>()
  const pairOf = (ram: StandardRam): Pair => {
    const key = `${ram.bore} ${ram.rod} ${ram.ended}`
    const pair = pairs.get(key) ?? judgePair(ram, needs)
    pairs.set(key, pair)
    return pair
  }
  const judged = rams.map((ram) => ({ ram, pair: pairOf(ram), candidate: judge(ram, pairOf(ram), needs) }))
  judged.sort(
    (x, y) =>
      x.candidate.lost.length - y.candidate.lost.length ||
      x.ram.D - y.ram.D ||
      x.ram.s - y.ram.s ||
      (x.ram.ended === y.ram.ended ? 0 : x.ram.ended === 'single' ? -1 : 1) ||
      x.ram.d - y.ram.d,
  )
  const known = needs.points.length > 0
  return judged.map(({ candidate }, i) => (i === 0 && known && candidate.lost.length === 0 ? { ...candidate, smallest: true } : candidate))
}

function judgePair({ D, d, ended }: StandardRam, needs: RamNeeds): Pair {
  const annulus = ramAnnulusArea.compute({ D: si(D, 'length'), d: si(d, 'length') })
  const capArea = ended === 'single' ? ramCapArea.compute({ D: si(D, 'length') }) : annulus
  const [push, pull] = [needs.relief * capArea * needs.efficiency, needs.relief * annulus * needs.efficiency]
  let margin = Number.POSITIVE_INFINITY
  for (const p of needs.points) {
    const left = p.sign === null ? Math.min(push, pull) : p.sign > 0 ? push : pull
    const right = p.sign === null ? left : p.sign > 0 ? pull : push
    if (p.demandLeft > 0) margin = Math.min(margin, (left * p.share + p.box) / p.demandLeft)
    if (p.demandRight > 0) margin = Math.min(margin, (right * p.share + p.box) / p.demandRight)
  }
  return {
    push,
    pull,
    capArea,
    annulus,
    margin: Number.isFinite(margin) ? margin : null,
    tieRodFactor: tieRodUnder(needs.relief * capArea, needs),
  }
}

function tieRodUnder(force: number, { tieRod: t }: RamNeeds): number | null {
  if (!t || t.e <= 0) return null
  return clampLoadFactor.compute({
    P: si(force + t.box, 'force'),
    e: si(t.e, 'length'),
    a: si(t.a, 'length'),
    L: si(t.L, 'length'),
    A: si(t.A, 'area'),
    I: si(t.I, 'secondMomentOfArea'),
    Z: si(t.Z, 'volume'),
    E: si(t.E, 'pressure'),
    S_y: si(t.S_y, 'pressure'),
  })
}

const STEEL = si(210e9, 'pressure')

function judge(ram: StandardRam, pair: Pair, needs: RamNeeds): RamCandidate {
  const { margin, tieRodFactor } = pair
  const closed = needs.dead === null || ram.ended === 'double' ? null : needs.dead + ram.s
  const strokeOver = needs.way === null ? null : ram.s - needs.way
  const area = Math.max(pair.capArea, pair.annulus)
  const time = needs.flow === null || needs.way === null ? null : (area * needs.way + needs.boxVolume) / needs.flow
  const rodFactor = closed === null ? null : rodUnder(ram, closed, needs.relief * pair.capArea, needs)
  const checks: readonly (readonly [RamLoss, boolean])[] = [
    ['weak', margin !== null && margin < 1],
    ['weak in rock', margin !== null && margin >= 1 && margin < needs.rockFactor],
    ['short stroke', strokeOver !== null && strokeOver < needs.room],
    ['too long', closed !== null && !finds(closed, ram.s, needs)],
    ['slow', time !== null && needs.slowest !== null && time > needs.slowest],
    ['rod buckles', rodFactor !== null && rodFactor < needs.rodWanted],
    ['tie rod', tieRodFactor !== null && tieRodFactor < (needs.tieRod?.wanted ?? 0)],
  ]
  return {
    bore: ram.bore,
    rod: ram.rod,
    stroke: ram.stroke,
    ended: ram.ended,
    push: pair.push,
    pull: pair.pull,
    margin,
    rockMargin: margin === null ? null : margin / needs.rockFactor,
    strokeOver,
    closed,
    time,
    rodFactor,
    tieRodFactor,
    lost: checks.flatMap(([loss, lost]) => (lost ? [loss] : [])),
    smallest: false,
    own: false,
  }
}

/**
 * Fully out and pinned at both ends: the rod's section all the way, which is the cylinder maker's own check and the harder one;
 * a ram that fails it is looked at as body and rod.
 */
function rodUnder({ D, d, s }: StandardRam, closed: number, push: number, { rodWanted, body }: RamNeeds): number {
  const none = si(0, 'length')
  const I_2 = tubeSecondMoment.compute({ D: si(d, 'length'), d: none })
  const alone = columnEuler.compute({ n: si(1, 'ratio'), E: STEEL, I: I_2, L: si(closed + s, 'length') }) / push
  if (alone >= rodWanted || !body) return alone
  const L_1 = s + body.overStroke
  const L_2 = closed + s - L_1
  if (L_1 <= 0 || L_2 <= 0 || body.overBore <= 0) return alone
  const I_1 = tubeSecondMoment.compute({ D: si(D + body.overBore, 'length'), d: si(D, 'length') })
  return columnStepped.compute({ E: STEEL, I_1, L_1: si(L_1, 'length'), I_2, L_2: si(L_2, 'length') }) / push
}

/** Whether the clamp has a place on the tie rod at which this ram neither bottoms nor runs out. */
function finds(closed: number, stroke: number, { place }: RamNeeds): boolean {
  if (!place || stroke < place.longest - place.shortest) return true
  const [low, high] = [closed - place.shortest, closed + stroke - place.longest]
  return low <= place.shiftHigh && high >= place.shiftLow
}
