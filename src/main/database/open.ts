import { accessSync, closeSync, constants, fsyncSync, mkdirSync, openSync, renameSync, rmSync, statSync } from 'node:fs'
import { join } from 'node:path'
import Sqlite from 'better-sqlite3'
import { fail, issue, ok, type Result } from '../../shared/result/result.ts'
import { type Database, databaseOn } from './database.ts'
import { migrate, type SchemaState, schemaState } from './migrate.ts'
import { type Migration, readMigrations } from './migrations.ts'
import { guarded } from './trouble.ts'

export const FILE_NAME = 'steerwright.sqlite'
export const BACKUP_FOLDER = 'backups'
const BUSY_TIMEOUT = 5_000

export interface OpenOptions {
  /** the folder drizzle-kit writes to */
  readonly migrationsFolder: string
  /** the time, ISO 8601 in UTC: names the backup copy */
  readonly now: string
  /** how long to wait for another program that holds the database, ms */
  readonly busyTimeout?: number
}

/**
 * Opens the database in a folder, which is made where it is missing, and brings it up to this program's schema, after a
 * copy of it as it was in `backups`.
 *
 * @returns the database, or one issue, each with the fact `path`; the file is then as it was: `database.newer` (found,
 *   known), `.not_ours`, `.other_history`, `.damaged`, `.not_a_database`, `.read_only`, `.locked`, `.full`, `.disk_failed`,
 *   `.folder_unusable`, `.migration_failed`. Throws where the migrations themselves are missing.
 */
export function openDatabase(folder: string, options: OpenOptions): Result<Database> {
  const migrations = readMigrations(options.migrationsFolder)
  const timeout = options.busyTimeout ?? BUSY_TIMEOUT
  const path = join(folder, FILE_NAME)
  const opened = guarded(
    () => {
      mkdirSync(folder, { recursive: true })
      accessSync(folder, constants.R_OK | constants.W_OK)
      const state = sizeOf(path) > 0 ? inspect(path, migrations, timeout) : ok({ version: 0 })
      return state.ok ? connect(path, migrations, state.value, timeout, join(folder, BACKUP_FOLDER), options.now) : state
    },
    { path },
  )
  return opened.ok ? opened : fail(...opened.issues.map((i) => ({ ...i, facts: { path, ...i.facts } })))
}

/** Looks a database over without changing a byte of it. */
function inspect(path: string, migrations: readonly Migration[], timeout: number): Result<SchemaState> {
  // The last to close a database writes back what a crash left in its log, unless it may only read. Where there is no log,
  // a reader would leave an empty one behind, and a writer that writes nothing leaves none.
  const crashed = sizeOf(`${path}-wal`) > 0
  const sqlite = new Sqlite(path, { readonly: crashed, fileMustExist: true, timeout })
  try {
    sqlite.pragma('query_only = ON')
    sqlite.pragma('trusted_schema = OFF')
    const state = schemaState(sqlite, migrations)
    if (!state.ok) return state
    const says = sqlite.pragma('quick_check(1)', { simple: true }) as string
    return says === 'ok' ? state : fail(issue('database.damaged', [], { says }))
  } finally {
    sqlite.close()
  }
}

function connect(
  path: string,
  migrations: readonly Migration[],
  { version }: SchemaState,
  timeout: number,
  backups: string,
  now: string,
): Result<Database> {
  const sqlite = new Sqlite(path, { timeout })
  let ready = false
  try {
    sqlite.pragma('trusted_schema = OFF')
    sqlite.pragma('foreign_keys = ON')
    tryWriting(sqlite)
    sqlite.pragma('journal_mode = WAL')
    sqlite.pragma('synchronous = FULL')
    if (version < migrations.length) {
      if (version > 0) backUp(sqlite, backups, `steerwright-${version}-${now.replace(/[:.]/g, '-')}.sqlite`)
      const migrated = migrate(sqlite, migrations)
      if (!migrated.ok) return migrated
    }
    ready = true
    return ok(databaseOn(sqlite))
  } finally {
    if (!ready) sqlite.close()
  }
}

/**
 * Throws where the file may not be written, or another program is writing. SQLite opens such a file for reading without a
 * word, and even begins a transaction; better to hear of it now than at the first change.
 */
function tryWriting(sqlite: Sqlite.Database): void {
  const version = sqlite.pragma('user_version', { simple: true }) as number
  sqlite.exec(`BEGIN IMMEDIATE; PRAGMA user_version = ${version}; ROLLBACK`)
}

/** A whole copy under its own name, or none: it is on the disk before it gets the name. */
function backUp(sqlite: Sqlite.Database, folder: string, name: string): void {
  mkdirSync(folder, { recursive: true })
  const part = join(folder, `${name}.part`)
  rmSync(part, { force: true })
  sqlite.prepare('VACUUM INTO ?').run(part)
  const file = openSync(part, 'r+')
  try {
    fsyncSync(file)
  } finally {
    closeSync(file)
  }
  renameSync(part, join(folder, name))
}

/** Size in bytes, 0 where there is nothing. */
function sizeOf(path: string): number {
  return statSync(path, { throwIfNoEntry: false })?.size ?? 0
}
