import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { chainAt, chainRange, makeChain, onRod, pitmanRate, travelAtPitman } from '../../../../src/shared/formulas/linkage/chain.ts'
import {
  kingpin,
  type Linkage,
  type LinkageState,
  makeLinkage,
  mirrored,
  rangeOf,
  ratesAt,
  stateAtAngle,
  stateAtTravel,
} from '../../../../src/shared/formulas/linkage/linkage.ts'
import { distance } from '../../../../src/shared/formulas/linkage/plane.ts'
import { type RamMount, ramLength, ramPin, ramRate } from '../../../../src/shared/formulas/linkage/ram-space.ts'
import {
  linkageLeftAngle,
  linkageLever,
  linkagePointAcross,
  linkagePointAhead,
  linkageRightAngleAt,
  linkageRodBack,
  linkageRodMiddle,
  linkageRodMiddleAt,
  linkageRodTilt,
  linkageTravel,
  linkageWheelRatio,
} from '../../../../src/shared/formulas/linkage/rod.ts'
import { metres, radians, ratio } from '../../../../src/shared/quantities/make.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const arm = fc.record({ length: between(0.11, 0.21), lean: between(-0.3, 0.3) })
const input = fc.record({
  tieRod: fc.constantFrom('behind' as const, 'ahead' as const),
  spacing: between(1.1, 1.7),
  left: arm,
  right: arm,
  toe: between(-0.02, 0.02),
})
const made = (i: Parameters<typeof makeLinkage>[0]): Linkage => {
  const result = makeLinkage(i)
  if (!result.ok) throw new Error(JSON.stringify(result.issues))
  return result.value
}
const linkage = input.map(made)
/** a share of the way from straight ahead to the end of the range, each way, kept off the toggle itself */
const share = between(-0.9, 0.9)

/** Joints by trigonometry only, written down anew: no function of the program's own. */
function joints(l: Linkage, left: number, right: number) {
  const k = l.tieRod === 'behind' ? 1 : -1
  const [fL, fR] = [l.left.lean + k * left, l.right.lean - k * right]
  return {
    ax: -l.spacing / 2 + l.left.length * Math.sin(fL),
    ay: -k * l.left.length * Math.cos(fL),
    bx: l.spacing / 2 - l.right.length * Math.sin(fR),
    by: -k * l.right.length * Math.cos(fR),
  }
}

/**
 * Another method: both wheel angles at once by Newton's method on two constraint equations (the rod keeps its length, its middle
 * has gone so far), with a numerical Jacobian, carried in small steps from straight ahead so that the closing cannot change.
 */
function byNewton(l: Linkage, travel: number): { left: number; right: number } {
  const k = l.tieRod === 'behind' ? 1 : -1
  const straight = joints(l, -l.toe / 2, l.toe / 2)
  const equations = (left: number, right: number, want: number): [number, number] => {
    const j = joints(l, left, right)
    return [(j.bx - j.ax) ** 2 + (j.by - j.ay) ** 2 - l.rod ** 2, (k * (j.ax + j.bx - straight.ax - straight.bx)) / 2 - want]
  }
  let [left, right] = [-l.toe / 2, l.toe / 2]
  const steps = 60
  for (let i = 1; i <= steps; i++) {
    const want = (travel * i) / steps
    for (let n = 0; n < 30; n++) {
      const [f, g] = equations(left, right, want)
      const h = 1e-6
      const [f1, g1] = equations(left + h, right, want)
      const [f0, g0] = equations(left - h, right, want)
      const [f3, g3] = equations(left, right + h, want)
      const [f2, g2] = equations(left, right - h, want)
      const [fl, gl, fr, gr] = [(f1 - f0) / (2 * h), (g1 - g0) / (2 * h), (f3 - f2) / (2 * h), (g3 - g2) / (2 * h)]
      const det = fl * gr - fr * gl
      const [dl, dr] = [(f * gr - fr * g) / det, (fl * g - f * gl) / det]
      left -= dl
      right -= dr
      if (Math.abs(dl) + Math.abs(dr) < 1e-14) break
    }
  }
  return { left, right }
}

function at(l: Linkage, part: number): LinkageState {
  const range = rangeOf(l)
  const travel = part >= 0 ? part * range.left.travel : -part * range.right.travel
  const s = stateAtTravel(l, travel, range)
  if (!s.ok) throw new Error(JSON.stringify(s.issues))
  return s.value
}

describe('a linkage in closed form', () => {
  it('agrees to 1e-9 rad with Newton on the constraint equations over 1,000 linkages, both ways about, arms unequal', () => {
    let worst = 0
    fc.assert(
      fc.property(linkage, share, (l, part) => {
        // kept within 0.75 rad of the left wheel and off the toggle, where no method has digits to spare
        const s = at(l, part * 0.8)
        fc.pre(Math.abs(s.left) < 0.75 && Math.abs(s.right) < 0.75)
        const other = byNewton(l, s.travel)
        worst = Math.max(worst, Math.abs(other.left - s.left), Math.abs(other.right - s.right))
        expect(Math.abs(other.left - s.left)).toBeLessThan(1e-9)
        expect(Math.abs(other.right - s.right)).toBeLessThan(1e-9)
      }),
      { numRuns: 1000 },
    )
    expect(worst).toBeGreaterThan(0)
  })

  it('keeps its links: rod and arms stay as long as they are anywhere in the range', () => {
    fc.assert(
      fc.property(linkage, share, (l, part) => {
        const s = at(l, part)
        expect(Math.abs(distance(s.a, s.b) - l.rod)).toBeLessThan(1e-12)
        expect(Math.abs(distance(s.a, kingpin(l, 'left')) - l.left.length)).toBeLessThan(1e-12)
        expect(Math.abs(distance(s.b, kingpin(l, 'right')) - l.right.length)).toBeLessThan(1e-12)
      }),
    )
  })

  it('stands at its toe at no travel, and goes from either wheel to the same place', () => {
    fc.assert(
      fc.property(linkage, share, (l, part) => {
        const straight = at(l, 0)
        expect(straight.left).toBeCloseTo(-l.toe / 2, 12)
        expect(straight.right).toBeCloseTo(l.toe / 2, 12)
        const s = at(l, part)
        expect(stateAtAngle(l, 'right', s.right)?.left).toBeCloseTo(s.left, 8)
        expect(stateAtAngle(l, 'left', s.left)?.travel).toBeCloseTo(s.travel, 12)
      }),
    )
  })

  it('gives in a mirror the mirrored angles at the mirrored travel', () => {
    fc.assert(
      fc.property(linkage, between(-0.6, 0.6), (l, part) => {
        const s = at(l, part)
        const m = mirrored(l)
        const range = rangeOf(m)
        fc.pre(-s.travel < range.left.travel && -s.travel > range.right.travel)
        const seen = stateAtTravel(m, -s.travel, range)
        if (!seen.ok) throw new Error('does not close')
        expect(seen.value.left).toBeCloseTo(-s.right, 9)
        expect(seen.value.right).toBeCloseTo(-s.left, 9)
        expect(seen.value.a.x).toBeCloseTo(-s.b.x, 9)
        expect(seen.value.a.y).toBeCloseTo(s.b.y, 9)
      }),
    )
  })

  it('is the same found from its rod as from its toe', () => {
    fc.assert(
      fc.property(input, (i) => {
        const { toe, ...sizes } = i
        const byToe = made(i)
        expect(made({ ...sizes, rod: byToe.rod }).toe).toBeCloseTo(toe, 10)
      }),
    )
  })

  it('turns as its velocity ratios say, by differences', () => {
    fc.assert(
      fc.property(linkage, between(-0.8, 0.8), (l, part) => {
        const s = at(l, part)
        const range = rangeOf(l)
        const h = 1e-6
        const [up, down] = [stateAtTravel(l, s.travel + h, range), stateAtTravel(l, s.travel - h, range)]
        if (!up.ok || !down.ok) return
        const rates = ratesAt(l, s)
        const by = (of: (x: LinkageState) => number) => (of(up.value) - of(down.value)) / (2 * h)
        const scale = 1 + rates.left ** 2 + rates.right ** 2
        expect(Math.abs(by((x) => x.left) - rates.left)).toBeLessThan(1e-7 * scale)
        expect(Math.abs(by((x) => x.right) - rates.right)).toBeLessThan(1e-7 * scale)
        expect(Math.abs(by((x) => x.a.y) - rates.a.y)).toBeLessThan(1e-7 * scale)
        const tilt = (x: LinkageState) => Math.atan2(x.b.y - x.a.y, x.b.x - x.a.x)
        expect(Math.abs(by(tilt) - rates.tilt)).toBeLessThan(1e-7 * scale)
      }),
    )
  })

  it('beyond its toggle is an issue that says how far it goes, never NaN', () => {
    fc.assert(
      fc.property(linkage, between(1.0001, 50), fc.boolean(), (l, times, left) => {
        const range = rangeOf(l)
        const s = stateAtTravel(l, times * (left ? range.left : range.right).travel, range)
        expect(s.ok ? s.value.travel : s.issues[0]?.code).toBe('linkage.open')
      }),
    )
    // the short arm turns twice as far as the long one and comes into line with the rod first
    const l = made({ tieRod: 'behind', spacing: 1.4, left: { length: 0.2, lean: 0 }, right: { length: 0.1, lean: 0 }, toe: 0 })
    expect(rangeOf(l).left.why).toBe('toggle')
    expect(rangeOf(l).left.angle).toBeLessThan(0.7)
  })

  it('refuses a rod that does not reach, saying what would', () => {
    const arms = { left: { length: 0.15, lean: 0.17 }, right: { length: 0.15, lean: 0.17 } }
    const result = makeLinkage({ tieRod: 'behind', spacing: 1.25, ...arms, rod: 1.4 })
    expect(result.ok ? [] : result.issues).toMatchObject([{ code: 'linkage.rod_does_not_reach', facts: { rod: 1.4 } }])
  })
})

describe('the cards of the linkage', () => {
  it('lead over tilt and middle of the rod to the same angles, places and levers', () => {
    fc.assert(
      fc.property(linkage, between(-0.6, 0.6), between(0, 1.6), between(-0.1, 0.1), (l, part, along, ahead) => {
        const st = at(l, part)
        fc.pre(Math.abs(st.left) < 0.7 && Math.abs(st.right) < 0.7)
        const k = ratio(l.tieRod === 'behind' ? 1 : -1)
        const [w, r_L, r_R, c] = [l.spacing, l.left.length, l.right.length, l.rod].map(metres) as [never, never, never, never]
        const [beta_L, beta_R, tau] = [l.left.lean, l.right.lean, l.toe].map(radians) as [never, never, never]
        const x_0 = linkageRodMiddle.compute({ r_L, r_R, beta_L, beta_R, k, tau })
        const x_m = linkageRodMiddleAt.compute({ x_0, k, x: metres(st.travel) })
        const theta = linkageRodTilt.compute({ w, r_L, r_R, c, x_m })
        const delta_L = linkageLeftAngle.compute({ w, r_L, c, x_m, theta, beta_L, k })
        const delta_R = linkageRightAngleAt.compute({ w, r_R, c, x_m, theta, beta_R, k })
        expect(delta_L).toBeCloseTo(st.left, 9)
        expect(delta_R).toBeCloseTo(st.right, 9)
        expect(linkageTravel.compute({ r_L, r_R, beta_L, beta_R, k, delta_L, delta_R, x_0 })).toBeCloseTo(st.travel, 11)
        const y_m = linkageRodBack.compute({ w, r_L, r_R, c, x_m, theta, k })
        const point = onRod(st, along, ahead)
        const where = { c, theta, k, s: metres(along), e: metres(ahead) }
        expect(linkagePointAcross.compute({ x_m, ...where })).toBeCloseTo(point.x, 9)
        expect(linkagePointAhead.compute({ y_m, ...where })).toBeCloseTo(point.y, 9)
        const phi = { phi_L: radians(beta_L + k * delta_L), phi_R: radians(beta_R - k * delta_R), theta }
        const rates = ratesAt(l, st)
        expect(linkageLever.compute({ r_L, ...phi }) * rates.left).toBeCloseTo(1, 7)
        expect(linkageWheelRatio.compute({ r_L, r_R, ...phi })).toBeCloseTo(rates.right / rates.left, 7)
      }),
    )
  })
})

const end = fc.oneof(
  fc.record({
    kind: fc.constant('knuckle' as const),
    side: fc.constantFrom('left' as const, 'right' as const),
    arm: fc.record({ x: between(-0.03, 0.03), y: between(0.12, 0.2) }),
  }),
  fc.record({ kind: fc.constant('tie rod' as const), along: between(0.8, 1.1), ahead: between(-0.05, 0.05) }),
)
const chained = fc.record({
  l: linkage,
  chain: fc.record({
    pivot: fc.record({ x: between(-0.5, -0.3), y: between(0.2, 0.5) }),
    pitman: between(0.13, 0.2),
    points: between(-1.8, -1.35),
    end,
  }),
})

describe('pitman arm and drag link', () => {
  it('keep their lengths, stand at nought straight ahead, turn as their rate says, and lead back', () => {
    fc.assert(
      fc.property(chained, between(-0.5, 0.5), ({ l, chain: i }, part) => {
        const chain = makeChain(l, at(l, 0), i)
        if (!chain.ok) throw new Error('does not close')
        const straight = chainAt(l, chain.value, at(l, 0))
        expect(straight?.pitman).toBeCloseTo(0, 12)
        const s = at(l, part)
        const ends = chainRange(l, chain.value, rangeOf(l))
        fc.pre(s.travel < 0.95 * (ends.left?.travel ?? 9) && s.travel > 0.95 * (ends.right?.travel ?? -9))
        const c = chainAt(l, chain.value, s)
        if (!c) throw new Error('open within its range')
        expect(distance(c.ball, c.joint)).toBeCloseTo(chain.value.link, 12)
        expect(distance(c.ball, i.pivot)).toBeCloseTo(i.pitman, 12)
        const h = 1e-6
        const near = (by: number) => {
          const moved = stateAtTravel(l, s.travel + by, rangeOf(l))
          return (moved.ok ? chainAt(l, chain.value, moved.value)?.pitman : undefined) ?? Number.NaN
        }
        const rate = pitmanRate(l, chain.value, s, c)
        const measured = (near(h) - near(-h)) / (2 * h)
        // near a toggle the angle goes as a square root of the way left, so the third derivative that a central difference leaves out grows as rate⁵
        expect(Math.abs(measured - rate)).toBeLessThan(1e-6 * (1 + rate ** 2) + h ** 2 * Math.abs(rate) ** 5)
        expect(travelAtPitman(l, chain.value, rangeOf(l), c.pitman)).toBeCloseTo(s.travel, 9)
      }),
    )
  })

  it('says so when the drag link is too short to reach', () => {
    const arms = { left: { length: 0.18, lean: 0.2 }, right: { length: 0.18, lean: 0.2 } }
    const l = made({ tieRod: 'behind', spacing: 1.47, ...arms, toe: 0 })
    const far = { kind: 'knuckle', side: 'right', arm: { x: 0, y: 0.16 } } as const
    const chain = makeChain(l, at(l, 0), { pivot: { x: -0.4, y: 0.4 }, pitman: 0.15, points: -1.6, end: far, link: 0.5 })
    expect(chain.ok ? 'closes' : chain.issues[0]?.code).toBe('chain.does_not_close')
  })
})

describe('a ram in space', () => {
  const mount = fc.record<RamMount>({
    ended: fc.constantFrom('single' as const, 'double' as const),
    base: fc.record({ x: between(0.2, 0.5), y: between(-0.15, 0.05), z: between(-0.1, 0.1) }),
    along: between(0.1, 0.5),
    ahead: between(-0.08, 0.08),
    above: between(-0.1, 0.1),
  })

  it('is as long as its pins are apart, and changes as its rate says', () => {
    fc.assert(
      fc.property(linkage, mount, between(-0.7, 0.7), (l, m, part) => {
        const s = at(l, part)
        const pin = ramPin(m, s)
        const j = joints(l, s.left, s.right)
        const [ux, uy] = [(j.bx - j.ax) / l.rod, (j.by - j.ay) / l.rod]
        const [px, py] = [j.ax + m.along * ux - m.ahead * uy, j.ay + m.along * uy + m.ahead * ux]
        expect(pin.x).toBeCloseTo(px, 12)
        const straight = Math.sqrt((px - m.base.x) ** 2 + (py - m.base.y) ** 2 + (m.above - m.base.z) ** 2)
        expect(ramLength(m, s)).toBeCloseTo(m.ended === 'single' ? straight : px - m.base.x, 12)
        const h = 1e-6
        const near = (by: number) => {
          const moved = stateAtTravel(l, s.travel + by, rangeOf(l))
          return moved.ok ? ramLength(m, moved.value) : Number.NaN
        }
        const rate = ramRate(l, m, s)
        expect(Math.abs((near(h) - near(-h)) / (2 * h) - rate)).toBeLessThan(1e-6 * (1 + ratesAt(l, s).left ** 2))
      }),
    )
  })
})
