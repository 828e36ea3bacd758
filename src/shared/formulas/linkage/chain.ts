import { fail, issue, ok, type Result } from '../../result/result.ts'
import { kingpin, type Linkage, type LinkageRange, type LinkageState, ratesAt, stateAtAngle } from './linkage.ts'
import { angleBetween, type Branch, branchOf, circlesMeet, distance, minus, turned, type Vec } from './plane.ts'
import { lastGood, root } from './solve.ts'

/** Where the drag link takes hold: an arm of a knuckle (its joint at a wheel angle of zero, from the kingpin), or a place on the tie rod. */
export type DragLinkEnd =
  | { readonly kind: 'knuckle'; readonly side: 'left' | 'right'; readonly arm: Vec }
  | { readonly kind: 'tie rod'; readonly along: number; readonly ahead: number }

/** Pitman arm and drag link in plan view. Made by {@link makeChain}. */
export interface Chain {
  /** the sector shaft's middle */
  readonly pivot: Vec
  readonly pitman: number
  /** direction of the pitman arm with the wheels straight ahead, from x to the left */
  readonly centre: number
  /** how far that is from where the arm was said to point, positive to the left: the box stands off its centre by it */
  readonly offCentre: number
  /** drag link joint to joint, as seen from above */
  readonly link: number
  readonly end: DragLinkEnd
  readonly branch: Branch
}

export interface ChainInput {
  readonly pivot: Vec
  readonly pitman: number
  readonly points: number
  readonly end: DragLinkEnd
  /** as seen from above; absent: the drag link is set so that the pitman arm points as said */
  readonly link?: number
}

const direction = (angle: number): Vec => ({ x: Math.cos(angle), y: Math.sin(angle) })
const out = (from: Vec, length: number, angle: number): Vec => ({
  x: from.x + length * Math.cos(angle),
  y: from.y + length * Math.sin(angle),
})

/** A place on the tie rod: so far along it from the left joint, so far ahead of its line. */
export function onRod(s: LinkageState, along: number, ahead: number): Vec {
  const c = distance(s.a, s.b)
  const u = { x: (s.b.x - s.a.x) / c, y: (s.b.y - s.a.y) / c }
  return { x: s.a.x + along * u.x - ahead * u.y, y: s.a.y + along * u.y + ahead * u.x }
}

/** Where the drag link's joint at the axle stands. */
export function dragLinkJoint(l: Linkage, end: DragLinkEnd, s: LinkageState): Vec {
  if (end.kind === 'tie rod') return onRod(s, end.along, end.ahead)
  const pivot = kingpin(l, end.side)
  const arm = turned(end.arm, end.side === 'left' ? s.left : s.right)
  return { x: pivot.x + arm.x, y: pivot.y + arm.y }
}

/**
 * Puts pitman arm and drag link on a linkage that stands straight ahead.
 *
 * @returns issue `chain.does_not_close` (facts: link, apart, pitman) where a drag link of the length given does not reach
 */
export function makeChain(l: Linkage, straight: LinkageState, { pivot, pitman, points, end, link }: ChainInput): Result<Chain> {
  const joint = dragLinkJoint(l, end, straight)
  const pointed = out(pivot, pitman, points)
  const branch = branchOf(pivot, joint, pointed)
  const length = link ?? distance(pointed, joint)
  const ball = circlesMeet(pivot, pitman, joint, length, branch)
  if (!ball || !(length > 0)) {
    return fail(issue('chain.does_not_close', [], { link: length, apart: distance(pivot, joint), pitman }))
  }
  const offCentre = angleBetween(direction(points), minus(ball, pivot))
  return ok({ pivot, pitman, centre: points + offCentre, offCentre, link: length, end, branch })
}

/** The chain at one place of the travel. */
export interface ChainState {
  /** turn of the pitman arm from where it stands straight ahead, positive to the left */
  readonly pitman: number
  readonly ball: Vec
  readonly joint: Vec
}

/** Pitman arm and drag link for a state of the linkage, in closed form; undefined where the drag link does not reach. */
export function chainAt(l: Linkage, chain: Chain, s: LinkageState): ChainState | undefined {
  const joint = dragLinkJoint(l, chain.end, s)
  const ball = circlesMeet(chain.pivot, chain.pitman, joint, chain.link, chain.branch)
  if (!ball) return undefined
  return { pitman: angleBetween(direction(chain.centre), minus(ball, chain.pivot)), ball, joint }
}

/** Turning of the pitman arm a metre of tie-rod travel, in closed form: both ends of the drag link move alike along it. */
export function pitmanRate(l: Linkage, chain: Chain, s: LinkageState, c: ChainState): number {
  const rates = ratesAt(l, s)
  const { end } = chain
  const speed = (): Vec => {
    if (end.kind === 'knuckle') {
      const arm = minus(c.joint, kingpin(l, end.side))
      const w = end.side === 'left' ? rates.left : rates.right
      return { x: -arm.y * w, y: arm.x * w }
    }
    const from = minus(c.joint, s.a)
    return { x: rates.a.x - from.y * rates.tilt, y: rates.a.y + from.x * rates.tilt }
  }
  const [u, v, arm] = [minus(c.joint, c.ball), speed(), minus(c.ball, chain.pivot)]
  return (v.x * u.x + v.y * u.y) / (-arm.y * u.x + arm.x * u.y)
}

/** Where on its way the drag link comes into line with the pitman arm; absent: not within the linkage's own range. */
export interface ChainRange {
  readonly left?: { readonly travel: number; readonly angle: number }
  readonly right?: { readonly travel: number; readonly angle: number }
}

/** How far the linkage can go each way before the drag link comes into line with the pitman arm (toggle). */
export function chainRange(l: Linkage, chain: Chain, range: LinkageRange): ChainRange {
  const way = Math.sign(pitmanRateAt(l, chain, -l.toe / 2) ?? 0)
  const good = (angle: number) => (pitmanRateAt(l, chain, angle) ?? Number.NaN) * way > 0
  const end = (side: 'left' | 'right') => {
    const [start, stop] = [-l.toe / 2, range[side].angle]
    const steps = 40
    let sure = start
    for (let i = 1; i <= steps; i++) {
      const next = start + ((stop - start) * i) / steps
      if (good(next)) sure = next
      else return { angle: lastGood(good, sure, next) }
    }
    return undefined
  }
  const placed = (found: { readonly angle: number } | undefined) =>
    found && { ...found, travel: stateAtAngle(l, 'left', found.angle)?.travel ?? 0 }
  const [left, right] = [placed(end('left')), placed(end('right'))]
  return { ...(left && { left }), ...(right && { right }) }
}

function pitmanRateAt(l: Linkage, chain: Chain, angle: number): number | undefined {
  const s = stateAtAngle(l, 'left', angle)
  const c = s && chainAt(l, chain, s)
  return s && c && pitmanRate(l, chain, s, c)
}

/**
 * The travel at which the pitman arm has turned by `pitman` (positive to the left): what a box of known sweep allows.
 *
 * @returns undefined where the linkage ends before the pitman arm gets there
 */
export function travelAtPitman(l: Linkage, chain: Chain, range: LinkageRange, pitman: number): number | undefined {
  const ends = chainRange(l, chain, range)
  const [low, high] = [(ends.right ?? range.right).angle, (ends.left ?? range.left).angle]
  const off = (angle: number): number => {
    const s = stateAtAngle(l, 'left', angle)
    const c = s && chainAt(l, chain, s)
    return c ? c.pitman - pitman : Number.NaN
  }
  const found = root(off, low, high)
  return found === undefined ? undefined : stateAtAngle(l, 'left', found)?.travel
}
