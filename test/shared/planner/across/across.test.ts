import { describe, expect, it } from 'vitest'
import type { AcrossOptions } from '../../../../src/shared/planner/across/across.ts'
import { makeAcrossIndex, wayAcross } from '../../../../src/shared/planner/across/across.ts'
import type { AcrossResult, ShelfAdapter } from '../../../../src/shared/planner/across/types.ts'
import { adapter, end } from './shelf.ts'

const way = (a: string, b: string, shelf: readonly ShelfAdapter[] = [], options: AcrossOptions = {}): AcrossResult =>
  wayAcross(end(a), end(b), makeAcrossIndex(shelf), options)
const ids = (result: AcrossResult): string[][] => (result.outcome === 'found' ? result.chains.map((c) => c.pieces.map((p) => p.id)) : [])
const shelfOnly = { buy: false }

describe('the way across from the shelf', () => {
  it('is one adapter where one does it, entered by either end', () => {
    const shelf = [adapter('flare-to-pipe', ['-6 37° flare female', '3/8 NPT male'], { price: '7.50', length: 40 })]
    const result = way('-6 37° flare male', '3/8 NPT female', shelf)
    expect(ids(result)).toEqual([['flare-to-pipe']])
    expect(result.outcome === 'found' && result.chains[0]).toMatchObject({ leakPoints: 2, price: '7.50', length: 0.04, toBuy: 0 })
    // NPT wants sealant, the flare nothing: REFERENCE 2.3
    expect(result.outcome === 'found' && result.chains[0]?.meetings.map((m) => m.verdict.conditions)).toEqual([[], ['sealant']])
    expect(ids(way('3/8 NPT female', '-6 37° flare male', shelf))).toEqual([['flare-to-pipe']])
  })

  it('is not needed where the two ends go together, and says so also on a condition', () => {
    expect(way('-6 37° flare male', '-6 37° flare female').outcome).toBe('not needed')
    expect(way('3/8 NPT male', '3/8 NPT female')).toMatchObject({ outcome: 'not needed', direct: { conditions: ['sealant'] } })
  })

  it('counts leak points before price, and price before length', () => {
    const shelf = [
      adapter('one-dear', ['-6 37° flare female', '3/8 NPT male'], { price: '90.00', length: 40 }),
      adapter('first-cheap', ['-6 37° flare female', '-8 37° flare male'], { price: '1.00' }),
      adapter('second-cheap', ['-8 37° flare female', '3/8 NPT male'], { price: '1.00' }),
      adapter('one-dear-short', ['-6 37° flare female', '3/8 NPT male'], { price: '90.00', length: 30 }),
      adapter('one-unknown', ['-6 37° flare female', '3/8 NPT male'], { length: 10 }),
    ]
    const found = ids(way('-6 37° flare male', '3/8 NPT female', shelf, shelfOnly))
    expect(found[0]).toEqual(['one-dear-short'])
    expect(found[1]).toEqual(['one-dear'])
  })

  it('puts a price that nobody knows behind every known one and reports it as not known', () => {
    const shelf = [
      adapter('a-unknown', ['-6 37° flare female', '3/8 NPT male']),
      adapter('b-known', ['-6 37° flare female', '3/8 NPT male'], { price: '80000.00' }),
    ]
    const result = way('-6 37° flare male', '3/8 NPT female', shelf, shelfOnly)
    expect(ids(result)).toEqual([['b-known'], ['a-unknown']])
    expect(result.outcome === 'found' && result.chains.map((c) => [c.price, c.length])).toEqual([
      ['80000.00', null],
      [null, null],
    ])
  })

  it('counts an end that is left open as a place that can leak', () => {
    const shelf = [
      adapter('a-tee', ['-6 37° flare female', '3/8 NPT male', '-6 37° flare male'], { price: '1.00' }),
      adapter('b-straight', ['-6 37° flare female', '3/8 NPT male'], { price: '50.00' }),
    ]
    const result = way('-6 37° flare male', '3/8 NPT female', shelf, shelfOnly)
    expect(ids(result)).toEqual([['b-straight'], ['a-tee']])
    expect(result.outcome === 'found' && result.chains[1]?.pieces[0]?.open).toEqual(['end-3'])
  })

  it('takes a part no more often than it is there', () => {
    // out of an 8 male, through the reducer twice, would need two of it
    const shelf = (quantity: number) => [
      adapter('swap', ['-8 37° flare female', '-6 37° flare male', '-6 37° flare female', '-4 37° flare male'], { quantity }),
    ]
    expect(way('-8 37° flare male', '-4 37° flare female', shelf(1), shelfOnly).outcome).toBe('found')
    const twice = (quantity: number) => [
      adapter('step', ['-8 37° flare female', '-6 37° flare male', '1/4 NPT male'], { quantity }),
      adapter('turn', ['-6 37° flare female', '-6 37° flare female']),
    ]
    expect(ids(way('-8 37° flare male', '-8 37° flare male', twice(2), shelfOnly))).toEqual([['step', 'turn', 'step']])
    expect(way('-8 37° flare male', '-8 37° flare male', twice(1), shelfOnly)).toMatchObject({ outcome: 'none', why: { code: 'no chain' } })
  })

  it('joins what carries no oil: bushes, bungs and reducers', () => {
    const shelf = [
      adapter('bush', ['taper 1.5 in/ft hole, large 0.68 in, through 0.7 in', 'taper 1:10 stud, large 0.98 in, length 1.2 in']),
      adapter('bung', ['weld', '7/8-18 LH female']),
    ]
    expect(
      ids(way('taper 1.5 in/ft stud, large 0.70 in, length 1.1 in', 'taper 1:10 hole, large 0.96 in, through 0.75 in', shelf)),
    ).toEqual([['bush']])
    const welded = way('tube 1 1/2 in', '7/8-18 LH male', shelf)
    expect(ids(welded)).toEqual([['bung']])
    expect(welded.outcome === 'found' && welded.chains[0]?.meetings[0]?.verdict.conditions).toEqual(['weld'])
  })

  it('goes through a bore by the thread of a bolt', () => {
    expect(ids(way('bore 5/8 in', '5/8-18 female', [adapter('stud', ['5/8-18 male', '5/8-18 male, length 1 in'])]))).toEqual([['stud']])
  })
})

describe('the way across with adapters to buy', () => {
  it('is asked of the tables only when the shelf has none, and marked as common practice', () => {
    const result = way('-6 37° flare male', '3/8 NPT female')
    expect(result.outcome === 'found' && result.chains[0]).toMatchObject({ toBuy: 1, price: null, length: null, leakPoints: 2 })
    expect(result.outcome === 'found' && result.chains[0]?.pieces[0]?.toBuy?.mark).toBe('practice')
  })

  it('is offered beside the shelf where it has fewer leak points', () => {
    const shelf = [
      adapter('one', ['-6 37° flare female', '-8 37° flare male'], { price: '1.00' }),
      adapter('two', ['-8 37° flare female', '3/8 NPT male'], { price: '1.00' }),
    ]
    const result = way('-6 37° flare male', '3/8 NPT female', shelf)
    expect(ids(result)[0]).toEqual(['one', 'two'])
    expect(result.outcome === 'found' && result.buying[0]).toMatchObject({ leakPoints: 2, toBuy: 1 })
  })

  it('prefers what is on the shelf among chains of as many leak points', () => {
    const shelf = [adapter('pump-side', ['-6 37° flare male', 'M16x1.5 O-ring tube nut male'])]
    const result = way('3/8 inverted flare female', 'M16x1.5 O-ring tube nut female', shelf)
    expect(result.outcome === 'found' && result.chains[0]).toMatchObject({ leakPoints: 3, toBuy: 1 })
    expect(ids(result)[0]).toContain('pump-side')
  })

  it.each([
    ['M18x1.5 O-ring tube nut female', '-6 37° flare female', 2],
    ['M16x1.5 O-ring tube nut female', '-6 37° flare female', 2],
    ['3/8 inverted flare female', '-6 37° flare female', 2],
    ['-6 O-ring boss female', '-6 37° flare female', 2],
    ['-6 O-ring boss female', '-8 37° flare female', 2],
    ['M22x1.5 ISO 6149 female', '-8 face seal female', 2],
    ['G 1/4 ISO 1179 female', '1/4 NPT female', 2],
    ['12L 24° cone male', '-8 37° flare male', 2],
    ['-6 37° flare male', '-6 37° flare male', 2],
    ['G 3/8 ISO 1179 female', 'M16x1.5 ISO 6149 female', 2],
    ['3/8 inverted flare female', 'M16x1.5 O-ring tube nut female', 3],
  ])('%s to %s: %d leak points', (a, b, leakPoints) => {
    const result = way(a, b)
    expect(result.outcome === 'found' && result.chains[0]?.leakPoints).toBe(leakPoints)
  })
})

describe('the other hose end', () => {
  it('is named for the end that is a hose’s', () => {
    const result = way('-6 37° flare female', '3/8 NPT female', [], { hoseEnds: ['a'] })
    expect(result.instead.map((i) => [i.change, i.to.typed])).toEqual([['a', '3/8-18 NPT male']])
  })

  it('is not named where one of the two carries no oil', () => {
    expect(way('-6 37° flare female', '5/8-18 male').instead).toEqual([])
  })
})

describe('no way across is an answer with its reason', () => {
  it.each([
    ['-6 37° flare male', 'taper 1.5 in/ft stud, large 0.7 in', 'kinds'],
    ['7/8-18 LH female', '3/4-16 male', 'hand'],
    ['not measured', '-6 37° flare male', 'not measured'],
    ['3/8 NPT', '-6 37° flare male', 'not measured'],
    ['taper ? hole', 'taper 1:8 stud, large 0.7 in', 'not measured'],
    ['7/8-18 male', '3/4-16 male', 'nothing mates'],
  ])('%s to %s: %s', (a, b, code) => {
    expect(way(a, b)).toMatchObject({ outcome: 'none', why: { code } })
  })

  it('says what to measure', () => {
    const result = way('3/8 NPT', 'taper ? hole')
    expect(result.outcome === 'none' && result.why.facts.measure).toEqual([
      'sex of the thread',
      'taper of the hole',
      'large diameter of the hole',
    ])
  })

  it('does not offer more than four adapters in a row', () => {
    const steps = ['-4', '-6', '-8', '-10', '-12', '-16']
    const shelf = steps.slice(1).map((size, i) => adapter(`s${i}`, [`${steps[i]} 37° flare female`, `${size} 37° flare male`]))
    expect(ids(way('-4 37° flare male', '-12 37° flare female', shelf, shelfOnly))[0]).toHaveLength(4)
    expect(way('-4 37° flare male', '-16 37° flare female', shelf, shelfOnly)).toMatchObject({ outcome: 'none', why: { code: 'no chain' } })
  })
})
