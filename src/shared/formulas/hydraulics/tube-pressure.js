import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic } from '../sources.ts'

const note = {
  id: 'tube-pressure-note',
  cites: 'Note on pressure rating of steel tube: Barlow table, 50 ksi, factor 4',
  mark: 'published',
  read: 'web copy',
}
const sheet = { id: 'data-sheet-73', cites: 'Fluid-power data sheet 73', mark: 'published' }
const symbols = {
  S: { meaning: 'tensile strength', dimension: 'pressure', above: 0 },
  t: { meaning: 'wall thickness', dimension: 'length', above: 0 },
  D: { meaning: 'outside diameter', dimension: 'length', above: 0 },
  N: { meaning: 'design factor; 1 for the bursting pressure', dimension: 'ratio', min: 1 },
}
const thin = {
  says: 'a tube has a hole: 2 t < D',
  holds: ({ t, D }) => 2 * t < D,
}
const result = { symbol: 'p', meaning: 'working pressure', dimension: 'pressure' }
export const tubeBarlow = defineFormula({
  id: 'tube.barlow',
  title: 'Working pressure of a tube (Barlow)',
  equation: 'p = 2 * S * t / (D * N)',
  symbols,
  result,
  requires: [thin],
  source: note,
  examples: [
    {
      given: { S: '50 ksi', t: '0.035 in', D: '3/8 in', N: '4' },
      gives: '2350 psi',
      tolerance: 0.011,
      because: 'rounded to 50 psi',
      source: note,
    },
    {
      given: { S: '50 ksi', t: '0.065 in', D: '3/4 in', N: '4' },
      gives: '2150 psi',
      tolerance: 0.012,
      because: 'rounded to 50 psi',
      source: note,
    },
    {
      given: { S: '55 ksi', t: '0.049 in', D: '3/8 in', N: '4' },
      gives: '3590 psi',
      tolerance: 1.7e-3,
      because: 'three figures',
      source: sheet,
    },
  ],
  remark: 'Straight tube. Bends, flares, fittings and corrosion take from it; SAE J1065 takes a factor of 4 on bursting.',
  compute: ({ S, t, D, N }) => si((2 * S * t) / (D * N), 'pressure'),
})
export const tubeBoardman = defineFormula({
  id: 'tube.boardman',
  title: 'Working pressure of a tube (Boardman)',
  equation: 'p = 2 * S * t / ((D - 0.8 * t) * N)',
  symbols,
  result,
  requires: [thin],
  source: { id: 'boardman', cites: 'Boardman formula, in a note on sizing steel tube', mark: 'published', read: 'web copy' },
  examples: [
    {
      given: { S: '50 ksi', t: '0.05 in', D: '0.54 in', N: '4' },
      gives: '2500 psi',
      tolerance: 1e-9,
      because: 'exact',
      source: arithmetic,
    },
  ],
  remark: 'Gives a little more than Barlow, which neglects that the wall is nearer the axis than the outside.',
  compute: ({ S, t, D, N }) => si((2 * S * t) / ((D - 0.8 * t) * N), 'pressure'),
})
