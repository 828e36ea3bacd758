import type { ForceCurve, WorstPlace } from '../../planner/forces-types.ts'
import { AXIS, THIN, VISIBLE } from '../dimension-line.ts'
import type { Drawing, Ink, Item, Point } from '../drawing.ts'
import { showIn, type UnitSystem } from '../units.ts'
import { curve, label, line } from './frame.ts'

const WIDTH = 170
const HEIGHT = 92
const AREA = { left: 14, right: 146, top: 12, bottom: 78 } as const
const SUPPLY: Ink = VISIBLE
const DEMAND: Ink = { line: 'hidden' }

/**
 * What is asked for (dashed) and what there is (full) over the travel of the tie rod, one picture for each turn: where the dashed
 * line comes to the full one, the hand has to help.
 */
export function forceCurves(plan: ForceCurve, worst: readonly WorstPlace[], turn: 'left' | 'right', units: UnitSystem): Drawing {
  const show = showIn(units)
  const demand = turn === 'left' ? plan.demandLeft : plan.demandRight
  const supply = turn === 'left' ? plan.supplyLeft : plan.supplyRight
  const most = Math.max(...demand, ...(supply ?? []), 1)
  const [low, high] = [plan.travel[0] ?? -1, plan.travel.at(-1) ?? 1]
  const at = (travel: number, force: number): Point => ({
    // wheels to the left stand on the left of the picture
    x: AREA.left + ((high - travel) / (high - low)) * (AREA.right - AREA.left),
    y: AREA.bottom - (force / most) * (AREA.bottom - AREA.top),
  })
  const points = (forces: readonly number[]): Point[] => plan.travel.map((t, n) => at(t, forces[n] ?? 0))
  const named = (forces: readonly number[], name: string): Item => {
    const end = at(low, forces[0] ?? 0)
    return label({ x: end.x + 2, y: end.y + 1 }, name, 'start')
  }
  const place = worst.find((w) => w.turn === turn)
  const hard = place && at(place.travel, place.demand)
  return {
    id: `force-${turn}`,
    title: `Turning ${turn}: force asked for and force there is`,
    description: words(turn, place, show),
    width: WIDTH,
    height: HEIGHT,
    items: [
      line({ x: AREA.left, y: AREA.bottom }, { x: AREA.right, y: AREA.bottom }, AXIS),
      line({ x: at(0, 0).x, y: AREA.top }, { x: at(0, 0).x, y: AREA.bottom }, AXIS),
      label({ x: AREA.left, y: AREA.top - 4 }, show(most, 'force'), 'start'),
      line({ x: AREA.left - 2, y: AREA.top }, { x: AREA.left + 2, y: AREA.top }, THIN),
      label({ x: AREA.left, y: AREA.bottom + 6 }, `${show(Math.abs(high), 'length')} left`, 'start'),
      label({ x: at(0, 0).x, y: AREA.bottom + 6 }, 'straight'),
      label({ x: AREA.right, y: AREA.bottom + 6 }, `${show(Math.abs(low), 'length')} right`, 'end'),
      curve(points(demand), DEMAND),
      named(demand, 'asked for'),
      ...(supply ? [curve(points(supply), SUPPLY), named(supply, 'there is')] : []),
      ...(hard ? [{ kind: 'circle', centre: hard, radius: 1.6, ink: VISIBLE } as const] : []),
    ],
  }
}

function words(turn: string, place: WorstPlace | undefined, show: ReturnType<typeof showIn>): string {
  if (!place) return `Force asked for to turn ${turn} over the travel.`
  const where =
    Math.abs(place.travel) < 1e-9
      ? 'straight ahead'
      : `${show(Math.abs(place.travel), 'length')} to the ${place.travel > 0 ? 'left' : 'right'}`
  const there = place.supply === null ? 'what there is, is not known' : `there is ${show(place.supply, 'force')}`
  return `Turning ${turn} is hardest with the tie rod ${where}: ${show(place.demand, 'force')} is asked for, ${there}.`
}
