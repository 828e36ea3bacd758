import { describe, expect, it } from 'vitest'
import type { Block, Section } from '../../../../src/shared/report/document.ts'
import { forceCurves } from '../../../../src/shared/report/drawings/curves-force.ts'
import { makeDocument } from '../../../../src/shared/report/index.ts'
import { built, planOf } from '../../planner/builds.ts'
import { LARCH, larch } from '../../planner/larch-forces.ts'

const plan = planOf(LARCH)
const document = makeDocument(built(LARCH), plan, { units: 'inch', printedOn: '2026-12-01' })
const section = (id: string): Section => document.sections.find((s) => s.id === id) ?? expect.fail(id)
const tables = (s: Section) => s.blocks.filter((b): b is Extract<Block, { kind: 'table' }> => b.kind === 'table')
const words = (value: unknown): string[] =>
  typeof value === 'string' ? [value] : typeof value === 'object' && value !== null ? Object.values(value).flatMap(words) : []

describe('the sheet on forces, strength and flow', () => {
  it('says whether it steers: routes, a curve for each turn, speed and rams', () => {
    const forces = section('forces')
    expect(forces.blocks.filter((b) => b.kind === 'figure')).toHaveLength(2)
    expect(tables(forces).map((t) => t.caption)).toEqual([
      'Torque about the kingpins, standing, by the published ways',
      'Speed and heat',
      'The ram of the build, then standard rams, best first',
    ])
    const rams = tables(forces)[2]
    expect(rams?.rows.filter((r) => r[0]?.kind === 'state' && r[0].text === 'smallest that passes')).toHaveLength(1)
    for (const row of rams?.rows ?? []) expect(row[0]).toMatchObject({ kind: 'state' })
    // the build's own ram stands first, by shape, word and heavy letters
    expect(rams?.rows[0]?.slice(0, 2)).toMatchObject([
      { kind: 'state', text: expect.stringMatching(/^in the build: /) },
      { strong: true, text: '1.75 in × 0.75 in × 9 in' },
    ])
    expect(rams?.rows.filter((r) => r[1]?.kind === 'text' && r[1].strong === true)).toHaveLength(2)
  })

  it('lists what holds, the weakest first, and what moves each margin', () => {
    const [holds, moves] = tables(section('strength'))
    const factors = [...plan.forces.strength].map((l) => l.factor).sort((a, b) => a - b)
    expect(holds?.rows).toHaveLength(factors.length)
    expect(Number(words(holds?.rows[0]?.[3]).at(-1))).toBeCloseTo(factors[0] ?? 0, 2)
    expect(moves?.rows.length).toBeGreaterThan(plan.forces.sensitivities.length)
  })

  it('puts every torque beside its sources, the maker first', () => {
    const table = tables(section('torque')).find((t) => t.columns.some((c) => c.title === 'Maker'))
    expect(table?.rows).toHaveLength(plan.forces.tightening.length)
    expect(words(table).join(' ')).toMatch(/9\/16-18 low.*9\/16-18 high/)
    expect(words(table).join(' ')).toMatch(/K = 0\.17, industry/)
  })

  it('has no raw code, no NaN and no undefined in any cell', () => {
    for (const id of ['forces', 'strength', 'flow', 'torque']) {
      for (const text of words(section(id).blocks.filter((b) => b.kind !== 'numbers' && b.kind !== 'figure')))
        expect(text).not.toMatch(/undefined|NaN|\[object/)
    }
  })

  it('gives each number a name of its own and stands it in one section only', () => {
    const listed = document.sections.flatMap((s) => s.blocks.flatMap((b) => (b.kind === 'numbers' ? b.items : [])))
    expect(new Set(listed.map((n) => n.id)).size).toBe(listed.length)
    const names = section('forces').blocks.flatMap((b) => (b.kind === 'numbers' ? b.items.map((n) => n.label) : []))
    expect(new Set(names).size).toBe(names.length)
  })

  it('leaves the sections out where nothing is known', () => {
    const bare = larch({ forces: undefined, parts: [], joints: [], torqueSpecs: [], torqueRecords: [], tasks: [] })
    const sheet = makeDocument(built(bare), planOf(bare), { units: 'metric', printedOn: '2026-12-01' })
    expect(sheet.sections.map((s) => s.id).filter((id) => ['forces', 'strength', 'flow'].includes(id))).toEqual([])
  })
})

describe('the curves', () => {
  const { curve, worst } = plan.forces.demand ?? expect.fail('no demand')
  it.each(['left', 'right'] as const)('of turning %s stay on the sheet, and their words give the figures', (turn) => {
    const drawing = forceCurves(curve ?? expect.fail('no curve'), worst, turn, 'metric')
    for (const item of drawing.items) {
      for (const p of item.kind === 'polyline' ? item.points : item.kind === 'text' ? [item.at] : []) {
        expect(p.x).toBeGreaterThanOrEqual(0)
        expect(p.x).toBeLessThanOrEqual(drawing.width)
        expect(p.y).toBeGreaterThanOrEqual(0)
        expect(p.y).toBeLessThanOrEqual(drawing.height)
      }
    }
    expect(drawing.description).toMatch(new RegExp(`Turning ${turn} is hardest with the tie rod .* asked for, there is `))
  })
  it('draw the demand alone where there is no supply', () => {
    const alone = forceCurves({ ...(curve ?? expect.fail('no curve')), supplyLeft: null }, [], 'left', 'inch')
    expect(alone.items.filter((i) => i.kind === 'polyline')).toHaveLength(1)
  })
})
