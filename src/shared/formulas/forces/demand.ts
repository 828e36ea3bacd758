import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic, sizingSheet } from '../sources.ts'

const exact = { tolerance: 1e-6, because: 'exact, or seven figures', source: arithmetic } as const
const practice = (id: string, cites: string) => ({ id, cites, mark: 'practice' }) as const

export const demandWheelLoad = defineFormula({
  id: 'demand.wheel-load',
  title: 'Load on one front wheel',
  equation: 'W_w = W / 2',
  symbols: { W: { meaning: 'load on the steered axle, both wheels', dimension: 'force', min: 0 } },
  result: { symbol: 'W_w', meaning: 'load on one wheel', dimension: 'force' },
  source: arithmetic,
  examples: [{ given: { W: '3300 lbf' }, gives: '1650 lbf', ...exact }],
  remark: 'Both sides loaded alike, on the level.',
  compute: ({ W }) => si(W / 2, 'force'),
})

export const demandPrintWidth = defineFormula({
  id: 'tyre.print-width',
  title: 'Width of the tyre print from the section width',
  equation: 'B = x * w',
  symbols: {
    x: { meaning: 'tread print over section width', dimension: 'ratio', above: 0, max: 1 },
    w: { meaning: 'section width of the tyre', dimension: 'length', above: 0 },
  },
  result: { symbol: 'B', meaning: 'width of the tyre print', dimension: 'length' },
  source: practice('print-width', 'Tread print 75 to 80 % of the section width: common practice, no published source'),
  examples: [{ given: { x: '80 %', w: '12.5 in' }, gives: '10 in', ...exact }],
  remark: 'An estimate until the print is measured.',
  compute: ({ x, w }) => si(x * w, 'length'),
})

export const demandPrintDiameter = defineFormula({
  id: 'demand.print-diameter',
  title: 'Diameter of a round tyre print from load and inflation pressure',
  equation: 'a = 2 * sqrt(W_w / (pi * p))',
  symbols: {
    W_w: { meaning: 'load on one wheel', dimension: 'force', min: 0 },
    p: { meaning: 'inflation pressure, as the mean pressure of the print', dimension: 'pressure', above: 0 },
  },
  result: { symbol: 'a', meaning: 'diameter of a round print of the same area', dimension: 'length' },
  source: { id: 'print-area', cites: 'Load over inflation pressure as the area of the print', mark: 'derived' },
  examples: [{ given: { W_w: '1650 lbf', p: '28 psi' }, gives: '8.661997 in', ...exact }],
  remark: 'The carcass carries a part of the load, so that the true print is smaller.',
  compute: ({ W_w, p }) => si(2 * Math.sqrt(W_w / (Math.PI * p)), 'length'),
})

export const demandDriven = defineFormula({
  id: 'demand.driven',
  title: 'Kingpin torque of the axle where the steered wheels are driven',
  equation: 'T_d = 2 * T',
  symbols: { T: { meaning: 'torque about the kingpins, both wheels together', dimension: 'torque', min: 0 } },
  result: { symbol: 'T_d', meaning: 'torque about the kingpins, both wheels together', dimension: 'torque' },
  source: {
    ...sizingSheet,
    id: 'sheet-driven',
    cites: 'One of the sizing sheets for hydrostatic steering: double for driven steered wheels',
  },
  examples: [{ given: { T: '800 N·m' }, gives: '1600 N·m', ...exact }],
  remark: 'Only one of three sheets asks for it.',
  compute: ({ T }) => si(2 * T, 'torque'),
})

export const demandPerWheel = defineFormula({
  id: 'demand.per-wheel',
  title: "One wheel's part of the axle's kingpin torque",
  equation: 'M = T / 2',
  symbols: { T: { meaning: 'torque about the kingpins, both wheels together', dimension: 'torque', min: 0 } },
  result: { symbol: 'M', meaning: 'kingpin torque of one wheel', dimension: 'torque' },
  source: arithmetic,
  examples: [{ given: { T: '800 N·m' }, gives: '400 N·m', ...exact }],
  compute: ({ T }) => si(T / 2, 'torque'),
})

export const demandWheelTorque = defineFormula({
  id: 'demand.wheel-torque',
  title: 'Kingpin torque of one wheel, scrub and lift together',
  equation: 'M = max(M_S + s * M_J, 0)',
  symbols: {
    M_S: { meaning: 'torque from scrubbing', dimension: 'torque', min: 0 },
    s: { meaning: '1 where the wheel goes away from straight ahead, -1 where it comes back', dimension: 'ratio', min: -1, max: 1 },
    M_J: { meaning: 'torque from lifting the vehicle', dimension: 'torque', min: 0 },
  },
  result: { symbol: 'M', meaning: 'kingpin torque of one wheel', dimension: 'torque' },
  source: { id: 'scrub-and-lift', cites: 'Sum of the two moments in Barton and Fieldhouse, chapter 2', mark: 'derived' },
  examples: [
    { given: { M_S: '594 N·m', s: '1', M_J: '42 N·m' }, gives: '636 N·m', ...exact },
    { given: { M_S: '594 N·m', s: '-1', M_J: '42 N·m' }, gives: '552 N·m', ...exact },
  ],
  compute: ({ M_S, s, M_J }) => si(Math.max(M_S + s * M_J, 0), 'torque'),
})

export const demandRock = defineFormula({
  id: 'demand.rock',
  title: 'Force with a tyre wedged in rock',
  equation: 'F_k = k * F',
  symbols: {
    k: { meaning: 'factor on the standing force', dimension: 'ratio', min: 1, max: 5 },
    F: { meaning: 'force on the rod, standing', dimension: 'force', min: 0 },
  },
  result: { symbol: 'F_k', meaning: 'force on the rod, tyre wedged', dimension: 'force' },
  source: practice('rock', 'Soft tyres on rock ask for 25 to 50 % more than dry concrete: common practice, no published source'),
  examples: [{ given: { k: '1.5', F: '10 kN' }, gives: '15 kN', ...exact }],
  remark: 'For a wheel that cannot turn at all the design load is the full force of ram and box.',
  compute: ({ k, F }) => si(k * F, 'force'),
})
