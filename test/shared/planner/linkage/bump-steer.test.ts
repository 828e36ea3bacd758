import { describe, expect, it } from 'vitest'
import { bumpSteerError } from '../../../../src/shared/formulas/linkage/bump.ts'
import { makeChain } from '../../../../src/shared/formulas/linkage/chain.ts'
import { makeLinkage, rangeOf, stateAtAngle } from '../../../../src/shared/formulas/linkage/linkage.ts'
import { type Suspension, stateWithRise } from '../../../../src/shared/formulas/linkage/suspension.ts'
import { mm } from '../../../../src/shared/quantities/make.ts'
import { number } from '../builds.ts'
import { larchPlan } from './larch.ts'

const DEGREE = Math.PI / 180

/** The front view of the card in space: drag link and track bar in one upright plane, the arm square to the drag link. */
function steer(dragLink: { length: number; above: number }, trackBar: { length: number; above: number }, rise: number): number {
  const arm = 0.165
  const made = makeLinkage({ tieRod: 'behind', spacing: 1.5, left: { length: arm, lean: 0 }, right: { length: arm, lean: 0 }, toe: 0 })
  if (!made.ok) throw new Error('does not close')
  const straight = stateAtAngle(made.value, 'left', 0)
  if (!straight) throw new Error('does not close')
  const level = Math.sqrt(dragLink.length ** 2 - dragLink.above ** 2)
  const pitman = 0.15
  const chain = makeChain(made.value, straight, {
    pivot: { x: 0.75 - level, y: arm + pitman },
    pitman,
    points: -Math.PI / 2,
    end: { kind: 'knuckle', side: 'right', arm: { x: 0, y: arm } },
  })
  if (!chain.ok) throw new Error('does not close')
  const s: Suspension = { ballHeight: 0.5, jointHeight: 0.5 + dragLink.above, trackBar: { ...trackBar, frameEnd: 'left' } }
  const moved = stateWithRise(made.value, chain.value, s, rangeOf(made.value), straight, rise)
  return moved?.right ?? Number.NaN
}

describe('bump steer in space', () => {
  it('is nil for a drag link and a track bar equal and parallel, at any rise', () => {
    for (const rise of [-0.1, -0.03, 0, 0.05, 0.12]) {
      expect(steer({ length: 0.9, above: -0.14 }, { length: 0.9, above: -0.14 }, rise)).toBeCloseTo(0, 12)
    }
  })

  it.each([
    [900, 140, 850, 90, 75],
    [900, -140, 850, -90, 75],
    [1050, 60, 900, 100, -90],
  ])('agrees with the card for links %i at %i and %i at %i, rise %i mm', (L_d, h_d, L_t, h_t, z) => {
    const card = bumpSteerError.compute({ L_d: mm(L_d), h_d: mm(h_d), L_t: mm(L_t), h_t: mm(h_t), z: mm(z), r: mm(165) })
    const exact = steer({ length: L_d / 1000, above: h_d / 1000 }, { length: L_t / 1000, above: h_t / 1000 }, z / 1000)
    // the card keeps the drag link in its plane; in space its end goes round with the arm, 3e-4 rad at most here.
    // frame ends at the left and the arm ahead: pulled to the left the wheels turn left, as the card counts them
    expect(Math.abs(exact - card)).toBeLessThan(3e-4)
    expect(Math.abs(card)).toBeGreaterThan(1e-3)
  })
})

describe('bump steer of the demo', () => {
  const p = larchPlan()
  it('is nil at ride height and known all over', () => {
    const { rise = [], curves = [] } = p.bumpSteer ?? {}
    const zero = rise.indexOf(0)
    expect(curves).toHaveLength(3)
    for (const c of curves) {
      expect(c.error[zero]).toBeCloseTo(0, 12)
      expect(c.error.every((e) => e !== null && Number.isFinite(e))).toBe(true)
    }
  })
  it('gets less at the height that it names, as a plan of that height shows', () => {
    const best = p.bumpSteer?.best
    const worst = (plan: typeof p) => Math.max(...(plan.bumpSteer?.curves[0]?.error ?? []).map((e) => Math.abs(e ?? 9)))
    const there = larchPlan({ geometry: { dragLink: { above: `${(best?.height ?? 0) * 1000} mm` } } })
    expect(worst(there)).toBeLessThan(0.6 * worst(p))
    for (const by of [-5, 5]) {
      const beside = larchPlan({ geometry: { dragLink: { above: `${(best?.height ?? 0) * 1000 + by} mm` } } })
      expect(worst(beside)).toBeGreaterThan(worst(there))
    }
  })
})

describe('alignment of the demo', () => {
  const p = larchPlan()
  it('turns toe at the tyre into angle, and the difference to the toe wanted into turns of the tie rod', () => {
    // 1/8 in at 36 in, both wheels: asin(1/576) each
    expect(number(p, 'alignment.toe-wheel').si).toBeCloseTo(Math.asin(1 / 576), 12)
    const change = number(p, 'alignment.rod-change').si
    // half the toe is to go: 1/16 in at 36 in over arms of 7 1/4 in at 12°
    expect(change).toBeCloseTo((-0.0254 / 16 / 36) * 7.25 * Math.cos(12 * DEGREE), 6)
    expect(number(p, 'alignment.turns').si).toBeCloseTo((change / 0.0254) * 9, 9)
  })
  it('gives caster by the sweep and the scrub radius by the offsets', () => {
    expect(number(p, 'alignment.left.caster').si).toBeCloseTo((2.8 * DEGREE) / (2 * Math.sin(20 * DEGREE)), 12)
    expect(number(p, 'alignment.scrub').si / 0.0254).toBeCloseTo(5 - 17.2 * Math.tan(8.5 * DEGREE), 9)
  })
})
