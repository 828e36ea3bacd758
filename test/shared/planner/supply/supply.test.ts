import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Plan } from '../../../../src/shared/planner/plan.ts'
import { asked, found, number, planOf, shown } from '../builds.ts'
import { LARCH, larch, larchPart } from '../larch-forces.ts'

const PSI = 6894.757293168
const INCH = 0.0254
const plan = planOf(LARCH)
const margins = (p: Plan) => Object.fromEntries(p.numbers.filter((n) => n.id.startsWith('margin.')).map((n) => [n.id, n.si]))
const worst = (p: Plan) => p.forces.demand?.worst ?? []

describe('supply', () => {
  it('of the ram is pressure on its area less losses, worked by hand', () => {
    const [cap, annulus] = [(Math.PI / 4) * 1.75 ** 2, (Math.PI / 4) * (1.75 ** 2 - 0.75 ** 2)]
    expect(number(plan, 'supply.ram-push').si).toBeCloseTo(1500 * PSI * cap * INCH ** 2 * 0.9, 6)
    expect(number(plan, 'supply.ram-pull').si).toBeCloseTo(1500 * PSI * annulus * INCH ** 2 * 0.9, 6)
  })

  it('says which turn is weaker and on which side the ram works there', () => {
    const [weaker] = found(plan, 'supply.weaker_turn')
    const [left, right] = ['left', 'right'].map((t) => worst(plan).find((w) => w.turn === t)?.margin ?? Number.NaN) as [number, number]
    expect(weaker?.facts.turn).toBe(left < right ? 'left' : 'right')
    expect(weaker?.facts.side).toBe('pull')
  })

  it('is drawn over the travel: one entry a point, and continuous', () => {
    const c = plan.forces.demand?.curve ?? expect.fail('no curve')
    for (const list of [c.demandLeft, c.demandRight, c.supplyLeft, c.supplyRight]) {
      expect(list).toHaveLength(c.travel.length)
      const all = list ?? []
      const range = Math.max(...all) - Math.min(...all)
      for (let n = 1; n < all.length; n++) expect(Math.abs((all[n] ?? 0) - (all[n - 1] ?? 0))).toBeLessThan(0.2 * range + 1)
    }
  })

  it('without the places of the ram takes the weaker side for both turns, by the angle that was measured', () => {
    const p = planOf(larch({ geometry: { ram: undefined } }))
    expect(worst(p).map((w) => w.side)).toEqual([null, null])
    expect(number(p, 'supply.left.ram').inputs.F_r?.origin).toEqual({ kind: 'number', id: 'supply.ram-pull' })
    expect(number(p, 'demand.left.via-ram-rate').si).toBeCloseTo(Math.cos((4 * Math.PI) / 180), 12)
  })

  it('of a double-ended ram is the same both ways', () => {
    const p = planOf(larchPart('ram', { ended: 'double', closedLength: undefined }))
    expect(number(p, 'supply.ram-push').si).toBe(number(p, 'supply.ram-pull').si)
  })

  it('too weak is told, with both forces', () => {
    const p = planOf(larchPart('pump', { reliefPressure: '300 psi' }))
    const [weak] = found(p, 'supply.too_weak')
    expect(shown(weak, 'force there is')).toBeLessThan(shown(weak, 'force asked for'))
  })
})

describe('the sector shaft', () => {
  it('carries less with the ram, and never more than its share', () => {
    const [before, after] = [number(plan, 'sector.before-ram').si, number(plan, 'sector.after-ram').si]
    const [box, ram] = ['box', 'ram'].map((s) => plan.numbers.find((n) => n.id === `supply.right.${s}`)?.si ?? Number.NaN) as [
      number,
      number,
    ]
    const [boxLeft, ramLeft] = ['box', 'ram'].map((s) => plan.numbers.find((n) => n.id === `supply.left.${s}`)?.si ?? Number.NaN) as [
      number,
      number,
    ]
    const shares = [box / (box + ram), boxLeft / (boxLeft + ramLeft)]
    expect(shares.some((s) => Math.abs(after / before - s) < 1e-9)).toBe(true)
  })
  it('overloaded is told against the rating that was entered', () => {
    const p = planOf(larch({ forces: { box: { sectorRating: '100 lbf·ft' } } }))
    expect(found(p, 'sector.overloaded')).toHaveLength(1)
    expect(found(plan, 'sector.overloaded')).toHaveLength(0)
  })
  it('is not judged without a rating, nor shared without the inside of the box', () => {
    expect(asked(planOf(larch({ forces: { box: { sectorRating: undefined } } })))).toContain('sector rating')
    const p = planOf(larch({ forces: { box: { pistonBore: undefined } } }))
    expect(asked(p)).toContain('inside of the box')
    expect(p.numbers.some((n) => n.id === 'sector.after-ram')).toBe(false)
  })
})

describe('after a burst hose', () => {
  it('the pull at the rim is what the sector shaft needs through the gear', () => {
    const T = number(plan, 'sector.before-ram').si
    const ratio = (3.9 * 360) / 94
    expect(number(plan, 'hand.force').si).toBeCloseTo((2 * T) / (ratio * 0.7 * 15 * INCH), 6)
  })
})

describe('speed', () => {
  it('counts the oil of ram and box, and is slower at idle than at cruise', () => {
    const [idle, cruise] = plan.forces.speed
    expect(idle?.at).toBe('idle')
    expect(idle?.timeLeft).toBeGreaterThan(cruise?.timeLeft ?? Number.NaN)
    const volume = number(plan, 'speed.via-volume-left').si
    expect(idle?.timeLeft).toBeCloseTo(volume / ((2.2 * 231 * INCH ** 3) / 60), 9)
  })
  it('follows from displacement, pulley and engine speed where no flow is rated, up to the flow control', () => {
    const p = planOf(
      larchPart(
        'pump',
        { idleFlow: undefined, cruiseFlow: undefined },
        {
          forces: {
            pump: {
              displacement: '10 mL',
              pulleyRatio: '1.2',
              efficiency: '90 %',
              idleSpeed: '700 rpm',
              cruiseSpeed: '2500 rpm',
              flowControl: '10 L/min',
            },
          },
        },
      ),
    )
    expect(p.forces.speed.map((s) => s.flow * 60_000)).toEqual([expect.closeTo(7.56, 9), expect.closeTo(10, 9)])
  })
  it('tells the heat while a stop is held', () => {
    expect(shown(found(plan, 'speed.heat')[0], 'heat while a stop is held')).toBeCloseTo(((3 * 231 * INCH ** 3) / 60) * 1500 * PSI, 6)
  })
})

describe('properties', () => {
  const share = fc.integer({ min: 50, max: 200 }).map((k) => k / 100)

  it('more load never raises a margin', () => {
    fc.assert(
      fc.property(share, share, (a, b) => {
        const [light, heavy] = [Math.min(a, b), Math.max(a, b)]
        const at = (k: number) => margins(planOf(larch({ vehicle: { frontAxleLoad: `${3300 * k} lbf` } })))
        const [x, y] = [at(light), at(heavy)]
        for (const [id, margin] of Object.entries(y)) expect({ id, ok: margin <= (x[id] ?? 0) * (1 + 1e-12) }).toEqual({ id, ok: true })
      }),
      { numRuns: 12 },
    )
  })

  it('more bore never lowers push, pull or a margin of force', () => {
    fc.assert(
      fc.property(share, share, (a, b) => {
        const at = (k: number) => planOf(larchPart('ram', { bore: `${1.75 * k + 0.2} in` }))
        const [small, large] = [at(Math.min(a, b)), at(Math.max(a, b))]
        for (const id of ['supply.ram-push', 'supply.ram-pull', 'margin.left', 'margin.right'])
          expect(number(large, id).si).toBeGreaterThanOrEqual(number(small, id).si * (1 - 1e-12))
      }),
      { numRuns: 12 },
    )
  })

  it('all forces of twice the size leave the margins of force what they were', () => {
    const twice = planOf(
      larchPart('pump', { reliefPressure: '3000 psi' }, { vehicle: { frontAxleLoad: '6600 lbf', tyre: { pressure: '56 psi' } } }),
    )
    for (const id of ['margin.left', 'margin.right', 'margin.left-rock']) expect(number(twice, id).si).toBeCloseTo(number(plan, id).si, 9)
    for (const id of ['demand.left.force', 'demand.right.force', 'supply.left.force'])
      expect(number(twice, id).si).toBeCloseTo(2 * number(plan, id).si, 5)
  })
})
