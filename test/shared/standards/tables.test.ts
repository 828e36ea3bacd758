import { globSync } from 'node:fs'
import { resolve } from 'node:path'
import { describe, expect, it } from 'vitest'
import { TABLES } from '../../../src/shared/standards/index.ts'

const cellsOf = (each: object): readonly unknown[] => Object.values(each)

describe('the list of tables', () => {
  it('is sorted by name, and names are unique and fit a command line', () => {
    const names = TABLES.map((table) => table.name)
    expect(names).toEqual([...new Set(names)].sort())
    for (const name of names) expect(name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/)
  })

  it('holds every table that the room defines', async () => {
    const room = resolve(import.meta.dirname, '../../../src/shared/standards')
    const files = globSync('**/*.ts', { cwd: room }).filter((file) => file !== 'index.ts')
    const modules: object[] = await Promise.all(files.map((file) => import(resolve(room, file))))
    const defined = modules
      .flatMap((module) => Object.values(module))
      .filter((value) => typeof value === 'object' && value !== null && 'rows' in value && 'sources' in value)
    expect(defined.length).toBeGreaterThan(40)
    expect(new Set(TABLES)).toEqual(new Set(defined))
    expect(TABLES).toHaveLength(defined.length)
  })
})

describe.each(TABLES.map((table) => [table.name, table] as const))('%s', (_name, table) => {
  const columns = table.columns.map((column) => column.key)

  it('has rows, a title and columns told apart', () => {
    expect(table.rows.length).toBeGreaterThan(0)
    expect(table.title).not.toBe('')
    expect(new Set(columns).size).toBe(columns.length)
    for (const column of table.columns) expect(column.title).not.toBe('')
  })

  it('gives every row exactly its columns', () => {
    for (const each of table.rows) expect(Object.keys(each).sort()).toEqual([...columns].sort())
  })

  it('names each row once', () => {
    expect(columns).toContain(table.key)
    const keys = table.rows.map((each) => Reflect.get(each, table.key))
    expect(new Set(keys).size).toBe(keys.length)
    for (const key of keys) expect(['string', 'number']).toContain(typeof key)
  })

  it('holds only names, counts, measures, yes and no, or nothing known', () => {
    for (const cell of table.rows.flatMap(cellsOf)) {
      if (cell === null || typeof cell === 'boolean') continue
      if (typeof cell === 'number') expect(Number.isFinite(cell) && cell >= 0).toBe(true)
      else expect(cell).toSatisfy((value) => typeof value === 'string' && value.trim() === value && value !== '')
    }
  })

  it('says where its figures come from, each source once', () => {
    const ids = table.sources.map((source) => source.id)
    expect(ids.length).toBeGreaterThan(0)
    expect(new Set(ids).size).toBe(ids.length)
    for (const source of table.sources) {
      expect(source.cites.length).toBeGreaterThan(10)
      if (source.mark === 'memory') expect(source.cites).toContain('from memory')
      if (source.mark === 'practice') expect(source.cites).toContain('common practice, no published source')
    }
  })

  it('points each row that names a source at a source of its own', () => {
    const ids = table.sources.map((source) => source.id)
    for (const each of table.rows) if ('source' in each) expect(ids).toContain(each.source)
  })

  it('cites every source it lists where rows name theirs', () => {
    const named = new Set(table.rows.flatMap((each) => ('source' in each ? [each.source] : [])))
    if (named.size > 0) expect(table.sources.some((source) => named.has(source.id))).toBe(true)
  })
})
