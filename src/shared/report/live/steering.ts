import { atTravel, type SteeringState } from '../../planner/linkage/at-travel.ts'
import { type Grip, type Reach, within } from '../../planner/linkage/drag.ts'
import { type LimitLine, type LimitsPlan, SIDES, type SteeringGeometry } from '../../planner/linkage/plan-types.ts'
import { inches, mm } from '../../quantities/make.ts'
import { significant } from '../../quantities/print.ts'
import type { State } from '../document.ts'
import type { Drawing, Point } from '../drawing.ts'
import { gripOutlines, planView } from '../drawings/plan-view.ts'
import { LIMIT_LETTERS } from '../drawings/travel-scale.ts'
import { showIn, showTape, type UnitSystem } from '../units.ts'

/** Nearer than this a limit counts as reached: less than any tape shows. */
const AT = 5e-5
/** A ratio of the pitman's chain beyond this is its dead point. */
const LARGEST_RATIO = 200

export interface ReadOut {
  readonly id: string
  readonly label: string
  readonly value: string
  readonly state?: State
}

/** How a limit stands at the place shown; `state` is told by the word as well. */
export interface LiveLimit {
  readonly key: string
  readonly letter: string
  readonly what: LimitLine['what']
  readonly side: LimitLine['side']
  readonly travel: string
  readonly state: State | 'none'
  readonly word: string
}

export interface LiveSteering {
  readonly travel: number
  readonly drawing: Drawing
  readonly grips: Readonly<Record<Grip, readonly Point[]>> | null
  readonly readOuts: readonly ReadOut[]
  readonly limits: readonly LiveLimit[]
  /** where the steering stands, and every limit that is reached, in one line */
  readonly line: string
}

/** How far one press of an arrow key goes, as a tape is divided: 1/16 in or 1 mm. */
export const stepOf = (units: UnitSystem): number => (units === 'inch' ? inches(1 / 16) : mm(1))

/** The steering at one place of its travel as the window shows it: the picture, the read-outs and how each limit stands. */
export function liveSteering(g: SteeringGeometry, limits: LimitsPlan | null, reach: Reach, asked: number, units: UnitSystem): LiveSteering {
  const travel = within(reach, asked)
  const found = atTravel(g, travel)
  const live = limits ? SIDES.flatMap((side) => limits[side].lines.map((l) => liveLimit(l, limits.room, travel, units))) : []
  const reached = live.filter((l) => l.state === 'stops' || l.state === 'look' || l.state === 'good')
  return {
    travel,
    drawing: planView(g, limits, travel, units),
    grips: found.ok ? gripOutlines(g, found.value) : null,
    readOuts: found.ok ? readOuts(g, found.value, units) : [],
    limits: live,
    line: [`Tie rod ${placeOf(travel, units)}.`, ...reached.map((l) => `To the ${l.side}, ${l.what}: ${l.word}.`)].join(' '),
  }
}

/** "straight ahead", "2 1/2 in to the left". */
export const placeOf = (travel: number, units: UnitSystem): string =>
  Math.abs(travel) < AT ? 'straight ahead' : `${showTape(Math.abs(travel), units)} to the ${travel > 0 ? 'left' : 'right'}`

function liveLimit(l: LimitLine, room: number, travel: number, units: UnitSystem): LiveLimit {
  const left = l.travel - (l.side === 'left' ? travel : -travel)
  const stop = l.what === 'knuckle stop'
  const said = (): readonly [State | 'none', string] => {
    if (Math.abs(left) <= AT) return [stop ? 'good' : 'stops', stop ? 'reached, as it should be' : 'reached']
    if (left < 0) return [stop ? 'look' : 'stops', `passed by ${showTape(-left, units)}`]
    return [left <= room ? 'noted' : 'none', `${left <= room ? 'near: ' : ''}${showTape(left, units)} to go`]
  }
  const [state, word] = said()
  const { id: key, what, side } = l
  return { key: `${key} ${side}`, letter: LIMIT_LETTERS[what], what, side, travel: showTape(l.travel, units), state, word }
}

function readOuts(g: SteeringGeometry, s: SteeringState, units: UnitSystem): readonly ReadOut[] {
  const show = showIn(units)
  const angle = (a: number) => (Math.abs(a) < 1e-4 ? show(0, 'angle') : `${show(Math.abs(a), 'angle')} ${a > 0 ? 'left' : 'right'}`)
  const out: ReadOut[] = [
    { id: 'travel', label: 'Tie rod', value: placeOf(s.travel, units) },
    { id: 'left', label: 'Left wheel', value: angle(s.left) },
    { id: 'right', label: 'Right wheel', value: angle(s.right) },
  ]
  if (s.ackermann !== null) {
    const off = s.ackermann
    const value = Math.abs(off) < 1e-4 ? 'rolls true' : `${show(Math.abs(off), 'angle')} too ${off < 0 ? 'little' : 'much'}`
    out.push({ id: 'ackermann', label: 'Outer wheel against true rolling', value })
  }
  if (s.pitman) out.push({ id: 'pitman', label: 'Pitman arm', value: angle(s.pitman.angle) })
  if (s.ratio !== null && s.ratio < LARGEST_RATIO)
    out.push({ id: 'ratio', label: 'Hand wheel to wheels', value: `${significant(s.ratio, 3)} : 1` })
  return [...out, ...ramReadOuts(g, s, units)]
}

function ramReadOuts({ ram }: SteeringGeometry, s: SteeringState, units: UnitSystem): readonly ReadOut[] {
  if (!ram || !s.ram) return []
  const { length, spareClosed, spareOpen } = s.ram
  const tape = (l: number) => (l < 0 ? `${showTape(-l, units)} too far` : showTape(l, units))
  const room = (id: string, label: string, spare: number | null): readonly ReadOut[] =>
    spare === null ? [] : [{ id, label, value: tape(spare), ...(spare <= AT && { state: 'stops' as const }) }]
  const used = spareClosed !== null && ram.stroke !== null ? `${showTape(spareClosed, units)} of ${showTape(ram.stroke, units)}` : null
  return [
    ram.ended === 'double'
      ? { id: 'ram', label: 'Ram’s rod from its middle', value: `${showTape(Math.abs(length), units)} ${length < 0 ? 'left' : 'right'}` }
      : { id: 'ram', label: 'Ram, pin to pin', value: showTape(length, units) },
    ...(used === null ? [] : [{ id: 'stroke', label: 'Stroke out', value: used }]),
    ...room('closed', 'Room before it is closed', spareClosed),
    ...room('open', 'Room before it is fully out', spareOpen),
    ...room('clearance', 'Ram’s body to tie rod', s.clearance),
  ]
}
