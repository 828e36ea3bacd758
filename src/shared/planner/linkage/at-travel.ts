import { chainAt, pitmanRate } from '../../formulas/linkage/chain.ts'
import { type LinkageState, ratesAt, stateAtTravel } from '../../formulas/linkage/linkage.ts'
import type { Vec, Vec3 } from '../../formulas/linkage/plane.ts'
import { ramClearance, ramLength, ramPin } from '../../formulas/linkage/ram-space.ts'
import { ok, type Result } from '../../result/result.ts'
import type { SteeringGeometry } from './plan-types.ts'

/** The steering at one place of its travel: all that a picture or a read-out needs. */
export interface SteeringState extends LinkageState {
  readonly pitman: { readonly angle: number; readonly ball: Vec; readonly joint: Vec } | null
  /** outer wheel less what true rolling asks of it; null at straight ahead or without a wheelbase */
  readonly ackermann: number | null
  /** hand wheel over road wheels */
  readonly ratio: number | null
  readonly ram: {
    readonly pin: Vec3
    readonly length: number
    readonly spareClosed: number | null
    readonly spareOpen: number | null
  } | null
  /** between the ram's body and the tie rod, surface to surface */
  readonly clearance: number | null
}

/**
 * The whole steering at a travel of the tie rod, left turn positive: fast enough to follow a finger.
 *
 * @returns issue `linkage.open` (facts: travel, reach) where a link does not reach
 */
export function atTravel(g: SteeringGeometry, travel: number): Result<SteeringState> {
  const found = stateAtTravel(g.linkage, travel, g.range)
  return found.ok ? ok(complete(g, found.value)) : found
}

function complete(g: SteeringGeometry, s: LinkageState): SteeringState {
  const rates = ratesAt(g.linkage, s)
  const chain = g.chain && chainAt(g.linkage, g.chain, s)
  const pitman = chain ? { angle: chain.pitman, ball: chain.ball, joint: chain.joint } : null
  const handPerPitman = g.box.turns !== null && g.box.sweep !== null ? (g.box.turns * 2 * Math.PI) / g.box.sweep : null
  const wheelRate = (rates.left + rates.right) / 2
  const ratio =
    g.chain && chain && handPerPitman !== null ? Math.abs(pitmanRate(g.linkage, g.chain, s, chain) * handPerPitman) / wheelRate : null
  return { ...s, pitman, ackermann: ackermannError(g, s), ratio, ram: ramState(g, s), clearance: clearanceAt(g, s) }
}

/** How far the outer wheel is from true rolling, by the inner one; negative: turned too little. */
export function ackermannError(g: SteeringGeometry, s: LinkageState): number | null {
  const w = g.groundSpacing ?? g.linkage.spacing
  if (g.wheelbase === null || s.left * s.right <= 0) return null
  const [inner, outer] = s.left + s.right > 0 ? [s.left, s.right] : [-s.right, -s.left]
  return outer - Math.atan(1 / (1 / Math.tan(inner) + w / g.wheelbase))
}

function ramState(g: SteeringGeometry, s: LinkageState): SteeringState['ram'] {
  if (!g.ram) return null
  const length = ramLength(g.ram, s)
  return { pin: ramPin(g.ram, s), length, ...spareOf(g.ram, length) }
}

/** Room before a ram of this length bottoms, and before it is fully out; of a double-ended one, before either end. */
export function spareOf(
  ram: NonNullable<SteeringGeometry['ram']>,
  length: number,
): { readonly spareClosed: number | null; readonly spareOpen: number | null } {
  if (ram.stroke === null || (ram.closed === null && ram.ended === 'single')) return { spareClosed: null, spareOpen: null }
  const shortest = ram.ended === 'double' ? -ram.stroke / 2 : (ram.closed ?? 0)
  return { spareClosed: length - shortest, spareOpen: shortest + ram.stroke - length }
}

export function clearanceAt(g: SteeringGeometry, s: LinkageState): number | null {
  const { ram, rodHeight, rodDiameter } = g
  if (!ram || rodHeight === null || rodDiameter === null || ram.bodyLength === null || ram.bodyDiameter === null) return null
  return ramClearance(ram, s, rodHeight, { length: ram.bodyLength, diameter: ram.bodyDiameter }, rodDiameter)
}
