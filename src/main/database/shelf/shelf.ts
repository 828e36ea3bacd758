import type { Database as Sqlite } from 'better-sqlite3'
import { getTableName } from 'drizzle-orm'
import type { SQLiteTable } from 'drizzle-orm/sqlite-core'
import type { PartFile } from '../../../shared/model/part.ts'
import { fail, type Issue, issue, ok, type Result } from '../../../shared/result/result.ts'
import { partsOf, type RowsIn } from '../assemble.ts'
import type { Cell, Row } from '../field.ts'
import { type Put, putOwn } from '../rows.ts'
import type { Table } from '../table.ts'
import { SHELF_TABLES } from '../tables/index.ts'
import { guarded } from '../trouble.ts'
import { type FoundPart, makeSearch, type ShelfQuery } from './search.ts'
import { wordsOf } from './words.ts'

/** What may be asked of the shelf by who must not change it. */
export interface ReadableShelf {
  /** a page of the parts that match, and how many match */
  search(ask: ShelfQuery): { readonly total: number; readonly parts: readonly FoundPart[] }
  /** the part as it was put there, to the letter; undefined where there is none of this id */
  load(id: string): PartFile | undefined
  /** every part, in the order in which they first came */
  all(): readonly PartFile[]
  has(id: string): boolean
  /** another text whenever the shelf may have changed, by this program or another */
  state(): string
}

export interface ShelfSaveHow {
  /** put it in the place of a part with the same id; without it such a part is left alone */
  readonly replace: boolean
  /** the time of the change, ISO 8601 in UTC */
  readonly changedAt: string
}

export interface WritableShelf extends ReadableShelf {
  /**
   * Puts checked parts on the shelf: all of them, or none.
   *
   * @returns nothing; issues `shelf.exists` (facts id), those of the disk as with builds, and those of a part's rows
   */
  save(parts: readonly PartFile[], how: ShelfSaveHow): Result<null>
  /** @returns whether there was such a part; issues those of the disk */
  remove(id: string): Result<boolean>
}

/** The shelf on a connection that `open.ts` has made ready. */
export function shelfOn(sqlite: Sqlite): WritableShelf {
  let changes = 0
  // data_version tells of other connections only
  const state = () => `${changes} ${sqlite.pragma('data_version', { simple: true })}`
  const numberOf = sqlite.prepare<[string], number>('SELECT number FROM shelf_part WHERE id = ?').pluck()
  const nextNumber = sqlite.prepare<[], number>('SELECT coalesce(max(number), 0) + 1 FROM shelf_part').pluck()
  const takeOut = sqlite.prepare<[number]>('DELETE FROM shelf_part WHERE number = ?')
  const forget = sqlite.prepare<[number]>('DELETE FROM shelf_words WHERE rowid = ?')
  const learn = sqlite.prepare<[number, string]>('INSERT INTO shelf_words (rowid, words) VALUES (?, ?)')
  const tidy = sqlite.prepare(`INSERT INTO shelf_words (shelf_words) VALUES ('optimize')`)
  const inserts = new Map(Object.values(SHELF_TABLES).map((table) => [table.drizzle, prepareInsert(sqlite, table)]))

  /** rows of the parts whose numbers are asked for, in the order of those; all of them without */
  const rowsIn =
    (number?: number): RowsIn =>
    (table) => {
      const owner = table.columns.includes('number') ? 'number' : 'part'
      const order = table.columns.includes('position') ? `${owner}, position` : owner
      const where = number === undefined ? '' : `WHERE ${owner} = ${number}`
      return sqlite.prepare<[], Row>(`SELECT * FROM ${getTableName(table.drizzle)} ${where} ORDER BY ${order}`).all()
    }
  const load = (number: number): PartFile | undefined => partsOf(rowsIn(number), SHELF_TABLES, 'number')[0]
  const removeNumber = (number: number) => {
    forget.run(number)
    takeOut.run(number)
  }

  /** puts the part into `batch`; gives what of it cannot be kept */
  const gather = (batch: Batch, part: PartFile, at: number, changed_at: string): readonly Issue[] => {
    const issues: Issue[] = []
    const putRow: Put = (table, value, keys, path) => {
      const row = table.toRow(value, keys, (i) => issues.push({ ...i, path: [...path, ...i.path] }))
      batch.rows.get(table.drizzle)?.push(row)
    }
    putRow(SHELF_TABLES.part, part, { number: at, changed_at }, [])
    putOwn(SHELF_TABLES, putRow, part, { part: at, kind: part.kind }, [])
    for (const [position, end] of part.ends.entries()) putRow(SHELF_TABLES.partEnd, end, { part: at, position }, ['ends', position])
    batch.words.set(at, wordsOf(part))
    batch.ids.add(part.id)
    return issues
  }
  /** writes what `batch` holds, each table after those it points at, and the words last: any row of a table makes FTS5 write out what it has of them so far */
  const insert = (batch: Batch) => {
    for (const [table, rows] of batch.rows) for (const row of rows) inserts.get(table)?.(row)
    for (const [number, words] of batch.words) learn.run(number, words)
  }

  const write = <T>(work: () => Result<T>): Result<T> =>
    guarded(
      () => {
        let answer: Result<T> | undefined
        try {
          sqlite
            .transaction(() => {
              answer = work()
              // thrown so that nothing of it stays
              if (!answer.ok) throw REFUSED
            })
            .immediate()
        } catch (error) {
          if (error !== REFUSED) throw error
        }
        changes++
        return answer as Result<T>
      },
      { path: sqlite.name },
    )

  return {
    search: makeSearch(sqlite, state),
    load: (id) =>
      sqlite
        .transaction(() => {
          const number = numberOf.get(id)
          return number === undefined ? undefined : load(number)
        })
        .deferred(),
    all: () => sqlite.transaction(() => partsOf(rowsIn(), SHELF_TABLES, 'number')).deferred(),
    has: (id) => numberOf.get(id) !== undefined,
    state,

    save: (parts, { replace, changedAt }) =>
      write(() => {
        let free = nextNumber.get() ?? 1
        let batch = emptyBatch()
        for (const [i, part] of parts.entries()) {
          if (batch.ids.size >= MANY || batch.ids.has(part.id)) {
            insert(batch)
            batch = emptyBatch()
          }
          const old = numberOf.get(part.id)
          if (old !== undefined && !replace) return fail(issue('shelf.exists', [i, 'id'], { id: part.id }))
          if (old !== undefined) removeNumber(old)
          const issues = gather(batch, part, old ?? free++, changedAt)
          if (issues.length > 0) return { ok: false, issues: issues.map((one) => ({ ...one, path: [i, ...one.path] })) }
        }
        insert(batch)
        if (parts.length >= MANY) tidy.run()
        return ok(null)
      }),

    remove: (id) =>
      write(() => {
        const number = numberOf.get(id)
        if (number !== undefined) removeNumber(number)
        return ok(number !== undefined)
      }),
  }
}

/** Parts on their way into the tables. */
interface Batch {
  readonly ids: Set<string>
  readonly rows: ReadonlyMap<SQLiteTable, Row[]>
  /** by number */
  readonly words: Map<number, string>
}

const emptyBatch = (): Batch => ({
  ids: new Set(),
  rows: new Map(Object.values(SHELF_TABLES).map((table) => [table.drizzle, []])),
  words: new Map(),
})

/** By place and not by name, which takes SQLite's driver half the time. */
function prepareInsert(sqlite: Sqlite, { drizzle, columns }: Pick<Table<never>, 'drizzle' | 'columns'>) {
  const statement = sqlite.prepare<Cell[]>(
    `INSERT INTO ${getTableName(drizzle)} (${columns.map((c) => `"${c}"`).join(', ')}) VALUES (${columns.map(() => '?').join(', ')})`,
  )
  return (row: Row) => statement.run(...columns.map((c) => row[c] ?? null))
}

/** So many parts are written at a time. More of them leave the index of words in pieces, each of which a search would have to look through. */
const MANY = 1000

const REFUSED = Symbol('refused')
