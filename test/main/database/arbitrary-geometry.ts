import fc from 'fast-check'
import { typed } from './arbitrary-values.ts'

const size = typed('length', { positive: true, max: 3 })
const signed = typed('length', { min: -3, max: 3 })
const upToOne = typed('length', { positive: true, max: 1 })
const angle = typed('angle', { min: -1.2, max: 1.2 })
const from = fc.constantFrom('middle', 'left kingpin', 'right kingpin')
const points = fc.constantFrom('ahead', 'behind')
const leftOrRight = fc.constantFrom('left', 'right')

/** An object of which every key may be missing, all of them at once too. */
const loose = <T>(keys: { [K in keyof T]: fc.Arbitrary<T[K]> }) => fc.record(keys, { requiredKeys: [] })

/** Where the joints are, with any of it missing. */
export const geometry = loose({
  arms: loose({ leftLength: size, leftAngle: angle, rightLength: size, rightAngle: angle }),
  tieRod: loose({
    length: size,
    toe: typed('length', { min: -0.2, max: 0.2 }),
    toeAt: typed('length', { positive: true, max: 2 }),
    above: signed,
  }),
  wheel: loose({
    hubFace: typed('length', { min: 0, max: 1 }),
    offset: typed('length', { min: -0.5, max: 0.5 }),
    loadedRadius: typed('length', { positive: true, max: 1.5 }),
    diameter: size,
    width: upToOne,
  }),
  corner: loose({ out: size, ahead: size }),
  pitman: loose({ from, along: signed, ahead: signed, ballAbove: signed, length: upToOne, points, angle }),
  dragLink: loose({
    to: fc.constantFrom('left knuckle', 'right knuckle', 'tie rod'),
    armLength: upToOne,
    armAngle: angle,
    armPoints: points,
    rodEnd: leftOrRight,
    along: size,
    ahead: signed,
    above: signed,
    length: size,
  }),
  ram: loose({
    from,
    along: signed,
    ahead: signed,
    above: signed,
    rodEnd: leftOrRight,
    rodAlong: size,
    rodAhead: signed,
    rodAbove: signed,
    bodyLength: size,
    bodyDiameter: typed('length', { positive: true, max: 0.5 }),
    uncertainty: typed('length', { min: 0, max: 0.2 }),
    endsTravel: fc.constant(true as const),
  }),
  suspension: loose({
    spring: fc.constantFrom('coil', 'leaf'),
    bump: upToOne,
    droop: upToOne,
    trackBarLength: size,
    trackBarAbove: signed,
    trackBarFrameEnd: leftOrRight,
    eyeAbove: signed,
    eyeAway: size,
  }),
  casterSweep: loose({
    turn: typed('angle', { positive: true, max: 1 }),
    leftOut: angle,
    leftIn: angle,
    rightOut: angle,
    rightIn: angle,
  }),
})
