import type { BuildFile } from '../../../shared/model/build.ts'
import { type PartKind, PLAIN_KINDS } from '../../../shared/model/part.ts'
import { choice, connection, day, type FieldsOf, id, list, mark, name, note, optional, price, quantity, whole } from '../field.ts'
import { type Table, table } from '../table.ts'
import { column, listed, within } from './keys.ts'

export type PartFile = BuildFile['parts'][number]
export type EndFile = PartFile['ends'][number]
/** What every part has. */
export type CommonFile = Pick<PartFile, keyof PartFile>
/** What a part of this kind has beside that. */
type OwnFile<K extends PartKind> = Omit<Extract<PartFile, { kind: K }>, keyof PartFile>

export const part: Table<CommonFile> = table<CommonFile>('part', {
  ...listed,
  // the tables of single kinds point at the kind too, so that a ram's row can belong to a ram only
  unique: [...listed.unique, ['build_id', 'id', 'kind']],
  fields: {
    id,
    kind: choice(
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
      'tube',
      'ram',
      'hose',
      'pump',
      'steering box',
      'reservoir',
      'cooler',
      'filter',
      'fluid',
    ),
    name,
    maker: optional(name),
    partNumber: optional(name),
    supplier: optional(name),
    price: optional(price),
    quantity: optional(whole(1, 10_000)),
    state: choice('to order', 'ordered', 'here', 'fitted'),
    expected: optional(day),
    workingPressure: optional(quantity('pressure', { positive: true, max: 1e8 })),
    ends: list(),
    note: optional(note),
  },
})

export const partEnd: Table<EndFile> = table<EndFile>('part_end', {
  ...within('part', () => part),
  primary: ['build_id', 'part', 'name'],
  unique: [['build_id', 'part', 'position']],
  fields: { name: id, connection, leftOpen: mark, note: optional(note) },
})

const ofKind = <K extends PartKind>(tableName: string, kinds: readonly K[], fields: FieldsOf<OwnFile<K>>) =>
  table<OwnFile<K>>(tableName, {
    keys: [column('build_id'), column('part'), column('kind')],
    primary: ['build_id', 'part'],
    references: [{ columns: ['build_id', 'part', 'kind'], table: () => part, to: ['build_id', 'id', 'kind'], owned: true }],
    checks: [{ about: 'kind', sql: `"kind" IN (${kinds.map((k) => `'${k}'`).join(', ')})` }],
    fields,
  })

const diameter = optional(quantity('length', { positive: true, max: 0.5 }))
const length = optional(quantity('length', { positive: true, max: 10 }))
const volume = optional(quantity('volume', { positive: true, max: 0.1 }))
const flow = optional(quantity('flow', { positive: true, max: 0.01 }))

export const plain = ofKind('part_plain', PLAIN_KINDS, { length })

export const tube = ofKind('part_tube', ['tube'], {
  serves: optional(choice('tie rod', 'drag link', 'other')),
  outsideDiameter: diameter,
  wall: optional(quantity('length', { positive: true, max: 0.1 })),
  length,
  material: optional(name),
})

export const ram = ofKind('part_ram', ['ram'], {
  ended: optional(choice('single', 'double')),
  bore: diameter,
  rod: diameter,
  stroke: optional(quantity('length', { positive: true, max: 2 })),
  closedLength: length,
})

export const hose = ofKind('part_hose', ['hose'], {
  line: optional(choice('pressure', 'return', 'suction', 'ram')),
  bore: diameter,
  length,
})

export const pump = ofKind('part_pump', ['pump'], {
  reliefPressure: optional(quantity('pressure', { positive: true, max: 5e7 })),
  idleFlow: flow,
  cruiseFlow: flow,
  volume,
})

export const box = ofKind('part_box', ['steering box'], {
  turns: optional(quantity('ratio', { positive: true, max: 10 })),
  sweep: optional(quantity('angle', { positive: true, max: 3.2 })),
  volume,
})

export const container = ofKind('part_container', ['reservoir', 'cooler', 'filter'], { volume })

export const fluid = ofKind('part_fluid', ['fluid'], {
  grade: optional(name),
  bottle: optional(quantity('volume', { positive: true, max: 0.3 })),
})
