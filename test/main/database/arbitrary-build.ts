import fc from 'fast-check'
import { type BuildFile, FORMAT, FORMAT_VERSION } from '../../../src/shared/model/build.ts'
import { JOINT_AIDS } from '../../../src/shared/model/joint.ts'
import { WHEEL_STOPPERS } from '../../../src/shared/model/survey.ts'
import { forces } from './arbitrary-forces.ts'
import { geometry } from './arbitrary-geometry.ts'
import { type Part, part } from './arbitrary-part.ts'
import { day, helpers, id, ids, name, note, typed, yes } from './arbitrary-values.ts'

/*
 * Builds of any shape that the model allows: every kind of part, every key there or not, lists empty or absent, quantities
 * in every unit and spelling that the program reads.
 */

const length = typed('length', { positive: true, max: 10 })

/** One record for each id, in the ids' order. */
const each = <T>(known: readonly string[], make: (id: string) => fc.Arbitrary<T>): fc.Arbitrary<T[]> => fc.tuple(...known.map(make))
const from = <T>(known: readonly T[]) => fc.constantFrom(...known)
const some = <T>(known: readonly T[], maxLength: number): fc.Arbitrary<T[]> =>
  known.length === 0 ? fc.constant([]) : fc.array(from(known), { maxLength })

const header = fc.record(
  {
    id,
    name,
    revision: fc.integer({ min: 1, max: 1_000_000 }),
    units: fc.constantFrom('inch', 'metric'),
    currency: fc.stringMatching(/^[A-Z]{3}$/),
    startedOn: day,
    purgeAllowance: typed('ratio', { min: 0, max: 5 }),
    notes: note,
  },
  { requiredKeys: ['id', 'name', 'revision', 'units'] },
)
const tyre = fc.record(
  { size: name, pressure: typed('pressure', { positive: true, max: 2e6 }), printWidth: typed('length', { positive: true, max: 1 }) },
  { requiredKeys: [] },
)
const vehicle = fc.record(
  {
    id,
    name,
    description: note,
    wheelbase: length,
    frontAxleLoad: typed('force', { positive: true, max: 200_000 }),
    tyre,
    odometer: name,
    notes: note,
  },
  { requiredKeys: ['id', 'name'] },
)
const lean = typed('angle', { min: -0.5, max: 0.5 })
const axle = fc.record(
  {
    id,
    name,
    kingpinSpacing: typed('length', { positive: true, max: 3 }),
    armLength: typed('length', { positive: true, max: 1 }),
    armAngle: typed('angle', { min: -1.2, max: 1.2 }),
    tieRod: fc.constantFrom('behind', 'ahead'),
    kingpinInclination: lean,
    caster: lean,
    track: typed('length', { positive: true, max: 4 }),
    notes: note,
  },
  { requiredKeys: ['id', 'name'] },
)
const reading = fc.record(
  { mark: fc.constantFrom('centre', 'left', 'right'), at: typed('length', { min: -10, max: 10 }), by: name, note },
  { requiredKeys: ['mark', 'at'] },
)
const survey = fc.record(
  {
    takenOn: day,
    resolution: typed('length', { positive: true, max: 0.1 }),
    method: fc.constantFrom('to the stops', 'to equal angles'),
    endedBy: fc.record({ left: from(WHEEL_STOPPERS), right: from(WHEEL_STOPPERS) }),
    madeSure: some(['on stands', 'tyres straight at centre', 'hand wheel centred', 'alignment good', 'same straight-edge seat'], 5),
    readings: fc.array(reading, { maxLength: 6 }),
    ramAngle: typed('angle', { min: 0, max: 1.2 }),
    note,
  },
  { requiredKeys: ['resolution', 'method', 'endedBy', 'madeSure', 'readings'] },
)
const limits = ids(0, 3).chain((known) =>
  each(known, (limitId) =>
    fc.record(
      {
        id: fc.constant(limitId),
        what: fc.constantFrom('knuckle stop', 'steering box', 'tyre contact', 'ram'),
        side: fc.constantFrom('left', 'right', 'both'),
        travel: typed('length', { positive: true, max: 2 }),
        angle: typed('angle', { positive: true, max: 1.5 }),
        gap: typed('length', { min: 0, max: 1 }),
        radius: typed('length', { positive: true, max: 2 }),
        clearance: typed('length', { min: 0, max: 0.5 }),
        uncertainty: typed('length', { min: 0, max: 0.2 }),
        note,
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
        id: fc.constant(readingId),
        on: day,
        when: fc.constantFrom('before', 'after', 'check'),
        toe: typed('length', { min: -0.2, max: 0.2 }),
        toeAt: typed('length', { positive: true, max: 2 }),
        camberLeft: lookAngle,
        camberRight: lookAngle,
        casterLeft: lookAngle,
        casterRight: lookAngle,
        method: name,
        by: name,
        odometer: name,
        corrects: from(known),
        note,
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
      fc
        .tuple(
          fc.shuffledSubarray(refs, { minLength: 2, maxLength: 2 }),
          fc.record({ name, with: some(JOINT_AIDS, 8), note }, { requiredKeys: [] }),
        )
        .map(([[a = '', b = ''], rest]) => ({ id: jointId, a, b, ...rest })),
    ),
  )
}
const specs = (jointIds: readonly string[]) =>
  ids(0, 3).chain((known) =>
    each(known, (specId) =>
      fc.record(
        {
          id: fc.constant(specId),
          ...(jointIds.length > 0 && { joints: fc.array(from(jointIds), { minLength: 1, maxLength: 4 }) }),
          what: name,
          value: typed('torque', { positive: true, max: 5000 }),
          tolerance: typed('torque', { min: 0, max: 1000 }),
          angle: typed('angle', { positive: true, max: 20 }),
          from: fc.constantFrom('maker', 'published table', 'computed', 'own practice'),
          source: name,
          recheckAfter: name,
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
              id: fc.constant(recordId),
              spec: from(specIds),
              on: day,
              value: typed('torque', { positive: true, max: 5000 }),
              wrench: name,
              by: name,
              odometer: name,
              corrects: from(known),
              note,
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
          id: fc.constant(taskId),
          name,
          hours: fc.record({ low: hours, likely: hours, high: hours }),
          after: some(known, 3),
          needs: some(partIds, 3),
          helpers,
          cures: hours,
          finishInOneGo: yes,
          done: yes,
          note,
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
        format: fc.constant(FORMAT),
        version: fc.constant(FORMAT_VERSION),
        build: header,
        vehicle,
        axle,
        geometry,
        forces,
        parts: fc.constant(parts),
        joints: fc.constant(jointList),
        survey,
        limits,
        torqueSpecs: fc.constant(torqueSpecs),
        torqueRecords: records(torqueSpecs.map((s) => s.id)),
        alignment,
        tasks: tasks(parts.map((p) => p.id)),
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
