import { PART_KINDS, type PartFile, type PartKind, PLAIN_KINDS } from '../../../shared/model/part.ts'
import { choice, connection, day, type FieldsOf, id, list, mark, name, note, optional, price, quantity, whole } from '../field.ts'
import { type Shape, type Table, table } from '../table.ts'
import { column, position } from './keys.ts'

export type EndFile = PartFile['ends'][number]
/** What every part has. */
export type CommonFile = Pick<PartFile, keyof PartFile>
/** What a part of this kind has beside that. */
type OwnFile<K extends PartKind> = Omit<Extract<PartFile, { kind: K }>, keyof PartFile>

const common: FieldsOf<CommonFile> = {
  id,
  kind: choice(...PART_KINDS),
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
}
const end: FieldsOf<EndFile> = { name: id, connection, leftOpen: mark, note: optional(note) }

const diameter = optional(quantity('length', { positive: true, max: 0.5 }))
const length = optional(quantity('length', { positive: true, max: 10 }))
const volume = optional(quantity('volume', { positive: true, max: 0.1 }))
const flow = optional(quantity('flow', { positive: true, max: 0.01 }))

/** Where parts are kept: what stands before their tables' names, and by which columns they are told apart. */
interface Keeper {
  readonly prefix: string
  readonly part: Omit<Shape<CommonFile>, 'fields'>
  /** columns by which a row of another table names the part that it belongs to */
  readonly owner: Shape<CommonFile>['keys']
  /** the same columns in the part's own row */
  readonly to: readonly string[]
}

/** The tables that hold parts, each after those it points at. A kind has a table of its own for what only it has. */
export function partTables({ prefix, part: keys, owner, to }: Keeper) {
  const part: Table<CommonFile> = table<CommonFile>(`${prefix}part`, {
    ...keys,
    // the tables of single kinds point at the kind too, so that a ram's row can belong to a ram only
    unique: [...(keys.unique ?? []), [...to, 'kind']],
    fields: common,
  })
  const columns = owner.map((c) => c.name)
  const partEnd: Table<EndFile> = table<EndFile>(`${prefix}part_end`, {
    keys: [...owner, column('position', 'integer')],
    primary: [...columns, 'name'],
    unique: [[...columns, 'position']],
    references: [{ columns, table: () => part, to, owned: true }],
    checks: [position],
    fields: end,
  })
  const ofKind = <K extends PartKind>(own: string, kinds: readonly K[], fields: FieldsOf<OwnFile<K>>) =>
    table<OwnFile<K>>(`${prefix}part_${own}`, {
      keys: [...owner, column('kind')],
      primary: columns,
      references: [{ columns: [...columns, 'kind'], table: () => part, to: [...to, 'kind'], owned: true }],
      checks: [{ about: 'kind', sql: `"kind" IN (${kinds.map((k) => `'${k}'`).join(', ')})` }],
      fields,
    })
  return {
    part,
    partEnd,
    plain: ofKind('plain', PLAIN_KINDS, { length }),
    tube: ofKind('tube', ['tube'], {
      serves: optional(choice('tie rod', 'drag link', 'other')),
      outsideDiameter: diameter,
      wall: optional(quantity('length', { positive: true, max: 0.1 })),
      length,
      material: optional(name),
    }),
    ram: ofKind('ram', ['ram'], {
      ended: optional(choice('single', 'double')),
      bore: diameter,
      rod: diameter,
      stroke: optional(quantity('length', { positive: true, max: 2 })),
      closedLength: length,
    }),
    hose: ofKind('hose', ['hose'], {
      line: optional(choice('pressure', 'return', 'suction', 'ram')),
      bore: diameter,
      length,
    }),
    pump: ofKind('pump', ['pump'], {
      reliefPressure: optional(quantity('pressure', { positive: true, max: 5e7 })),
      idleFlow: flow,
      cruiseFlow: flow,
      volume,
    }),
    box: ofKind('box', ['steering box'], {
      turns: optional(quantity('ratio', { positive: true, max: 10 })),
      sweep: optional(quantity('angle', { positive: true, max: 3.2 })),
      volume,
    }),
    container: ofKind('container', ['reservoir', 'cooler', 'filter'], { volume }),
    fluid: ofKind('fluid', ['fluid'], {
      grade: optional(name),
      bottle: optional(quantity('volume', { positive: true, max: 0.3 })),
    }),
  } as const
}

export type PartTables = ReturnType<typeof partTables>
