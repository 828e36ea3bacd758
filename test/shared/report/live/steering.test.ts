import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { draggedTravel, GRIPS, reachOfCurve, writtenTravel } from '../../../../src/shared/planner/linkage/drag.ts'
import { planFrame } from '../../../../src/shared/report/drawings/plan-view.ts'
import { ledgerSides } from '../../../../src/shared/report/live/ledger.ts'
import { liveSteering, stepOf } from '../../../../src/shared/report/live/steering.ts'
import { bumpReadOuts, bumpTable, travelTable } from '../../../../src/shared/report/live/tables.ts'
import { larchPlan } from '../../planner/linkage/larch.ts'

const { linkage, limits, bumpSteer } = larchPlan()
if (!linkage || !limits || !bumpSteer) throw new Error('the demo has no steering')
const g = linkage.geometry
const reach = reachOfCurve(linkage.curve)
const live = (travel: number, units: 'inch' | 'metric' = 'inch') => liveSteering(g, limits, reach, travel, units)

describe('a hand on the plan view', () => {
  const travels = fc.double({ min: -reach.right, max: reach.left, noNaN: true })

  it('that goes along with an outline brings the steering to where the outline is', () => {
    fc.assert(
      fc.property(travels, travels, fc.constantFrom(...GRIPS), (begun, wanted, grip) => {
        const { vehicle } = planFrame(g)
        const corner = (travel: number) => live(travel).grips?.[grip][0]
        const [from, to] = [corner(begun), corner(wanted)]
        if (!from || !to) throw new Error('no outline')
        // the rod's outline tilts a little as it goes; a wheel's turns exactly about its kingpin
        const near = grip === 'tie rod' ? 2e-3 : 1e-8
        expect(Math.abs(draggedTravel(g, reach, grip, begun, vehicle(from), vehicle(to)) - wanted)).toBeLessThan(near)
      }),
      { numRuns: 200, seed: 7 },
    )
  })

  it('never leaves the reach, wherever the hand goes', () => {
    const place = fc.record({ x: fc.double({ min: -3, max: 3, noNaN: true }), y: fc.double({ min: -3, max: 3, noNaN: true }) })
    fc.assert(
      fc.property(travels, place, place, fc.constantFrom(...GRIPS), (begun, from, to, grip) => {
        const travel = draggedTravel(g, reach, grip, begun, from, to)
        expect(travel).toBeGreaterThanOrEqual(-reach.right)
        expect(travel).toBeLessThanOrEqual(reach.left)
      }),
      { numRuns: 300, seed: 7 },
    )
  })

  it('may write instead: a length, a bare number, a wheel angle; past the reach is refused', () => {
    const written = (side: 'left' | 'right', typed: string) => writtenTravel(g, reach, side, typed, 'in')
    expect(written('left', '2 1/2 in')).toMatchObject({ ok: true, value: 0.0635 })
    expect(written('right', '2')).toMatchObject({ ok: true, value: -0.0508 })
    const turned = written('right', '20°')
    expect(turned.ok && (live(turned.value).readOuts.find((r) => r.id === 'right')?.value ?? '')).toBe('20° right')
    for (const typed of ['9 in', '80°']) expect(written('left', typed)).toMatchObject({ issues: [{ code: 'linkage.beyond_reach' }] })
    expect(written('left', 'much')).toMatchObject({ issues: [{ code: 'quantity.not_a_number' }] })
  })
})

describe('the limits as they are reached', () => {
  const at = (travel: number, key: string) => live(travel).limits.find((l) => l.key === key)
  const stop = limits.left.lines[0]?.travel ?? 0
  const ram = limits.left.lines[1]?.travel ?? 0

  it('light up one after the other: near, reached, passed', () => {
    expect(at(0, 'stop-left left')).toMatchObject({ state: 'none', word: '4 3/32 in to go' })
    expect(at(stop - stepOf('inch'), 'stop-left left')).toMatchObject({ state: 'noted', word: 'near: 1/16 in to go' })
    expect(at(stop, 'stop-left left')?.state).toBe('good')
    expect(at(stop + stepOf('inch'), 'stop-left left')).toMatchObject({ state: 'look', word: 'passed by 1/16 in' })
    expect(at(ram, 'ram left')?.state).toBe('stops')
    // the other side stays dark
    expect(live(ram).limits.filter((l) => l.side === 'right' && l.state !== 'none')).toEqual([])
    expect(live(ram).line).toMatch(/^Tie rod 4 .* in to the left\. To the left, knuckle stop: passed by .* To the left, ram: reached\.$/)
  })

  it('the ram says what room is left, and marks where there is none', () => {
    const open = (travel: number) => live(travel).readOuts.filter((r) => r.id === 'open' || r.id === 'closed')
    expect(open(0).every((r) => r.state === undefined)).toBe(true)
    expect(open(ram).some((r) => r.state === 'stops')).toBe(true)
  })

  it('the ledger gives margin and chance a side', () => {
    const [left, right] = ledgerSides(limits, 'inch')
    expect(left?.stops.map((s) => s.what)).toEqual(['knuckle stop', 'ram', 'steering box'])
    expect(left?.stops[0]?.travel).toBe(stop)
    expect(right?.stops[0]?.travel).toBeLessThan(0)
    expect(left?.margin).toBe('29/64 in of room, then the ram')
    expect(left?.chance).toBe('chance of the other order below 0.1 %')
    const first = limits.left
    const doubtful = { ...limits, left: { ...first, wrongOrder: 0.0731 }, right: { ...first, side: 'right', wrongOrder: null } } as const
    expect(ledgerSides(doubtful, 'inch').map((s) => s.chance)).toEqual([
      'chance of the other order 7.3 %',
      'chance of the other order not known: an uncertainty is missing',
    ])
  })
})

describe('the pictures as tables', () => {
  it('have a cell for every column, and end at both ends of the travel', () => {
    for (const units of ['inch', 'metric'] as const) {
      for (const table of [travelTable(linkage.curve, units), bumpTable(bumpSteer, units)]) {
        for (const row of table.rows) expect(row).toHaveLength(table.columns.length)
      }
      const first = travelTable(linkage.curve, units).rows.map((row) => (row[0]?.kind === 'text' ? row[0].text : ''))
      expect(first[0]).toContain('to the left')
      expect(first.at(-1)).toContain('to the right')
      expect(first).toContain('straight ahead')
    }
    expect(bumpTable(bumpSteer, 'inch').rows).toHaveLength(bumpSteer.rise.length)
    const ride = bumpSteer.rise.indexOf(0)
    expect(bumpReadOuts(bumpSteer, ride, 'inch')[0]).toEqual({ label: 'Steer, straight ahead', value: 'none' })
  })
})
