import { ramRateFromAngle } from '../../formulas/forces/supply.ts'
import {
  linkageArmLeanLeft,
  linkageArmLeanRight,
  linkageRodBackRate,
  linkageTiltRate,
  ramRate as ramRateCard,
  ramRateDouble,
} from '../../formulas/forces/virtual-work.ts'
import { chainAt, pitmanRate } from '../../formulas/linkage/chain.ts'
import { type LinkageState, ratesAt, stateAtTravel } from '../../formulas/linkage/linkage.ts'
import { ramLengthInSpace } from '../../formulas/linkage/mounts.ts'
import { ramRate } from '../../formulas/linkage/ram-space.ts'
import { linkageLever, linkagePointAcross, linkagePointAhead, linkageRodBack, linkageWheelRatio } from '../../formulas/linkage/rod.ts'
import type { Build } from '../../model/build.ts'
import { si } from '../../quantities/dimension.ts'
import type { Turn } from '../forces-types.ts'
import { entered, type Known, type Ledger } from '../ledger.ts'
import { anglesAt } from '../linkage/angles.ts'
import type { KnownSteering } from '../linkage/gather-rest.ts'
import type { LimitsPlan } from '../linkage/plan-types.ts'

/** How everything moves for a little travel at one place, in plain numbers. Positive travel turns the wheels left. */
export interface Motion {
  readonly travel: number
  readonly left: number
  readonly right: number
  /** wheel angle for travel, rad/m */
  readonly rateLeft: number
  readonly rateRight: number
  /** the ram's length for travel; null: its places are not known */
  readonly ram: number | null
  /** the pitman arm's turn for travel, rad/m, without sign; null: its places are not known */
  readonly pitman: number | null
  readonly state: LinkageState
}

const POINTS = 61

/** The travel a side that is used: to what stops the wheels first, or as the survey found it. */
export interface UsedTravel {
  readonly left: Known<'length'>
  readonly right: Known<'length'>
}

export function usedTravel(limits: LimitsPlan | null, ledger: Ledger): UsedTravel | null {
  const side = (turn: Turn): Known<'length'> | undefined => {
    const line = limits?.[turn].lines[0]
    return (line && ledger.known(line.number, 'length')) ?? ledger.known(`survey.${turn}`, 'length')
  }
  const [left, right] = [side('left'), side('right')]
  return left && right && left.si !== 0 && right.si !== 0 ? { left, right } : null
}

/** The motion at even steps from the right stop to the left one; null where the linkage does not go so far. */
export function motions({ geometry: g }: KnownSteering, used: UsedTravel): readonly Motion[] | null {
  const [from, to] = [-Math.abs(used.right.si), Math.abs(used.left.si)]
  const out: Motion[] = []
  for (let n = 0; n < POINTS; n++) {
    const travel = n === POINTS - 1 ? to : from + ((to - from) * n) / (POINTS - 1)
    const found = stateAtTravel(g.linkage, travel, g.range)
    if (!found.ok) return null
    const s = found.value
    const rates = ratesAt(g.linkage, s)
    const chain = g.chain && chainAt(g.linkage, g.chain, s)
    out.push({
      travel,
      left: s.left,
      right: s.right,
      rateLeft: rates.left,
      rateRight: rates.right,
      ram: g.ram ? ramRate(g.linkage, g.ram, s) : null,
      pitman: g.chain && chain ? Math.abs(pitmanRate(g.linkage, g.chain, s, chain)) : null,
      state: s,
    })
  }
  return out
}

/** The same at one place as numbers with their workings. */
export interface KnownMotion {
  readonly x: Known<'length'>
  readonly left: Known<'angle'>
  readonly right: Known<'angle'>
  readonly i: Known<'ratio'>
  readonly l_L: Known<'length'>
  readonly ram: Known<'ratio'> | null
  readonly pitman: Known<'curvature'> | null
}

/** Writes a place's motion down under `id`, step by step. */
export function knownMotion(
  id: string,
  build: Build,
  steering: KnownSteering,
  used: UsedTravel,
  at: Motion,
  ledger: Ledger,
): KnownMotion | undefined {
  const { linkage: l } = steering
  const x = placeOf(id, used, at.travel, ledger)
  const state = anglesAt(`${id}.via-wheel`, l, x, ledger)
  if (!state) return undefined
  const { theta, left, right } = state
  const { r_L, r_R, k, c } = l
  const phi_L = ledger.compute(`${id}.via-lean-left`, linkageArmLeanLeft, { beta: l.beta_L, k, delta: left })
  const phi_R = ledger.compute(`${id}.via-lean-right`, linkageArmLeanRight, { beta: l.beta_R, k, delta: right })
  const i = phi_L && phi_R && ledger.compute(`${id}.via-wheel-ratio`, linkageWheelRatio, { r_L, r_R, phi_L, phi_R, theta })
  const l_L = phi_L && phi_R && ledger.compute(`${id}.via-lever`, linkageLever, { r_L, phi_L, phi_R, theta })
  if (!phi_L || !phi_R || !i || !l_L) return undefined
  const speeds = { r_L, r_R, phi_L, phi_R, i, l_L }
  const omega = steering.ram && ledger.compute(`${id}.via-tilt-rate`, linkageTiltRate, { ...speeds, theta, c })
  const v_y = omega && ledger.compute(`${id}.via-back-rate`, linkageRodBackRate, speeds)
  const ram = omega && v_y ? ramAt(id, steering, { ...state, omega, v_y }, ledger) : ramByAngle(id, build, ledger)
  const pitman = at.pitman === null ? null : ledger.searched(`${id}.via-pitman-rate`, 'curvature', si(at.pitman, 'curvature'), { x })
  return { x, left, right, i, l_L, ram: ram ?? null, pitman }
}

function placeOf(id: string, used: UsedTravel, travel: number, ledger: Ledger): Known<'length'> {
  const end = travel > 0 ? used.left : used.right
  return Math.abs(Math.abs(end.si) - Math.abs(travel)) < 1e-12
    ? { ...end, si: si(travel, 'length') }
    : ledger.searched(`${id}.via-place`, 'length', si(travel, 'length'), { left: used.left, right: used.right })
}

function ramAt(
  id: string,
  { linkage: l, ram }: KnownSteering,
  s: { x_m: Known<'length'>; theta: Known<'angle'>; omega: Known<'curvature'>; v_y: Known<'ratio'> },
  ledger: Ledger,
): Known<'ratio'> | undefined {
  if (!ram) return undefined
  const { c, k, w, r_L, r_R } = l
  const { x_m, theta, omega, v_y } = s
  const y_m = ledger.compute(`${id}.via-back`, linkageRodBack, { w, r_L, r_R, c, x_m, theta, k })
  const at = { c, theta, k, s: ram.s, e: ram.e }
  const x_p = ledger.compute(`${id}.via-pin-across`, linkagePointAcross, { x_m, ...at })
  const y_p = y_m && ledger.compute(`${id}.via-pin-ahead`, linkagePointAhead, { y_m, ...at })
  if (!x_p || !y_p || !y_m) return undefined
  if (ram.ended === 'double') return ledger.compute(`${id}.via-ram-rate`, ramRateDouble, { y_p, y_m, k, omega })
  const base = { x_b: ram.base.x, y_b: ram.base.y }
  const L = ledger.compute(`${id}.via-ram-length`, ramLengthInSpace, { x_p, y_p, z_p: ram.z, ...base, z_b: ram.base.z })
  return L && ledger.compute(`${id}.via-ram-rate`, ramRateCard, { x_p, y_p, x_m, y_m, ...base, k, omega, v_y, L })
}

/** Without the places of its pins: by the angle that was measured, the same all the way; undefined without one. */
function ramByAngle(id: string, build: Build, ledger: Ledger): Known<'ratio'> | undefined {
  const alpha = entered('angle', build.survey?.ramAngle, ['survey', 'ramAngle'])
  return alpha && ledger.compute(`${id}.via-ram-rate`, ramRateFromAngle, { alpha })
}
