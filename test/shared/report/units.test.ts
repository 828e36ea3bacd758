import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DIMENSIONS, type Dimension } from '../../../src/shared/quantities/dimension.ts'
import { parseQuantity } from '../../../src/shared/quantities/parse.ts'
import { showIn, showLike, showNamed, showTape, showTaper, showWithUncertainty } from '../../../src/shared/report/units.ts'

const INCH = 0.0254

describe('showIn', () => {
  // expected values: the exact unit definitions (NIST SP 811) worked by hand
  it.each([
    [1.75 * INCH, 'length', '1.75 in', '44.45 mm'],
    [INCH / 18, 'length', '0.0556 in', '1.411 mm'],
    [3.048, 'length', '120 in', '3048 mm'],
    [0.00155179, 'area', '2.405 in²', '1552 mm²'],
    [3.15e-4, 'volume', '19.22 in³', '0.315 L'],
    [1.9e-3, 'volume', '2.01 US qt', '1.9 L'],
    [16049, 'force', '3608 lbf', '16.05 kN'],
    [10_342_136, 'pressure', '1500 psi', '103.4 bar'],
    [115.24, 'torque', '85 lbf·ft', '115 N·m'],
    [Math.PI / 6, 'angle', '30°', '30°'],
    [0.95, 'ratio', '0.95', '0.95'],
    [-0.0254, 'length', '−1 in', '−25.4 mm'],
    [0, 'length', '0 in', '0 mm'],
    [5400, 'time', '1.5 h', '1.5 h'],
    [293.15, 'temperature', '68 °F', '20 °C'],
  ] as const)('prints %d (%s) as %s and %s', (value, dimension, inch, metric) => {
    expect(showIn('inch')(value, dimension)).toBe(inch)
    expect(showIn('metric')(value, dimension)).toBe(metric)
  })

  it('says so when there is no number', () => {
    expect(showIn('inch')(Number.NaN, 'length')).toBe('not known')
  })

  it('prints every dimension so that it reads back as the same quantity', () => {
    // three digits are the fewest any dimension is printed with: half a unit of the third is 0.5 %
    const dimensions = (Object.keys(DIMENSIONS) as Dimension[]).filter(
      (d) => !['temperature', 'time', 'displacementPerTurn', 'angle'].includes(d),
    )
    fc.assert(
      fc.property(
        fc.constantFrom(...dimensions),
        fc.double({ min: 0.05, max: 5000, noNaN: true }),
        fc.constantFrom('inch' as const, 'metric' as const),
        (d, v, units) => {
          const value = d === 'length' ? v / 1000 : v
          const printed = showIn(units)(value, d)
          fc.pre(!printed.includes('e'))
          const read = parseQuantity(printed.replace('turns', 'turn'), d)
          expect(read.ok).toBe(true)
          if (read.ok) expect(Math.abs(read.value.si - value) / value).toBeLessThan(0.006)
        },
      ),
    )
  })
})

describe('showTape', () => {
  it('gives back what a tape shows', () => {
    expect(showTape(8.1875 * INCH, 'inch')).toBe('8 3/16 in')
    expect(showTape(0.20796, 'metric')).toBe('208 mm')
    expect(showTape(0.2076, 'metric')).toBe('207.5 mm')
    expect(showTape(-0.5 * INCH, 'inch')).toBe('−1/2 in')
  })
})

describe('showWithUncertainty', () => {
  it('prints both to the same place, the uncertainty to two digits', () => {
    expect(showWithUncertainty(0.20796, 0.00082, 'length', 'metric')).toEqual({ value: '207.96 mm', uncertainty: '0.82 mm' })
    expect(showWithUncertainty(0.20796, 0.0123, 'length', 'metric')).toEqual({ value: '208 mm', uncertainty: '12 mm' })
    expect(showWithUncertainty(8.1875 * INCH, INCH / 32, 'length', 'inch')).toEqual({ value: '8.188 in', uncertainty: '0.031 in' })
  })

  it('stands an uncertainty of nothing', () => {
    expect(showWithUncertainty(0.2, 0, 'length', 'metric')).toEqual({ value: '200 mm', uncertainty: '0 mm' })
  })
})

describe('named numbers', () => {
  it('prints tapers both ways the trade names them', () => {
    expect(showTaper(1 / 8)).toBe('1:8 (1.5 in/ft)')
    expect(showNamed('taper of the hole', 0.1, 'ratio', 'inch')).toBe('taper of the hole 1:10 (1.2 in/ft)')
  })

  it('adds threads per inch to a pitch, and to a pitch only', () => {
    expect(showNamed('pitch, male', INCH / 14, 'length', 'metric')).toBe('pitch, male 1.814 mm (14 per in)')
    expect(showNamed('pitch drift over 10 mm', 0.001, 'length', 'metric')).toBe('pitch drift over 10 mm 1 mm')
  })

  it('prints a term in the unit of its sum', () => {
    expect(showLike(1e-4, 2e-3, 'volume', 'inch')).toBe('0.106 US qt')
  })
})
