import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Dimension, si } from '../../../src/shared/quantities/dimension.ts'
import { inches, mm, psi } from '../../../src/shared/quantities/make.ts'
import { parseQuantity } from '../../../src/shared/quantities/parse.ts'
import { decimals, inUnit, printInchFraction, printQuantity, significant } from '../../../src/shared/quantities/print.ts'
import { UNITS } from '../../../src/shared/quantities/units.ts'

const read = (typed: string, dimension: Dimension): number => {
  const result = parseQuantity(typed, dimension)
  if (!result.ok) throw new Error(`${typed}: ${JSON.stringify(result.issues)}`)
  return result.value.si
}

describe('numbers', () => {
  it.each([
    [3607.87, 4, '3608'],
    [2.40528, 4, '2.405'],
    [0.0132, 4, '0.0132'],
    [0.01320049, 4, '0.0132'],
    [9.99996, 4, '10'],
    [99999, 4, '99999'],
    [0, 4, '0'],
    [-0, 4, '0'],
    [-2.5, 4, '-2.5'],
    [100, 3, '100'],
    [1e-15, 4, '1.000e-15'],
    [Number.NaN, 4, 'NaN'],
  ])('%d to %d figures is %s', (value, digits, text) => {
    expect(significant(value, digits)).toBe(text)
  })

  it.each([
    [1.005, 1, '1.0'],
    [-0.04, 1, '0.0'],
    [-0.06, 1, '−0.1'],
    [-12, 0, '−12'],
  ])('%d to %d decimals is %s', (value, places, text) => {
    expect(decimals(value, places)).toBe(text)
  })

  it('come with their unit', () => {
    expect(printQuantity(psi(1500), 'psi', 'pressure')).toBe('1500 psi')
    expect(printQuantity(mm(31.75), 'in', 'length')).toBe('1.25 in')
    expect(printQuantity(si(-Math.PI / 6, 'angle'), '°', 'angle')).toBe('−30°')
    expect(printQuantity(si(0.125, 'ratio'), '1', 'ratio')).toBe('0.125')
    expect(printQuantity(si(293.15, 'temperature'), '°C', 'temperature')).toBe('20 °C')
    expect(inUnit(si(233.15, 'temperature'), '°F', 'temperature')).toBeCloseTo(-40, 10)
  })
})

describe('print, then read', () => {
  const units = UNITS.filter((u) => u.offset === undefined)
  it('gives the value back to the digits printed, in every unit', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...units),
        fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
        fc.boolean(),
        fc.integer({ min: 3, max: 9 }),
        (u, magnitude, negative, digits) => {
          const typed = `${magnitude}`
          const value = read(u.symbol === '1' ? typed : `${typed} ${u.symbol}`, u.dimension) * (negative ? -1 : 1)
          const back = read(printQuantity(si(value, u.dimension), u.symbol, u.dimension, digits), u.dimension)
          // half of the last digit printed: 5 in the place after it, and a little for the roundings of reading
          expect(Math.abs(back - value)).toBeLessThanOrEqual(Math.abs(value) * (5 * 10 ** -digits) * 1.0001 + 1e-12 * Math.abs(value))
        },
      ),
      { numRuns: 2000 },
    )
  })

  it('does so for temperatures to a fraction of a degree', () => {
    fc.assert(
      fc.property(fc.integer({ min: -60, max: 300 }), fc.constantFrom('°C', '°F', 'K'), (t, unit) => {
        const kelvin = 300 + t / 2
        expect(read(printQuantity(si(kelvin, 'temperature'), unit, 'temperature', 7), 'temperature')).toBeCloseTo(kelvin, 3)
      }),
    )
  })
})

describe('fractions of an inch', () => {
  it.each([
    [8.1875, 32, '8 3/16 in'],
    [0, 32, '0 in'],
    [0.5, 32, '1/2 in'],
    [0.999, 32, '1 in'],
    [-0.001, 32, '0 in'],
    [-1.25, 32, '−1 1/4 in'],
    [1 / 64, 64, '1/64 in'],
    [12.09375, 32, '12 3/32 in'],
    [0.3, 1, '0 in'],
  ])('%d in to 1/%d is %s', (value, denominator, text) => {
    expect(printInchFraction(inches(value), denominator)).toBe(text)
  })

  it('are read back as the nearest mark of the tape, and stay as they are printed', () => {
    fc.assert(
      fc.property(fc.double({ min: -200, max: 200, noNaN: true }), fc.constantFrom(2, 4, 8, 16, 32, 64), (value, denominator) => {
        const text = printInchFraction(inches(value), denominator)
        const back = read(text, 'length')
        expect(Math.abs(back - value * 0.0254)).toBeLessThanOrEqual((0.0254 / denominator / 2) * (1 + 1e-9))
        expect(printInchFraction(si(back, 'length'), denominator)).toBe(text)
        // in lowest terms: no even number over a fraction line
        expect(text).not.toMatch(/[02468]\//)
      }),
      { numRuns: 1000 },
    )
  })
})
