import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { flowDarcyDrop, flowLaminarDrop, flowReynolds, flowVelocity } from '../../../../src/shared/formulas/hydraulics/flow.ts'
import { fluidBottles } from '../../../../src/shared/formulas/hydraulics/fluid.ts'
import {
  frictionChurchill,
  frictionColebrook,
  frictionHaaland,
  frictionLaminar,
} from '../../../../src/shared/formulas/hydraulics/friction.ts'
import {
  ramAnnulusArea,
  ramAreaRatio,
  ramCapArea,
  ramForce,
  ramRodVolume,
  ramSpeed,
  ramVolume,
} from '../../../../src/shared/formulas/hydraulics/ram.ts'
import { tubeBarlow, tubeBoardman } from '../../../../src/shared/formulas/hydraulics/tube-pressure.ts'
import { viscosityAtTemperature } from '../../../../src/shared/formulas/hydraulics/viscosity.ts'
import { type Area, si } from '../../../../src/shared/quantities/dimension.ts'
import { centistokes, litres, mm, ratio } from '../../../../src/shared/quantities/make.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const ram = fc
  .record({ D: between(20, 120), thin: between(0.1, 0.95), s: between(50, 600) })
  .map(({ D, thin, s }) => ({ D: mm(D), d: mm(D * thin), s: mm(s) }))
const turbulent = fc.record({ Re: between(3.7, 8).map((e) => ratio(10 ** e)), eps: between(0, 0.05).map(ratio) })

describe('a single-ended ram', () => {
  it('pulls less than it pushes, and faster, by its area ratio', () => {
    fc.assert(
      fc.property(ram, between(1e5, 2e7), ({ D, d }, p) => {
        const force = (A: Area) => ramForce.compute({ p: si(p, 'pressure'), A })
        const [push, pull] = [force(ramCapArea.compute({ D })), force(ramAnnulusArea.compute({ D, d }))]
        expect(pull).toBeLessThan(push)
        expect(push / pull).toBeCloseTo(ramAreaRatio.compute({ D, d }), 6)
        const Q = si(1e-4, 'flow')
        const speeds = ramSpeed.compute({ Q, A: ramAnnulusArea.compute({ D, d }) }) / ramSpeed.compute({ Q, A: ramCapArea.compute({ D }) })
        expect(speeds).toBeCloseTo(ramAreaRatio.compute({ D, d }), 6)
      }),
    )
  })

  it('differs between its sides by the rod it takes in', () => {
    fc.assert(
      fc.property(ram, ({ D, d, s }) => {
        const cap = ramVolume.compute({ A: ramCapArea.compute({ D }), s })
        const annulus = ramVolume.compute({ A: ramAnnulusArea.compute({ D, d }), s })
        expect(Math.abs(annulus + ramRodVolume.compute({ d, s }) - cap)).toBeLessThanOrEqual(1e-14 * cap + 1e-18)
      }),
    )
  })
})

describe('bottles', () => {
  it('hold the fluid, and one fewer would not', () => {
    fc.assert(
      fc.property(between(0.01, 20), between(0.2, 5), (V, b) => {
        const n = fluidBottles.compute({ V_b: litres(V), b: litres(b) })
        expect(Number.isInteger(n)).toBe(true)
        expect(n * b).toBeGreaterThanOrEqual(V * (1 - 1e-12))
        expect((n - 1) * b).toBeLessThan(V)
      }),
    )
  })

  it('are not one too many for the rounding of doubles', () => {
    expect(fluidBottles.compute({ V_b: litres(0.1 * 3), b: litres(0.1) })).toBe(3)
    expect(fluidBottles.compute({ V_b: litres(0), b: litres(1) })).toBe(0)
  })
})

describe('friction factors', () => {
  it('by Colebrook solve the equation of Colebrook', () => {
    fc.assert(
      fc.property(turbulent, ({ Re, eps }) => {
        const f = frictionColebrook.compute({ Re, eps })
        const right = -2 * Math.log10(eps / 3.7 + 2.51 / (Re * Math.sqrt(f)))
        expect(Math.abs(1 / Math.sqrt(f) - right)).toBeLessThan(1e-12 * right)
      }),
    )
  })

  it('rise with roughness and fall with the Reynolds number', () => {
    fc.assert(
      fc.property(turbulent, between(1.01, 3), ({ Re, eps }, by) => {
        const f = frictionColebrook.compute({ Re, eps })
        expect(frictionColebrook.compute({ Re: ratio(Re * by), eps })).toBeLessThan(f)
        expect(frictionColebrook.compute({ Re, eps: ratio(eps + 0.001 * by) })).toBeGreaterThan(f)
      }),
    )
  })

  it('by Haaland and Churchill stay near Colebrook', () => {
    // Haaland's own claim is 2 %; Churchill bends towards the transition, so it is compared well above that only
    fc.assert(
      fc.property(turbulent, ({ Re, eps }) => {
        const f = frictionColebrook.compute({ Re, eps })
        expect(Math.abs(frictionHaaland.compute({ Re, eps }) / f - 1)).toBeLessThan(0.02)
        if (Re > 10_000) expect(Math.abs(frictionChurchill.compute({ Re, eps }) / f - 1)).toBeLessThan(0.04)
      }),
      { numRuns: 1000 },
    )
  })

  it('by Churchill are the laminar one in laminar flow', () => {
    fc.assert(
      fc.property(between(1, 1000), between(0, 0.05), (Re, eps) => {
        expect(frictionChurchill.compute({ Re: ratio(Re), eps: ratio(eps) }) / frictionLaminar.compute({ Re: ratio(Re) })).toBeCloseTo(1, 4)
      }),
    )
  })

  it('make the drop of Darcy that of Hagen and Poiseuille in laminar flow', () => {
    fc.assert(
      fc.property(between(5, 30), between(1e-5, 1e-4), (bore, nu) => {
        const [d, Q, L, rho] = [mm(bore), si(5e-5, 'flow'), si(2, 'length'), si(870, 'density')]
        const v = flowVelocity.compute({ Q, d })
        const f = frictionLaminar.compute({ Re: flowReynolds.compute({ v, d, nu: si(nu, 'kinematicViscosity') }) })
        const laminar = flowLaminarDrop.compute({ mu: si(nu * rho, 'dynamicViscosity'), L, Q, d })
        expect(flowDarcyDrop.compute({ f, L, d, rho, v }) / laminar).toBeCloseTo(1, 10)
      }),
    )
  })
})

describe('viscosity after ASTM D341', () => {
  const oil = { nu_1: centistokes(32), T_1: si(313.15, 'temperature'), nu_2: centistokes(5.4), T_2: si(373.15, 'temperature') }
  const at = (T: number) => viscosityAtTemperature.compute({ ...oil, T: si(T, 'temperature') })

  it('goes through both known points', () => {
    expect(at(313.15) / 32e-6).toBeCloseTo(1, 12)
    expect(at(373.15) / 5.4e-6).toBeCloseTo(1, 12)
  })

  it('falls as the oil warms', () => {
    fc.assert(fc.property(between(230, 450), between(0.1, 40), (T, warmer) => at(T + warmer) < at(T)))
  })

  it('finds the cold oil that the trade warns of', () => {
    // worked out apart from the relation: about 336 cSt at 0 °C and 805 cSt at -10 °C, three figures
    expect(at(273.15) * 1e6).toBeCloseTo(336, -1)
    expect(at(263.15) * 1e6).toBeCloseTo(805, -1)
  })
})

describe('tube pressure', () => {
  it('by Barlow is below Boardman and grows with the wall', () => {
    fc.assert(
      fc.property(between(0.3, 4), between(10, 40), between(1, 6), (t, D, N) => {
        const tube = { S: si(345e6, 'pressure'), t: mm(t), D: mm(D), N: ratio(N) }
        expect(tubeBarlow.compute(tube)).toBeLessThan(tubeBoardman.compute(tube))
        expect(tubeBarlow.compute({ ...tube, t: mm(t * 1.1) })).toBeGreaterThan(tubeBarlow.compute(tube))
      }),
    )
  })
})
