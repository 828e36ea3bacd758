import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic } from '../sources.ts'

const axis = { id: 'steering-axis', cites: 'Geometry of a leaning steering axis', mark: 'derived' } as const
const radius = { meaning: 'loaded radius of the tyre', dimension: 'length', above: 0 } as const

export const steeringRatio = defineFormula({
  id: 'steering.ratio',
  title: 'Steering ratio',
  equation: 'N = theta_h / theta_w',
  symbols: {
    theta_h: { meaning: 'turn of the hand wheel', dimension: 'angle', above: 0 },
    theta_w: { meaning: 'turn of the road wheel', dimension: 'angle', above: 0 },
  },
  result: { symbol: 'N', meaning: 'steering ratio', dimension: 'ratio' },
  source: { id: 'steering-ratio', cites: "Encyclopedia article 'Steering ratio'", mark: 'published' },
  examples: [
    {
      given: { theta_h: '360°', theta_w: '24°' },
      gives: '15',
      tolerance: 1e-9,
      because: 'exact',
      source: { id: 'steering-ratio', cites: "Encyclopedia article 'Steering ratio'", mark: 'published' },
    },
  ],
  compute: ({ theta_h, theta_w }) => si(theta_h / theta_w, 'ratio'),
})

export const kingpinGroundOffset = defineFormula({
  id: 'kingpin.ground-offset',
  title: 'Kingpin offset at the ground (scrub radius)',
  equation: 'E = b + o - R * tan(sigma)',
  symbols: {
    b: { meaning: "from the kingpin axis to the hub's mounting face, at axle height", dimension: 'length', min: 0 },
    o: { meaning: "from the hub's mounting face out to the middle of the tyre; inward negative", dimension: 'length' },
    R: radius,
    sigma: { meaning: 'kingpin inclination, top inboard positive', dimension: 'angle', above: -0.5, below: 0.5 },
  },
  result: {
    symbol: 'E',
    meaning: 'from the axis to the middle of the tyre print, on the ground; positive when the tyre is outside',
    dimension: 'length',
  },
  source: axis,
  examples: [
    {
      given: { b: '120 mm', o: '25 mm', R: '450 mm', sigma: '8.5°' },
      gives: '77.75 mm',
      tolerance: 1e-4,
      because: 'four figures',
      source: arithmetic,
    },
  ],
  remark: 'Grows with wheel outset, falls with tyre radius.',
  compute: ({ b, o, R, sigma }) => si(b + o - R * Math.tan(sigma), 'length'),
})

export const kingpinTrail = defineFormula({
  id: 'kingpin.trail',
  title: 'Trail from caster',
  equation: 't = R * tan(tau) + o',
  symbols: {
    R: radius,
    tau: { meaning: 'caster angle, top leaning back positive', dimension: 'angle', above: -0.5, below: 0.5 },
    o: { meaning: 'distance of the wheel centre behind the steering axis', dimension: 'length' },
  },
  result: { symbol: 't', meaning: 'tyre print behind the steering axis, on the ground', dimension: 'length' },
  source: { id: 'trail', cites: 'Trail of a raked steering axis, first approximation', mark: 'memory' },
  examples: [
    { given: { R: '450 mm', tau: '5°', o: '0 mm' }, gives: '39.37 mm', tolerance: 1e-4, because: 'four figures', source: arithmetic },
    { given: { R: '450 mm', tau: '5°', o: '10 mm' }, gives: '49.37 mm', tolerance: 1e-4, because: 'four figures', source: arithmetic },
  ],
  compute: ({ R, tau, o }) => si(R * Math.tan(tau) + o, 'length'),
})
