import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic, b1_1Rows, b1_13mRows, iso228, iso228Rows, iso724, iso898Rows } from '../sources.ts'

const major = { meaning: 'basic major diameter', dimension: 'length', above: 0 }
const pitch = { meaning: 'pitch', dimension: 'length', above: 0 }
const finer = (depth) => ({
  says: 'the thread is not deeper than the rod is thick',
  holds: ({ d, P }) => depth * P < d,
})
export const threadPitch = defineFormula({
  id: 'thread.pitch',
  title: 'Pitch from threads per inch',
  equation: 'P = 1 / n',
  symbols: { n: { meaning: 'threads per unit of length', dimension: 'curvature', above: 0 } },
  result: { symbol: 'P', meaning: 'pitch', dimension: 'length' },
  source: { id: 'pitch', cites: 'Definition of the pitch of a single-start thread', mark: 'derived' },
  examples: [
    { given: { n: '19 tpi' }, gives: '1.337 mm', tolerance: 4e-4, because: 'four figures', source: iso228Rows },
    { given: { n: '14 tpi' }, gives: '1.814 mm', tolerance: 4e-4, because: 'four figures', source: iso228Rows },
  ],
  compute: ({ n }) => si(1 / n, 'length'),
})
export const threadPitchDiameter60 = defineFormula({
  id: 'thread.pitch-diameter-60',
  title: 'Basic pitch diameter of a 60° thread',
  equation: 'd_2 = d - 0.649519 * P',
  symbols: { d: major, P: pitch },
  result: { symbol: 'd_2', meaning: 'basic pitch diameter', dimension: 'length' },
  requires: [finer(0.649519)],
  source: iso724,
  examples: [
    { given: { d: '1/2 in', P: '0.05 in' }, gives: '0.4675 in', tolerance: 1.3e-4, because: 'four decimals', source: b1_1Rows },
    { given: { d: '12 mm', P: '1.75 mm' }, gives: '10.863 mm', tolerance: 6e-5, because: 'three decimals', source: b1_13mRows },
  ],
  compute: ({ d, P }) => si(d - 0.649519 * P, 'length'),
})
export const threadPitchDiameter55 = defineFormula({
  id: 'thread.pitch-diameter-55',
  title: 'Basic pitch diameter of a 55° pipe thread (G, R)',
  equation: 'd_2 = d - 0.640327 * P',
  symbols: { d: major, P: pitch },
  result: { symbol: 'd_2', meaning: 'basic pitch diameter', dimension: 'length' },
  requires: [finer(0.640327)],
  source: iso228,
  examples: [
    { given: { d: '13.157 mm', P: '1.336842 mm' }, gives: '12.301 mm', tolerance: 1e-4, because: 'three decimals', source: iso228Rows },
    { given: { d: '16.662 mm', P: '1.336842 mm' }, gives: '15.806 mm', tolerance: 1e-4, because: 'three decimals', source: iso228Rows },
  ],
  remark: 'For R threads the diameters are those at the gauge plane.',
  compute: ({ d, P }) => si(d - 0.640327 * P, 'length'),
})
export const threadMinorInternal60 = defineFormula({
  id: 'thread.minor-internal-60',
  title: 'Basic minor diameter of an internal 60° thread',
  equation: 'D_1 = d - 1.082532 * P',
  symbols: { d: major, P: pitch },
  result: { symbol: 'D_1', meaning: 'basic minor diameter', dimension: 'length' },
  requires: [finer(1.082532)],
  source: iso724,
  examples: [{ given: { d: '12 mm', P: '1.25 mm' }, gives: '10.647 mm', tolerance: 6e-5, because: 'three decimals', source: b1_13mRows }],
  compute: ({ d, P }) => si(d - 1.082532 * P, 'length'),
})
export const threadMinorExternal60 = defineFormula({
  id: 'thread.minor-external-60',
  title: 'Minor diameter of an external 60° thread with a rounded root',
  equation: 'd_3 = d - 1.226869 * P',
  symbols: { d: major, P: pitch },
  result: { symbol: 'd_3', meaning: 'minor diameter at the rounded root', dimension: 'length' },
  requires: [finer(1.226869)],
  source: {
    id: 'root-diameter',
    cites: 'Stress-area table after ASME B1.13M, head of the table',
    mark: 'published',
    read: 'a reproduction',
  },
  examples: [{ given: { d: '12 mm', P: '1.75 mm' }, gives: '9.853 mm', tolerance: 3e-5, because: 'three decimals', source: arithmetic }],
  compute: ({ d, P }) => si(d - 1.226869 * P, 'length'),
})
export const threadStressAreaFromDiameters = defineFormula({
  id: 'thread.stress-area-from-diameters',
  title: 'Stress area from pitch and root diameter',
  equation: 'A_s = pi / 4 * ((d_2 + d_3) / 2)^2',
  symbols: {
    d_2: { meaning: 'basic pitch diameter', dimension: 'length', above: 0 },
    d_3: { meaning: 'minor diameter at the rounded root', dimension: 'length', above: 0 },
  },
  result: { symbol: 'A_s', meaning: 'nominal stress area', dimension: 'area' },
  requires: [{ says: 'the root is smaller than the pitch diameter: d_3 < d_2', holds: ({ d_2, d_3 }) => d_3 < d_2 }],
  source: { id: 'iso-898-1-definition', cites: 'ISO 898-1, 9.1.6.1, definition of the nominal stress area', mark: 'memory' },
  examples: [
    { given: { d_2: '10.8633 mm', d_3: '9.8530 mm' }, gives: '84.27 mm²', tolerance: 2e-4, because: 'four figures', source: iso898Rows },
  ],
  compute: ({ d_2, d_3 }) => si((Math.PI / 4) * ((d_2 + d_3) / 2) ** 2, 'area'),
})
