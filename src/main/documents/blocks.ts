import type {
  Block,
  ChecklistItem,
  DocumentCell,
  FindingText,
  MovedText,
  NumberText,
  TableColumn,
  WorkingText,
} from '../../shared/report/document.ts'
import { BLOCK_WORDS, SEVERITY_WORDS } from '../../shared/report/words.ts'
import { paintDrawing } from './drawing.ts'
import { breakLines, drawLines, lineHeight, writeLines } from './lines.ts'
import { paragraph, together } from './paragraphs.ts'
import { type Piece, pageRoom } from './pieces.ts'
import { sideBar, stateShape } from './shapes.ts'
import { artifact, type Element, element, type Face, MM, QUIET, RULE, rule, type Sheet, SIZE } from './sheet.ts'
import { type TableContent, TICK_BOX_SIDE, table, tickBox } from './table.ts'

const BODY: Face = { font: 'body', size: SIZE.body }
const BOLD: Face = { font: 'bold', size: SIZE.body }
const QUIET_BODY: Face = { font: 'body', size: SIZE.body, colour: QUIET }
const SUBHEADING: Face = { font: 'bold', size: SIZE.subheading }
const STEP: Face = { font: 'body', size: SIZE.checklist }
const STEP_BOLD: Face = { font: 'bold', size: SIZE.checklist }
const INDENT = 16

/** A block of the report as pieces ready to be placed, its structure elements made in reading order. */
export function blockPieces(sheet: Sheet, parent: Element, block: Block): Piece[] {
  switch (block.kind) {
    case 'paragraph':
      return block.tone === 'caution'
        ? cautionPieces(sheet, parent, block.text, sheet.left, sheet.width, BODY)
        : plainPieces(sheet, parent, block)
    case 'list':
      return listPieces(sheet, parent, block.items)
    case 'table':
      return table(sheet, parent, block)
    case 'findings':
      return block.items.flatMap((item) => findingPieces(sheet, parent, item))
    case 'numbers':
      return table(sheet, parent, numbersTable(block.items))
    case 'workings':
      return block.items.flatMap((item) => workingPieces(sheet, parent, item))
    case 'checklist':
      return checklistPieces(sheet, parent, block.items)
    case 'figure':
      return figurePieces(sheet, parent, block)
  }
}

function plainPieces(sheet: Sheet, parent: Element, block: Extract<Block, { kind: 'paragraph' }>): Piece[] {
  return paragraph(sheet, parent, block.text, block.tone === 'quiet' ? QUIET_BODY : BODY, { x: sheet.left, width: sheet.width, gap: 6 })
}

/** A caution: a triangle and a heavy bar beside it; never cut. */
function cautionPieces(sheet: Sheet, parent: Element, text: string, x: number, width: number, face: Face): Piece[] {
  const inner = together(paragraph(sheet, parent, text, face, { x: x + 26, width: width - 26 }))
  const height = Math.max(inner.height, 14)
  return [
    {
      height,
      gap: 5,
      draw: (y) => {
        sideBar(sheet, x, y, height, 3)
        stateShape(sheet, 'look', x + 8, y + 1, 12)
        inner.draw(y)
      },
    },
  ]
}

function listPieces(sheet: Sheet, parent: Element, items: readonly string[]): Piece[] {
  const list = element(sheet, parent, 'L')
  return items.flatMap((item) => {
    const own = element(sheet, list, 'LI')
    const label = element(sheet, own, 'Lbl')
    const pieces = paragraph(sheet, own, item, BODY, { x: sheet.left + INDENT, width: sheet.width - INDENT, gap: 4, type: 'LBody' })
    return pieces.map((p, i) =>
      i > 0
        ? p
        : {
            ...p,
            draw: (y: number) => {
              writeLines(sheet, label, ['•'], BODY, { x: sheet.left + 4, y, width: INDENT })
              p.draw(y)
            },
          },
    )
  })
}

function findingPieces(sheet: Sheet, parent: Element, f: FindingText): Piece[] {
  const [x, width] = [sheet.left + 24, sheet.width - 24]
  const own = element(sheet, parent, 'Sect')
  const word = paragraph(sheet, own, SEVERITY_WORDS[f.severity], { font: 'bold', size: SIZE.body }, { x, width, keep: true })
  const title = paragraph(sheet, own, f.title, SUBHEADING, { x, width, keep: true, type: 'H3' })
  const line = (label: string, text: string, face: Face = BODY) => paragraph(sheet, own, `${label}: ${text}`, face, { x, width, gap: 2 })
  const rest = [
    ...(f.aboutText === '' ? [] : line(BLOCK_WORDS.at, f.aboutText, QUIET_BODY)),
    ...(f.evidence.length === 0 ? [] : line(BLOCK_WORDS.seen, f.evidence.join('; '))),
    ...(f.why === '' ? [] : line(BLOCK_WORDS.why, f.why)),
    ...(f.todo === '' ? [] : line(BLOCK_WORDS.todo, f.todo, BOLD)),
  ]
  return barred(sheet, [...word, ...title, ...rest], f)
}

/** The finding's passage with its shape and a bar whose weight tells how much it matters; cut only where it fills most of a page. */
function barred(sheet: Sheet, pieces: readonly Piece[], { severity }: FindingText): Piece[] {
  const weight = severity === 'stops' ? 4 : severity === 'look' ? 2 : 0.8
  const marked = pieces.map(
    (p, i): Piece => ({
      ...p,
      draw: (y) => {
        sideBar(sheet, sheet.left, y - (i === 0 ? 0 : (p.gap ?? 0)), p.height + (i === 0 ? 0 : (p.gap ?? 0)), weight)
        if (i === 0) stateShape(sheet, severity, sheet.left + 8, y + 1.5, 11)
        p.draw(y)
      },
    }),
  )
  const whole = together(marked, 12)
  return whole.height <= pageRoom(sheet) * 0.5 ? [whole] : marked.map((p, i) => (i === 0 ? { ...p, gap: 12 } : p))
}

/** The column for the uncertainty stands only where some number has one. */
function numbersTable(items: readonly NumberText[]): TableContent {
  const [number, value, uncertainty, other] = BLOCK_WORDS.numberColumns
  const doubt = items.some((n) => n.uncertainty !== null)
  const right = (title: string, weight: number): TableColumn => ({ title, align: 'right', weight })
  const text = (words: string, strong = false): DocumentCell => ({ kind: 'text', text: words, strong })
  return {
    caption: number,
    columns: [
      { title: number, align: 'left', weight: 4 },
      right(value, 1.7),
      ...(doubt ? [right(uncertainty, 1.3)] : []),
      right(other, 1.5),
    ],
    rows: items.map((n) => [text(n.label), text(n.value, true), ...(doubt ? [text(n.uncertainty ?? '')] : []), text(n.second ?? '')]),
  }
}

function workingPieces(sheet: Sheet, parent: Element, w: WorkingText): Piece[] {
  const own = element(sheet, parent, 'Sect')
  const at = { x: sheet.left, width: sheet.width }
  const indented = { x: sheet.left + INDENT, width: sheet.width - INDENT }
  const sum = [
    ...paragraph(sheet, own, w.label, SUBHEADING, { ...at, keep: true, type: 'H3' }),
    ...paragraph(sheet, own, w.title, QUIET_BODY, { ...at, keep: true }),
    ...paragraph(sheet, own, w.equation, BODY, { ...indented, gap: 3, keep: true }),
    ...(w.withValues === w.equation ? [] : paragraph(sheet, own, w.withValues, BODY, { ...indented, gap: 1, keep: true })),
    ...paragraph(sheet, own, w.result, BOLD, { ...indented, gap: 1, keep: true }),
  ]
  const column = (weight: number, align: TableColumn['align'] = 'left'): TableColumn => ({ title: '', align, weight })
  const inputs = table(sheet, own, {
    caption: w.title,
    columns: [column(0.8), column(3), column(1.6, 'right'), column(3.4)],
    rows: w.inputs.map((i) => [i.symbol, i.meaning, i.value, i.from].map((text) => ({ kind: 'text', text }) as const)),
    close: true,
  })
  const moved = w.movedBy === undefined ? [] : movedPieces(sheet, own, w.movedBy)
  const rest = [
    ...paragraph(sheet, own, `${BLOCK_WORDS.source}: ${w.source}`, BODY, { ...at, gap: 4 }),
    ...(w.remark === null ? [] : paragraph(sheet, own, `${BLOCK_WORDS.remark}: ${w.remark}`, QUIET_BODY, { ...at, gap: 2 })),
  ]
  return [together(sum, 14, true), ...(w.inputs.length === 0 ? [] : inputs), ...moved, ...rest]
}

function movedPieces(sheet: Sheet, parent: Element, movedBy: readonly MovedText[]): Piece[] {
  const [input, ...figures] = BLOCK_WORDS.movedColumns
  return table(sheet, parent, {
    caption: BLOCK_WORDS.movedBy,
    columns: [
      { title: `${BLOCK_WORDS.movedBy}: ${input.toLowerCase()}`, align: 'left', weight: 4 },
      ...figures.map((title): TableColumn => ({ title, align: 'right', weight: 1.4 })),
    ],
    rows: movedBy.map((m) => [m.name, m.value, m.greater, m.smaller].map((text) => ({ kind: 'text', text }) as const)),
    close: true,
  })
}

function checklistPieces(sheet: Sheet, parent: Element, items: readonly ChecklistItem[]): Piece[] {
  const list = element(sheet, parent, 'L')
  const textX = sheet.left + TICK_BOX_SIDE + 34
  const width = sheet.width - (textX - sheet.left)
  return items.flatMap((item) => {
    const own = element(sheet, list, 'LI')
    const label = element(sheet, own, 'Lbl')
    const body = element(sheet, own, 'LBody')
    const text = paragraph(sheet, body, item.text, STEP_BOLD, { x: textX, width, keep: true })
    const details = item.details.flatMap((d) => detailPieces(sheet, body, d, textX, width))
    const cautions = item.cautions.flatMap((c) => cautionPieces(sheet, body, c, textX, width, STEP))
    const inner = [...text, ...details, ...cautions]
    const opening: Piece = {
      height: 0,
      keep: true,
      gap: 9,
      draw: (y) => {
        tickBox(sheet, sheet.left, y)
        writeLines(sheet, label, [item.number], STEP_BOLD, { x: sheet.left + TICK_BOX_SIDE, y, width: 26, align: 'right' })
      },
    }
    const least: Piece = { height: Math.max(0, TICK_BOX_SIDE - together(inner).height), draw: () => {} }
    const closing: Piece = { height: 8, draw: (y) => rule(sheet, y + 7.5, 0.4, RULE) }
    const whole = together([opening, ...inner, least, closing], 9)
    return whole.height <= pageRoom(sheet) * 0.5 ? [whole] : [opening, ...inner, least, closing]
  })
}

/** A detail hangs under a dash, so that a list of parts reads as one. */
function detailPieces(sheet: Sheet, parent: Element, text: string, x: number, width: number): Piece[] {
  const pieces = paragraph(sheet, parent, text, STEP, { x: x + INDENT, width: width - INDENT, gap: 3 })
  return pieces.map((p, i) =>
    i > 0
      ? p
      : {
          ...p,
          draw: (y: number) => {
            artifact(sheet, () => drawLines(sheet, ['–'], STEP, { x, y, width: INDENT }))
            p.draw(y)
          },
        },
  )
}

function figurePieces(sheet: Sheet, parent: Element, { drawing, caption }: Extract<Block, { kind: 'figure' }>): Piece[] {
  const own = element(sheet, parent, 'Figure', { alt: drawing.description, title: drawing.title })
  const text = element(sheet, parent, 'Caption')
  const lines = breakLines(sheet, caption, QUIET_BODY, sheet.width)
  const picture = drawing.height * MM
  return [
    {
      height: picture + lines.length * lineHeight(QUIET_BODY) + 4,
      gap: 6,
      draw: (y) => {
        own.add(() => paintDrawing(sheet.doc, drawing, { x: sheet.left, y }))
        writeLines(sheet, text, lines, QUIET_BODY, { x: sheet.left, y: y + picture + 2, width: sheet.width })
      },
    },
  ]
}
