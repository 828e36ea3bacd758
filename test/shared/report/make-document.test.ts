import { describe, expect, it } from 'vitest'
import type { BuildFile } from '../../../src/shared/model/build.ts'
import { plan } from '../../../src/shared/planner/index.ts'
import type { Block, Document, DocumentCell } from '../../../src/shared/report/document.ts'
import { findingTexts, makeDocument, numberTexts, summaryText, workingTexts } from '../../../src/shared/report/index.ts'
import { cautionText, shortCaution } from '../../../src/shared/report/text/index.ts'
import type { UnitSystem } from '../../../src/shared/report/units.ts'
import { buildOf, FILE } from './fixture.ts'

const build = buildOf(FILE)
const planned = plan(build)
const documentIn = (units: UnitSystem): Document => makeDocument(build, planned, { units, printedOn: '2026-03-02' })
const document = documentIn('inch')

const blocks = (id: string, of = document): readonly Block[] => of.sections.find((s) => s.id === id)?.blocks ?? []
const rowsOf = (id: string, of = document): (readonly DocumentCell[])[] => blocks(id, of).flatMap((b) => (b.kind === 'table' ? b.rows : []))
const words = (cell: DocumentCell | undefined): string =>
  cell?.kind === 'text'
    ? [cell.text, cell.second].filter((w) => w).join(' | ')
    : cell?.kind === 'state'
      ? `${cell.state}: ${cell.text}`
      : (cell?.kind ?? '')

const EMPTY: BuildFile = {
  format: 'steerwright build',
  version: 1,
  build: { id: 'b', name: 'first thoughts', revision: 1, units: 'metric' },
  vehicle: { id: 'v', name: 'Larch' },
  parts: [],
  joints: [],
}

describe('makeDocument', () => {
  it('has its sections in the order in which the work asks for them', () => {
    expect(document.sections.map((s) => s.id)).toEqual([
      'summary',
      'stops',
      'look',
      'parts',
      'fit',
      'survey',
      'limits',
      'ram',
      'forces',
      'flow',
      'torque',
      'checklist',
      'cautions',
      'workings',
    ])
    expect(document.subject).toBe('Larch · front axle and assist steering · revision 7')
    expect(document.footer).toContain('printed 2026-03-02')
  })

  it('puts each finding into the section of its severity, none twice and none left out', () => {
    const printed = document.sections.flatMap((s) => s.blocks.flatMap((b) => (b.kind === 'findings' ? b.items.map((f) => [s.id, f]) : [])))
    expect(printed).toHaveLength(planned.findings.length)
    for (const [section, finding] of printed) {
      const severity = typeof finding === 'object' ? finding.severity : ''
      expect(section).toBe(severity === 'stops' ? 'stops' : 'look')
    }
    const stops = planned.findings.filter((f) => f.severity === 'stops').length
    expect(words(rowsOf('summary').find((r) => words(r[0]) === 'How it stands')?.[1])).toContain(`stops: ${stops} points stop the build`)
  })

  it('lists parts with what they cost: 180 + 42.50 + 310 + 2 × 28 + 9.90, of which hoses and oil are to order', () => {
    const rows = rowsOf('parts').map((r) => r.map(words))
    expect(rows).toContainEqual(['look: to order', '2', 'Ram hose', '–', '28.00', '56.00'])
    expect(rows).toContainEqual(['good: here', '1', 'Rod end, left | Brackwater Forge · BF-7818', '–', '42.50', '42.50'])
    expect(rows.at(-2)).toEqual(['', '', 'All parts', '', '', '598.40'])
    expect(rows.at(-1)).toEqual(['', '', 'Still to order', '', '', '65.90'])
    expect(blocks('parts').at(-1)).toMatchObject({ text: 'Prices in EUR. 4 lines without a price are not in the totals.' })
  })

  it('shows every joint with both ends as they were typed', () => {
    const rows = rowsOf('fit').map((r) => r.map(words))
    expect(rows).toHaveLength(FILE.joints.length)
    expect(rows.map((r) => r[0])).toEqual(['1', '2 Tie rod, right end', '3', '4'])
    expect(rows[1]?.slice(1, 3)).toEqual(['Tie-rod tube, right | 7/8-18 female', 'Rod end, right, shank | 7/8-14 male'])
    expect(rows.map((r) => r[3])).toEqual([
      'good: fits',
      'stops: does not fit',
      'stops: goes together and is wrong',
      'unknown: not known yet',
    ])
    expect(rows[3]?.[4]).toContain('Measure: ')
  })

  it('gives the survey back as tape fractions that add up, with what it rests on', () => {
    // means by hand: left 7 31/32, centre 12 1/64, right 16 1/8 in
    const numbers = blocks('survey').flatMap((b) => (b.kind === 'numbers' ? b.items : []))
    const value = (id: string) => numbers.find((n) => n.id === id)?.value
    expect([value('survey.left'), value('survey.right'), value('survey.total')]).toEqual(['4 3/64 in', '4 7/64 in', '8 5/32 in'])
    expect(numbers.map((n) => n.id)).not.toContain('survey.total.u')
    expect(rowsOf('survey').map((r) => words(r[1]))).toEqual(FILE.survey?.readings.map((r) => r.at))
    expect(blocks('survey').filter((b) => b.kind === 'figure')).toHaveLength(1)
  })

  it('prints the torque as its source has it, with boxes to fill in and what was done before', () => {
    const [nut, clamp] = rowsOf('torque').map((r) => r.map(words))
    expect(nut).toEqual([
      'Castle nut, left stud | Last: 86 lbf·ft on 2026-02-28, within tolerance. Check again after 100 miles.',
      '85 lbf·ft',
      '± 5 lbf·ft',
      "maker's value | sheet with the rod end",
      'box',
      'box',
      'box',
      'tick',
    ])
    expect(clamp?.slice(0, 3)).toEqual(['Clamp bolt', 'not known', '–'])
    const metric = rowsOf('torque', documentIn('metric')).map((r) => r.map(words))
    expect(metric[0]?.[1]).toBe('85 lbf·ft | = 115 N·m')
  })

  it('numbers its steps and keeps cautions beside them', () => {
    const items = blocks('checklist').flatMap((b) => (b.kind === 'checklist' ? b.items : []))
    expect(items.map((i) => i.number)).toEqual(planned.steps.map((_, i) => String(i + 1)))
    expect(items.some((i) => i.cautions.some((c) => c.includes('stands')))).toBe(true)
    const all = blocks('cautions').flatMap((b) => (b.kind === 'list' ? b.items : []))
    expect(new Set(all).size).toBe(all.length)
    // beside a step a caution is said in one breath; the whole of it stands once in the list
    for (const code of planned.steps.flatMap((step) => step.cautions)) expect(all).toContain(cautionText(code))
    expect(items.flatMap((i) => i.cautions)).toEqual(planned.steps.flatMap((step) => step.cautions.map(shortCaution)))
  })

  it('says the same to screen, paper and terminal in the other units', () => {
    const metric = documentIn('metric')
    const numbers = blocks('ram', metric).flatMap((b) => (b.kind === 'numbers' ? b.items : []))
    // 1500 psi × π·(1.75 in)²/4 = 3608 lbf = 16.05 kN
    expect(numbers.find((n) => n.id === 'ram.push')).toMatchObject({ value: '16.05 kN', second: '3608 lbf' })
  })

  it('is plain data: the same after JSON', () => {
    expect(JSON.parse(JSON.stringify(document))).toEqual(document)
  })

  it('stands a build of which nothing is known but its name', () => {
    const bare = buildOf(EMPTY)
    const empty = makeDocument(bare, plan(bare), { units: 'metric', printedOn: '2026-03-02' })
    expect(empty.sections.map((s) => s.id)).toEqual(
      expect.arrayContaining(['summary', 'stops', 'parts', 'fit', 'survey', 'torque', 'cautions']),
    )
    expect(summaryText(empty)).toContain('No parts are listed in this build.')
  })
})

describe('texts of numbers and workings', () => {
  const workings = workingTexts(build, planned, 'inch')
  const numbers = numberTexts(build, planned, 'inch')

  it('gives every number a name, a working and a source', () => {
    expect(workings.map((w) => w.id)).toEqual(planned.numbers.map((n) => n.id))
    for (const n of numbers) expect(n.label).not.toBe(n.id)
    for (const w of workings) {
      expect(w.source).not.toBe('')
      expect(w.equation, w.id).toContain('=')
      expect(w.inputs.length).toBeGreaterThan(0)
    }
  })

  it('opens only numbers that there are', () => {
    const ids = new Set(numbers.map((n) => n.id))
    for (const w of workings) for (const i of w.inputs) if (i.opens !== null) expect(ids).toContain(i.opens)
    for (const f of findingTexts(build, planned, 'inch')) for (const id of f.numbers) expect(ids).toContain(id)
  })

  it('writes the working of the bore as a hand calculation', () => {
    const area = workings.find((w) => w.id === 'ram.cap-area')
    expect(area).toMatchObject({ equation: 'A = π·D² / 4', withValues: 'A = π·(1.75 in)² / 4', result: 'A = 2.405 in²' })
    expect(area?.inputs[0]?.from).toBe('typed: 1 3/4 in (Assist ram › bore)')
  })

  it('adds a sum in one unit, each term with its origin', () => {
    const held = workings.find((w) => w.id === 'fluid.held')
    // 19.24 + two hoses of 4.418 in³ + 0.4 L = 0.333 + 0.153 + 0.423 US qt
    expect(held).toMatchObject({
      equation: 'S = s₁ + s₂ + s₃',
      withValues: 'S = 0.333 US qt + 0.153 US qt + 0.423 US qt',
      result: 'S = 0.909 US qt',
    })
    expect(held?.inputs.map((i) => i.opens)).toEqual(['ram.content', 'fluid.several.hose', null])
  })

  it('names the program’s own choices in words', () => {
    const from = workings.flatMap((w) => w.inputs.map((i) => i.from)).filter((f) => f.startsWith('chosen: '))
    expect(from.length).toBeGreaterThan(0)
    for (const f of from) expect(f).toMatch(/[,;(]/)
  })

  it('refuses a number whose formula does not exist: a slip of the program, not of the user', () => {
    const [first] = planned.numbers
    if (!first) throw new Error('the fixture has numbers')
    expect(() => workingTexts(build, { ...planned, numbers: [{ ...first, card: 'no.such' }] }, 'inch')).toThrow('no.such')
  })
})

describe('summaryText of a build', () => {
  it('keeps to 100 characters a line', () => {
    for (const line of summaryText(document).split('\n')) expect(line.length).toBeLessThanOrEqual(100)
  })
})
