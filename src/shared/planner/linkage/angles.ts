import { limitTravelASide } from '../../formulas/linkage/mounts.ts'
import {
  linkageLeftAngle,
  linkageLeftAngleFromRight,
  linkageRightAngle,
  linkageRightAngleAt,
  linkageRodMiddleAt,
  linkageRodTilt,
  linkageTravel,
} from '../../formulas/linkage/rod.ts'
import type { Known, Ledger } from '../ledger.ts'
import type { KnownLinkage } from './gather.ts'
import type { Side } from './plan-types.ts'

/** The tie rod's middle, tilt and both wheel angles at a travel, as numbers under `id`. */
export interface KnownState {
  readonly x_m: Known<'length'>
  readonly theta: Known<'angle'>
  readonly left: Known<'angle'>
  readonly right: Known<'angle'>
}

/** Wheel angles at a travel (left turn positive), written down step by step. */
export function anglesAt(id: string, l: KnownLinkage, x: Known<'length'>, ledger: Ledger): KnownState | undefined {
  const { w, r_L, r_R, c, k, beta_L, beta_R } = l
  const x_m = ledger.compute(`${id}.via-middle`, linkageRodMiddleAt, { x_0: l.x_0, k, x })
  const theta = x_m && ledger.compute(`${id}.via-tilt`, linkageRodTilt, { w, r_L, r_R, c, x_m })
  const left = theta && ledger.compute(`${id}.left`, linkageLeftAngle, { w, r_L, c, x_m, theta, beta_L, k })
  const right = theta && ledger.compute(`${id}.right`, linkageRightAngleAt, { w, r_R, c, x_m, theta, beta_R, k })
  return left && right && { x_m, theta, left, right }
}

/**
 * Travel to one side at which the wheel on that side stands at an angle.
 *
 * @param angle of that wheel from straight ahead, positive
 * @param id of the travel; steps on the way are written down under it
 */
export function travelAtAngle(id: string, l: KnownLinkage, side: Side, angle: Known<'angle'>, ledger: Ledger): Known<'length'> | undefined {
  const { w, r_L, r_R, c, k, beta_L, beta_R } = l
  const signed = side === 'left' ? angle : ({ ...angle, si: -angle.si } as Known<'angle'>)
  const sizes = { w, r_L, r_R, beta_L, beta_R, c, k }
  const other =
    side === 'left'
      ? ledger.compute(`${id}.via-right`, linkageRightAngle, { ...sizes, delta_L: signed })
      : ledger.compute(`${id}.via-left`, linkageLeftAngleFromRight, { ...sizes, delta_R: signed })
  const both = other && (side === 'left' ? { delta_L: signed, delta_R: other } : { delta_L: other, delta_R: signed })
  const x = both && ledger.compute(`${id}.via-travel`, linkageTravel, { r_L, r_R, beta_L, beta_R, k, x_0: l.x_0, ...both })
  return x && ledger.compute(id, limitTravelASide, { x })
}
