import { fail, issue, ok, type Result } from '../../result/result.ts'
import { angleBetween, type Branch, branchOf, circlesMeet, distance, minus, turned, type Vec } from './plane.ts'
import { lastGood, root } from './solve.ts'

/** A steering arm in plan view: from the kingpin to the tie-rod joint, with its lean inward from straight back or straight ahead. */
export interface Arm {
  readonly length: number
  readonly lean: number
}

/** Kingpins, arms and tie rod seen from above, in the frame of `plane.ts`. Made by {@link makeLinkage}. */
export interface Linkage {
  readonly tieRod: 'behind' | 'ahead'
  readonly spacing: number
  readonly left: Arm
  readonly right: Arm
  /** joint to joint */
  readonly rod: number
  /** total static toe, both wheels together, toe-in positive: at zero travel the left wheel stands at -toe/2, the right at toe/2 */
  readonly toe: number
  /** where the rod's middle stands at zero travel, to the right */
  readonly middle: number
  /** on which side of the way from its kingpin to the other joint each joint lies, as the linkage is built */
  readonly branch: { readonly left: Branch; readonly right: Branch }
}

/** The linkage at one place of its travel. */
export interface LinkageState {
  /** of the middle of the tie rod, along the axle, from straight ahead; positive with the wheels to the left */
  readonly travel: number
  /** wheel angles, positive to the left */
  readonly left: number
  readonly right: number
  /** tie-rod joints, left and right */
  readonly a: Vec
  readonly b: Vec
}

export type LinkageInput = Omit<Linkage, 'rod' | 'toe' | 'middle' | 'branch'> & ({ readonly rod: number } | { readonly toe: number })

const LEFT = -1
const RIGHT = 1
/** A total toe of more than this is no setting of a tie rod. */
const LARGEST_TOE = 0.35
/** A steered wheel is not looked at beyond this. */
const LARGEST_ANGLE = 1.1

export const kingpin = (l: Pick<Linkage, 'spacing'>, side: 'left' | 'right'): Vec => ({
  x: ((side === 'left' ? LEFT : RIGHT) * l.spacing) / 2,
  y: 0,
})

/** 1 when the rod lies behind the axle, where it moves to the right as the wheels turn left; -1 ahead. */
const sense = (l: Pick<Linkage, 'tieRod'>): 1 | -1 => (l.tieRod === 'behind' ? 1 : -1)

/** The arm at a wheel angle of zero, from its kingpin. */
function armAtZero(l: Pick<Linkage, 'tieRod'>, arm: Arm, side: typeof LEFT | typeof RIGHT): Vec {
  return { x: -side * arm.length * Math.sin(arm.lean), y: -sense(l) * arm.length * Math.cos(arm.lean) }
}

function joint(l: Pick<Linkage, 'tieRod' | 'spacing' | 'left' | 'right'>, side: 'left' | 'right', angle: number): Vec {
  const sign = side === 'left' ? LEFT : RIGHT
  const arm = turned(armAtZero(l, l[side], sign), angle)
  return { x: (sign * l.spacing) / 2 + arm.x, y: arm.y }
}

/**
 * Puts a linkage together from its sizes and either the length of its tie rod or its static toe; the other follows.
 *
 * @returns issue `linkage.rod_does_not_reach` (facts: rod, shortest, longest) where no toe of 10° a side closes it,
 *   `linkage.sizes` where the arms reach across to each other's kingpin
 */
export function makeLinkage(input: LinkageInput): Result<Linkage> {
  const { tieRod, spacing, left, right } = input
  if (!(left.length > 0 && right.length > 0 && left.length + right.length < spacing)) return fail(issue('linkage.sizes'))
  const rodAt = (toe: number) => distance(joint(input, 'left', -toe / 2), joint(input, 'right', toe / 2))
  const toe = 'toe' in input ? input.toe : root((t) => rodAt(t) - input.rod, -LARGEST_TOE, LARGEST_TOE)
  if (toe === undefined) {
    const ends = [rodAt(-LARGEST_TOE), rodAt(LARGEST_TOE)]
    const facts = { rod: 'rod' in input ? input.rod : null, shortest: Math.min(...ends), longest: Math.max(...ends) }
    return fail(issue('linkage.rod_does_not_reach', [], facts))
  }
  const [a, b] = [joint(input, 'left', -toe / 2), joint(input, 'right', toe / 2)]
  const branch = { left: branchOf(kingpin(input, 'left'), b, a), right: branchOf(kingpin(input, 'right'), a, b) }
  return ok({ tieRod, spacing, left, right, rod: 'rod' in input ? input.rod : distance(a, b), toe, middle: (a.x + b.x) / 2, branch })
}

/** The same linkage seen in a mirror standing along the vehicle. */
export const mirrored = (l: Linkage): Linkage => ({
  ...l,
  left: l.right,
  right: l.left,
  middle: -l.middle,
  branch: { left: l.branch.right === 1 ? -1 : 1, right: l.branch.left === 1 ? -1 : 1 },
})

const travelOf = (l: Linkage, a: Vec, b: Vec): number => ((a.x + b.x) / 2 - l.middle) * sense(l)

/** The linkage with one wheel at an angle, in closed form; undefined where the rod does not reach (circle and circle do not meet). */
export function stateAtAngle(l: Linkage, side: 'left' | 'right', angle: number): LinkageState | undefined {
  const known = joint(l, side, angle)
  const other = side === 'left' ? 'right' : 'left'
  const pivot = kingpin(l, other)
  const found = circlesMeet(pivot, l[other].length, known, l.rod, l.branch[other])
  if (!found) return undefined
  const turn = angleBetween(armAtZero(l, l[other], other === 'left' ? LEFT : RIGHT), minus(found, pivot))
  const [a, b] = side === 'left' ? [known, found] : [found, known]
  const [left, right] = side === 'left' ? [angle, turn] : [turn, angle]
  return { travel: travelOf(l, a, b), left, right, a, b }
}

/** How fast the wheels turn and the rod tilts for a movement of the rod: by virtual work also how force goes over to torque. */
export interface Rates {
  /** rad a metre of travel; one over it is the lever in metres at which the rod's force acts on that kingpin */
  readonly left: number
  readonly right: number
  /** movement of the rod's joints a metre of travel */
  readonly a: Vec
  readonly b: Vec
  /** turning of the rod itself, rad a metre of travel */
  readonly tilt: number
}

/** Velocity ratios in closed form: the rod keeps its length, so both joints move alike along it. */
export function ratesAt(l: Linkage, s: LinkageState): Rates {
  const [pl, pr] = [minus(s.a, kingpin(l, 'left')), minus(s.b, kingpin(l, 'right'))]
  const u = { x: (s.b.x - s.a.x) / l.rod, y: (s.b.y - s.a.y) / l.rod }
  // speeds for one radian a second of the left wheel
  const va = { x: -pl.y, y: pl.x }
  const ratio = (va.x * u.x + va.y * u.y) / (-pr.y * u.x + pr.x * u.y)
  const vb = { x: -pr.y * ratio, y: pr.x * ratio }
  const travel = ((va.x + vb.x) / 2) * sense(l)
  const tilt = ((vb.y - va.y) * u.x - (vb.x - va.x) * u.y) / l.rod
  const per = (v: Vec): Vec => ({ x: v.x / travel, y: v.y / travel })
  return { left: 1 / travel, right: ratio / travel, a: per(va), b: per(vb), tilt: tilt / travel }
}

/** Why a linkage can go no further: a link does not reach (rod and an arm come into one line), or it has gone as far as looked at. */
export type RangeEnd = { readonly travel: number; readonly angle: number; readonly why: 'toggle' | 'not looked further' }
export interface LinkageRange {
  readonly left: RangeEnd
  readonly right: RangeEnd
}

/**
 * How far the linkage can move each way before the rod comes into line with an arm (toggle), or to 63° of the left wheel.
 * Travel is the greater the further the left wheel turns, everywhere within the range.
 */
export function rangeOf(l: Linkage): LinkageRange {
  const good = (angle: number): boolean => {
    const s = stateAtAngle(l, 'left', angle)
    if (!s) return false
    const r = ratesAt(l, s)
    return Number.isFinite(r.left) && r.left > 0 && r.right > 0
  }
  const end = (way: 1 | -1): RangeEnd => {
    const start = -l.toe / 2
    const step = way / 50
    let sure = start
    let next = sure + step
    while (Math.abs(next) <= LARGEST_ANGLE && good(next)) [sure, next] = [next, next + step]
    const why = Math.abs(next) > LARGEST_ANGLE ? 'not looked further' : 'toggle'
    const angle = why === 'toggle' ? lastGood(good, sure, next) : sure
    return { travel: stateAtAngle(l, 'left', angle)?.travel ?? 0, angle, why }
  }
  return { left: end(1), right: end(-1) }
}

/**
 * The linkage at a travel of its tie rod.
 *
 * @param travel metres, positive with the wheels to the left
 * @returns issue `linkage.open` (facts: travel, reach) beyond the range
 */
export function stateAtTravel(l: Linkage, travel: number, range: LinkageRange): Result<LinkageState> {
  const start = -l.toe / 2
  const end = travel >= 0 ? range.left : range.right
  if (Math.abs(travel) > Math.abs(end.travel)) return fail(issue('linkage.open', [], { travel, reach: end.travel }))
  let angle = start + travel / (l.left.length * Math.cos(l.left.lean))
  for (let i = 0; i < 12; i++) {
    const s = stateAtAngle(l, 'left', angle)
    if (!s) break
    const next = angle - (s.travel - travel) * ratesAt(l, s).left
    if (!(next >= range.right.angle && next <= range.left.angle)) break
    // the step shrinks by its square: one this small leaves nothing for the next
    if (Math.abs(next - angle) < 1e-10) {
      const settled = stateAtAngle(l, 'left', next)
      return settled ? ok(settled) : ok(s)
    }
    angle = next
  }
  const found = root((x) => (stateAtAngle(l, 'left', x)?.travel ?? Number.NaN) - travel, start, end.angle)
  const s = found === undefined ? undefined : stateAtAngle(l, 'left', found)
  return s ? ok(s) : fail(issue('linkage.open', [], { travel, reach: end.travel }))
}
