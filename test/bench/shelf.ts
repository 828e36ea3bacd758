import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Sqlite from 'better-sqlite3'
import { openDatabase, type ShelfQuery } from '../../src/main/database/index.ts'
import { writeCsv } from '../../src/main/procedures/csv/write.ts'
import { makeProcedures } from '../../src/main/procedures/index.ts'
import type { PartFile } from '../../src/shared/model/part.ts'
import { ms, percentile, times, timesOf } from './measure.ts'

const COUNT = 100_000
const NOW = '2030-01-01T00:00:00.000Z'
const KINDS = ['Adapter', 'Union', 'Elbow', 'Tee', 'Reducer', 'Bung', 'Plug', 'Cross', 'Swivel', 'Bulkhead']
const MAKERS = ['Fernhill', 'Wexcombe', 'Oldmill', 'Ashgrove', 'Tarn']
const ENDS = [
  '7/8-18 LH female',
  '-6 37° flare male',
  '3/8-18 NPT female',
  'M18x1.5 male',
  '-8 O-ring boss male',
  'G 3/8 A male',
  '1/2-14 NPT male',
  '-10 37° flare female',
]
const pick = <T>(list: readonly T[], at: number): T => list[at % list.length] as T

const partAt = (i: number): PartFile => ({
  kind: 'adapter',
  id: `part-${i}`,
  name: `${pick(KINDS, i)} ${pick(ENDS, i * 7).split(' ')[0]} no. ${i}`,
  maker: pick(MAKERS, i * 3),
  partNumber: `${pick(MAKERS, i).slice(0, 2).toUpperCase()}-${(i * 7919) % 1_000_003}`,
  price: `${i % 400}.50`,
  state: 'here',
  ends: [
    { name: 'one', connection: pick(ENDS, i) },
    { name: 'other', connection: pick(ENDS, i * 3 + 1) },
  ],
})

/** Every text that is in the field while it is typed key by key. */
const keysOf = (typed: string): readonly string[] => Array.from(typed, (_, i) => typed.slice(0, i + 1))

/** A key in the search of a shelf of 100,000 parts, against a bare LIKE scan of the same rows; and the shelf read from a table. */
export async function bench(): Promise<readonly string[]> {
  const folder = mkdtempSync(join(tmpdir(), 'steerwright-bench-'))
  try {
    const opened = openDatabase(folder, { migrationsFolder: join(import.meta.dirname, '../../migrations'), now: NOW })
    if (!opened.ok) throw new Error('the database does not open')
    const database = opened.value
    const procedures = makeProcedures({
      database: opened,
      clock: () => new Date(NOW),
      host: 'browser',
      dataFolder: folder,
      version: '0',
    })
    const parts = Array.from({ length: COUNT }, (_, i) => partAt(i))
    const text = writeCsv(parts)

    const bare = new Sqlite(join(folder, 'bare.sqlite'))
    bare.pragma('journal_mode = WAL')
    bare.exec('CREATE TABLE part (id TEXT PRIMARY KEY, name TEXT, words TEXT, row TEXT)')
    const insert = bare.prepare('INSERT INTO part VALUES (?, ?, ?, ?)')
    const fill = bare.transaction(() => {
      for (const p of parts) {
        const words = [p.name, p.maker, p.partNumber, ...p.ends.map((e) => e.connection)].join(' ')
        insert.run(p.id, p.name, words, JSON.stringify(p))
      }
    })
    const [floorImport = 0] = await timesOf(1, fill)
    const [importing = 0] = await timesOf(1, async () => {
      const answer = await procedures['shelf.importCsv']({ text, dryRun: false })
      if (!answer.ok || !answer.value.imported || answer.value.added !== COUNT) throw new Error('not imported')
    })

    const scan = bare.prepare('SELECT id, count(*) OVER () FROM part WHERE words LIKE ? ORDER BY name COLLATE NOCASE LIMIT 50')
    const typed = ['elbow 3/8', 'wexcombe flare', '7/8-18 lh', 'm18 x 1.5', 'fe-79', 'zz']
    const page = { offset: 0, limit: 50, sort: 'name' } satisfies Partial<ShelfQuery>
    const floor: number[] = []
    const keys: number[] = []
    for (const query of typed.flatMap(keysOf)) {
      floor.push(...(await timesOf(3, () => scan.all(`%${query}%`))))
      keys.push(...(await timesOf(3, () => database.shelf.search({ ...page, query }))))
    }
    let at = 0
    const scrolls = await timesOf(200, () => {
      at = (at + 37_911) % (COUNT - page.limit)
      return database.shelf.search({ ...page, query: '', offset: at })
    })
    const middle = (list: readonly number[]) => percentile(list, 0.5)
    bare.close()
    database.close()
    return [
      `floor, LIKE scan of ${COUNT} bare rows: middle ${ms(middle(floor))}, worst ${ms(Math.max(...floor))}`,
      `a key in the search: middle ${ms(middle(keys))}, 95 of 100 under ${ms(percentile(keys, 0.95))}, worst ${ms(Math.max(...keys))}, ${times(middle(keys) / middle(floor))} the floor (wanted: under 50 ms)`,
      `a page while scrolling: middle ${ms(middle(scrolls))}, worst ${ms(Math.max(...scrolls))}`,
      `floor, ${COUNT} bare rows of one table: ${ms(floorImport)}`,
      `import of ${COUNT} parts from a table of ${Math.round(text.length / 1e6)} MB, checked and indexed: ${ms(importing)}, ${times(importing / floorImport)} the floor`,
    ]
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
