import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { toeTotalDistance, toeWheelAngle } from '../../../../src/shared/formulas/alignment/toe.ts'
import { ackermannOuterAngle, ackermannPercentage } from '../../../../src/shared/formulas/linkage/ackermann.ts'
import { bumpLateralPull, bumpSteerError } from '../../../../src/shared/formulas/linkage/bump.ts'
import {
  demandParkingLaw,
  demandSizingSheet,
  demandUniformDisc,
  demandUniformDiscPressure,
} from '../../../../src/shared/formulas/linkage/demand.ts'
import { trapezoidArmAngle, trapezoidOuterAngle, trapezoidRodLength } from '../../../../src/shared/formulas/linkage/trapezoid.ts'
import { si } from '../../../../src/shared/quantities/dimension.ts'
import { degrees, metres, mm, newtons, radians, ratio } from '../../../../src/shared/quantities/make.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
/** Sizes of real axles, on which the rod and an arm never come into one line within 0.6 rad (34°). */
const linkage = fc.record({ w: between(1.1, 1.7).map(metres), d: between(0.1, 0.2).map(metres), beta: between(-0.3, 0.3).map(radians) })
const angle = between(-0.6, 0.6).map(radians)

describe('a steering trapezoid', () => {
  it('keeps its rod: both ends, placed by the wheel angles, are its length apart', () => {
    fc.assert(
      fc.property(linkage, angle, ({ w, d, beta }, delta_i) => {
        const delta_o = trapezoidOuterAngle.compute({ w, d, beta, delta_i })
        const inner = { x: d * Math.sin(beta + delta_i), y: -d * Math.cos(beta + delta_i) }
        const outer = { x: w - d * Math.sin(beta - delta_o), y: -d * Math.cos(beta - delta_o) }
        const apart = Math.hypot(outer.x - inner.x, outer.y - inner.y)
        expect(Math.abs(apart - trapezoidRodLength.compute({ w, d, beta }))).toBeLessThan(1e-12)
      }),
    )
  })

  it('stands straight at straight ahead and moves without a jump', () => {
    fc.assert(
      fc.property(linkage, angle, (l, delta_i) => {
        expect(Math.abs(trapezoidOuterAngle.compute({ ...l, delta_i: radians(0) }))).toBeLessThan(1e-12)
        const step =
          trapezoidOuterAngle.compute({ ...l, delta_i: radians(delta_i + 1e-4) }) - trapezoidOuterAngle.compute({ ...l, delta_i })
        expect(step).toBeGreaterThan(0)
        expect(step).toBeLessThan(4e-4)
      }),
    )
  })

  it('is its own mirror image: the other way round leads back', () => {
    fc.assert(
      fc.property(linkage, angle, (l, delta_i) => {
        const delta_o = trapezoidOuterAngle.compute({ ...l, delta_i })
        const back = trapezoidOuterAngle.compute({ ...l, delta_i: radians(-delta_o) })
        expect(back).toBeCloseTo(-delta_i, 9)
      }),
    )
  })

  it('with the rod ahead and arms toed outward, entered as the remark says, turns the inner wheel further too', () => {
    const ahead = trapezoidOuterAngle.compute({ w: metres(1.5), d: metres(0.17), beta: degrees(-12), delta_i: degrees(-30) })
    // placed by hand: pivots at x = 0 and w, arms ahead (y up), left turn, the left wheel is the inner one
    const [w, d, b, i, o] = [1.5, 0.17, (12 * Math.PI) / 180, (30 * Math.PI) / 180, -ahead]
    const left = { x: -d * Math.sin(b + i), y: d * Math.cos(b + i) }
    const right = { x: w + d * Math.sin(b - o), y: d * Math.cos(b - o) }
    expect(Math.hypot(right.x - left.x, right.y - left.y)).toBeCloseTo(w + 2 * d * Math.sin(b), 12)
    expect(-ahead).toBeLessThan(i)
    expect(-ahead).toBeGreaterThan(0.4)
  })

  it('is found back from its rod', () => {
    fc.assert(
      fc.property(linkage, ({ w, d, beta }) => {
        expect(trapezoidArmAngle.compute({ w, d, c: trapezoidRodLength.compute({ w, d, beta }) })).toBeCloseTo(beta, 9)
      }),
    )
  })
})

describe('true rolling', () => {
  it('turns the outer wheel less, and is 100 % of itself', () => {
    fc.assert(
      fc.property(between(0.02, 1), between(0.8, 1.8), between(2, 4), (inner, pivots, wheelbase) => {
        const [delta_i, w, l] = [radians(inner), metres(pivots), metres(wheelbase)]
        const delta_o = ackermannOuterAngle.compute({ delta_i, w, l })
        expect(delta_o).toBeLessThan(delta_i)
        expect(1 / Math.tan(delta_o) - 1 / Math.tan(delta_i)).toBeCloseTo(w / l, 9)
        expect(ackermannPercentage.compute({ delta_i, delta_o, w, l })).toBeCloseTo(1, 6)
        expect(ackermannPercentage.compute({ delta_i, delta_o: delta_i, w, l })).toBe(0)
      }),
    )
  })
})

describe('bump steer', () => {
  const link = fc.record({ L: between(600, 1100), h: between(-200, 200) })
  const z = between(-120, 120).map(mm)
  it('is nil for equal and parallel links', () => {
    fc.assert(
      fc.property(link, z, ({ L, h }, rise) => {
        const same = { L_d: mm(L), h_d: mm(h), L_t: mm(L), h_t: mm(h), z: rise, r: mm(165) }
        expect(Math.abs(bumpSteerError.compute(same))).toBeLessThan(1e-13)
      }),
    )
  })
  it('changes sign when the two links change places', () => {
    fc.assert(
      fc.property(link, link, z, (a, b, rise) => {
        const one = { L_d: mm(a.L), h_d: mm(a.h), L_t: mm(b.L), h_t: mm(b.h), z: rise, r: mm(165) }
        const other = { ...one, L_d: one.L_t, h_d: one.h_t, L_t: one.L_d, h_t: one.h_d }
        expect(bumpSteerError.compute(one)).toBeCloseTo(-bumpSteerError.compute(other), 12)
      }),
    )
  })
  it('pulls a level link inward both ways', () => {
    fc.assert(
      fc.property(between(1, 120), (rise) => {
        const level = (by: number) => bumpLateralPull.compute({ L: mm(900), h: mm(0), z: mm(by) })
        expect(level(rise)).toBeGreaterThan(0)
        expect(level(-rise)).toBe(level(rise))
      }),
    )
  })
})

describe('kingpin torque', () => {
  it('by the sizing sheets, without offset, is 6.1 % above the evenly loaded disc', () => {
    const [W, f, B] = [newtons(12_000), ratio(0.7), mm(300)]
    const sheet = demandSizingSheet.compute({ W, f, B, E: mm(0) })
    expect(sheet / demandUniformDisc.compute({ mu: f, W, B })).toBeCloseTo(1.0607, 4)
  })
  it('by the 1.5-power law is 0.886 of the disc of the same pressure, at any load', () => {
    fc.assert(
      fc.property(between(500, 20_000), between(5e4, 4e5), (load, pressure) => {
        const wheel = { mu: ratio(0.7), W: newtons(load), p: si(pressure, 'pressure') }
        expect(demandParkingLaw.compute(wheel) / demandUniformDiscPressure.compute(wheel)).toBeCloseTo(Math.sqrt(Math.PI) / 2, 9)
      }),
    )
  })
})

describe('toe', () => {
  it('goes from angle to distance and back', () => {
    fc.assert(
      fc.property(between(-0.05, 0.05), between(400, 1100), (theta, D) => {
        const T = toeTotalDistance.compute({ D: mm(D), theta: radians(theta) })
        expect(toeWheelAngle.compute({ T, D: mm(D) })).toBeCloseTo(theta / 2, 12)
      }),
    )
  })
})
