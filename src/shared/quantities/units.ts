import type { Dimension } from './dimension.ts'

/**
 * One unit: its symbol as printed, the spellings people type, and its size in base SI as an exact fraction
 * (times π where it is an angle). `offset` (K) is for the temperature scales only.
 *
 * Sizes: international yard and pound agreement (1 in = 25.4 mm, 1 lb = 0.453 592 37 kg), standard gravity
 * 9.806 65 m/s², US gallon 231 in³: NIST SP 811 (2008), appendix B, where they are marked exact.
 */
export interface Unit {
  readonly symbol: string
  readonly spellings: readonly string[]
  readonly dimension: Dimension
  readonly size: readonly [bigint, bigint]
  readonly pi?: true
  readonly offset?: number
}

type Fraction = readonly [bigint, bigint]
const times = (a: Fraction, b: Fraction): Fraction => [a[0] * b[0], a[1] * b[1]]
const over = (a: Fraction, b: Fraction): Fraction => [a[0] * b[1], a[1] * b[0]]

const ONE: Fraction = [1n, 1n]
const INCH: Fraction = [254n, 10_000n]
const FOOT: Fraction = times(INCH, [12n, 1n])
const POUND: Fraction = [45_359_237n, 100_000_000n]
const GRAVITY: Fraction = [980_665n, 100_000n]
const POUND_FORCE: Fraction = times(POUND, GRAVITY)
const INCH2 = times(INCH, INCH)
const INCH3 = times(INCH2, INCH)
const INCH4 = times(INCH2, INCH2)
const FOOT2 = times(FOOT, FOOT)
const FOOT3 = times(FOOT2, FOOT)
const GALLON = times(INCH3, [231n, 1n])
const LITRE: Fraction = [1n, 1_000n]
const MINUTE: Fraction = [60n, 1n]
const MILLI: Fraction = [1n, 1_000n]
const CENTI: Fraction = [1n, 100n]
const POUND_FOOT = times(POUND_FORCE, FOOT)
const HORSEPOWER = over(times(POUND_FOOT, [33_000n, 1n]), MINUTE)
const PSI = over(POUND_FORCE, INCH2)

const unit = (
  dimension: Dimension,
  symbol: string,
  size: Fraction,
  spellings: readonly string[] = [],
  more: { pi?: true; offset?: number } = {},
): Unit => ({ symbol, spellings: [symbol, ...spellings], dimension, size, ...more })

export const UNITS: readonly Unit[] = [
  unit('ratio', '1', ONE, ['']),
  unit('ratio', '%', CENTI, ['percent']),
  unit('ratio', 'in/ft', over(INCH, FOOT), ['in per ft', 'inch per foot', 'inches per foot', '"/ft', 'ipf']),
  unit('ratio', 'mm/m', MILLI),

  unit('length', 'm', ONE, ['metre', 'metres', 'meter', 'meters']),
  unit('length', 'cm', CENTI, ['centimetre', 'centimetres', 'centimeter', 'centimeters']),
  unit('length', 'mm', MILLI, ['millimetre', 'millimetres', 'millimeter', 'millimeters']),
  unit('length', 'µm', [1n, 1_000_000n], ['um', 'μm', 'micron', 'microns']),
  unit('length', 'in', INCH, ['"', '″', '”', 'inch', 'inches', 'in.', "''"]),
  unit('length', 'ft', FOOT, ["'", '′', '’', 'foot', 'feet', 'ft.']),
  unit('length', 'thou', times(INCH, MILLI), ['mil']),

  unit('area', 'm²', ONE, ['m2', 'm^2']),
  unit('area', 'mm²', times(MILLI, MILLI), ['mm2', 'mm^2']),
  unit('area', 'cm²', times(CENTI, CENTI), ['cm2', 'cm^2']),
  unit('area', 'in²', INCH2, ['in2', 'in^2', 'sq in']),

  unit('volume', 'm³', ONE, ['m3', 'm^3']),
  unit('volume', 'L', LITRE, ['l', 'litre', 'litres', 'liter', 'liters']),
  unit('volume', 'mL', times(LITRE, MILLI), ['ml', 'cc', 'cm³', 'cm3', 'cm^3']),
  unit('volume', 'mm³', times(times(MILLI, MILLI), MILLI), ['mm3', 'mm^3']),
  unit('volume', 'in³', INCH3, ['in3', 'in^3', 'cu in', 'ci']),
  unit('volume', 'US gal', GALLON, ['gal', 'gallon', 'gallons', 'us gal', 'US gallon']),
  unit('volume', 'US qt', over(GALLON, [4n, 1n]), ['qt', 'quart', 'quarts', 'us qt', 'US quart']),
  unit('volume', 'US pt', over(GALLON, [8n, 1n]), ['pt', 'pint', 'pints']),
  unit('volume', 'US fl oz', over(GALLON, [128n, 1n]), ['fl oz', 'fl.oz', 'floz']),

  unit('secondMomentOfArea', 'm⁴', ONE, ['m4', 'm^4']),
  unit('secondMomentOfArea', 'mm⁴', times(times(MILLI, MILLI), times(MILLI, MILLI)), ['mm4', 'mm^4']),
  unit('secondMomentOfArea', 'in⁴', INCH4, ['in4', 'in^4']),

  unit('angle', 'rad', ONE, ['radian', 'radians']),
  unit('angle', '°', [1n, 180n], ['deg', 'degree', 'degrees', 'º'], { pi: true }),
  unit('angle', '′', [1n, 10_800n], ["'", '’', 'arcmin', 'min of arc'], { pi: true }),
  unit('angle', 'turn', [2n, 1n], ['turns', 'rev', 'revs'], { pi: true }),

  unit('curvature', '1/m', ONE, []),
  unit('curvature', '1/in', over(ONE, INCH), ['tpi', 'per in', 'per inch', 'threads per inch']),

  unit('mass', 'kg', ONE, ['kilogram', 'kilograms']),
  unit('mass', 'g', MILLI, ['gram', 'grams']),
  unit('mass', 't', [1_000n, 1n], ['tonne', 'tonnes']),
  unit('mass', 'lb', POUND, ['lbs', 'lbm', 'pound', 'pounds']),

  unit('time', 's', ONE, ['sec', 'second', 'seconds']),
  unit('time', 'min', MINUTE, ['minute', 'minutes']),
  unit('time', 'h', [3_600n, 1n], ['hr', 'hrs', 'hour', 'hours']),
  unit('time', 'd', [86_400n, 1n], ['day', 'days']),
  unit('time', 'wk', [604_800n, 1n], ['week', 'weeks']),

  unit('temperature', 'K', ONE, ['kelvin']),
  unit('temperature', '°C', ONE, ['C', 'degC', 'deg C', 'celsius', 'ºC'], { offset: 273.15 }),
  unit('temperature', '°F', [5n, 9n], ['F', 'degF', 'deg F', 'fahrenheit', 'ºF'], { offset: 459.67 * (5 / 9) }),

  unit('speed', 'm/s', ONE, []),
  unit('speed', 'mm/s', MILLI, []),
  unit('speed', 'ft/s', FOOT, ['fps']),
  unit('speed', 'in/s', INCH, ['ips']),
  unit('speed', 'km/h', [1_000n, 3_600n], ['kph', 'kmh']),
  unit('speed', 'mph', [1_609_344n, 3_600_000n], ['mi/h']),

  unit('acceleration', 'm/s²', ONE, ['m/s2', 'm/s^2']),
  unit('acceleration', 'ft/s²', FOOT, ['ft/s2', 'ft/s^2']),

  unit('angularSpeed', 'rad/s', ONE, []),
  unit('angularSpeed', 'turn/s', [2n, 1n], ['turns/s', 'rev/s', 'rps'], { pi: true }),
  unit('angularSpeed', 'rpm', [2n, 60n], ['rev/min', 'r/min', '1/min'], { pi: true }),

  unit('flow', 'm³/s', ONE, ['m3/s', 'm^3/s']),
  unit('flow', 'L/min', over(LITRE, MINUTE), ['l/min', 'lpm', 'LPM']),
  unit('flow', 'L/h', over(LITRE, [3_600n, 1n]), ['l/h']),
  unit('flow', 'US gal/min', over(GALLON, MINUTE), ['gpm', 'GPM', 'gal/min', 'us gpm', 'US gpm']),
  unit('flow', 'in³/s', INCH3, ['in3/s', 'in^3/s']),

  unit('displacementPerTurn', 'm³/rad', ONE, ['m3/rad']),

  unit('force', 'N', ONE, ['newton', 'newtons']),
  unit('force', 'kN', [1_000n, 1n], []),
  unit('force', 'lbf', POUND_FORCE, ['lb', 'lbs', 'pound', 'pounds', 'lb-f']),
  unit('force', 'kip', times(POUND_FORCE, [1_000n, 1n]), ['kips', 'klbf']),
  unit('force', 'kgf', GRAVITY, ['kg', 'kp']),

  unit('pressure', 'Pa', ONE, ['N/m²', 'N/m2']),
  unit('pressure', 'kPa', [1_000n, 1n], []),
  unit('pressure', 'MPa', [1_000_000n, 1n], ['N/mm²', 'N/mm2', 'N/mm^2']),
  unit('pressure', 'GPa', [1_000_000_000n, 1n], []),
  unit('pressure', 'bar', [100_000n, 1n], ['bars']),
  unit('pressure', 'psi', PSI, ['lbf/in²', 'lbf/in2', 'lb/in2', 'PSI']),
  unit('pressure', 'ksi', times(PSI, [1_000n, 1n]), ['KSI']),

  unit('torque', 'N·m', ONE, ['N.m', 'Nm', 'N m', 'N*m', 'newton metres', 'newton meters']),
  unit('torque', 'kN·m', [1_000n, 1n], ['kN.m', 'kNm']),
  unit('torque', 'lbf·ft', POUND_FOOT, [
    'lbf.ft',
    'lbf ft',
    'lbf*ft',
    'lbf-ft',
    'ft·lbf',
    'ft.lbf',
    'ft lbf',
    'ft-lbf',
    'lb·ft',
    'lb.ft',
    'lb ft',
    'lb-ft',
    'ft·lb',
    'ft.lb',
    'ft lb',
    'ft-lb',
    'ft-lbs',
    'ft lbs',
    'ftlb',
    'lbft',
  ]),
  unit('torque', 'lbf·in', times(POUND_FORCE, INCH), [
    'lbf.in',
    'lbf in',
    'lbf*in',
    'lbf-in',
    'in·lbf',
    'in.lbf',
    'in lbf',
    'in-lbf',
    'lb·in',
    'lb.in',
    'lb in',
    'lb-in',
    'in-lb',
    'in lb',
    'in-lbs',
  ]),

  unit('power', 'W', ONE, ['watt', 'watts']),
  unit('power', 'kW', [1_000n, 1n], []),
  unit('power', 'hp', HORSEPOWER, ['horsepower']),

  unit('density', 'kg/m³', ONE, ['kg/m3', 'kg/m^3']),
  unit('density', 'g/cm³', [1_000n, 1n], ['g/cm3', 'kg/L', 'kg/l', 'g/mL']),
  unit('density', 'lb/ft³', over(POUND, FOOT3), ['lb/ft3', 'lb/ft^3']),

  unit('kinematicViscosity', 'm²/s', ONE, ['m2/s', 'm^2/s']),
  unit('kinematicViscosity', 'mm²/s', times(MILLI, MILLI), ['mm2/s', 'mm^2/s', 'cSt']),

  unit('dynamicViscosity', 'Pa·s', ONE, ['Pa.s', 'Pas', 'Pa s']),
  unit('dynamicViscosity', 'mPa·s', MILLI, ['mPa.s', 'cP']),

  unit('pressureGradient', 'Pa/m', ONE, []),
  unit('pressureGradient', 'psi/ft', over(PSI, FOOT), []),

  unit('stiffness', 'N/m', ONE, []),
  unit('stiffness', 'N/mm', [1_000n, 1n], []),
  unit('stiffness', 'lbf/in', over(POUND_FORCE, INCH), ['lb/in']),
]

const byDimension = new Map<Dimension, Map<string, Unit>>()
for (const u of UNITS) {
  const spellings = byDimension.get(u.dimension) ?? new Map<string, Unit>()
  byDimension.set(u.dimension, spellings)
  for (const s of u.spellings) spellings.set(s, u)
}

/** The unit a person means by `spelling` where a quantity of `dimension` is asked for, or undefined. "lb" is a mass or a force by what is asked. */
export function findUnit(spelling: string, dimension: Dimension): Unit | undefined {
  const spellings = byDimension.get(dimension)
  const trimmed = spelling.trim().replace(/\s+/g, ' ')
  return spellings?.get(trimmed) ?? (isPlainWord(trimmed) ? spellings?.get(trimmed.toLowerCase()) : undefined)
}

/** Any unit of any dimension with this spelling: for saying "that is a pressure, a length is asked for". */
export function findUnitAnywhere(spelling: string): Unit | undefined {
  for (const dimension of byDimension.keys()) {
    const found = findUnit(spelling, dimension)
    if (found) return found
  }
  return undefined
}

/** "IN", "Psi" and "MM" are typing habits; a one-letter symbol or one with a prefix that case would change (MPa, mPa) is left alone. */
function isPlainWord(spelling: string): boolean {
  return spelling.length > 1 && /^[a-z .]+$/i.test(spelling) && !/^m[NPW]|^M[NPWa]/.test(spelling)
}

/** Size of one unit in base SI, as a plain number. */
export function unitSize(u: Unit): number {
  return (Number(u.size[0]) / Number(u.size[1])) * (u.pi ? Math.PI : 1)
}

export function unitBySymbol(symbol: string, dimension: Dimension): Unit {
  const u = findUnit(symbol, dimension)
  if (!u) throw new Error(`no unit ${symbol} for ${dimension}`)
  return u
}
