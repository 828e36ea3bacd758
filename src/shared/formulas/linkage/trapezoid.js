import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic } from '../sources.ts'

const pivots = { meaning: 'distance between the kingpin axes at the height of the rod', dimension: 'length', above: 0 }
const arm = { meaning: 'length of each arm, kingpin to rod end, in plan', dimension: 'length', above: 0 }
const armAngle = { meaning: 'angle of the arms inward from straight back', dimension: 'angle', min: -1, max: 1 }
const apart = {
  says: 'the arms do not reach each other: 2 d < w',
  holds: ({ w, d }) => 2 * d < w,
}
const closure = { id: 'trapezoid-closure', cites: 'Closure of the steering trapezoid, solved two ways', mark: 'derived' }
export const trapezoidOuterAngle = defineFormula({
  id: 'trapezoid.outer-angle',
  title: 'Outer wheel angle of a steering trapezoid',
  equation:
    'sin(beta + delta_i) + sin(beta - delta_o) = w / d - sqrt((w / d - 2 * sin(beta))^2 - (cos(beta - delta_o) - cos(beta + delta_i))^2)',
  procedure: true,
  symbols: {
    w: pivots,
    d: arm,
    beta: armAngle,
    delta_i: { meaning: 'angle of the inner wheel from straight ahead', dimension: 'angle', min: -1.2, max: 1.2 },
  },
  result: { symbol: 'delta_o', meaning: 'angle of the outer wheel', dimension: 'angle' },
  requires: [apart],
  source: {
    id: 'jazar',
    cites: 'Jazar, Vehicle Dynamics, trapezoidal steering',
    mark: 'memory',
    checked: 'derived again here and solved two ways',
  },
  examples: [
    {
      given: { w: '1.25 m', d: '0.15 m', beta: '9.594068°', delta_i: '20°' },
      gives: '18.7809°',
      tolerance: 1e-5,
      because: 'six figures',
      source: closure,
    },
    {
      given: { w: '1.25 m', d: '0.15 m', beta: '9.594068°', delta_i: '35°' },
      gives: '31.0483°',
      tolerance: 1e-5,
      because: 'six figures',
      source: closure,
    },
  ],
  remark:
    'Rod behind the axle, in plan view, wheels straight at the middle. With the rod ahead put beta negative for arms that toe outward and delta_i negative; the answer is then negative too. Of the two closings of the linkage it is the one that follows from straight ahead.',
  compute: ({ w, d, beta, delta_i }) => {
    // lengths in arms: the inner rod end is known, the outer one lies on its own circle at the rod's length from it;
    // u sin(f) + v cos(f) = q for the outer arm's inward angle f
    const rod = w / d - 2 * Math.sin(beta)
    const u = w / d - Math.sin(beta + delta_i)
    const v = Math.cos(beta + delta_i)
    const q = (u ** 2 + v ** 2 + 1 - rod ** 2) / 2
    return si(beta - (Math.atan2(u, v) - Math.acos(q / Math.hypot(u, v))), 'angle')
  },
})
export const trapezoidRodLength = defineFormula({
  id: 'trapezoid.rod-length',
  title: 'Tie-rod length of a steering trapezoid',
  equation: 'c = w - 2 * d * sin(beta)',
  symbols: { w: pivots, d: arm, beta: armAngle },
  result: { symbol: 'c', meaning: 'length of the tie rod, joint to joint', dimension: 'length' },
  requires: [apart],
  source: closure,
  examples: [
    {
      given: { w: '1.25 m', d: '0.15 m', beta: '9.594068°' },
      gives: '1.2 m',
      tolerance: 1e-6,
      because: 'the angle was made for this rod',
      source: closure,
    },
  ],
  compute: ({ w, d, beta }) => si(w - 2 * d * Math.sin(beta), 'length'),
})
export const trapezoidArmAngle = defineFormula({
  id: 'trapezoid.arm-angle',
  title: 'Arm angle of a steering trapezoid',
  equation: 'beta = asin((w - c) / (2 * d))',
  symbols: { w: pivots, c: { meaning: 'length of the tie rod, joint to joint', dimension: 'length', above: 0 }, d: arm },
  result: { symbol: 'beta', meaning: 'angle of the arms inward from straight back, wheels straight', dimension: 'angle' },
  requires: [{ says: 'rod and arms close: |w - c| <= 2 d', holds: ({ w, c, d }) => Math.abs(w - c) <= 2 * d }],
  source: closure,
  examples: [
    { given: { w: '1.25 m', c: '1.2 m', d: '0.15 m' }, gives: '9.594068°', tolerance: 1e-7, because: 'seven figures', source: closure },
  ],
  compute: ({ w, c, d }) => si(Math.asin((w - c) / (2 * d)), 'angle'),
})
export const kingpinSpacingAtHeight = defineFormula({
  id: 'kingpin.spacing-at-height',
  title: 'Distance between leaning kingpins above the ground',
  equation: 'w = w_0 - 2 * h * tan(sigma)',
  symbols: {
    w_0: { meaning: 'distance between the axes at the ground', dimension: 'length', above: 0 },
    h: { meaning: 'height above the ground', dimension: 'length', min: 0 },
    sigma: { meaning: 'kingpin inclination, top inboard positive', dimension: 'angle', above: -0.5, below: 0.5 },
  },
  result: { symbol: 'w', meaning: 'distance between the axes at that height', dimension: 'length' },
  source: closure,
  examples: [
    {
      given: { w_0: '1.5 m', h: '350 mm', sigma: '8.5°' },
      gives: '1.3954 m',
      tolerance: 1e-4,
      because: 'five figures: 105 mm less',
      source: arithmetic,
    },
  ],
  compute: ({ w_0, h, sigma }) => si(w_0 - 2 * h * Math.tan(sigma), 'length'),
})
