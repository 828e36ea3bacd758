import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic } from '../sources.ts'

const loadIndexRows = {
  id: 'load-index',
  cites: 'Table of load indices, a tyre maker and two other reproductions',
  mark: 'published',
}
export const tyreOverallDiameter = defineFormula({
  id: 'tyre.overall-diameter',
  title: 'Overall diameter of a metric tyre size',
  equation: 'D = d_r + 2 * w * a',
  symbols: {
    d_r: { meaning: 'rim diameter', dimension: 'length', above: 0 },
    w: { meaning: 'section width', dimension: 'length', above: 0 },
    a: { meaning: 'aspect ratio', dimension: 'ratio', above: 0, max: 1.2 },
  },
  result: { symbol: 'D', meaning: 'overall diameter', dimension: 'length' },
  source: { id: 'metric-tyre-size', cites: 'Meaning of the metric tyre designation', mark: 'published', read: 'web copy' },
  examples: [
    {
      given: { d_r: '18 in', w: '245 mm', a: '55 %' },
      gives: '726.7 mm',
      tolerance: 1e-5,
      because: 'four figures',
      source: { id: 'tyre-size-page', cites: 'Page on tyre sizes, 245/55R18', mark: 'published', read: 'web copy' },
    },
    { given: { d_r: '16 in', w: '235 mm', a: '85 %' }, gives: '805.9 mm', tolerance: 1e-5, because: 'four figures', source: arithmetic },
    { given: { d_r: '16 in', w: '315 mm', a: '75 %' }, gives: '878.9 mm', tolerance: 1e-5, because: 'four figures', source: arithmetic },
  ],
  remark: 'New tyre on its measuring rim; real ones differ by some millimetres, and the loaded radius is less than half of it.',
  compute: ({ d_r, w, a }) => si(d_r + 2 * w * a, 'length'),
})
export const tyreLoadFromIndex = defineFormula({
  id: 'tyre.load-from-index',
  title: 'Load of a load index, by its rule of growth',
  equation: 'm = 45 * 10^(LI / 80)',
  symbols: { LI: { meaning: 'load index', dimension: 'ratio', min: 60, max: 150 } },
  result: { symbol: 'm', meaning: 'load one tyre may carry, nearly', dimension: 'mass' },
  source: {
    id: 'load-index-rule',
    cites: 'Growth of the load index by decades of 80',
    mark: 'memory',
    checked: 'within 2 % of the published rows',
  },
  examples: [
    { given: { LI: '90' }, gives: '600 kg', tolerance: 0.02, because: 'the table is rounded', source: loadIndexRows },
    { given: { LI: '110' }, gives: '1060 kg', tolerance: 0.02, because: 'the table is rounded', source: loadIndexRows },
    { given: { LI: '130' }, gives: '1900 kg', tolerance: 0.02, because: 'the table is rounded', source: loadIndexRows },
  ],
  remark: 'The table is the standard; this only fills in between its rows or finds a misprint.',
  compute: ({ LI }) => si(45 * 10 ** (LI / 80), 'mass'),
})
