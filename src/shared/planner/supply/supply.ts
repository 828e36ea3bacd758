import { demandRock, demandWheelTorque } from '../../formulas/forces/demand.ts'
import { boxRodForce, boxSectorTorque, marginForce, supplyRamAtRod } from '../../formulas/forces/supply.ts'
import { demandRodForce } from '../../formulas/forces/virtual-work.ts'
import { ramAnnulusArea, ramCapArea, ramForceWithEfficiency } from '../../formulas/hydraulics/ram.ts'
import { demandJackingMoment } from '../../formulas/linkage/demand.ts'
import type { Build } from '../../model/build.ts'
import { si } from '../../quantities/dimension.ts'
import { ratio } from '../../quantities/make.ts'
import { type KnownMotion, knownMotion, type Motion, motions, type UsedTravel } from '../demand/motion.ts'
import type { WheelTorque } from '../demand/torque.ts'
import type { ForceCurve, Turn, WorstPlace } from '../forces-types.ts'
import { chosen, entered, fromOrigin, type Known, type Ledger } from '../ledger.ts'
import type { KnownSteering } from '../linkage/gather-rest.ts'

/** Left of a ram's force after seal friction and back pressure: 90 to 95 %. Common practice, no published source. */
export const RAM_EFFICIENCY = ratio(0.9)
/** Soft tyres on rock: 25 to 50 % more. Common practice, no published source. */
export const ROCK = ratio(1.5)

/** Forces of the listed ram at relief pressure less losses, and the box's torque. */
export interface Sources {
  readonly ended: 'single' | 'double'
  readonly push: Known<'force'>
  readonly pull: Known<'force'>
}

export interface WorstNumbers {
  readonly turn: Turn
  readonly motion: KnownMotion
  readonly demand: Known<'force'>
  readonly ramAtRod: Known<'force'> | undefined
  readonly boxAtRod: Known<'force'> | undefined
}

export interface SupplyResult {
  readonly motions: readonly Motion[]
  readonly curve: ForceCurve
  readonly worst: readonly WorstPlace[]
  readonly numbers: readonly WorstNumbers[]
  readonly sectorTorque: Known<'torque'> | undefined
}

/** Force of the listed ram each way; undefined with a size missing, which the ram's own rule has asked for. */
export function ramSources(build: Build, relief: Known<'pressure'> | undefined, ledger: Ledger): Sources | undefined {
  const i = build.parts.findIndex((p) => p.kind === 'ram')
  const ram = build.parts[i]
  if (ram?.kind !== 'ram' || !relief || !ram.ended) return undefined
  const D = entered('length', ram.bore, ['parts', i, 'bore'])
  const d = entered('length', ram.rod, ['parts', i, 'rod'])
  const eta = entered('ratio', build.forces?.losses?.ram, ['forces', 'losses', 'ram']) ?? chosen('ratio', RAM_EFFICIENCY, 'ram efficiency')
  const annulus = D && d && ledger.compute('supply.via-annulus', ramAnnulusArea, { D, d })
  const cap = ram.ended === 'single' && D ? ledger.compute('supply.via-cap', ramCapArea, { D }) : annulus
  const push = cap && ledger.compute('supply.ram-push', ramForceWithEfficiency, { p: relief, A: cap, eta })
  const pull = annulus && ledger.compute('supply.ram-pull', ramForceWithEfficiency, { p: relief, A: annulus, eta })
  return push && pull && { ended: ram.ended, push, pull }
}

/** The box's own torque at relief pressure; undefined without the sizes inside it, which few know. */
export function sectorTorqueOf(build: Build, relief: Known<'pressure'> | undefined, ledger: Ledger): Known<'torque'> | undefined {
  const box = build.forces?.box
  const D = entered('length', box?.pistonBore, ['forces', 'box', 'pistonBore'])
  const r_s = entered('length', box?.sectorRadius, ['forces', 'box', 'sectorRadius'])
  const eta = chosen('ratio', RAM_EFFICIENCY, 'box efficiency')
  const A_b = D && ledger.compute('supply.via-box-piston', ramCapArea, { D })
  return relief && A_b && r_s && ledger.compute('supply.sector-torque', boxSectorTorque, { p: relief, A_b, r_s, eta })
}

/** Which side of the ram works for a turn where its length changes so; null: its places are not known, and the weaker is taken. */
export const workingSide = (turn: Turn, rate: number | null): 'push' | 'pull' | null =>
  rate === null ? null : rate > 0 === (turn === 'left') ? 'push' : 'pull'

/** What one wheel asks for at an angle while turning so: scrub, and lift where the route counts it. */
export function wheelTorqueAt(torque: WheelTorque, angle: number, turn: Turn): number {
  if (!torque.lift) return torque.scrub.si
  const { W, d, lambda } = torque.lift
  const lift = demandJackingMoment.compute({ W: W.si, d: d.si, lambda: lambda.si, delta: si(Math.abs(angle), 'angle') })
  return Math.max(torque.scrub.si + away(angle, turn) * lift, 0)
}

const away = (angle: number, turn: Turn): 1 | -1 => (angle >= 0 === (turn === 'left') ? 1 : -1)

/** Demand and supply over the travel, each turn's hardest place with its workings. */
export function planSupply(
  build: Build,
  steering: KnownSteering,
  used: UsedTravel,
  torque: WheelTorque,
  sources: Sources | undefined,
  sectorTorque: Known<'torque'> | undefined,
  ledger: Ledger,
): SupplyResult | null {
  const all = motions(steering, used)
  if (!all) return null
  const parallel = build.survey?.ramAngle ? Math.cos(build.survey.ramAngle.si) : null
  const demand = (turn: Turn) =>
    all.map((m) => m.rateLeft * wheelTorqueAt(torque, m.left, turn) + m.rateRight * wheelTorqueAt(torque, m.right, turn))
  const share = (m: Motion): number | null => m.ram ?? parallel
  const supply = (turn: Turn): readonly number[] | null =>
    sources && all.every((m) => share(m) !== null)
      ? all.map((m) => ramForce(sources, workingSide(turn, m.ram)) * Math.abs(share(m) ?? 0) + (sectorTorque?.si ?? 0) * (m.pitman ?? 0))
      : null
  const curve: ForceCurve = {
    travel: all.map((m) => m.travel),
    demandLeft: demand('left'),
    demandRight: demand('right'),
    supplyLeft: supply('left'),
    supplyRight: supply('right'),
  }
  const k = entered('ratio', build.forces?.ground?.rockFactor, ['forces', 'ground', 'rockFactor']) ?? chosen('ratio', ROCK, 'rock factor')
  const places = (['left', 'right'] as const).flatMap((turn) => {
    const found = worst(build, steering, used, torque, sources, sectorTorque, k, curve, all, turn, ledger)
    return found ? [found] : []
  })
  return { motions: all, curve, worst: places.map((p) => p.place), numbers: places.map((p) => p.numbers), sectorTorque }
}

const ramForce = (s: Sources, side: 'push' | 'pull' | null): number =>
  side === null ? Math.min(s.push.si, s.pull.si) : side === 'push' ? s.push.si : s.pull.si

/** The place where a turn is hardest: least supply for its demand, or without a supply the greatest demand. */
function hardest(curve: ForceCurve, turn: Turn): number {
  const demand = turn === 'left' ? curve.demandLeft : curve.demandRight
  const supply = turn === 'left' ? curve.supplyLeft : curve.supplyRight
  const strain = demand.map((d, n) => (supply ? d / (supply[n] ?? 1) : d))
  return strain.reduce((best, s, n) => (s > (strain[best] ?? 0) ? n : best), 0)
}

function worst(
  build: Build,
  steering: KnownSteering,
  used: UsedTravel,
  torque: WheelTorque,
  sources: Sources | undefined,
  sectorTorque: Known<'torque'> | undefined,
  k: Known<'ratio'>,
  curve: ForceCurve,
  all: readonly Motion[],
  turn: Turn,
  ledger: Ledger,
): { readonly place: WorstPlace; readonly numbers: WorstNumbers } | undefined {
  const at = all[hardest(curve, turn)]
  const id = `demand.${turn}`
  const motion = at && knownMotion(id, build, steering, used, at, ledger)
  if (!at || !motion) return undefined
  const M_L = oneWheel(`${id}.via-torque-left`, torque, motion.left, turn, ledger)
  const M_R = oneWheel(`${id}.via-torque-right`, torque, motion.right, turn, ledger)
  const demand = M_L && M_R && ledger.compute(`${id}.force`, demandRodForce, { M_L, M_R, i: motion.i, l_L: motion.l_L })
  const rock = demand && ledger.compute(`${id}.rock`, demandRock, { k, F: demand })
  if (!demand || !rock) return undefined
  const side = sources?.ended === 'double' ? null : workingSide(turn, at.ram)
  const weaker = sources && (side ?? (sources.push.si < sources.pull.si ? 'push' : 'pull'))
  const ramAtRod =
    sources && weaker && motion.ram
      ? ledger.compute(`supply.${turn}.ram`, supplyRamAtRod, { F_r: sources[weaker], i_r: motion.ram })
      : undefined
  const boxAtRod =
    sectorTorque && motion.pitman ? ledger.compute(`supply.${turn}.box`, boxRodForce, { T: sectorTorque, i_p: motion.pitman }) : undefined
  const supply = ramAtRod && (boxAtRod ? ledger.sum(`supply.${turn}.force`, 'force', { ram: ramAtRod, box: boxAtRod }) : ramAtRod)
  const margin = supply && demand.si > 0 ? ledger.compute(`margin.${turn}`, marginForce, { R: supply, F: demand }) : undefined
  const rockMargin = supply && rock.si > 0 ? ledger.compute(`margin.${turn}-rock`, marginForce, { R: supply, F: rock }) : undefined
  const place = {
    turn,
    travel: at.travel,
    demand: demand.si,
    rock: rock.si,
    supply: supply?.si ?? null,
    margin: margin?.si ?? null,
    rockMargin: rockMargin?.si ?? null,
    side,
  }
  return { place, numbers: { turn, motion, demand, ramAtRod, boxAtRod } }
}

/** One wheel's torque at its angle, as a number where lifting counts. */
function oneWheel(id: string, torque: WheelTorque, angle: Known<'angle'>, turn: Turn, ledger: Ledger): Known<'torque'> | undefined {
  if (!torque.lift) return torque.scrub
  const M_J = ledger.compute(`${id}-lift`, demandJackingMoment, {
    ...torque.lift,
    delta: { ...angle, si: si(Math.abs(angle.si), 'angle') },
  })
  const way = away(angle.si, turn)
  const s = fromOrigin('ratio', ratio(way), { kind: 'chosen', why: way === 1 ? 'wheel goes out' : 'wheel comes back' })
  return M_J && ledger.compute(id, demandWheelTorque, { M_S: torque.scrub, s, M_J })
}
