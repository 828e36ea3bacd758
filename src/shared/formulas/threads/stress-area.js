import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic, b1_1, b1_1Rows, iso898, iso898Rows } from '../sources.ts'
export const threadStressAreaMetric = defineFormula({
  id: 'thread.stress-area-metric',
  title: 'Stress area of a metric thread',
  equation: 'A_s = pi / 4 * (d - 0.938194 * P)^2',
  symbols: {
    d: { meaning: 'nominal diameter', dimension: 'length', above: 0 },
    P: { meaning: 'pitch', dimension: 'length', above: 0 },
  },
  result: { symbol: 'A_s', meaning: 'nominal stress area', dimension: 'area' },
  requires: [{ says: 'the thread is not deeper than the rod is thick: 0.938194 P < d', holds: ({ d, P }) => 0.938194 * P < d }],
  source: iso898,
  examples: [
    { given: { d: '12 mm', P: '1.75 mm' }, gives: '84.27 mm²', tolerance: 2e-4, because: 'four figures', source: iso898Rows },
    { given: { d: '20 mm', P: '1.5 mm' }, gives: '271.5 mm²', tolerance: 4e-4, because: 'four figures', source: iso898Rows },
  ],
  compute: ({ d, P }) => si((Math.PI / 4) * (d - 0.938194 * P) ** 2, 'area'),
})
export const threadStressAreaInch = defineFormula({
  id: 'thread.stress-area-inch',
  title: 'Stress area of a Unified thread',
  equation: 'A_t = pi / 4 * (D - 0.9743 / n)^2',
  symbols: {
    D: { meaning: 'basic major diameter', dimension: 'length', above: 0 },
    n: { meaning: 'threads per unit of length', dimension: 'curvature', above: 0 },
  },
  result: { symbol: 'A_t', meaning: 'tensile stress area', dimension: 'area' },
  requires: [{ says: 'the thread is not deeper than the rod is thick: 0.9743 / n < D', holds: ({ D, n }) => 0.9743 / n < D }],
  source: b1_1,
  examples: [
    { given: { D: '1/2 in', n: '20 tpi' }, gives: '0.1599 in²', tolerance: 4e-4, because: 'four decimals', source: b1_1Rows },
    { given: { D: '7/8 in', n: '14 tpi' }, gives: '0.509 in²', tolerance: 1e-3, because: 'three decimals', source: b1_1Rows },
  ],
  remark: 'For steels up to 100 ksi; above that the standard has a form with the minimum pitch diameter, which gives a little less.',
  compute: ({ D, n }) => si((Math.PI / 4) * (D - 0.9743 / n) ** 2, 'area'),
})
export const threadStressAreaInchStrong = defineFormula({
  id: 'thread.stress-area-inch-strong',
  title: 'Stress area of a Unified thread in steel above 100 ksi',
  equation: 'A_t = pi * (E_s / 2 - 0.16238 / n)^2',
  symbols: {
    E_s: { meaning: 'minimum pitch diameter of the external thread', dimension: 'length', above: 0 },
    n: { meaning: 'threads per unit of length', dimension: 'curvature', above: 0 },
  },
  result: { symbol: 'A_t', meaning: 'tensile stress area', dimension: 'area' },
  requires: [{ says: 'the thread is not deeper than the rod is thick: 0.32476 / n < E_s', holds: ({ E_s, n }) => 0.32476 / n < E_s }],
  source: { id: 'asme-b1.1-appendix-b', cites: 'ASME B1.1, Appendix B, steels above 100 ksi', mark: 'memory' },
  examples: [
    { given: { E_s: '0.4435 in', n: '13 tpi' }, gives: '0.13757 in²', tolerance: 1e-4, because: 'five decimals', source: arithmetic },
  ],
  remark: 'The minimum pitch diameter depends on the class of fit (1A, 2A, 3A).',
  compute: ({ E_s, n }) => si(Math.PI * (E_s / 2 - 0.16238 / n) ** 2, 'area'),
})
