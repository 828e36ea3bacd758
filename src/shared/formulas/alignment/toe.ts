import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic } from '../sources.ts'

const toe = { id: 'toe-geometry', cites: 'Geometry of toe measured at the tread or the rim', mark: 'derived' } as const
const measured = { meaning: 'diameter at which toe is measured (tread or rim)', dimension: 'length', above: 0 } as const
const wheelAngle = { meaning: 'toe of one wheel, toe-in positive', dimension: 'angle', min: -0.5, max: 0.5 } as const
const totalAngle = { meaning: 'total toe, both wheels together, toe-in positive', dimension: 'angle', min: -1, max: 1 } as const
const threads = { meaning: 'threads per unit of length', dimension: 'curvature', above: 0 } as const

export const toeWheelDistance = defineFormula({
  id: 'toe.wheel-distance',
  title: 'Toe of one wheel as a distance',
  equation: 't = D * sin(delta)',
  symbols: { D: measured, delta: wheelAngle },
  result: { symbol: 't', meaning: 'difference front against rear, one wheel', dimension: 'length' },
  source: { id: 'toe-check', cites: "Article 'How to check toe'", mark: 'published', read: 'web copy' },
  examples: [
    {
      given: { D: '24 in', delta: '0.15°' },
      gives: '0.0628 in',
      tolerance: 1e-3,
      because: 'three figures',
      source: { id: 'toe-check', cites: "Article 'How to check toe'", mark: 'published', read: 'web copy' },
    },
  ],
  compute: ({ D, delta }) => si(D * Math.sin(delta), 'length'),
})

export const toeTotalDistance = defineFormula({
  id: 'toe.total-distance',
  title: 'Total toe as a distance',
  equation: 'T = 2 * D * sin(theta / 2)',
  symbols: { D: measured, theta: totalAngle },
  result: { symbol: 'T', meaning: 'difference front against rear, wheel to wheel', dimension: 'length' },
  source: toe,
  examples: [{ given: { D: '762 mm', theta: '0.2°' }, gives: '2.65988 mm', tolerance: 1e-5, because: 'six figures', source: arithmetic }],
  remark: 'Both wheels alike. To forget the 2, or to take the rim for a measurement at the tread, are the usual errors.',
  compute: ({ D, theta }) => si(2 * D * Math.sin(theta / 2), 'length'),
})

export const toeWheelAngle = defineFormula({
  id: 'toe.wheel-angle',
  title: 'Toe angle of one wheel from the total distance',
  equation: 'delta = asin(T / (2 * D))',
  symbols: { T: { meaning: 'total toe as a distance, toe-in positive', dimension: 'length' }, D: measured },
  result: { symbol: 'delta', meaning: 'toe of one wheel', dimension: 'angle' },
  requires: [{ says: 'the distance is within both diameters: |T| <= 2 D', holds: ({ T, D }) => Math.abs(T) <= 2 * D }],
  source: toe,
  examples: [{ given: { T: '1/8 in', D: '33 in' }, gives: '0.10851°', tolerance: 1e-4, because: 'five figures', source: arithmetic }],
  compute: ({ T, D }) => si(Math.asin(T / (2 * D)), 'angle'),
})

export const toeAngleFromRod = defineFormula({
  id: 'toe.angle-from-rod',
  title: 'Total toe angle from a change of the tie rod',
  equation: 'theta = dL / (r * cos(beta))',
  symbols: {
    dL: { meaning: 'change of the tie-rod length', dimension: 'length' },
    r: { meaning: 'length of the steering arms', dimension: 'length', above: 0 },
    beta: { meaning: 'angle of the arms to straight back', dimension: 'angle', min: -1, max: 1 },
  },
  result: { symbol: 'theta', meaning: 'change of total toe', dimension: 'angle' },
  source: toe,
  examples: [
    { given: { dL: '1/9 in', r: '6 in', beta: '0°' }, gives: '1.0610°', tolerance: 1e-4, because: 'five figures', source: arithmetic },
    { given: { dL: '1/9 in', r: '6 in', beta: '15°' }, gives: '1.0985°', tolerance: 1e-4, because: 'five figures', source: arithmetic },
  ],
  remark:
    'For a small change. A longer rod toes the wheels in when it lies behind the axle and out when it lies ahead; that sign is not in here.',
  compute: ({ dL, r, beta }) => si(dL / (r * Math.cos(beta)), 'angle'),
})

export const toeDistanceFromRod = defineFormula({
  id: 'toe.distance-from-rod',
  title: 'Total toe distance from a change of the tie rod',
  equation: 'T = D * dL / (r * cos(beta))',
  symbols: {
    D: measured,
    dL: { meaning: 'change of the tie-rod length', dimension: 'length' },
    r: { meaning: 'length of the steering arms', dimension: 'length', above: 0 },
    beta: { meaning: 'angle of the arms to straight back', dimension: 'angle', min: -1, max: 1 },
  },
  result: { symbol: 'T', meaning: 'change of total toe, as a distance', dimension: 'length' },
  source: toe,
  examples: [
    {
      given: { D: '36 in', dL: '1/9 in', r: '6 in', beta: '0°' },
      gives: '0.66667 in',
      tolerance: 1e-5,
      because: 'five figures',
      source: arithmetic,
    },
    {
      given: { D: '36 in', dL: '1/9 in', r: '6 in', beta: '15°' },
      gives: '0.69018 in',
      tolerance: 1e-5,
      because: 'five figures',
      source: arithmetic,
    },
  ],
  remark: 'For a small change.',
  compute: ({ D, dL, r, beta }) => si((D * dL) / (r * Math.cos(beta)), 'length'),
})

export const sleeveChangePerTurn = defineFormula({
  id: 'sleeve.change-per-turn',
  title: 'Change of a tie rod for a turn of its right- and left-hand sleeve',
  equation: 'dL = 2 / n',
  symbols: { n: threads },
  result: { symbol: 'dL', meaning: 'change of length for one turn', dimension: 'length' },
  source: toe,
  examples: [{ given: { n: '18 tpi' }, gives: '0.111111 in', tolerance: 1e-5, because: 'six figures', source: arithmetic }],
  compute: ({ n }) => si(2 / n, 'length'),
})

export const sleeveTurns = defineFormula({
  id: 'sleeve.turns',
  title: 'Turns of a right- and left-hand sleeve for a change of length',
  equation: 'N = dL * n / 2',
  symbols: { dL: { meaning: 'change of length wanted', dimension: 'length' }, n: threads },
  result: { symbol: 'N', meaning: 'turns of the sleeve; negative shortens', dimension: 'ratio' },
  source: toe,
  examples: [{ given: { dL: '1/4 in', n: '18 tpi' }, gives: '2.25', tolerance: 1e-9, because: 'exact', source: arithmetic }],
  compute: ({ dL, n }) => si((dL * n) / 2, 'ratio'),
})

export const sleeveChangeSameHand = defineFormula({
  id: 'sleeve.change-same-hand',
  title: 'Change of a rod for a turn, both threads of one hand',
  equation: 'dL = abs(1 / n_1 - 1 / n_2)',
  symbols: {
    n_1: { ...threads, meaning: 'threads per unit of length, one end' },
    n_2: { ...threads, meaning: 'threads per unit of length, other end' },
  },
  result: { symbol: 'dL', meaning: 'change of length for one turn', dimension: 'length' },
  source: toe,
  examples: [{ given: { n_1: '16 tpi', n_2: '20 tpi' }, gives: '0.0125 in', tolerance: 1e-9, because: 'exact', source: arithmetic }],
  remark: 'Zero for two ends of the same pitch: such a rod does not adjust.',
  compute: ({ n_1, n_2 }) => si(Math.abs(1 / n_1 - 1 / n_2), 'length'),
})
