import type { DocumentCell, TableColumn } from '../../shared/report/document.ts'
import { breakLines, drawLines, lineHeight, widthOf, writeLines } from './lines.ts'
import { type Piece, pageRoom } from './pieces.ts'
import { stateShape } from './shapes.ts'
import { artifact, type Element, element, type Face, INK, MM, QUIET, RULE, rule, type Sheet, SIZE, TINT } from './sheet.ts'
import { columnWidths } from './table-columns.ts'

const PAD_X = 5
const PAD_Y = 4
const CLOSE_PAD_Y = 1
const CELL: Face = { font: 'table', size: SIZE.body }
const STRONG: Face = { font: 'tableBold', size: SIZE.body }
const SECOND: Face = { font: 'table', size: SIZE.body, colour: QUIET }
const BOX_HEIGHT = 9.5 * MM
const TICK_SIDE = 6.5 * MM
/** a table that takes no more than this share of a page is not broken */
const WHOLE = 0.35
const SHAPE = 9
const SHAPE_ROOM = SHAPE + 5

export interface TableContent {
  readonly caption: string
  readonly columns: readonly TableColumn[]
  readonly rows: readonly (readonly DocumentCell[])[]
  /** rows close together and no rules between them */
  readonly close?: true
}

interface Column extends TableColumn {
  readonly padY: number
  readonly x: number
  readonly width: number
}

/** The text of a cell, broken to lines: each run in its own face. */
interface CellLines {
  readonly runs: readonly { readonly lines: readonly string[]; readonly face: Face }[]
  readonly height: number
}

/**
 * A table as pieces: its head, which is drawn again after each page break, and one piece a row. A row is cut only where
 * it is taller than a page. A table whose titles are all empty has no head: its first column names the rows.
 */
export function table(sheet: Sheet, parent: Element, content: TableContent): Piece[] {
  const columns = layColumns(sheet, content)
  const own = element(sheet, parent, 'Table', { title: content.caption })
  const headed = content.columns.some((c) => c.title !== '')
  const head = headed ? headPieces(sheet, own, columns) : null
  const rows = content.rows.flatMap((row, i) =>
    rowPieces(sheet, own, columns, row, { last: i === content.rows.length - 1, named: !headed && !content.close, ruled: !content.close }),
  )
  const whole = rows.reduce((sum, r) => sum + r.height, head?.first.height ?? 0) <= pageRoom(sheet) * WHOLE
  const kept = rows.map((r, i): Piece => ({ ...r, keep: whole && i < rows.length - 1, ...(i === 0 && !head ? { gap: 4 } : {}) }))
  return head ? [head.first, ...kept.map((r) => ({ ...r, again: head.again }))] : kept
}

function layColumns(sheet: Sheet, { columns, rows, close }: TableContent): Column[] {
  const most = sheet.width * 0.3
  const least = columns.map((c, i) => {
    const words = rows
      .flatMap((row) => cellWords(row[i]))
      .map((w) => widthOf(sheet, w, CELL) + (rows.some((r) => r[i]?.kind === 'state') ? SHAPE_ROOM : 0))
    const titleWords = c.title.split(' ').map((w) => widthOf(sheet, w, STRONG))
    return Math.min(most, Math.max(0, ...words, ...titleWords)) + 2 * PAD_X
  })
  const widths = columnWidths(
    sheet.width,
    columns.map((c) => c.weight),
    least,
  )
  let x = sheet.left
  return columns.map((c, i) => {
    const width = widths[i] as number
    const laid = { ...c, x, width, padY: close ? CLOSE_PAD_Y : PAD_Y }
    x += width
    return laid
  })
}

function cellWords(cell: DocumentCell | undefined): string[] {
  if (cell?.kind === 'state') return cell.text.split(/\s+/)
  if (cell?.kind === 'text') return `${cell.text} ${cell.second ?? ''}`.split(/\s+/)
  return cell?.kind === 'tick' ? ['MMM'] : []
}

function headPieces(sheet: Sheet, own: Element, columns: readonly Column[]): { first: Piece; again: Piece } {
  const lines = columns.map((c) => breakLines(sheet, c.title, STRONG, c.width - 2 * PAD_X))
  const height = Math.max(...lines.map((l) => l.length)) * lineHeight(STRONG) + 2 * PAD_Y
  const row = element(sheet, own, 'TR')
  const heads = columns.map(() => element(sheet, row, 'TH', { scope: 'Column' }))
  const ground = (y: number) =>
    artifact(sheet, (doc) => {
      doc.rect(sheet.left, y, sheet.width, height).fill(TINT)
      doc
        .moveTo(sheet.left, y)
        .lineTo(sheet.left + sheet.width, y)
        .moveTo(sheet.left, y + height)
        .lineTo(sheet.left + sheet.width, y + height)
      doc.lineWidth(0.9).stroke(INK)
    })
  const at = (c: Column, y: number) => ({ x: c.x + PAD_X, y: y + PAD_Y, width: c.width - 2 * PAD_X, align: c.align })
  return {
    first: {
      height,
      gap: 6,
      keep: true,
      draw: (y) => {
        ground(y)
        for (const [i, c] of columns.entries()) writeLines(sheet, heads[i] as Element, lines[i] ?? [], STRONG, at(c, y))
      },
    },
    again: {
      height,
      draw: (y) => {
        ground(y)
        const titles = () => {
          for (const [i, c] of columns.entries()) drawLines(sheet, lines[i] ?? [], STRONG, at(c, y))
        }
        artifact(sheet, titles, 'Pagination')
      },
    },
  }
}

function rowPieces(
  sheet: Sheet,
  own: Element,
  columns: readonly Column[],
  row: readonly DocumentCell[],
  { last, named, ruled }: { last: boolean; named: boolean; ruled: boolean },
): Piece[] {
  const line = element(sheet, own, 'TR')
  const cells = columns.map((c, i) => ({
    column: c,
    cell: row[i] ?? ({ kind: 'text', text: '' } as const),
    lines: cellLines(sheet, row[i], c, named && i === 0),
    own: named && i === 0 ? element(sheet, line, 'TH', { scope: 'Row' }) : element(sheet, line, 'TD'),
  }))
  const height = Math.max(...cells.map((c) => c.lines.height))
  const ends = (y: number) => ruled && rule(sheet, y, last ? 0.9 : 0.5, last ? INK : RULE)
  const parts = Math.ceil(height / (pageRoom(sheet) * 0.6))
  if (parts <= 1) {
    return [
      {
        height,
        draw: (y) => {
          for (const c of cells) drawCell(sheet, c, y, height)
          ends(y + height)
        },
      },
    ]
  }
  const perPart = Math.ceil((pageRoom(sheet) * 0.6) / lineHeight(CELL))
  return Array.from({ length: parts }, (_, part) => {
    const cut = cells.map((c) => ({ ...c, lines: cutLines(c.lines, part * perPart, perPart, c.column.padY) }))
    const own = Math.max(...cut.map((c) => c.lines.height))
    return {
      height: own,
      draw: (y) => {
        for (const c of cut) drawCell(sheet, part === 0 ? c : { ...c, cell: { kind: 'text', text: '' } }, y, own)
        if (part === parts - 1) ends(y + own)
      },
    }
  })
}

function cellLines(sheet: Sheet, cell: DocumentCell | undefined, column: Column, name: boolean): CellLines {
  const width = column.width - 2 * PAD_X
  if (cell?.kind === 'box') return { runs: [], height: BOX_HEIGHT + 2 * column.padY }
  if (cell?.kind === 'tick') return { runs: [], height: TICK_SIDE + 2 * column.padY }
  if (cell?.kind === 'state') return sized([{ lines: breakLines(sheet, cell.text, STRONG, width - SHAPE_ROOM), face: STRONG }], column.padY)
  if (cell?.kind !== 'text') return sized([], column.padY)
  const face = cell.strong || name ? STRONG : CELL
  const runs = [{ lines: breakLines(sheet, cell.text, face, width), face }]
  if (cell.second) runs.push({ lines: breakLines(sheet, cell.second, SECOND, width), face: SECOND })
  return sized(runs, column.padY)
}

const sized = (runs: CellLines['runs'], padY: number): CellLines => ({
  runs,
  height: runs.reduce((sum, r) => sum + r.lines.length * lineHeight(r.face), 0) + 2 * padY,
})

function cutLines({ runs }: CellLines, from: number, count: number, padY: number): CellLines {
  let seen = 0
  return sized(
    runs.map((r) => {
      const start = Math.max(0, from - seen)
      const end = Math.max(0, from + count - seen)
      seen += r.lines.length
      return { ...r, lines: r.lines.slice(start, end) }
    }),
    padY,
  )
}

function drawCell(
  sheet: Sheet,
  { column: c, cell, lines, own }: { column: Column; cell: DocumentCell; lines: CellLines; own: Element },
  y: number,
  height: number,
): void {
  if (cell.kind === 'box') {
    artifact(sheet, (doc) =>
      doc
        .rect(c.x + 2, y + PAD_Y, c.width - 4, BOX_HEIGHT)
        .lineWidth(0.8)
        .stroke(INK),
    )
    return
  }
  if (cell.kind === 'tick') {
    tickBox(sheet, c.x + (c.width - TICK_SIDE) / 2, y + PAD_Y + (Math.min(height - 2 * PAD_Y, BOX_HEIGHT) - TICK_SIDE) / 2)
    return
  }
  const indent = cell.kind === 'state' ? SHAPE_ROOM : 0
  if (cell.kind === 'state') stateShape(sheet, cell.state, c.x + PAD_X, y + PAD_Y + 2.5, SHAPE)
  let at = y + c.padY
  for (const { lines: text, face } of lines.runs) {
    writeLines(sheet, own, text, face, { x: c.x + PAD_X + indent, y: at, width: c.width - 2 * PAD_X - indent, align: c.align })
    at += text.length * lineHeight(face)
  }
}

/** An empty square to be ticked with a thick pencil. */
export function tickBox(sheet: Sheet, x: number, y: number): void {
  artifact(sheet, (doc) => doc.rect(x, y, TICK_SIDE, TICK_SIDE).lineWidth(1.1).stroke(INK))
}

export const TICK_BOX_SIDE = TICK_SIDE
