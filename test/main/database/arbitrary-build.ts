import fc from 'fast-check'
import { type BuildFile, FORMAT, FORMAT_VERSION } from '../../../src/shared/model/build.ts'
import type { QuantityRange } from '../../../src/shared/model/fields.ts'
import { JOINT_AIDS } from '../../../src/shared/model/joint.ts'
import { WHEEL_STOPPERS } from '../../../src/shared/model/survey.ts'
import type { Dimension } from '../../../src/shared/quantities/dimension.ts'
import { parseQuantity } from '../../../src/shared/quantities/parse.ts'
import { UNITS, unitSize } from '../../../src/shared/quantities/units.ts'

/*
 * Builds of any shape that the model allows: every kind of part, every key there or not, lists empty or absent, quantities
 * in every unit and spelling that the program reads.
 */

type Part = BuildFile['parts'][number]

const ids = (least: number, most: number) =>
  fc.uniqueArray(fc.stringMatching(/^[a-z0-9][a-z0-9-]{0,11}$/), { minLength: least, maxLength: most })
const id = fc.stringMatching(/^[a-z0-9][a-z0-9-]{0,63}$/)

/** Text as it comes from a keyboard, a catalogue or a mischief-maker; no half surrogates and no U+0000, which the database refuses. */
const text = (minLength: number, maxLength: number) =>
  fc
    .oneof(
      { weight: 4, arbitrary: fc.string({ unit: 'grapheme', minLength, maxLength: 24 }) },
      { weight: 2, arbitrary: fc.string({ unit: 'binary', minLength, maxLength: 24 }) },
      fc.constantFrom("'; DROP TABLE part; --", ' ', '\u{1f529}\ufe0f', '\r\n', '١٢٣', 'null', '%_"`', '\ufeffx', 'é vs e\u0301'),
      fc.constant('x'.repeat(maxLength)),
    )
    .filter((s) => s.length >= minLength && s.length <= maxLength && s.isWellFormed() && !s.includes('\0'))
const name = text(1, 200)
const note = text(0, 4000)
const day = fc
  .date({ min: new Date('0001-01-01T00:00:00Z'), max: new Date('9999-12-31T00:00:00Z'), noInvalidDate: true })
  .map((d) => d.toISOString().slice(0, 10))
const price = fc.stringMatching(/^\d{1,9}(\.\d{1,2})?$/)
const yes = fc.constant(true as const)
const helpers = fc.integer({ min: 0, max: 20 })

const number = fc.oneof(
  fc.record({ size: fc.double({ min: 0, max: 1, noNaN: true }), digits: fc.integer({ min: 1, max: 15 }), comma: fc.boolean() }),
  fc.record({ whole: fc.nat(12), top: fc.integer({ min: 1, max: 63 }), bottom: fc.constantFrom(2, 4, 8, 16, 32, 64), dash: fc.boolean() }),
)

/** A quantity within `range`, in any unit of the dimension and any spelling of it. */
export function typed(dimension: Dimension, { positive, min, max = 1 }: QuantityRange): fc.Arbitrary<string> {
  const low = positive ? 0 : (min ?? 0)
  const units = UNITS.filter((u) => u.dimension === dimension).flatMap((u) => u.spellings.map((spelling) => ({ spelling, size: unitSize(u) })))
  return fc
    .record({ unit: fc.constantFrom(...units), n: number, space: fc.constantFrom('', ' ', '  '), edge: fc.constantFrom('', ' '), minus: fc.constantFrom('-', '−', '- ') })
    .map(({ unit, n, space, edge, minus }) => {
      if ('whole' in n) return `${n.whole === 0 ? '' : n.whole + (n.dash ? '-' : ' ')}${n.top}/${n.bottom}${space}${unit.spelling}${edge}`
      // the small end matters as much as the large one: a third power reaches it without leaving the rest out
      const value = (low + n.size ** 3 * (max - low)) / unit.size
      const digits = Math.abs(value).toPrecision(n.digits)
      return `${value < 0 ? minus : ''}${n.comma ? digits.replace('.', ',') : digits}${space}${unit.spelling}${edge}`
    })
    .filter((s) => {
      const read = parseQuantity(s, dimension)
      if (!read.ok) return false
      const v = read.value.si as number
      return (positive ? v > 0 : min === undefined || v >= min) && v <= max
    })
}

export const CONNECTIONS = [
  '7/8-18 LH female', '7/8-18 RH male', '-6 37° flare male', 'taper 1.5 in/ft stud, large 0.70 in', 'clamp 1 1/4 in', 'weld',
  'M18x1.5 male', 'tube 1.5 in', 'hose 3/8 in', '3/8-18 NPT female',
] as const

const plain = [
  'knuckle', 'steering arm', 'pitman arm', 'rod end', 'bung', 'clamp', 'bracket', 'adapter', 'fastener', 'damper', 'axle housing', 'other',
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
  name, maker: name, partNumber: name, supplier: name, price, quantity: fc.integer({ min: 1, max: 10_000 }),
  state: fc.constantFrom('to order', 'ordered', 'here', 'fitted'), expected: day,
  workingPressure: typed('pressure', { positive: true, max: 1e8 }), ends, note,
} as const
const always = { requiredKeys: ['id', 'kind', 'name', 'state', 'ends'] } as { requiredKeys: ['id', 'kind', 'name', 'state', 'ends'] }

const part = (partId: string): fc.Arbitrary<Part> => {
  const all = { id: fc.constant(partId), ...common }
  return fc.oneof(
    fc.record({ kind: fc.constantFrom(...plain), ...all }, always),
    fc.record(
      {
        kind: fc.constant('tube'), ...all, serves: fc.constantFrom('tie rod', 'drag link', 'other'), outsideDiameter: diameter,
        wall: typed('length', { positive: true, max: 0.1 }), length, material: name,
      },
      always,
    ),
    fc.record(
      {
        kind: fc.constant('ram'), ...all, ended: fc.constantFrom('single', 'double'), bore: diameter, rod: diameter,
        stroke: typed('length', { positive: true, max: 2 }), closedLength: length,
      },
      always,
    ),
    fc.record({ kind: fc.constant('hose'), ...all, line: fc.constantFrom('pressure', 'return', 'suction', 'ram'), bore: diameter, length }, always),
    fc.record(
      { kind: fc.constant('pump'), ...all, reliefPressure: typed('pressure', { positive: true, max: 5e7 }), idleFlow: flow, cruiseFlow: flow, volume },
      always,
    ),
    fc.record(
      { kind: fc.constant('steering box'), ...all, turns: typed('ratio', { positive: true, max: 10 }), sweep: typed('angle', { positive: true, max: 3.2 }), volume },
      always,
    ),
    fc.record({ kind: fc.constantFrom('reservoir', 'cooler', 'filter'), ...all, volume }, always),
    fc.record({ kind: fc.constant('fluid'), ...all, grade: name, bottle: typed('volume', { positive: true, max: 0.3 }) }, always),
  ) as fc.Arbitrary<Part>
}

/** One record for each id, in the ids' order. */
const each = <T>(known: readonly string[], make: (id: string) => fc.Arbitrary<T>): fc.Arbitrary<T[]> => fc.tuple(...known.map(make))
const from = <T>(known: readonly T[]) => fc.constantFrom(...known)
const some = <T>(known: readonly T[], maxLength: number): fc.Arbitrary<T[]> =>
  known.length === 0 ? fc.constant([]) : fc.array(from(known), { maxLength })

const header = fc.record(
  {
    id, name, revision: fc.integer({ min: 1, max: 1_000_000 }), units: fc.constantFrom('inch', 'metric'), currency: fc.stringMatching(/^[A-Z]{3}$/),
    startedOn: day, purgeAllowance: typed('ratio', { min: 0, max: 5 }), notes: note,
  },
  { requiredKeys: ['id', 'name', 'revision', 'units'] },
)
const tyre = fc.record(
  { size: name, pressure: typed('pressure', { positive: true, max: 2e6 }), printWidth: typed('length', { positive: true, max: 1 }) },
  { requiredKeys: [] },
)
const vehicle = fc.record(
  {
    id, name, description: note, wheelbase: length, frontAxleLoad: typed('force', { positive: true, max: 200_000 }), tyre, odometer: name, notes: note,
  },
  { requiredKeys: ['id', 'name'] },
)
const lean = typed('angle', { min: -0.5, max: 0.5 })
const axle = fc.record(
  {
    id, name, kingpinSpacing: typed('length', { positive: true, max: 3 }), armLength: typed('length', { positive: true, max: 1 }),
    armAngle: typed('angle', { min: -1.2, max: 1.2 }), tieRod: fc.constantFrom('behind', 'ahead'), kingpinInclination: lean, caster: lean,
    track: typed('length', { positive: true, max: 4 }), notes: note,
  },
  { requiredKeys: ['id', 'name'] },
)
const reading = fc.record(
  { mark: fc.constantFrom('centre', 'left', 'right'), at: typed('length', { min: -10, max: 10 }), by: name, note },
  { requiredKeys: ['mark', 'at'] },
)
const survey = fc.record(
  {
    takenOn: day, resolution: typed('length', { positive: true, max: 0.1 }), method: fc.constantFrom('to the stops', 'to equal angles'),
    endedBy: fc.record({ left: from(WHEEL_STOPPERS), right: from(WHEEL_STOPPERS) }),
    madeSure: some(['on stands', 'tyres straight at centre', 'hand wheel centred', 'alignment good', 'same straight-edge seat'], 5),
    readings: fc.array(reading, { maxLength: 6 }), ramAngle: typed('angle', { min: 0, max: 1.2 }), note,
  },
  { requiredKeys: ['resolution', 'method', 'endedBy', 'madeSure', 'readings'] },
)
const limits = ids(0, 3).chain((known) =>
  each(known, (limitId) =>
    fc.record(
      {
        id: fc.constant(limitId), what: fc.constantFrom('knuckle stop', 'steering box', 'tyre contact', 'ram'), side: fc.constantFrom('left', 'right', 'both'),
        travel: typed('length', { positive: true, max: 2 }), angle: typed('angle', { positive: true, max: 1.5 }),
        uncertainty: typed('length', { min: 0, max: 0.2 }), note,
      },
      { requiredKeys: ['id', 'what', 'side'] },
    ),
  ),
)
const lookAngle = typed('angle', { min: -0.8, max: 0.8 })
const alignment = ids(0, 3).chain((known) =>
  each(known, (readingId) =>
    fc.record(
      {
        id: fc.constant(readingId), on: day, when: fc.constantFrom('before', 'after', 'check'), toe: typed('length', { min: -0.2, max: 0.2 }),
        toeAt: typed('length', { positive: true, max: 2 }), camberLeft: lookAngle, camberRight: lookAngle, casterLeft: lookAngle, casterRight: lookAngle,
        method: name, by: name, odometer: name, corrects: from(known), note,
      },
      { requiredKeys: ['id', 'on', 'when'] },
    ),
  ),
)
const sessions = ids(0, 3).chain((known) =>
  each(known, (sessionId) =>
    fc.record(
      { id: fc.constant(sessionId), on: day, hours: typed('time', { positive: true, max: 86_400 }), helpers, note },
      { requiredKeys: ['id', 'on', 'hours'] },
    ),
  ),
)

const joints = (parts: readonly Part[]) => {
  const refs = parts.flatMap((p) => p.ends.map((e) => `${p.id}/${e.name}`))
  if (refs.length < 2) return fc.constant([])
  return ids(0, 4).chain((known) =>
    each(known, (jointId) =>
      fc.tuple(fc.shuffledSubarray(refs, { minLength: 2, maxLength: 2 }), fc.record({ name, with: some(JOINT_AIDS, 8), note }, { requiredKeys: [] })).map(
        ([[a = '', b = ''], rest]) => ({ id: jointId, a, b, ...rest }),
      ),
    ),
  )
}
const specs = (jointIds: readonly string[]) =>
  ids(0, 3).chain((known) =>
    each(known, (specId) =>
      fc.record(
        {
          id: fc.constant(specId), ...(jointIds.length > 0 && { joint: from(jointIds) }), what: name, value: typed('torque', { positive: true, max: 5000 }),
          tolerance: typed('torque', { min: 0, max: 1000 }), angle: typed('angle', { positive: true, max: 20 }),
          from: fc.constantFrom('maker', 'published table', 'computed', 'own practice'), source: name, recheckAfter: name,
        },
        { requiredKeys: ['id', 'what', 'from'] },
      ),
    ),
  )
const records = (specIds: readonly string[]) =>
  specIds.length === 0
    ? fc.constant([])
    : ids(0, 4).chain((known) =>
        each(known, (recordId) =>
          fc.record(
            {
              id: fc.constant(recordId), spec: from(specIds), on: day, value: typed('torque', { positive: true, max: 5000 }), wrench: name, by: name,
              odometer: name, corrects: from(known), note,
            },
            { requiredKeys: ['id', 'spec', 'on', 'value'] },
          ),
        ),
      )
const hours = typed('time', { min: 0, max: 3_600_000 })
const tasks = (partIds: readonly string[]) =>
  ids(0, 4).chain((known) =>
    each(known, (taskId) =>
      fc.record(
        {
          id: fc.constant(taskId), name, hours: fc.record({ low: hours, likely: hours, high: hours }), after: some(known, 3), needs: some(partIds, 3), helpers,
          cures: hours, finishInOneGo: yes, done: yes, note,
        },
        { requiredKeys: ['id', 'name', 'hours', 'after'] },
      ),
    ),
  )

/** A build that the model accepts. */
export const arbitraryBuild: fc.Arbitrary<BuildFile> = ids(0, 6)
  .chain((partIds) => each(partIds, part))
  .chain((parts) => fc.tuple(fc.constant(parts), joints(parts)))
  .chain(([parts, jointList]) => fc.tuple(fc.constant(parts), fc.constant(jointList), specs(jointList.map((j) => j.id))))
  .chain(([parts, jointList, torqueSpecs]) =>
    fc.record(
      {
        format: fc.constant(FORMAT), version: fc.constant(FORMAT_VERSION), build: header, vehicle, axle, parts: fc.constant(parts), joints: fc.constant(jointList),
        survey, limits, torqueSpecs: fc.constant(torqueSpecs), torqueRecords: records(torqueSpecs.map((s) => s.id)), alignment, tasks: tasks(parts.map((p) => p.id)),
        sessions,
      },
      { requiredKeys: ['format', 'version', 'build', 'vehicle', 'parts', 'joints', 'torqueSpecs'] },
    ),
  )
  // records lead to specs, so a file without specs is one without either
  .chain((file) => fc.boolean().map((keep) => (keep ? file : withoutSpecs(file))))
  // as JSON.parse makes it: fast-check leaves some objects without a prototype
  .map((file) => JSON.parse(JSON.stringify(file)) as BuildFile)

function withoutSpecs<T extends { torqueSpecs?: unknown; torqueRecords?: unknown }>(file: T): Omit<T, 'torqueSpecs' | 'torqueRecords'> {
  const { torqueSpecs: _specs, torqueRecords: _records, ...rest } = file
  return rest
}
