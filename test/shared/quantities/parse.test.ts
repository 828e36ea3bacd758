import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DIMENSIONS, type Dimension } from '../../../src/shared/quantities/dimension.ts'
import { parseQuantity } from '../../../src/shared/quantities/parse.ts'
import { UNITS } from '../../../src/shared/quantities/units.ts'

const DIMENSION_NAMES = Object.keys(DIMENSIONS) as Dimension[]

function value(typed: string, dimension: Dimension, bareUnit?: string): number {
  const read = parseQuantity(typed, dimension, bareUnit)
  if (!read.ok) throw new Error(`${typed}: ${JSON.stringify(read.issues)}`)
  expect(read.value.typed).toBe(typed)
  return read.value.si
}

function code(typed: string, dimension: Dimension, bareUnit?: string): string {
  const read = parseQuantity(typed, dimension, bareUnit)
  return read.ok ? `read as ${read.value.si}` : read.issues.map((i) => i.code).join()
}

describe('lengths as a shop types them', () => {
  // exact: 1 in = 25.4 mm by the international yard and pound agreement, so the nearest double is known
  it.each([
    ['1 1/4 in', 0.03175],
    ['1-1/4"', 0.03175],
    ['1 1/4"', 0.03175],
    ['1 - 1/4 in', 0.03175],
    ['1¼ in', 0.03175],
    ['1 ¼ in', 0.03175],
    ['¼ in', 0.00635],
    ['1⁄4 in', 0.00635],
    ['1 ⅐ in', (8 / 7) * 0.0254],
    ['1.25 in', 0.03175],
    ['1,25 in', 0.03175],
    ['31.75 mm', 0.03175],
    ['31,75 mm', 0.03175],
    ['3.175 cm', 0.03175],
    ['.5 in', 0.0127],
    [',5 in', 0.0127],
    ['7/8 in', 0.022225],
    ['3/8 inch', 0.009525],
    ['12 thou', 0.0003048],
    ['1e3 mm', 1],
    ['1.5E-3 m', 0.0015],
    ['5 ft 6 in', 1.6764],
    ['5ft 6in', 1.6764],
    ['5\'6"', 1.6764],
    ["5' 6''", 1.6764],
    ['5′ 6″', 1.6764],
    ['5’ 6 1/2”', 1.6891],
    ['5 ft', 1.524],
    ['  7/8 in  ', 0.022225],
    ['7/8 in', 0.022225],
    ['3 IN.', 0.0762],
    ['25.4 MM', 0.0254],
    ['-1/8 in', -0.003175],
    ['−1/8 in', -0.003175],
    ['- 1/8 in', -0.003175],
    ['+1/8 in', 0.003175],
    ['0 mm', 0],
  ])('%s', (typed, metres) => {
    expect(value(typed, 'length')).toBeCloseTo(metres, 15)
  })

  it('reads an inch size and its millimetres as the very same number', () => {
    for (const [inch, metric] of [
      ['1 1/4 in', '31.75 mm'],
      ['7/8 in', '22.225 mm'],
      ['1 1/64 in', '25.796875 mm'],
      ['5 ft 6 in', '1676.4 mm'],
      ['0.1 in', '2.54 mm'],
    ] as const) {
      expect(value(inch, 'length')).toBe(value(metric, 'length'))
    }
    expect(value('1 1/4 in', 'length')).toBe(0.03175)
  })
})

describe('other quantities', () => {
  it.each([
    ['1:8', 'ratio', 0.125],
    ['1 : 10', 'ratio', 0.1],
    ['1,5:12', 'ratio', 0.125],
    ['1.5 in/ft', 'ratio', 0.125],
    ['1 1/2 in/ft', 'ratio', 0.125],
    ['1.5 inches per foot', 'ratio', 0.125],
    ['25 %', 'ratio', 0.25],
    ['25%', 'ratio', 0.25],
    ['3.9', 'ratio', 3.9],
    ['30°', 'angle', Math.PI / 6],
    ['30 deg', 'angle', Math.PI / 6],
    ['2° 30′', 'angle', (2.5 * Math.PI) / 180],
    ["2° 30'", 'angle', (2.5 * Math.PI) / 180],
    ['2°30′', 'angle', (2.5 * Math.PI) / 180],
    ['-0.5°', 'angle', (-0.5 * Math.PI) / 180],
    ['1/4 turn', 'angle', Math.PI / 2],
    ['2.5 h', 'time', 9000],
    ['1 h 30 min', 'time', 5400],
    ['85 lbf·ft', 'torque', 85 * 1.3558179483314],
    ['85 FT LBS', 'torque', 85 * 1.3558179483314],
    ['115 Nm', 'torque', 115],
    ['1500 psi', 'pressure', 1500 * 6894.757293168361],
    ['103 bar', 'pressure', 1.03e7],
    ['2.2 gpm', 'flow', (2.2 * 3.785411784e-3) / 60],
    ['1 US qt', 'volume', 0.946352946e-3],
    ['32 fl oz', 'volume', 0.946352946e-3],
    ['20 °C', 'temperature', 293.15],
    ['-40 °C', 'temperature', 233.15],
    ['-40 °F', 'temperature', 233.15],
    ['68 F', 'temperature', 293.15],
  ] as const)('%s is a %s', (typed, dimension, si) => {
    expect(value(typed, dimension)).toBeCloseTo(si, 9)
    expect(Math.abs(value(typed, dimension) - si)).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(si)))
  })

  it('takes a pound for what is asked', () => {
    expect(value('1 lb', 'mass')).toBe(0.45359237)
    expect(value('1 lb', 'force')).toBeCloseTo(4.4482216152605, 12)
  })

  it('gives a number without a unit the unit that the place has, and only where it has one', () => {
    expect(value('3/8', 'length', 'in')).toBe(0.009525)
    expect(value('5 ft 6', 'length', 'in')).toBe(1.6764)
    expect(value('12 mm', 'length', 'in')).toBe(0.012)
    expect(code('3/8', 'length')).toBe('quantity.no_unit')
  })
})

describe('what is not a quantity', () => {
  it.each([
    ['', 'length', 'quantity.empty'],
    ['   ', 'length', 'quantity.empty'],
    ['\u00a0', 'length', 'quantity.empty'],
    ['NaN mm', 'length', 'quantity.not_a_number'],
    ['NaN', 'length', 'quantity.not_a_number'],
    ['Infinity mm', 'length', 'quantity.not_a_number'],
    ['-', 'length', 'quantity.not_a_number'],
    ['--5 mm', 'length', 'quantity.not_a_number'],
    ['mm', 'length', 'quantity.not_a_number'],
    ['?', 'length', 'quantity.not_a_number'],
    ['6 in 5 ft', 'length', 'quantity.not_a_number'],
    ['5 in 5 in', 'length', 'quantity.not_a_number'],
    ['10 °C 5 °F', 'temperature', 'quantity.not_a_number'],
    ['12', 'length', 'quantity.no_unit'],
    ['5 ft 6', 'length', 'quantity.no_unit'],
    ['12 furlongs', 'length', 'quantity.unknown_unit'],
    ['5 5 in', 'length', 'quantity.unknown_unit'],
    ['1.5.5 in', 'length', 'quantity.unknown_unit'],
    ['1/2 1/2 in', 'length', 'quantity.unknown_unit'],
    ['0x10 mm', 'length', 'quantity.unknown_unit'],
    ['12 psi', 'length', 'quantity.wrong_dimension'],
    ['12 mm', 'pressure', 'quantity.wrong_dimension'],
    ['30°', 'length', 'quantity.wrong_dimension'],
    ['1,500 psi', 'pressure', 'quantity.ambiguous_comma'],
    ['0,125 in', 'length', 'quantity.ambiguous_comma'],
    ['1,500,000 Pa', 'pressure', 'quantity.ambiguous_comma'],
    ['1,500.5 psi', 'pressure', 'quantity.ambiguous_comma'],
    ['1:1,500', 'ratio', 'quantity.ambiguous_comma'],
    ['1/0 in', 'length', 'quantity.zero_denominator'],
    ['1 1/0 in', 'length', 'quantity.zero_denominator'],
    ['1:0', 'ratio', 'quantity.zero_denominator'],
    ['1'.repeat(65), 'length', 'quantity.too_long'],
  ] as const)('%j as a %s: %s', (typed, dimension, expected) => {
    expect(code(typed, dimension)).toBe(expected)
  })

  it('does not add parts that have no common measure', () => {
    // a turn is 2π and a radian 1: adding the two as if both had the factor π was a fault once
    expect(code('1 turn 1 rad', 'angle')).toBe('quantity.not_a_number')
    expect(code('1 rad 30°', 'angle')).toBe('quantity.not_a_number')
    expect(value('1 turn 90°', 'angle')).toBeCloseTo(2.5 * Math.PI, 14)
  })

  it('says the unit that was typed and what it is a unit of', () => {
    const read = parseQuantity('12 psi', 'length')
    expect(read).toEqual({
      ok: false,
      issues: [
        {
          code: 'quantity.wrong_dimension',
          path: [],
          facts: { typed: '12 psi', dimension: 'length', unit: 'psi', got: 'pressure' },
        },
      ],
    })
  })

  it('leaves the prefixes alone that capitals change', () => {
    expect(value('1 MPa', 'pressure')).toBe(1e6)
    expect(code('1 mPa', 'pressure')).toBe('quantity.unknown_unit')
    expect(code('1 mN·m', 'torque')).toBe('quantity.unknown_unit')
  })
})

const FRAGMENTS = [
  ...new Set(UNITS.flatMap((u) => u.spellings)),
  ...[
    '1',
    '1/4',
    '3-1/8',
    '.5',
    ',5',
    '1,500',
    '0',
    '1/0',
    '½',
    '⅞',
    '⁄',
    ':',
    '-',
    '−',
    '+',
    ' ',
    '\u00a0',
    '\t',
    "'",
    '"',
    '′',
    '″',
    '°',
  ],
  ...['e9', 'E-99', 'NaN', '__proto__', 'constructor', '7/8-14', 'M18x1.5', '\u0000', '\ud800'],
]
const tradeLike = fc.array(fc.constantFrom(...FRAGMENTS), { maxLength: 8 }).map((parts) => parts.join(''))

describe('any string', () => {
  it('is a finite quantity with what was typed beside it, or an issue of this room; it never throws', () => {
    fc.assert(
      fc.property(
        fc.oneof(tradeLike, fc.string({ unit: 'binary', maxLength: 80 }), fc.string({ maxLength: 80 })),
        fc.constantFrom(...DIMENSION_NAMES),
        (typed, dimension) => {
          const read = parseQuantity(typed, dimension)
          if (read.ok) {
            expect(Number.isFinite(read.value.si)).toBe(true)
            expect(read.value.typed).toBe(typed)
          } else {
            expect(read.issues).toHaveLength(1)
            expect(read.issues[0]?.code).toMatch(
              /^quantity\.(?:empty|not_a_number|no_unit|unknown_unit|wrong_dimension|ambiguous_comma|zero_denominator|too_long)$/,
            )
          }
        },
      ),
      { numRuns: 10_000 },
    )
  })

  it('means the negative of it with a minus before it', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 1000, noNaN: true }), (x) => {
        const typed = `${x.toFixed(6)} mm`
        expect(value(`-${typed}`, 'length')).toBe(-value(typed, 'length'))
      }),
    )
  })

  it('a mixed number is its whole and its fraction', () => {
    fc.assert(
      fc.property(fc.nat(99), fc.nat(63), fc.constantFrom(2, 4, 8, 16, 32, 64), (whole, top, bottom) => {
        // exact in binary: sixty-fourths of an inch have few bits, so one rounding is all there is
        expect(value(`${whole} ${top}/${bottom} in`, 'length')).toBeCloseTo((whole + top / bottom) * 0.0254, 14)
        expect(value(`${whole}-${top}/${bottom} in`, 'length')).toBe(value(`${whole} ${top}/${bottom} in`, 'length'))
      }),
    )
  })
})
