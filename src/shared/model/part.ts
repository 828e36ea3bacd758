import * as z from 'zod'
import { connection } from './end/connection.ts'
import { count, day, id, name, note, price, quantity } from './fields.ts'

export const PART_STATES = ['to order', 'ordered', 'here', 'fitted'] as const

/** One place where a part meets another. */
export const partEnd = z.strictObject({
  /** unique on its part: "left", "rod end", "port A" */
  name: id,
  /** as the trade writes it: "7/8-18 LH female", "-6 37° flare male", "taper 1.5 in/ft stud, large 0.70 in" */
  connection,
  /** left open on purpose: a plug or nothing belongs here */
  leftOpen: z.literal(true).optional(),
  note: note.optional(),
})

const common = {
  id,
  name,
  maker: name.optional(),
  partNumber: name.optional(),
  supplier: name.optional(),
  price: price.optional(),
  /** how many of this very part the build needs; absent means one */
  quantity: count.optional(),
  state: z.enum(PART_STATES),
  /** day on which an ordered part is expected */
  expected: day.optional(),
  workingPressure: quantity('pressure', { positive: true, max: 1e8 }).optional(),
  ends: z.array(partEnd).max(64),
  note: note.optional(),
}

const volume = quantity('volume', { positive: true, max: 0.1 }).optional()
const shortLength = quantity('length', { positive: true, max: 10 }).optional()
const diameter = quantity('length', { positive: true, max: 0.5 }).optional()

/** Parts that say little more than where they join. */
export const PLAIN_KINDS = [
  'knuckle',
  'steering arm',
  'pitman arm',
  'rod end',
  'bung',
  'clamp',
  'bracket',
  'adapter',
  'fastener',
  'damper',
  'axle housing',
  'other',
] as const

export const part = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.enum(PLAIN_KINDS),
    ...common,
    /** overall: what an adapter adds to a line */
    length: shortLength,
  }),
  z.strictObject({
    kind: z.literal('tube'),
    ...common,
    /** what it serves as */
    serves: z.enum(['tie rod', 'drag link', 'other']).optional(),
    outsideDiameter: diameter,
    wall: quantity('length', { positive: true, max: 0.1 }).optional(),
    length: shortLength,
    material: name.optional(),
  }),
  z.strictObject({
    kind: z.literal('ram'),
    ...common,
    ended: z.enum(['single', 'double']).optional(),
    bore: diameter,
    rod: diameter,
    stroke: quantity('length', { positive: true, max: 2 }).optional(),
    /** between the mounting pins, fully closed */
    closedLength: shortLength,
  }),
  z.strictObject({
    kind: z.literal('hose'),
    ...common,
    line: z.enum(['pressure', 'return', 'suction', 'ram']).optional(),
    bore: diameter,
    length: shortLength,
  }),
  z.strictObject({
    kind: z.literal('pump'),
    ...common,
    reliefPressure: quantity('pressure', { positive: true, max: 5e7 }).optional(),
    idleFlow: quantity('flow', { positive: true, max: 0.01 }).optional(),
    cruiseFlow: quantity('flow', { positive: true, max: 0.01 }).optional(),
    volume,
  }),
  z.strictObject({
    kind: z.literal('steering box'),
    ...common,
    turns: quantity('ratio', { positive: true, max: 10 }).optional(),
    sweep: quantity('angle', { positive: true, max: 3.2 }).optional(),
    volume,
  }),
  z.strictObject({ kind: z.enum(['reservoir', 'cooler', 'filter']), ...common, volume }),
  z.strictObject({
    kind: z.literal('fluid'),
    ...common,
    grade: name.optional(),
    bottle: quantity('volume', { positive: true, max: 0.3 }).optional(),
  }),
])

export type Part = z.output<typeof part>
/** A part as JSON holds it: every quantity and connection a string as typed. */
export type PartFile = z.input<typeof part>
export type PartKind = Part['kind']
/** Every kind, the plain ones first. */
export const PART_KINDS = [
  ...PLAIN_KINDS,
  'tube',
  'ram',
  'hose',
  'pump',
  'steering box',
  'reservoir',
  'cooler',
  'filter',
  'fluid',
] as const satisfies readonly PartKind[]
export type PartEnd = z.output<typeof partEnd>
export type PartOf<K extends PartKind> = Extract<Part, { kind: K }>
