import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  demandRodForce,
  linkageArmLeanLeft,
  linkageArmLeanRight,
  linkageRodBackRate,
  linkageTiltRate,
  ramRate as ramRateCard,
  ramRateDouble,
} from '../../../../src/shared/formulas/forces/virtual-work.ts'
import { makeLinkage, ratesAt, stateAtAngle } from '../../../../src/shared/formulas/linkage/linkage.ts'
import { type RamMount, ramLength, ramPin, ramRate } from '../../../../src/shared/formulas/linkage/ram-space.ts'
import { si } from '../../../../src/shared/quantities/dimension.ts'

const length = (v: number) => si(v, 'length')
const angle = (v: number) => si(v, 'angle')
const ratio = (v: number) => si(v, 'ratio')

const between = (low: number, high: number) => fc.integer({ min: 0, max: 1000 }).map((n) => low + ((high - low) * n) / 1000)
const linkages = fc.record({
  tieRod: fc.constantFrom('behind' as const, 'ahead' as const),
  spacing: between(1.1, 1.7),
  left: fc.record({ length: between(0.12, 0.22), lean: between(-0.3, 0.3) }),
  right: fc.record({ length: between(0.12, 0.22), lean: between(-0.3, 0.3) }),
  toe: between(-0.01, 0.01),
  delta: between(-0.6, 0.6),
  mount: fc.record({
    x: between(-0.6, 0.6),
    y: between(-0.3, 0.3),
    z: between(-0.1, 0.1),
    along: between(0.1, 1),
    ahead: between(-0.08, 0.08),
  }),
})

describe('the ratios of movement as cards', () => {
  it('agree with the exact linkage, rod behind the axle or ahead of it, equal arms or not', () => {
    let seen = 0
    fc.assert(
      fc.property(linkages, ({ delta, mount, ...sizes }) => {
        const made = makeLinkage(sizes)
        const s = made.ok ? stateAtAngle(made.value, 'left', delta) : undefined
        if (!made.ok || !s) return
        const rates = ratesAt(made.value, s)
        if (!(rates.left > 0.5 && rates.right > 0.5)) return
        seen++
        const k = ratio(sizes.tieRod === 'behind' ? 1 : -1)
        const [r_L, r_R, c] = [length(sizes.left.length), length(sizes.right.length), length(made.value.rod)]
        const phi_L = linkageArmLeanLeft.compute({ beta: angle(sizes.left.lean), k, delta: angle(s.left) })
        const phi_R = linkageArmLeanRight.compute({ beta: angle(sizes.right.lean), k, delta: angle(s.right) })
        const tilt = Math.atan2(s.b.y - s.a.y, s.b.x - s.a.x)
        const [i, l_L, theta] = [ratio(rates.right / rates.left), length(1 / rates.left), angle(k * tilt)]
        const omega = linkageTiltRate.compute({ r_L, r_R, phi_L, phi_R, i, theta, c, l_L })
        expect(omega).toBeCloseTo(rates.tilt, 8)
        const v_y = linkageRodBackRate.compute({ r_L, r_R, phi_L, phi_R, i, l_L })
        expect(v_y).toBeCloseTo((rates.a.y + rates.b.y) / 2, 8)
        const ram: RamMount = { ended: 'single', base: mount, along: mount.along, ahead: mount.ahead, above: mount.z + 0.05 }
        const pin = ramPin(ram, s)
        const at = {
          x_p: length(pin.x),
          y_p: length(pin.y),
          x_m: length((s.a.x + s.b.x) / 2),
          y_m: length((s.a.y + s.b.y) / 2),
          x_b: length(mount.x),
          y_b: length(mount.y),
        }
        const card = ramRateCard.compute({ ...at, k, omega, v_y, L: length(ramLength(ram, s)) })
        expect(card).toBeCloseTo(ramRate(made.value, ram, s), 7)
        const double = ramRateDouble.compute({ y_p: at.y_p, y_m: at.y_m, k, omega })
        expect(double).toBeCloseTo(ramRate(made.value, { ...ram, ended: 'double' }, s), 7)
        // virtual work: what the rod does is what both wheels take
        const F = demandRodForce.compute({ M_L: si(300, 'torque'), M_R: si(500, 'torque'), i, l_L })
        expect(F).toBeCloseTo(300 * rates.left + 500 * rates.right, 6)
      }),
      { numRuns: 400 },
    )
    expect(seen).toBeGreaterThan(200)
  })
})
