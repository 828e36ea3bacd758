import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic } from '../sources.ts'

const cone = { id: 'cone-geometry', cites: 'Geometry of a cone', mark: 'derived' }
const taper = { meaning: 'taper: change of diameter per length', dimension: 'ratio', above: 0, max: 1 }
export const taperHalfAngle = defineFormula({
  id: 'taper.half-angle',
  title: 'Half angle of a taper',
  equation: 'beta = atan(k / 2)',
  symbols: { k: taper },
  result: { symbol: 'beta', meaning: 'angle between the side and the axis', dimension: 'angle' },
  source: cone,
  examples: [
    { given: { k: '1.5 in/ft' }, gives: '3.5763°', tolerance: 2e-5, because: 'four decimals', source: arithmetic },
    { given: { k: '1:10' }, gives: '2.8624°', tolerance: 2e-5, because: 'four decimals', source: arithmetic },
    {
      given: { k: '0.125' },
      gives: '3.58°',
      tolerance: 2e-3,
      because: 'two decimals',
      source: {
        id: 'tractor-taper',
        cites: 'A tractor tie rod, 3/4 in to 5/8 in over 1 in',
        mark: 'published',
        read: "a machinists' thread",
      },
    },
  ],
  compute: ({ k }) => si(Math.atan(k / 2), 'angle'),
})
export const taperIncludedAngle = defineFormula({
  id: 'taper.included-angle',
  title: 'Included angle of a taper',
  equation: 'theta = 2 * atan(k / 2)',
  symbols: { k: taper },
  result: { symbol: 'theta', meaning: 'angle between opposite sides', dimension: 'angle' },
  source: cone,
  examples: [
    { given: { k: '1:10' }, gives: '5.7248°', tolerance: 1e-5, because: 'four decimals', source: arithmetic },
    { given: { k: '1.5 in/ft' }, gives: '7.1527°', tolerance: 1e-5, because: 'four decimals', source: arithmetic },
  ],
  compute: ({ k }) => si(2 * Math.atan(k / 2), 'angle'),
})
export const taperRatioFromAngle = defineFormula({
  id: 'taper.ratio-from-angle',
  title: 'Taper from its included angle',
  equation: 'k = 2 * tan(theta / 2)',
  symbols: { theta: { meaning: 'angle between opposite sides', dimension: 'angle', above: 0, below: Math.PI / 2 } },
  result: { symbol: 'k', meaning: 'taper: change of diameter per length', dimension: 'ratio' },
  source: cone,
  examples: [{ given: { theta: '7°' }, gives: '1.468 in/ft', tolerance: 3e-4, because: 'three decimals', source: arithmetic }],
  remark: 'Say whether an angle is half or included: mixing the two doubles the taper.',
  compute: ({ theta }) => si(2 * Math.tan(theta / 2), 'ratio'),
})
export const taperRatioFromDiameters = defineFormula({
  id: 'taper.ratio-from-diameters',
  title: 'Taper from two diameters',
  equation: 'k = (D_1 - D_2) / L',
  symbols: {
    D_1: { meaning: 'larger diameter', dimension: 'length', above: 0 },
    D_2: { meaning: 'smaller diameter', dimension: 'length', above: 0 },
    L: { meaning: 'distance between the two, along the axis', dimension: 'length', above: 0 },
  },
  result: { symbol: 'k', meaning: 'taper: change of diameter per length', dimension: 'ratio' },
  requires: [{ says: 'D_1 is the larger: D_2 < D_1', holds: ({ D_1, D_2 }) => D_2 < D_1 }],
  source: cone,
  examples: [
    { given: { D_1: '0.75 in', D_2: '0.625 in', L: '1 in' }, gives: '1:8', tolerance: 1e-9, because: 'exact', source: arithmetic },
  ],
  remark: 'Errors of the two diameters count fully: 0.05 mm over 20 mm is 0.0025, a quarter of the step from 1:10 to 1:8.',
  compute: ({ D_1, D_2, L }) => si((D_1 - D_2) / L, 'ratio'),
})
export const taperDiameterAt = defineFormula({
  id: 'taper.diameter-at',
  title: 'Diameter of a taper away from its gauge plane',
  equation: 'D = D_g - k * x',
  symbols: {
    D_g: { meaning: 'diameter at the gauge plane', dimension: 'length', above: 0 },
    k: taper,
    x: { meaning: 'distance from the gauge plane towards the small end; negative towards the large end', dimension: 'length' },
  },
  result: { symbol: 'D', meaning: 'diameter there', dimension: 'length' },
  requires: [{ says: 'the place lies before the point of the cone: k x < D_g', holds: ({ D_g, k, x }) => k * x < D_g }],
  source: cone,
  examples: [{ given: { D_g: '20 mm', k: '1:8', x: '16 mm' }, gives: '18 mm', tolerance: 1e-9, because: 'exact', source: arithmetic }],
  compute: ({ D_g, k, x }) => si(D_g - k * x, 'length'),
})
export const taperStandOffShift = defineFormula({
  id: 'taper.stand-off-shift',
  title: 'How far a stud moves for an error of the bore',
  equation: 'dz = dD / k',
  symbols: {
    dD: { meaning: 'bore diameter too large (positive) or too small', dimension: 'length' },
    k: taper,
  },
  result: { symbol: 'dz', meaning: 'the stud sits deeper by this', dimension: 'length' },
  source: cone,
  examples: [
    { given: { dD: '0.005 in', k: '1.5 in/ft' }, gives: '0.04 in', tolerance: 1e-9, because: 'exact', source: arithmetic },
    { given: { dD: '0.001 in', k: '1:10' }, gives: '0.010 in', tolerance: 1e-9, because: 'exact', source: arithmetic },
  ],
  compute: ({ dD, k }) => si(dD / k, 'length'),
})
export const taperMismatchGap = defineFormula({
  id: 'taper.mismatch-gap',
  title: 'Gap between a stud and a bore of different taper',
  equation: 'g = L * abs(k_1 - k_2)',
  symbols: {
    L: { meaning: 'length of the bore', dimension: 'length', min: 0 },
    k_1: { ...taper, meaning: 'taper of the stud' },
    k_2: { ...taper, meaning: 'taper of the bore' },
  },
  result: { symbol: 'g', meaning: 'gap on the diameter at the end that does not touch', dimension: 'length' },
  source: cone,
  examples: [{ given: { L: '20 mm', k_1: '1:8', k_2: '1:10' }, gives: '0.5 mm', tolerance: 1e-9, because: 'exact', source: arithmetic }],
  remark: 'Tightening harder does not close it.',
  compute: ({ L, k_1, k_2 }) => si(L * Math.abs(k_1 - k_2), 'length'),
})
