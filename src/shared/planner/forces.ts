import type { Build } from '../model/build.ts'
import { usedTravel } from './demand/motion.ts'
import { planTorque } from './demand/torque.ts'
import { planFlow } from './flow/flow.ts'
import type { ForcesPlan } from './forces-types.ts'
import type { Known, Ledger } from './ledger.ts'
import type { KnownSteering } from './linkage/gather-rest.ts'
import type { LimitsPlan } from './linkage/plan-types.ts'
import { chooseRam } from './ram-choice/choose.ts'
import { sensitivities } from './sensitivity.ts'
import { knownBolts } from './strength/bolts.ts'
import { planStrength } from './strength/strength.ts'
import { planSpeed, pumpFlows } from './supply/speed.ts'
import { planSupply, ramSources, sectorTorqueOf } from './supply/supply.ts'
import { tellSupply } from './supply/tell.ts'
import { planTightening } from './tightening/tightening.ts'

/** Will it steer, how fast, will it hold, what flows: everything that comes of forces, in the order in which one rests on another. */
export function planForces(
  build: Build,
  steering: KnownSteering | null,
  limits: LimitsPlan | null,
  relief: Known<'pressure'> | undefined,
  ledger: Ledger,
): ForcesPlan {
  const tightened = build.forces?.bolts !== undefined || build.joints.length > 0
  const bolts = knownBolts(build, ledger)
  if (!isWanted(build)) {
    const tightening = tightened ? planTightening(build, bolts, ledger) : []
    return { demand: null, speed: [], candidates: null, strength: [], flow: [], tightening, sensitivities: [] }
  }
  const torque = planTorque(build, ledger)
  const used = usedTravel(limits, ledger)
  const sources = ramSources(build, relief, ledger)
  const sectorTorque = sectorTorqueOf(build, relief, ledger)
  const supply = steering && used && torque ? planSupply(build, steering, used, torque, sources, sectorTorque, ledger) : null
  if (steering && supply) tellSupply(build, steering, supply, ledger)
  const flows = pumpFlows(build, ledger)
  const speed = planSpeed(build, steering, supply?.motions ?? null, flows, relief, ledger)
  const strength = planStrength(build, steering, relief, sectorTorque, bolts, ledger)
  const candidates = chooseRam(build, steering, used, supply, limits?.room ?? 0, ledger)
  const flow = planFlow(build, flows, relief, ledger)
  const tightening = planTightening(build, bolts, ledger)
  const margins = ledger.numbers.filter((n) => n.id.startsWith('margin.')).map((n) => n.id)
  return {
    demand: torque && {
      routes: torque.routes,
      used: torque.route,
      chosenByUser: torque.chosenByUser,
      curve: supply?.curve ?? null,
      worst: supply?.worst ?? [],
    },
    speed,
    candidates,
    strength,
    flow,
    tightening,
    sensitivities: sensitivities(ledger.numbers, margins),
  }
}

/** A build that names nothing of forces, nor an axle with a ram on it, is not asked for any of it. */
const isWanted = (build: Build): boolean =>
  build.forces !== undefined || (build.axle !== undefined && build.parts.some((p) => p.kind === 'ram'))
