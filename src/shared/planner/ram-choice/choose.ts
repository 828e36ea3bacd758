import { ramLength } from '../../formulas/linkage/ram-space.ts'
import type { Build } from '../../model/build.ts'
import type { PartOf } from '../../model/part.ts'
import type { UsedTravel } from '../demand/motion.ts'
import type { RamCandidate } from '../forces-types.ts'
import type { Ledger } from '../ledger.ts'
import type { KnownSteering } from '../linkage/gather-rest.ts'
import { WANTED } from '../strength/link.ts'
import { RAM_EFFICIENCY, ROCK, type SupplyResult } from '../supply/supply.ts'
import { STANDARD_RAMS, type StandardRam, worthHolding } from './candidates.ts'
import { worthReading } from './keep.ts'
import { type RamNeeds, rankRams } from './rank.ts'

/** Standard rams against this build, best first, and the build's own among them; null where neither force nor stroke is known to hold them against. */
export function chooseRam(
  build: Build,
  steering: KnownSteering | null,
  used: UsedTravel | null,
  supply: SupplyResult | null,
  room: number,
  ledger: Ledger,
): readonly RamCandidate[] | null {
  const relief = build.parts.find((p) => p.kind === 'pump')?.reliefPressure?.si
  const needs = relief === undefined ? undefined : needsOf(build, steering, used, supply, relief, room, ledger)
  if (!needs || (needs.points.length === 0 && needs.way === null)) return null
  const ranked = rankRams(worthHolding(STANDARD_RAMS, needs.way === null ? null : needs.way + needs.room), needs)
  const [best] = ranked
  if (best?.smallest) {
    ledger.add({
      code: 'ram.smallest',
      severity: 'noted',
      about: ['parts'],
      facts: { bore: best.bore, rod: best.rod, stroke: best.stroke, ended: best.ended },
      evidence: best.margin === null ? [] : [{ name: 'times over', dimension: 'ratio', si: best.margin }],
    })
  }
  if (needs.points.length > 0 && best && best.lost.length > 0) {
    ledger.add({
      code: 'ram.none_passes',
      severity: 'look',
      about: ['parts'],
      facts: { lost: best.lost, bore: best.bore, rod: best.rod, stroke: best.stroke },
    })
  }
  return withOwn(build, ranked, needs)
}

/** The ranking with the build's own ram in it, judged as the others are: after those that pass, or before those that lost. */
function withOwn(build: Build, ranked: readonly RamCandidate[], needs: RamNeeds): readonly RamCandidate[] {
  const size = ownSize(build)
  const [judged] = size ? rankRams([size], needs) : []
  if (!size || !judged) return worthReading(ranked, null, STANDARD_RAMS)
  const own: RamCandidate = { ...judged, own: true, smallest: false }
  const standard = STANDARD_RAMS.find((ram) => isSame(ram, size))
  const twin = standard && ranked.find((c) => namedAs(c, standard))
  if (twin) {
    const marked = { ...twin, own: true }
    return worthReading(
      ranked.map((c) => (c === twin ? marked : c)),
      marked,
      STANDARD_RAMS,
    )
  }
  const at = own.lost.length === 0 ? ranked.filter((c) => c.lost.length === 0).length : ranked.findIndex((c) => c.lost.length > 0)
  const place = at < 0 ? ranked.length : at
  return worthReading([...ranked.slice(0, place), own, ...ranked.slice(place)], own, [...STANDARD_RAMS, size])
}

function ownSize(build: Build): StandardRam | null {
  const ram = build.parts.find((p) => p.kind === 'ram')
  if (ram?.kind !== 'ram' || !ram.bore || !ram.rod || !ram.stroke || !ram.ended) return null
  const { bore, rod, stroke, ended } = ram
  return { bore: bore.typed, rod: rod.typed, stroke: stroke.typed, ended, D: bore.si, d: rod.si, s: stroke.si }
}

/** Sizes typed in another unit are the same ram. */
const isSame = (a: StandardRam, b: StandardRam): boolean =>
  a.ended === b.ended && [a.D - b.D, a.d - b.d, a.s - b.s].every((off) => Math.abs(off) < 1e-6)
const namedAs = (c: RamCandidate, ram: StandardRam): boolean =>
  c.bore === ram.bore && c.rod === ram.rod && c.stroke === ram.stroke && c.ended === ram.ended

function needsOf(
  build: Build,
  steering: KnownSteering | null,
  used: UsedTravel | null,
  supply: SupplyResult | null,
  relief: number,
  room: number,
  ledger: Ledger,
): RamNeeds {
  const i = build.parts.findIndex((p) => p.kind === 'ram')
  const ram = build.parts[i]
  const listed = ram?.kind === 'ram' ? ram : undefined
  const parallel = build.survey?.ramAngle ? Math.cos(build.survey.ramAngle.si) : 1
  const si = (id: string): number | null => ledger.numbers.find((n) => n.id === id)?.si ?? null
  const box = supply?.sectorTorque?.si ?? 0
  const points = (supply?.motions ?? []).map((m, n) => ({
    demandLeft: supply?.curve.demandLeft[n] ?? 0,
    demandRight: supply?.curve.demandRight[n] ?? 0,
    share: Math.abs(m.ram ?? parallel),
    sign: m.ram === null ? null : m.ram > 0 ? (1 as const) : (-1 as const),
    box: box * (m.pitman ?? 0),
  }))
  const lengths =
    steering?.geometry.ram && supply
      ? supply.motions.map((m) => ramLength(steering.geometry.ram as NonNullable<typeof steering.geometry.ram>, m.state))
      : null
  const span = lengths && { shortest: Math.min(...lengths), longest: Math.max(...lengths) }
  const way = span
    ? span.longest - span.shortest
    : (si('survey.stroke') ?? (used ? Math.abs(used.left.si) + Math.abs(used.right.si) : null))
  const closed = listed?.closedLength?.si
  const turns = build.parts.find((p) => p.kind === 'steering box')?.turns?.si
  return {
    relief,
    efficiency: build.forces?.losses?.ram?.si ?? RAM_EFFICIENCY,
    points,
    rockFactor: build.forces?.ground?.rockFactor?.si ?? ROCK,
    way,
    room,
    dead: closed !== undefined && listed?.stroke && listed.ended === 'single' ? closed - listed.stroke.si : null,
    place: placeOf(steering, span),
    flow: build.parts.find((p) => p.kind === 'pump')?.idleFlow?.si ?? si('speed.idle-flow'),
    boxVolume: si('speed.via-box-left') ?? 0,
    slowest: turns === undefined ? null : (si('speed.via-hand-turns') ?? turns),
    rodWanted: WANTED.ram,
    body: bodyOf(build, listed),
    tieRod: tieRodOf(steering, si, ledger),
  }
}

/** The listed ram's body, after which a candidate's is taken: so much longer as its stroke, so much wider as its bore. */
function bodyOf(build: Build, listed: PartOf<'ram'> | undefined): RamNeeds['body'] {
  const { bodyLength, bodyDiameter } = build.geometry?.ram ?? {}
  return bodyLength && bodyDiameter && listed?.bore && listed.stroke
    ? { overStroke: bodyLength.si - listed.stroke.si, overBore: bodyDiameter.si - listed.bore.si }
    : null
}

/** How far the clamp can go either way, counted as the ram's length. */
function placeOf(steering: KnownSteering | null, span: { shortest: number; longest: number } | null): RamNeeds['place'] {
  const ram = steering?.geometry.ram
  if (!ram || !span || ram.ended === 'double') return null
  const rod = steering.geometry.linkage.rod
  const pin = ram.along - rod / 2
  const outward = pin >= ram.base.x
  return {
    ...span,
    shiftLow: outward ? -ram.along : ram.along - rod,
    shiftHigh: outward ? rod - ram.along : ram.along,
  }
}

function tieRodOf(steering: KnownSteering | null, si: (id: string) => number | null, ledger: Ledger): RamNeeds['tieRod'] {
  const factor = ledger.numbers.find((n) => n.id === 'margin.tieRod-clamp')
  if (!steering || !factor) return null
  const at = (symbol: string) => factor.inputs[symbol]?.si ?? 0
  const full = si('strength.ram-full') ?? 0
  return {
    e: at('e'),
    a: at('a'),
    L: at('L'),
    A: at('A'),
    I: at('I'),
    Z: at('Z'),
    E: at('E'),
    S_y: at('S_y'),
    box: Math.max(at('P') - full, 0),
    wanted: WANTED.yields,
  }
}
