import type { Database as Sqlite } from 'better-sqlite3'
import { asc, desc, eq, sql } from 'drizzle-orm'
import { drizzle } from 'drizzle-orm/better-sqlite3'
import type { SQLiteTable } from 'drizzle-orm/sqlite-core'
import type { BuildFile } from '../../shared/model/build.ts'
import { fail, type Issue, issue, ok, type Result } from '../../shared/result/result.ts'
import { fileOf, type RowsIn } from './assemble.ts'
import type { Row } from './field.ts'
import { rowsOf } from './rows.ts'
import { type ReadableShelf, shelfOn, type WritableShelf } from './shelf/shelf.ts'
import { TABLES } from './tables/index.ts'
import { guarded } from './trouble.ts'

/** One build as a list shows it. */
export interface StoredBuild {
  readonly id: string
  readonly name: string
  /** the vehicle's name */
  readonly vehicle: string
  readonly revision: number
  /** as given to {@link WritableDatabase.saveBuild} */
  readonly changedAt: string
}

/** What may be asked of the database by who must not change it. */
export interface ReadableDatabase {
  /** all builds, the one that was changed last first */
  listBuilds(): readonly StoredBuild[]
  /** one of them; undefined where there is none of this id */
  findBuild(id: string): StoredBuild | undefined
  /** the file that was saved, key by key and to the letter; undefined where there is none of this id */
  loadBuild(id: string): BuildFile | undefined
  readonly shelf: ReadableShelf
}

/** The state of a build that a change was made from. */
export interface BasedOn {
  readonly revision: number
  /** also that it was changed last at this time */
  readonly changedAt?: string | undefined
}

export interface SaveHow {
  /** put it in the place of a build with the same id; without it such a build is left alone */
  readonly replace: boolean
  /** the time of the change, ISO 8601 in UTC ("2026-03-01T09:30:00.000Z") */
  readonly changedAt: string
  /** only over a build that is in this state still */
  readonly basedOn?: BasedOn
}

export interface WritableDatabase extends ReadableDatabase {
  /**
   * Stores a checked file: all of it, or nothing.
   *
   * @returns whether it took the place of another; issues `build.exists` (facts id), `build.changed_meanwhile` and
   *   `build.unknown` where it is based on a state that is not there any more, `database.full`, `.read_only`,
   *   `.locked`, `.disk_failed`, `.damaged`, and those of `rowsOf`. A file that was not checked may break a CHECK or a
   *   foreign key, which throws.
   */
  saveBuild(file: BuildFile, how: SaveHow): Result<{ readonly replaced: boolean }>
  /** takes a build out and hands it over; issues as with {@link saveBuild} */
  removeBuild(id: string, basedOn: BasedOn): Result<BuildFile>
  readonly shelf: WritableShelf
}

export interface Database extends WritableDatabase {
  /** the file it lives in */
  readonly path: string
  close(): void
}

/** The database on a connection that `open.ts` has made ready. */
export function databaseOn(sqlite: Sqlite): Database {
  const db = drizzle(sqlite)
  const { build, vehicle } = TABLES

  const prepareInsert = (table: SQLiteTable, row: Row) =>
    db
      .insert(table)
      .values(Object.fromEntries(Object.keys(row).map((c) => [c, sql.placeholder(c)])))
      .prepare()
  const prepareSelect = (table: Parameters<RowsIn>[0]) => {
    const owner = table.column(table.columns.includes('build_id') ? 'build_id' : 'id')
    const all = db
      .select()
      .from(table.drizzle)
      .where(eq(owner, sql.placeholder('build')))
    return table.columns.includes('position') ? all.orderBy(asc(table.column('position'))).prepare() : all.prepare()
  }
  const inserts = new Map<SQLiteTable, ReturnType<typeof prepareInsert>>()
  const selects = new Map<SQLiteTable, ReturnType<typeof prepareSelect>>()

  const has = (id: string) =>
    db
      .select({ id: build.column('id') })
      .from(build.drizzle)
      .where(eq(build.column('id'), id))
      .get() !== undefined

  const stored = () =>
    db
      .select({
        id: build.column('id'),
        name: build.column('name'),
        vehicle: vehicle.column('name'),
        revision: build.column('revision'),
        changedAt: build.column('changed_at'),
      })
      .from(build.drizzle)
      .innerJoin(vehicle.drizzle, eq(vehicle.column('build_id'), build.column('id')))
  const findBuild = (id: string) =>
    stored()
      .where(eq(build.column('id'), id))
      .get() as StoredBuild | undefined
  const loadBuild = (id: string) =>
    fileOf((table) => {
      const select = remembered(selects, table.drizzle, () => prepareSelect(table))
      return select.all({ build: id }) as Row[]
    })
  /** why a change that was made from `basedOn` may not be carried out */
  const overtaken = (id: string, basedOn: BasedOn): Issue | undefined => {
    const now = findBuild(id)
    if (!now) return issue('build.unknown', [], { id })
    const same = now.revision === basedOn.revision && (basedOn.changedAt === undefined || basedOn.changedAt === now.changedAt)
    return same ? undefined : issue('build.changed_meanwhile', [], { id, revision: now.revision, basedOn: basedOn.revision })
  }

  return {
    path: sqlite.name,
    shelf: shelfOn(sqlite),

    listBuilds: () =>
      stored()
        .orderBy(desc(build.column('changed_at')), asc(build.column('id')))
        .all() as StoredBuild[],

    findBuild,

    // one transaction, so that no other writer comes between two of its tables
    loadBuild: (id) => db.transaction(() => loadBuild(id)),

    removeBuild: (id, basedOn) =>
      guarded(
        () =>
          db.transaction(
            (): Result<BuildFile> => {
              const trouble = overtaken(id, basedOn)
              const file = loadBuild(id)
              if (trouble || !file) return fail(trouble ?? issue('build.unknown', [], { id }))
              db.delete(build.drizzle)
                .where(eq(build.column('id'), id))
                .run()
              return ok(file)
            },
            { behavior: 'immediate' },
          ),
        { path: sqlite.name },
      ),

    saveBuild: (file, { replace, changedAt, basedOn }) => {
      const rows = rowsOf(file, changedAt)
      if (!rows.ok) return rows
      const { id } = file.build
      return guarded(
        () =>
          db.transaction(
            (): Result<{ replaced: boolean }> => {
              const trouble = basedOn && overtaken(id, basedOn)
              if (trouble) return fail(trouble)
              const replaced = has(id)
              if (replaced && !replace) return fail(issue('build.exists', ['build', 'id'], { id }))
              if (replaced)
                db.delete(build.drizzle)
                  .where(eq(build.column('id'), id))
                  .run()
              for (const { table, row } of rows.value) remembered(inserts, table, () => prepareInsert(table, row)).run(row)
              return ok({ replaced })
            },
            { behavior: 'immediate' },
          ),
        { path: sqlite.name },
      )
    },

    close: () => {
      sqlite.close()
    },
  }
}

function remembered<K, V>(kept: Map<K, V>, key: K, make: () => V): V {
  const old = kept.get(key)
  if (old !== undefined) return old
  const made = make()
  kept.set(key, made)
  return made
}
