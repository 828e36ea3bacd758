import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic } from '../sources.ts'

const camber = (at: string) =>
  ({ meaning: `camber with the wheel turned ${at}, top out positive`, dimension: 'angle', min: -0.5, max: 0.5 }) as const

export const camberChange = defineFormula({
  id: 'camber.change',
  title: 'Change of camber over a sweep',
  equation: 'dc = c_o - c_i',
  symbols: { c_o: camber('out'), c_i: camber('in') },
  result: { symbol: 'dc', meaning: 'camber turned out less camber turned in: positive for positive caster', dimension: 'angle' },
  source: { id: 'caster-sweep', cites: 'Geometry of the caster sweep (the method is the subject of SAE 850219)', mark: 'derived' },
  examples: [{ given: { c_o: '1.6°', c_i: '-1.4°' }, gives: '3°', tolerance: 1e-9, because: 'exact', source: arithmetic }],
  compute: ({ c_o, c_i }) => si(c_o - c_i, 'angle'),
})
