import { create, all as everything } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { DIMENSIONS } from '../../../src/shared/quantities/dimension.ts'
import { parseQuantity } from '../../../src/shared/quantities/parse.ts'
import { findUnit, findUnitAnywhere, UNITS, unitBySymbol, unitSize } from '../../../src/shared/quantities/units.ts'

const math = create(everything ?? {}, {})

/** Our symbol as mathjs 15 writes it; units that it does not know are written from ones it knows. */
const IN_MATHJS: Readonly<Record<string, string>> = {
  '1': '',
  '%': '',
  'in/ft': 'in/ft',
  'mm/m': 'mm/m',
  m: 'm',
  cm: 'cm',
  mm: 'mm',
  µm: 'um',
  in: 'inch',
  ft: 'ft',
  thou: 'mil',
  'm²': 'm^2',
  'mm²': 'mm^2',
  'cm²': 'cm^2',
  'in²': 'inch^2',
  'm³': 'm^3',
  L: 'L',
  mL: 'mL',
  'mm³': 'mm^3',
  'in³': 'inch^3',
  'US gal': 'gallon',
  'US qt': 'quart',
  'US pt': 'pint',
  'US fl oz': 'fluidounce',
  'm⁴': 'm^4',
  'mm⁴': 'mm^4',
  'in⁴': 'inch^4',
  rad: 'rad',
  '°': 'deg',
  '′': 'arcmin',
  turn: 'cycle',
  '1/m': 'm^-1',
  '1/in': 'inch^-1',
  kg: 'kg',
  g: 'g',
  t: 'tonne',
  lb: 'lbm',
  s: 's',
  min: 'minute',
  h: 'hour',
  d: 'day',
  wk: 'week',
  K: 'K',
  '°C': 'degC',
  '°F': 'degF',
  'm/s': 'm/s',
  'mm/s': 'mm/s',
  'ft/s': 'ft/s',
  'in/s': 'inch/s',
  'km/h': 'km/hour',
  mph: 'mi/hour',
  'm/s²': 'm/s^2',
  'ft/s²': 'ft/s^2',
  'rad/s': 'rad/s',
  'turn/s': 'cycle/s',
  rpm: 'cycle/minute',
  'm³/s': 'm^3/s',
  'L/min': 'L/minute',
  'L/h': 'L/hour',
  'US gal/min': 'gallon/minute',
  'in³/s': 'inch^3/s',
  'm³/rad': 'm^3/rad',
  N: 'N',
  kN: 'kN',
  lbf: 'lbf',
  kip: 'lbf',
  kgf: 'kgf',
  Pa: 'Pa',
  kPa: 'kPa',
  MPa: 'MPa',
  GPa: 'GPa',
  bar: 'bar',
  psi: 'lbf/inch^2',
  ksi: 'lbf/inch^2',
  N·m: 'N m',
  kN·m: 'kN m',
  lbf·ft: 'lbf ft',
  lbf·in: 'lbf inch',
  W: 'W',
  kW: 'kW',
  hp: 'ft lbf/s',
  'kg/m³': 'kg/m^3',
  'g/cm³': 'g/cm^3',
  'lb/ft³': 'lbm/ft^3',
  'm²/s': 'm^2/s',
  'mm²/s': 'mm^2/s',
  Pa·s: 'Pa s',
  mPa·s: 'mPa s',
  'Pa/m': 'Pa/m',
  'psi/ft': 'lbf/inch^2/ft',
  'N/m': 'N/m',
  'N/mm': 'N/mm',
  'lbf/in': 'lbf/inch',
}

/** What mathjs rounds (its kip and its hp) is made of what it has whole: a kip is 1000 lbf, a horsepower 550 ft·lbf/s. */
const TIMES: Readonly<Record<string, number>> = { kip: 1000, ksi: 1000, hp: 550 }

/** mathjs counts 1 lbf with g = 9.80665 and keeps sizes as doubles: 1e-12 leaves room for the few roundings of both. */
const TOLERANCE = 1e-12

describe('every unit', () => {
  it.each(UNITS.map((u) => [u.dimension, u.symbol, u] as const))('%s: %s is what mathjs says it is', (_dimension, symbol, u) => {
    const known = IN_MATHJS[symbol]
    expect(known, `${symbol} is not in this test's list`).toBeDefined()
    const base = DIMENSIONS[u.dimension].base
    const si = ['m', 'kg', 's', 'K'].map((unit, i) => `${unit}^${base[i]}`)
    const plain = (n: number) =>
      known === ''
        ? n * (symbol === '%' ? 0.01 : 1)
        : u.dimension === 'angle'
          ? math.unit(n, known as string).toNumber('rad')
          : u.dimension === 'angularSpeed' || u.dimension === 'displacementPerTurn'
            ? math.unit(n, known as string).toNumber(DIMENSIONS[u.dimension].unit.replace('³', '^3'))
            : u.dimension === 'ratio'
              ? Number(math.evaluate(`${n} ${known as string}`))
              : math.unit(n, known as string).toNumber(si.filter((_, i) => base[i] !== 0).join(' '))
    for (const n of [1, 7.25]) {
      const read = parseQuantity(symbol === '1' ? String(n) : `${n} ${symbol}`, u.dimension)
      const ours = read.ok ? (read.value.si as number) : Number.NaN
      expect(Math.abs(ours / plain(n * (TIMES[symbol] ?? 1)) - 1)).toBeLessThanOrEqual(TOLERANCE)
    }
  })

  it('is read in every one of its spellings, in its own dimension, as itself', () => {
    for (const u of UNITS) {
      for (const spelling of u.spellings) {
        expect({ spelling, found: findUnit(spelling, u.dimension)?.symbol }).toEqual({ spelling, found: u.symbol })
        const bare = spelling === '' ? '2' : `2 ${spelling}`
        const read = parseQuantity(bare, u.dimension)
        expect({ bare, ok: read.ok }).toEqual({ bare, ok: true })
        if (read.ok && u.offset === undefined) expect(read.value.si / (2 * unitSize(u))).toBeCloseTo(1, 14)
      }
    }
  })

  it('has no spelling in common with another of its dimension', () => {
    for (const dimension of Object.keys(DIMENSIONS)) {
      const spellings = UNITS.filter((u) => u.dimension === dimension).flatMap((u) => u.spellings)
      expect(new Set(spellings).size).toBe(spellings.length)
    }
  })

  it('is there for every dimension, the base unit first among them', () => {
    for (const [dimension, { unit }] of Object.entries(DIMENSIONS)) {
      const base = UNITS.find((u) => u.dimension === dimension && u.symbol === unit)
      expect({ dimension, unit, size: base && unitSize(base) }).toEqual({ dimension, unit, size: 1 })
    }
  })
})

describe('looking for a unit', () => {
  it('finds it anywhere', () => {
    expect(findUnitAnywhere('psi')?.dimension).toBe('pressure')
    expect(findUnitAnywhere('furlong')).toBeUndefined()
    expect(findUnitAnywhere('constructor')).toBeUndefined()
  })

  it('is a mistake of the program where it must be there', () => {
    expect(() => unitBySymbol('furlong', 'length')).toThrow('no unit furlong for length')
  })
})
