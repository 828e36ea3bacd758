import { describe, expect, it } from 'vitest'
import { STANDARD_RAMS, worthHolding } from '../../../../src/shared/planner/ram-choice/candidates.ts'
import { type RamNeeds, rankRams } from '../../../../src/shared/planner/ram-choice/rank.ts'
import { found, planOf } from '../builds.ts'
import { LARCH, larch, larchPart } from '../larch-forces.ts'

const NEEDS: RamNeeds = {
  relief: 10e6,
  efficiency: 0.9,
  points: [{ demandLeft: 8000, demandRight: 9000, share: 0.98, sign: 1, box: 0 }],
  rockFactor: 1.2,
  way: 0.2,
  room: 0.006,
  dead: 0.16,
  place: null,
  flow: 1.5e-4,
  boxVolume: 1e-4,
  slowest: 6,
  rodWanted: 3.5,
  body: { overStroke: 0.1, overBore: 0.01 },
  tieRod: null,
}

describe('ranking standard rams', () => {
  const ranked = rankRams(STANDARD_RAMS, NEEDS)
  it('puts those that pass first, the smallest before all and marked, and every other says why it lost', () => {
    const passed = ranked.filter((c) => c.lost.length === 0)
    expect(passed.length).toBeGreaterThan(0)
    expect(ranked.indexOf(passed.at(-1) as (typeof ranked)[number])).toBe(passed.length - 1)
    expect(ranked.filter((c) => c.smallest)).toEqual([ranked[0]])
    const bore = (size: string) => Number.parseFloat(size) * (size.endsWith('in') ? 25.4 : 1)
    for (const c of passed) expect(bore(c.bore)).toBeGreaterThanOrEqual(bore(ranked[0]?.bore ?? ''))
  })
  it('loses for the reasons that hold and for no other', () => {
    for (const c of ranked) {
      const margin = Math.min((c.push * 0.98) / 8000, (c.pull * 0.98) / 9000)
      expect(c.margin).toBeCloseTo(margin, 12)
      expect(c.lost.includes('weak')).toBe(margin < 1)
      expect(c.lost.includes('weak in rock')).toBe(margin >= 1 && margin < 1.2)
      expect(c.lost.includes('short stroke')).toBe((c.strokeOver ?? 0) < 0.006)
      expect(c.lost.includes('slow')).toBe((c.time ?? 0) > 6)
      if (c.ended === 'double') expect(c.rodFactor).toBeNull()
      else expect(c.lost.includes('rod buckles')).toBe((c.rodFactor ?? 0) < 3.5)
    }
  })
  it('gives no smallest where nothing is known of the force', () => {
    expect(rankRams(STANDARD_RAMS, { ...NEEDS, points: [] }).some((c) => c.smallest)).toBe(false)
  })
  it('more demand never lets a ram pass that lost', () => {
    const harder = rankRams(STANDARD_RAMS, { ...NEEDS, points: [{ demandLeft: 12000, demandRight: 13000, share: 0.98, sign: 1, box: 0 }] })
    const passes = (list: typeof ranked) =>
      new Set(list.filter((c) => c.lost.length === 0).map((c) => `${c.bore} ${c.rod} ${c.stroke} ${c.ended}`))
    expect([...passes(harder)].every((k) => passes(ranked).has(k))).toBe(true)
  })
  it('holds only strokes that could win, and one that is too short', () => {
    const kept = worthHolding(STANDARD_RAMS, 0.206)
    expect(new Set(kept.map((r) => r.stroke))).toEqual(new Set(['200 mm', '250 mm', '320 mm', '8 in', '9 in', '10 in']))
    expect(worthHolding(STANDARD_RAMS, null)).toBe(STANDARD_RAMS)
    expect(new Set(worthHolding(STANDARD_RAMS, 9).map((r) => r.stroke))).toEqual(new Set(['500 mm', '10 in']))
  })
})

describe('the choice for the demo', () => {
  const plan = planOf(LARCH)
  it('names the smallest that passes and tells of it', () => {
    const [best] = plan.forces.candidates ?? []
    expect(best?.smallest).toBe(true)
    expect(found(plan, 'ram.smallest')[0]?.facts).toMatchObject({ bore: best?.bore, rod: best?.rod, stroke: best?.stroke })
  })
  it('keeps one stroke of each that passes, and losers with their reasons', () => {
    const all = plan.forces.candidates ?? []
    const passed = all.filter((c) => c.lost.length === 0).map((c) => `${c.bore} ${c.rod} ${c.ended}`)
    expect(new Set(passed).size).toBe(passed.length)
    expect(all.some((c) => c.lost.length > 0)).toBe(true)
  })
  it('holds the ram of the build among them, whatever its rank', () => {
    const own = (more: Readonly<Record<string, unknown>>) => planOf(larchPart('ram', more)).forces.candidates?.filter((c) => c.own)
    // a standard ram, typed in other words
    expect(own({ bore: '44.45 mm' })).toMatchObject([{ bore: '1.75 in', rod: '0.75 in', stroke: '9 in', ended: 'single' }])
    // a ram of no standard: its sizes as typed, never the smallest of the standards
    expect(own({ bore: '27 mm', rod: '17 mm' })).toMatchObject([{ bore: '27 mm', rod: '17 mm', smallest: false }])
    expect(own({ bore: '4 in', rod: '1 3/4 in' })).toHaveLength(1)
    expect(own({ bore: undefined })).toEqual([])
  })
  it('lets no bore crowd out the others: each passes once single- and once double-ended, and loses once for each reason', () => {
    const all = plan.forces.candidates ?? []
    const keys = all.filter((c) => !c.own && !c.smallest).map((c) => [c.bore, c.ended, ...c.lost].join(' '))
    expect(new Set(keys).size).toBe(keys.length)
    expect(new Set(all.map((c) => c.bore)).size).toBeGreaterThan(4)
    expect(all.length).toBeLessThanOrEqual(32)
  })
  it('says when none passes', () => {
    const p = planOf(larchPart('pump', { reliefPressure: '60 psi' }))
    expect(found(p, 'ram.none_passes')).toHaveLength(1)
    expect(p.forces.candidates?.some((c) => c.smallest)).toBe(false)
  })
  it('is not made without a relief pressure', () => {
    expect(planOf(larchPart('pump', { reliefPressure: undefined }, larch() as never)).forces.candidates).toBeNull()
  })
})
