import { kingpin } from '../../formulas/linkage/linkage.ts'
import { turned, type Vec } from '../../formulas/linkage/plane.ts'
import { atTravel, type SteeringState } from '../../planner/linkage/at-travel.ts'
import type { Grip } from '../../planner/linkage/drag.ts'
import { type LimitsPlan, SIDES, type SteeringGeometry } from '../../planner/linkage/plan-types.ts'
import { AXIS, fittingScale, THIN, VISIBLE } from '../dimension-line.ts'
import type { Drawing, Ink, Item, Point } from '../drawing.ts'
import { showIn, showTape, type UnitSystem } from '../units.ts'
import { arc, bar, circle, curve, label, line, type Place, placeAt, shape } from './frame.ts'
import { travelScale } from './travel-scale.ts'

const WIDTH = 180
const TOP = 12
const SCALE_ROOM = 34
/** drawn where nobody has measured: sizes of a usual wheel and bar, so that the picture has something to turn */
const USUAL = { diameter: 0.8, width: 0.25, outset: 0.1, bar: 0.035, body: 0.055 } as const
const PART: Ink = { line: 'visible', fill: 'part' }
const HIDDEN: Ink = { line: 'hidden' }

/**
 * The steering seen from above, to scale, at one place of its travel: axle, kingpins, arms, tie rod, wheels at their angles, ram,
 * pitman arm and drag link, and below it the scale of the travel with every limit on it.
 *
 * @param travel of the tie rod, left turn positive; beyond what the links allow the picture stays at straight ahead and says so
 */
export function planView(g: SteeringGeometry, limits: LimitsPlan | null, travel: number, units: UnitSystem): Drawing {
  const asked = atTravel(g, travel)
  const straight = atTravel(g, 0)
  const s = asked.ok ? asked.value : straight.ok ? straight.value : undefined
  const { scale, height, place } = planFrame(g)
  const items: Item[] = [
    label({ x: 2, y: 6 }, `Scale ${scale.text}`, 'start', 3.5),
    label({ x: WIDTH - 2, y: 6 }, 'seen from above, front at the top', 'end'),
    ...(s ? steering(g, s, place) : []),
    ...(s && !asked.ok ? [label({ x: WIDTH / 2, y: 6 }, 'a link does not reach here', 'middle', 3.5, 'stops')] : []),
    ...(s ? readings(s, place, g, units) : []),
    ...travelScale(limits, s?.travel ?? 0, height - SCALE_ROOM + 12, WIDTH, units),
  ]
  return {
    id: 'plan-view',
    title: 'Steering, seen from above',
    description: words(s, asked.ok, limits, units),
    width: WIDTH,
    height,
    items,
  }
}

/** Scale and size of the plan view, the same at every travel, and where on it a place of the vehicle is; `vehicle` leads back. */
export function planFrame(g: SteeringGeometry) {
  const extent = extentOf(g)
  const scale = fittingScale(extent.right - extent.left, WIDTH - 12)
  const height = TOP + (extent.ahead - extent.behind) * scale.factor + SCALE_ROOM
  const origin = { x: WIDTH / 2, y: TOP + extent.ahead * scale.factor }
  const vehicle = (p: Point): Vec => ({ x: (p.x - origin.x) / scale.factor, y: (origin.y - p.y) / scale.factor })
  return { scale, height, place: placeAt(origin, scale.factor), vehicle }
}

/** What has to be on the picture: wheels turned full, ram, box. */
function extentOf(g: SteeringGeometry): { left: number; right: number; ahead: number; behind: number } {
  const wheel = wheelOf(g)
  const half = Math.hypot(wheel.diameter, wheel.width) / 2
  const side = g.linkage.spacing / 2 + wheel.outset + half * 0.85
  const chain = g.chain
  const ahead = Math.max(half, chain ? chain.pivot.y + 0.06 : 0, g.linkage.tieRod === 'ahead' ? g.linkage.left.length + 0.06 : 0)
  const behind = -Math.max(half, g.linkage.tieRod === 'behind' ? g.linkage.left.length + 0.06 : 0)
  return { left: -side, right: side, ahead, behind }
}

const wheelOf = ({ wheel }: SteeringGeometry) => ({
  diameter: wheel.diameter ?? USUAL.diameter,
  width: wheel.width ?? USUAL.width,
  outset: wheel.outset ?? USUAL.outset,
})

function steering(g: SteeringGeometry, s: SteeringState, place: Place): Item[] {
  const [l, r] = [kingpin(g.linkage, 'left'), kingpin(g.linkage, 'right')]
  const tube = g.rodDiameter ?? USUAL.bar
  return [
    bar(place, l, r, 0.075, { line: 'visible', fill: 'paper' }),
    line(place({ x: 0, y: 0.08 }), place({ x: 0, y: -0.08 }), AXIS),
    ...SIDES.flatMap((side) => wheelItems(g, side, side === 'left' ? s.left : s.right, place)),
    ...(s.pitman && g.chain ? chainItems(g, s.pitman, place) : []),
    bar(place, l, s.a, 0.05, PART),
    bar(place, r, s.b, 0.05, PART),
    bar(place, s.a, s.b, tube, PART),
    ...ramItems(g, s, place),
    ...[s.a, s.b].flatMap((v) => joint(v, place)),
    ...[l, r].flatMap((v) => [circle(place(v), 2, { line: 'visible', fill: 'paper' }), circle(place(v), 0.5, VISIBLE)]),
  ]
}

const joint = (v: Vec, place: Place): Item[] => [circle(place(v), 1.3, { line: 'visible', fill: 'paper' })]

/** Takes a place of a wheel (from its middle: to the right, ahead) to one of the vehicle. */
function onWheel(g: SteeringGeometry, side: 'left' | 'right', angle: number): (x: number, y: number) => Vec {
  const pin = kingpin(g.linkage, side)
  const out = side === 'left' ? -1 : 1
  return (x, y) => {
    const v = turned({ x: out * wheelOf(g).outset + x, y }, angle)
    return { x: pin.x + v.x, y: pin.y + v.y }
  }
}

/** Where a hand takes hold of the wheels and the tie rod at this state, as outlines on the sheet. */
export function gripOutlines(g: SteeringGeometry, s: SteeringState): Readonly<Record<Grip, readonly Point[]>> {
  const { place } = planFrame(g)
  const { diameter, width } = wheelOf(g)
  const wheel = (side: 'left' | 'right') => {
    const at = onWheel(g, side, s[side])
    const [w, h] = [width / 2, diameter / 2]
    return [at(-w, h), at(w, h), at(w, -h), at(-w, -h)].map(place)
  }
  // as wide as a finger needs, whatever the tube
  const half = 0.07
  const rod = [
    { x: s.a.x, y: s.a.y + half },
    { x: s.b.x, y: s.b.y + half },
    { x: s.b.x, y: s.b.y - half },
    { x: s.a.x, y: s.a.y - half },
  ].map(place)
  return { 'left wheel': wheel('left'), 'right wheel': wheel('right'), 'tie rod': rod }
}

function wheelItems(g: SteeringGeometry, side: 'left' | 'right', angle: number, place: Place): Item[] {
  const { diameter, width } = wheelOf(g)
  const pin = kingpin(g.linkage, side)
  const out = side === 'left' ? -1 : 1
  const at = onWheel(g, side, angle)
  const [h, w] = [diameter / 2, width / 2]
  const round = Math.min(0.04, w / 2)
  const outline = [
    at(-w + round, h),
    at(w - round, h),
    at(w, h - round),
    at(w, -h + round),
    at(w - round, -h),
    at(-w + round, -h),
    at(-w, -h + round),
    at(-w, h - round),
  ].map(place)
  const known = g.wheel.diameter !== null && g.wheel.width !== null && g.wheel.outset !== null
  return [
    shape(outline, known ? VISIBLE : HIDDEN),
    line(place(at(0, h * 1.06)), place(at(0, -h * 1.06)), AXIS),
    line(place(pin), place(at(-out * w, 0)), VISIBLE),
  ]
}

function chainItems(g: SteeringGeometry, p: NonNullable<SteeringState['pitman']>, place: Place): Item[] {
  const { chain, linkage } = g
  if (!chain) return []
  const arm = chain.end.kind === 'knuckle' ? [bar(place, kingpin(linkage, chain.end.side), p.joint, 0.04, PART)] : []
  const { pivot } = chain
  const box = [
    { x: pivot.x - 0.06, y: pivot.y - 0.07 },
    { x: pivot.x + 0.06, y: pivot.y - 0.07 },
    { x: pivot.x + 0.06, y: pivot.y + 0.07 },
    { x: pivot.x - 0.06, y: pivot.y + 0.07 },
  ]
  const half = g.box.sweep === null ? null : g.box.sweep / 2
  const middle = chain.centre - chain.offCentre
  return [
    shape(box.map(place), { line: 'thin', fill: 'paper' }),
    ...(half === null ? [] : [curve(arc(place, pivot, chain.pitman, middle - half, middle + half), THIN)]),
    ...arm,
    bar(place, p.ball, p.joint, USUAL.bar, PART),
    bar(place, pivot, p.ball, 0.045, PART),
    circle(place(pivot), 1.8, { line: 'visible', fill: 'paper' }),
    ...joint(p.ball, place),
    ...joint(p.joint, place),
  ]
}

function ramItems(g: SteeringGeometry, s: SteeringState, place: Place): Item[] {
  const { ram } = g
  if (!ram || !s.ram) return []
  const base = ram.base
  const length = Math.hypot(s.ram.pin.x - base.x, s.ram.pin.y - base.y) || 1
  const dir = { x: (s.ram.pin.x - base.x) / length, y: (s.ram.pin.y - base.y) / length }
  const on = (k: number): Vec => ({ x: base.x + k * dir.x, y: base.y + k * dir.y })
  const body = ram.bodyLength ?? (ram.closed ?? length) * 0.8
  const wide = ram.bodyDiameter ?? USUAL.body
  const state = spareState(s)
  const ink: Ink = { line: 'visible', fill: 'paper', ...(state && { state }) }
  const rod =
    ram.ended === 'double'
      ? [bar(place, { x: s.ram.pin.x - body * 0.9, y: base.y }, { x: s.ram.pin.x + body * 0.9, y: base.y }, 0.02, PART)]
      : [bar(place, base, s.ram.pin, 0.02, PART)]
  const thick =
    ram.ended === 'double'
      ? bar(place, { x: base.x - body / 2, y: base.y }, { x: base.x + body / 2, y: base.y }, wide, ink)
      : bar(place, on(0), on(Math.min(body, length)), wide, ink)
  return [...rod, thick, ...joint(base, place), ...joint(s.ram.pin, place)]
}

const spareState = ({ ram }: SteeringState): 'stops' | undefined =>
  ram && ram.spareClosed !== null && ram.spareOpen !== null && Math.min(ram.spareClosed, ram.spareOpen) <= 0 ? 'stops' : undefined

/** Wheel angles beside the wheels. */
function readings(s: SteeringState, place: Place, g: SteeringGeometry, units: UnitSystem): Item[] {
  const show = showIn(units)
  return SIDES.map((side) => {
    const pin = kingpin(g.linkage, side)
    const out = side === 'left' ? 1 : -1
    return label(place({ x: pin.x + out * 0.14, y: 0.09 }), show(Math.abs(s[side]), 'angle'), side === 'left' ? 'start' : 'end', 3.5)
  })
}

function words(s: SteeringState | undefined, reached: boolean, limits: LimitsPlan | null, units: UnitSystem): string {
  if (!s) return 'The links do not close; there is nothing to draw.'
  const show = showIn(units)
  const way = s.travel > 0 ? 'left' : 'right'
  const where =
    Math.abs(s.travel) < 1e-9
      ? 'Wheels straight ahead.'
      : `Wheels turned to the ${way}, tie rod ${showTape(Math.abs(s.travel), units)} from the middle.`
  const angles = ` Left wheel ${show(Math.abs(s.left), 'angle')}, right wheel ${show(Math.abs(s.right), 'angle')}.`
  const stops = SIDES.map((side) => {
    const first = limits?.[side].lines[0]
    return first ? ` To the ${side} the ${first.what} comes first, at ${showTape(first.travel, units)}.` : ''
  })
  return `${reached ? '' : 'A link does not reach there. '}${where}${angles}${stops.join('')}`
}
