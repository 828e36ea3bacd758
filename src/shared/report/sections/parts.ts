import type { PartState, PartsLine, Plan } from '../../planner/plan.ts'
import { column, counted, money, state, strong, text } from '../cells.ts'
import type { Block, DocumentCell, Section, State } from '../document.ts'

const STATES: Readonly<Record<PartState, State>> = { 'to order': 'look', ordered: 'noted', here: 'good', fitted: 'good' }

/** What to buy, what is on its way and what is here, with what it costs. */
export function partsSection({ parts }: Plan): Section {
  if (parts.lines.length === 0) {
    return { id: 'parts', heading: 'Parts list', blocks: [{ kind: 'paragraph', text: 'No parts are listed in this build.' }] }
  }
  const blocks: Block[] = [
    {
      kind: 'table',
      caption: 'Parts list',
      columns: [
        column('State', 1.5),
        column('Qty', 0.6, 'right'),
        column('Part', 3.4),
        column('Supplier', 1.7),
        column('Each', 1.1, 'right'),
        column('Total', 1.1, 'right'),
      ],
      rows: [...parts.lines.map(lineRow), totalRow('All parts', parts.totalMinor), totalRow('Still to order', parts.toOrderMinor)],
    },
  ]
  const notes = [
    ...(parts.currency === null ? [] : [`Prices in ${parts.currency}.`]),
    ...(parts.unpriced > 0
      ? [`${counted(parts.unpriced, 'line')} without a price ${parts.unpriced === 1 ? 'is' : 'are'} not in the totals.`]
      : []),
  ]
  if (notes.length > 0) blocks.push({ kind: 'paragraph', tone: 'quiet', text: notes.join(' ') })
  return { id: 'parts', heading: 'Parts list', blocks }
}

function lineRow(line: PartsLine): DocumentCell[] {
  const known = [line.maker, line.partNumber].filter((v) => v !== null)
  return [
    state(STATES[line.state], line.state),
    text(String(line.quantity)),
    text(line.name, known.join(' · ')),
    text(line.supplier ?? '–'),
    text(line.eachMinor === null ? '–' : money(line.eachMinor, null)),
    text(line.totalMinor === null ? '–' : money(line.totalMinor, null)),
  ]
}

const totalRow = (words: string, minor: number): DocumentCell[] => [
  text(''),
  text(''),
  strong(words),
  text(''),
  text(''),
  strong(money(minor, null)),
]
