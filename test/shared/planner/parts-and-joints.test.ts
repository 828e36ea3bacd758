import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { BuildFile } from '../../../src/shared/model/build.ts'
import { bare, DEMO, found, part, planOf } from './builds.ts'

describe('the parts list', () => {
  const list = (...parts: BuildFile['parts']) => planOf(bare({ parts })).parts

  it('the demo, added up by hand', () => {
    const { lines, totalMinor, toOrderMinor, unpriced, currency } = planOf(DEMO.bought).parts
    const byHand = DEMO.bought.parts.reduce((sum, p) => sum + Math.round(Number(p.price ?? 0) * 100) * (p.quantity ?? 1), 0)
    expect(totalMinor).toBe(byHand)
    expect(toOrderMinor).toBe(4 * 1150)
    expect(currency).toBe('USD')
    expect(unpriced).toBe(DEMO.bought.parts.filter((p) => p.price === undefined).length)
    expect(lines.flatMap((l) => l.parts).sort()).toEqual(DEMO.bought.parts.map((p) => p.id).sort())
  })

  it('adds in hundredths, where doubles would drift', () => {
    const dimes = Array.from({ length: 10 }, (_, i) => part('other', `p${i}`, [], { price: '0.1' }))
    expect(list(...dimes).totalMinor).toBe(100)
    expect(list(part('other', 'a', [], { price: '19.99', quantity: 3 })).totalMinor).toBe(5997)
    expect(list(part('other', 'a', [], { price: '1.1' })).lines[0]?.eachMinor).toBe(110)
    expect(list(part('other', 'a', [], { price: '7' })).lines[0]?.eachMinor).toBe(700)
  })

  it('makes one line of the same thing, and only of the same thing', () => {
    const nut = (id: string, more: object = {}) => ({ ...part('fastener', id, [], { price: '2.50', supplier: 'S', ...more }), name: 'Nut' })
    const { lines } = list(
      nut('a'),
      nut('b', { quantity: 3 }),
      nut('c', { state: 'to order' }),
      nut('d', { price: '2.60' }),
      nut('e', { supplier: 'T' }),
    )
    expect(lines.map((l) => [l.parts.join(), l.quantity, l.totalMinor])).toEqual([
      ['a,b', 4, 1000],
      ['c', 1, 250],
      ['d', 1, 260],
      ['e', 1, 250],
    ])
  })

  it('leaves a price that nobody knows unknown', () => {
    const { lines, totalMinor, unpriced } = list(part('other', 'a'), part('other', 'b', [], { price: '0' }))
    expect(lines.map((l) => l.totalMinor)).toEqual([null, 0])
    expect({ totalMinor, unpriced }).toEqual({ totalMinor: 0, unpriced: 1 })
  })

  it('holds every part of any list once, and sums to the same in any order', () => {
    const some = fc.uniqueArray(
      fc.record({
        id: fc.stringMatching(/^[a-z]{1,6}$/),
        price: fc.option(fc.integer({ min: 0, max: 999_99 }).map((c) => `${Math.floor(c / 100)}.${String(c % 100).padStart(2, '0')}`)),
        quantity: fc.integer({ min: 1, max: 20 }),
        name: fc.constantFrom('Nut', 'Bolt'),
      }),
      { selector: (p) => p.id, maxLength: 20 },
    )
    fc.assert(
      fc.property(some, (all) => {
        const parts = all.map(({ id, price, quantity, name }) => ({
          ...part('other', id, [], { quantity, ...(price === null ? {} : { price }) }),
          name,
        }))
        const one = list(...parts)
        expect(one.lines.flatMap((l) => l.parts).sort()).toEqual(all.map((p) => p.id).sort())
        expect(one.lines.reduce((n, l) => n + l.quantity, 0)).toBe(all.reduce((n, p) => n + p.quantity, 0))
        expect(one.totalMinor).toBe(all.reduce((n, p) => n + Math.round(Number(p.price ?? 0) * 100) * p.quantity, 0))
        expect(list(...parts.toReversed()).totalMinor).toBe(one.totalMinor)
      }),
      { numRuns: 100 },
    )
  })
})

describe('every end of every part', () => {
  const box = part('steering box', 'box', ['a: -6 O-ring boss female', 'b: -6 O-ring boss female'])
  const adapter = (id: string, more: Readonly<Record<string, unknown>> = {}) =>
    part('adapter', id, ['boss: -6 O-ring boss male', 'flare: -6 37° flare male'], more)
  const joint = (id: string, a: string, b: string) => ({ id, a, b })

  it('is joined, left open on purpose, or reported', () => {
    const planned = planOf(bare({ parts: [box, adapter('x')], joints: [joint('j', 'box/a', 'x/boss')] }))
    expect(found(planned, 'end.not_joined').map((f) => [f.facts.id, f.facts.end, f.severity])).toEqual([
      ['box', 'b', 'look'],
      ['x', 'flare', 'look'],
    ])
    expect(found(planned, 'end.not_joined')[0]?.about).toEqual(['parts', 0, 'ends', 1])
  })

  it('is not joined twice', () => {
    const planned = planOf(
      bare({ parts: [box, adapter('x'), adapter('y')], joints: [joint('j', 'box/a', 'x/boss'), joint('k', 'y/boss', 'box/a')] }),
    )
    expect(found(planned, 'end.joined_twice')).toMatchObject([
      { severity: 'stops', facts: { id: 'box', end: 'a', times: 2 }, about: ['parts', 0, 'ends', 0] },
    ])
  })

  it('is joined as often as the build has the part, no oftener', () => {
    const joints = [joint('j', 'box/a', 'x/boss'), joint('k', 'box/b', 'x/boss')]
    const twice = (quantity: number) => found(planOf(bare({ parts: [box, adapter('x', { quantity })], joints })), 'end.joined_twice').length
    expect(twice(1)).toBe(1)
    expect(twice(2)).toBe(0)
  })

  it('that is left open is not joined as well', () => {
    const open = structuredClone(box)
    Object.assign(open.ends[0] as object, { leftOpen: true })
    Object.assign(open.ends[1] as object, { leftOpen: true })
    const planned = planOf(bare({ parts: [open, adapter('x')], joints: [joint('j', 'box/a', 'x/boss')] }))
    expect(found(planned, 'end.joined_though_open').map((f) => f.facts.end)).toEqual(['a'])
    expect(found(planned, 'end.not_joined').map((f) => f.facts.id)).toEqual(['x'])
  })
})

describe('conditions', () => {
  const arm = part('steering arm', 'arm', ['hole: taper 1.5 in/ft hole, large 0.850 in'])
  const end = part('rod end', 'end', ['stud: taper 1.5 in/ft stud, large 0.870 in'])
  const planned = (aids?: readonly string[]) =>
    planOf(
      bare({
        parts: [arm, end],
        joints: [{ id: 'j', a: 'arm/hole', b: 'end/stud', ...(aids ? { with: aids } : {}) }] as BuildFile['joints'],
      }),
    )

  it('that the joint does not name are told', () => {
    expect(planned().joints[0]?.unmet).toEqual(['castle nut and cotter'])
    expect(found(planned(), 'fit.condition')).toMatchObject([
      { severity: 'stops', facts: { unmet: ['castle nut and cotter'] }, about: ['joints', 0, 'with'] },
    ])
    expect(found(planned(['sealant']), 'fit.condition')).toHaveLength(1)
  })

  it('that it names are met; a lock nut stands for a castle nut, and nothing else does', () => {
    expect(found(planned(['castle nut and cotter']), 'fit.condition')).toEqual([])
    expect(found(planned(['lock nut']), 'fit.condition')).toEqual([])
  })
})

describe('adjusters', () => {
  const rod = (left: string, right: string, serves: string | undefined = 'tie rod') =>
    planOf(bare({ parts: [part('tube', 'rod', [`l: ${left}`, `r: ${right}`], serves ? { serves } : {})] })).findings.filter((f) =>
      f.code.startsWith('adjuster.'),
    )

  it('need one left-hand and one right-hand end', () => {
    expect(rod('7/8-18 LH female', '7/8-18 RH female')).toEqual([])
    expect(rod('7/8-18 female', '7/8-18 female')).toMatchObject([
      { code: 'adjuster.none', severity: 'look', facts: { part: 'rod', serves: 'tie rod', hand: 'right' }, about: ['parts', 0, 'ends'] },
    ])
    expect(rod('7/8-18 LH female', '7/8-18 LH female', 'drag link')).toMatchObject([{ code: 'adjuster.none', facts: { hand: 'left' } }])
  })

  it('of one hand and two pitches adjust slowly', () => {
    expect(rod('7/8-18 female', '7/8-14 female').map((f) => f.code)).toEqual(['adjuster.slow'])
    expect(rod('7/8-14 female', '3/4-14 NPT female').map((f) => f.code)).toEqual(['adjuster.none'])
  })

  it('are asked of tie rods and drag links only', () => {
    expect(rod('7/8-18 female', '7/8-18 female', 'other')).toEqual([])
    expect(
      planOf(bare({ parts: [part('tube', 'rod', ['l: 7/8-18 female', 'r: 7/8-18 female'])] })).findings.map((f) => f.code),
    ).not.toContain('adjuster.none')
    expect(rod('7/8-18 female', 'weld')).toEqual([])
  })
})
