import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type Sqlite from 'better-sqlite3'
import { getTableName } from 'drizzle-orm'
import { describe, expect, it } from 'vitest'
import * as schema from '../../../src/main/database/schema.ts'
import { SHELF_TABLES, TABLES } from '../../../src/main/database/tables/index.ts'
import type { BuildFile } from '../../../src/shared/model/build.ts'
import { checkBuild } from '../../../src/shared/model/exchange.ts'
import { fullBuild } from './full-build.ts'
import { MIGRATIONS, must, NOW, opened, raw } from './stage.ts'

const SNAPSHOT = join(MIGRATIONS, 'schema.snapshot.json')

const ALL = [...Object.values(TABLES), ...Object.values(SHELF_TABLES)]
const onShelf = (table: string) => table.startsWith('shelf_')

/** A database that holds the build in which every key is there, its parts on the shelf too, and a plain connection to it that keeps to foreign keys. */
function stocked(): Sqlite.Database {
  const db = opened()
  must(db.saveBuild(fullBuild(), { replace: false, changedAt: NOW }))
  must(db.shelf.save(fullBuild().parts, { replace: false, changedAt: NOW }))
  const sqlite = raw(db.path)
  sqlite.pragma('foreign_keys = ON')
  return sqlite
}

interface ColumnInfo {
  readonly table: string
  readonly name: string
  readonly type: string
}

const tablesOf = (sqlite: Sqlite.Database) =>
  (sqlite.pragma('table_list') as { schema: string; name: string; type: string; strict: 0 | 1 }[]).filter(
    (t) => t.schema === 'main' && t.type === 'table' && !t.name.startsWith('sqlite_'),
  )
const ours = (sqlite: Sqlite.Database) => tablesOf(sqlite).filter((t) => !t.name.startsWith('__'))
const columnsOf = (sqlite: Sqlite.Database): ColumnInfo[] =>
  ours(sqlite).flatMap(({ name: table }) =>
    (sqlite.pragma(`table_info(${table})`) as ColumnInfo[]).map((c) => ({ table, name: c.name, type: c.type })),
  )

/** What SQLite says when one row's column is set to `value`, or 'taken'. Nothing stays changed. */
function tryUpdate(sqlite: Sqlite.Database, { table, name }: ColumnInfo, value: unknown, where = 'TRUE'): string {
  sqlite.exec('BEGIN')
  try {
    sqlite.prepare(`UPDATE "${table}" SET "${name}" = ? WHERE rowid = (SELECT min(rowid) FROM "${table}" WHERE ${where})`).run(value)
    sqlite.exec('COMMIT')
    return 'taken'
  } catch (error) {
    if (sqlite.inTransaction) sqlite.exec('ROLLBACK')
    return (error as { code: string }).code
  }
}

describe('the schema', () => {
  it('that the migrations build is the one in the snapshot', () => {
    const rows = raw(opened().path)
      .prepare(`SELECT type, name, sql FROM sqlite_schema WHERE sql IS NOT NULL AND name NOT LIKE 'sqlite_%' ORDER BY type, name`)
      .all()
    // after a new migration: delete the snapshot, run this test, and look at what changed before committing it
    if (!existsSync(SNAPSHOT)) writeFileSync(SNAPSHOT, `${JSON.stringify(rows, null, 2)}\n`)
    expect(rows).toEqual(JSON.parse(readFileSync(SNAPSHOT, 'utf8')))
  })

  it('has the tables and columns of the code, and the code those of drizzle-kit', () => {
    const sqlite = raw(opened().path)
    const inCode = ALL.map((t) => [getTableName(t.drizzle), [...t.columns].sort()] as const)
    const inFile = ours(sqlite).map(
      (t) =>
        [
          t.name,
          columnsOf(sqlite)
            .filter((c) => c.table === t.name)
            .map((c) => c.name)
            .sort(),
        ] as const,
    )
    expect(Object.fromEntries(inFile)).toEqual(Object.fromEntries(inCode))
    expect(new Set(Object.values(schema))).toEqual(new Set(ALL.map((t) => t.drizzle)))
  })

  it('is made of STRICT tables only', () => {
    const tables = tablesOf(raw(opened().path))
    expect(tables.length).toBeGreaterThanOrEqual(41)
    expect(tables.filter((t) => !t.strict)).toEqual([])
  })

  it('lets every build but a missing one be pointed at by all of its tables', () => {
    const sqlite = raw(opened().path)
    for (const { name } of ours(sqlite).filter((t) => t.name !== 'build' && !onShelf(t.name))) {
      const keys = sqlite.pragma(`foreign_key_list(${name})`) as { from: string; on_delete: string }[]
      expect({ name, owned: keys.some((k) => k.from === 'build_id' && k.on_delete === 'CASCADE') }).toEqual({ name, owned: true })
    }
  })

  it('keeps a part on the shelf by the same fields and the same rules as in a build', () => {
    const sqlite = raw(opened().path)
    // what tells a part of the shelf from one of a build: by what it is known, and when it was put there
    const keys = ['build_id', 'part', 'position', 'number', 'changed_at']
    const rules = (table: string) => {
      const sql = sqlite.prepare('SELECT sql FROM sqlite_schema WHERE name = ?').pluck().get(table) as string
      return sql
        .split('\n')
        .map((line) => line.trim().replaceAll('shelf_', '').replace(/,$/, ''))
        .filter(
          (line) =>
            !/^(CREATE|FOREIGN KEY|PRIMARY KEY|\))/.test(line) && !keys.some((k) => line.includes(`\`${k}\``) || line.includes(`"${k}"`)),
        )
    }
    const tables = Object.values(SHELF_TABLES).map((t) => getTableName(t.drizzle))
    expect(tables).toHaveLength(10)
    for (const table of tables) {
      expect(rules(table).length).toBeGreaterThan(1)
      expect(rules(table)).toEqual(rules(table.replace('shelf_', '')))
    }
  })
})

describe('foreign keys', () => {
  const cases = [
    ['build_id of a vehicle', 'UPDATE vehicle SET build_id = ?'],
    ['part of an end', `UPDATE part_end SET part = ? WHERE part = 'tie-rod'`],
    ['part of a ram', 'UPDATE part_ram SET part = ?'],
    ['part of a joint', 'UPDATE joint SET a_part = ?'],
    ['end of a joint', 'UPDATE joint SET b_end = ?'],
    ['joint of an aid', 'UPDATE joint_aid SET joint = ? WHERE position = 0'],
    ['joint of a torque spec', 'UPDATE torque_spec_joint SET joint = ? WHERE position = 0'],
    ['spec of a torque record', 'UPDATE torque_record SET spec = ?'],
    ['corrected torque record', 'UPDATE torque_record SET corrects = ?'],
    ['corrected alignment reading', 'UPDATE alignment_reading SET corrects = ?'],
    ['task before a task', 'UPDATE task_after SET before_task = ?'],
    ['part a task needs', 'UPDATE task_need SET part = ?'],
    ['forces of a group of bolts', 'UPDATE bolt_group SET build_id = ?'],
    ['forces of the run of a hose', 'UPDATE hose_run SET build_id = ?'],
    ['build of a geometry', 'UPDATE geometry SET build_id = ?'],
    ['survey of a reading', 'UPDATE reading SET build_id = ?'],
    ['survey of what was made sure', 'UPDATE survey_made_sure SET build_id = ?'],
    ['part of an end on the shelf', `UPDATE shelf_part_end SET part = length(?) + 1000 WHERE name = 'thread'`],
    ['part of a ram on the shelf', 'UPDATE shelf_part_ram SET part = length(?) + 1000'],
  ] as const

  it.each(cases)('hold: %s', (_what, update) => {
    const sqlite = stocked()
    expect(() => sqlite.prepare(update).run('nowhere')).toThrow(expect.objectContaining({ code: 'SQLITE_CONSTRAINT_FOREIGNKEY' }))
  })

  it('keep what only a ram has from a part that is none', () => {
    const sqlite = stocked()
    expect(() => sqlite.exec(`UPDATE part_ram SET part = 'hose'`)).toThrow(
      expect.objectContaining({ code: 'SQLITE_CONSTRAINT_FOREIGNKEY' }),
    )
    expect(() => sqlite.exec(`UPDATE part_ram SET part = 'hose', kind = 'hose'`)).toThrow(
      expect.objectContaining({ code: 'SQLITE_CONSTRAINT_CHECK' }),
    )
  })

  it('make a file that was not checked fail whole', () => {
    const db = opened()
    const file = fullBuild()
    file.joints.push({ id: 'loose', a: 'tie-rod/left', b: 'tie-rod/right' })
    expect(() => db.saveBuild(file, { replace: false, changedAt: NOW })).toThrow()
    expect(db.listBuilds()).toEqual([])
  })
})

describe('CHECKs', () => {
  it('refuse a nonsense value in every single column', () => {
    const sqlite = stocked()
    const nonsense: Record<string, readonly unknown[]> = { TEXT: ['Ä'.repeat(5000)], INTEGER: [-1, 0.5, 'one'], REAL: [1e99, -1e99, 'one'] }
    const slipped = columnsOf(sqlite).flatMap((c) =>
      (nonsense[c.type] ?? ['no such type'])
        .filter((value) => !/^SQLITE_(CONSTRAINT|MISMATCH)/.test(tryUpdate(sqlite, c, value)))
        .map((value) => ({ ...c, value })),
    )
    expect(slipped).toEqual([])
  })

  it('let no quantity stand without its value, and no value without its quantity', () => {
    const sqlite = stocked()
    const columns = columnsOf(sqlite)
    const values = columns.filter((c) => c.type === 'REAL')
    expect(values.length).toBeGreaterThan(40)
    for (const value of values) {
      const words = { ...value, name: apart(value.name).words }
      const filled = `"${words.name}" IS NOT NULL`
      expect([value, tryUpdate(sqlite, value, null, filled)]).toEqual([value, expect.stringMatching(/^SQLITE_CONSTRAINT/)])
      expect([words, tryUpdate(sqlite, words, null, filled)]).toEqual([words, expect.stringMatching(/^SQLITE_CONSTRAINT/)])
    }
  })

  it.each([
    ['day that no calendar has', 'build', 'started_on', '2026-02-30'],
    ['time of change in words', 'build', 'changed_at', 'yesterday, late in the day'],
    ['id with a capital', 'part', 'id', 'Ram'],
    ['price with three decimals and a comma', 'part', 'price', '1,234'],
    ['joint of an end with itself', 'joint', 'b_part', 'end-left'],
    ['absent tyre with a size', 'vehicle', 'has_tyre', 0],
    ['absent pitman arm with a place', 'geometry', 'has_pitman', 0],
    ['absent ground with a friction', 'forces', 'has_ground', 0],
    ['bolt of a grade that none has', 'bolt_group', 'grade', '9'],
    ['state of no part', 'part', 'state', 'lost'],
    ['end of no kind', 'part_end', 'connection_kind', 'glue'],
  ])('refuse a %s', (_what, table, name, value) => {
    const sqlite = stocked()
    if (table === 'joint') {
      expect(() => sqlite.exec(`UPDATE joint SET b_part = a_part, b_end = a_end WHERE id = 'left'`)).toThrow(
        expect.objectContaining({ code: 'SQLITE_CONSTRAINT_CHECK' }),
      )
    } else expect(tryUpdate(sqlite, { table, name, type: '' }, value)).toBe('SQLITE_CONSTRAINT_CHECK')
  })

  it('bound every quantity exactly as the model does', () => {
    const sqlite = stocked()
    const places = quantityPlaces(sqlite, fullBuild())
    // one for every column that holds a value in SI
    expect(new Set(places.map((p) => p.check)).size).toBe(columnsOf(sqlite).filter((c) => c.type === 'REAL' && !onShelf(c.table)).length)
    expect(new Set(places.map((p) => p.path.join('/'))).size).toBe(places.length)
    for (const { check, path, unit, bounds } of places) {
      for (const { at, included, outwards } of bounds) {
        const beyond = at + outwards * Math.max(Math.abs(at), 1) * 1e-6
        expect([check, at, modelTakes(path, `${at} ${unit}`)]).toEqual([check, at, included])
        expect([check, beyond, modelTakes(path, `${beyond} ${unit}`)]).toEqual([check, beyond, false])
      }
    }
  })
})

type Path = readonly (string | number)[]

/** Where in a file each column in SI comes from, and the bounds its CHECK sets. */
function quantityPlaces(sqlite: Sqlite.Database, file: BuildFile) {
  const stored = columnsOf(sqlite)
    // the shelf has the rules of the build's tables word for word, which a test above sees to
    .filter((c) => c.type === 'REAL' && !onShelf(c.table))
    .map((c) => {
      const create = sqlite.prepare('SELECT sql FROM sqlite_schema WHERE name = ?').pluck().get(c.table) as string
      const rule = new RegExp(`CHECK\\(("${c.name}" [<>][^)]*)\\)`).exec(create)?.[1] ?? ''
      const bounds = [...rule.matchAll(/([<>]=?) (-?[\d.]+)/g)].map(([, sign = '', at]) => ({
        at: Number(at),
        included: sign.endsWith('='),
        outwards: sign.startsWith('>') ? -1 : 1,
      }))
      expect({ column: c, bounds: bounds.length }).toEqual({ column: c, bounds: 2 })
      return { ...c, bounds }
    })
  return stored.map(({ table, name, bounds }) => {
    const { words, unit } = apart(name)
    const typed = sqlite.prepare(`SELECT "${words}" FROM "${table}" WHERE "${name}" IS NOT NULL`).pluck().get() as string
    return { check: `${table}.${name}`, path: pathOf(file, typed, words.replaceAll('_', '')), unit, bounds }
  })
}

const UNIT: Readonly<Record<string, string>> = {
  m: 'm',
  m3: 'm³',
  m3_s: 'm³/s',
  rad_s: 'rad/s',
  kg_m3: 'kg/m³',
  m2_s: 'm²/s',
  k: 'K',
  rad: 'rad',
  n: 'N',
  pa: 'Pa',
  nm: 'N·m',
  s: 's',
  ratio: '',
}

/** "bore_m": the text stands in "bore", the value is in metres. */
function apart(column: string): { words: string; unit: string } {
  const [, words, suffix] = /^(.+?)_(m3_s|rad_s|kg_m3|m2_s|m3|m|rad|k|n|pa|nm|s|ratio)$/.exec(column) ?? []
  const unit = UNIT[suffix ?? '']
  if (words === undefined || unit === undefined) throw new Error(`${column} does not end in a unit`)
  return { words, unit }
}

/** The place of a text in a file, by the text and by the key that it must stand under ("hourslow": hours.low). */
function pathOf(file: BuildFile, text: string, key: string): Path {
  const found: Path[] = []
  const walk = (v: unknown, at: Path) => {
    if (
      v === text &&
      at
        .filter((p) => typeof p === 'string')
        .join('')
        .toLowerCase()
        .endsWith(key)
    )
      found.push(at)
    if (typeof v === 'object' && v !== null)
      for (const [k, inner] of Object.entries(v)) walk(inner, [...at, Array.isArray(v) ? Number(k) : k])
  }
  walk(file, [])
  if (!found[0]) throw new Error(`${text} (${key}) is nowhere in the file`)
  return found[0]
}

/** Whether the model takes `text` at a place of the full build. */
function modelTakes(path: Path, text: string): boolean {
  const file = fullBuild()
  const parent = path.slice(0, -1).reduce<unknown>((v, k) => (v as Record<string | number, unknown>)[k], file)
  ;(parent as Record<string | number, unknown>)[path.at(-1) ?? ''] = text
  const checked = checkBuild(file)
  if (!checked.ok && checked.issues.some((i) => i.code !== 'quantity.out_of_range')) throw new Error(JSON.stringify(checked.issues))
  return checked.ok
}
