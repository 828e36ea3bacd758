import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic, chassis, geometry, sizingSheet } from '../sources.ts'

const grip = { meaning: 'coefficient of friction of tyre and ground', dimension: 'ratio', above: 0, max: 1.5 } as const
const wheelLoad = { meaning: 'load on the wheel', dimension: 'force', min: 0 } as const
const inflation = { meaning: 'inflation pressure, as the mean pressure of the print', dimension: 'pressure', above: 0 } as const
const perWheel = { symbol: 'M', meaning: 'kingpin torque of one standing wheel', dimension: 'torque' } as const
const disc = { id: 'uniform-disc', cites: 'Friction moment of an evenly loaded disc turning on the spot', mark: 'derived' } as const

export const demandSizingSheet = defineFormula({
  id: 'demand.sizing-sheet',
  title: 'Kingpin torque of the axle, standing (hydrostatic sizing sheets)',
  equation: 'T = W * f * sqrt(B^2 / 8 + E^2)',
  symbols: {
    W: { meaning: 'load on the steered axle', dimension: 'force', min: 0 },
    f: { meaning: 'coefficient of friction; the sheets take 0.7 at most, on dry concrete', dimension: 'ratio', above: 0, max: 1.5 },
    B: { meaning: 'width of the tyre print', dimension: 'length', above: 0 },
    E: { meaning: 'kingpin offset at the ground', dimension: 'length' },
  },
  result: { symbol: 'T', meaning: 'torque about the kingpins, both wheels together', dimension: 'torque' },
  source: sizingSheet,
  examples: [
    {
      given: { W: '3000 lbf', f: '0.7', B: '12.5 in', E: '0 in' },
      gives: '9280.8 lbf·in',
      tolerance: 1e-4,
      because: '3000 · 0.7 · 12.5 / sqrt(8)',
      source: arithmetic,
    },
    {
      given: { W: '3000 lbf', f: '0.7', B: '12.5 in', E: '2 in' },
      gives: '10186.9 lbf·in',
      tolerance: 1e-5,
      because: '2100 · sqrt(19.53125 + 4)',
      source: arithmetic,
    },
  ],
  remark:
    'The sheets read f off a chart against E/B, which is not here: 0.7 is its upper bound. One sheet doubles T where the steered wheels are driven. With E = 0 it is 6.1 % above the evenly loaded disc. Aired-down tyres between rocks ask for more than any of this.',
  compute: ({ W, f, B, E }) => si(W * f * Math.sqrt(B ** 2 / 8 + E ** 2), 'torque'),
})

export const demandEffectiveArm = defineFormula({
  id: 'demand.effective-arm',
  title: 'Arm of the scrubbing print about the kingpin',
  equation: 'h = sqrt(d^2 + (a / 3)^2)',
  symbols: {
    d: { meaning: 'kingpin offset at the ground', dimension: 'length' },
    a: { meaning: 'diameter of the tyre print', dimension: 'length', above: 0 },
  },
  result: { symbol: 'h', meaning: 'effective arm', dimension: 'length' },
  source: chassis,
  examples: [
    { given: { d: '25 mm', a: '250 mm' }, gives: '87 mm', tolerance: 6e-3, because: 'two figures', source: chassis },
    { given: { d: '20 mm', a: '200 mm' }, gives: '69.6 mm', tolerance: 7e-4, because: 'three figures', source: chassis },
  ],
  compute: ({ d, a }) => si(Math.sqrt(d ** 2 + (a / 3) ** 2), 'length'),
})

export const demandScrubMoment = defineFormula({
  id: 'demand.scrub-moment',
  title: 'Kingpin torque of one wheel from scrubbing',
  equation: 'M_S = mu * W * h',
  symbols: { mu: grip, W: wheelLoad, h: { meaning: 'effective arm', dimension: 'length', above: 0 } },
  result: { symbol: 'M_S', meaning: 'scrub moment of one wheel', dimension: 'torque' },
  source: chassis,
  examples: [
    { given: { mu: '0.58', W: '11772 N', h: '87 mm' }, gives: '594 N·m', tolerance: 1e-3, because: 'three figures', source: chassis },
    { given: { mu: '0.55', W: '3924 N', h: '69.6 mm' }, gives: '150.2 N·m', tolerance: 4e-4, because: 'four figures', source: chassis },
  ],
  remark: 'The book reads 0.58 and 0.55 off one chart at the same place: 5 % is how well it can be known.',
  compute: ({ mu, W, h }) => si(mu * W * h, 'torque'),
})

export const demandJackingMoment = defineFormula({
  id: 'demand.jacking-moment',
  title: 'Kingpin torque of one wheel from lifting the vehicle',
  equation: 'M_J = W * d * sin(lambda) * cos(lambda) * sin(delta)',
  symbols: {
    W: wheelLoad,
    d: { meaning: 'kingpin offset at the ground', dimension: 'length' },
    lambda: { meaning: 'kingpin inclination', dimension: 'angle', min: 0, below: Math.PI / 2 },
    delta: { meaning: 'angle of the wheel from straight ahead', dimension: 'angle', min: 0, below: Math.PI / 2 },
  },
  result: { symbol: 'M_J', meaning: 'jacking moment of one wheel', dimension: 'torque' },
  source: chassis,
  examples: [
    {
      given: { W: '11772 N', d: '25 mm', lambda: '12°', delta: '28°' },
      gives: '28 N·m',
      tolerance: 0.018,
      because: 'two figures',
      source: chassis,
    },
    {
      given: { W: '11772 N', d: '25 mm', lambda: '12°', delta: '45°' },
      gives: '42 N·m',
      tolerance: 0.012,
      because: 'two figures',
      source: chassis,
    },
  ],
  compute: ({ W, d, lambda, delta }) => si(W * d * Math.sin(lambda) * Math.cos(lambda) * Math.sin(delta), 'torque'),
})

export const demandParkingLaw = defineFormula({
  id: 'demand.parking-law',
  title: 'Kingpin torque of one standing wheel, 1.5-power law',
  equation: 'M = mu / 3 * sqrt(W^3 / p)',
  symbols: { mu: grip, W: wheelLoad, p: inflation },
  result: perWheel,
  source: {
    id: 'gough',
    cites: 'Gough relation for parking torque',
    mark: 'memory',
    checked: 'that it is the common one is said in Adv. Mech. Eng. 2016, doi 10.1177/1687814016668765',
  },
  examples: [
    {
      given: { mu: '0.7', W: '6000 N', p: '180 kPa' },
      gives: '255.6 N·m',
      tolerance: 1e-3,
      because: 'four figures',
      source: { id: 'gough', cites: 'Gough relation for parking torque', mark: 'memory' },
    },
  ],
  remark:
    'One wheel and its own load. With the load of the whole axle put in at once the answer is sqrt(2) times the sum of both wheels. No kingpin offset; fails at large angles.',
  compute: ({ mu, W, p }) => si((mu / 3) * Math.sqrt(W ** 3 / p), 'torque'),
})

export const demandUniformDisc = defineFormula({
  id: 'demand.uniform-disc',
  title: 'Kingpin torque of one standing wheel on an evenly loaded round print of known width',
  equation: 'M = 2 / 3 * mu * W * B / 2',
  symbols: { mu: grip, W: wheelLoad, B: { meaning: 'diameter of the print', dimension: 'length', above: 0 } },
  result: perWheel,
  source: disc,
  examples: [{ given: { mu: '0.7', W: '3000 lbf', B: '12.5 in' }, gives: '8750 lbf·in', tolerance: 1e-6, because: 'exact', source: disc }],
  remark: 'Turning about the middle of the print: no kingpin offset.',
  compute: ({ mu, W, B }) => si(((2 / 3) * mu * W * B) / 2, 'torque'),
})

export const demandUniformDiscPressure = defineFormula({
  id: 'demand.uniform-disc-pressure',
  title: 'Kingpin torque of one standing wheel on an evenly loaded round print, from the inflation pressure',
  equation: 'M = 2 / 3 * mu * W * sqrt(W / (pi * p))',
  symbols: { mu: grip, W: wheelLoad, p: inflation },
  result: perWheel,
  source: disc,
  examples: [
    { given: { mu: '0.7', W: '6000 N', p: '180 kPa' }, gives: '288.4 N·m', tolerance: 1e-3, because: 'four figures', source: disc },
  ],
  remark: 'The carcass carries a part of the load, so that the true print is smaller than load over pressure. No kingpin offset.',
  compute: ({ mu, W, p }) => si((2 / 3) * mu * W * Math.sqrt(W / (Math.PI * p)), 'torque'),
})

export const demandForceAtLever = defineFormula({
  id: 'demand.force-at-lever',
  title: 'Force that a torque asks for at a lever',
  equation: 'F = T / r',
  symbols: {
    T: { meaning: 'torque about the kingpin', dimension: 'torque', min: 0 },
    r: { meaning: 'lever, square to the force; the shortest over the travel', dimension: 'length', above: 0 },
  },
  result: { symbol: 'F', meaning: 'force at the lever', dimension: 'force' },
  source: sizingSheet,
  examples: [{ given: { T: '9000 lbf·in', r: '6 in' }, gives: '1500 lbf', tolerance: 1e-9, because: 'exact', source: arithmetic }],
  compute: ({ T, r }) => si(T / r, 'force'),
})

export const demandTrackRodForce = defineFormula({
  id: 'demand.track-rod-force',
  title: 'Track-rod force of two wheels at their own levers',
  equation: 'F = M_1 * cos(gamma_1) / a_1 + M_2 * cos(gamma_2) / a_2',
  symbols: {
    M_1: { meaning: 'kingpin torque of the one wheel', dimension: 'torque', min: 0 },
    gamma_1: { meaning: 'angle of the rod at that wheel', dimension: 'angle', min: 0, below: Math.PI / 2 },
    a_1: { meaning: 'lever at that wheel', dimension: 'length', above: 0 },
    M_2: { meaning: 'kingpin torque of the other wheel', dimension: 'torque', min: 0 },
    gamma_2: { meaning: 'angle of the rod at that wheel', dimension: 'angle', min: 0, below: Math.PI / 2 },
    a_2: { meaning: 'lever at that wheel', dimension: 'length', above: 0 },
  },
  result: { symbol: 'F', meaning: 'force along the rack or ram', dimension: 'force' },
  source: chassis,
  examples: [
    {
      given: { M_1: '157.7 N·m', gamma_1: '8°', a_1: '0.127 m', M_2: '161.5 N·m', gamma_2: '12°', a_2: '0.030 m' },
      gives: '6495 N',
      tolerance: 2e-4,
      because: 'four figures',
      source: chassis,
    },
  ],
  compute: ({ M_1, gamma_1, a_1, M_2, gamma_2, a_2 }) => si((M_1 * Math.cos(gamma_1)) / a_1 + (M_2 * Math.cos(gamma_2)) / a_2, 'force'),
})

export const demandPower = defineFormula({
  id: 'demand.power',
  title: 'Power to move a rod against a force',
  equation: 'P = F * s / t',
  symbols: {
    F: { meaning: 'force', dimension: 'force', min: 0 },
    s: { meaning: 'travel', dimension: 'length', min: 0 },
    t: { meaning: 'time', dimension: 'time', above: 0 },
  },
  result: { symbol: 'P', meaning: 'power at the rod', dimension: 'power' },
  source: geometry,
  examples: [
    { given: { F: '6495 N', s: '0.180 m', t: '6 s' }, gives: '195 W', tolerance: 1e-3, because: 'three figures', source: chassis },
  ],
  compute: ({ F, s, t }) => si((F * s) / t, 'power'),
})
