import { createHash } from 'node:crypto'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import Sqlite from 'better-sqlite3'
import { onTestFinished } from 'vitest'
import { type Database, FILE_NAME, openDatabase } from '../../../src/main/database/index.ts'
import type { Result } from '../../../src/shared/result/result.ts'

export const MIGRATIONS = resolve(import.meta.dirname, '../../../migrations')
export const NOW = '2026-03-01T09:30:00.000Z'

/** An empty folder that goes when the test ends. */
export function folder(): string {
  const made = mkdtempSync(join(tmpdir(), 'steerwright-'))
  onTestFinished(() => rmSync(made, { recursive: true, force: true }))
  return made
}

export const open = (where: string, options: { migrationsFolder?: string; busyTimeout?: number } = {}): Result<Database> =>
  openDatabase(where, { migrationsFolder: MIGRATIONS, now: NOW, busyTimeout: 50, ...options })

/** Opens, or fails the test; closed when the test ends. */
export function opened(where = folder(), options: { migrationsFolder?: string } = {}): Database {
  const db = must(open(where, options))
  onTestFinished(() => db.close())
  return db
}

/** A plain connection to the same file, for what the database itself does not let one do. */
export function raw(path: string, options: Sqlite.Options = {}): Sqlite.Database {
  const sqlite = new Sqlite(path, options)
  onTestFinished(() => {
    sqlite.close()
  })
  return sqlite
}

export function must<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.issues))
  return result.value
}

export const codes = (result: Result<unknown>): readonly string[] => (result.ok ? [] : result.issues.map((i) => i.code))

export const fileIn = (where: string): string => join(where, FILE_NAME)
export const hash = (path: string): string => createHash('sha256').update(readFileSync(path)).digest('hex')
