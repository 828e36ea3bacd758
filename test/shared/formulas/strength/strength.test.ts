import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  beamColumnMoment,
  clampBending,
  clampCoupleMaximum,
  columnEccentricDeflection,
  columnEccentricMoment,
  columnSecantStress,
} from '../../../../src/shared/formulas/strength/beam-column.ts'
import { columnConstant, columnCriticalLoad, columnEuler, columnStepped } from '../../../../src/shared/formulas/strength/column.ts'
import { tubeArea, tubeRadiusOfGyration, tubeSecondMoment, tubeSectionModulus } from '../../../../src/shared/formulas/strength/tube.ts'
import { si } from '../../../../src/shared/quantities/dimension.ts'
import { megapascals, metres, mm, newtonMetres, ratio } from '../../../../src/shared/quantities/make.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const E = megapascals(200_000)
const tube = fc.record({ D: between(20, 60), hole: between(0, 0.9) }).map(({ D, hole }) => ({ D: mm(D), d: mm(D * hole) }))
const rod = fc
  .record({ I: between(2e-8, 3e-7), L: between(0.5, 1.6), part: between(0.02, 0.98), push: between(0.01, 0.95) })
  .map(({ I, L, part, push }) => ({
    I: si(I, 'secondMomentOfArea'),
    L: metres(L),
    a: metres(L * part),
    P: si((push * Math.PI ** 2 * E * I) / L ** 2, 'force'),
  }))

describe('a tube', () => {
  it('has a radius of gyration and a modulus that belong to its area and second moment', () => {
    fc.assert(
      fc.property(tube, (t) => {
        const I = tubeSecondMoment.compute(t)
        expect(tubeRadiusOfGyration.compute(t) ** 2 / (I / tubeArea.compute(t))).toBeCloseTo(1, 9)
        expect(tubeSectionModulus.compute(t) / (I / (t.D / 2))).toBeCloseTo(1, 12)
      }),
    )
  })
})

describe('a straight column', () => {
  it('carries less the longer it is, never more than Euler or yield, without a step where the one ends and the other begins', () => {
    fc.assert(
      fc.property(tube, between(250, 900), between(0.2, 3), (t, yieldAt, length) => {
        const [A, r, S_y] = [tubeArea.compute(t), tubeRadiusOfGyration.compute(t), megapascals(yieldAt)]
        const at = (L: number) => columnCriticalLoad.compute({ A, S_y, L_e: metres(L), r, E })
        const euler = columnEuler.compute({ n: ratio(1), E, I: tubeSecondMoment.compute(t), L: metres(length) })
        expect(at(length)).toBeLessThanOrEqual(euler * (1 + 1e-12))
        expect(at(length)).toBeLessThan(A * S_y)
        expect(at(length * 1.01)).toBeLessThan(at(length))
        const change = columnConstant.compute({ E, S_y }) * r
        expect(at(change * (1 + 1e-9)) / at(change * (1 - 1e-9))).toBeCloseTo(1, 7)
        expect(at(change) / (A * S_y)).toBeCloseTo(0.5, 9)
      }),
    )
  })

  it('is not the 267 785 N of a wrong solution that goes about for the tube 40/36 of 1.2 m', () => {
    const I = tubeSecondMoment.compute({ D: mm(40), d: mm(36) })
    expect(columnEuler.compute({ n: ratio(1), E: megapascals(210_000), I, L: mm(1200) }) / 62_210).toBeCloseTo(1, 3)
  })
})

describe('a column of two sections', () => {
  const two = fc.record({ I_1: between(1e-9, 1e-6), I_2: between(1e-9, 1e-6), L_1: between(0.05, 1), L_2: between(0.05, 1) }).map((c) => ({
    E,
    I_1: si(c.I_1, 'secondMomentOfArea'),
    I_2: si(c.I_2, 'secondMomentOfArea'),
    L_1: metres(c.L_1),
    L_2: metres(c.L_2),
  }))

  it('lies between the Euler loads of its sections and is the same from either end', () => {
    fc.assert(
      fc.property(two, (c) => {
        const P = columnStepped.compute(c)
        const euler = (I: number) => columnEuler.compute({ n: ratio(1), E, I: si(I, 'secondMomentOfArea'), L: metres(c.L_1 + c.L_2) })
        expect(P).toBeGreaterThanOrEqual(euler(Math.min(c.I_1, c.I_2)) * (1 - 1e-9))
        expect(P).toBeLessThanOrEqual(euler(Math.max(c.I_1, c.I_2)) * (1 + 1e-9))
        expect(columnStepped.compute({ ...c, I_1: c.I_2, I_2: c.I_1, L_1: c.L_2, L_2: c.L_1 }) / P).toBeCloseTo(1, 9)
      }),
    )
  })

  it('bends at that load into one half wave: EI y″ = -P y marched from the one pin meets the other', () => {
    fc.assert(
      fc.property(two, (c) => {
        const P = columnStepped.compute(c)
        let [y, slope, highest, lowest] = [0, 1, 0, Number.POSITIVE_INFINITY]
        for (const [I, L] of [
          [c.I_1, c.L_1],
          [c.I_2, c.L_2],
        ] as const) {
          const steps = 400
          const h = L / steps
          const bend = (at: number) => (-P * at) / (E * I)
          for (let i = 0; i < steps; i++) {
            if (highest > 0) lowest = Math.min(lowest, y)
            const [k1, m1] = [slope, bend(y)]
            const [k2, m2] = [slope + (h / 2) * m1, bend(y + (h / 2) * k1)]
            const [k3, m3] = [slope + (h / 2) * m2, bend(y + (h / 2) * k2)]
            const [k4, m4] = [slope + h * m3, bend(y + h * k3)]
            y += (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4)
            slope += (h / 6) * (m1 + 2 * m2 + 2 * m3 + m4)
            highest = Math.max(highest, y)
          }
        }
        // the march of fourth order with 400 steps a section is good to about 1e-7 of the bow
        expect(Math.abs(y)).toBeLessThan(1e-6 * highest)
        expect(lowest).toBeGreaterThan(0)
      }),
      { numRuns: 50 },
    )
  })
})

describe('a load beside the axis', () => {
  it('without a distance is a plain load', () => {
    const stress = columnSecantStress.compute({
      P: si(1e4, 'force'),
      A: si(5e-4, 'area'),
      e: mm(0),
      c: mm(20),
      r: mm(10),
      L_e: metres(1),
      E,
    })
    expect(stress).toBe(1e4 / 5e-4)
  })
  it('bends by the load times the distance and the bow', () => {
    fc.assert(
      fc.property(rod, between(1, 50), ({ I, L, P }, off) => {
        const e = mm(off)
        const delta = columnEccentricDeflection.compute({ e, L, P, E, I })
        expect(columnEccentricMoment.compute({ P, e, L, E, I }) / (P * (e + delta))).toBeCloseTo(1, 9)
      }),
    )
  })
})

describe('the couple of a clamp on a pushed rod', () => {
  const M_0 = newtonMetres(500)
  it('bends nowhere more than said, and somewhere as much', () => {
    fc.assert(
      fc.property(rod, ({ I, L, a, P }) => {
        const k = Math.sqrt(P / (E * I))
        const most = clampCoupleMaximum.compute({ M_0, P, a, L, E, I })
        let seen = 0
        for (let i = 0; i <= 4000; i++) {
          const x = (i / 4000) * L
          if (x <= a) seen = Math.max(seen, Math.abs((M_0 * Math.cos(k * (L - a)) * Math.sin(k * x)) / Math.sin(k * L)))
          if (x >= a) seen = Math.max(seen, Math.abs((M_0 * Math.cos(k * a) * Math.sin(k * (L - x))) / Math.sin(k * L)))
        }
        expect(seen).toBeLessThanOrEqual(most * (1 + 1e-12))
        // the sampling may miss the clamp itself by 1/4000 of the length
        expect(seen).toBeGreaterThan(most * 0.99)
      }),
    )
  })
  it('is never more than by the amplification of the bending without the push', () => {
    fc.assert(
      fc.property(rod, ({ I, L, a, P }) => {
        const longer = metres(Math.max(a, L - a))
        const plain = clampBending.compute({ F: si(500 / 0.05, 'force'), e: mm(50), a: longer, L })
        const P_e = columnEuler.compute({ n: ratio(1), E, I, L })
        const over = beamColumnMoment.compute({ M_0: plain, P, P_e }) / clampCoupleMaximum.compute({ M_0, P, a, L, E, I })
        expect(over).toBeGreaterThan(1 - 1e-9)
      }),
    )
  })
})
