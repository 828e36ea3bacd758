import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic, geometry } from '../sources.ts'

/** Half a millionth of a millionth: what doubles may lose in V_b / b, against what a person could call a further bottle. */
const ROUNDING = 5e-13

export const hoseContent = defineFormula({
  id: 'hose.content',
  title: 'Oil in a hose',
  equation: 'V = pi * d^2 * L / 4',
  symbols: {
    d: { meaning: 'bore of the hose', dimension: 'length', above: 0 },
    L: { meaning: 'length of the hose', dimension: 'length', min: 0 },
  },
  result: { symbol: 'V', meaning: 'content of the hose', dimension: 'volume' },
  source: geometry,
  examples: [
    { given: { d: '9.5 mm', L: '1 m' }, gives: '70.882 mL', tolerance: 1e-5, because: 'five figures', source: arithmetic },
    { given: { d: '3/8 in', L: '1 ft' }, gives: '1.325 in³', tolerance: 3e-4, because: 'four figures', source: arithmetic },
  ],
  remark: 'A hose swells a little under pressure; that is left out.',
  compute: ({ d, L }) => si((Math.PI * d ** 2 * L) / 4, 'volume'),
})

export const fluidOfSeveral = defineFormula({
  id: 'fluid.of-several',
  title: 'Fluid in several parts of one kind',
  equation: 'V = n * V_1',
  symbols: {
    n: { meaning: 'how many there are', dimension: 'ratio', min: 1 },
    V_1: { meaning: 'fluid in one of them', dimension: 'volume', min: 0 },
  },
  result: { symbol: 'V', meaning: 'fluid in all of them', dimension: 'volume' },
  source: arithmetic,
  examples: [{ given: { n: '2', V_1: '70 mL' }, gives: '140 mL', tolerance: 1e-9, because: 'exact', source: arithmetic }],
  compute: ({ n, V_1 }) => si(n * V_1, 'volume'),
})

export const fluidToBuy = defineFormula({
  id: 'fluid.to-buy',
  title: 'Fluid to buy, with an allowance',
  equation: 'V_b = V * (1 + m)',
  symbols: {
    V: { meaning: 'fluid that the system holds', dimension: 'volume', min: 0 },
    m: { meaning: 'allowance for purging and spills, as a part of V', dimension: 'ratio', min: 0 },
  },
  result: { symbol: 'V_b', meaning: 'fluid to buy', dimension: 'volume' },
  source: { id: 'purging-allowance', cites: 'Common practice: oil is lost while purging', mark: 'practice' },
  examples: [{ given: { V: '2 L', m: '25 %' }, gives: '2.5 L', tolerance: 1e-9, because: 'exact', source: arithmetic }],
  compute: ({ V, m }) => si(V * (1 + m), 'volume'),
})

export const fluidBottles = defineFormula({
  id: 'fluid.bottles',
  title: 'Bottles to buy',
  equation: 'n = ceil(V_b / b)',
  symbols: {
    V_b: { meaning: 'fluid to buy', dimension: 'volume', min: 0 },
    b: { meaning: 'content of one bottle', dimension: 'volume', above: 0 },
  },
  result: { symbol: 'n', meaning: 'whole bottles', dimension: 'ratio' },
  source: { id: 'whole-bottles', cites: 'Arithmetic: rounded up to whole bottles', mark: 'derived' },
  examples: [
    { given: { V_b: '2.5 L', b: '1 qt' }, gives: '3', tolerance: 1e-9, because: 'a whole number', source: arithmetic },
    { given: { V_b: '3 qt', b: '1 qt' }, gives: '3', tolerance: 1e-9, because: 'a whole number', source: arithmetic },
  ],
  compute: ({ V_b, b }) => si(Math.ceil((V_b / b) * (1 - ROUNDING)), 'ratio'),
})
