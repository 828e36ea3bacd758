import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseEnd } from '../../../../src/shared/model/end/parse.ts'
import type { End } from '../../../../src/shared/model/end/types.ts'
import { makeAcrossIndex, wayAcross } from '../../../../src/shared/planner/across/across.ts'
import { cents } from '../../../../src/shared/planner/across/cost.ts'
import { drawersOf, drawersSought, endKey } from '../../../../src/shared/planner/across/end-class.ts'
import { standardAdapters } from '../../../../src/shared/planner/across/standard.ts'
import type { Chain, ShelfAdapter } from '../../../../src/shared/planner/across/types.ts'
import { fitEnds } from '../../../../src/shared/planner/fit/fit.ts'
import { adapter, end } from './shelf.ts'

/** few enough ends that chains occur, with traps among them: the same thread and another seal, left hand, different sizes */
const ENDS = [
  '-6 37° flare male',
  '-6 37° flare female',
  '-8 37° flare male',
  '-8 37° flare female',
  '-6 O-ring boss male',
  '-6 O-ring boss female',
  '3/8 NPT male',
  '3/8 NPT female',
  '3/8 NPTF male',
  'M16x1.5 ISO 6149 male',
  'M16x1.5 O-ring tube nut female',
  '7/8-18 LH male',
  '7/8-18 female',
  '7/8-14 male',
  'taper 1:8 stud, large 0.70 in',
  'taper 1:8 hole, large 0.68 in',
  'bore 3/8 in',
]
const anyEnd = fc.constantFrom(...ENDS)
const good = (kind: string) => kind === 'fits' || kind === 'fits if'
const part = fc.record({
  ends: fc.oneof(
    { weight: 5, arbitrary: fc.array(anyEnd, { minLength: 2, maxLength: 2 }) },
    fc.array(anyEnd, { minLength: 3, maxLength: 3 }),
  ),
  price: fc.option(fc.integer({ min: 0, max: 30_000 }), { nil: undefined }),
  length: fc.option(fc.integer({ min: 4, max: 400 }), { nil: undefined }),
  quantity: fc.option(fc.integer({ min: 1, max: 2 }), { nil: undefined }),
})
const shelves = fc.array(part, { maxLength: 14 }).map((parts) =>
  parts.map(({ ends, price, length, quantity }, i) =>
    adapter(`p${String(i).padStart(2, '0')}`, ends, {
      ...(price === undefined ? {} : { price: `${Math.floor(price / 100)}.${String(price % 100).padStart(2, '0')}` }),
      // quarters of a millimetre, which the search tells apart
      ...(length === undefined ? {} : { length: length / 4 }),
      ...(quantity === undefined ? {} : { quantity }),
    }),
  ),
)

const order = (c: Pick<Chain, 'pieces' | 'leakPoints'>): readonly number[] => [
  c.leakPoints,
  c.pieces.filter((p) => p.price === null).length,
  c.pieces.reduce((sum, p) => sum + (p.price === null ? 0 : cents(p.price)), 0),
  c.pieces.filter((p) => p.length === null).length,
  Math.round(c.pieces.reduce((sum, p) => sum + (p.length ?? 0), 0) * 4000),
]
function compare(x: readonly number[], y: readonly number[]): number {
  for (const [i, v] of x.entries()) if (v !== y[i]) return v - (y[i] as number)
  return 0
}

/** Every chain of up to four parts tried one by one, by nothing but fitEnds; the order of the best, or undefined. */
function byHand(a: End, b: End, shelf: readonly ShelfAdapter[]): readonly number[] | undefined {
  let best: readonly number[] | undefined
  const walk = (open: End, used: readonly (readonly [ShelfAdapter, number])[]) => {
    if (used.length > 0 && good(fitEnds(open, b).kind)) {
      const pieces = used.map(([p]) => ({ price: p.price ?? null, length: p.length ?? null }))
      const leakPoints = used.length + 1 + used.reduce((n, [p]) => n + p.ends.length - 2, 0)
      const here = order({ pieces, leakPoints } as unknown as Chain)
      if (!best || compare(here, best) < 0) best = here
    }
    if (used.length === 4) return
    for (const p of shelf) {
      if (used.filter(([q]) => q === p).length >= (p.quantity ?? 1)) continue
      for (const [i, into] of p.ends.entries()) {
        if (!good(fitEnds(open, into.connection.end).kind)) continue
        for (const [j, out] of p.ends.entries()) if (i !== j) walk(out.connection.end, [...used, [p, i]])
      }
    }
  }
  walk(a, [])
  return best
}

describe('the way across, whatever the shelf', () => {
  it('is the best of all chains tried one by one', () => {
    fc.assert(
      fc.property(anyEnd, anyEnd, shelves, (typedA, typedB, shelf) => {
        const [a, b] = [end(typedA), end(typedB)]
        const result = wayAcross(a, b, makeAcrossIndex(shelf), { buy: false })
        if (result.outcome === 'not needed') return
        const found = result.outcome === 'found' ? result.chains[0] : undefined
        expect(found && order(found)).toEqual(byHand(a, b, shelf))
      }),
      { numRuns: 400 },
    )
  })

  it('reads the same from either side', () => {
    fc.assert(
      fc.property(anyEnd, anyEnd, shelves, (a, b, shelf) => {
        // a way from an end to another of the very same kind has no side to be read from
        fc.pre(a !== b)
        const index = makeAcrossIndex(shelf)
        const [there, back] = [wayAcross(end(a), end(b), index), wayAcross(end(b), end(a), index)]
        expect(back.outcome).toBe(there.outcome)
        if (there.outcome !== 'found' || back.outcome !== 'found') return
        const walk = (chains: readonly Chain[]) => chains.map((c) => c.pieces.map((p) => [p.id, p.in.name, p.out.name]))
        expect(walk(back.chains).map((c) => c.reverse().map(([id, i, o]) => [id, o, i]))).toEqual(walk(there.chains))
      }),
      { numRuns: 30 },
    )
  })

  it('has nothing in it that does not fit, no part too often, and the better chains first', () => {
    fc.assert(
      fc.property(anyEnd, anyEnd, shelves, (typedA, typedB, shelf) => {
        const [a, b] = [end(typedA), end(typedB)]
        const result = wayAcross(a, b, makeAcrossIndex(shelf))
        if (result.outcome !== 'found') return
        for (const chains of [result.chains, result.buying]) {
          for (const { pieces } of chains) {
            const outs = [a, ...pieces.map((p) => p.out.connection.end)]
            const ins = [...pieces.map((p) => p.in.connection.end), b]
            for (const [i, out] of outs.entries()) expect(good(fitEnds(out, ins[i] as End).kind)).toBe(true)
            for (const s of shelf) expect(pieces.filter((p) => p.id === s.id).length).toBeLessThanOrEqual(s.quantity ?? 1)
          }
          const leaks = chains.map((c) => c.leakPoints)
          expect(leaks).toEqual([...leaks].sort((x, y) => x - y))
        }
        for (const c of result.buying) expect(c.leakPoints).toBeLessThan(result.chains[0]?.leakPoints ?? 0)
      }),
      { numRuns: 30 },
    )
  })

  it('never becomes worse by more parts', () => {
    fc.assert(
      fc.property(anyEnd, anyEnd, shelves, shelves, (typedA, typedB, shelf, more) => {
        const [a, b] = [end(typedA), end(typedB)]
        const before = wayAcross(a, b, makeAcrossIndex(shelf), { buy: false })
        const both = [...shelf, ...more.map((p) => ({ ...p, id: `more-${p.id}` }))]
        const after = wayAcross(a, b, makeAcrossIndex(both), { buy: false })
        if (before.outcome !== 'found') return
        expect(after.outcome).toBe('found')
        const [x, y] = [before.chains[0], after.outcome === 'found' ? after.chains[0] : undefined]
        expect(x && y && compare(order(y), order(x))).toBeLessThanOrEqual(0)
      }),
      { numRuns: 300 },
    )
  })

  it('does not depend on the order of the shelf', () => {
    fc.assert(
      fc.property(anyEnd, anyEnd, shelves, (a, b, shelf) => {
        const there = wayAcross(end(a), end(b), makeAcrossIndex(shelf), { buy: false })
        expect(wayAcross(end(a), end(b), makeAcrossIndex([...shelf].reverse()), { buy: false })).toEqual(there)
      }),
      { numRuns: 200 },
    )
  })
})

describe('the drawers that ends are kept in', () => {
  it('never part two ends that fit: every pair of a wide list, judged without them', () => {
    const wide = [
      ...new Map(standardAdapters().flatMap((s) => s.ends.map((c) => [c.typed, c.end] as const))).values(),
      ...[
        ...ENDS,
        'G 3/8 male',
        'G 3/8 female',
        'Rp 3/8',
        '3/8-18 NPTF female',
        '5/8-18 male',
        '5/8-18 female, in aluminium',
        'bore 5/8 in',
      ].map(end),
      ...[
        'bore 16 mm',
        'pin 5/8 in',
        'clamp 1 1/4 in',
        'tube 1 1/4 in',
        'tube 31.7 mm',
        'weld',
        '36 splines 3/4 in male',
        '36 splines 0.748 in female',
      ].map(end),
      ...[
        'hose 3/8 in',
        'barb 9.9 mm',
        'barb 3/8 in',
        'taper 1:8 hole, large 0.675 in',
        'taper 1:10 stud, large 18 mm',
        'taper 1:10 hole, large 17.6 mm',
      ].map(end),
    ]
    let fitting = 0
    for (const a of wide) {
      const sought = new Set(drawersSought(a))
      for (const b of wide) {
        if (!good(fitEnds(a, b).kind)) continue
        fitting++
        expect(
          drawersOf(b).some((d) => sought.has(d)),
          `${endKey(a)} with ${endKey(b)}`,
        ).toBe(true)
      }
    }
    expect(fitting).toBeGreaterThan(200)
  })
})

describe('the adapters made up from the tables', () => {
  it('are written in words that read back to the very same ends', () => {
    for (const { ends } of standardAdapters()) {
      for (const { typed, end: meant } of ends) {
        const read = parseEnd(typed)
        expect(read.ok && endKey(read.value), typed).toBe(endKey(meant))
      }
    }
  })

  it('are each there once', () => {
    const ids = standardAdapters().map((s) => s.id)
    expect(ids.length).toBeGreaterThan(1000)
    expect(new Set(ids).size).toBe(ids.length)
  })
})
