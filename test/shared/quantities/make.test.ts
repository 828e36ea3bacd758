import { describe, expect, it } from 'vitest'
import * as make from '../../../src/shared/quantities/make.ts'

const makers: Readonly<Record<string, (value: number) => number>> = { ...make }

describe('the makers', () => {
  // every right-hand side is exact by definition of the unit (NIST SP 811, appendix B), so no tolerance is needed
  it.each([
    ['ratio', 0.25, 0.25],
    ['metres', 1.5, 1.5],
    ['mm', 31.75, 0.03175],
    ['inches', 1.25, 0.03175],
    ['feet', 1, 0.3048],
    ['squareMetres', 2, 2],
    ['squareMillimetres', 1e6, 1],
    ['squareInches', 1, 0.00064516],
    ['cubicMetres', 2, 2],
    ['litres', 1, 0.001],
    ['radians', 1, 1],
    ['degrees', 180, Math.PI],
    ['newtons', 3, 3],
    ['poundsForce', 1, 4.4482216152605],
    ['pascals', 3, 3],
    ['megapascals', 1, 1e6],
    ['bar', 1, 1e5],
    ['newtonMetres', 3, 3],
    ['seconds', 3, 3],
    ['kilograms', 3, 3],
    ['litresPerMinute', 60, 0.001],
    ['centistokes', 32, 32e-6],
    ['perInch', 25.4, 1000],
  ] as const)('%s(%d) is %d', (name, value, si) => {
    expect(makers[name]?.(value)).toBe(si)
  })

  it.each([
    ['psi', 6894.757293168361],
    ['ksi', 6894757.293168361],
    ['poundFeet', 1.3558179483314],
    ['gallonsPerMinute', 0.003785411784 / 60],
  ] as const)('%s(1) is %d to the last bits', (name, si) => {
    // quotients of long integers: two roundings
    expect((makers[name]?.(1) ?? Number.NaN) / si).toBeCloseTo(1, 15)
  })

  it('are all named above', () => {
    expect(Object.keys(makers)).toHaveLength(27)
  })
})
