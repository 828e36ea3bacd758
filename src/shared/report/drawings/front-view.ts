import { chainAt } from '../../formulas/linkage/chain.ts'
import { stateAtTravel } from '../../formulas/linkage/linkage.ts'
import { axleShift } from '../../formulas/linkage/suspension.ts'
import type { SteeringGeometry } from '../../planner/linkage/plan-types.ts'
import { AXIS, fittingScale, THIN, VISIBLE } from '../dimension-line.ts'
import type { Drawing, Ink, Item } from '../drawing.ts'
import { showIn, type UnitSystem } from '../units.ts'
import { circle, label, line, placeAt, shape } from './frame.ts'

const WIDTH = 180
const TOP = 12
const HIDDEN: Ink = { line: 'hidden' }

/**
 * Drag link and track bar as they swing, to scale, with the axle risen by `rise` (thin: at ride height). Seen from behind, so that
 * left is left. Where along the axle the track bar sits is not measured: it is drawn beside the drag link, in dashes.
 *
 * @returns null where heights of the drag link or the track bar are not known, or a link does not reach
 */
export function frontView(g: SteeringGeometry, rise: number, units: UnitSystem): Drawing | null {
  const { chain, suspension: s } = g
  const straight = stateAtTravel(g.linkage, 0, g.range)
  const at = chain && straight.ok ? chainAt(g.linkage, chain, straight.value) : undefined
  const shift = s && axleShift(s, rise)
  if (!s || !at || shift === null || shift === undefined) return null
  const radius = (g.wheel.diameter ?? 0.8) / 2
  const half = g.linkage.spacing / 2 + (g.wheel.outset ?? 0.1) + (g.wheel.width ?? 0.25) / 2
  const scale = fittingScale(2 * half, WIDTH - 10)
  const high = Math.max(radius, s.ballHeight) + 0.15
  const place = placeAt({ x: WIDTH / 2, y: TOP + high * scale.factor }, scale.factor)
  const height = TOP + (high + radius + 0.15) * scale.factor + 6
  const show = showIn(units)
  const axle = (dx: number, dz: number, ink: Ink): Item[] => [
    line(place({ x: -half + dx, y: dz }), place({ x: half + dx, y: dz }), ink),
    ...[-1, 1].map((side) => {
      const [inner, outer] = [side * (half - (g.wheel.width ?? 0.25)), side * half]
      const corners = [
        { x: inner, y: radius },
        { x: outer, y: radius },
        { x: outer, y: -radius },
        { x: inner, y: -radius },
      ]
      return shape(
        corners.map((c) => place({ x: c.x + dx, y: c.y + dz })),
        ink,
      )
    }),
  ]
  const ball = { x: at.ball.x, y: s.ballHeight }
  const joint = { x: at.joint.x + shift, y: s.jointHeight + rise }
  return {
    id: 'front-view',
    title: 'Drag link and track bar over the suspension’s travel',
    description:
      `Axle ${show(Math.abs(rise), 'length')} ${rise >= 0 ? 'up' : 'down'}: the drag link's joint at the axle stands ${show(joint.y - ball.y, 'length')} above the pitman ball, ` +
      `the axle has gone ${show(Math.abs(shift), 'length')} to the ${shift >= 0 ? 'right' : 'left'}.`,
    width: WIDTH,
    height,
    items: [
      label({ x: 2, y: 6 }, `Scale ${scale.text}`, 'start', 3.5),
      label({ x: WIDTH - 2, y: 6 }, 'seen from behind, left is left', 'end'),
      ...axle(0, 0, THIN),
      ...(rise === 0 ? [] : axle(shift, rise, VISIBLE)),
      line(place({ x: 0, y: high - 0.05 }), place({ x: 0, y: -radius }), AXIS),
      line(place(ball), place({ x: at.joint.x, y: s.jointHeight }), THIN),
      line(place(ball), place(joint), VISIBLE),
      circle(place(ball), 1.5, { line: 'visible', fill: 'paper' }),
      circle(place(joint), 1.5, { line: 'visible', fill: 'paper' }),
      label({ x: place(ball).x, y: place(ball).y - 3 }, 'pitman ball'),
      ...trackBar(g, rise, shift, ball.x, place),
    ],
  }
}

function trackBar(
  { suspension }: SteeringGeometry,
  rise: number,
  shift: number,
  beside: number,
  place: ReturnType<typeof placeAt>,
): Item[] {
  const bar = suspension?.trackBar
  if (!bar) return []
  const level = Math.sqrt(bar.length ** 2 - bar.above ** 2)
  const way = bar.frameEnd === 'left' ? 1 : -1
  const frame = { x: bar.frameEnd === 'left' ? beside : -beside, y: Math.max(0, -bar.above) + 0.02 }
  const axleEnd = { x: frame.x + way * level + shift, y: frame.y + bar.above + rise }
  return [
    line(place(frame), place(axleEnd), HIDDEN),
    circle(place(frame), 1.2, THIN),
    circle(place(axleEnd), 1.2, THIN),
    label({ x: (place(frame).x + place(axleEnd).x) / 2, y: (place(frame).y + place(axleEnd).y) / 2 + 4 }, 'track bar'),
  ]
}
