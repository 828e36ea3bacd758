import type { BuildFile } from '../../../shared/model/build.ts'
import { choice, mark, optional, optionalNested, quantity } from '../field.ts'
import { table } from '../table.ts'
import { single } from './keys.ts'

export type GeometryFile = NonNullable<BuildFile['geometry']>

/** One of its objects: it may be absent, or there without a key, which is not the same. */
type Inner<K extends keyof GeometryFile> = NonNullable<GeometryFile[K]>

const size = optional(quantity('length', { positive: true, max: 3 }))
const signed = optional(quantity('length', { min: -3, max: 3 }))
const upToOne = optional(quantity('length', { positive: true, max: 1 }))
const angle = optional(quantity('angle', { min: -1.2, max: 1.2 }))
const from = optional(choice('middle', 'left kingpin', 'right kingpin'))
const points = optional(choice('ahead', 'behind'))
const leftOrRight = optional(choice('left', 'right'))

const arms = optionalNested<Inner<'arms'>>({ leftLength: size, leftAngle: angle, rightLength: size, rightAngle: angle })

const tieRod = optionalNested<Inner<'tieRod'>>({
  length: size,
  toe: optional(quantity('length', { min: -0.2, max: 0.2 })),
  toeAt: optional(quantity('length', { positive: true, max: 2 })),
  above: signed,
})

const wheel = optionalNested<Inner<'wheel'>>({
  hubFace: optional(quantity('length', { min: 0, max: 1 })),
  offset: optional(quantity('length', { min: -0.5, max: 0.5 })),
  loadedRadius: optional(quantity('length', { positive: true, max: 1.5 })),
  diameter: size,
  width: upToOne,
})

const corner = optionalNested<Inner<'corner'>>({ out: size, ahead: size })

const pitman = optionalNested<Inner<'pitman'>>({ from, along: signed, ahead: signed, ballAbove: signed, length: upToOne, points, angle })

const dragLink = optionalNested<Inner<'dragLink'>>({
  to: optional(choice('left knuckle', 'right knuckle', 'tie rod')),
  armLength: upToOne,
  armAngle: angle,
  armPoints: points,
  rodEnd: leftOrRight,
  along: size,
  ahead: signed,
  above: signed,
  length: size,
})

const ram = optionalNested<Inner<'ram'>>({
  from,
  along: signed,
  ahead: signed,
  above: signed,
  rodEnd: leftOrRight,
  rodAlong: size,
  rodAhead: signed,
  rodAbove: signed,
  bodyLength: size,
  bodyDiameter: optional(quantity('length', { positive: true, max: 0.5 })),
  uncertainty: optional(quantity('length', { min: 0, max: 0.2 })),
  endsTravel: mark,
})

const suspension = optionalNested<Inner<'suspension'>>({
  spring: optional(choice('coil', 'leaf')),
  bump: upToOne,
  droop: upToOne,
  trackBarLength: size,
  trackBarAbove: signed,
  trackBarFrameEnd: leftOrRight,
  eyeAbove: signed,
  eyeAway: size,
})

const casterSweep = optionalNested<Inner<'casterSweep'>>({
  turn: optional(quantity('angle', { positive: true, max: 1 })),
  leftOut: angle,
  leftIn: angle,
  rightOut: angle,
  rightIn: angle,
})

/** Where the joints are. One row a build, which is there where the file has the key, even with nothing under it. */
export const geometry = table<GeometryFile>('geometry', {
  ...single,
  fields: { arms, tieRod, wheel, corner, pitman, dragLink, ram, suspension, casterSweep },
})
