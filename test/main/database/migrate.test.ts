import { cpSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { migrate } from '../../../src/main/database/migrate.ts'
import { readMigrations } from '../../../src/main/database/migrations.ts'
import { fullBuild } from './full-build.ts'
import { codes, fileIn, folder, hash, MIGRATIONS, must, NOW, open, opened, raw } from './stage.ts'

const how = { replace: true, changedAt: NOW }
/** steps of today's schema */
const TODAY = readMigrations(MIGRATIONS).length
const COPY = `steerwright-${TODAY}-2026-03-01T09-30-00-000Z.sqlite`

/** The migrations as they are, with further ones behind them. */
function longer(...steps: readonly string[]): string {
  const where = join(folder(), 'migrations')
  cpSync(MIGRATIONS, where, { recursive: true })
  const journalFile = join(where, 'meta', '_journal.json')
  const journal = JSON.parse(readFileSync(journalFile, 'utf8'))
  steps.forEach((sql, i) => {
    const tag = `9${i}_further`
    writeFileSync(join(where, `${tag}.sql`), sql)
    journal.entries.push({ idx: journal.entries.length, version: '6', when: 9_000_000_000_000 + i, tag, breakpoints: true })
  })
  writeFileSync(journalFile, JSON.stringify(journal))
  return where
}

/** A folder with a database of today's schema, closed. */
function stocked(): string {
  const where = folder()
  const db = must(open(where))
  must(db.saveBuild(fullBuild(), how))
  db.close()
  return where
}

const ADD = "CREATE TABLE `tool` (`id` text PRIMARY KEY NOT NULL) STRICT;\n--> statement-breakpoint\nINSERT INTO `tool` VALUES ('tape');"

/** A table rebuilt as drizzle-kit does it: with keys on, dropping the old one would take its children along. */
const REBUILD = `PRAGMA foreign_keys=OFF;
--> statement-breakpoint
CREATE TABLE new_part AS SELECT * FROM part;
--> statement-breakpoint
DROP TABLE part;
--> statement-breakpoint
CREATE TABLE part (build_id text NOT NULL REFERENCES build(id) ON DELETE CASCADE, position integer NOT NULL, id text NOT NULL, kind text NOT NULL,
  name text NOT NULL, maker text, part_number text, supplier text, price text, quantity integer, state text NOT NULL, expected text,
  working_pressure text, working_pressure_pa real, note text, PRIMARY KEY (build_id, id), UNIQUE (build_id, id, kind)) STRICT;
--> statement-breakpoint
INSERT INTO part SELECT * FROM new_part;
--> statement-breakpoint
DROP TABLE new_part;`

describe('a migration', () => {
  it('brings an older database up, after a copy of it as it was', () => {
    const where = stocked()
    const db = opened(where, { migrationsFolder: longer(ADD) })
    expect(db.loadBuild('larch')).toStrictEqual(fullBuild())
    expect(raw(db.path).prepare('SELECT id FROM tool').pluck().all()).toEqual(['tape'])

    expect(readdirSync(join(where, 'backups'))).toEqual([COPY])
    const copy = raw(join(where, 'backups', COPY), { readonly: true })
    expect(copy.pragma('integrity_check', { simple: true })).toBe('ok')
    expect(copy.pragma('foreign_key_check')).toEqual([])
    expect(copy.pragma('user_version', { simple: true })).toBe(TODAY)
    expect(copy.prepare('SELECT id FROM build').pluck().all()).toEqual(['larch'])
  })

  it('can be undone with that copy: today’s program opens it', () => {
    const where = stocked()
    must(open(where, { migrationsFolder: longer(ADD) })).close()
    expect(codes(open(where))).toEqual(['database.newer'])
    const again = folder()
    cpSync(join(where, 'backups', COPY), fileIn(again))
    expect(opened(again).loadBuild('larch')).toStrictEqual(fullBuild())
  })

  it('copies nothing where there is nothing to do, or nothing yet', () => {
    const where = stocked()
    opened(where)
    expect(existsSync(join(where, 'backups'))).toBe(false)
  })

  it('that rebuilds a table keeps the rows that point at it', () => {
    const where = stocked()
    const db = opened(where, { migrationsFolder: longer(REBUILD) })
    expect(db.loadBuild('larch')).toStrictEqual(fullBuild())
    expect(raw(db.path).pragma('foreign_key_check')).toEqual([])
  })

  it.each([
    [
      'breaks off halfway',
      [ADD, 'CREATE TABLE `half` (`id` text) STRICT;\n--> statement-breakpoint\nINSERT INTO `no_such` VALUES (1);'],
      /no such table/,
    ],
    ['leaves a row that points nowhere', [ADD, "DELETE FROM part WHERE id = 'ram';"], /points at a missing part/],
  ])('that %s is undone with all before it', (_what, steps, says) => {
    const where = stocked()
    const before = hash(fileIn(where))
    const result = open(where, { migrationsFolder: longer(...steps) })
    expect(result).toMatchObject({
      ok: false,
      issues: [
        { code: 'database.migration_failed', facts: { step: '91_further', says: expect.stringMatching(says), path: fileIn(where) } },
      ],
    })
    expect(hash(fileIn(where))).toBe(before)
    expect(readdirSync(where).sort()).toEqual(['backups', 'steerwright.sqlite'])
    expect(opened(where).loadBuild('larch')).toStrictEqual(fullBuild())
  })

  it('that fills the disk is undone, and says so', () => {
    const where = stocked()
    const sqlite = raw(fileIn(where))
    // room that earlier steps have left would do for this one
    sqlite.exec('VACUUM')
    sqlite.pragma(`max_page_count = ${sqlite.pragma('page_count', { simple: true })}`)
    expect(() => migrate(sqlite, readMigrations(longer(ADD)))).toThrow(expect.objectContaining({ code: 'SQLITE_FULL' }))
    expect(sqlite.inTransaction).toBe(false)
    expect(sqlite.pragma('foreign_keys', { simple: true })).toBe(1)
    expect(sqlite.prepare(`SELECT count(*) FROM sqlite_schema WHERE name = 'tool'`).pluck().get()).toBe(0)
    sqlite.close()
    expect(opened(where).loadBuild('larch')).toStrictEqual(fullBuild())
  })

  it('is made by one of two windows that open an older database at once', () => {
    const where = stocked()
    const known = readMigrations(longer(ADD))
    const [one, two] = [raw(fileIn(where)), raw(fileIn(where))]
    expect(migrate(one, known)).toEqual({ ok: true, value: { version: TODAY + 1 } })
    expect(migrate(two, known)).toEqual({ ok: true, value: { version: TODAY + 1 } })
  })

  it('has the same hash whatever the line ends of a checkout', () => {
    const where = longer(ADD)
    const windows = join(where, '90_further.sql')
    const before = readMigrations(where).map((m) => m.hash)
    writeFileSync(windows, readFileSync(windows, 'utf8').replaceAll('\n', '\r\n'))
    expect(readMigrations(where).map((m) => m.hash)).toEqual(before)
  })
})
