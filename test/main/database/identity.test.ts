import { getTableName } from 'drizzle-orm'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { rowsOf } from '../../../src/main/database/rows.ts'
import { TABLES } from '../../../src/main/database/tables/index.ts'
import type { BuildFile } from '../../../src/shared/model/build.ts'
import { checkBuild } from '../../../src/shared/model/exchange.ts'
import { arbitraryBuild } from './arbitrary-build.ts'
import { fullBuild } from './full-build.ts'
import { fullForces, fullGeometry } from './full-steering.ts'
import { codes, folder, must, NOW, open, opened, raw } from './stage.ts'

const how = { replace: true, changedAt: NOW }

describe('file → database → file', () => {
  it('is the identity for any build', () => {
    const db = opened()
    fc.assert(
      fc.property(arbitraryBuild, (file) => {
        const checked = checkBuild(file)
        expect(codes(checked)).toEqual([])
        const before = structuredClone(file)
        must(db.saveBuild(file, how))
        expect(db.loadBuild(file.build.id)).toStrictEqual(before)
        expect(file).toStrictEqual(before)
      }),
      { numRuns: 200 },
    )
  })

  it('is the identity for a build in which every key is there, and after opening anew', () => {
    const where = folder()
    const db = must(open(where))
    must(db.saveBuild(fullBuild(), how))
    expect(db.loadBuild('larch')).toStrictEqual(fullBuild())
    db.close()
    expect(opened(where).loadBuild('larch')).toStrictEqual(fullBuild())
  })

  it('leaves no column of that build empty, so that the test above speaks for all of them', () => {
    const rows = must(rowsOf(fullBuild(), NOW))
    for (const [name, table] of Object.entries(TABLES)) {
      const own = rows.filter((r) => r.table === table.drizzle)
      const empty = table.columns.filter((c) => own.every((r) => r.row[c] === null || r.row[c] === undefined))
      expect({ name, empty }).toEqual({ name, empty: [] })
    }
  })

  it('tells absent from empty', () => {
    const db = opened()
    const bare = {
      format: 'steerwright build',
      version: 1,
      build: { id: 'b', name: 'B', revision: 1, units: 'inch' },
      parts: [],
      joints: [],
    } as const
    const files = [
      { ...bare, vehicle: { id: 'v', name: 'V' } },
      {
        ...bare,
        vehicle: { id: 'v', name: 'V', tyre: {}, notes: '' },
        geometry: {},
        forces: {},
        limits: [],
        torqueSpecs: [],
        torqueRecords: [],
        alignment: [],
        tasks: [],
        sessions: [],
      },
      {
        ...bare,
        vehicle: { id: 'v', name: 'V' },
        geometry: emptied(fullGeometry()),
        forces: emptied(fullForces()),
      },
      // one object at a time, so that none of them is taken for another
      ...Object.keys(fullGeometry()).map((key) => ({ ...bare, vehicle: { id: 'v', name: 'V' }, geometry: { [key]: {} } })),
      ...Object.entries(emptied(fullForces())).map(([key, empty]) => ({
        ...bare,
        vehicle: { id: 'v', name: 'V' },
        forces: { [key]: empty },
      })),
    ]
    for (const file of files) {
      const plain = JSON.parse(JSON.stringify(file))
      must(db.saveBuild(plain, how))
      expect(db.loadBuild('b')).toStrictEqual(plain)
    }
  })

  it('keeps what was typed to the letter beside its value in SI', () => {
    const db = opened()
    must(db.saveBuild(fullBuild(), how))
    const sqlite = raw(db.path)
    // 1 3/4 in = 44.45 mm and 8 in = 203.2 mm, both exact
    expect(sqlite.prepare('SELECT bore, bore_m, stroke, stroke_m FROM part_ram').get()).toEqual({
      bore: '1 3/4 in',
      bore_m: 0.04445,
      stroke: '8 in',
      stroke_m: 0.2032,
    })
    expect(sqlite.prepare(`SELECT connection, connection_kind FROM part_end WHERE part = 'tie-rod'`).get()).toEqual({
      connection: '7/8-18 LH female',
      connection_kind: 'thread',
    })
  })
})

describe('several builds', () => {
  it('do not touch one another, and a replaced one leaves nothing behind', () => {
    const db = opened()
    const sqlite = raw(db.path)
    fc.assert(
      fc.property(arbitraryBuild, arbitraryBuild, arbitraryBuild, (a, b, c) => {
        sqlite.exec('DELETE FROM build')
        const [first, other, second] = [named(a, 'one'), named(b, 'two'), named(c, 'one')]
        expect(must(db.saveBuild(first, how))).toEqual({ replaced: false })
        expect(must(db.saveBuild(other, how))).toEqual({ replaced: false })
        expect(must(db.saveBuild(second, how))).toEqual({ replaced: true })
        expect(db.loadBuild('two')).toStrictEqual(other)
        expect(db.loadBuild('one')).toStrictEqual(second)
        const wanted = must(rowsOf(other, NOW)).length + must(rowsOf(second, NOW)).length
        const count = Object.values(TABLES)
          .map((t) => getTableName(t.drizzle))
          .reduce((n, name) => n + (sqlite.prepare(`SELECT count(*) FROM "${name}"`).pluck().get() as number), 0)
        expect(count).toBe(wanted)
      }),
      { numRuns: 25 },
    )
  })

  it('are listed, the one changed last first', () => {
    const db = opened()
    must(db.saveBuild(named(fullBuild(), 'old'), { replace: false, changedAt: '2026-01-01T00:00:00.000Z' }))
    must(db.saveBuild(named(fullBuild(), 'new'), { replace: false, changedAt: '2026-02-01T00:00:00.000Z' }))
    expect(db.listBuilds()).toEqual([
      { id: 'new', name: 'Larch', vehicle: 'Crew truck', revision: 3, changedAt: '2026-02-01T00:00:00.000Z' },
      { id: 'old', name: 'Larch', vehicle: 'Crew truck', revision: 3, changedAt: '2026-01-01T00:00:00.000Z' },
    ])
    expect(db.loadBuild('neither')).toBeUndefined()
  })

  it('with the same id are refused unless asked to replace, and the old one stays', () => {
    const db = opened()
    must(db.saveBuild(fullBuild(), { replace: false, changedAt: NOW }))
    const other = { ...fullBuild(), parts: [], joints: [], torqueSpecs: [], torqueRecords: [], tasks: [] }
    const again = db.saveBuild(other, { replace: false, changedAt: NOW })
    expect(again).toMatchObject({ ok: false, issues: [{ code: 'build.exists', facts: { id: 'larch' } }] })
    expect(db.loadBuild('larch')).toStrictEqual(fullBuild())
  })
})

describe('a value that would not come back as it went in', () => {
  const saved = (note: string) => {
    const db = opened()
    const file = fullBuild()
    file.parts[1] = { ...(file.parts[1] as (typeof file.parts)[number]), note }
    const result = db.saveBuild(file, how)
    expect(db.listBuilds()).toEqual([])
    return result
  }
  it.each([
    ['half a surrogate pair', 'x\ud83d'],
    ['U+0000', 'x\0y'],
  ])('is refused with its path: %s', (_what, note) => {
    expect(saved(note)).toMatchObject({ ok: false, issues: [{ code: 'database.text_not_kept', path: ['parts', 1, 'note'] }] })
  })

  it('is refused with its path where the tables have no place for it, however deep it stands', () => {
    const db = opened()
    const with1 = { ...fullBuild(), weather: { rain: true } } as BuildFile
    expect(db.saveBuild(with1, how)).toMatchObject({ ok: false, issues: [{ code: 'database.no_place', path: ['weather'] }] })
    const with2 = fullBuild()
    Object.assign(with2.limits?.[0] ?? {}, { colour: 'red' })
    expect(db.saveBuild(with2, how)).toMatchObject({ ok: false, issues: [{ code: 'database.no_place', path: ['limits', 0, 'colour'] }] })
    expect(db.listBuilds()).toEqual([])
    // a key without a value is none
    must(db.saveBuild({ ...fullBuild(), weather: undefined } as BuildFile, how))
  })

  it('is refused with every path at once where a quantity or an end is not understood', () => {
    const db = opened()
    const file = fullBuild()
    file.vehicle.tyre = { pressure: '24 psy' }
    file.parts[0]?.ends.push({ name: 'odd', connection: 'something or other' })
    const result = db.saveBuild(file, how)
    expect(result.ok ? [] : result.issues.map((i) => i.path.join('.'))).toEqual(['vehicle.tyre.pressure', 'parts.0.ends.2.connection'])
    expect(db.listBuilds()).toEqual([])
  })
})

it('saves and loads a build of 500 parts in well under a second', () => {
  const db = opened()
  const file = fullBuild()
  for (let i = 0; i < 500; i++) {
    file.parts.push({
      kind: 'tube',
      id: `t${i}`,
      name: 'Tube',
      state: 'here',
      length: '40 in',
      ends: [
        { name: 'left', connection: '7/8-18 LH female' },
        { name: 'right', connection: '7/8-18 RH female' },
      ],
    })
    if (i > 0) file.joints.push({ id: `j${i}`, a: `t${i - 1}/left`, b: `t${i}/right`, with: ['jam nut'] })
  }
  const start = performance.now()
  must(db.saveBuild(file, how))
  must(db.saveBuild(file, how))
  expect(db.loadBuild('larch')).toStrictEqual(file)
  const took = performance.now() - start
  // two saves and a load took about 0.2 s on two shared cores; the bound is there for what grows with the square
  expect(took).toBeLessThan(1_500)
})

/** Each object and list of it, with nothing in it. */
const emptied = (value: object): object =>
  Object.fromEntries(Object.entries(value).flatMap(([key, v]) => (typeof v === 'object' ? [[key, Array.isArray(v) ? [] : {}]] : [])))

function named<T extends { build: { id: string } }>(file: T, id: string): T {
  return { ...file, build: { ...file.build, id } }
}
