import { describe, expect, it } from 'vitest'
import { asked, bare, found, part, planOf } from '../builds.ts'
import { LARCH, larch } from '../larch-forces.ts'

const LBF_FT = 1.3558179483314
const bolts = (more: object) => [{ id: 'b', what: 'Bolts', place: 'other', thread: '1/2-13', grade: '8', finish: 'plain', ...more }]
const boltLine = (more: object) => {
  const p = planOf({ ...bare(), forces: { bolts: bolts(more) } })
  return { p, line: p.forces.tightening.find((t) => t.bolts === 'b') ?? expect.fail('no line') }
}

describe('bolts', () => {
  it('have both conventions side by side, which differ by half for plain ones', () => {
    const { line } = boltLine({})
    expect(line.values.map((v) => ('k' in v.from ? [v.from.convention, v.from.k] : []))).toEqual([
      ['textbook', 0.3],
      ['industry', 0.2],
    ])
    expect((line.values[0]?.low ?? 0) / (line.values[1]?.low ?? 1)).toBeCloseTo(1.5, 12)
    // published: 1/2-13 grade 8, K = 0.2, 75 % of proof: 106 lbf·ft, three figures
    expect((line.values[1]?.low ?? 0) / LBF_FT).toBeCloseTo(106, 0)
  })
  it('have the convention first that the user chose', () => {
    expect(boltLine({ convention: 'industry' }).line.values.map((v) => ('k' in v.from ? v.from.convention : ''))).toEqual([
      'industry',
      'textbook',
    ])
  })
  it('of a metric class follow the published table within its rounding', () => {
    const { line } = boltLine({ thread: 'M12x1.75', grade: '10.9', finish: 'zinc' })
    // SAE J1199, dry zinc: 126 N·m; its K is 0.2
    const textbook = line.values.find((v) => 'k' in v.from && v.from.convention === 'textbook')
    expect(textbook?.low).toBeCloseTo(126, -1)
  })
  it('put the maker first, with the difference to the nearest other', () => {
    const { line, p } = boltLine({ maker: '50 lbf·ft' })
    expect(line.maker).toBeCloseTo(50 * LBF_FT, 9)
    expect(line.difference).toBeCloseTo((line.maker ?? 0) - Math.min(...line.values.map((v) => v.low)), 9)
    expect(found(p, 'tightening.maker_differs')).toHaveLength(1)
  })
  it('without a finish have no value, and it is asked for', () => {
    const { line, p } = boltLine({ finish: undefined })
    expect(line.values).toEqual([])
    expect(asked(p)).toContain('bolt finish')
  })
})

describe('joints', () => {
  const plan = planOf(LARCH)
  it('of O-ring bosses have both published series, and neither is a mean', () => {
    const boss = plan.forces.tightening.find((t) => t.what === 'o-ring boss')
    expect(boss?.values.map((v) => [v.low, v.high])).toEqual([
      [24, 24],
      [43, 53],
    ])
    expect(boss?.joints.length).toBeGreaterThan(1)
  })
  it('of 37° flares, face seals and metric ports have theirs', () => {
    const line = (end: string, other: string) =>
      planOf({
        ...bare({
          parts: [part('adapter', 'a', [`x: ${end}`]), part('adapter', 'b', [`y: ${other}`])],
          joints: [{ id: 'j', a: 'a/x', b: 'b/y' }],
        }),
      }).forces.tightening[0]
    expect(line('-6 37° flare male', '-6 37° flare female')?.values.length).toBe(2)
    expect(line('-6 face seal male', '-6 face seal female')?.values).toEqual([
      { low: 24, high: 27, from: { table: 'face-seal-torques', row: '-6' } },
    ])
    expect(line('M16x1.5 ISO 6149 male', 'M16x1.5 ISO 6149 female')?.values[0]).toMatchObject({ low: 40, high: 44 })
    expect(line('-6 inverted flare male', '-6 inverted flare female')?.values).toEqual([])
  })
  it('with a castle nut go on to the next slot, at most a sixth of a turn, with the maker’s value first', () => {
    const castle = plan.forces.tightening.find((t) => t.kind === 'castle nut')
    expect(castle?.turnOn).toBeCloseTo(Math.PI / 3, 12)
    expect(castle?.maker).toBeGreaterThan(0)
  })
  it('with jam nuts have no published value here, and none is made up', () => {
    const jam = plan.forces.tightening.find((t) => t.kind === 'jam nut')
    expect(jam?.values).toEqual([])
  })
  it('say nothing where there is nothing to tighten', () => {
    expect(planOf(bare()).forces.tightening).toEqual([])
    expect(planOf(larch({ joints: [], torqueSpecs: [], torqueRecords: [], forces: { bolts: [] } })).forces.tightening).toEqual([])
  })
})
