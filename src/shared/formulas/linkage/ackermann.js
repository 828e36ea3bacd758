import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { steeringQuestion } from '../sources.ts'

const ackermann = {
  id: 'ackermann',
  cites: 'Condition of true rolling (Ackermann): cot d_o - cot d_i = w / l',
  mark: 'published',
  read: 'question banks and a notebook',
}
const inner = { meaning: 'angle of the inner wheel from straight ahead', dimension: 'angle', above: 0, below: Math.PI / 2 }
const outer = { meaning: 'angle of the outer wheel from straight ahead', dimension: 'angle', above: 0, below: Math.PI / 2 }
const pivots = { meaning: 'distance between the kingpin axes at the ground', dimension: 'length', above: 0 }
const wheelbase = { meaning: 'wheelbase', dimension: 'length', above: 0 }
const track = { meaning: 'track, middle to middle of the tyres', dimension: 'length', above: 0 }
export const ackermannOuterAngle = defineFormula({
  id: 'ackermann.outer-angle',
  title: 'Outer wheel angle for true rolling',
  equation: 'delta_o = atan(1 / (1 / tan(delta_i) + w / l))',
  symbols: { delta_i: inner, w: pivots, l: wheelbase },
  result: { symbol: 'delta_o', meaning: 'angle of the outer wheel', dimension: 'angle' },
  source: ackermann,
  examples: [
    {
      given: { delta_i: '40°', w: '1.065 m', l: '2.743 m' },
      gives: '32.33°',
      tolerance: 2e-4,
      because: 'four figures; the question rounds it to 32°',
      source: steeringQuestion,
    },
    {
      given: { delta_i: '18°', w: '0.44 m', l: '1 m' },
      gives: '15.9°',
      tolerance: 3.2e-3,
      because: 'three figures',
      source: { id: 'rattan', cites: 'Rattan, Theory of Machines, example on the Ackermann condition', mark: 'memory' },
    },
  ],
  remark: 'w is between the kingpin axes, not the track. Slow driving on hard ground; tyres that slip ask for less difference.',
  compute: ({ delta_i, w, l }) => si(Math.atan(1 / (1 / Math.tan(delta_i) + w / l)), 'angle'),
})
export const ackermannPercentage = defineFormula({
  id: 'ackermann.percentage',
  title: 'How much of the true-rolling difference a linkage gives',
  equation: 'x = (delta_i - delta_o) / (delta_i - atan(1 / (1 / tan(delta_i) + w / l)))',
  symbols: { delta_i: inner, delta_o: outer, w: pivots, l: wheelbase },
  result: { symbol: 'x', meaning: 'difference of the wheel angles against the true-rolling one; 1 is all of it', dimension: 'ratio' },
  source: { id: 'ackermann-percentage', cites: 'Ratio of the wheel-angle differences', mark: 'derived' },
  examples: [
    {
      given: { delta_i: '35°', delta_o: '31.0483°', w: '1.25 m', l: '2.8 m' },
      gives: '57.09 %',
      tolerance: 1e-3,
      because: 'four figures',
      source: { id: 'trapezoid-check', cites: 'Closure of the trapezoid solved two ways', mark: 'derived' },
    },
  ],
  remark: 'Other definitions of this percentage are about; this one compares the differences at one inner angle.',
  compute: ({ delta_i, delta_o, w, l }) => si((delta_i - delta_o) / (delta_i - Math.atan(1 / (1 / Math.tan(delta_i) + w / l))), 'ratio'),
})
export const turningOuterFrontRadius = defineFormula({
  id: 'turning.outer-front-radius',
  title: 'Turning radius of the outer front wheel',
  equation: 'R = l / sin(delta_o) + (b - w) / 2',
  symbols: { l: wheelbase, delta_o: outer, b: track, w: pivots },
  result: { symbol: 'R', meaning: 'radius of the path of the outer front wheel', dimension: 'length' },
  source: steeringQuestion,
  examples: [
    {
      given: { l: '2.743 m', delta_o: '32°', b: '1.217 m', w: '1.065 m' },
      gives: '5.25 m',
      tolerance: 1e-3,
      because: 'three figures',
      source: steeringQuestion,
    },
  ],
  remark: 'To the middle of the tyre; wall to wall is wider by the overhang.',
  compute: ({ l, delta_o, b, w }) => si(l / Math.sin(delta_o) + (b - w) / 2, 'length'),
})
export const turningInnerRearRadius = defineFormula({
  id: 'turning.inner-rear-radius',
  title: 'Turning radius of the inner rear wheel',
  equation: 'R = l / tan(delta_i) - (b - w) / 2',
  symbols: { l: wheelbase, delta_i: inner, b: track, w: pivots },
  result: {
    symbol: 'R',
    meaning: 'radius of the path of the inner rear wheel; below zero the turning centre lies inside the axle',
    dimension: 'length',
  },
  source: steeringQuestion,
  examples: [
    {
      given: { l: '2.73 m', delta_i: '40°', b: '1.217 m', w: '1.065 m' },
      gives: '3.18 m',
      tolerance: 1e-3,
      because: 'three figures; the answer needs 2.73 m',
      source: steeringQuestion,
    },
  ],
  remark: 'Front and rear track alike.',
  compute: ({ l, delta_i, b, w }) => si(l / Math.tan(delta_i) - (b - w) / 2, 'length'),
})
export const davisArmAngle = defineFormula({
  id: 'davis.arm-angle',
  title: 'Arm angle of a Davis gear',
  equation: 'alpha = atan(w / (2 * l))',
  symbols: { w: pivots, l: wheelbase },
  result: { symbol: 'alpha', meaning: 'angle of the arms to the line along the vehicle', dimension: 'angle' },
  source: { id: 'davis', cites: 'Condition of the Davis steering gear', mark: 'published', read: 'question banks' },
  examples: [
    {
      given: { w: '1.2 m', l: '2.7 m' },
      gives: '12.5°',
      tolerance: 3e-3,
      because: 'three figures',
      source: { id: 'khurmi', cites: 'Khurmi, Theory of Machines, Davis gear example', mark: 'memory' },
    },
  ],
  compute: ({ w, l }) => si(Math.atan(w / (2 * l)), 'angle'),
})
