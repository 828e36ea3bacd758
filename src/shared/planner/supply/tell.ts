import { boxGearRatio, boxTorqueForForce, boxTorqueShared, handForce, marginTorque } from '../../formulas/forces/supply.ts'
import type { Build } from '../../model/build.ts'
import { newtons, ratio } from '../../quantities/make.ts'
import type { WorstPlace } from '../forces-types.ts'
import { chosen, entered, fromOrigin, type Known, type Ledger } from '../ledger.ts'
import { missingOf } from '../linkage/gather.ts'
import type { KnownSteering } from '../linkage/gather-rest.ts'
import type { Evidence } from '../plan.ts'
import type { SupplyResult } from './supply.ts'

/** Of the hand wheel's torque, through worm and sector without pressure. Common practice, no published source. */
const GEAR_EFFICIENCY = ratio(0.7)
/** Most that a driver is taken to pull where nothing is said. Common practice, no published source. */
const HAND = newtons(300)

/** Whether it steers, which turn is weaker and why; what the sector shaft carries; what is left in the hands after a burst hose. */
export function tellSupply(build: Build, steering: KnownSteering, result: SupplyResult, ledger: Ledger): void {
  for (const place of result.worst) tellMargin(place, ledger)
  tellWeaker(result.worst, ledger)
  tellSector(build, result, ledger)
  tellHands(build, steering, result, ledger)
}

function tellMargin(place: WorstPlace, ledger: Ledger): void {
  const { turn, margin, rockMargin, supply } = place
  if (margin === null || rockMargin === null || supply === null) return
  const evidence: Evidence[] = [
    { name: 'force asked for', dimension: 'force', si: place.demand },
    { name: 'force there is', dimension: 'force', si: supply },
    { name: 'asked for in rock', dimension: 'force', si: place.rock },
    { name: 'times over', dimension: 'ratio', si: margin },
    { name: 'times over in rock', dimension: 'ratio', si: rockMargin },
    { name: 'at a travel of', dimension: 'length', si: Math.abs(place.travel) },
  ]
  const more = { about: ['forces', 'ground'] as const, facts: { turn }, evidence, numbers: [`margin.${turn}`, `margin.${turn}-rock`] }
  if (margin < 1) ledger.add({ code: 'supply.too_weak', severity: 'look', ...more })
  else if (rockMargin < 1) ledger.add({ code: 'supply.weak_in_rock', severity: 'look', ...more })
  else ledger.add({ code: 'supply.enough', severity: 'noted', ...more })
}

function tellWeaker(worst: readonly WorstPlace[], ledger: Ledger): void {
  const [a, b] = worst
  if (a?.margin == null || b?.margin == null) return
  const [weak, strong] = a.margin <= b.margin ? [a, b] : [b, a]
  const [low, high] = [weak.margin ?? 0, strong.margin ?? 0]
  if (high - low < 0.02 * high) return
  ledger.add({
    code: 'supply.weaker_turn',
    severity: 'noted',
    about: ['forces'],
    facts: { turn: weak.turn, side: weak.side },
    evidence: [
      { name: 'times over in the weaker turn', dimension: 'ratio', si: low },
      { name: 'times over in the stronger turn', dimension: 'ratio', si: high },
      { name: 'asked for in the weaker turn', dimension: 'force', si: weak.demand },
      { name: 'asked for in the stronger turn', dimension: 'force', si: strong.demand },
    ],
    numbers: [`margin.${weak.turn}`, `margin.${strong.turn}`],
  })
}

/** Torque on the sector shaft at the hardest place, by the box alone and with the ram's help. */
function tellSector(build: Build, { numbers }: SupplyResult, ledger: Ledger): void {
  const [worst] = [...numbers].sort((a, b) => b.demand.si - a.demand.si)
  const i_p = worst?.motion.pitman
  if (!worst || !i_p || i_p.si <= 0) return
  const { demand: F, ramAtRod: F_r, boxAtRod: F_b } = worst
  const before = ledger.compute('sector.before-ram', boxTorqueForForce, { F, i_p })
  const after = F_r && F_b && ledger.compute('sector.after-ram', boxTorqueShared, { F, F_b, F_r, i_p })
  if (F_r && !F_b) ledger.measure('inside of the box', ['forces', 'box'])
  const rating = entered('torque', build.forces?.box?.sectorRating, ['forces', 'box', 'sectorRating'])
  if (!before) return
  const carried = after ?? before
  const evidence: Evidence[] = [
    { name: 'without the ram', dimension: 'torque', si: before.si },
    ...(after ? [{ name: 'with the ram', dimension: 'torque' as const, si: after.si }] : []),
    ...(rating ? [{ name: 'the most it may carry', dimension: 'torque' as const, si: rating.si }] : []),
  ]
  const more = {
    about: ['forces', 'box', 'sectorRating'] as const,
    evidence,
    numbers: ['sector.before-ram', ...(after ? ['sector.after-ram'] : [])],
  }
  if (!rating) ledger.measure('sector rating', ['forces', 'box', 'sectorRating'])
  else if (carried.si > 0) ledger.compute('margin.sector-shaft', marginTorque, { R: rating, F: carried })
  const severity = rating && carried.si > rating.si ? 'look' : 'noted'
  ledger.add({ code: rating && carried.si > rating.si ? 'sector.overloaded' : 'sector.carries', severity, ...more })
}

/** A hose bursts, the pump is gone: what the mechanical link asks of the driver, standing. */
function tellHands(build: Build, { turns, sweep }: KnownSteering, { numbers }: SupplyResult, ledger: Ledger): void {
  const D = entered('length', build.forces?.handWheel, ['forces', 'handWheel'])
  const [worst] = [...numbers].sort((a, b) => b.demand.si - a.demand.si)
  if (!worst) return
  const i_p = worst.motion.pitman
  const missing = missingOf({
    'diameter of the hand wheel': D,
    'turns of the box': turns,
    'sweep of the box': sweep,
    'places of pitman arm and drag link': i_p ?? undefined,
  })
  if (!D || !turns || !sweep || !i_p || i_p.si <= 0) {
    ledger.measure('hand effort', ['forces', 'handWheel'], { missing })
    return
  }
  const eta =
    entered('ratio', build.forces?.losses?.gear, ['forces', 'losses', 'gear']) ?? chosen('ratio', GEAR_EFFICIENCY, 'gear efficiency')
  const before = ledger.known('sector.before-ram', 'torque')
  const i_h = ledger.compute('hand.via-ratio', boxGearRatio, { n: turns, S: sweep })
  const force = before && i_h && ledger.compute('hand.force', handForce, { T: before, i_h, eta, D })
  if (!force) return
  const most: Known<'force'> =
    entered('force', build.forces?.handForce, ['forces', 'handForce']) ?? fromOrigin('force', HAND, { kind: 'chosen', why: 'hand force' })
  ledger.add({
    code: 'hand.burst_hose',
    severity: force.si > most.si ? 'look' : 'noted',
    about: ['forces', 'handWheel'],
    facts: { tooMuch: force.si > most.si },
    evidence: [
      { name: 'pull at the rim', dimension: 'force', si: force.si },
      { name: 'what a driver can pull', dimension: 'force', si: most.si },
    ],
    numbers: ['hand.force'],
  })
}
