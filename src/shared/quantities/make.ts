import { type Dimension, type Quantity, si } from './dimension.ts'
import { unitBySymbol, unitSize } from './units.ts'

const maker = <D extends Dimension>(symbol: string, dimension: D) => {
  const u = unitBySymbol(symbol, dimension)
  const [num, den] = [Number(u.size[0]), Number(u.size[1])]
  const factor = unitSize(u)
  const exact = !u.pi && Number.isSafeInteger(num) && Number.isSafeInteger(den)
  return (value: number): Quantity<D> => si(exact ? (value * num) / den : value * factor, dimension)
}

export const ratio = maker('1', 'ratio')
export const metres = maker('m', 'length')
export const mm = maker('mm', 'length')
export const inches = maker('in', 'length')
export const feet = maker('ft', 'length')
export const squareMetres = maker('m²', 'area')
export const squareMillimetres = maker('mm²', 'area')
export const squareInches = maker('in²', 'area')
export const cubicMetres = maker('m³', 'volume')
export const litres = maker('L', 'volume')
export const radians = maker('rad', 'angle')
export const degrees = maker('°', 'angle')
export const newtons = maker('N', 'force')
export const poundsForce = maker('lbf', 'force')
export const pascals = maker('Pa', 'pressure')
export const megapascals = maker('MPa', 'pressure')
export const psi = maker('psi', 'pressure')
export const ksi = maker('ksi', 'pressure')
export const bar = maker('bar', 'pressure')
export const newtonMetres = maker('N·m', 'torque')
export const poundFeet = maker('lbf·ft', 'torque')
export const seconds = maker('s', 'time')
export const kilograms = maker('kg', 'mass')
export const litresPerMinute = maker('L/min', 'flow')
export const gallonsPerMinute = maker('US gal/min', 'flow')
export const centistokes = maker('mm²/s', 'kinematicViscosity')
export const perInch = maker('1/in', 'curvature')
