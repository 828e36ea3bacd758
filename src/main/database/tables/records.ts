import type { BuildFile } from '../../../shared/model/build.ts'
import { as, choice, day, id, name, note, optional, optionalList, quantity } from '../field.ts'
import { type Table, table } from '../table.ts'
import { joint } from './joint.ts'
import { listed, within } from './keys.ts'

export type TorqueSpecFile = NonNullable<BuildFile['torqueSpecs']>[number]
export type TorqueRecordFile = NonNullable<BuildFile['torqueRecords']>[number]
export type AlignmentFile = NonNullable<BuildFile['alignment']>[number]

export const torqueSpec = table<TorqueSpecFile>('torque_spec', {
  ...listed,
  fields: {
    id,
    joints: optionalList(),
    what: name,
    value: optional(quantity('torque', { positive: true, max: 5000 })),
    tolerance: optional(quantity('torque', { min: 0, max: 1000 })),
    angle: optional(quantity('angle', { positive: true, max: 20 })),
    from: as('said_by', choice('maker', 'published table', 'computed', 'own practice')),
    source: optional(name),
    recheckAfter: optional(name),
  },
})

const ofSpec = within('spec', () => torqueSpec)

/** A joint that a torque spec speaks for. */
export const torqueSpecJoint = table<{ joint: string }>('torque_spec_joint', {
  ...ofSpec,
  references: [...ofSpec.references, { columns: ['build_id', 'joint'], table: () => joint, to: ['build_id', 'id'] }],
  fields: { joint: id },
})

export const torqueRecord: Table<TorqueRecordFile> = table<TorqueRecordFile>('torque_record', {
  ...listed,
  references: [
    ...listed.references,
    { columns: ['build_id', 'spec'], table: () => torqueSpec, to: ['build_id', 'id'] },
    { columns: ['build_id', 'corrects'], table: () => torqueRecord, to: ['build_id', 'id'] },
  ],
  fields: {
    id,
    spec: id,
    on: as('done_on', day),
    value: quantity('torque', { positive: true, max: 5000 }),
    wrench: optional(name),
    by: as('done_by', optional(name)),
    odometer: optional(name),
    corrects: optional(id),
    note: optional(note),
  },
})

const angle = optional(quantity('angle', { min: -0.8, max: 0.8 }))

export const alignmentReading: Table<AlignmentFile> = table<AlignmentFile>('alignment_reading', {
  ...listed,
  references: [...listed.references, { columns: ['build_id', 'corrects'], table: () => alignmentReading, to: ['build_id', 'id'] }],
  fields: {
    id,
    on: as('done_on', day),
    when: as('stage', choice('before', 'after', 'check')),
    toe: optional(quantity('length', { min: -0.2, max: 0.2 })),
    toeAt: optional(quantity('length', { positive: true, max: 2 })),
    camberLeft: angle,
    camberRight: angle,
    casterLeft: angle,
    casterRight: angle,
    method: optional(name),
    by: as('done_by', optional(name)),
    odometer: optional(name),
    corrects: optional(id),
    note: optional(note),
  },
})
