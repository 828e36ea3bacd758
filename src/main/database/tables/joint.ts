import type { BuildFile } from '../../../shared/model/build.ts'
import type { JointAid } from '../../../shared/model/joint.ts'
import { as, choice, endRef, id, name, note, optional, optionalList } from '../field.ts'
import { table } from '../table.ts'
import { BUILD_PARTS } from './build-part.ts'
import { listed, within } from './keys.ts'

export type JointFile = BuildFile['joints'][number]

const toEnd = (which: 'a' | 'b') => ({
  columns: ['build_id', `${which}_part`, `${which}_end`],
  table: () => BUILD_PARTS.partEnd,
  to: ['build_id', 'part', 'name'],
})

export const joint = table<JointFile>('joint', {
  ...listed,
  references: [...listed.references, toEnd('a'), toEnd('b')],
  checks: [...listed.checks, { about: 'two_ends', sql: `"a_part" <> "b_part" OR "a_end" <> "b_end"` }],
  fields: { id, name: optional(name), a: endRef, b: endRef, with: as('aids', optionalList()), note: optional(note) },
})

/** What goes between or on, one word a row. */
export const jointAid = table<{ aid: JointAid }>('joint_aid', {
  ...within('joint', () => joint),
  fields: {
    aid: choice(
      'sealant',
      'bonded washer',
      'crush washers',
      'hose clamp',
      'pinch bolt',
      'jam nut',
      'castle nut and cotter',
      'lock nut',
      'weld',
    ),
  },
})
