import { describe, expect, it } from 'vitest'
import { asked, DEMO, found, number, planOf, shown } from '../builds.ts'
import { LARCH, larch, larchPart } from '../larch-forces.ts'

const INCH = 0.0254
const PSI = 6894.757293168
const plan = planOf(LARCH)
const line = (hose: string, p = plan) => p.forces.flow.find((f) => f.hose === hose) ?? expect.fail(hose)

describe('oil in the hoses', () => {
  it('runs at the pump’s full flow, worked by hand: v[ft/s] = 0.3208 gpm / A[in²]', () => {
    const bore = DEMO.corrected.parts.find((p) => p.id === 'suction-hose') as { bore?: string }
    expect(bore.bore).toBe('5/8 in')
    const A = (Math.PI / 4) * 0.625 ** 2
    // 0.3208 is printed to four figures
    expect(line('suction-hose').velocity / 0.3048).toBeCloseTo((0.3208 * 3) / A, 2)
  })
  it('is held against the guide for its kind of line', () => {
    for (const f of plan.forces.flow) {
      expect(f.velocityMost / 0.3048).toBeCloseTo({ pressure: 15, ram: 15, return: 10, suction: 4 }[f.line], 9)
      const told = found(plan, 'flow.fast').some((x) => x.facts.part === f.name)
      expect(told).toBe(f.velocity > f.velocityMost)
    }
  })
  it('comes back faster than it goes from a single-ended ram that is pulled in', () => {
    const ratio = 1.75 ** 2 / (1.75 ** 2 - 0.75 ** 2)
    expect(line('return-hose').flow / line('pressure-hose').flow).toBeCloseTo(ratio, 9)
  })
  it('loses far more cold than hot, and says what kind of flow it is', () => {
    const { cold, hot } = line('pressure-hose')
    expect(cold?.regime).toBe('laminar')
    expect(hot?.regime).toBe('between')
    expect(cold?.drop).toBeGreaterThan(10 * (hot?.drop ?? Number.NaN))
  })
  it('cold and laminar follows Hagen and Poiseuille, and the ends come on top', () => {
    const f = line('pressure-hose')
    const nu = number(plan, 'flow.viscosity-cold').si
    const d = 0.0095
    const hose = (128 * nu * 860 * 1.12 * f.flow) / (Math.PI * d ** 4)
    expect(f.cold?.drop).toBeCloseTo(hose + 2 * 1.5 * 860 * (f.velocity ** 2 / 2), 4)
    // the reference's VG 32 at -10 °C: 805 cSt
    expect(nu * 1e6).toBeCloseTo(805, -1)
  })
  it('is not followed without an oil, which is asked for', () => {
    const p = planOf(larch({ forces: { oil: undefined } }))
    expect(asked(p)).toContain('oil')
    expect(line('pressure-hose', p)).toMatchObject({ cold: null, hot: null })
  })
})

describe('hoses', () => {
  it('are made to burst at four times their working pressure', () => {
    expect(number(plan, 'flow.pressure-hose.burst').si).toBeCloseTo(4 * 2250 * PSI, 3)
    expect(number(plan, 'margin.hose-pressure-hose').si).toBeCloseTo(2250 / 1500, 12)
  })
  it('bent too tightly or too short are told', () => {
    const p = planOf(larch({ forces: { hoses: [{ hose: 'ram-hose-left', bend: '3 in', longestWay: '38 in' }] } }))
    expect(shown(found(p, 'flow.tight_bend')[0], 'least bend of wire-braid hose')).toBeCloseTo(0.13, 12)
    expect(shown(found(p, 'flow.short_hose')[0], 'length needed')).toBeCloseTo((38 * INCH) / 0.96, 12)
    expect(found(plan, 'flow.short_hose')).toEqual([])
  })
})

describe('the reservoir', () => {
  it('swings by the rod of a single-ended ram', () => {
    const V = (Math.PI / 4) * 0.75 ** 2 * 9 * INCH ** 3
    expect(shown(found(plan, 'flow.swing')[0], 'oil that comes and goes')).toBeCloseTo(V, 12)
    expect(number(plan, 'flow.swing').si).toBeCloseTo(V / 1.2e-3, 9)
  })
  it('too small for it is to be looked at', () => {
    expect(found(planOf(larchPart('reservoir', { volume: '0.3 L' })), 'flow.swing')[0]?.severity).toBe('look')
  })
  it('does not swing with a double-ended ram', () => {
    expect(found(planOf(larchPart('ram', { ended: 'double' })), 'flow.swing')).toEqual([])
  })
})
