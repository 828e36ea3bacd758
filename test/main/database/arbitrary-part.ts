import fc from 'fast-check'
import type { BuildFile } from '../../../src/shared/model/build.ts'
import { PLAIN_KINDS } from '../../../src/shared/model/part.ts'
import { day, ids, name, note, price, typed, yes } from './arbitrary-values.ts'

export type Part = BuildFile['parts'][number]

export const CONNECTIONS = [
  '7/8-18 LH female',
  '7/8-18 RH male',
  '-6 37° flare male',
  'taper 1.5 in/ft stud, large 0.70 in',
  'clamp 1 1/4 in',
  'weld',
  'M18x1.5 male',
  'tube 1.5 in',
  'hose 3/8 in',
  '3/8-18 NPT female',
] as const

const diameter = typed('length', { positive: true, max: 0.5 })
const length = typed('length', { positive: true, max: 10 })
const volume = typed('volume', { positive: true, max: 0.1 })
const flow = typed('flow', { positive: true, max: 0.01 })

const ends = ids(0, 3).chain((names) =>
  fc.tuple(
    ...names.map((end) =>
      fc.record(
        { name: fc.constant(end), connection: fc.constantFrom(...CONNECTIONS), leftOpen: yes, note },
        { requiredKeys: ['name', 'connection'] },
      ),
    ),
  ),
)
const common = {
  name,
  maker: name,
  partNumber: name,
  supplier: name,
  price,
  quantity: fc.integer({ min: 1, max: 10_000 }),
  state: fc.constantFrom('to order', 'ordered', 'here', 'fitted'),
  expected: day,
  workingPressure: typed('pressure', { positive: true, max: 1e8 }),
  ends,
  note,
} as const
const always = { requiredKeys: ['id', 'kind', 'name', 'state', 'ends'] } as { requiredKeys: ['id', 'kind', 'name', 'state', 'ends'] }

export const part = (partId: string): fc.Arbitrary<Part> => {
  const all = { id: fc.constant(partId), ...common }
  return fc.oneof(
    fc.record({ kind: fc.constantFrom(...PLAIN_KINDS), ...all, length }, always),
    fc.record(
      {
        kind: fc.constant('tube'),
        ...all,
        serves: fc.constantFrom('tie rod', 'drag link', 'other'),
        outsideDiameter: diameter,
        wall: typed('length', { positive: true, max: 0.1 }),
        length,
        material: name,
      },
      always,
    ),
    fc.record(
      {
        kind: fc.constant('ram'),
        ...all,
        ended: fc.constantFrom('single', 'double'),
        bore: diameter,
        rod: diameter,
        stroke: typed('length', { positive: true, max: 2 }),
        closedLength: length,
      },
      always,
    ),
    fc.record(
      { kind: fc.constant('hose'), ...all, line: fc.constantFrom('pressure', 'return', 'suction', 'ram'), bore: diameter, length },
      always,
    ),
    fc.record(
      {
        kind: fc.constant('pump'),
        ...all,
        reliefPressure: typed('pressure', { positive: true, max: 5e7 }),
        idleFlow: flow,
        cruiseFlow: flow,
        volume,
      },
      always,
    ),
    fc.record(
      {
        kind: fc.constant('steering box'),
        ...all,
        turns: typed('ratio', { positive: true, max: 10 }),
        sweep: typed('angle', { positive: true, max: 3.2 }),
        volume,
      },
      always,
    ),
    fc.record({ kind: fc.constantFrom('reservoir', 'cooler', 'filter'), ...all, volume }, always),
    fc.record({ kind: fc.constant('fluid'), ...all, grade: name, bottle: typed('volume', { positive: true, max: 0.3 }) }, always),
  ) as fc.Arbitrary<Part>
}
