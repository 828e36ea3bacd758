import { describe, expect, it } from 'vitest'
import type { Plan } from '../../../src/shared/planner/plan.ts'
import { sensitivities } from '../../../src/shared/planner/sensitivity.ts'
import { number, planOf } from './builds.ts'
import { LARCH, larch, larchPart } from './larch-forces.ts'

const plan = planOf(LARCH)
const margins = plan.numbers.filter((n) => n.id.startsWith('margin.')).map((n) => n.id)
const of = (margin: string) => plan.forces.sensitivities.find((s) => s.margin === margin)?.inputs ?? []
const change = (p: Plan, id: string) => number(p, id).si / number(plan, id).si - 1

describe('what moves a margin', () => {
  it('is told of every margin: five inputs at most, the greatest first, each with where it came from', () => {
    expect(plan.forces.sensitivities.map((s) => s.margin)).toEqual(margins)
    for (const { inputs } of plan.forces.sensitivities) {
      expect(inputs.length).toBeGreaterThan(0)
      expect(inputs.length).toBeLessThanOrEqual(5)
      const sizes = inputs.map((i) => Math.max(Math.abs(i.greater), Math.abs(i.smaller)))
      expect(sizes).toEqual([...sizes].sort((a, b) => b - a))
      for (const i of inputs) expect(i.origin.kind).not.toBe('number')
    }
  })

  it('is what a new plan with that input a tenth greater or smaller gives', () => {
    const load = of('margin.left').find((i) => i.name.endsWith('frontAxleLoad'))
    for (const [k, told] of [
      [1.1, load?.greater],
      [0.9, load?.smaller],
    ] as const) {
      expect(told).toBeCloseTo(change(planOf(larch({ vehicle: { frontAxleLoad: `${3300 * k} lbf` } })), 'margin.left'), 9)
    }
    const bore = of('margin.ram-column').find((i) => i.name.endsWith('/bore'))
    expect(bore?.greater).toBeCloseTo(change(planOf(larchPart('ram', { bore: `${1.75 * 1.1} in` })), 'margin.ram-column'), 6)
    const spacing = of('margin.tieRod-buckling').find((i) => i.name.endsWith('kingpinSpacing'))
    // the hardest place along the travel is not searched for again, and the box's part hangs on it a little
    expect(spacing?.greater).toBeCloseTo(change(planOf(larch({ axle: { kingpinSpacing: `${58 * 1.1} in` } })), 'margin.tieRod-buckling'), 1)
  })

  it('leaves out what is set once and for all, and which of two ways something is', () => {
    for (const { inputs } of sensitivities(plan.numbers, margins)) {
      for (const i of inputs) expect(i.name).not.toMatch(/chosen (?:pinned|solid|two ends)|axle\/tieRod/)
    }
  })

  it('says nothing of a number that is not there', () => {
    expect(sensitivities(plan.numbers, ['margin.nothing'])).toEqual([])
    expect(sensitivities([], margins)).toEqual([])
  })
})
