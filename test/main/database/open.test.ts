import { spawnSync } from 'node:child_process'
import { chmodSync, copyFileSync, existsSync, mkdirSync, readdirSync, readFileSync, truncateSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { databaseOn } from '../../../src/main/database/database.ts'
import { fullBuild } from './full-build.ts'
import { codes, fileIn, folder, hash, MIGRATIONS, must, NOW, open, opened, raw } from './stage.ts'

const how = { replace: true, changedAt: NOW }

/** A folder with a closed database that holds one build. */
function stocked(): string {
  const where = folder()
  const db = must(open(where))
  must(db.saveBuild(fullBuild(), how))
  db.close()
  return where
}

/** Opening must fail with this code, and every file in the folder must stay as it is, with none added. */
function refused(where: string, code: string): Record<string, unknown> {
  const look = () => Object.fromEntries(readdirSync(where).map((f) => [f, hash(join(where, f))]))
  const before = look()
  const result = open(where)
  expect(codes(result)).toEqual([code])
  expect(look()).toEqual(before)
  return result.ok ? {} : { ...result.issues[0]?.facts }
}

/** Overwrites one page, counted from 1, with noise. */
function damage(path: string, page: number): void {
  const bytes = readFileSync(path)
  const size = bytes.readUInt16BE(16)
  writeFileSync(path, bytes.fill(0xff, (page - 1) * size, page * size))
}

describe('opening', () => {
  it('makes folder and database where there are none, set as they should be', () => {
    const where = join(folder(), 'deep', 'down')
    const db = opened(where)
    expect(db.path).toBe(fileIn(where))
    expect(db.listBuilds()).toEqual([])
    expect(existsSync(join(where, 'backups'))).toBe(false)
    expect(raw(db.path).pragma('journal_mode', { simple: true })).toBe('wal')
  })

  it('takes an empty file for a new database', () => {
    const where = folder()
    writeFileSync(fileIn(where), '')
    must(opened(where).saveBuild(fullBuild(), how))
  })

  it('finds what was saved, also by a program that was killed before it could tidy up', () => {
    const where = stocked()
    const crashed = folder()
    const db = opened(where)
    must(db.saveBuild({ ...fullBuild(), build: { ...fullBuild().build, id: 'late' } }, how))
    for (const f of ['steerwright.sqlite', 'steerwright.sqlite-wal']) copyFileSync(join(where, f), join(crashed, f))
    expect(readFileSync(`${fileIn(crashed)}-wal`).length).toBeGreaterThan(0)
    expect(
      opened(crashed)
        .listBuilds()
        .map((b) => b.id),
    ).toEqual(['larch', 'late'])
  })

  it('lets two windows have it at once, and shows each what the other saved', () => {
    const where = folder()
    const [one, two] = [opened(where), opened(where)]
    must(one.saveBuild(fullBuild(), how))
    expect(two.loadBuild('larch')).toStrictEqual(fullBuild())
  })

  it('throws where the program has lost its migrations', () => {
    expect(() => open(folder(), { migrationsFolder: folder() })).toThrow()
  })
})

describe('a database that cannot be used is refused and left as it is', () => {
  it('from a newer program', () => {
    const where = stocked()
    const sqlite = raw(fileIn(where))
    sqlite.exec(`INSERT INTO __drizzle_migrations (hash, created_at) VALUES ('of the future', 9999999999999)`)
    sqlite.close()
    const known = JSON.parse(readFileSync(join(MIGRATIONS, 'meta', '_journal.json'), 'utf8')).entries.length
    expect(refused(where, 'database.newer')).toMatchObject({ path: fileIn(where), found: known + 1, known })
  })

  it('from a newer program whose schema this SQLite cannot even read', () => {
    const where = stocked()
    const sqlite = raw(fileIn(where))
    sqlite.unsafeMode()
    sqlite.pragma('user_version = 99')
    sqlite.pragma('writable_schema = ON')
    sqlite.exec(`UPDATE sqlite_schema SET sql = 'CREATE HOLOGRAM part (id QUBIT)' WHERE name = 'part'`)
    sqlite.close()
    expect(refused(where, 'database.newer')).toMatchObject({ found: 99 })
  })

  it('from a program that built its schema otherwise', () => {
    const where = stocked()
    const sqlite = raw(fileIn(where))
    sqlite.exec(`UPDATE __drizzle_migrations SET hash = 'another wording'`)
    sqlite.close()
    expect(refused(where, 'database.other_history')).toMatchObject({ step: '0000_first' })
  })

  it('of something else altogether', () => {
    const where = folder()
    const sqlite = raw(fileIn(where))
    sqlite.exec('CREATE TABLE recipe (id INTEGER PRIMARY KEY, cake TEXT)')
    sqlite.close()
    expect(refused(where, 'database.not_ours')).toMatchObject({ tables: ['recipe'] })
  })

  it.each([
    ['a few words', Buffer.from('not a database')],
    ['a page of noise', Buffer.from(Array.from({ length: 8192 }, (_, i) => (i * 2654435761) % 251))],
    ['another file format', Buffer.concat([Buffer.from('PK\x03\x04'), Buffer.alloc(4096)])],
  ])('that is none: %s', (_what, bytes) => {
    const where = folder()
    writeFileSync(fileIn(where), bytes)
    refused(where, 'database.not_a_database')
  })

  it('cut short', () => {
    const where = stocked()
    truncateSync(fileIn(where), 20_000)
    refused(where, 'database.damaged')
  })

  it.each(['part_end', 'reading', '__drizzle_migrations'])('with a page overwritten: one of %s', (table) => {
    const where = stocked()
    const sqlite = raw(fileIn(where))
    const page = sqlite.prepare('SELECT rootpage FROM sqlite_schema WHERE name = ?').pluck().get(table) as number
    sqlite.close()
    damage(fileIn(where), page)
    refused(where, 'database.damaged')
  })

  it('damaged while a log from a crash lies beside it, which stays too', () => {
    const where = stocked()
    const crashed = folder()
    const db = opened(where)
    must(db.saveBuild({ ...fullBuild(), build: { ...fullBuild().build, id: 'late' } }, how))
    copyFileSync(`${fileIn(where)}-wal`, `${fileIn(crashed)}-wal`)
    copyFileSync(fileIn(where), fileIn(crashed))
    damage(fileIn(crashed), 40)
    const [main, log] = [hash(fileIn(crashed)), hash(`${fileIn(crashed)}-wal`)]
    expect(codes(open(crashed))).toEqual(['database.damaged'])
    expect([hash(fileIn(crashed)), hash(`${fileIn(crashed)}-wal`)]).toEqual([main, log])
  })

  it('held by another program', () => {
    const where = stocked()
    const holder = raw(fileIn(where))
    holder.pragma('locking_mode = EXCLUSIVE')
    holder.exec('BEGIN EXCLUSIVE')
    const before = hash(fileIn(where))
    expect(codes(open(where))).toEqual(['database.locked'])
    expect(hash(fileIn(where))).toBe(before)
  })

  it('being a folder', () => {
    const where = folder()
    mkdirSync(fileIn(where))
    writeFileSync(join(fileIn(where), 'x'), '')
    expect(codes(open(where))).toEqual(['database.folder_unusable'])
  })

  it('in a folder that is a file', () => {
    const where = join(folder(), 'file')
    writeFileSync(where, 'x')
    expect(codes(open(where))).toEqual(['database.folder_unusable'])
    expect(codes(open(join(where, 'below')))).toEqual(['database.folder_unusable'])
  })
})

describe('what may not be written', () => {
  // root may write everywhere, so the attempt is made by a process that is not root
  const asNobody = (where: string): unknown => {
    const ids = process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {}
    const child = spawnSync(process.execPath, [join(import.meta.dirname, 'nobody.ts'), where, MIGRATIONS], { encoding: 'utf8', ...ids })
    if (child.status !== 0) throw new Error(child.stderr)
    return JSON.parse(child.stdout)
  }

  it('is no trouble to a process that may (so that the refusals below are due to the permissions alone)', () => {
    const where = folder()
    chmodSync(where, 0o777)
    expect(asNobody(where)).toEqual({ step: 'save', codes: [] })
  })

  it('a read-only file is refused on opening', () => {
    const where = stocked()
    chmodSync(where, 0o777)
    chmodSync(fileIn(where), 0o444)
    const before = hash(fileIn(where))
    expect(asNobody(where)).toEqual({ step: 'open', codes: ['database.read_only'] })
    expect(hash(fileIn(where))).toBe(before)
  })

  it('a read-only folder is refused on opening, with a database in it and without', () => {
    for (const where of [stocked(), folder()]) {
      chmodSync(where, 0o555)
      const before = readdirSync(where)
      expect(asNobody(where)).toEqual({ step: 'open', codes: ['database.read_only'] })
      expect(readdirSync(where)).toEqual(before)
      chmodSync(where, 0o755)
    }
  })

  it('a database that turns read-only later refuses the change and stays readable', () => {
    // proves what becomes of SQLITE_READONLY while saving; how a file comes to be so is the test above
    const db = databaseOn(raw(fileIn(stocked()), { readonly: true }))
    expect(codes(db.saveBuild(fullBuild(), how))).toEqual(['database.read_only'])
    expect(db.loadBuild('larch')).toStrictEqual(fullBuild())
  })
})

describe('trouble while saving', () => {
  it('a full disk: nothing is half written', () => {
    const where = stocked()
    const sqlite = raw(fileIn(where))
    sqlite.pragma('foreign_keys = ON')
    // SQLite's own limit gives the very error that a full disk gives
    sqlite.pragma(`max_page_count = ${(sqlite.pragma('page_count', { simple: true }) as number) + 2}`)
    const db = databaseOn(sqlite)
    const big = fullBuild()
    for (let i = 0; i < 200; i++)
      big.parts.push({ kind: 'other', id: `p${i}`, name: 'x'.repeat(200), state: 'here', ends: [], note: 'y'.repeat(3000) })
    const result = db.saveBuild(big, how)
    expect(codes(result)).toEqual(['database.full'])
    expect(db.loadBuild('larch')).toStrictEqual(fullBuild())
    expect(sqlite.pragma('integrity_check', { simple: true })).toBe('ok')
  })

  it('another program in the middle of a change', () => {
    const where = stocked()
    const db = opened(where)
    const holder = raw(fileIn(where))
    holder.exec('BEGIN IMMEDIATE')
    expect(codes(db.saveBuild(fullBuild(), how))).toEqual(['database.locked'])
    expect(db.loadBuild('larch')).toStrictEqual(fullBuild())
    holder.exec('ROLLBACK')
    expect(must(db.saveBuild(fullBuild(), how))).toEqual({ replaced: true })
  })
})
