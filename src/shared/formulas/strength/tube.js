import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { machineElements, mechanicsOfMaterials, tubeRows } from '../sources.ts'

const outside = { meaning: 'outside diameter', dimension: 'length', above: 0 }
const inside = { meaning: 'inside diameter; 0 for a solid bar', dimension: 'length', min: 0 }
const symbols = { D: outside, d: inside }
const hollow = {
  says: 'the inside is smaller than the outside: d < D',
  holds: ({ D, d }) => d < D,
}
export const tubeArea = defineFormula({
  id: 'tube.area',
  title: 'Section area of a tube',
  equation: 'A = pi * (D^2 - d^2) / 4',
  symbols,
  result: { symbol: 'A', meaning: 'section area', dimension: 'area' },
  requires: [hollow],
  source: machineElements,
  examples: [{ given: { D: '1.5 in', d: '1 in' }, gives: '0.981748 in²', tolerance: 1e-6, because: 'six figures', source: tubeRows }],
  compute: ({ D, d }) => si((Math.PI * (D ** 2 - d ** 2)) / 4, 'area'),
})
export const tubeSecondMoment = defineFormula({
  id: 'tube.second-moment',
  title: 'Second moment of area of a tube',
  equation: 'I = pi * (D^4 - d^4) / 64',
  symbols,
  result: { symbol: 'I', meaning: 'second moment of area', dimension: 'secondMomentOfArea' },
  requires: [hollow],
  source: machineElements,
  examples: [
    { given: { D: '40 mm', d: '36 mm' }, gives: '43220 mm⁴', tolerance: 2e-4, because: 'four figures', source: mechanicsOfMaterials },
    { given: { D: '1.5 in', d: '1 in' }, gives: '0.19942 in⁴', tolerance: 3e-5, because: 'five figures', source: tubeRows },
  ],
  compute: ({ D, d }) => si((Math.PI * (D ** 4 - d ** 4)) / 64, 'secondMomentOfArea'),
})
export const tubeSectionModulus = defineFormula({
  id: 'tube.section-modulus',
  title: 'Section modulus of a tube',
  equation: 'Z = pi * (D^4 - d^4) / (32 * D)',
  symbols,
  result: { symbol: 'Z', meaning: 'section modulus', dimension: 'volume' },
  requires: [hollow],
  source: machineElements,
  examples: [{ given: { D: '1.5 in', d: '1 in' }, gives: '0.26589 in³', tolerance: 2e-5, because: 'five figures', source: tubeRows }],
  compute: ({ D, d }) => si((Math.PI * (D ** 4 - d ** 4)) / (32 * D), 'volume'),
})
export const tubeRadiusOfGyration = defineFormula({
  id: 'tube.radius-of-gyration',
  title: 'Radius of gyration of a tube',
  equation: 'r = sqrt(D^2 + d^2) / 4',
  symbols,
  result: { symbol: 'r', meaning: 'radius of gyration', dimension: 'length' },
  requires: [hollow],
  source: machineElements,
  examples: [{ given: { D: '1.5 in', d: '1 in' }, gives: '0.4507 in', tolerance: 1e-4, because: 'four figures', source: tubeRows }],
  compute: ({ D, d }) => si(Math.sqrt(D ** 2 + d ** 2) / 4, 'length'),
})
