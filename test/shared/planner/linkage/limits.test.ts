import { describe, expect, it } from 'vitest'
import { normalBelow } from '../../../../src/shared/formulas/linkage/normal.ts'
import { ROOM } from '../../../../src/shared/planner/limits.ts'
import { atTravel } from '../../../../src/shared/planner/linkage/at-travel.ts'
import type { SteeringGeometry } from '../../../../src/shared/planner/linkage/plan-types.ts'
import type { Plan } from '../../../../src/shared/planner/plan.ts'
import { findingTexts } from '../../../../src/shared/report/index.ts'
import { GEOMETRY_MEASURES } from '../../../../src/shared/report/text/linkage.ts'
import { asked, DEMO, found, number, shown } from '../builds.ts'
import { larch, larchPlan } from './larch.ts'

const INCH = 0.0254
const geometryOf = (p: Plan): SteeringGeometry => {
  if (!p.linkage) throw new Error('no linkage')
  return p.linkage.geometry
}
const at = (p: Plan, travel: number) => {
  const s = atTravel(geometryOf(p), travel)
  if (!s.ok) throw new Error(JSON.stringify(s.issues))
  return s.value
}
const side = (p: Plan, which: 'left' | 'right', code: string) => found(p, code).find((f) => f.facts.side === which)
const STOPS = (more: object = {}) => [
  { id: 'stop', what: 'knuckle stop', side: 'both', travel: '4 in', uncertainty: '1/32 in', radius: '5 in', ...more },
]

describe('the chance of the other order', () => {
  it('is the normal distribution, summed anew by Simpson, far into its tail', () => {
    const density = (x: number) => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI)
    for (const z of [-8, -5.5, -3.0001, -2.9999, -1.96, -0.3, 0, 0.3, 2.5, 3.5]) {
      const n = 20_000
      const from = -14
      const h = (z - from) / n
      let sum = density(from) + density(z)
      for (let i = 1; i < n; i++) sum += (i % 2 === 0 ? 2 : 4) * density(from + i * h)
      expect(normalBelow(z) / ((sum * h) / 3)).toBeCloseTo(1, 9)
    }
    expect(normalBelow(40)).toBe(1)
    expect(normalBelow(-40)).toBe(0)
    expect(normalBelow(Number.NaN)).toBeNaN()
  })
  it('follows from the room and both uncertainties', () => {
    const p = larchPlan({ file: { limits: STOPS({ travel: '4 7/16 in' }) } })
    const order = p.limits?.left
    const [first, next] = order?.lines ?? []
    const z = ((next?.travel ?? 0) - (first?.travel ?? 0)) / Math.hypot(first?.u ?? 0, next?.u ?? 0)
    expect(order?.wrongOrder).toBeCloseTo(normalBelow(-z), 12)
    expect(order?.wrongOrder).toBeGreaterThan(0.05)
    expect(side(p, 'left', 'limits.order_uncertain')?.severity).toBe('look')
  })
  it('is not told where an uncertainty is not known', () => {
    const p = larchPlan({ geometry: { ram: { uncertainty: undefined } } })
    expect(p.limits?.left.next).toBe('ram')
    expect(p.limits?.left.wrongOrder).toBeNull()
  })
})

describe('the demo with its geometry', () => {
  const p = larchPlan()
  it('as corrected has the stops first on both sides, with room before the ram, and the box last', () => {
    for (const which of ['left', 'right'] as const) {
      expect(p.limits?.[which].lines.map((l) => l.what)).toEqual(['knuckle stop', 'ram', 'steering box'])
      expect(p.limits?.[which].margin).toBeGreaterThan(ROOM)
      expect(p.limits?.[which].wrongOrder).toBeLessThan(1e-5)
      expect(side(p, which, 'limits.in_order')?.severity).toBe('noted')
    }
    expect(p.findings.filter((f) => f.severity === 'stops' && /^(?:limits|linkage|chain|ram|bump)\./.test(f.code))).toEqual([])
    for (const what of Object.keys(GEOMETRY_MEASURES)) expect(asked(p)).not.toContain(what)
  })
  it('as bought is stopped by its six mistakes and nothing else', () => {
    const bought = larchPlan({}, DEMO.bought)
    const stops = bought.findings.filter((f) => f.severity === 'stops')
    expect(stops).toHaveLength(6)
    expect(stops.every((f) => f.code.startsWith('fit.'))).toBe(true)
  })
  it('brings the box to the travel at which the pitman arm stands at its angle', () => {
    for (const [which, way] of [
      ['left', 1],
      ['right', -1],
    ] as const) {
      const box = p.limits?.[which].lines.find((l) => l.what === 'steering box')
      expect(Math.abs(at(p, way * (box?.travel ?? 0)).pitman?.angle ?? 0)).toBeCloseTo((47 * Math.PI) / 180, 10)
    }
  })
  it('brings the ram to the travel at which it is closed or fully out', () => {
    const spare = (which: 'left' | 'right') => {
      const travel = p.limits?.[which].lines.find((l) => l.what === 'ram')?.travel ?? 0
      const { ram } = at(p, which === 'left' ? travel : -travel)
      return Math.min(ram?.spareClosed ?? 9, ram?.spareOpen ?? 9)
    }
    expect(spare('left')).toBeCloseTo(0, 12)
    expect(spare('right')).toBeCloseTo(0, 12)
  })
  it('writes down at the stops what the picture shows there', () => {
    for (const [which, way] of [
      ['left', 1],
      ['right', -1],
    ] as const) {
      const state = at(p, way * (p.limits?.[which].lines[0]?.travel ?? 0))
      expect(number(p, `linkage.${which}-lock.left`).si).toBeCloseTo(state.left, 10)
      expect(number(p, `linkage.${which}-lock.right`).si).toBeCloseTo(state.right, 10)
      expect(number(p, `ram-space.${which}-lock.length`).si).toBeCloseTo(state.ram?.length ?? 0, 10)
    }
    expect(number(p, 'linkage.hand-wheel-turns').si).toBeCloseTo((3.9 * number(p, 'linkage.pitman-turn').si * 180) / Math.PI / 94, 9)
  })
  it('gives each finding words without holes', () => {
    for (const change of [{}, { ram: { stroke: '7 in', closedLength: '16 in' } }, { box: { sweep: '60°' }, file: { limits: STOPS() } }]) {
      const build = larch(change)
      for (const t of findingTexts(build, larchPlan(change), 'metric')) {
        if (!/^(?:limits|linkage|chain|ram|bump)\./.test(t.code)) continue
        expect(`${t.title} ${t.why} ${t.todo}`).not.toMatch(/undefined|NaN|null/)
        expect(t.title).not.toBe(t.code)
      }
    }
  })
})

describe('a stop of a gap', () => {
  it('comes to the travel at which its wheel stands at the angle of the chord', () => {
    const p = larchPlan({ file: { limits: STOPS({ travel: undefined, gap: '3 in' }) } })
    const angle = 2 * Math.asin(3 / 10)
    const left = p.limits?.left.lines.find((l) => l.id === 'stop')
    const right = p.limits?.right.lines.find((l) => l.id === 'stop')
    expect(at(p, left?.travel ?? 0).left).toBeCloseTo(angle, 10)
    expect(at(p, -(right?.travel ?? 0)).right).toBeCloseTo(-angle, 10)
    // plus and minus 1/32 in on the gap, in proportion on the travel
    expect(left?.u).toBeCloseTo(((INCH / 32 / Math.sqrt(3)) * (left?.travel ?? 0)) / (3 * INCH), 10)
  })
})

describe('the ram first', () => {
  const change = { ram: { stroke: '8 in', closedLength: '15 1/2 in' }, file: { limits: STOPS() } }
  const p = larchPlan(change)
  const finding = side(p, 'left', 'limits.ram_first')
  it('stops the build and says where the stop would have to be, to the numbers', () => {
    expect(finding?.severity).toBe('stops')
    const ram = p.limits?.left.lines[0]
    expect(ram?.what).toBe('ram')
    const setting = shown(finding, 'set the stop at a travel of')
    expect(setting).toBeCloseTo((ram?.travel ?? 0) - ROOM, 12)
    const angle = at(p, setting).left
    expect(shown(finding, 'that is a wheel angle of')).toBeCloseTo(angle, 12)
    expect(shown(finding, 'and a gap at the stop of')).toBeCloseTo(2 * 5 * INCH * Math.sin(angle / 2), 12)
    // a stop that comes earlier makes a wider circle
    expect(shown(finding, 'turning circle then')).toBeGreaterThan(shown(finding, 'turning circle now'))
  })
  it('is put right by that setting', () => {
    const inches = (name: string) => `${shown(finding, name) / INCH} in`
    const right = shown(side(p, 'right', 'limits.ram_first'), 'set the stop at a travel of')
    const travel = `${Math.min(shown(finding, 'set the stop at a travel of'), Number.isFinite(right) ? right : 9) / INCH} in`
    const set = larchPlan({ ...change, file: { limits: STOPS({ travel }) } })
    expect(found(set, 'limits.ram_first')).toEqual([])
    expect(inches('set the stop at a travel of')).toMatch(/in$/)
  })
  it('leaves equal room once the clamp is moved as it says', () => {
    const long = { ...change, ram: { stroke: '9 in', closedLength: '15 3/4 in' } }
    const before = larchPlan(long)
    const f = found(before, 'ram.clamp_off_best')[0]
    const shift = shown(f, 'to move') * (f?.facts.way === 'right' ? 1 : -1)
    const after = larchPlan({ ...long, geometry: { ram: { rodAlong: `${27.1875 + shift / INCH} in` } } })
    const closed = number(after, 'ram-space.spare-closed').si
    expect(closed).toBeCloseTo(number(after, 'ram-space.spare-open').si, 7)
    expect(closed).toBeCloseTo(shown(f, 'room a side then'), 7)
    expect(found(after, 'ram.clamp_off_best')).toEqual([])
  })
  it('chosen by the user is marked, and does not stop the build', () => {
    const chosen = larchPlan({ ...change, geometry: { ram: { endsTravel: true } } })
    expect(found(chosen, 'limits.ram_first')).toEqual([])
    expect(side(chosen, 'left', 'limits.ram_chosen')?.severity).toBe('look')
    const [text] = findingTexts(larch(change), chosen, 'inch').filter((t) => t.code === 'limits.ram_chosen')
    expect(text?.todo).toMatch(/Back off from full lock/)
  })
})

describe('others first', () => {
  it('the box, of too little sweep', () => {
    const p = larchPlan({ box: { sweep: '60°' }, file: { limits: STOPS() } })
    expect(side(p, 'left', 'limits.box_first')?.severity).toBe('stops')
    const travel = p.limits?.left.lines[0]?.travel ?? 0
    expect(Math.abs(at(p, travel).pitman?.angle ?? 0)).toBeCloseTo((30 * Math.PI) / 180, 10)
  })
  it('the tyre, less the clearance wanted', () => {
    const tyre = { id: 'tyre', what: 'tyre contact', side: 'left', angle: '36°', clearance: '1 in', radius: '16 in' }
    const p = larchPlan({ file: { limits: [...STOPS(), tyre] } })
    expect(side(p, 'left', 'limits.tyre_first')?.severity).toBe('look')
    const travel = p.limits?.left.lines[0]?.travel ?? 0
    expect(at(p, travel).left).toBeCloseTo((36 * Math.PI) / 180 - 2 * Math.asin(1 / 32), 10)
    expect(p.limits?.right.lines.map((l) => l.what)).not.toContain('tyre contact')
  })
  it('nothing solid: a side without a stop', () => {
    const p = larchPlan({ file: { limits: [{ ...STOPS()[0], side: 'left' }], survey: undefined } })
    expect(found(p, 'limits.no_positive_stop').map((f) => f.facts.side)).toEqual(['right'])
  })
  it('sides that differ', () => {
    const limits = [
      { ...STOPS()[0], id: 'l', side: 'left' },
      { ...STOPS()[0], id: 'r', side: 'right', travel: '3 1/2 in' },
    ]
    expect(found(larchPlan({ file: { limits } }), 'limits.sides_unequal')[0]?.facts.more).toBe('left')
    expect(found(larchPlan({ file: { limits: STOPS() } }), 'limits.sides_unequal')).toEqual([])
  })
})

describe('what is missing or cannot be', () => {
  it('asks for the sizes of the linkage in one finding', () => {
    const p = larchPlan({ file: { axle: { id: 'a', name: 'A', armLength: '7 in' } } })
    const [f] = found(p, 'measure').filter((x) => x.facts.what === 'linkage sizes')
    expect(f?.facts.missing).toEqual(['kingpin spacing', 'arm angle', 'tie rod behind or ahead'])
    expect(p.linkage).toBeNull()
    expect(p.limits?.left.lines.map((l) => l.what)).toEqual(['knuckle stop'])
  })
  it('asks for the places of ram and pitman arm', () => {
    const p = larchPlan({ geometry: { ram: { above: undefined }, pitman: { length: undefined } } })
    expect(asked(p)).toEqual(expect.arrayContaining(['ram places', 'pitman and drag link']))
    expect(p.linkage?.geometry.ram).toBeNull()
  })
  it('stops at a tie rod that does not reach, and at a drag link that does not', () => {
    expect(found(larchPlan({ geometry: { tieRod: { length: '70 in' } } }), 'linkage.does_not_close')[0]?.severity).toBe('stops')
    expect(found(larchPlan({ geometry: { dragLink: { length: '20 in' } } }), 'chain.does_not_close')[0]?.severity).toBe('stops')
  })
  it('stops at links that come into line before the stop, and says where', () => {
    const p = larchPlan({ geometry: { pitman: { length: '2 in' } }, box: { sweep: '183°' }, file: { limits: STOPS() } })
    const [f] = found(p, 'linkage.toggle')
    expect(f?.severity).toBe('stops')
    expect(shown(f, 'travel at which they come into line')).toBeLessThan(shown(f, 'travel of the first stop'))
    expect(p.linkage?.curve.pitman?.some((v) => v === null)).toBe(true)
  })
  it('stops at a ram that cannot sit between its pins', () => {
    expect(found(larchPlan({ ram: { closedLength: '22 in' } }), 'ram.does_not_fit')[0]?.facts.too).toBe('long')
    expect(found(larchPlan({ ram: { closedLength: '8 in' } }), 'ram.does_not_fit')[0]?.facts.too).toBe('short')
  })
  it('stops at a body that runs into the tie rod', () => {
    const p = larchPlan({ geometry: { ram: { rodAbove: '1 1/2 in', above: '1/2 in' } } })
    expect(found(p, 'ram.touches_rod')[0]?.severity).toBe('stops')
    expect(p.linkage?.curve.ramClearance?.some((c) => c < 0)).toBe(true)
  })
  it('takes a double-ended ram by its place on the axle', () => {
    const p = larchPlan({ ram: { ended: 'double' }, geometry: { ram: { from: 'middle', along: '-1/4 in' } } })
    const [left, right] = [p.limits?.left, p.limits?.right].map((o) => o?.lines.find((l) => l.what === 'ram')?.travel ?? 0)
    // pin and body differ by 1/16 in or so in the middle, which one side has more and the other less
    expect((left ?? 0) + (right ?? 0)).toBeCloseTo(9 * INCH, 4)
  })
})

describe('the strokes', () => {
  const strokes = larchPlan().strokes ?? []
  it('put the one that serves first, and those that are too short last', () => {
    expect(strokes[0]).toMatchObject({ size: '9 in', verdict: 'chosen' })
    expect(strokes.find((s) => s.size === '8 in')).toMatchObject({ verdict: 'too short' })
    expect(strokes.find((s) => s.size === '10 in')?.closed).toBeCloseTo(16.25 * INCH, 12)
    expect(strokes.at(-1)?.verdict).toBe('too short')
  })
  it('promise room that the plan of that ram then shows', () => {
    const ten = strokes.find((s) => s.size === '10 in')
    const p = larchPlan({
      ram: { stroke: '10 in', closedLength: '16 1/4 in' },
      geometry: { ram: { rodAlong: `${27.1875 + (ten?.shift ?? 0) / INCH} in` } },
    })
    expect(number(p, 'ram-space.spare-closed').si).toBeCloseTo(ten?.margin ?? 0, 6)
    expect(number(p, 'ram-space.spare-open').si).toBeCloseTo(ten?.margin ?? 0, 6)
  })
})
