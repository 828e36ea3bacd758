import type { Block, ChecklistItem, Document, DocumentCell, FindingText, MovedText, NumberText, State, WorkingText } from './document.ts'
import { fill, padTo, wrap } from './text-columns.ts'
import { BLOCK_WORDS, SEVERITY_WORDS } from './words.ts'

const WIDTH = 100
const GUTTER = 2
const SHAPES: Readonly<Record<State, string>> = { good: '✓', noted: '●', look: '▲', stops: '■', unknown: '?' }

/** The document as plain text for a terminal: no line longer than 100 characters, state by sign and word. */
export function summaryText(document: Document): string {
  const lines = [...wrap(document.title, WIDTH), ...wrap(document.subject, WIDTH), `Printed ${document.printedOn}`]
  for (const section of document.sections) {
    const heading = wrap(section.heading, WIDTH)
    lines.push('', ...heading, '='.repeat(Math.max(...heading.map((l) => l.length))))
    for (const block of section.blocks) lines.push(...blockLines(block), '')
    if (lines.at(-1) === '') lines.pop()
  }
  return `${lines.join('\n')}\n`
}

function blockLines(block: Block): string[] {
  switch (block.kind) {
    case 'paragraph':
      return block.tone === 'caution' ? fill('!  ', block.text, WIDTH) : wrap(block.text, WIDTH)
    case 'list':
      return block.items.flatMap((item) => fill('-  ', item, WIDTH))
    case 'table':
      return tableLines(
        block.columns.map((c) => c.title),
        block.columns.map((c) => c.weight),
        block.columns.map((c) => c.align === 'right'),
        block.rows.map((row) => row.map(cellText)),
      )
    case 'findings':
      return block.items.flatMap((item, i) => (i === 0 ? findingLines(item) : ['', ...findingLines(item)]))
    case 'numbers':
      return numberLines(block.items)
    case 'workings':
      return block.items.flatMap((item, i) => (i === 0 ? workingLines(item) : ['', ...workingLines(item)]))
    case 'checklist':
      return block.items.flatMap(checklistLines)
    case 'figure':
      return wrap(`${block.caption} ${block.drawing.description}`, WIDTH)
  }
}

function cellText(cell: DocumentCell): readonly string[] {
  switch (cell.kind) {
    case 'text':
      return cell.second === undefined ? [cell.text] : [cell.text, cell.second]
    case 'state':
      return [`${SHAPES[cell.state]} ${cell.text}`]
    case 'box':
      return ['______']
    case 'tick':
      return ['[ ]']
  }
}

function tableLines(
  titles: readonly string[],
  weights: readonly number[],
  right: readonly boolean[],
  rows: readonly (readonly (readonly string[])[])[],
): string[] {
  const widths = columnWidths(titles, weights, rows)
  const rowLines = (cells: readonly (readonly string[])[]) => {
    const wrapped = widths.map((w, i) => (cells[i] ?? []).flatMap((t) => wrap(t, w)))
    const height = Math.max(1, ...wrapped.map((w) => w.length))
    return Array.from({ length: height }, (_, line) =>
      widths
        .map((w, i) => padTo(wrapped[i]?.[line] ?? '', w, right[i] ?? false))
        .join(' '.repeat(GUTTER))
        .trimEnd(),
    )
  }
  const head = titles.some((t) => t !== '')
    ? [...rowLines(titles.map((t) => [t])), widths.map((w) => '-'.repeat(w)).join(' '.repeat(GUTTER))]
    : []
  return [...head, ...rows.flatMap(rowLines)]
}

/** Each column as wide as its longest text where that fits the page, else its share by weight. */
function columnWidths(titles: readonly string[], weights: readonly number[], rows: readonly (readonly (readonly string[])[])[]): number[] {
  const room = WIDTH - GUTTER * (titles.length - 1)
  const natural = titles.map((t, i) => Math.max(1, t.length, ...rows.flatMap((r) => (r[i] ?? []).map((s) => s.length))))
  if (natural.reduce((a, b) => a + b, 0) <= room) return natural
  const total = weights.reduce((a, b) => a + b, 0)
  return weights.map((w) => Math.max(3, Math.floor((room * w) / total)))
}

function findingLines(f: FindingText): string[] {
  const sign = SHAPES[f.severity]
  return [
    ...fill(`${sign}  `, `${SEVERITY_WORDS[f.severity]}: ${f.title}`, WIDTH),
    ...(f.aboutText === '' ? [] : fill('   ', `${BLOCK_WORDS.at}: ${f.aboutText}`, WIDTH)),
    ...(f.evidence.length === 0 ? [] : fill('   ', `${BLOCK_WORDS.seen}: ${f.evidence.join('; ')}`, WIDTH)),
    ...fill('   ', `${BLOCK_WORDS.why}: ${f.why}`, WIDTH),
    ...fill('   ', `${BLOCK_WORDS.todo}: ${f.todo}`, WIDTH),
  ]
}

function numberLines(items: readonly NumberText[]): string[] {
  const rows = items.map((n) => [[n.label], [n.uncertainty === null ? n.value : `${n.value} ${n.uncertainty}`], [n.second ?? '']])
  return tableLines(['', '', ''], [5, 3, 2], [false, true, true], rows)
}

function workingLines(w: WorkingText): string[] {
  return [
    ...wrap(`${w.label}: ${w.title}`, WIDTH),
    ...fill('   ', w.equation, WIDTH),
    ...(w.withValues === w.equation ? [] : fill('   ', w.withValues, WIDTH)),
    ...fill('   ', w.result, WIDTH),
    ...movedLines(w),
    ...fill('   ', `${BLOCK_WORDS.source}: ${w.source}`, WIDTH),
  ]
}

function movedLines({ movedBy = [] }: WorkingText): string[] {
  if (movedBy.length === 0) return []
  const [, , more, less] = BLOCK_WORDS.movedColumns
  const line = (m: MovedText) => fill('   -  ', `${m.name} (${m.value}): ${more} ${m.greater}, ${less} ${m.smaller}`, WIDTH)
  return [...fill('   ', `${BLOCK_WORDS.movedBy}:`, WIDTH), ...movedBy.flatMap(line)]
}

function checklistLines(item: ChecklistItem): string[] {
  return [
    ...fill(`${item.number.padStart(3)} [ ] `, item.text, WIDTH),
    ...item.details.flatMap((d) => fill('        - ', d, WIDTH)),
    ...item.cautions.flatMap((c) => fill('        !  ', c, WIDTH)),
  ]
}
