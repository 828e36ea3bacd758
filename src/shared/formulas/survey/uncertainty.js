import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic, gum } from '../sources.ts'
export const surveyResolutionUncertainty = defineFormula({
  id: 'survey.resolution-uncertainty',
  title: "Standard uncertainty from the tape's divisions",
  equation: 'u = r / (2 * sqrt(3))',
  symbols: { r: { meaning: 'smallest division that was read', dimension: 'length', min: 0 } },
  result: { symbol: 'u', meaning: 'standard uncertainty of one reading', dimension: 'length' },
  source: gum,
  examples: [
    { given: { r: '1 mm' }, gives: '0.29 mm', tolerance: 6e-3, because: 'F.2.2.1 gives 0.29 times the step, two figures', source: gum },
  ],
  remark: 'Any value within half a division either way is taken as equally likely. A tape held askew is not in here.',
  compute: ({ r }) => si(r / (2 * Math.sqrt(3)), 'length'),
})
export const surveyRepeatability = defineFormula({
  id: 'survey.repeatability',
  title: 'Standard uncertainty of a mean of repeated readings',
  equation: 'u = s / sqrt(n)',
  symbols: {
    s: { meaning: 'standard deviation of the readings', dimension: 'length', min: 0 },
    n: { meaning: 'number of readings', dimension: 'ratio', min: 1 },
  },
  result: { symbol: 'u', meaning: 'standard uncertainty of the mean', dimension: 'length' },
  source: gum,
  examples: [{ given: { s: '1.2 mm', n: '4' }, gives: '0.6 mm', tolerance: 1e-9, because: 'exact', source: arithmetic }],
  remark: 'With two or three readings the standard deviation is itself poorly known; more readings help.',
  compute: ({ s, n }) => si(s / Math.sqrt(n), 'length'),
})
export const surveyCombinedUncertainty = defineFormula({
  id: 'survey.combined-uncertainty',
  title: 'Two independent uncertainties taken together',
  equation: 'u = sqrt(u_1^2 + u_2^2)',
  symbols: {
    u_1: { meaning: 'one standard uncertainty', dimension: 'length', min: 0 },
    u_2: { meaning: 'the other', dimension: 'length', min: 0 },
  },
  result: { symbol: 'u', meaning: 'combined standard uncertainty', dimension: 'length' },
  source: gum,
  examples: [{ given: { u_1: '0.3 mm', u_2: '0.4 mm' }, gives: '0.5 mm', tolerance: 1e-9, because: 'exact', source: arithmetic }],
  remark: 'For a sum or a difference of two lengths that were measured independently of each other.',
  compute: ({ u_1, u_2 }) => si(Math.sqrt(u_1 ** 2 + u_2 ** 2), 'length'),
})
export const surveyExpandedUncertainty = defineFormula({
  id: 'survey.expanded-uncertainty',
  title: 'Expanded uncertainty',
  equation: 'U = k * u',
  symbols: {
    k: { meaning: 'coverage factor; 2 covers about 95 % of cases', dimension: 'ratio', above: 0 },
    u: { meaning: 'combined standard uncertainty', dimension: 'length', min: 0 },
  },
  result: { symbol: 'U', meaning: 'expanded uncertainty, plus and minus', dimension: 'length' },
  source: gum,
  examples: [{ given: { k: '2', u: '0.5 mm' }, gives: '1 mm', tolerance: 1e-9, because: 'exact', source: arithmetic }],
  compute: ({ k, u }) => si(k * u, 'length'),
})
