import type { Database as Sqlite, Statement } from 'better-sqlite3'
import type { EndFamily } from '../../../shared/model/end/family.ts'
import type { PartFile, PartKind } from '../../../shared/model/part.ts'
import { queryOf } from './words.ts'

export interface ShelfQuery {
  /** words that begin words of the part; empty: all parts */
  readonly query: string
  readonly kinds?: readonly PartKind[] | undefined
  readonly states?: readonly PartFile['state'][] | undefined
  /** parts with an end of one of these */
  readonly families?: readonly EndFamily[] | undefined
  readonly offset: number
  readonly limit: number
  readonly sort: 'name' | 'kind' | 'maker' | 'part number' | 'supplier' | 'price' | 'state' | 'changed'
  readonly descending?: boolean | undefined
}

/** A part of the shelf as a list shows it. */
export interface FoundPart {
  readonly id: string
  readonly kind: PartKind
  readonly name: string
  readonly maker: string | null
  readonly partNumber: string | null
  readonly supplier: string | null
  readonly price: string | null
  readonly quantity: number | null
  readonly state: PartFile['state']
  readonly ends: { readonly name: string; readonly connection: string }[]
}

/** What is sorted by; what is not there comes last either way round, and equals by name. */
const SORTS: Readonly<Record<ShelfQuery['sort'], string>> = {
  name: 'name COLLATE NOCASE',
  kind: 'kind',
  maker: 'maker COLLATE NOCASE',
  'part number': 'part_number COLLATE NOCASE',
  supplier: 'supplier COLLATE NOCASE',
  price: 'CAST(price AS REAL)',
  state: `CASE state WHEN 'to order' THEN 1 WHEN 'ordered' THEN 2 WHEN 'here' THEN 3 ELSE 4 END`,
  changed: 'changed_at',
}
const CAN_BE_ABSENT: Partial<Record<ShelfQuery['sort'], string>> = {
  maker: 'maker',
  'part number': 'part_number',
  supplier: 'supplier',
  price: 'price',
}

const MATCHED = 1
const KEPT = 2

/**
 * Makes the search of a shelf. What stays the same from key to key is kept until `state` says that the shelf has changed: the
 * order of all numbers, and which of them the filters keep. A key then costs one look into the index of words and one walk
 * along the order.
 */
export function makeSearch(sqlite: Sqlite, state: () => string) {
  const matching = sqlite.prepare<[string], number>('SELECT rowid FROM shelf_words WHERE shelf_words MATCH ?').pluck()
  const rows = sqlite.prepare<[string], Omit<FoundPart, 'ends'> & { number: number }>(
    `SELECT number, id, kind, name, maker, part_number AS partNumber, supplier, price, quantity, state FROM shelf_part
     WHERE number IN (SELECT value FROM json_each(?))`,
  )
  const ends = sqlite.prepare<[string], { part: number; name: string; connection: string }>(
    'SELECT part, name, connection FROM shelf_part_end WHERE part IN (SELECT value FROM json_each(?)) ORDER BY part, position',
  )
  let kept = {
    state: '',
    orders: new Map<string, readonly number[]>(),
    filter: { key: '', numbers: undefined as readonly number[] | undefined },
  }

  const order = ({ sort, descending = false }: ShelfQuery): readonly number[] => {
    const key = `${sort} ${descending}`
    const old = kept.orders.get(key)
    if (old) return old
    const absent = CAN_BE_ABSENT[sort]
    const by = [...(absent ? [`${absent} IS NULL`] : []), `${SORTS[sort]} ${descending ? 'DESC' : ''}`]
    if (sort !== 'name') by.push('name COLLATE NOCASE')
    const made = sqlite
      .prepare<[], number>(`SELECT number FROM shelf_part ORDER BY ${by.join(', ')}, number${sort === 'name' && descending ? ' DESC' : ''}`)
      .pluck()
      .all()
    kept.orders.set(key, made)
    return made
  }

  /** numbers that the filters keep; undefined where there are no filters */
  const filtered = ({ kinds, states, families }: ShelfQuery): readonly number[] | undefined => {
    const key = JSON.stringify([kinds, states, families])
    if (kept.filter.key === key) return kept.filter.numbers
    const clauses: string[] = []
    const values: string[] = []
    const oneOf = (column: string, words: readonly string[] | undefined, clause = (inner: string) => inner) => {
      if (!words) return
      clauses.push(clause(`${column} IN (SELECT value FROM json_each(?))`))
      values.push(JSON.stringify(words))
    }
    oneOf('kind', kinds)
    oneOf('state', states)
    oneOf('connection_family', families, (inner) => `number IN (SELECT part FROM shelf_part_end WHERE ${inner})`)
    const found: Statement<string[], number> | undefined =
      clauses.length === 0 ? undefined : sqlite.prepare(`SELECT number FROM shelf_part WHERE ${clauses.join(' AND ')}`)
    kept.filter = { key, numbers: found?.pluck().all(...values) as readonly number[] | undefined }
    return kept.filter.numbers
  }

  const page = (numbers: readonly number[]): readonly FoundPart[] => {
    const asked = JSON.stringify(numbers)
    const found = new Map(rows.all(asked).map(({ number, ...row }) => [number, { ...row, ends: [] as FoundPart['ends'] }]))
    for (const { part, ...end } of ends.all(asked)) found.get(part)?.ends.push(end)
    return numbers.flatMap((n) => found.get(n) ?? [])
  }

  const search = (ask: ShelfQuery): { readonly total: number; readonly parts: readonly FoundPart[] } => {
    const now = state()
    if (kept.state !== now) kept = { state: now, orders: new Map(), filter: { key: '', numbers: undefined } }
    const query = queryOf(ask.query)
    const all = order(ask)
    const numbers = filtered(ask)
    if (query === undefined && numbers === undefined)
      return { total: all.length, parts: page(all.slice(ask.offset, ask.offset + ask.limit)) }

    const marks = new Uint8Array(all.reduce((most, n) => Math.max(most, n), 0) + 1)
    for (const n of query === undefined ? all : matching.all(query)) marks[n] = MATCHED
    for (const n of numbers ?? all) marks[n] = (marks[n] ?? 0) | KEPT
    let total = 0
    const wanted: number[] = []
    for (const n of all) {
      if (marks[n] !== (MATCHED | KEPT)) continue
      if (total >= ask.offset && wanted.length < ask.limit) wanted.push(n)
      total++
    }
    return { total, parts: page(wanted) }
  }

  // one transaction, so that no other writer comes between the count and the page
  return (ask: ShelfQuery) => sqlite.transaction(() => search(ask)).deferred()
}
