import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic, geometry } from '../sources.ts'

const digits = { because: 'as many figures as it is written with', source: arithmetic } as const
const outer = { meaning: 'angle of the outer wheel from straight ahead', dimension: 'angle', above: 0, below: Math.PI / 2 } as const
const wheelbase = { meaning: 'wheelbase', dimension: 'length', above: 0 } as const
const pivots = { meaning: 'distance between the kingpin axes at the ground', dimension: 'length', above: 0 } as const

export const kingpinSpacingAtGround = defineFormula({
  id: 'kingpin.spacing-at-ground',
  title: 'Distance between leaning kingpins, at the ground',
  equation: 'w_0 = w + 2 * h * tan(sigma)',
  symbols: {
    w: { meaning: 'distance between the axes at the height of the tie rod', dimension: 'length', above: 0 },
    h: { meaning: 'height of the tie rod above the ground', dimension: 'length', min: 0 },
    sigma: { meaning: 'kingpin inclination, top inboard positive', dimension: 'angle', above: -0.5, below: 0.5 },
  },
  result: { symbol: 'w_0', meaning: 'distance between the axes at the ground', dimension: 'length' },
  source: geometry,
  examples: [{ given: { w: '1.3954 m', h: '350 mm', sigma: '8.5°' }, gives: '1.5000 m', tolerance: 2e-5, ...digits }],
  compute: ({ w, h, sigma }) => si(w + 2 * h * Math.tan(sigma), 'length'),
})

export const turningKerbCircle = defineFormula({
  id: 'turning.kerb-circle',
  title: 'Turning circle between kerbs',
  equation: 'D = 2 * (l / sin(delta_o) + (b - w) / 2 + t / 2)',
  symbols: {
    l: wheelbase,
    delta_o: outer,
    b: { meaning: 'track, middle to middle of the tyres', dimension: 'length', above: 0 },
    w: pivots,
    t: { meaning: 'width of the tyre', dimension: 'length', min: 0 },
  },
  result: { symbol: 'D', meaning: 'diameter of the circle that the outer front tyre goes along', dimension: 'length' },
  source: { id: 'turning-geometry', cites: 'Geometry of slow turning without slip', mark: 'derived' },
  examples: [
    { given: { l: '2.743 m', delta_o: '32°', b: '1.217 m', w: '1.065 m', t: '0.25 m' }, gives: '10.75452 m', tolerance: 1e-6, ...digits },
  ],
  remark: 'By the outer wheel; where the linkage misses true rolling the tyres slip and the circle grows a little.',
  compute: ({ l, delta_o, b, w, t }) => si(2 * (l / Math.sin(delta_o) + (b - w) / 2 + t / 2), 'length'),
})

export const turningWallCircle = defineFormula({
  id: 'turning.wall-circle',
  title: 'Turning circle between walls',
  equation: 'D = 2 * sqrt((l / tan(delta_o) - w / 2 + e)^2 + (l + f)^2)',
  symbols: {
    l: wheelbase,
    delta_o: outer,
    w: pivots,
    e: { meaning: "from the vehicle's middle out to its front corner", dimension: 'length', min: 0 },
    f: { meaning: 'from the front axle ahead to that corner', dimension: 'length', min: 0 },
  },
  result: { symbol: 'D', meaning: 'diameter of the circle that the front corner goes along', dimension: 'length' },
  source: { id: 'turning-geometry', cites: 'Geometry of slow turning without slip', mark: 'derived' },
  examples: [
    { given: { l: '2.743 m', delta_o: '32°', w: '1.065 m', e: '0.9 m', f: '0.8 m' }, gives: '11.86322 m', tolerance: 1e-5, ...digits },
  ],
  compute: ({ l, delta_o, w, e, f }) => si(2 * Math.hypot(l / Math.tan(delta_o) - w / 2 + e, l + f), 'length'),
})

export const rollSteerLeaf = defineFormula({
  id: 'roll-steer.leaf',
  title: 'Roll steer of a leaf-sprung axle',
  equation: 'q = h / a',
  symbols: {
    h: { meaning: 'height of the fixed eye above the axle seat of the spring; below negative', dimension: 'length' },
    a: { meaning: 'from the axle seat to the fixed eye, fore and aft', dimension: 'length', above: 0 },
  },
  result: { symbol: 'q', meaning: 'steer of the axle for its roll', dimension: 'ratio' },
  source: { id: 'roll-steer', cites: 'First approximation: the axle seat swings about the fixed eye', mark: 'derived' },
  examples: [{ given: { h: '-30 mm', a: '600 mm' }, gives: '-0.05', tolerance: 1e-9, ...digits }],
  remark:
    'A leaf is not a stiff arm: its middle swings about a point nearer the axle. Good for the sign and the size, not for the last tenth.',
  compute: ({ h, a }) => si(h / a, 'ratio'),
})
