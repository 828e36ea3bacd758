import { describe, expect, it } from 'vitest'
import type { Drawing, Item, Point } from '../../../../src/shared/report/drawing.ts'
import { bumpSteerDrawing } from '../../../../src/shared/report/drawings/bump-steer.ts'
import { frontView } from '../../../../src/shared/report/drawings/front-view.ts'
import { limitsLedgerDrawing } from '../../../../src/shared/report/drawings/limits-ledger.ts'
import { planView } from '../../../../src/shared/report/drawings/plan-view.ts'
import { makeDocument } from '../../../../src/shared/report/index.ts'
import { larch, larchPlan } from '../../planner/linkage/larch.ts'

const p = larchPlan()
const { linkage, limits, bumpSteer } = p
if (!linkage || !limits || !bumpSteer) throw new Error('the demo has no geometry')

const pointsOf = (item: Item): readonly Point[] => {
  switch (item.kind) {
    case 'line':
      return [item.from, item.to]
    case 'polyline':
      return item.points
    case 'circle':
      return [item.centre]
    default:
      return [item.at]
  }
}
const texts = (d: Drawing) => d.items.flatMap((i) => (i.kind === 'text' ? [i.text] : []))

describe('the plan view', () => {
  it.each([-0.1, -0.05, 0, 0.05, 0.1])('at a travel of %d m lies on its sheet, every number finite', (travel) => {
    for (const d of [planView(linkage.geometry, limits, travel, 'inch'), planView(linkage.geometry, limits, travel, 'metric')]) {
      for (const { x, y } of d.items.flatMap(pointsOf)) {
        expect(x).toBeGreaterThanOrEqual(-0.5)
        expect(x).toBeLessThanOrEqual(d.width + 0.5)
        expect(y).toBeGreaterThanOrEqual(-0.5)
        expect(y).toBeLessThanOrEqual(d.height + 0.5)
      }
    }
  })

  it('is to the scale it states: the tie rod is as long on paper as it should be', () => {
    const d = planView(linkage.geometry, limits, 0.06, 'inch')
    const [, over] = /Scale 1:(\d+)/.exec(texts(d).join(' ')) ?? []
    const lengths = d.items.flatMap((i) => {
      if (i.kind !== 'polyline' || i.points.length !== 4) return []
      const [a, b] = i.points as [Point, Point]
      return [Math.hypot(b.x - a.x, b.y - a.y)]
    })
    const wanted = (linkage.geometry.linkage.rod * 1000) / Number(over)
    expect(Math.min(...lengths.map((l) => Math.abs(l - wanted)))).toBeLessThan(1e-9)
  })

  it('says in words what it shows, and lights a limit that is reached', () => {
    const at = (travel: number) => planView(linkage.geometry, limits, travel, 'inch')
    expect(at(0).description).toMatch(/straight ahead.*knuckle stop comes first/)
    expect(at(0.06).description).toMatch(/turned to the left/)
    const lit = (d: Drawing) => d.items.filter((i) => i.kind === 'text' && i.state !== undefined && i.state !== null).length
    expect(lit(at(0.05))).toBe(0)
    expect(lit(at(limits.left.lines[0]?.travel ?? 0))).toBe(1)
    expect(at(0.5).description).toMatch(/does not reach/)
  })

  it('draws an axle of which little is known', () => {
    const little = larchPlan({ file: { geometry: undefined, limits: undefined, survey: undefined } })
    if (!little.linkage) throw new Error('no linkage')
    expect(planView(little.linkage.geometry, null, 0, 'metric').items.length).toBeGreaterThan(10)
  })
})

describe('ledger and bump steer', () => {
  it('name every limit, first to last, and what is not known', () => {
    const d = limitsLedgerDrawing(limits, 'inch')
    for (const word of ['knuckle stop', 'ram', 'steering box', 'left turn', 'right turn']) expect(texts(d)).toContain(word)
    expect(texts(d).filter((t) => t.endsWith('first'))).toHaveLength(2)
    const one = larchPlan({
      file: { limits: [{ id: 's', what: 'knuckle stop', side: 'left', travel: '4 in' }], geometry: undefined, survey: undefined },
    })
    if (!one.limits) throw new Error('no limits')
    expect(texts(limitsLedgerDrawing(one.limits, 'inch'))).toContain('not known')
  })
  it('draw a curve for each steer', () => {
    const d = bumpSteerDrawing(bumpSteer, 'metric')
    expect(d.items.filter((i) => i.kind === 'polyline')).toHaveLength(3)
    expect(d.description).toMatch(/Straight ahead: .* at full droop/)
  })
})

describe('the front view', () => {
  it.each([-0.127, 0, 0.1])('with a rise of %d m lies on its sheet', (rise) => {
    const d = frontView(linkage.geometry, rise, 'inch')
    if (!d) throw new Error('not drawn')
    for (const { x, y } of d.items.flatMap(pointsOf)) {
      expect(x).toBeGreaterThanOrEqual(-0.5)
      expect(x).toBeLessThanOrEqual(d.width + 0.5)
      expect(y).toBeGreaterThanOrEqual(-0.5)
      expect(y).toBeLessThanOrEqual(d.height + 0.5)
    }
    expect(d.description).toContain(rise < 0 ? 'down' : 'up')
  })
  it('is left out where heights are not known', () => {
    expect(frontView({ ...linkage.geometry, suspension: null }, 0, 'inch')).toBeNull()
  })
})

describe('the sheet', () => {
  const document = makeDocument(larch(), p, { units: 'inch', printedOn: '2026-12-01' })
  it('has a section for what stops the wheels and one for alignment, and each number in one section only', () => {
    const ids = document.sections.map((s) => s.id)
    expect(ids.slice(ids.indexOf('survey'), ids.indexOf('torque'))).toEqual([
      'survey',
      'limits',
      'ram',
      'forces',
      'strength',
      'flow',
      'alignment',
    ])
    const listed = document.sections.flatMap((s) => s.blocks.flatMap((b) => (b.kind === 'numbers' ? b.items.map((n) => n.id) : [])))
    expect(new Set(listed).size).toBe(listed.length)
    expect(listed).toContain('limit.margin.left')
  })
})
