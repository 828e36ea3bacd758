import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { ShelfQuery } from '../../../src/main/database/index.ts'
import { SHELF_TABLES } from '../../../src/main/database/tables/index.ts'
import { checkPart } from '../../../src/shared/model/check-part.ts'
import type { PartFile } from '../../../src/shared/model/part.ts'
import { part } from './arbitrary-part.ts'
import { ids } from './arbitrary-values.ts'
import { fullBuild } from './full-build.ts'
import { codes, folder, must, NOW, open, opened, raw } from './stage.ts'

const how = { replace: false, changedAt: NOW }
const again = { replace: true, changedAt: NOW }
const parts = ids(1, 5)
  .chain((known) => fc.tuple(...known.map(part)))
  .map((made) => JSON.parse(JSON.stringify(made)) as PartFile[])

const plain = (id: string, more: Partial<PartFile> = {}): PartFile =>
  ({ kind: 'adapter', id, name: id, state: 'here', ends: [], ...more }) as PartFile
const ask = (query: string, more: Partial<ShelfQuery> = {}): ShelfQuery => ({ query, offset: 0, limit: 200, sort: 'name', ...more })

describe('a part on the shelf', () => {
  it('comes back as it went in, whatever part it is', () => {
    const db = opened()
    fc.assert(
      fc.property(parts, (some) => {
        for (const one of db.shelf.all()) must(db.shelf.remove(one.id))
        for (const one of some) expect(codes(checkPart(one))).toEqual([])
        must(db.shelf.save(some, how))
        for (const one of some) expect(db.shelf.load(one.id)).toStrictEqual(one)
        expect(db.shelf.all()).toStrictEqual(some)
        expect(db.shelf.search(ask('')).total).toBe(some.length)
      }),
      { numRuns: 100 },
    )
  })

  it('has every key that a part can have, and is there when the program opens anew', () => {
    const where = folder()
    const first = must(open(where))
    must(first.shelf.save(fullBuild().parts, how))
    first.close()
    const db = opened(where)
    expect(db.shelf.all()).toStrictEqual(fullBuild().parts)
    const sqlite = raw(db.path)
    for (const [name, table] of Object.entries(SHELF_TABLES)) {
      const empty = table.columns.filter(
        (c) =>
          sqlite
            .prepare(`SELECT count("${c}") FROM ${name === 'part' ? 'shelf_part' : tableName(name)}`)
            .pluck()
            .get() === 0,
      )
      expect({ name, empty }).toEqual({ name, empty: [] })
    }
  })

  it('takes the place of one with the same id only when it may, and then of nothing else', () => {
    const db = opened()
    must(db.shelf.save([plain('a', { name: 'old' }), plain('b')], how))
    const refused = db.shelf.save([plain('c'), plain('a', { name: 'new' })], how)
    expect(refused).toMatchObject({ ok: false, issues: [{ code: 'shelf.exists', path: [1, 'id'], facts: { id: 'a' } }] })
    expect(db.shelf.all().map((p) => p.name)).toEqual(['old', 'b'])
    must(db.shelf.save([plain('c'), plain('a', { name: 'new' })], again))
    expect(db.shelf.all().map((p) => p.name)).toEqual(['new', 'b', 'c'])
    expect([db.shelf.search(ask('old')).total, db.shelf.search(ask('new')).total]).toEqual([0, 1])
  })

  it('comes back from among thousands that were put there at once, those of the same id by their last', () => {
    const db = opened()
    const many = Array.from({ length: 2500 }, (_, i) => plain(`p${i}`, { name: `No. ${i}`, ends: [{ name: 'a', connection: 'weld' }] }))
    const last = plain('p7', { name: 'Changed', ends: [] })
    must(db.shelf.save([...many, last], again))
    expect(db.shelf.all()).toStrictEqual(many.map((p) => (p.id === 'p7' ? last : p)))
    expect(db.shelf.search(ask('no')).total).toBe(2499)
    expect(['1', '999', '1000', '2499', 'changed'].map((word) => db.shelf.search(ask(`${word} weld`)).total > 0)).toEqual([
      ...[true, true, true, true],
      false,
    ])
    const twice = db.shelf.save([plain('new'), plain('new')], how)
    expect(twice).toMatchObject({ ok: false, issues: [{ code: 'shelf.exists', path: [1, 'id'] }] })
    expect(db.shelf.has('new')).toBe(false)
  })

  it('is kept with all others of its list or not at all', () => {
    const db = opened()
    const refused = db.shelf.save([plain('a'), plain('b', { note: 'x\ud83d' }), plain('c')], how)
    expect(refused).toMatchObject({ ok: false, issues: [{ code: 'database.text_not_kept', path: [1, 'note'] }] })
    expect(db.shelf.all()).toEqual([])
    expect(db.shelf.search(ask('a')).total).toBe(0)
  })

  it('goes with all that belongs to it', () => {
    const db = opened()
    must(db.shelf.save(fullBuild().parts, how))
    for (const { id } of fullBuild().parts) expect(must(db.shelf.remove(id))).toBe(true)
    expect(must(db.shelf.remove('ram'))).toBe(false)
    const sqlite = raw(db.path)
    const left = ['shelf_part', 'shelf_part_end', 'shelf_part_ram', 'shelf_part_plain'].map((t) =>
      sqlite.prepare(`SELECT count(*) FROM ${t}`).pluck().get(),
    )
    expect(left).toEqual([0, 0, 0, 0])
    expect(db.shelf.search(ask('ram')).total).toBe(0)
  })
})

const tableName = (name: string): string => `shelf_${{ part: 'part', partEnd: 'part_end' }[name] ?? `part_${name}`}`

describe('a search of the shelf', () => {
  const stock = () => {
    const db = opened()
    must(
      db.shelf.save(
        [
          plain('one', {
            name: 'Adapter, short',
            maker: 'Fernhill',
            partNumber: 'FH-7806-LH',
            supplier: 'Bench & Bolt',
            price: '9.50',
            ends: [
              { name: 'a', connection: '-6 JIC male' },
              { name: 'b', connection: '3/8 NPT female' },
            ],
          }),
          plain('two', {
            name: 'Übergang ½ in',
            maker: 'oldmill',
            price: '100',
            state: 'ordered',
            ends: [{ name: 'a', connection: 'M18 × 1.5 male' }],
          }),
          plain('three', {
            kind: 'rod end',
            name: 'Rod end',
            price: '20',
            state: 'to order',
            ends: [{ name: 'shank', connection: '7/8-18 LH male' }],
          }),
        ],
        how,
      ),
    )
    return db
  }

  it.each([
    ['short', ['one']],
    ['SHO', ['one']],
    ['hort', []],
    ['fernh bolt', ['one']],
    ['fernhill rod', []],
    ['FH-78', ['one']],
    ['7806', ['one']],
    ['rod', ['three']],
    ['7/8-18', ['three']],
    ['7/8', ['three']],
    ['8-7', []],
    ['-6', ['one']],
    ['37°', ['one']],
    ['flare 37', ['one']],
    ['9/16-18', ['one']],
    ['left', ['three']],
    ['m18x1.5', ['two']],
    ['M18 x 1.5', ['two']],
    ['m18×1', ['two']],
    ['ubergang', ['two']],
    ['über', ['two']],
    ['1/2', ['two']],
    ['½', ['two']],
    ['', ['one', 'three', 'two']],
    ['  -  ', ['one', 'three', 'two']],
    ['"', ['one', 'three', 'two']],
    ['adapter', ['one', 'two']],
  ])('for "%s" finds %j', (query, wanted) => {
    const { total, parts: found } = stock().shelf.search(ask(query))
    expect(found.map((p) => p.id)).toEqual(wanted)
    expect(total).toBe(wanted.length)
  })

  it('shows what a list needs', () => {
    expect(stock().shelf.search(ask('short')).parts).toEqual([
      {
        id: 'one',
        kind: 'adapter',
        name: 'Adapter, short',
        maker: 'Fernhill',
        partNumber: 'FH-7806-LH',
        supplier: 'Bench & Bolt',
        price: '9.50',
        quantity: null,
        state: 'here',
        ends: [
          { name: 'a', connection: '-6 JIC male' },
          { name: 'b', connection: '3/8 NPT female' },
        ],
      },
    ])
  })

  it.each<[string, Partial<ShelfQuery>, readonly string[]]>([
    ['kinds', { kinds: ['rod end', 'ram'] }, ['three']],
    ['no kinds', { kinds: [] }, []],
    ['states', { states: ['here', 'ordered'] }, ['one', 'two']],
    ['families of ends', { families: ['flare 37', 'metric'] }, ['one', 'two']],
    ['all at once', { families: ['flare 37', 'metric'], states: ['ordered'], kinds: ['adapter'] }, ['two']],
  ])('keeps to %s', (_what, filter, wanted) => {
    const { shelf } = stock()
    expect(shelf.search(ask('', filter)).parts.map((p) => p.id)).toEqual(wanted)
    // and the same with words
    const both = shelf.search(ask('m', filter)).parts.map((p) => p.id)
    expect(both).toEqual(
      shelf
        .search(ask('m'))
        .parts.map((p) => p.id)
        .filter((id) => wanted.includes(id)),
    )
  })

  it.each<[ShelfQuery['sort'], readonly string[], readonly string[]]>([
    ['name', ['one', 'three', 'two'], ['two', 'three', 'one']],
    ['price', ['one', 'three', 'two'], ['two', 'three', 'one']],
    // without a maker last, either way
    ['maker', ['one', 'two', 'three'], ['two', 'one', 'three']],
    ['state', ['three', 'two', 'one'], ['one', 'two', 'three']],
    ['kind', ['one', 'two', 'three'], ['three', 'one', 'two']],
  ])('sorts by %s', (sort, upwards, downwards) => {
    const { shelf } = stock()
    expect(shelf.search(ask('', { sort })).parts.map((p) => p.id)).toEqual(upwards)
    expect(shelf.search(ask('', { sort, descending: true })).parts.map((p) => p.id)).toEqual(downwards)
  })

  it('gives in pages what it gives at once, each part in one page', () => {
    const db = opened()
    fc.assert(
      fc.property(
        parts,
        fc.constantFrom('', 'a', 'f', '1'),
        fc.integer({ min: 1, max: 3 }),
        fc.boolean(),
        (some, query, limit, descending) => {
          for (const one of db.shelf.all()) must(db.shelf.remove(one.id))
          must(db.shelf.save(some, how))
          for (const sort of ['name', 'maker', 'price', 'state', 'changed', 'part number', 'supplier', 'kind'] as const) {
            const whole = db.shelf.search(ask(query, { sort, descending }))
            const pages = Array.from({ length: some.length + 1 }, (_, i) =>
              db.shelf.search(ask(query, { sort, descending, limit, offset: i * limit })),
            )
            expect(pages.flatMap((p) => p.parts)).toEqual(whole.parts)
            expect(pages.map((p) => p.total)).toEqual(pages.map(() => whole.total))
            expect(whole.parts).toHaveLength(whole.total)
          }
        },
      ),
      { numRuns: 40 },
    )
  })

  it('finds what plain reading of every word finds', () => {
    const db = opened()
    const word = fc.stringMatching(/^[ab1]{1,3}$/)
    const phrase = fc.array(word, { minLength: 1, maxLength: 3 })
    const sign = fc.constantFrom('-', '/', '.')
    fc.assert(
      fc.property(fc.array(phrase, { minLength: 1, maxLength: 6 }), phrase, sign, (names, wanted, between) => {
        for (const one of db.shelf.all()) must(db.shelf.remove(one.id))
        must(
          db.shelf.save(
            names.map((words, i) => plain(`p${i}`, { name: words.join(' ') })),
            how,
          ),
        )
        // one word with signs in it: its pieces stand in a row, the last may go on
        const inARow = (words: readonly string[]) =>
          words.some((_, at) => wanted.every((w, i) => (i === wanted.length - 1 ? words[at + i]?.startsWith(w) : words[at + i] === w)))
        // "adapter" is the kind of all of them
        const all = names.map((words) => [...words, 'adapter'])
        const found = (query: string) =>
          db.shelf
            .search(ask(query))
            .parts.map((p) => p.id)
            .sort()
        expect(found(wanted.join(between))).toEqual(all.flatMap((words, i) => (inARow(words) ? [`p${i}`] : [])).sort())
        // several words: each begins some word
        expect(found(wanted.join(' '))).toEqual(
          all.flatMap((words, i) => (wanted.every((w) => words.some((own) => own.startsWith(w))) ? [`p${i}`] : [])).sort(),
        )
      }),
      { numRuns: 100 },
    )
  })

  it('takes anything that can be typed', () => {
    const { shelf } = stock()
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 30 }), (query) => {
        expect(shelf.search(ask(query)).total).toBeLessThanOrEqual(3)
      }),
    )
    for (const query of ['NEAR(a b)', 'a OR b', 'words: a', '^a', 'a*', 'a +b', "'", '\0', '('.repeat(200)]) shelf.search(ask(query))
  })

  it('sees what another program has changed', () => {
    const where = folder()
    const [one, other] = [opened(where), opened(where)]
    must(one.shelf.save([plain('a')], how))
    const before = other.shelf.state()
    expect(other.shelf.search(ask('')).total).toBe(1)
    must(one.shelf.save([plain('b')], how))
    expect(other.shelf.state()).not.toBe(before)
    expect(other.shelf.search(ask('')).parts.map((p) => p.id)).toEqual(['a', 'b'])
    must(one.shelf.remove('a'))
    expect(other.shelf.search(ask('a')).parts.map((p) => p.id)).toEqual(['b'])
  })

  it('works in a copy that was packed together', () => {
    const where = folder()
    const db = opened(where)
    must(
      db.shelf.save(
        ['a', 'b', 'c'].map((id) => plain(id)),
        how,
      ),
    )
    must(db.shelf.remove('b'))
    const elsewhere = folder()
    raw(db.path).prepare('VACUUM INTO ?').run(join(elsewhere, 'steerwright.sqlite'))
    const copy = opened(elsewhere)
    expect(copy.shelf.search(ask('c')).parts.map((p) => p.id)).toEqual(['c'])
    expect(copy.shelf.search(ask('b')).total).toBe(0)
  })
})
