import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { FORMULAS } from '../../../src/shared/formulas/index.ts'
import { setEquation, setSymbol } from '../../../src/shared/report/equation.ts'

describe('setEquation', () => {
  it.each([
    ['A = pi * D^2 / 4', 'A = π·D² / 4'],
    ['a = pi * (D^2 - d^2) / 4', 'a = π·(D² − d²) / 4'],
    ['F = p * A * eta', 'F = p·A·η'],
    ['u = sqrt(u_1^2 + u_2^2)', 'u = √(u₁² + u₂²)'],
    ['x = -b * 2.5e-3', 'x = −b·2.5e-3'],
    ['n = ceil(V_b / b)', 'n = round up(V_b / b)'],
    ['y = max(a, -b)', 'y = max(a, −b)'],
    ['d <= D^0.5', 'd ≤ D^0.5'],
    ['P = a < b ? a / 2 : b^2', 'P = if a < b then a / 2 otherwise b²'],
    ['P = a < b ? 1 : a < c ? 2 : 3', 'P = if a < b then 1 otherwise if a < c then 2 otherwise 3'],
  ])('sets %s as %s', (plain, set) => {
    expect(setEquation(plain)).toBe(set)
  })

  it('puts values in the place of symbols and brackets those that an operator would run into', () => {
    expect(setEquation('A = pi * D^2 / 4', { D: '1.75 in' })).toBe('A = π·(1.75 in)² / 4')
    expect(setEquation('T = t_L + t_R', { t_L: '4 in', t_R: '4.125 in' })).toBe('T = 4 in + 4.125 in')
    expect(setEquation('S = T * cos(alpha)', { T: '8 in', alpha: '5°' })).toBe('S = (8 in)·cos(5°)')
    expect(setEquation('x = a - b', { a: '1', b: '−2' })).toBe('x = 1 − (−2)')
    expect(setEquation('F = p * A * eta', { p: '1500 psi', A: '2.405 in²', eta: '0.9' })).toBe('F = (1500 psi)·(2.405 in²)·0.9')
  })

  it('leaves alone what is no plain arithmetic', () => {
    expect(setEquation('solve: f(x) = 0; x ∈ [a, b]')).toBe('solve: f(x) = 0; x ∈ [a, b]')
  })

  it('takes no name of an object’s own machinery for a symbol with a value', () => {
    expect(setEquation('y = constructor * toString', {})).toBe('y = constructor·toString')
  })

  it('knows every operator of every card of the house', () => {
    for (const card of FORMULAS) {
      const set = setEquation(card.equation)
      if (!card.procedure) expect(set, card.id).not.toMatch(/[*]|undefined|\bpi\b/)
    }
  })

  it('never throws', () => {
    fc.assert(fc.property(fc.string({ maxLength: 60 }), (text) => typeof setEquation(text, { a: '1 in' }) === 'string'))
  })
})

describe('setSymbol', () => {
  it('sets Greek names and figures below the line', () => {
    expect(['eta', 'u_1', 'P2', 'alpha_max', 'D'].map(setSymbol)).toEqual(['η', 'u₁', 'P₂', 'α_max', 'D'])
  })
})
