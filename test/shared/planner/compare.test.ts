import { describe, expect, it } from 'vitest'
import { comparePlans } from '../../../src/shared/planner/compare.ts'
import { DEMO, planOf } from './builds.ts'
import { LARCH, larch, larchPart } from './larch-forces.ts'

const plan = planOf(LARCH)

describe('what a change changes', () => {
  it('is nothing where nothing changed', () => {
    expect(comparePlans(plan, planOf(structuredClone(LARCH)))).toEqual({
      numbers: [],
      gone: [],
      come: [],
      changed: [],
      verdicts: [],
      cost: { before: plan.parts.totalMinor, after: plan.parts.totalMinor },
      remarks: [],
    })
  })

  it('shows numbers, findings and verdicts before and after', () => {
    const weak = comparePlans(plan, planOf(larchPart('pump', { reliefPressure: '300 psi' })))
    expect(weak.come.map((f) => f.code)).toContain('supply.too_weak')
    expect(weak.gone.map((f) => f.code)).toContain('supply.enough')
    const left = weak.numbers.find((n) => n.id === 'margin.left')
    expect((left?.after ?? 0) / (left?.before ?? 1)).toBeCloseTo(0.2, 9)
    expect(weak.numbers.every((n) => !n.id.includes('.via-'))).toBe(true)
    const mistakes = comparePlans(planOf(DEMO.corrected), planOf(DEMO.bought))
    expect(mistakes.verdicts.length).toBeGreaterThan(3)
    expect(mistakes.cost.before).not.toBe(mistakes.cost.after)
  })

  it('is the same turned round', () => {
    const [a, b] = [plan, planOf(larchPart('ram', { bore: '2 in' }))]
    const [there, back] = [comparePlans(a, b), comparePlans(b, a)]
    const flat = (n: (typeof there)['numbers'][number]) => [n.id, n.before, n.after]
    expect(back.numbers.map((n) => [n.id, n.after, n.before]).sort()).toEqual(there.numbers.map(flat).sort())
    expect(back.come).toEqual(there.gone)
  })

  it('a number that goes or comes is null on the other side', () => {
    const without = comparePlans(plan, planOf(larch({ forces: { steeringArm: undefined } })))
    expect(without.numbers.find((n) => n.id === 'margin.steering-arm')).toMatchObject({ before: expect.any(Number), after: null })
  })

  it('of the alloy alone does not raise the Euler load, and that is said', () => {
    const alloy = comparePlans(plan, planOf(larch({ forces: { tieRod: { material: '4130 DOM' } } })))
    expect(alloy.remarks.map((f) => [f.code, f.facts.which])).toEqual([['strength.alloy_no_help', 'tie rod']])
    expect(alloy.numbers.some((n) => n.id === 'strength.tie-rod.euler')).toBe(false)
    const thicker = comparePlans(
      plan,
      planOf(larchPart('tie-rod', { outsideDiameter: '1 3/4 in' }, { forces: { tieRod: { material: '4130 DOM' } } })),
    )
    expect(thicker.remarks).toEqual([])
  })
})
