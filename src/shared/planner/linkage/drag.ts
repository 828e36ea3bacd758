import { kingpin, stateAtAngle } from '../../formulas/linkage/linkage.ts'
import { angleBetween, minus, type Vec } from '../../formulas/linkage/plane.ts'
import { parseQuantity } from '../../quantities/parse.ts'
import { fail, issue, ok, type Result } from '../../result/result.ts'
import { atTravel } from './at-travel.ts'
import type { LinkageCurve, Side, SteeringGeometry } from './plan-types.ts'

/** What a hand can take hold of on the plan view. */
export const GRIPS = ['left wheel', 'right wheel', 'tie rod'] as const
export type Grip = (typeof GRIPS)[number]

/** How far the picture lets itself be moved each way, positive: the limits and a little more, within what the links can do. */
export type Reach = Readonly<Record<Side, number>>

export const reachOfCurve = ({ travel }: LinkageCurve): Reach => ({
  left: Math.max(0, ...travel),
  right: Math.max(0, ...travel.map((t) => -t)),
})

/** A travel brought within the reach. */
export const within = (reach: Reach, travel: number): number => Math.min(reach.left, Math.max(-reach.right, travel))

/**
 * The travel after a hand has moved from one place to another, both in the frame of the vehicle: the tie rod goes along with the
 * hand, a wheel turns about its kingpin with it.
 *
 * @param begun travel when the hand took hold
 */
export function draggedTravel(g: SteeringGeometry, reach: Reach, grip: Grip, begun: number, from: Vec, to: Vec): number {
  if (grip === 'tie rod') return within(reach, begun + (to.x - from.x) * (g.linkage.tieRod === 'behind' ? 1 : -1))
  const side = grip === 'left wheel' ? 'left' : 'right'
  const pin = kingpin(g.linkage, side)
  const turn = angleBetween(minus(from, pin), minus(to, pin))
  const held = atTravel(g, begun)
  if (!held.ok) return begun
  return travelWithWheel(g, reach, side, held.value[side] + turn)
}

/** The travel at which a wheel stands at an angle (left positive), or the end of the reach on that side. */
function travelWithWheel(g: SteeringGeometry, reach: Reach, side: Side, angle: number): number {
  const ends = [atTravel(g, -reach.right), atTravel(g, reach.left)].map((s) => (s.ok ? s.value[side] : 0)) as [number, number]
  if (angle >= ends[1]) return reach.left
  if (angle <= ends[0]) return -reach.right
  return within(reach, stateAtAngle(g.linkage, side, angle)?.travel ?? 0)
}

/**
 * The travel a person asks for in writing: a length along the tie rod ("2 1/2 in"), or an angle of the wheel on that side ("30°").
 *
 * @param bareUnit the unit of a length that comes without one
 * @returns travel, left turn positive; issues of `parseQuantity`, or `linkage.beyond_reach` (facts: side) past the reach
 */
export function writtenTravel(g: SteeringGeometry, reach: Reach, side: Side, typed: string, bareUnit: 'in' | 'mm'): Result<number> {
  const way = side === 'left' ? 1 : -1
  const length = parseQuantity(typed, 'length', bareUnit)
  if (length.ok) return withinReach(reach, side, way * length.value.si)
  const angle = parseQuantity(typed, 'angle')
  if (!angle.ok) return length
  const s = stateAtAngle(g.linkage, side, way * angle.value.si)
  return s ? withinReach(reach, side, s.travel) : fail(issue('linkage.beyond_reach', [], { side }))
}

const withinReach = (reach: Reach, side: Side, travel: number): Result<number> =>
  Math.abs(within(reach, travel) - travel) < 1e-9 ? ok(travel) : fail(issue('linkage.beyond_reach', [], { side }))
