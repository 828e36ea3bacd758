import type { BuildFile } from '../../../shared/model/build.ts'
import { choice, id, mark, name, optional, optionalList, optionalNested, quantity, whole } from '../field.ts'
import { table } from '../table.ts'
import { single, withinSingle } from './keys.ts'

export type ForcesFile = NonNullable<BuildFile['forces']>
export type BoltsFile = NonNullable<ForcesFile['bolts']>[number]
export type HoseRunFile = NonNullable<ForcesFile['hoses']>[number]

/** One of its objects: it may be absent, or there without a key, which is not the same. */
type Inner<K extends keyof ForcesFile> = NonNullable<ForcesFile[K]>

const size = optional(quantity('length', { positive: true, max: 3 }))
const small = optional(quantity('length', { positive: true, max: 0.5 }))
const stress = optional(quantity('pressure', { positive: true, max: 3e9 }))
const share = optional(quantity('ratio', { positive: true, max: 1 }))
const flow = optional(quantity('flow', { positive: true, max: 0.01 }))
const turning = optional(quantity('angularSpeed', { positive: true, max: 2000 }))
const viscosity = optional(quantity('kinematicViscosity', { min: 2e-6, max: 1 }))
const temperature = optional(quantity('temperature', { min: 230, max: 420 }))

const ground = optionalNested<Inner<'ground'>>({
  friction: optional(quantity('ratio', { positive: true, max: 0.7 })),
  driven: mark,
  rockFactor: optional(quantity('ratio', { min: 1, max: 5 })),
  route: optional(choice('sizing sheet', 'print and jacking', 'pressure law')),
})

const losses = optionalNested<Inner<'losses'>>({ ram: share, gear: share, hoseEnd: optional(quantity('ratio', { min: 0, max: 20 })) })

const pump = optionalNested<Inner<'pump'>>({
  displacement: optional(quantity('volume', { positive: true, max: 1e-3 })),
  pulleyRatio: optional(quantity('ratio', { positive: true, max: 5 })),
  idleSpeed: turning,
  cruiseSpeed: turning,
  efficiency: share,
  flowControl: flow,
})

const box = optionalNested<Inner<'box'>>({
  pistonBore: small,
  sectorRadius: small,
  sectorRating: optional(quantity('torque', { positive: true, max: 20_000 })),
})

const oil = optionalNested<Inner<'oil'>>({
  grade: optional(name),
  at40: viscosity,
  at100: viscosity,
  density: optional(quantity('density', { min: 500, max: 1500 })),
  cold: temperature,
  hot: temperature,
})

const link = optionalNested<Inner<'tieRod' | 'dragLink'>>({
  material: optional(name),
  weldMaterial: optional(name),
  weldedEnds: mark,
  jog: optional(quantity('length', { min: 0, max: 0.5 })),
})

const rodEnd = optionalNested<Inner<'rodEnd'>>({ yield: stress, studDiameter: small, studLever: small, studYield: stress })

const steeringArm = optionalNested<Inner<'steeringArm'>>({ thickness: small, width: small, lever: size, yield: stress })

/** What the sums on force, strength and flow need. One row a build, which is there where the file has the key. */
export const forces = table<ForcesFile>('forces', {
  ...single,
  fields: {
    ground,
    kingpinOffset: optional(quantity('length', { min: -0.5, max: 0.5 })),
    handWheel: size,
    handForce: optional(quantity('force', { positive: true, max: 2000 })),
    losses,
    pump,
    box,
    oil,
    tieRod: link,
    dragLink: link,
    rodEnd,
    steeringArm,
    ramRod: optionalNested<Inner<'ramRod'>>({ yield: stress }),
    clampFriction: share,
    bolts: optionalList(),
    hoses: optionalList(),
  },
})

/** Bolts that do one thing. Known by their place: the model does not ask that their ids differ. */
export const boltGroup = table<BoltsFile>('bolt_group', {
  ...withinSingle(() => forces),
  fields: {
    id,
    what: name,
    place: choice('ram bracket', 'ram clamp', 'pinch', 'other'),
    thread: name,
    grade: optional(choice('2', '5', '8', '8.8', '10.9', '12.9')),
    count: optional(whole(1, 50)),
    finish: optional(choice('plain', 'zinc', 'lubricated', 'cadmium')),
    convention: optional(choice('textbook', 'industry')),
    preload: share,
    planes: optional(whole(1, 4)),
    height: size,
    rows: size,
    maker: optional(quantity('torque', { positive: true, max: 5000 })),
  },
})

/** The way a hose goes. Nothing points at the hose: the model lets a run name one that is not there. */
export const hoseRun = table<HoseRunFile>('hose_run', {
  ...withinSingle(() => forces),
  fields: { hose: id, bend: size, longestWay: optional(quantity('length', { positive: true, max: 10 })) },
})
