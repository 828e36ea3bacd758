import { type Dimension, si } from '../quantities/dimension.ts'
import { decimals, inUnit, printInchFraction, significant } from '../quantities/print.ts'

export type UnitSystem = 'inch' | 'metric'

/** Prints a quantity (base SI) in the reader's units. */
export type Show = (si: number, dimension: Dimension) => string

/** One unit in use up to `below` (base SI, magnitude), with the digits a person in a shop can use. */
interface Step {
  readonly unit: string
  readonly below?: number
  readonly print: (value: number) => string
}

const digits = (count: number) => (value: number) => significant(value, count).replace('-', '−')
const places = (count: (magnitude: number) => number) => (value: number) => trimZeros(decimals(value, count(Math.abs(value))))
const one = (unit: string, print: Step['print'] = digits(4)): readonly Step[] => [{ unit, print }]
const both = (unit: string): Record<UnitSystem, readonly Step[]> => ({ inch: one(unit), metric: one(unit) })

/** Thousandths in inch, finer below a tenth; hundredths of a millimetre on shop sizes, tenths on long ones. */
const inchPlaces = places((v) => (v < 0.001 ? 6 : v < 0.01 ? 5 : v < 0.1 ? 4 : 3))
const millimetrePlaces = places((v) => (v < 0.1 ? 4 : v < 10 ? 3 : v < 100 ? 2 : 1))
const degreePlaces = places((v) => (v < 1 ? 2 : 1))

const TIME: readonly Step[] = [
  { unit: 's', below: 60, print: digits(3) },
  { unit: 'min', below: 3_600, print: digits(3) },
  { unit: 'h', print: digits(3) },
]

const PRINTED: Readonly<Record<Dimension, Readonly<Record<UnitSystem, readonly Step[]>>>> = {
  ratio: both('1'),
  length: { inch: one('in', inchPlaces), metric: one('mm', millimetrePlaces) },
  area: { inch: one('in²'), metric: one('mm²') },
  volume: {
    inch: [
      { unit: 'in³', below: 5e-4, print: digits(4) },
      { unit: 'US qt', print: digits(3) },
    ],
    metric: [
      { unit: 'mL', below: 1e-4, print: digits(3) },
      { unit: 'L', print: digits(3) },
    ],
  },
  secondMomentOfArea: { inch: one('in⁴'), metric: one('mm⁴') },
  angle: { inch: one('°', degreePlaces), metric: one('°', degreePlaces) },
  curvature: { inch: one('1/in'), metric: one('1/m') },
  mass: { inch: one('lb', digits(3)), metric: one('kg', digits(3)) },
  time: { inch: TIME, metric: TIME },
  temperature: { inch: one('°F', digits(3)), metric: one('°C', digits(3)) },
  speed: { inch: one('ft/s'), metric: one('m/s') },
  acceleration: { inch: one('ft/s²'), metric: one('m/s²') },
  angularSpeed: both('turn/s'),
  flow: { inch: one('US gal/min', digits(3)), metric: one('L/min', digits(3)) },
  displacementPerTurn: both('m³/rad'),
  force: {
    inch: one('lbf'),
    metric: [
      { unit: 'N', below: 1e4, print: digits(4) },
      { unit: 'kN', print: digits(4) },
    ],
  },
  pressure: {
    inch: [
      { unit: 'psi', below: 1.4e8, print: digits(4) },
      { unit: 'ksi', print: digits(4) },
    ],
    metric: [
      { unit: 'bar', below: 5e7, print: digits(4) },
      { unit: 'MPa', below: 1e10, print: digits(4) },
      { unit: 'GPa', print: digits(4) },
    ],
  },
  torque: { inch: one('lbf·ft', digits(3)), metric: one('N·m', digits(3)) },
  power: { inch: one('hp', digits(3)), metric: one('kW', digits(3)) },
  density: { inch: one('lb/ft³'), metric: one('kg/m³') },
  kinematicViscosity: both('mm²/s'),
  dynamicViscosity: both('mPa·s'),
  pressureGradient: { inch: one('psi/ft'), metric: one('Pa/m') },
  stiffness: { inch: one('lbf/in'), metric: one('N/mm') },
}

/** How a unit stands behind its number; the others follow after a space. */
const SUFFIX: Readonly<Record<string, string>> = { '1': '', '°': '°', '1/in': ' per in', '1/m': ' per m', 'turn/s': ' turns/s' }

/** The way of printing the reader's units: one function for every dimension, so that all pages agree. */
export function showIn(units: UnitSystem): Show {
  return (value, dimension) => {
    if (!Number.isFinite(value)) return 'not known'
    const step = stepFor(value, dimension, units)
    return withUnit(step.print(inUnit(si(value, dimension), step.unit, dimension)), step.unit)
  }
}

/** A length as a tape is read: in fractions of an inch (to 1/64, so that halves of 1/32 add up), or to half a millimetre. */
export function showTape(metres: number, units: UnitSystem): string {
  if (!Number.isFinite(metres)) return 'not known'
  if (units === 'inch') return printInchFraction(si(metres, 'length'), 64)
  return withUnit(trimZeros(decimals(Math.round(metres * 2000) / 2, 1)), 'mm')
}

/**
 * A value with its expanded uncertainty, both to the same place: the uncertainty to two digits (JCGM 100, 7.2.6),
 * the value no finer than that.
 */
export function showWithUncertainty(
  value: number,
  uncertainty: number,
  dimension: Dimension,
  units: UnitSystem,
): { value: string; uncertainty: string } {
  const { unit } = stepFor(value, dimension, units)
  const spread = Math.abs(inUnit(si(value + uncertainty, dimension), unit, dimension) - inUnit(si(value, dimension), unit, dimension))
  if (!(spread > 0)) return { value: showIn(units)(value, dimension), uncertainty: withUnit('0', unit) }
  const count = Math.min(6, Math.max(0, 1 - Math.floor(Math.log10(spread))))
  return {
    value: withUnit(decimals(inUnit(si(value, dimension), unit, dimension), count), unit),
    uncertainty: withUnit(spread.toFixed(count), unit),
  }
}

/** A taper as the trade names it, both ways: "1:8 (1.5 in/ft)". */
export function showTaper(ratio: number): string {
  if (!(ratio > 0) || !Number.isFinite(ratio)) return 'not known'
  return `1:${significant(1 / ratio, 4)} (${significant(ratio * 12, 4)} in/ft)`
}

/** A named number as evidence: "taper of the stud 1:8 (1.5 in/ft)", "pitch, male 1.411 mm (18 per in)". */
export function showNamed(name: string, value: number, dimension: Dimension, units: UnitSystem): string {
  if (dimension === 'ratio' && /^taper/i.test(name)) return `${name} ${showTaper(value)}`
  const perInch = dimension === 'length' && /^pitch,/i.test(name) && value > 0 ? ` (${significant(0.0254 / value, 3)} per in)` : ''
  return `${name} ${showIn(units)(value, dimension)}${perInch}`
}

/** A quantity in the unit in which `like` is printed, so that the terms of a sum stand in the unit of the sum. */
export function showLike(value: number, like: number, dimension: Dimension, units: UnitSystem): string {
  const step = stepFor(like, dimension, units)
  return withUnit(step.print(inUnit(si(value, dimension), step.unit, dimension)), step.unit)
}

export const otherSystem = (units: UnitSystem): UnitSystem => (units === 'inch' ? 'metric' : 'inch')

function stepFor(value: number, dimension: Dimension, units: UnitSystem): Step {
  const steps = PRINTED[dimension][units]
  return steps.find((s) => s.below === undefined || Math.abs(value) < s.below) ?? (steps[steps.length - 1] as Step)
}

const withUnit = (number: string, unit: string): string => `${number}${SUFFIX[unit] ?? ` ${unit}`}`

const trimZeros = (text: string): string => (text.includes('.') ? text.replace(/\.?0+$/, '') : text)
