import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic, gum } from '../sources.ts'
import { normalBelow } from './normal.ts'

const digits = { because: 'as many figures as it is written with', source: arithmetic } as const
const exact = { because: 'exact', source: arithmetic } as const
const deviation = (of: string) => ({ meaning: `standard uncertainty of ${of}`, dimension: 'length', min: 0 }) as const

export const limitFromBounds = defineFormula({
  id: 'limit.u-from-bounds',
  title: 'Standard uncertainty from "plus and minus so much"',
  equation: 'u = a / sqrt(3)',
  symbols: { a: { meaning: 'plus and minus', dimension: 'length', min: 0 } },
  result: { symbol: 'u', meaning: 'standard uncertainty', dimension: 'length' },
  source: { ...gum, id: 'jcgm-100-4.3.7', cites: 'JCGM 100:2008 (GUM), 4.3.7: bounds with nothing known between them' },
  examples: [{ given: { a: '1 mm' }, gives: '0.577350 mm', tolerance: 1e-6, ...digits }],
  compute: ({ a }) => si(a / Math.sqrt(3), 'length'),
})

export const limitFromGap = defineFormula({
  id: 'limit.u-from-gap',
  title: 'Uncertainty of the travel from that of a gap',
  equation: 'u_x = u_g * x / g',
  symbols: {
    u_g: deviation('the gap'),
    x: { meaning: 'travel at which the stop touches', dimension: 'length', above: 0 },
    g: { meaning: 'gap at the stop, wheels straight', dimension: 'length', above: 0 },
  },
  result: { symbol: 'u_x', meaning: 'standard uncertainty of the travel', dimension: 'length' },
  source: { ...gum, id: 'jcgm-100-5.1', cites: 'JCGM 100:2008 (GUM), 5.1: law of propagation of uncertainty, first approximation' },
  examples: [{ given: { u_g: '0.5 mm', x: '100 mm', g: '70 mm' }, gives: '0.714286 mm', tolerance: 1e-5, ...digits }],
  remark: 'In proportion; the arms lean at lock, which makes it a tenth or so too large.',
  compute: ({ u_g, x, g }) => si((u_g * x) / g, 'length'),
})

export const limitLessClearance = defineFormula({
  id: 'limit.less-clearance',
  title: 'Wheel angle up to the clearance wanted',
  equation: 'delta = delta_c - 2 * asin(g / (2 * R))',
  symbols: {
    delta_c: { meaning: 'wheel angle at which tyre or wheel touches', dimension: 'angle', above: 0, max: 1.5 },
    g: { meaning: 'clearance wanted at that place', dimension: 'length', min: 0 },
    R: { meaning: 'from the kingpin to that place, seen from above', dimension: 'length', above: 0 },
  },
  result: { symbol: 'delta', meaning: 'wheel angle at which the clearance is used up', dimension: 'angle' },
  requires: [{ says: 'the clearance is within the circle: g <= 2 R', holds: ({ g, R }) => g <= 2 * R }],
  source: { id: 'clearance', cites: 'Chord of the way that the touching place goes about the kingpin', mark: 'derived' },
  examples: [{ given: { delta_c: '38°', g: '20 mm', R: '400 mm' }, gives: '35.13491°', tolerance: 1e-6, ...digits }],
  compute: ({ delta_c, g, R }) => si(delta_c - 2 * Math.asin(g / (2 * R)), 'angle'),
})

export const limitMargin = defineFormula({
  id: 'limit.margin',
  title: 'Room between the first stop and the next',
  equation: 'm = x_2 - x_1',
  symbols: {
    x_1: { meaning: 'travel at which the first stops', dimension: 'length' },
    x_2: { meaning: 'travel at which the next would stop', dimension: 'length' },
  },
  result: { symbol: 'm', meaning: 'room between them', dimension: 'length' },
  source: arithmetic,
  examples: [{ given: { x_1: '4 in', x_2: '4.25 in' }, gives: '0.25 in', tolerance: 1e-9, ...exact }],
  compute: ({ x_1, x_2 }) => si(x_2 - x_1, 'length'),
})

export const limitWrongOrder = defineFormula({
  id: 'limit.wrong-order',
  title: 'Chance that the other one stops first',
  equation: '1 - 2 * P = erf(m / sqrt(2 * (u_1^2 + u_2^2)))',
  procedure: true,
  symbols: {
    m: { meaning: 'room between the two', dimension: 'length' },
    u_1: deviation('the one'),
    u_2: deviation('the other'),
  },
  result: { symbol: 'P', meaning: 'chance that the order is the other way round', dimension: 'ratio' },
  requires: [{ says: 'at least one of the two is not known exactly: u_1 + u_2 > 0', holds: ({ u_1, u_2 }) => u_1 + u_2 > 0 }],
  source: {
    ...gum,
    id: 'jcgm-100-normal',
    cites: 'JCGM 100:2008 (GUM), 5.1.2 and annex G: both taken as normally distributed and independent',
  },
  examples: [
    { given: { m: '1.959964 mm', u_1: '0.6 mm', u_2: '0.8 mm' }, gives: '0.025', tolerance: 1e-6, ...digits },
    { given: { m: '0 mm', u_1: '1 mm', u_2: '0 mm' }, gives: '0.5', tolerance: 1e-12, ...exact },
  ],
  compute: ({ m, u_1, u_2 }) => si(normalBelow(-m / Math.hypot(u_1, u_2)), 'ratio'),
})
