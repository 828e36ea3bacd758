import Papa from 'papaparse'
import type { PartFile } from '../../../shared/model/part.ts'
import { toCell } from './cell.ts'
import { ALWAYS, COLUMNS, KEYS, type PartKey } from './columns.ts'
import { writeEnds } from './ends.ts'

/** Parts as a table, one a row, for a spreadsheet and for {@link readCsv}: UTF-8 with its mark, commas, every filled cell in quotes. */
export function writeCsv(parts: readonly PartFile[]): string {
  const used = new Set<string>(parts.flatMap((part) => Object.keys(part)))
  const keys = KEYS.filter((key) => ALWAYS.includes(key) || used.has(key))
  const rows = parts.map((part) => keys.map((key) => toCell(textOf(part, key))))
  return `\ufeff${Papa.unparse([keys.map((key) => COLUMNS[key]), ...rows], { quotes: (value) => value !== '', newline: '\r\n' })}\r\n`
}

function textOf(part: PartFile, key: PartKey): string | undefined {
  if (key === 'ends') return part.ends.length === 0 ? undefined : writeEnds(part.ends)
  const value = (part as Readonly<Record<string, unknown>>)[key]
  return value === undefined ? undefined : String(value)
}
