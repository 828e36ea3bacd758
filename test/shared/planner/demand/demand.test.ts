import { describe, expect, it } from 'vitest'
import { ratesAt, stateAtTravel } from '../../../../src/shared/formulas/linkage/linkage.ts'
import { ramRate } from '../../../../src/shared/formulas/linkage/ram-space.ts'
import type { Plan } from '../../../../src/shared/planner/plan.ts'
import { asked, found, number, planOf, shown } from '../builds.ts'
import { LARCH, larch } from '../larch-forces.ts'

const LBF = 4.4482216152605
const INCH = 0.0254
const plan = planOf(LARCH)
const demand = (p: Plan) => p.forces.demand ?? expect.fail('no demand')

describe('what the tyres ask for', () => {
  it('is told by three routes, one wheel and both, and the sizing sheets are used unless another is chosen', () => {
    const { routes, used, chosenByUser } = demand(plan)
    expect(routes.map((r) => r.route)).toEqual(['sizing sheet', 'print and jacking', 'pressure law'])
    for (const r of routes) expect(r.bothWheels).toBeCloseTo(2 * r.perWheel, 9)
    expect([used, chosenByUser]).toEqual(['sizing sheet', false])
    const chosen = demand(planOf(larch({ forces: { ground: { route: 'pressure law' } } })))
    expect([chosen.used, chosen.chosenByUser]).toEqual(['pressure law', true])
  })

  it('takes the load of the axle for the sheets and of one wheel for the others, worked by hand', () => {
    // W = 3300 lbf, f = 0.7, B = 9.5 in, p = 28 psi; E from hub face 6 in, offset -1 in, radius 17.2 in, inclination 8.5°
    const E = 6 - 1 - 17.2 * Math.tan((8.5 * Math.PI) / 180)
    const sheet = 3300 * 0.7 * Math.sqrt(9.5 ** 2 / 8 + E ** 2)
    const law = (0.7 / 3) * Math.sqrt(1650 ** 3 / 28)
    const a = 2 * Math.sqrt(1650 / (Math.PI * 28))
    const print = 0.7 * 1650 * Math.sqrt(E ** 2 + (a / 3) ** 2)
    const [bySheet, byPrint, byLaw] = demand(plan).routes.map((r) => r.perWheel / (LBF * INCH))
    expect(bySheet).toBeCloseTo(sheet / 2, 6)
    expect(byPrint).toBeCloseTo(print, 6)
    expect(byLaw).toBeCloseTo(law, 6)
  })

  it('is doubled for driven wheels by the one sheet that asks for it, and by no other route', () => {
    const driven = demand(planOf(larch({ forces: { ground: { driven: true } } }))).routes
    const before = demand(plan).routes
    expect(driven.map((r, i) => r.perWheel / (before[i]?.perWheel ?? 0))).toEqual([
      expect.closeTo(2, 12),
      expect.closeTo(1, 12),
      expect.closeTo(1, 12),
    ])
  })

  it('says by how much the routes differ', () => {
    const [spread] = found(plan, 'demand.spread')
    const all = demand(plan).routes.map((r) => r.perWheel)
    expect(shown(spread, 'greatest over least')).toBeCloseTo(Math.max(...all) / Math.min(...all), 12)
  })

  it('takes the print from the tyre size as an estimate, asks for it, and never for a size it cannot read', () => {
    const estimated = planOf(larch({ vehicle: { tyre: { printWidth: undefined } } }))
    expect(number(estimated, 'demand.via-print-width').si).toBeCloseTo(0.775 * 12.5 * INCH, 12)
    expect(number(estimated, 'demand.via-print-width').inputs.x?.origin).toEqual({ kind: 'chosen', why: 'print share' })
    expect(asked(estimated)).toContain('print width')
    const unread = planOf(larch({ vehicle: { tyre: { printWidth: undefined, size: 'big ones' } } }))
    expect(asked(unread)).toContain('tyre size')
    expect(demand(unread).routes.map((r) => r.route)).not.toContain('sizing sheet')
  })

  it('asks for what is missing and gives no torque on a guess', () => {
    const p = planOf(larch({ vehicle: { frontAxleLoad: undefined } }))
    expect(p.forces.demand).toBeNull()
    expect(found(p, 'measure').find((f) => f.facts.what === 'demand inputs')?.facts.missing).toEqual(['load on the front axle'])
  })

  it('says so where the chosen route cannot be worked out', () => {
    const p = planOf(larch({ forces: { ground: { route: 'pressure law' } }, vehicle: { tyre: { pressure: undefined } } }))
    expect(found(p, 'demand.other_route')[0]?.facts).toEqual({ wanted: 'pressure law', route: 'sizing sheet' })
  })
})

describe('the way from the wheels to the tie rod', () => {
  it('is written down by cards that agree with the exact linkage', () => {
    const g = plan.linkage?.geometry ?? expect.fail('no linkage')
    for (const { turn, travel } of demand(plan).worst) {
      const s = stateAtTravel(g.linkage, travel, g.range)
      if (!s.ok || !g.ram) throw new Error('no state')
      const rates = ratesAt(g.linkage, s.value)
      expect(number(plan, `demand.${turn}.via-lever`).si).toBeCloseTo(1 / rates.left, 10)
      expect(number(plan, `demand.${turn}.via-wheel-ratio`).si).toBeCloseTo(rates.right / rates.left, 10)
      expect(number(plan, `demand.${turn}.via-tilt-rate`).si).toBeCloseTo(rates.tilt, 9)
      expect(number(plan, `demand.${turn}.via-ram-rate`).si).toBeCloseTo(ramRate(g.linkage, g.ram, s.value), 9)
    }
  })

  it('gives the same force as the curve at that place, and the curve has no higher one', () => {
    const { curve, worst } = demand(plan)
    if (!curve) throw new Error('no curve')
    for (const w of worst) {
      const forces = w.turn === 'left' ? curve.demandLeft : curve.demandRight
      const at = curve.travel.findIndex((t) => Math.abs(t - w.travel) < 1e-12)
      expect(forces[at]).toBeCloseTo(w.demand, 6)
      expect(number(plan, `demand.${w.turn}.force`).si).toBe(w.demand)
    }
  })

  it('by the route that counts lifting asks for more going out than coming back', () => {
    const { curve } = demand(planOf(larch({ forces: { ground: { route: 'print and jacking' } } })))
    if (!curve) throw new Error('no curve')
    expect(curve.demandLeft.at(-1)).toBeGreaterThan(curve.demandRight.at(-1) ?? Number.NaN)
    expect(curve.demandRight[0]).toBeGreaterThan(curve.demandLeft[0] ?? Number.NaN)
  })
})
