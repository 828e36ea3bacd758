import { describe, expect, it } from 'vitest'
import { evaluate } from '../../../src/shared/formulas/card.ts'
import { ramAnnulusArea } from '../../../src/shared/formulas/hydraulics/ram.ts'
import { findFormula } from '../../../src/shared/formulas/index.ts'
import { trapezoidOuterAngle } from '../../../src/shared/formulas/linkage/trapezoid.ts'
import { inches, metres, radians } from '../../../src/shared/quantities/make.ts'

describe('evaluate', () => {
  it('gives the result inside the range', () => {
    expect(evaluate(ramAnnulusArea, { D: inches(2), d: inches(1) })).toEqual({ ok: true, value: expect.closeTo(2.35619 * 0.0254 ** 2, 8) })
  })

  it('names every symbol out of range at once', () => {
    const result = evaluate(ramAnnulusArea, { D: inches(0), d: inches(-1) })
    expect(result.ok ? [] : result.issues.map((i) => [i.code, ...i.path])).toEqual([
      ['formula.out_of_range', 'D'],
      ['formula.out_of_range', 'd'],
    ])
  })

  it('says which condition between symbols is broken', () => {
    const result = evaluate(ramAnnulusArea, { D: inches(1), d: inches(1) })
    expect(result).toMatchObject({ ok: false, issues: [{ code: 'formula.requires', facts: { formula: 'ram.annulus-area' } }] })
  })

  it('says so where a linkage cannot close', () => {
    // a rod of 0.12 m between pivots 0.5 m apart on arms of 0.2 m does not let a wheel turn by 60°
    const result = evaluate(trapezoidOuterAngle, { w: metres(0.5), d: metres(0.2), beta: radians(0.95), delta_i: radians(-1.05) })
    expect(result).toMatchObject({ ok: false, issues: [{ code: 'formula.no_value' }] })
  })

  it('takes a missing symbol as out of range, not as a number', () => {
    const card = findFormula('ram.cap-area')
    if (!card) throw new Error('no card')
    expect(evaluate(card, {})).toMatchObject({ ok: false, issues: [{ code: 'formula.out_of_range', path: ['D'] }] })
  })
})
