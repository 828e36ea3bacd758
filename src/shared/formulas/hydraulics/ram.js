import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic, cylinderPage, cylinderTable, geometry, sizingSheet } from '../sources.ts'

const PI_AS_3_14 = 'the page takes pi as 3.14 and prints four figures'
const bore = { meaning: 'bore of the ram', dimension: 'length', above: 0 }
const rod = { meaning: 'diameter of the rod', dimension: 'length', above: 0 }
const stroke = { meaning: 'stroke', dimension: 'length', min: 0 }
const rodInsideBore = {
  says: 'the rod is thinner than the bore: d < D',
  holds: ({ D, d }) => d < D,
}
export const ramCapArea = defineFormula({
  id: 'ram.cap-area',
  title: 'Area of the piston on the cap side',
  equation: 'A = pi * D^2 / 4',
  symbols: { D: bore },
  result: { symbol: 'A', meaning: 'area that the pressure pushes on', dimension: 'area' },
  source: cylinderPage,
  examples: [{ given: { D: '6 in' }, gives: '28.26 in²', tolerance: 6e-4, because: PI_AS_3_14, source: cylinderPage }],
  compute: ({ D }) => si((Math.PI * D ** 2) / 4, 'area'),
})
export const ramAnnulusArea = defineFormula({
  id: 'ram.annulus-area',
  title: 'Area of the piston on the rod side',
  equation: 'a = pi * (D^2 - d^2) / 4',
  symbols: { D: bore, d: rod },
  result: { symbol: 'a', meaning: 'area that the pressure pulls on', dimension: 'area' },
  requires: [rodInsideBore],
  source: cylinderPage,
  examples: [{ given: { D: '6 in', d: '3 in' }, gives: '21.19 in²', tolerance: 1e-3, because: PI_AS_3_14, source: cylinderPage }],
  remark: 'A double-ended ram has this area in both directions.',
  compute: ({ D, d }) => si((Math.PI * (D ** 2 - d ** 2)) / 4, 'area'),
})
export const ramForce = defineFormula({
  id: 'ram.force',
  title: 'Force of a ram',
  equation: 'F = p * A',
  symbols: {
    p: { meaning: 'pressure at the piston', dimension: 'pressure', min: 0 },
    A: { meaning: 'area the pressure acts on', dimension: 'area', above: 0 },
  },
  result: { symbol: 'F', meaning: 'force of the ram', dimension: 'force' },
  source: cylinderPage,
  examples: [
    {
      given: { p: '2500 psi', A: '28.26 in²' },
      gives: '70650 lbf',
      tolerance: 1e-9,
      because: 'the page multiplies these very figures',
      source: cylinderPage,
    },
    {
      given: { p: '2500 psi', A: '21.19 in²' },
      gives: '52975 lbf',
      tolerance: 1e-9,
      because: 'the page multiplies these very figures',
      source: cylinderPage,
    },
    {
      given: { p: '160 bar', A: '1257 mm²' },
      gives: '20.1 kN',
      tolerance: 4e-3,
      because: 'printed to three figures',
      source: cylinderTable,
    },
  ],
  remark: 'Leaves out seal friction and back pressure, which take 5 to 10 % (common practice: 0.90 to 0.95 is left).',
  compute: ({ p, A }) => si(p * A, 'force'),
})
export const ramForceWithEfficiency = defineFormula({
  id: 'ram.force-with-efficiency',
  title: 'Force of a ram, with losses',
  equation: 'F = p * A * eta',
  symbols: {
    p: { meaning: 'pressure at the piston', dimension: 'pressure', min: 0 },
    A: { meaning: 'area the pressure acts on', dimension: 'area', above: 0 },
    eta: { meaning: 'part of the force left after seal friction and back pressure', dimension: 'ratio', above: 0, max: 1 },
  },
  result: { symbol: 'F', meaning: 'force of the ram', dimension: 'force' },
  source: cylinderPage,
  examples: [
    { given: { p: '1500 psi', A: '2 in²', eta: '0.9' }, gives: '2700 lbf', tolerance: 1e-9, because: 'exact', source: arithmetic },
  ],
  remark: 'The usual 0.90 to 0.95 for eta is common practice, without a published source.',
  compute: ({ p, A, eta }) => si(p * A * eta, 'force'),
})
export const ramPressure = defineFormula({
  id: 'ram.pressure',
  title: 'Pressure that a ram needs for a force',
  equation: 'p = F / A',
  symbols: {
    F: { meaning: 'force asked for', dimension: 'force', min: 0 },
    A: { meaning: 'area the pressure acts on', dimension: 'area', above: 0 },
  },
  result: { symbol: 'p', meaning: 'pressure at the piston', dimension: 'pressure' },
  source: cylinderPage,
  examples: [
    {
      given: { F: '50000 lbf', A: '28.26 in²' },
      gives: '1769.29 psi',
      tolerance: 1e-5,
      because: 'printed to six figures',
      source: cylinderPage,
    },
    {
      given: { F: '50000 lbf', A: '21.19 in²' },
      gives: '2359.6 psi',
      tolerance: 1e-5,
      because: 'printed to five figures',
      source: cylinderPage,
    },
  ],
  remark: 'Leaves out seal friction and back pressure.',
  compute: ({ F, A }) => si(F / A, 'pressure'),
})
export const ramAreaRatio = defineFormula({
  id: 'ram.area-ratio',
  title: 'Area ratio of a single-ended ram',
  equation: 'phi = D^2 / (D^2 - d^2)',
  symbols: { D: bore, d: rod },
  result: {
    symbol: 'phi',
    meaning: 'cap area against rod-side area; also push against pull, and pull speed against push speed',
    dimension: 'ratio',
  },
  requires: [rodInsideBore],
  source: { id: 'cylinder-area-ratio', cites: "Technical page 'Area ratio of a cylinder'", mark: 'published', read: 'web copy' },
  examples: [{ given: { D: '2 in', d: '1 in' }, gives: '1.333', tolerance: 3e-4, because: 'four figures of 4/3', source: arithmetic }],
  compute: ({ D, d }) => si(D ** 2 / (D ** 2 - d ** 2), 'ratio'),
})
export const ramVolume = defineFormula({
  id: 'ram.volume',
  title: 'Oil that one side of a ram takes over its stroke',
  equation: 'V = A * s',
  symbols: { A: { meaning: 'area of that side', dimension: 'area', above: 0 }, s: stroke },
  result: { symbol: 'V', meaning: 'swept volume', dimension: 'volume' },
  source: geometry,
  examples: [{ given: { A: '3.1416 in²', s: '8 in' }, gives: '25.1327 in³', tolerance: 1e-5, because: 'six figures', source: arithmetic }],
  compute: ({ A, s }) => si(A * s, 'volume'),
})
export const ramRodVolume = defineFormula({
  id: 'ram.rod-volume',
  title: 'Oil that the rod displaces',
  equation: 'V = pi * d^2 * s / 4',
  symbols: { d: rod, s: stroke },
  result: {
    symbol: 'V',
    meaning: 'volume of the rod inside; the swing of the level in the reservoir with a single-ended ram',
    dimension: 'volume',
  },
  source: geometry,
  examples: [{ given: { d: '0.75 in', s: '8 in' }, gives: '3.53 in³', tolerance: 2e-3, because: 'three figures', source: arithmetic }],
  compute: ({ d, s }) => si((Math.PI * d ** 2 * s) / 4, 'volume'),
})
export const ramSpeed = defineFormula({
  id: 'ram.speed',
  title: 'Speed of a ram',
  equation: 'v = Q / A',
  symbols: {
    Q: { meaning: 'flow into the ram', dimension: 'flow', min: 0 },
    A: { meaning: 'area of the side that fills', dimension: 'area', above: 0 },
  },
  result: { symbol: 'v', meaning: 'speed of the rod', dimension: 'speed' },
  source: cylinderPage,
  examples: [
    { given: { Q: '2 gpm', A: '3.85 in²' }, gives: '2 in/s', tolerance: 1e-9, because: 'one US gallon is 231 in³', source: arithmetic },
  ],
  remark: 'Flow that the steering box takes at the same time is not here.',
  compute: ({ Q, A }) => si(Q / A, 'speed'),
})
export const ramFlowForTime = defineFormula({
  id: 'ram.flow-for-time',
  title: 'Flow to fill a ram in a given time',
  equation: 'Q = V / t',
  symbols: {
    V: { meaning: 'volume to fill', dimension: 'volume', min: 0 },
    t: { meaning: 'time, lock to lock', dimension: 'time', above: 0 },
  },
  result: { symbol: 'Q', meaning: 'flow needed', dimension: 'flow' },
  source: geometry,
  examples: [{ given: { V: '25.1327 in³', t: '2 s' }, gives: '3.26399 gpm', tolerance: 1e-5, because: 'six figures', source: arithmetic }],
  compute: ({ V, t }) => si(V / t, 'flow'),
})
export const hydraulicPower = defineFormula({
  id: 'hydraulic.power',
  title: 'Power in flowing oil',
  equation: 'P = Q * p',
  symbols: {
    Q: { meaning: 'flow', dimension: 'flow', min: 0 },
    p: { meaning: 'pressure', dimension: 'pressure', min: 0 },
  },
  result: { symbol: 'P', meaning: 'hydraulic power', dimension: 'power' },
  source: { id: 'hp-gpm-psi', cites: 'The relation hp = gpm · psi / 1714', mark: 'published', read: 'a course text' },
  examples: [
    { given: { Q: '10 gpm', p: '1714 psi' }, gives: '10 hp', tolerance: 3e-4, because: '1714 stands for 1714.29', source: arithmetic },
  ],
  compute: ({ Q, p }) => si(Q * p, 'power'),
})
export const ramEffectiveLever = defineFormula({
  id: 'ram.effective-lever',
  title: 'Shortest lever of a steering arm over its swing',
  equation: 'r_min = r_max * cos(g / 2)',
  symbols: {
    r_max: { meaning: 'length of the arm, its lever when square to the ram', dimension: 'length', above: 0 },
    g: { meaning: 'total swing of the arm, lock to lock', dimension: 'angle', min: 0, below: Math.PI },
  },
  result: { symbol: 'r_min', meaning: 'lever at full lock', dimension: 'length' },
  source: sizingSheet,
  examples: [{ given: { r_max: '150 mm', g: '60°' }, gives: '129.904 mm', tolerance: 1e-5, because: 'six figures', source: arithmetic }],
  remark: 'Holds where the arm is square to the ram in the middle of its swing; otherwise the worse lock has a shorter lever still.',
  compute: ({ r_max, g }) => si(r_max * Math.cos(g / 2), 'length'),
})
