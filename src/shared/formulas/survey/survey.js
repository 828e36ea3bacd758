import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic, surveyGeometry } from '../sources.ts'

const travelLeft = { meaning: 'travel from centre to full left', dimension: 'length', min: 0 }
const travelRight = { meaning: 'travel from centre to full right', dimension: 'length', min: 0 }
export const surveyTravel = defineFormula({
  id: 'survey.travel',
  title: 'Travel to one side, from the marks on the tie rod',
  equation: 't = abs(x_m - x_c)',
  symbols: {
    x_m: { meaning: 'place of the mark at full lock, along the rod', dimension: 'length' },
    x_c: { meaning: 'place of the centre mark, from the same datum', dimension: 'length' },
  },
  result: { symbol: 't', meaning: 'travel of the tie rod to that side', dimension: 'length' },
  source: surveyGeometry,
  examples: [{ given: { x_m: '7 1/8 in', x_c: '3 in' }, gives: '4 1/8 in', tolerance: 1e-9, because: 'exact', source: arithmetic }],
  remark: 'Where a mark was read several times, its mean goes in.',
  compute: ({ x_m, x_c }) => si(Math.abs(x_m - x_c), 'length'),
})
export const surveyTotal = defineFormula({
  id: 'survey.total',
  title: 'Total travel, lock to lock',
  equation: 'T = t_L + t_R',
  symbols: { t_L: travelLeft, t_R: travelRight },
  result: { symbol: 'T', meaning: 'total travel of the tie rod', dimension: 'length' },
  source: surveyGeometry,
  examples: [{ given: { t_L: '4 1/8 in', t_R: '3 7/8 in' }, gives: '8 in', tolerance: 1e-9, because: 'exact', source: arithmetic }],
  remark: 'The centre mark drops out of the sum: an error in it moves one side against the other and leaves the total as it is.',
  compute: ({ t_L, t_R }) => si(t_L + t_R, 'length'),
})
export const surveyOffCentre = defineFormula({
  id: 'survey.off-centre',
  title: 'How far the middle of the travel lies from straight ahead',
  equation: 'o = (t_R - t_L) / 2',
  symbols: { t_L: travelLeft, t_R: travelRight },
  result: { symbol: 'o', meaning: 'middle of the travel against the centre mark, positive to the right', dimension: 'length' },
  source: surveyGeometry,
  examples: [{ given: { t_L: '3.75 in', t_R: '4.25 in' }, gives: '0.25 in', tolerance: 1e-9, because: 'exact', source: arithmetic }],
  compute: ({ t_L, t_R }) => si((t_R - t_L) / 2, 'length'),
})
export const surveyStroke = defineFormula({
  id: 'survey.stroke',
  title: 'Stroke that the travel asks of a ram set at an angle',
  equation: 'S = T * cos(alpha)',
  symbols: {
    T: { meaning: 'total travel of the tie rod', dimension: 'length', min: 0 },
    alpha: {
      meaning: "angle between the ram's line and the tie rod's travel, in the middle of the travel",
      dimension: 'angle',
      min: 0,
      max: 1.2,
    },
  },
  result: { symbol: 'S', meaning: "change of the ram's length over the travel", dimension: 'length' },
  source: surveyGeometry,
  examples: [{ given: { T: '8 in', alpha: '20°' }, gives: '7.5175 in', tolerance: 1e-5, because: 'five figures', source: arithmetic }],
  remark:
    'Holds for a ram that is long against the travel, so that its angle changes little on the way. The exact length follows from the places of both ends, which this does not know: leave room at both ends of the stroke.',
  compute: ({ T, alpha }) => si(T * Math.cos(alpha), 'length'),
})
