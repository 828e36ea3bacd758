import { END_FAMILIES, familyOf } from '../../shared/model/end/family.ts'
import { readEnd } from '../../shared/model/end/read.ts'
import type { EndKind } from '../../shared/model/end/types.ts'
import type { QuantityRange } from '../../shared/model/fields.ts'
import type { Dimension } from '../../shared/quantities/dimension.ts'
import { parseQuantity } from '../../shared/quantities/parse.ts'
import { type Issue, issue } from '../../shared/result/result.ts'

/*
 * What one key of the exchange file is in the database: its columns, what they must satisfy, and the way there and back.
 * Schema, CHECKs and both directions of the mapping all come from one such description, so they cannot part company.
 */

export type Cell = string | number | null
export type Row = Readonly<Record<string, Cell>>

export interface Column {
  readonly name: string
  readonly type: 'text' | 'integer' | 'real'
  readonly required: boolean
}

/** What a row must satisfy. As everywhere in SQL, an expression that comes to NULL does not object. */
export interface Check {
  /** names the CHECK, after its table's name */
  readonly about: string
  readonly sql: string
}

export interface Field<V> {
  readonly columns: readonly Column[]
  readonly checks: readonly Check[]
  readonly write: (value: V, cells: Record<string, Cell>, refuse: (issue: Issue) => void) => void
  readonly read: (row: Row) => V
}

/** A field before it has a column name: `table.ts` names it after its key. */
export type FieldAt<V> = (column: string) => Field<V>

/** One field for every key of `T`: a key that is forgotten, or an `enum` with a member too few, does not compile. */
export type FieldsOf<T> = { readonly [K in keyof T]-?: FieldAt<T[K]> }

const one =
  <V extends Cell>(
    type: Column['type'],
    check: (quoted: string) => string,
    fault: (value: V) => string | undefined = () => undefined,
  ): FieldAt<V> =>
  (name) => ({
    columns: [{ name, type, required: true }],
    checks: [{ about: name, sql: check(`"${name}"`) }],
    write: (value, cells, refuse) => {
      const code = fault(value)
      if (code) refuse(issue(code))
      cells[name] = value
    },
    read: (row) => row[name] as V,
  })

/**
 * SQLite keeps text as UTF-8, where half a surrogate pair cannot stand, and its functions stop at U+0000. Such text would
 * not come back as it went in, so it does not go in.
 */
const unkept = (text: string): string | undefined => (!text.isWellFormed() || text.includes('\0') ? 'database.text_not_kept' : undefined)

/** Text of at most `max` characters. SQLite counts code points, the model UTF-16 units, of which there are never fewer. */
export const text = (max: number, min = 0): FieldAt<string> => one('text', (c) => `length(${c}) BETWEEN ${min} AND ${max}`, unkept)
export const name = text(200, 1)
export const note = text(4000)

const idCheck = (c: string) => `length(${c}) BETWEEN 1 AND 64 AND ${c} NOT GLOB '*[^a-z0-9-]*' AND ${c} NOT GLOB '-*'`
export const id: FieldAt<string> = one('text', idCheck)
export const day: FieldAt<string> = one('text', (c) => `length(${c}) = 10 AND ${c} IS date(${c})`)
export const price: FieldAt<string> = one(
  'text',
  (c) => `length(${c}) BETWEEN 1 AND 12 AND ${c} GLOB '[0-9]*' AND ${c} NOT GLOB '*[^0-9.]*'`,
)
export const currency: FieldAt<string> = one('text', (c) => `${c} GLOB '[A-Z][A-Z][A-Z]'`)
export const whole = (min: number, max: number): FieldAt<number> => one('integer', (c) => `${c} BETWEEN ${min} AND ${max}`)

/** One of a closed list of words. */
export const choice = <const W extends readonly string[]>(...words: W): FieldAt<W[number]> => one<W[number]>('text', (c) => oneOf(c, words))

const oneOf = (quoted: string, words: readonly string[]): string => `${quoted} IN (${words.map((w) => `'${w}'`).join(', ')})`

/** `true` or absent. */
export const mark: FieldAt<true | undefined> = (name) => ({
  columns: [{ name, type: 'integer', required: false }],
  checks: [{ about: name, sql: `"${name}" = 1` }],
  write: (value, cells) => {
    cells[name] = value ? 1 : null
  },
  read: (row) => (row[name] === 1 ? true : undefined),
})

const SUFFIX = {
  ratio: 'ratio',
  length: 'm',
  volume: 'm3',
  angle: 'rad',
  force: 'n',
  pressure: 'pa',
  torque: 'nm',
  time: 's',
  flow: 'm3_s',
  angularSpeed: 'rad_s',
  density: 'kg_m3',
  kinematicViscosity: 'm2_s',
  temperature: 'k',
} as const satisfies Partial<Record<Dimension, string>>

/** A quantity: what was typed in one column, its value in base SI beside it in another that ends in the unit. */
export const quantity =
  (dimension: keyof typeof SUFFIX, range: QuantityRange): FieldAt<string> =>
  (name) => {
    const si = `${name}_${SUFFIX[dimension]}`
    const low = range.positive ? [`"${si}" > 0`] : range.min === undefined ? [] : [`"${si}" >= ${range.min}`]
    const high = range.max === undefined ? [] : [`"${si}" <= ${range.max}`]
    return {
      columns: [
        { name, type: 'text', required: true },
        { name: si, type: 'real', required: true },
      ],
      checks: [
        { about: name, sql: `length("${name}") BETWEEN 1 AND 64` },
        { about: si, sql: [...low, ...high].join(' AND ') },
      ],
      write: (value, cells, refuse) => {
        const read = parseQuantity(value, dimension)
        if (!read.ok) {
          for (const i of read.issues) refuse(i)
          return
        }
        cells[name] = value
        cells[si] = read.value.si
      },
      read: (row) => row[name] as string,
    }
  }

const END_KINDS = Object.keys({
  thread: 1,
  port: 1,
  taper: 1,
  round: 1,
  spline: 1,
  tail: 1,
  weld: 1,
  unmeasured: 1,
} satisfies Record<EndKind, 1>)

/** An end as the trade writes it, with the kind and the family that were understood beside it. */
export const connection: FieldAt<string> = (name) => {
  const kind = `${name}_kind`
  const family = `${name}_family`
  return {
    columns: [
      { name, type: 'text', required: true },
      { name: kind, type: 'text', required: true },
      { name: family, type: 'text', required: true },
    ],
    checks: [
      { about: name, sql: `length("${name}") BETWEEN 1 AND 160` },
      { about: kind, sql: oneOf(`"${kind}"`, END_KINDS) },
      { about: family, sql: oneOf(`"${family}"`, END_FAMILIES) },
    ],
    write: (value, cells, refuse) => {
      const read = readEnd(value)
      if (!read.ok) {
        for (const i of read.issues) refuse(i)
        return
      }
      if (unkept(value)) refuse(issue('database.text_not_kept'))
      cells[name] = value
      cells[kind] = read.value.kind
      cells[family] = familyOf(read.value)
    },
    read: (row) => row[name] as string,
  }
}

/** "part/end" in two columns, so that a foreign key can hold it. */
export const endRef: FieldAt<string> = (name) => {
  const [part, end] = [`${name}_part`, `${name}_end`]
  return {
    columns: [
      { name: part, type: 'text', required: true },
      { name: end, type: 'text', required: true },
    ],
    checks: [],
    write: (value, cells) => {
      const [p, e] = value.split('/') as [string, string]
      cells[part] = p
      cells[end] = e
    },
    read: (row) => `${row[part]}/${row[end]}`,
  }
}

/** The same field, absent where all its columns are NULL; then all of them are, or none. */
export const optional =
  <V>(field: FieldAt<V>): FieldAt<V | undefined> =>
  (name) => {
    const { columns, checks, write, read } = field(name)
    const first = columns[0] as Column
    const together = columns.slice(1).map((c) => ({ about: `${c.name}_too`, sql: `("${first.name}" IS NULL) = ("${c.name}" IS NULL)` }))
    return {
      columns: columns.map((c) => ({ ...c, required: false })),
      checks: [...checks, ...together],
      write: (value, cells, refuse) => {
        if (value !== undefined) return write(value, cells, refuse)
        for (const c of columns) cells[c.name] = null
      },
      read: (row) => (row[first.name] === null ? undefined : read(row)),
    }
  }

/** The same field under a column name that SQL does not already use for itself. */
export const as =
  <V>(column: string, field: FieldAt<V>): FieldAt<V> =>
  () =>
    field(column)

/** A list that lives in a table of its own: reads back empty, to be filled. */
export const list =
  <V>(): FieldAt<V[]> =>
  () => ({ columns: [], checks: [], write: () => {}, read: () => [] })

/** A list that may be absent, which is not the same as empty: a column says which. */
export const optionalList =
  <V>(): FieldAt<V[] | undefined> =>
  (name) => {
    const has = `has_${name}`
    return {
      columns: [{ name: has, type: 'integer', required: true }],
      checks: [{ about: has, sql: `"${has}" IN (0, 1)` }],
      write: (value, cells) => {
        cells[has] = value === undefined ? 0 : 1
      },
      read: (row) => (row[has] === 1 ? [] : undefined),
    }
  }

/** An object inside an object: its fields become columns of the same row. */
export const nested =
  <T extends object>(fields: FieldsOf<T>): FieldAt<T> =>
  (name) =>
    group(fields, (key) => `${name}_${snake(key)}`)

/** As {@link nested}, but it may be absent, which is not the same as having no keys: a column says which. */
export const optionalNested =
  <T extends object>(fields: FieldsOf<T>): FieldAt<T | undefined> =>
  (name) => {
    const has = `has_${name}`
    const inner = nested(fields)(name)
    const empty = inner.columns.map((c) => `"${c.name}" IS NULL`).join(' AND ')
    return {
      columns: [{ name: has, type: 'integer', required: true }, ...inner.columns],
      checks: [...inner.checks, { about: has, sql: `"${has}" = 1 OR ("${has}" = 0 AND ${empty})` }],
      write: (value, cells, refuse) => {
        cells[has] = value === undefined ? 0 : 1
        inner.write(value ?? ({} as T), cells, refuse)
      },
      read: (row) => (row[has] === 1 ? inner.read(row) : undefined),
    }
  }

/** All fields of an object as one: issues get the key they are about, absent keys stay absent. */
export function group<T extends object>(fields: FieldsOf<T>, column: (key: string) => string): Field<T> {
  const placed = (Object.keys(fields) as (keyof T & string)[]).map((key) => ({ key, field: fields[key](column(key)) }))
  return {
    columns: placed.flatMap((p) => p.field.columns),
    checks: placed.flatMap((p) => p.field.checks),
    write: (value, cells, refuse) => {
      for (const { key, field } of placed) {
        field.write(value[key], cells, (i) => refuse({ ...i, path: [key, ...i.path] }))
      }
    },
    read: (row) => {
      const value: Partial<T> = {}
      for (const { key, field } of placed) {
        const v = field.read(row)
        if (v !== undefined) value[key] = v
      }
      return value as T
    },
  }
}

export const snake = (key: string): string => key.replace(/[A-Z]/g, (c) => `_${c.toLowerCase()}`)
