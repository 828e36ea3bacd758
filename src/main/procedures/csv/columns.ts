import type { PartFile } from '../../../shared/model/part.ts'

type KeyOf<P> = P extends unknown ? keyof P : never
/** Every key that a part of some kind can have. */
export type PartKey = KeyOf<PartFile>

/**
 * The columns of the table, by the key of the part that each holds, in the order in which they are written. `ends` holds all
 * ends in one cell (ends.ts).
 */
export const COLUMNS = {
  id: 'id',
  kind: 'kind',
  name: 'name',
  maker: 'maker',
  partNumber: 'part number',
  supplier: 'supplier',
  price: 'price',
  quantity: 'quantity',
  state: 'state',
  expected: 'expected',
  ends: 'ends',
  length: 'length',
  workingPressure: 'working pressure',
  serves: 'serves',
  outsideDiameter: 'outside diameter',
  wall: 'wall',
  material: 'material',
  ended: 'ended',
  bore: 'bore',
  rod: 'rod',
  stroke: 'stroke',
  closedLength: 'closed length',
  line: 'line',
  reliefPressure: 'relief pressure',
  idleFlow: 'idle flow',
  cruiseFlow: 'cruise flow',
  volume: 'volume',
  turns: 'turns',
  sweep: 'sweep',
  grade: 'grade',
  bottle: 'bottle',
  note: 'note',
} as const satisfies Record<PartKey, string>

export const KEYS = Object.keys(COLUMNS) as readonly PartKey[]

/** Written even where no part has them, so that an empty shelf gives a table to fill in. */
export const ALWAYS: readonly PartKey[] = [
  'id',
  'kind',
  'name',
  'maker',
  'partNumber',
  'supplier',
  'price',
  'quantity',
  'state',
  'ends',
  'note',
]

const BY_NAME = new Map(Object.entries(COLUMNS).map(([key, name]) => [name, key as PartKey]))

/** The key a column's heading means, capitals and spare spaces apart. */
export const keyOf = (heading: string): PartKey | undefined => BY_NAME.get(heading.trim().toLowerCase().replace(/\s+/g, ' ') as never)
