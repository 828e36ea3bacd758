/**
 * The dimensions this program works in. `base` gives the exponents of metre, kilogram, second and kelvin, so that
 * tests can ask of any formula whether its result scales as its units demand. A plane angle counts as a pure number.
 */
export const DIMENSIONS = {
  ratio: { unit: '1', base: [0, 0, 0, 0] },
  length: { unit: 'm', base: [1, 0, 0, 0] },
  area: { unit: 'm²', base: [2, 0, 0, 0] },
  volume: { unit: 'm³', base: [3, 0, 0, 0] },
  secondMomentOfArea: { unit: 'm⁴', base: [4, 0, 0, 0] },
  angle: { unit: 'rad', base: [0, 0, 0, 0] },
  curvature: { unit: '1/m', base: [-1, 0, 0, 0] },
  mass: { unit: 'kg', base: [0, 1, 0, 0] },
  time: { unit: 's', base: [0, 0, 1, 0] },
  temperature: { unit: 'K', base: [0, 0, 0, 1] },
  speed: { unit: 'm/s', base: [1, 0, -1, 0] },
  acceleration: { unit: 'm/s²', base: [1, 0, -2, 0] },
  angularSpeed: { unit: 'rad/s', base: [0, 0, -1, 0] },
  flow: { unit: 'm³/s', base: [3, 0, -1, 0] },
  displacementPerTurn: { unit: 'm³/rad', base: [3, 0, 0, 0] },
  force: { unit: 'N', base: [1, 1, -2, 0] },
  pressure: { unit: 'Pa', base: [-1, 1, -2, 0] },
  torque: { unit: 'N·m', base: [2, 1, -2, 0] },
  power: { unit: 'W', base: [2, 1, -3, 0] },
  density: { unit: 'kg/m³', base: [-3, 1, 0, 0] },
  kinematicViscosity: { unit: 'm²/s', base: [2, 0, -1, 0] },
  dynamicViscosity: { unit: 'Pa·s', base: [-1, 1, -1, 0] },
  pressureGradient: { unit: 'Pa/m', base: [-2, 1, -2, 0] },
  stiffness: { unit: 'N/m', base: [0, 1, -2, 0] },
} as const satisfies Record<string, { unit: string; base: readonly [number, number, number, number] }>

export type Dimension = keyof typeof DIMENSIONS

declare const dimension: unique symbol

/** A number in base SI that knows what it measures; made only by the constructors and the parser of this room. */
export type Quantity<D extends Dimension = Dimension> = number & { readonly [dimension]: D }

export type Ratio = Quantity<'ratio'>
export type Length = Quantity<'length'>
export type Area = Quantity<'area'>
export type Volume = Quantity<'volume'>
export type Angle = Quantity<'angle'>
export type Mass = Quantity<'mass'>
export type Time = Quantity<'time'>
export type Temperature = Quantity<'temperature'>
export type Speed = Quantity<'speed'>
export type Flow = Quantity<'flow'>
export type Force = Quantity<'force'>
export type Pressure = Quantity<'pressure'>
export type Torque = Quantity<'torque'>
export type Power = Quantity<'power'>
export type Density = Quantity<'density'>
export type KinematicViscosity = Quantity<'kinematicViscosity'>

/** What a person typed, to the letter, beside the value it stands for (base SI). */
export interface Typed<D extends Dimension = Dimension> {
  readonly typed: string
  readonly si: Quantity<D>
}

/** Names the dimension of a number that is already in base SI. The only cast of the house; use a unit's own maker where there is one. */
export const si = <D extends Dimension>(value: number, _dimension: D): Quantity<D> => value as Quantity<D>
