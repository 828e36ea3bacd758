import { type Chain, chainAt, dragLinkJoint } from './chain.ts'
import { kingpin, type Linkage, type LinkageRange, type LinkageState, stateAtAngle } from './linkage.ts'
import { angleBetween, circlesMeet, distance, minus, type Vec } from './plane.ts'
import { root } from './solve.ts'

/** What moves as the axle rises: the drag link between pitman arm and axle, and what holds the axle sideways. */
export interface Suspension {
  /** heights of the drag link's joints above the axle's centre line at ride height */
  readonly ballHeight: number
  readonly jointHeight: number
  /** the bar that holds the axle sideways; null: springs that let it rise straight */
  readonly trackBar: {
    /** between its joints, in front view */
    readonly length: number
    /** height of its axle end above its frame end at ride height; below negative */
    readonly above: number
    readonly frameEnd: 'left' | 'right'
  } | null
}

/**
 * How far the axle goes to the right as it rises by `rise` (droop negative): the track bar's axle end swings about its frame
 * end. Undefined where the bar does not reach.
 */
export function axleShift(s: Suspension, rise: number): number | undefined {
  if (!s.trackBar) return 0
  const { length, above, frameEnd } = s.trackBar
  const [before, after] = [length ** 2 - above ** 2, length ** 2 - (above + rise) ** 2]
  if (!(before > 0 && after >= 0)) return undefined
  const towardsFrame = Math.sqrt(before) - Math.sqrt(after)
  return frameEnd === 'right' ? towardsFrame : -towardsFrame
}

/**
 * Where the linkage goes as the axle rises with the hand wheel held, exactly: the drag link keeps its length in space, the
 * axle moves up by `rise` and sideways with the track bar.
 *
 * @param held the state at ride height, before the axle moves
 * @returns undefined where a link does not reach
 */
export function stateWithRise(
  l: Linkage,
  chain: Chain,
  s: Suspension,
  range: LinkageRange,
  held: LinkageState,
  rise: number,
): LinkageState | undefined {
  const link = linkSeenFromAbove(chain, s, rise)
  const shift = axleShift(s, rise)
  const ball = chainAt(l, chain, held)?.ball
  if (link === undefined || shift === undefined || !ball) return undefined
  // in the axle's own frame it is the pitman arm's ball that has moved
  const seen = { x: ball.x - shift, y: ball.y }
  return chain.end.kind === 'knuckle' ? byKnuckle(l, chain.end, held, seen, link) : byRod(l, chain, range, held, seen, link)
}

/** The drag link keeps its length in space; with the height between its ends its length in plan changes. */
function linkSeenFromAbove(chain: Chain, s: Suspension, rise: number): number | undefined {
  const height = s.jointHeight - s.ballHeight
  const square = chain.link ** 2 + height ** 2 - (height + rise) ** 2
  return square > 0 ? Math.sqrt(square) : undefined
}

function byKnuckle(
  l: Linkage,
  end: Extract<Chain['end'], { kind: 'knuckle' }>,
  held: LinkageState,
  ball: Vec,
  link: number,
): LinkageState | undefined {
  const pivot = kingpin(l, end.side)
  const before = dragLinkJoint(l, end, held)
  const radius = Math.hypot(end.arm.x, end.arm.y)
  const [one, other] = [circlesMeet(pivot, radius, ball, link, 1), circlesMeet(pivot, radius, ball, link, -1)]
  const nearest = one && other && distance(other, before) < distance(one, before) ? other : one
  return nearest && stateAtAngle(l, end.side, angleBetween(end.arm, minus(nearest, pivot)))
}

function byRod(l: Linkage, chain: Chain, range: LinkageRange, held: LinkageState, ball: Vec, link: number): LinkageState | undefined {
  const off = (angle: number): number => {
    const s = stateAtAngle(l, 'left', angle)
    if (!s) return Number.NaN
    const joint = dragLinkJoint(l, chain.end, s)
    return Math.hypot(joint.x - ball.x, joint.y - ball.y) - link
  }
  // the way out from where it stood: the nearest place at which the drag link fits
  for (const reach of [0.05, 0.15, 0.4]) {
    const [low, high] = [Math.max(range.right.angle, held.left - reach), Math.min(range.left.angle, held.left + reach)]
    const found = root(off, low, high)
    if (found !== undefined) return stateAtAngle(l, 'left', found)
  }
  return undefined
}

/** Turn of the pitman arm that brings the wheels back to straight ahead with the axle risen: how far the hand wheel stands off. */
export function pitmanToHoldStraight(l: Linkage, chain: Chain, s: Suspension, rise: number): number | undefined {
  const straight = stateAtAngle(l, 'left', -l.toe / 2)
  const [link, shift] = [linkSeenFromAbove(chain, s, rise), axleShift(s, rise)]
  if (!straight || link === undefined || shift === undefined) return undefined
  const joint = dragLinkJoint(l, chain.end, straight)
  const ball = circlesMeet(chain.pivot, chain.pitman, { x: joint.x + shift, y: joint.y }, link, chain.branch)
  return ball && angleBetween({ x: Math.cos(chain.centre), y: Math.sin(chain.centre) }, minus(ball, chain.pivot))
}
