import { fail, issue } from '../../../shared/result/result.ts'
import { TABLES } from '../../../shared/standards/index.ts'
import type { Cell, StandardTable } from '../../../shared/standards/table.ts'
import { readArguments } from '../arguments.ts'
import { EXIT, type Exit } from '../exit.ts'
import { namesLike } from '../names-like.ts'
import { printJson, printLines, printProblems } from '../output.ts'

/** `table [NAME]`: the standards' tables, or one of them with its sources. */
export async function tableCommand(args: readonly string[]): Promise<Exit> {
  const read = readArguments(args, { flags: ['json'], least: 0, most: 1, usage: 'table [NAME] [--json]' })
  if (!read.ok) return printProblems(read)
  const [name] = read.value.plain
  const json = read.value.flag('json')
  if (name === undefined) {
    const listed = TABLES.map((t) => ({ name: t.name, title: t.title, rows: t.rows.length }))
    const width = Math.max(...listed.map((t) => t.name.length)) + 2
    if (json) printJson({ format: 'steerwright tables', version: 1, tables: listed })
    else printLines(listed.map((t) => `${t.name.padEnd(width)}${t.title} (${t.rows} rows)`))
    return EXIT.clean
  }
  const table = TABLES.find((t) => t.name === name)
  if (!table)
    return printProblems(
      fail(
        issue('table.unknown', [], {
          name,
          near: namesLike(
            name,
            TABLES.map((t) => t.name),
          ),
        }),
      ),
    )
  if (json) printJson({ format: 'steerwright table', version: 1, table })
  else print(table)
  return EXIT.clean
}

function print(table: StandardTable): void {
  const cells = table.rows.map((row) => table.columns.map((c) => cellText((row as Record<string, Cell>)[c.key])))
  const heads = table.columns.map((c) => (c.unit === undefined ? c.title : `${c.title}, ${c.unit}`))
  const widths = heads.map((h, i) => Math.max(h.length, ...cells.map((row) => (row[i] as string).length)))
  const line = (row: readonly string[]) =>
    row
      .map((text, i) => text.padEnd(widths[i] as number))
      .join('  ')
      .trimEnd()
  printLines([
    table.title,
    '',
    line(heads),
    widths.map((w) => '-'.repeat(w)).join('  '),
    ...cells.map(line),
    '',
    ...table.sources.map((s) => `source: ${s.cites} (${s.mark}${s.read === undefined ? '' : `; read in ${s.read}`})`),
  ])
}

/** An empty cell is a figure nobody here has seen, not a nought. */
const cellText = (cell: Cell | undefined): string => (cell === null || cell === undefined ? '–' : String(cell))
