import type { Block, Document, DocumentCell, FindingText, Section } from '../../../src/shared/report/document.ts'
import { surveyDrawing } from '../../../src/shared/report/survey-drawing.ts'

const text = (value: string, second?: string): DocumentCell =>
  second === undefined ? { kind: 'text', text: value } : { kind: 'text', text: value, second }

const finding = (severity: FindingText['severity'], title: string): FindingText => ({
  code: 'fit.taper.ratio',
  severity,
  title,
  why: 'A stud that touches its arm at one end only works loose, and the hole wears to an oval before anybody hears it.',
  todo: 'Ream the arm to 1:8 with a proper reamer, or fit a stud with the 1:10 taper the arm was made for.',
  evidence: ['stud taper 1:8 (1.5 in/ft)', 'arm taper 1:10 (1.2 in/ft)'],
  about: ['joints', 3],
  aboutText: 'drag link end in the knuckle arm',
  numbers: [],
})

const partsTable = (count: number): Block => ({
  kind: 'table',
  caption: 'Parts list',
  columns: [
    { title: 'State', align: 'left', weight: 1.5 },
    { title: 'Qty', align: 'right', weight: 0.6 },
    { title: 'Part', align: 'left', weight: 3.4 },
    { title: 'Supplier', align: 'left', weight: 1.7 },
    { title: 'Each, EUR', align: 'right', weight: 1.1 },
  ],
  rows: Array.from({ length: count }, (_, i) => [
    i % 4 === 0 ? { kind: 'state', state: 'look', text: 'to order' } : { kind: 'state', state: 'good', text: 'here' },
    text('1'),
    text(`Rod end number ${i + 1}`, 'Brackwater Forge · BF-7818'),
    text('Quarry Lane Spares'),
    text('42.50'),
  ]),
})

const torque: Block = {
  kind: 'table',
  caption: 'Torque values, with boxes to fill in',
  columns: [
    { title: 'What', align: 'left', weight: 2.6 },
    { title: 'Value', align: 'right', weight: 1.3 },
    { title: 'Tolerance', align: 'right', weight: 1.35 },
    { title: 'Source', align: 'left', weight: 1.7 },
    { title: 'Applied', align: 'left', weight: 1.2 },
    { title: 'Initials', align: 'left', weight: 1 },
    { title: 'Date', align: 'left', weight: 1.2 },
    { title: 'Done', align: 'centre', weight: 0.8 },
  ],
  rows: Array.from({ length: 6 }, (_, i) => [
    text(`Castle nut ${i + 1}, tie rod at left knuckle`, 'Check again after 100 miles.'),
    text('85 lbf·ft'),
    text('± 5 lbf·ft'),
    text("maker's value", 'sheet that came with the rod end'),
    { kind: 'box' },
    { kind: 'box' },
    { kind: 'box' },
    { kind: 'tick' },
  ]),
}

const states: Block = {
  kind: 'table',
  caption: 'Fit of every joint',
  columns: [
    { title: 'One end', align: 'left', weight: 2.2 },
    { title: 'Other end', align: 'left', weight: 2.2 },
    { title: 'Verdict', align: 'left', weight: 1.7 },
    { title: 'Why, and what to do', align: 'left', weight: 3.4 },
  ],
  rows: (
    [
      ['good', 'fits'],
      ['noted', 'fits on a condition'],
      ['look', 'does not fit'],
      ['stops', 'goes together and is wrong'],
      ['unknown', 'not known'],
    ] as const
  ).map(([state, word]) => [
    text('Tie-rod tube, left', '7/8-18 LH female'),
    text('Rod end, shank', '7/8-14 male'),
    { kind: 'state', state, text: word },
    text('The pitches differ: 18 threads an inch against 14.', 'Measure: the pitch with a gauge.'),
  ]),
}

export const SAMPLE_SECTIONS: readonly Section[] = [
  {
    id: 'summary',
    heading: 'At a glance',
    blocks: [
      {
        kind: 'table',
        caption: 'This build',
        columns: [
          { title: '', align: 'left', weight: 1.2 },
          { title: '', align: 'left', weight: 4 },
        ],
        rows: [
          [text('Vehicle'), text('Larch', 'forest-road crew truck')],
          [text('Revision'), text('7', 'printed 2026-03-02, shown in inch units')],
          [text('How it stands'), { kind: 'state', state: 'stops', text: '2 points stop the build, 1 more point to look at' }],
        ],
      },
      { kind: 'paragraph', text: 'Before any work:' },
      {
        kind: 'paragraph',
        tone: 'caution',
        text: 'Stands under the axle, never a jack alone. Nobody under a vehicle that only a jack holds up.',
      },
      {
        kind: 'paragraph',
        tone: 'caution',
        text: 'Hydraulic oil under pressure goes through gloves and skin. Look for leaks with a card, never with a hand.',
      },
    ],
  },
  {
    id: 'stops',
    heading: 'What stops the build',
    blocks: [
      {
        kind: 'findings',
        items: [
          finding('stops', 'Stud 1:8 in an arm reamed 1:10'),
          finding('look', 'Tyre close to the spring'),
          finding('noted', 'Box has sweep in hand'),
        ],
      },
    ],
  },
  {
    id: 'parts',
    heading: 'Parts list',
    blocks: [partsTable(40), { kind: 'paragraph', tone: 'quiet', text: '2 lines without a price are not in the totals.' }],
  },
  { id: 'fit', heading: 'Fit check', blocks: [states] },
  {
    id: 'survey',
    heading: 'Travel survey',
    blocks: [
      {
        kind: 'figure',
        caption: 'Marks on the tie rod, seen from above.',
        drawing: surveyDrawing(
          {
            left: -0.1016,
            right: 0.1064,
            readings: [
              { mark: 'centre', at: 0.0004 },
              { mark: 'centre', at: -0.0004 },
              { mark: 'left', at: -0.102 },
              { mark: 'left', at: -0.101 },
              { mark: 'right', at: 0.1064 },
            ],
          },
          'inch',
        ),
      },
      {
        kind: 'numbers',
        items: [
          { id: 'survey.total', label: 'Travel, lock to lock', value: '8 3/16 in', second: '208.0 mm', uncertainty: '± 0.031 in' },
          { id: 'ram.push', label: 'Push at relief pressure', value: '3608 lbf', second: '16.05 kN', uncertainty: null },
        ],
      },
    ],
  },
  { id: 'torque', heading: 'Torque', blocks: [torque] },
  {
    id: 'checklist',
    heading: 'Install checklist',
    startsPage: true,
    blocks: [
      {
        kind: 'checklist',
        items: Array.from({ length: 14 }, (_, i) => ({
          number: String(i + 1),
          text:
            i % 3 === 0
              ? 'Raise the axle and set it on stands'
              : 'Fit the tie-rod ends to the tube, an equal count of turns on each side, jam nuts loose',
          details: i % 2 === 0 ? ['Rod end left, 7/8-18 left hand', 'Rod end right, 7/8-18 right hand'] : [],
          cautions: i % 3 === 0 ? ['Stands on firm ground. Push the vehicle by hand before going under it.'] : [],
        })),
      },
    ],
  },
  {
    id: 'cautions',
    heading: 'Cautions',
    blocks: [
      { kind: 'list', items: ['Never re-use a cotter pin.', 'Never back a castle nut off to meet a hole: go on to the next slot.'] },
    ],
  },
  {
    id: 'workings',
    heading: 'Workings and sources',
    blocks: [
      {
        kind: 'workings',
        items: Array.from({ length: 5 }, (_, i) => ({
          id: `ram.area.${i}`,
          label: 'Area, cap side',
          title: 'Area of a ram on its cap side',
          equation: 'A = π·D² / 4',
          withValues: 'A = π·(1.75 in)² / 4',
          result: 'A = 2.405 in²',
          source: 'A hydraulics handbook, 3rd edition, page 12 (seen in the publication or a copy of it).',
          remark: i === 0 ? 'Leaves out the friction of the seals.' : null,
          inputs: [{ symbol: 'D', meaning: 'bore', value: '1.75 in', from: 'typed: 1 3/4 in (ram › bore)', opens: null }],
        })),
      },
    ],
  },
]

export const sample = (sections: readonly Section[] = SAMPLE_SECTIONS, more: Partial<Document> = {}): Document => ({
  title: 'Shop sheet: Larch, front axle and assist steering',
  subject: 'Larch · front axle and assist steering · revision 7',
  language: 'en',
  footer: 'Larch · front axle and assist steering · revision 7 · printed 2026-03-02',
  printedOn: '2026-03-02',
  sections,
  ...more,
})

export const longTable = (count: number): Section => ({ id: 'parts', heading: 'Parts list', blocks: [partsTable(count)] })
