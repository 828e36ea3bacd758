import { getTableColumns, sql } from 'drizzle-orm'
import {
  check,
  foreignKey,
  index,
  integer,
  primaryKey,
  real,
  type SQLiteColumn,
  type SQLiteTable,
  sqliteTable,
  text,
  unique,
} from 'drizzle-orm/sqlite-core'
import type { Issue } from '../../shared/result/result.ts'
import { type Cell, type Check, type Column, type FieldsOf, group, type Row, snake } from './field.ts'

/** One table of the database, and the way between its rows and a piece of the exchange file. */
export interface Table<T> {
  readonly drizzle: SQLiteTable
  readonly column: (name: string) => SQLiteColumn
  /** names of all columns */
  readonly columns: readonly string[]
  /** `keys` say whose row it is and where it stands; `refuse` hears of each value that cannot be kept */
  readonly toRow: (value: T, keys: Row, refuse: (issue: Issue) => void) => Row
  readonly fromRow: (row: Row) => T
}

export interface Reference {
  readonly columns: readonly string[]
  readonly table: () => Pick<Table<never>, 'column'>
  readonly to: readonly string[]
  /** goes when the row it points at goes; without it, that row has to stay as long as this one */
  readonly owned?: true
}

export interface Shape<T> {
  /** columns beside those of the fields */
  readonly keys: readonly Column[]
  readonly primary: readonly string[]
  readonly unique?: readonly (readonly string[])[]
  readonly references?: readonly Reference[]
  readonly checks?: readonly Check[]
  readonly fields: FieldsOf<T>
}

/** Makes a table out of its keys and its fields. */
export function table<T extends object>(tableName: string, shape: Shape<T>): Table<T> {
  const fields = group(shape.fields, snake)
  const columns = [...shape.keys, ...fields.columns]
  const references = shape.references ?? []
  const checks = [...(shape.checks ?? []), ...fields.checks]
  const builders = Object.fromEntries(columns.map((c) => [c.name, builder(c)]))

  const drizzle: SQLiteTable = sqliteTable(tableName, builders, (t) => {
    const pick = (names: readonly string[]) => several(names.map((n) => known(t[n], tableName, n)))
    return [
      primaryKey({ name: `${tableName}_key`, columns: pick(shape.primary) }),
      ...(shape.unique ?? []).map((u) => unique(`${tableName}_${u.at(-1)}_once`).on(...pick(u))),
      ...references.map((r) => {
        const foreignColumns = several(r.to.map((n) => r.table().column(n)))
        const key = foreignKey({ name: `${tableName}_of_${r.columns.slice(-2).join('_')}`, columns: pick(r.columns), foreignColumns })
        return r.owned ? key.onDelete('cascade') : key
      }),
      // when a row goes, SQLite looks for others that point at it; without an index that is every row, once for every row
      ...references.filter((r) => !r.owned).map((r) => index(`${tableName}_by_${r.columns.slice(1).join('_')}`).on(...pick(r.columns))),
      ...checks.map((c) => check(`${tableName}_${c.about}`, sql.raw(c.sql))),
    ]
  })

  const made: Readonly<Record<string, SQLiteColumn>> = getTableColumns(drizzle)
  return {
    drizzle,
    column: (n) => known(made[n], tableName, n),
    columns: columns.map((c) => c.name),
    toRow: (value, keys, refuse) => {
      const cells: Record<string, Cell> = { ...keys }
      fields.write(value, cells, refuse)
      return cells
    },
    fromRow: fields.read,
  }
}

function builder({ name, type, required }: Column) {
  const made = type === 'text' ? text(name) : type === 'integer' ? integer(name) : real(name)
  return required ? made.notNull() : made
}

function known(column: SQLiteColumn | undefined, tableName: string, name: string): SQLiteColumn {
  if (!column) throw new Error(`table ${tableName} has no column ${name}`)
  return column
}

function several(columns: readonly SQLiteColumn[]): [SQLiteColumn, ...SQLiteColumn[]] {
  const [first, ...rest] = columns
  if (!first) throw new Error('a key needs a column')
  return [first, ...rest]
}
