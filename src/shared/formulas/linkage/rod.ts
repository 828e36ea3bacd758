import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { makeLinkage, stateAtAngle } from './linkage.ts'
import { angleOf, armOf, EQUAL, e1, k, leanOf, length, middle, planView, rodLength, spacing, tilt, toe, UNEQUAL } from './symbols.ts'

const sizes = { w: spacing, r_L: armOf('left'), r_R: armOf('right') } as const
const leans = { beta_L: leanOf('left'), beta_R: leanOf('right') } as const
type Sizes = { readonly w: number; readonly r_L: number; readonly r_R: number }
const apart = { says: 'the arms do not reach each other: r_L + r_R < w', holds: ({ w, r_L, r_R }: Sizes) => r_L + r_R < w }
const travel = { meaning: 'travel of the tie rod from straight ahead, left turn positive', dimension: 'length' } as const

export const linkageRodLength = defineFormula({
  id: 'linkage.rod-length',
  title: 'Tie-rod length from arms and static toe',
  equation:
    'c = sqrt((w - r_L * sin(beta_L - k * tau / 2) - r_R * sin(beta_R - k * tau / 2))^2 + (r_L * cos(beta_L - k * tau / 2) - r_R * cos(beta_R - k * tau / 2))^2)',
  symbols: { ...sizes, ...leans, k, tau: toe },
  result: { symbol: 'c', meaning: 'length of the tie rod, joint to joint', dimension: 'length' },
  requires: [apart],
  source: planView,
  examples: [
    { given: { ...EQUAL, k: '1', tau: '0.2°' }, gives: '1.20051635 m', tolerance: 1e-8, ...e1 },
    { given: { ...UNEQUAL, k: '-1', tau: '0.2°' }, gives: '1.20686286 m', tolerance: 1e-8, ...e1 },
    { given: { ...UNEQUAL, k: '1', tau: '0.2°' }, gives: '1.20796869 m', tolerance: 1e-8, ...e1 },
  ],
  compute: ({ w, r_L, r_R, beta_L, beta_R, k, tau }) => {
    const [l, r] = [beta_L - (k * tau) / 2, beta_R - (k * tau) / 2]
    return si(Math.hypot(w - r_L * Math.sin(l) - r_R * Math.sin(r), r_L * Math.cos(l) - r_R * Math.cos(r)), 'length')
  },
})

export const linkageRightAngle = defineFormula({
  id: 'linkage.right-angle',
  title: 'Angle of the right wheel from that of the left',
  equation:
    '(w - r_L * sin(beta_L + k * delta_L) - r_R * sin(beta_R - k * delta_R))^2 + (r_L * cos(beta_L + k * delta_L) - r_R * cos(beta_R - k * delta_R))^2 = c^2',
  procedure: true,
  symbols: { ...sizes, ...leans, c: rodLength, k, delta_L: angleOf('left') },
  result: { symbol: 'delta_R', meaning: 'angle of the right wheel, left turn positive', dimension: 'angle' },
  requires: [apart],
  source: planView,
  examples: [
    { given: { ...EQUAL, c: '1.2 m', k: '1', delta_L: '20°' }, gives: '18.780865°', tolerance: 1e-6, ...e1 },
    { given: { ...UNEQUAL, c: '1.20741570885 m', k: '1', delta_L: '20°' }, gives: '16.4844565°', tolerance: 1e-7, ...e1 },
    { given: { ...UNEQUAL, c: '1.20741570885 m', k: '-1', delta_L: '20°' }, gives: '18.2051539°', tolerance: 1e-7, ...e1 },
  ],
  remark: 'Seen from above, in the plane of the rod. Of the two closings of the linkage the one that follows from straight ahead.',
  compute: ({ w, r_L, r_R, beta_L, beta_R, c, k, delta_L }) => {
    const left = { length: r_L, lean: beta_L }
    const made = makeLinkage({ tieRod: 'behind', spacing: w, left, right: { length: r_R, lean: beta_R }, rod: c })
    const state = made.ok ? stateAtAngle(made.value, 'left', k * delta_L) : undefined
    return si((state?.right ?? Number.NaN) / k, 'angle')
  },
})

export const linkageLeftAngleFromRight = defineFormula({
  id: 'linkage.left-angle-from-right',
  title: 'Angle of the left wheel from that of the right',
  equation: linkageRightAngle.equation,
  procedure: true,
  symbols: { ...sizes, ...leans, c: rodLength, k, delta_R: angleOf('right') },
  result: { symbol: 'delta_L', meaning: 'angle of the left wheel, left turn positive', dimension: 'angle' },
  requires: [apart],
  source: planView,
  examples: [
    { given: { ...EQUAL, c: '1.2 m', k: '1', delta_R: '18.780865°' }, gives: '20°', tolerance: 1e-6, ...e1 },
    { given: { ...UNEQUAL, c: '1.20741570885 m', k: '1', delta_R: '-18.2051539°' }, gives: '-20°', tolerance: 1e-7, ...e1 },
    { given: { ...UNEQUAL, c: '1.20741570885 m', k: '-1', delta_R: '-16.4844565°' }, gives: '-20°', tolerance: 1e-7, ...e1 },
  ],
  compute: ({ w, r_L, r_R, beta_L, beta_R, c, k, delta_R }) => {
    const left = { length: r_L, lean: beta_L }
    const made = makeLinkage({ tieRod: 'behind', spacing: w, left, right: { length: r_R, lean: beta_R }, rod: c })
    const state = made.ok ? stateAtAngle(made.value, 'right', k * delta_R) : undefined
    return si((state?.left ?? Number.NaN) / k, 'angle')
  },
})

export const linkageRodMiddle = defineFormula({
  id: 'linkage.rod-middle',
  title: 'Middle of the tie rod, wheels straight ahead',
  equation: 'x_0 = (r_L * sin(beta_L - k * tau / 2) - r_R * sin(beta_R - k * tau / 2)) / 2',
  symbols: { r_L: sizes.r_L, r_R: sizes.r_R, ...leans, k, tau: toe },
  result: { symbol: 'x_0', meaning: 'to the right of the middle between the kingpins', dimension: 'length' },
  source: planView,
  examples: [
    {
      given: { r_L: '0.15 m', r_R: '0.17 m', beta_L: '9.594068°', beta_R: '6°', k: '1', tau: '0°' },
      gives: '3.61508 mm',
      tolerance: 1e-5,
      ...e1,
    },
    {
      given: { r_L: '0.15 m', r_R: '0.17 m', beta_L: '9.594068°', beta_R: '6°', k: '-1', tau: '2°' },
      gives: '3.42982 mm',
      tolerance: 1e-4,
      ...e1,
    },
  ],
  remark: 'Nought for equal arms.',
  compute: ({ r_L, r_R, beta_L, beta_R, k, tau }) =>
    si((r_L * Math.sin(beta_L - (k * tau) / 2) - r_R * Math.sin(beta_R - (k * tau) / 2)) / 2, 'length'),
})

export const linkageTravel = defineFormula({
  id: 'linkage.travel',
  title: 'Tie-rod travel at given wheel angles',
  equation: 'x = k * ((r_L * sin(beta_L + k * delta_L) - r_R * sin(beta_R - k * delta_R)) / 2 - x_0)',
  symbols: {
    r_L: sizes.r_L,
    r_R: sizes.r_R,
    ...leans,
    k,
    delta_L: angleOf('left'),
    delta_R: angleOf('right'),
    x_0: { meaning: 'where its middle stands straight ahead', dimension: 'length' },
  },
  result: { symbol: 'x', meaning: 'travel of the middle of the rod along the axle, left turn positive', dimension: 'length' },
  source: planView,
  examples: [
    {
      given: {
        r_L: '0.15 m',
        r_R: '0.17 m',
        beta_L: '9.594068°',
        beta_R: '6°',
        k: '1',
        delta_L: '20°',
        delta_R: '16.4844565°',
        x_0: '3.61508 mm',
      },
      gives: '48.89115 mm',
      tolerance: 1e-6,
      ...e1,
    },
    {
      given: {
        r_L: '0.15 m',
        r_R: '0.17 m',
        beta_L: '9.594068°',
        beta_R: '6°',
        k: '-1',
        delta_L: '20°',
        delta_R: '18.2051539°',
        x_0: '3.61508 mm',
      },
      gives: '52.01209 mm',
      tolerance: 1e-6,
      ...e1,
    },
  ],
  remark:
    'A mark on the rod read against a straight edge shows the same to a few tenths of a millimetre: the rod tilts a little as it goes.',
  compute: ({ r_L, r_R, beta_L, beta_R, k, delta_L, delta_R, x_0 }) =>
    si(k * ((r_L * Math.sin(beta_L + k * delta_L) - r_R * Math.sin(beta_R - k * delta_R)) / 2 - x_0), 'length'),
})

export const linkageRodMiddleAt = defineFormula({
  id: 'linkage.rod-middle-at',
  title: 'Middle of the tie rod after a travel',
  equation: 'x_m = x_0 + k * x',
  symbols: { x_0: { meaning: 'where it stands straight ahead', dimension: 'length' }, k, x: travel },
  result: { symbol: 'x_m', meaning: middle.meaning, dimension: 'length' },
  source: planView,
  examples: [
    { given: { x_0: '3.6 mm', k: '1', x: '48.9 mm' }, gives: '52.5 mm', tolerance: 1e-9, ...e1 },
    { given: { x_0: '3.6 mm', k: '-1', x: '52 mm' }, gives: '-48.4 mm', tolerance: 1e-9, ...e1 },
  ],
  compute: ({ x_0, k, x }) => si(x_0 + k * x, 'length'),
})

const place = { w: spacing, r_L: sizes.r_L, r_R: sizes.r_R, c: rodLength, x_m: middle } as const
const LEFT_TURN = { w: '1.25 m', r_L: '0.15 m', r_R: '0.17 m', c: '1.20741570885 m', x_m: '52.506234 mm' } as const
const RIGHT_TURN = { ...LEFT_TURN, x_m: '-48.397005 mm' } as const

/** How far fore or aft of its kingpin each joint stands, taken as positive, for a tilt of the rod. */
function reach({ w, r_L, r_R, c, x_m }: Readonly<Record<keyof typeof place, number>>, theta: number): readonly [number, number] {
  const [l, r] = [x_m + w / 2 - (c * Math.cos(theta)) / 2, x_m - w / 2 + (c * Math.cos(theta)) / 2]
  return [Math.sqrt(r_L ** 2 - l ** 2), Math.sqrt(r_R ** 2 - r ** 2)]
}

export const linkageRodTilt = defineFormula({
  id: 'linkage.rod-tilt',
  title: 'Tilt of the tie rod after a travel',
  equation: 'sqrt(r_L^2 - (x_m + w / 2 - c * cos(theta) / 2)^2) - sqrt(r_R^2 - (x_m - w / 2 + c * cos(theta) / 2)^2) = c * sin(theta)',
  procedure: true,
  symbols: place,
  result: { symbol: 'theta', meaning: 'tilt of the rod in plan, left turn positive for a rod behind the axle', dimension: 'angle' },
  source: planView,
  examples: [
    { given: LEFT_TURN, gives: '-1.74321779°', tolerance: 1e-6, ...e1 },
    { given: RIGHT_TURN, gives: '-0.3569092°', tolerance: 1e-6, ...e1 },
  ],
  remark: 'Found by putting the tilt into the left side until it no longer changes. Arms short of square to the axle.',
  compute: (v) => {
    let theta = 0
    for (let i = 0; i < 200; i++) {
      const [l, r] = reach(v, theta)
      const next = Math.asin((l - r) / v.c)
      if (!(Math.abs(next - theta) > 1e-15)) return si(next, 'angle')
      theta = next
    }
    return si(Number.NaN, 'angle')
  },
})

export const linkageLeftAngle = defineFormula({
  id: 'linkage.left-angle',
  title: 'Angle of the left wheel after a travel',
  equation: 'delta_L = k * (asin((x_m + w / 2 - c * cos(theta) / 2) / r_L) - beta_L)',
  symbols: { w: spacing, r_L: sizes.r_L, c: rodLength, x_m: middle, theta: tilt, beta_L: leans.beta_L, k },
  result: { symbol: 'delta_L', meaning: 'angle of the left wheel, left turn positive', dimension: 'angle' },
  source: planView,
  examples: [
    {
      given: { w: '1.25 m', r_L: '0.15 m', c: '1.20741570885 m', x_m: '52.506234 mm', theta: '-1.74321779°', beta_L: '9.594068°', k: '1' },
      gives: '20°',
      tolerance: 1e-6,
      ...e1,
    },
    {
      given: { w: '1.25 m', r_L: '0.15 m', c: '1.20741570885 m', x_m: '-48.397005 mm', theta: '-0.3569092°', beta_L: '9.594068°', k: '-1' },
      gives: '20°',
      tolerance: 1e-6,
      ...e1,
    },
  ],
  compute: ({ w, r_L, c, x_m, theta, beta_L, k }) => si(k * (Math.asin((x_m + w / 2 - (c * Math.cos(theta)) / 2) / r_L) - beta_L), 'angle'),
})

export const linkageRightAngleAt = defineFormula({
  id: 'linkage.right-angle-at',
  title: 'Angle of the right wheel after a travel',
  equation: 'delta_R = k * (beta_R - asin((w / 2 - x_m - c * cos(theta) / 2) / r_R))',
  symbols: { w: spacing, r_R: sizes.r_R, c: rodLength, x_m: middle, theta: tilt, beta_R: leans.beta_R, k },
  result: { symbol: 'delta_R', meaning: 'angle of the right wheel, left turn positive', dimension: 'angle' },
  source: planView,
  examples: [
    {
      given: { w: '1.25 m', r_R: '0.17 m', c: '1.20741570885 m', x_m: '52.506234 mm', theta: '-1.74321779°', beta_R: '6°', k: '1' },
      gives: '16.4844565°',
      tolerance: 1e-6,
      ...e1,
    },
    {
      given: { w: '1.25 m', r_R: '0.17 m', c: '1.20741570885 m', x_m: '-48.397005 mm', theta: '-0.3569092°', beta_R: '6°', k: '-1' },
      gives: '18.2051539°',
      tolerance: 1e-6,
      ...e1,
    },
  ],
  compute: ({ w, r_R, c, x_m, theta, beta_R, k }) => si(k * (beta_R - Math.asin((w / 2 - x_m - (c * Math.cos(theta)) / 2) / r_R)), 'angle'),
})

export const linkageRodBack = defineFormula({
  id: 'linkage.rod-back',
  title: 'Middle of the tie rod, ahead of the kingpins',
  equation: 'y_m = -k * (sqrt(r_L^2 - (x_m + w / 2 - c * cos(theta) / 2)^2) + sqrt(r_R^2 - (x_m - w / 2 + c * cos(theta) / 2)^2)) / 2',
  symbols: { ...place, theta: tilt, k },
  result: { symbol: 'y_m', meaning: 'ahead of the line between the kingpins; behind negative', dimension: 'length' },
  source: planView,
  examples: [
    { given: { ...LEFT_TURN, theta: '-1.74321779°', k: '1' }, gives: '-148.79682 mm', tolerance: 1e-6, ...e1 },
    { given: { ...RIGHT_TURN, theta: '-0.3569092°', k: '-1' }, gives: '151.293534 mm', tolerance: 1e-6, ...e1 },
  ],
  compute: ({ theta, k, ...v }) => {
    const [l, r] = reach(v, theta)
    return si((-k * (l + r)) / 2, 'length')
  },
})

const onRod = {
  c: rodLength,
  theta: tilt,
  k,
  s: { meaning: 'along the rod from its left joint', dimension: 'length' },
  e: { meaning: "ahead of the rod's line; behind negative", dimension: 'length' },
} as const

export const linkagePointAcross = defineFormula({
  id: 'linkage.point-across',
  title: 'A point fixed to the tie rod, along the axle',
  equation: 'x_p = x_m + (s - c / 2) * cos(theta) - k * e * sin(theta)',
  symbols: { x_m: middle, ...onRod },
  result: { symbol: 'x_p', meaning: 'to the right of the middle between the kingpins', dimension: 'length' },
  source: planView,
  examples: [
    {
      given: { x_m: '52.506234 mm', c: '1.20741570885 m', theta: '-1.74321779°', k: '1', s: '0.5 m', e: '40 mm' },
      gives: '-49.936816 mm',
      tolerance: 1e-6,
      ...e1,
    },
    {
      given: { x_m: '-48.397005 mm', c: '1.20741570885 m', theta: '-0.3569092°', k: '-1', s: '0.5 m', e: '40 mm' },
      gives: '-152.352015 mm',
      tolerance: 1e-6,
      ...e1,
    },
  ],
  compute: ({ x_m, c, theta, k, s, e }) => si(x_m + (s - c / 2) * Math.cos(theta) - k * e * Math.sin(theta), 'length'),
})

export const linkagePointAhead = defineFormula({
  id: 'linkage.point-ahead',
  title: 'A point fixed to the tie rod, fore and aft',
  equation: 'y_p = y_m + k * (s - c / 2) * sin(theta) + e * cos(theta)',
  symbols: { y_m: length('middle of the rod, ahead of the line between the kingpins'), ...onRod },
  result: { symbol: 'y_p', meaning: 'ahead of the line between the kingpins; behind negative', dimension: 'length' },
  source: planView,
  examples: [
    {
      given: { y_m: '-148.796821 mm', c: '1.20741570885 m', theta: '-1.74321779°', k: '1', s: '0.5 m', e: '40 mm' },
      gives: '-105.66052 mm',
      tolerance: 1e-6,
      ...e1,
    },
    {
      given: { y_m: '151.293534 mm', c: '1.20741570885 m', theta: '-0.3569092°', k: '-1', s: '0.5 m', e: '40 mm' },
      gives: '190.646740 mm',
      tolerance: 1e-6,
      ...e1,
    },
  ],
  compute: ({ y_m, c, theta, k, s, e }) => si(y_m + k * (s - c / 2) * Math.sin(theta) + e * Math.cos(theta), 'length'),
})

const armLean = (side: string) =>
  ({ meaning: `lean of the ${side} arm inward, as it stands`, dimension: 'angle', min: -1.5, max: 1.5 }) as const

export const linkageLever = defineFormula({
  id: 'linkage.lever',
  title: "Lever of the tie rod's force on both wheels together",
  equation: 'l_L = r_L / 2 * (cos(phi_L) + cos(phi_R) * cos(phi_L - theta) / cos(phi_R + theta))',
  symbols: { r_L: sizes.r_L, phi_L: armLean('left'), phi_R: armLean('right'), theta: tilt },
  result: { symbol: 'l_L', meaning: 'travel of the rod for a radian of the left wheel', dimension: 'length' },
  source: { id: 'virtual-work', cites: 'Principle of virtual work on the tie rod: both joints move alike along it', mark: 'derived' },
  examples: [
    {
      given: { r_L: '0.15 m', phi_L: '29.594068°', phi_R: '-10.484456°', theta: '-1.74321779°' },
      gives: '0.12966766 m',
      tolerance: 1e-7,
      ...e1,
    },
    { given: { r_L: '0.15 m', phi_L: '0°', phi_R: '0°', theta: '0°' }, gives: '0.15 m', tolerance: 1e-9, ...e1 },
  ],
  remark: 'A force along the rod makes this lever times the force in torque, both kingpins together, counted at the left one.',
  compute: ({ r_L, phi_L, phi_R, theta }) =>
    si((r_L / 2) * (Math.cos(phi_L) + (Math.cos(phi_R) * Math.cos(phi_L - theta)) / Math.cos(phi_R + theta)), 'length'),
})

export const linkageWheelRatio = defineFormula({
  id: 'linkage.wheel-ratio',
  title: 'How much the right wheel turns for a little turn of the left',
  equation: 'i = r_L * cos(phi_L - theta) / (r_R * cos(phi_R + theta))',
  symbols: { r_L: sizes.r_L, r_R: sizes.r_R, phi_L: armLean('left'), phi_R: armLean('right'), theta: tilt },
  result: { symbol: 'i', meaning: 'turn of the right wheel over turn of the left', dimension: 'ratio' },
  source: { id: 'virtual-work', cites: 'Principle of virtual work on the tie rod: both joints move alike along it', mark: 'derived' },
  examples: [
    {
      given: { r_L: '0.15 m', r_R: '0.17 m', phi_L: '29.594068°', phi_R: '-10.484456°', theta: '-1.74321779°' },
      gives: '0.77112987',
      tolerance: 1e-7,
      ...e1,
    },
  ],
  compute: ({ r_L, r_R, phi_L, phi_R, theta }) => si((r_L * Math.cos(phi_L - theta)) / (r_R * Math.cos(phi_R + theta)), 'ratio'),
})
