import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic, geometry } from '../sources.ts'

const exact = { tolerance: 1e-6, because: 'exact, or seven figures', source: arithmetic } as const

export const flowMinorDrop = defineFormula({
  id: 'flow.minor-drop',
  title: 'Pressure lost at ends and fittings',
  equation: 'dp = m * K * rho * v^2 / 2',
  symbols: {
    m: { meaning: 'number of ends', dimension: 'ratio', min: 0 },
    K: { meaning: 'loss of one, in velocity heads', dimension: 'ratio', min: 0 },
    rho: { meaning: 'density', dimension: 'density', above: 0 },
    v: { meaning: 'mean velocity', dimension: 'speed', min: 0 },
  },
  result: { symbol: 'dp', meaning: 'pressure drop', dimension: 'pressure' },
  source: { id: 'minor-losses', cites: 'Losses of fittings as velocity heads', mark: 'memory' },
  examples: [{ given: { m: '2', K: '1.5', rho: '860 kg/m³', v: '3 m/s' }, gives: '11610 Pa', ...exact }],
  remark: 'Sudden adapters often take more than the hose.',
  compute: ({ m, K, rho, v }) => si((m * K * rho * v ** 2) / 2, 'pressure'),
})

export const hoseBurst = defineFormula({
  id: 'hose.burst',
  title: 'Burst pressure that a hose is made for',
  equation: 'p_b = 4 * p_w',
  symbols: { p_w: { meaning: 'working pressure', dimension: 'pressure', above: 0 } },
  result: { symbol: 'p_b', meaning: 'least burst pressure', dimension: 'pressure' },
  source: {
    id: 'hose-factor',
    cites: "Hose maker's overview of SAE J517: burst four times the working pressure for wire-braid hose",
    mark: 'published',
    read: 'web copy',
  },
  examples: [{ given: { p_w: '3250 psi' }, gives: '13000 psi', ...exact }],
  remark: 'The four are for pulses, age and bends, not to be used up.',
  compute: ({ p_w }) => si(4 * p_w, 'pressure'),
})

export const hoseLengthNeeded = defineFormula({
  id: 'hose.length-needed',
  title: 'Length of a hose for the longest way it has to go',
  equation: 'L = s / (1 - x)',
  symbols: {
    s: { meaning: 'longest way, end to end', dimension: 'length', above: 0 },
    x: { meaning: 'how much it gets shorter under pressure', dimension: 'ratio', min: 0, below: 0.5 },
  },
  result: { symbol: 'L', meaning: 'least length of the hose', dimension: 'length' },
  source: { id: 'hose-shortening', cites: 'SAE J517: length changes under pressure by -4 to 2 %', mark: 'memory' },
  examples: [{ given: { s: '960 mm', x: '4 %' }, gives: '1000 mm', ...exact }],
  compute: ({ s, x }) => si(s / (1 - x), 'length'),
})

export const reservoirSwing = defineFormula({
  id: 'reservoir.swing',
  title: "Part of the reservoir that comes and goes with the ram's rod",
  equation: 'x = V_d / V_r',
  symbols: {
    V_d: { meaning: 'oil that the rod displaces', dimension: 'volume', min: 0 },
    V_r: { meaning: 'content of the reservoir', dimension: 'volume', above: 0 },
  },
  result: { symbol: 'x', meaning: 'part of the content', dimension: 'ratio' },
  source: geometry,
  examples: [{ given: { V_d: '65 mL', V_r: '1.3 L' }, gives: '0.05', ...exact }],
  compute: ({ V_d, V_r }) => si(V_d / V_r, 'ratio'),
})

export const ramReturnFlow = defineFormula({
  id: 'ram.return-flow',
  title: 'Flow that a single-ended ram pushes out as it is pulled in',
  equation: 'Q_r = Q * A / a',
  symbols: {
    Q: { meaning: 'flow into the rod side', dimension: 'flow', min: 0 },
    A: { meaning: 'area of the cap side', dimension: 'area', above: 0 },
    a: { meaning: 'area of the rod side', dimension: 'area', above: 0 },
  },
  result: { symbol: 'Q_r', meaning: 'flow out of the cap side', dimension: 'flow' },
  source: geometry,
  examples: [{ given: { Q: '9 L/min', A: '2000 mm²', a: '1500 mm²' }, gives: '12 L/min', ...exact }],
  compute: ({ Q, A, a }) => si((Q * A) / a, 'flow'),
})
