import type { BumpSteerPlan } from '../../planner/linkage/plan-types.ts'
import { AXIS, THIN, VISIBLE } from '../dimension-line.ts'
import type { Drawing, Ink, Item, Point } from '../drawing.ts'
import { showIn, type UnitSystem } from '../units.ts'
import { curve, label, line } from './frame.ts'

const WIDTH = 120
const HEIGHT = 90
const AREA = { left: 14, right: 106, top: 10, bottom: 80 } as const
const INKS: readonly Ink[] = [VISIBLE, { line: 'hidden' }, THIN]

/**
 * Steer error (across) over the rise of the axle (up): a straight line up the middle is what one wants.
 *
 * @param marked a rise at which a line is drawn across
 */
export function bumpSteerDrawing(plan: BumpSteerPlan, units: UnitSystem, marked?: number): Drawing {
  const show = showIn(units)
  const known = plan.curves.flatMap((c) => c.error.filter((e) => e !== null))
  const most = Math.max(...known.map(Math.abs), 1e-4)
  const [low, high] = [Math.min(...plan.rise), Math.max(...plan.rise)]
  const at = (error: number, rise: number): Point => ({
    x: (AREA.left + AREA.right) / 2 - (error / most) * ((AREA.right - AREA.left) / 2),
    y: AREA.bottom - ((rise - low) / (high - low || 1)) * (AREA.bottom - AREA.top),
  })
  const curves = plan.curves.flatMap(({ error, travel }, i): Item[] => {
    const points = plan.rise.flatMap((rise, k) => {
      const e = error[k]
      return e === null || e === undefined ? [] : [at(e, rise)]
    })
    const last = points.at(-1)
    const name = travel === 0 ? 'straight' : travel > 0 ? 'half left' : 'half right'
    return [curve(points, INKS[i % INKS.length] as Ink), ...(last ? [label({ x: last.x, y: last.y - 1.5 - 3.4 * i }, name)] : [])]
  })
  const zero = at(0, 0)
  return {
    id: 'bump-steer',
    title: 'Bump steer',
    description: plan.curves
      .map((c) => {
        const name = c.travel === 0 ? 'Straight ahead' : `Turned half way to the ${c.travel > 0 ? 'left' : 'right'}`
        return `${name}: ${words(c.error[0], show)} at full droop, ${words(c.error.at(-1), show)} at full bump.`
      })
      .join(' '),
    width: WIDTH,
    height: HEIGHT,
    items: [
      line({ x: zero.x, y: AREA.top }, { x: zero.x, y: AREA.bottom }, AXIS),
      line({ x: AREA.left, y: zero.y }, { x: AREA.right, y: zero.y }, AXIS),
      label({ x: AREA.left, y: AREA.bottom + 6 }, `${show(most, 'angle')} left`, 'start'),
      label({ x: AREA.right, y: AREA.bottom + 6 }, `${show(most, 'angle')} right`, 'end'),
      label({ x: AREA.left - 1, y: AREA.top + 2 }, `bump ${show(high, 'length')}`, 'start'),
      label({ x: AREA.left - 1, y: AREA.bottom - 1 }, `droop ${show(-low, 'length')}`, 'start'),
      ...(marked === undefined ? [] : [line({ x: AREA.left, y: at(0, marked).y }, { x: AREA.right, y: at(0, marked).y }, THIN)]),
      ...curves,
    ],
  }
}

const words = (error: number | null | undefined, show: (si: number, dimension: 'angle') => string): string =>
  error === null || error === undefined ? 'not reached' : `${show(Math.abs(error), 'angle')} to the ${error >= 0 ? 'left' : 'right'}`
