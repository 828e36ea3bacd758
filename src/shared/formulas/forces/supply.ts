import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic, geometry, mechanics } from '../sources.ts'

const exact = { tolerance: 1e-6, because: 'exact, or seven figures', source: arithmetic } as const
const sector = { meaning: 'torque on the sector shaft', dimension: 'torque', min: 0 } as const
const pitman = { meaning: 'turn of the pitman arm for the travel of the tie rod', dimension: 'curvature', above: 0 } as const

export const supplyRamAtRod = defineFormula({
  id: 'supply.ram-at-rod',
  title: "The ram's force as the tie rod feels it",
  equation: 'F = F_r * abs(i_r)',
  symbols: {
    F_r: { meaning: 'force of the ram', dimension: 'force', min: 0 },
    i_r: { meaning: "change of the ram's length for the rod's travel", dimension: 'ratio' },
  },
  result: { symbol: 'F', meaning: 'force along the travel of the rod', dimension: 'force' },
  source: mechanics,
  examples: [{ given: { F_r: '10 kN', i_r: '-0.95' }, gives: '9.5 kN', ...exact }],
  compute: ({ F_r, i_r }) => si(F_r * Math.abs(i_r), 'force'),
})

export const ramRateFromAngle = defineFormula({
  id: 'ram.rate-from-angle',
  title: "Share of the ram's force that moves the tie rod, from the angle between them",
  equation: 'i_r = cos(alpha)',
  symbols: { alpha: { meaning: 'angle between the ram and the tie rod', dimension: 'angle', min: 0, max: 1.2 } },
  result: { symbol: 'i_r', meaning: "share of the ram's force that moves the rod", dimension: 'ratio' },
  source: mechanics,
  examples: [{ given: { alpha: '10°' }, gives: '0.9848078', ...exact }],
  remark: 'The angle changes over the travel; with the places of both pins it is followed exactly.',
  compute: ({ alpha }) => si(Math.cos(alpha), 'ratio'),
})

export const boxSectorTorque = defineFormula({
  id: 'box.sector-torque',
  title: "Torque of the box's own assistance on the sector shaft",
  equation: 'T = p * A_b * r_s * eta',
  symbols: {
    p: { meaning: 'pressure at the piston', dimension: 'pressure', min: 0 },
    A_b: { meaning: 'area of the piston in the box', dimension: 'area', above: 0 },
    r_s: { meaning: "radius of the sector's teeth", dimension: 'length', above: 0 },
    eta: { meaning: 'share left after losses', dimension: 'ratio', above: 0, max: 1 },
  },
  result: { symbol: 'T', meaning: sector.meaning, dimension: 'torque' },
  source: mechanics,
  examples: [{ given: { p: '100 bar', A_b: '5000 mm²', r_s: '35 mm', eta: '0.9' }, gives: '1575 N·m', ...exact }],
  compute: ({ p, A_b, r_s, eta }) => si(p * A_b * r_s * eta, 'torque'),
})

export const boxRodForce = defineFormula({
  id: 'box.rod-force',
  title: "The box's force as the tie rod feels it",
  equation: 'F = T * i_p',
  symbols: { T: sector, i_p: pitman },
  result: { symbol: 'F', meaning: 'force along the travel of the rod', dimension: 'force' },
  source: { id: 'virtual-work-box', cites: 'Principle of virtual work on pitman arm and drag link', mark: 'derived' },
  examples: [{ given: { T: '1500 N·m', i_p: '6 1/m' }, gives: '9000 N', ...exact }],
  compute: ({ T, i_p }) => si(T * i_p, 'force'),
})

export const boxTorqueForForce = defineFormula({
  id: 'box.torque-for-force',
  title: 'Torque on the sector shaft for a force on the tie rod, box alone',
  equation: 'T = F / i_p',
  symbols: { F: { meaning: 'force asked for along the travel of the rod', dimension: 'force', min: 0 }, i_p: pitman },
  result: { symbol: 'T', meaning: sector.meaning, dimension: 'torque' },
  source: { id: 'virtual-work-box', cites: 'Principle of virtual work on pitman arm and drag link', mark: 'derived' },
  examples: [{ given: { F: '9000 N', i_p: '6 1/m' }, gives: '1500 N·m', ...exact }],
  compute: ({ F, i_p }) => si(F / i_p, 'torque'),
})

export const boxTorqueShared = defineFormula({
  id: 'box.torque-shared',
  title: 'Torque on the sector shaft with a ram on the same pressure',
  equation: 'T = max(F * F_b / (F_b + F_r), F - F_r) / i_p',
  symbols: {
    F: { meaning: 'force asked for along the travel of the rod', dimension: 'force', min: 0 },
    F_b: { meaning: 'what the box brings there at relief pressure', dimension: 'force', min: 0 },
    F_r: { meaning: 'what the ram brings there at relief pressure', dimension: 'force', above: 0 },
    i_p: pitman,
  },
  result: { symbol: 'T', meaning: sector.meaning, dimension: 'torque' },
  source: {
    id: 'shared-pressure',
    cites: 'Box and ram under one pressure share a load as their forces; the hand adds what is missing',
    mark: 'derived',
  },
  examples: [
    { given: { F: '9000 N', F_b: '4000 N', F_r: '8000 N', i_p: '6 1/m' }, gives: '500 N·m', ...exact },
    { given: { F: '14000 N', F_b: '4000 N', F_r: '8000 N', i_p: '6 1/m' }, gives: '1000 N·m', ...exact },
  ],
  remark: 'Below the pressure at which the valve opens box and ram both work with the same pressure, whatever it is.',
  compute: ({ F, F_b, F_r, i_p }) => si(Math.max((F * F_b) / (F_b + F_r), F - F_r) / i_p, 'torque'),
})

export const boxGearRatio = defineFormula({
  id: 'box.gear-ratio',
  title: 'Ratio of the steering box',
  equation: 'i_h = 2 * pi * n / S',
  symbols: {
    n: { meaning: 'turns of the box, end to end', dimension: 'ratio', above: 0 },
    S: { meaning: 'sweep of the box, end to end', dimension: 'angle', above: 0 },
  },
  result: { symbol: 'i_h', meaning: 'turn of the hand wheel over turn of the pitman arm', dimension: 'ratio' },
  source: geometry,
  examples: [{ given: { n: '4', S: '96°' }, gives: '15', ...exact }],
  compute: ({ n, S }) => si((2 * Math.PI * n) / S, 'ratio'),
})

export const handForce = defineFormula({
  id: 'hand.force',
  title: 'Pull at the rim of the hand wheel without any assistance',
  equation: 'F_h = 2 * T / (i_h * eta * D)',
  symbols: {
    T: sector,
    i_h: { meaning: 'ratio of the box', dimension: 'ratio', above: 0 },
    eta: { meaning: "share of the hand wheel's torque that reaches the sector shaft", dimension: 'ratio', above: 0, max: 1 },
    D: { meaning: 'diameter of the hand wheel', dimension: 'length', above: 0 },
  },
  result: { symbol: 'F_h', meaning: 'pull at the rim', dimension: 'force' },
  source: mechanics,
  examples: [{ given: { T: '1000 N·m', i_h: '15', eta: '0.7', D: '380 mm' }, gives: '501.2531 N', ...exact }],
  remark: 'Standing still on dry ground; rolling takes far less, by how much is not published.',
  compute: ({ T, i_h, eta, D }) => si((2 * T) / (i_h * eta * D), 'force'),
})

const pumpSymbols = {
  V: { meaning: 'displacement for a turn of the pump', dimension: 'volume', above: 0 },
  i: { meaning: 'turns of the pump for one of the engine', dimension: 'ratio', above: 0 },
  n: { meaning: 'engine speed', dimension: 'angularSpeed', min: 0 },
  eta: { meaning: 'volumetric efficiency', dimension: 'ratio', above: 0, max: 1 },
} as const

export const pumpFlow = defineFormula({
  id: 'pump.flow',
  title: 'Flow of the pump',
  equation: 'Q = V * i * n * eta / (2 * pi)',
  symbols: pumpSymbols,
  result: { symbol: 'Q', meaning: 'flow', dimension: 'flow' },
  source: { id: 'pump-flow', cites: 'Displacement times speed, less leakage', mark: 'derived' },
  examples: [{ given: { V: '10 mL', i: '1.2', n: '700 rpm', eta: '0.9' }, gives: '7.56 L/min', ...exact }],
  compute: ({ V, i, n, eta }) => si((V * i * n * eta) / (2 * Math.PI), 'flow'),
})

export const pumpFlowLimited = defineFormula({
  id: 'pump.flow-limited',
  title: 'Flow of a pump with a flow control',
  equation: 'Q = min(V * i * n * eta / (2 * pi), Q_c)',
  symbols: { ...pumpSymbols, Q_c: { meaning: 'flow that the control lets through', dimension: 'flow', above: 0 } },
  result: { symbol: 'Q', meaning: 'flow', dimension: 'flow' },
  source: { id: 'pump-flow', cites: 'Displacement times speed, less leakage', mark: 'derived' },
  examples: [
    { given: { V: '10 mL', i: '1.2', n: '700 rpm', eta: '0.9', Q_c: '10 L/min' }, gives: '7.56 L/min', ...exact },
    { given: { V: '10 mL', i: '1.2', n: '2500 rpm', eta: '0.9', Q_c: '10 L/min' }, gives: '10 L/min', ...exact },
  ],
  compute: ({ V, i, n, eta, Q_c }) => si(Math.min((V * i * n * eta) / (2 * Math.PI), Q_c), 'flow'),
})

export const boxVolume = defineFormula({
  id: 'box.volume-swept',
  title: 'Oil that the box takes from stop to stop',
  equation: 'V_b = A_b * r_s * phi',
  symbols: {
    A_b: { meaning: 'area of the piston in the box', dimension: 'area', above: 0 },
    r_s: { meaning: "radius of the sector's teeth", dimension: 'length', above: 0 },
    phi: { meaning: 'turn of the pitman arm from stop to stop', dimension: 'angle', min: 0 },
  },
  result: { symbol: 'V_b', meaning: 'oil into the box', dimension: 'volume' },
  source: geometry,
  examples: [{ given: { A_b: '5000 mm²', r_s: '35 mm', phi: '80°' }, gives: '244.3461 mL', ...exact }],
  compute: ({ A_b, r_s, phi }) => si(A_b * r_s * phi, 'volume'),
})

export const speedTime = defineFormula({
  id: 'speed.time',
  title: 'Time from stop to stop',
  equation: 't = V / Q',
  symbols: {
    V: { meaning: 'oil that ram and box take together', dimension: 'volume', min: 0 },
    Q: { meaning: 'flow of the pump', dimension: 'flow', above: 0 },
  },
  result: { symbol: 't', meaning: 'time from stop to stop', dimension: 'time' },
  source: geometry,
  examples: [{ given: { V: '500 mL', Q: '7.5 L/min' }, gives: '4 s', ...exact }],
  compute: ({ V, Q }) => si(V / Q, 'time'),
})

export const speedHandWheel = defineFormula({
  id: 'speed.hand-wheel',
  title: 'How fast the hand wheel can be turned before it goes heavy',
  equation: 'n_h = 2 * pi * N / t',
  symbols: {
    N: { meaning: 'turns of the hand wheel from stop to stop', dimension: 'ratio', above: 0 },
    t: { meaning: 'time from stop to stop', dimension: 'time', above: 0 },
  },
  result: { symbol: 'n_h', meaning: 'speed of the hand wheel', dimension: 'angularSpeed' },
  source: geometry,
  examples: [{ given: { N: '4', t: '4 s' }, gives: '1 turn/s', ...exact }],
  remark: 'Faster than this the pump no longer follows, and the hand feels the wheels.',
  compute: ({ N, t }) => si((2 * Math.PI * N) / t, 'angularSpeed'),
})

const margin = <D extends 'force' | 'pressure' | 'torque'>(
  dimension: D,
  id: string,
  title: string,
  example: readonly [string, string, string],
) =>
  defineFormula({
    id,
    title,
    equation: 'n = R / F',
    symbols: {
      R: { meaning: 'what holds or is there', dimension, min: 0 },
      F: { meaning: 'what is asked', dimension, above: 0 },
    },
    result: { symbol: 'n', meaning: 'how many times over', dimension: 'ratio' },
    source: { id: 'margin', cites: 'Strength over load', mark: 'derived' },
    examples: [{ given: { R: example[0], F: example[1] }, gives: example[2], ...exact }],
    compute: ({ R, F }) => si(R / F, 'ratio'),
  })

export const marginForce = margin('force', 'margin.force', 'How many times over: forces', ['30 kN', '20 kN', '1.5'])
export const marginStress = margin('pressure', 'margin.stress', 'How many times over: stresses or pressures', ['60 ksi', '40 ksi', '1.5'])
export const marginTorque = margin('torque', 'margin.torque', 'How many times over: torques', ['600 N·m', '400 N·m', '1.5'])
