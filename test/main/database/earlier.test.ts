import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { gunzipSync } from 'node:zlib'
import { describe, expect, it } from 'vitest'
import { readMigrations } from '../../../src/main/database/migrations.ts'
import type { BuildFile } from '../../../src/shared/model/build.ts'
import type { PartFile } from '../../../src/shared/model/part.ts'
import { fullForces, fullGeometry } from './full-steering.ts'
import { fileIn, folder, MIGRATIONS, must, NOW, opened, raw } from './stage.ts'

/*
 * Databases that earlier versions of this program have written, each named after the last step of its schema, and beside it what
 * that version read back from it: a build with every key of its time, a bare one, the demo build, and a shelf.
 */
const KEPT = resolve(import.meta.dirname, '../../fixtures/database')
const earlier = readdirSync(KEPT)
  .filter((f) => f.endsWith('.sqlite.gz'))
  .map((f) => f.replace('.sqlite.gz', ''))

interface Held {
  readonly builds: readonly BuildFile[]
  readonly shelf: readonly PartFile[]
}

/** A folder with that database, and what it holds. */
function stocked(step: string): { where: string; held: Held } {
  const where = folder()
  writeFileSync(fileIn(where), gunzipSync(readFileSync(join(KEPT, `${step}.sqlite.gz`))))
  return { where, held: JSON.parse(readFileSync(join(KEPT, `${step}.json`), 'utf8')) as Held }
}

it('there are such databases', () => expect(earlier).toEqual(['0001_shelf']))

describe.each(earlier)('a database of the schema of %s', (step) => {
  it('is of that schema', () => {
    const { where } = stocked(step)
    const applied = raw(fileIn(where)).prepare('SELECT hash FROM __drizzle_migrations ORDER BY id').pluck().all()
    const known = readMigrations(MIGRATIONS)
    expect(applied).toEqual(known.slice(0, known.findIndex((m) => m.tag === step) + 1).map((m) => m.hash))
  })

  it('has lost nothing when this version opens it, and has no row that points nowhere', () => {
    const { where, held } = stocked(step)
    const db = opened(where)
    expect(db.listBuilds().map((b) => b.id)).toEqual(held.builds.map((b) => b.build.id))
    for (const file of held.builds) expect(db.loadBuild(file.build.id)).toStrictEqual(file)
    expect(db.shelf.all()).toStrictEqual(held.shelf)
    expect(db.shelf.search({ query: 'fernh fh-78', offset: 0, limit: 10, sort: 'name' }).parts.map((p) => p.id)).toEqual(['end-left'])
    const sqlite = raw(db.path)
    expect(sqlite.pragma('integrity_check', { simple: true })).toBe('ok')
    expect(sqlite.pragma('foreign_key_check')).toEqual([])
    expect(readdirSync(join(where, 'backups'))).toHaveLength(1)
  })

  it('then has the same tables as a new one', () => {
    const schema = (path: string) =>
      raw(path).prepare(`SELECT type, name, tbl_name, sql FROM sqlite_schema WHERE name NOT LIKE 'sqlite_%' ORDER BY type, name`).all()
    expect(schema(opened(stocked(step).where).path)).toEqual(schema(opened().path))
  })

  it('then takes what its own version had no place for', () => {
    const { where, held } = stocked(step)
    const db = opened(where)
    for (const file of held.builds) {
      const limits = file.limits?.map((limit) => ({ ...limit, gap: '3/4 in', radius: '5 in', clearance: '0 mm' }))
      const more: BuildFile = { ...file, geometry: fullGeometry(), forces: fullForces(), ...(limits && { limits }) }
      must(db.saveBuild(more, { replace: true, changedAt: NOW }))
      expect(db.loadBuild(file.build.id)).toStrictEqual(more)
    }
  })
})
