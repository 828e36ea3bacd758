import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { readBuild } from '../../src/shared/model/exchange.ts'
import { plan } from '../../src/shared/planner/index.ts'
import { atTravel } from '../../src/shared/planner/linkage/at-travel.ts'
import { planView } from '../../src/shared/report/drawings/plan-view.ts'
import { middleOf, ms, percentile, times, timesOf } from './measure.ts'

const STEPS = 400

/** One step of dragging the wheels on the demo: the whole plan anew and the picture drawn; against the state alone and a bare JSON copy of the plan. */
export async function bench(): Promise<readonly string[]> {
  const text = readFileSync(join(import.meta.dirname, '../../src/main/procedures/demo/corrected.json'), 'utf8')
  const read = readBuild(text)
  if (!read.ok) throw new Error('the demo file is faulty')
  const { build } = read.value
  const { linkage, limits } = plan(build)
  if (!linkage || !limits) return ['the demo has no geometry to drag']
  let step = 0
  // there and back through the whole travel, as a hand does it
  const travel = () => {
    step = (step + 1) % STEPS
    const share = Math.sin((2 * Math.PI * step) / STEPS)
    return share * (limits[share >= 0 ? 'left' : 'right'].lines[0]?.travel ?? 0)
  }
  const drag = () => {
    const now = plan(build)
    return now.linkage && planView(now.linkage.geometry, now.limits, travel(), 'inch')
  }
  for (let i = 0; i < STEPS; i++) drag()
  const whole = await timesOf(STEPS, drag)
  const floor = await middleOf(50, () => structuredClone(linkage.curve))
  const picture = await timesOf(STEPS, () => planView(linkage.geometry, limits, travel(), 'inch'))
  const state = await timesOf(STEPS, () => atTravel(linkage.geometry, travel()))
  const worst = percentile(whole, 0.95)
  return [
    `floor, a copy of the curves: ${ms(floor)}`,
    `whole plan and picture for a step: middle ${ms(percentile(whole, 0.5))}, 95th percentile ${ms(worst)}, ${times(worst / floor)} the floor (wanted: under 8 ms)`,
    `picture alone: 95th percentile ${ms(percentile(picture, 0.95))}`,
    `state alone: 95th percentile ${ms(percentile(state, 0.95))} (wanted: under 0.1 ms)`,
  ]
}
