import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic } from '../sources.ts'

const change = { meaning: 'difference of camber between the two ends of the sweep', dimension: 'angle', min: -0.5, max: 0.5 }
const sweep = { meaning: 'turn of the wheel to each side', dimension: 'angle', above: 0, below: Math.PI / 2 }
const caster = { symbol: 'tau', meaning: 'caster', dimension: 'angle' }
export const casterFromSweep = defineFormula({
  id: 'caster.from-sweep',
  title: 'Caster from a camber sweep',
  equation: 'tau = dc / (2 * sin(phi))',
  symbols: { dc: change, phi: sweep },
  result: caster,
  source: { id: 'caster-sweep', cites: 'Geometry of the caster sweep (the method is the subject of SAE 850219)', mark: 'derived' },
  examples: [{ given: { dc: '3°', phi: '20°' }, gives: '4.3857°', tolerance: 1e-4, because: 'five figures', source: arithmetic }],
  remark: '1.462 times the difference at 20° a side.',
  compute: ({ dc, phi }) => si(dc / (2 * Math.sin(phi)), 'angle'),
})
export const casterWorkshopRule = defineFormula({
  id: 'caster.workshop-rule',
  title: 'Caster from a camber sweep of 20° a side, workshop rule',
  equation: 'tau = 1.5 * dc',
  symbols: { dc: change },
  result: caster,
  source: { id: 'caster-gauge', cites: 'Instruction of a caster gauge', mark: 'published', read: 'quoted on a page' },
  examples: [{ given: { dc: '3°' }, gives: '4.5°', tolerance: 1e-9, because: 'exact', source: arithmetic }],
  remark: '2.6 % above the sweep formula. Say which was used when two readings are compared.',
  compute: ({ dc }) => si(1.5 * dc, 'angle'),
})
export const casterSmallAngle = defineFormula({
  id: 'caster.small-angle',
  title: 'Caster from a camber sweep, small-angle form',
  equation: 'tau = dc / (2 * phi)',
  symbols: { dc: change, phi: sweep },
  result: caster,
  source: { id: 'caster-small-angle', cites: 'Page with the small-angle form of the caster sweep', mark: 'published', read: 'web copy' },
  examples: [{ given: { dc: '1°', phi: '20°' }, gives: '1.432°', tolerance: 4e-4, because: 'four figures', source: arithmetic }],
  remark: '2 % below the sweep formula at 20° a side.',
  compute: ({ dc, phi }) => si(dc / (2 * phi), 'angle'),
})
