import Papa from 'papaparse'
import { checkParts } from '../../../shared/model/check-part.ts'
import type { PartFile } from '../../../shared/model/part.ts'
import { fail, type Issue, issue, ok, type Result } from '../../../shared/result/result.ts'
import { freeId } from '../free-id.ts'
import { fromCell } from './cell.ts'
import { COLUMNS, keyOf, type PartKey } from './columns.ts'
import { readEnds } from './ends.ts'

/** Something wrong with a row; the issue's path is that in the part. */
export interface RowIssue {
  readonly row: number
  readonly issue: Issue
}

export interface ReadTable {
  /** with the row each came from; only those without a fault */
  readonly parts: readonly { readonly row: number; readonly part: PartFile }[]
  readonly issues: readonly RowIssue[]
}

/**
 * Reads a table of parts, one a row, under a row of headings: what {@link writeCsv} writes, and what a spreadsheet makes of it
 * (commas, semicolons or tabs). A row without an id gets one made from its name that neither the table nor `taken` has.
 *
 * @returns parts and faults row by row; issues `csv.no_heading`, `csv.unknown_column`, `csv.column_twice` where the headings
 *   are not understood
 */
export function readCsv(text: string, taken: (id: string) => boolean): Result<ReadTable> {
  const table = text.replace(/^\ufeff/, '')
  // asked of the headings: what papaparse guesses, the line ends and commas of a note can lead astray
  const newline = /\r\n|\n|\r/.exec(table)?.[0] as '\r\n' | '\n' | '\r' | undefined
  const first = newline === undefined ? table : table.slice(0, table.indexOf(newline))
  const delimiter = [',', ';', '\t'].map((sign) => [first.split(sign).length, sign] as const).sort((a, b) => b[0] - a[0])[0]?.[1] ?? ','
  const { data, errors } = Papa.parse<string[]>(table, { delimiter, newline: newline ?? '\n' })
  const [headings = [], ...rows] = data
  const keys = readHeadings(headings)
  if (!keys.ok) return keys

  const issues: RowIssue[] = errors.map((e) => ({ row: (e.row ?? 0) + 1, issue: issue('csv.quotes', [], {}) }))
  const filled = rows.map((cells, i) => ({ row: i + 2, cells })).filter(({ cells }) => cells.some((c) => c.trim() !== ''))
  const values = filled.map(({ row, cells }) => ({ row, value: partOf(keys.value, cells), over: cells.slice(keys.value.length) }))
  const own = new Map<unknown, number>()
  for (const { row, value } of values) {
    if (value.id === undefined) continue
    const before = own.get(value.id)
    if (before !== undefined) issues.push({ row, issue: issue('csv.id_twice', ['id'], { id: String(value.id), before }) })
    else own.set(value.id, row)
  }
  for (const { row, value, over } of values) {
    if (over.some((c) => c.trim() !== '')) issues.push({ row, issue: issue('csv.too_many_cells', [], { more: over.length }) })
    if (value.id === undefined) {
      value.id = freeId(String(value.name ?? ''), 'part', (id) => own.has(id) || taken(id))
      own.set(value.id, row)
    }
  }
  const parts: ReadTable['parts'][number][] = []
  for (const [i, checked] of checkParts(values.map((v) => v.value)).entries()) {
    const { row = 0 } = values[i] ?? {}
    if (checked.ok) parts.push({ row, part: checked.value.file })
    else for (const one of checked.issues) issues.push({ row, issue: one })
  }
  return ok({ parts, issues: issues.sort((a, b) => a.row - b.row) })
}

function readHeadings(headings: readonly string[]): Result<readonly (PartKey | undefined)[]> {
  const found = headings.map((h) => keyOf(fromCell(h) ?? ''))
  if (!found.some((key) => key !== undefined)) return fail(issue('csv.no_heading', [], { columns: Object.values(COLUMNS) }))
  const issues = headings.flatMap((heading, i): Issue[] => {
    const key = found[i]
    // a column without a heading may stand there as long as it is empty; then it counts among the cells too many
    if (key === undefined)
      return heading.trim() === '' ? [] : [issue('csv.unknown_column', [], { heading, columns: Object.values(COLUMNS) })]
    return found.indexOf(key) < i ? [issue('csv.column_twice', [], { heading })] : []
  })
  return issues.length > 0 ? { ok: false, issues } : ok(found)
}

/** Columns in which a space too many means nothing. */
const WORDS: readonly PartKey[] = ['id', 'kind', 'price', 'quantity', 'state', 'expected', 'serves', 'ended', 'line']

/** A row as the plain value that a part's check takes. Without the column of ends it has none. */
function partOf(keys: readonly (PartKey | undefined)[], cells: readonly string[]): Record<string, unknown> {
  const value: Record<string, unknown> = { ends: [] }
  for (const [i, key] of keys.entries()) {
    const text = key === undefined ? undefined : fromCell(cells[i] ?? '')
    if (key === undefined || text === undefined) continue
    const word = WORDS.includes(key) ? text.trim() : text
    value[key] = key === 'ends' ? readEnds(text) : key === 'quantity' && /^\d{1,6}$/.test(word) ? Number(word) : word
  }
  return value
}

/** The column an issue about a part belongs to. */
export function columnOf({ path }: Issue): string {
  const [key, at, ...rest] = path
  const column = key === undefined ? '' : ((COLUMNS as Readonly<Record<string, string>>)[String(key)] ?? String(key))
  return typeof at === 'number' ? [`${column} (no. ${at + 1})`, ...rest].join(', ') : column
}
