import type { Database as Sqlite } from 'better-sqlite3'
import { fail, issue, ok, type Result } from '../../shared/result/result.ts'
import type { Migration } from './migrations.ts'
import { troubleOf } from './trouble.ts'

/** The table drizzle's own migrator keeps, so that its tools can read our databases. */
const RECORD = '__drizzle_migrations'

/** "SWBD": marks the file as ours for any tool that looks at a SQLite header. */
export const APPLICATION_ID = 0x53574244

export interface SchemaState {
  /** steps applied already: 0 in a new database */
  readonly version: number
}

/**
 * How far a database has come along the known steps. Changes nothing.
 *
 * @returns issues `database.newer` (facts found, known), `database.not_ours` (a SQLite file of something else),
 *   `database.other_history` (facts step: this step was applied in another wording)
 */
export function schemaState(sqlite: Sqlite, known: readonly Migration[]): Result<SchemaState> {
  // asked of the header, before SQLite reads a schema that it may be too old to read
  const found = sqlite.pragma('user_version', { simple: true }) as number
  const ours = (sqlite.pragma('application_id', { simple: true }) as number) === APPLICATION_ID
  if (ours && found > known.length) return fail(issue('database.newer', [], { found, known: known.length }))

  const tables = sqlite.prepare<[], { name: string }>(`SELECT name FROM sqlite_schema WHERE type = 'table'`).all()
  if (tables.length === 0) return ok({ version: 0 })
  if (!tables.some((t) => t.name === RECORD)) return fail(issue('database.not_ours', [], { tables: tables.slice(0, 5).map((t) => t.name) }))

  const applied = sqlite.prepare<[], { hash: string }>(`SELECT hash FROM ${RECORD} ORDER BY id`).all()
  if (applied.length > known.length) return fail(issue('database.newer', [], { found: applied.length, known: known.length }))
  const strange = applied.findIndex((a, i) => a.hash !== known[i]?.hash)
  if (strange >= 0) return fail(issue('database.other_history', [], { step: known[strange]?.tag ?? '' }))
  return ok({ version: applied.length })
}

/**
 * Applies the steps that are missing, all of them or none, each with its record, in one transaction. Foreign keys are off
 * meanwhile (rebuilding a table would empty those that point at it) and looked over before anything counts.
 *
 * @returns the version reached; issues `database.migration_failed` (facts step, says), or those of {@link schemaState}
 *   where another program came first. Disk trouble is thrown.
 */
export function migrate(sqlite: Sqlite, known: readonly Migration[]): Result<SchemaState> {
  let step = ''
  sqlite.pragma('foreign_keys = OFF')
  try {
    sqlite.exec('BEGIN IMMEDIATE')
    // asked again now that nobody else can write: two windows may have been opened at once
    const state = schemaState(sqlite, known)
    if (!state.ok) return state
    sqlite.exec(`CREATE TABLE IF NOT EXISTS ${RECORD} (id INTEGER PRIMARY KEY, hash TEXT NOT NULL, created_at INTEGER NOT NULL) STRICT`)
    const record = sqlite.prepare(`INSERT INTO ${RECORD} (hash, created_at) VALUES (?, ?)`)
    for (const migration of known.slice(state.value.version)) {
      step = migration.tag
      for (const statement of migration.statements) sqlite.exec(statement)
      record.run(migration.hash, migration.madeAt)
    }
    const loose = sqlite.pragma('foreign_key_check') as { table: string; parent: string }[]
    if (loose[0])
      return fail(issue('database.migration_failed', [], { step, says: `${loose[0].table} points at a missing ${loose[0].parent}` }))
    sqlite.pragma(`user_version = ${known.length}`)
    sqlite.pragma(`application_id = ${APPLICATION_ID}`)
    sqlite.exec('COMMIT')
    return ok({ version: known.length })
  } catch (error) {
    if (step === '' || troubleOf(error)) throw error
    return fail(issue('database.migration_failed', [], { step, says: error instanceof Error ? error.message : String(error) }))
  } finally {
    if (sqlite.inTransaction) sqlite.exec('ROLLBACK')
    sqlite.pragma('foreign_keys = ON')
  }
}
