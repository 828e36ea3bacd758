import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic, faires, machineElements, mechanicsOfMaterials, tubeRows } from '../sources.ts'

const modulus = { meaning: "modulus of elasticity (Young's)", dimension: 'pressure', above: 0 }
const yieldStrength = { meaning: 'yield strength', dimension: 'pressure', above: 0 }
const area = { meaning: 'section area', dimension: 'area', above: 0 }
const gyration = { meaning: 'radius of gyration', dimension: 'length', above: 0 }
const effective = { meaning: 'effective length; with a ball joint at both ends the whole length', dimension: 'length', above: 0 }
const critical = { symbol: 'P', meaning: 'load at which the column gives way', dimension: 'force' }
const toYield = { says: 'short enough for Johnson: L_e / r <= sqrt(2) * pi * sqrt(E / S_y)' }
export const columnEuler = defineFormula({
  id: 'column.euler',
  title: 'Buckling load of a slender column (Euler)',
  equation: 'P = n * pi^2 * E * I / L^2',
  symbols: {
    n: {
      meaning: 'end condition: 1 pinned, 0.25 fixed and free, 2.046 fixed and pinned, 4 fixed both ends',
      dimension: 'ratio',
      above: 0,
      max: 4,
    },
    E: modulus,
    I: { meaning: 'second moment of area', dimension: 'secondMomentOfArea', above: 0 },
    L: { meaning: 'length between the joints', dimension: 'length', above: 0 },
  },
  result: critical,
  source: mechanicsOfMaterials,
  examples: [
    {
      given: { n: '1', E: '210 GPa', I: '43220 mm⁴', L: '1.2 m' },
      gives: '62.2 kN',
      tolerance: 1e-3,
      because: 'three figures',
      source: mechanicsOfMaterials,
    },
    {
      given: { n: '0.25', E: '210 GPa', I: '43220 mm⁴', L: '1.2 m' },
      gives: '15.6 kN',
      tolerance: 4e-3,
      because: 'three figures',
      source: mechanicsOfMaterials,
    },
    {
      given: { n: '2.046', E: '210 GPa', I: '43220 mm⁴', L: '1.2 m' },
      gives: '127 kN',
      tolerance: 4e-3,
      because: 'three figures',
      source: mechanicsOfMaterials,
    },
    {
      given: { n: '4', E: '210 GPa', I: '43220 mm⁴', L: '1.2 m' },
      gives: '249 kN',
      tolerance: 4e-3,
      because: 'three figures',
      source: mechanicsOfMaterials,
    },
  ],
  remark:
    'Straight, one section, load on the axis, and slender: for a shorter one it promises too much (Johnson). A stronger alloy does not raise it.',
  compute: ({ n, E, I, L }) => si((n * Math.PI ** 2 * E * I) / L ** 2, 'force'),
})
export const columnSlenderness = defineFormula({
  id: 'column.slenderness',
  title: 'Slenderness of a column',
  equation: 'lambda = L_e / r',
  symbols: { L_e: effective, r: gyration },
  result: { symbol: 'lambda', meaning: 'slenderness ratio', dimension: 'ratio' },
  source: machineElements,
  examples: [
    { given: { L_e: '54 in', r: '0.3125 in' }, gives: '173', tolerance: 2e-3, because: 'three figures', source: machineElements },
    { given: { L_e: '48 in', r: '0.4507 in' }, gives: '106.5', tolerance: 1e-4, because: 'four figures', source: tubeRows },
  ],
  compute: ({ L_e, r }) => si(L_e / r, 'ratio'),
})
export const columnConstant = defineFormula({
  id: 'column.constant',
  title: 'Slenderness where Johnson ends and Euler begins',
  equation: 'C_c = sqrt(2 * pi^2 * E / S_y)',
  symbols: { E: modulus, S_y: yieldStrength },
  result: { symbol: 'C_c', meaning: 'column constant', dimension: 'ratio' },
  source: machineElements,
  examples: [
    { given: { E: '30e6 psi', S_y: '51 ksi' }, gives: '108', tolerance: 4e-3, because: 'three figures', source: machineElements },
    { given: { E: '30e6 psi', S_y: '150 ksi' }, gives: '62.83', tolerance: 1e-4, because: 'four figures', source: faires },
  ],
  compute: ({ E, S_y }) => si(Math.sqrt((2 * Math.PI ** 2 * E) / S_y), 'ratio'),
})
export const columnJohnson = defineFormula({
  id: 'column.johnson',
  title: 'Load of a column of middling length (Johnson)',
  equation: 'P = A * S_y * (1 - S_y * (L_e / r)^2 / (4 * pi^2 * E))',
  symbols: { A: area, S_y: yieldStrength, L_e: effective, r: gyration, E: modulus },
  result: critical,
  requires: [{ ...toYield, holds: ({ S_y, L_e, r, E }) => (L_e / r) ** 2 * S_y <= 2 * Math.PI ** 2 * E }],
  source: machineElements,
  examples: [
    {
      given: { A: '0.4418 in²', S_y: '42 ksi', L_e: '15 in', r: '0.1875 in', E: '30e6 psi' },
      gives: '14373 lbf',
      tolerance: 3e-3,
      because: 'the solution rounds r to 0.188 in; its length is from memory',
      source: machineElements,
    },
    {
      given: { A: '0.981748 in²', S_y: '70 ksi', L_e: '36 in', r: '0.450694 in', E: '29e6 psi' },
      gives: '41913 lbf',
      tolerance: 1e-4,
      because: 'five figures',
      source: tubeRows,
    },
  ],
  compute: ({ A, S_y, L_e, r, E }) => si(A * S_y * (1 - (S_y * (L_e / r) ** 2) / (4 * Math.PI ** 2 * E)), 'force'),
})
export const columnCriticalLoad = defineFormula({
  id: 'column.critical-load',
  title: 'Load at which a straight column gives way (Johnson or Euler, by slenderness)',
  equation: 'P = L_e / r < sqrt(2 * pi^2 * E / S_y) ? A * S_y * (1 - S_y * (L_e / r)^2 / (4 * pi^2 * E)) : pi^2 * E * A / (L_e / r)^2',
  symbols: { A: area, S_y: yieldStrength, L_e: effective, r: gyration, E: modulus },
  result: critical,
  source: machineElements,
  examples: [
    {
      given: { A: '1.2272 in²', S_y: '51 ksi', L_e: '54 in', r: '0.3125 in', E: '30e6 psi' },
      gives: '12169 lbf',
      tolerance: 1e-3,
      because: 'the solution rounds KL/r to 173',
      source: machineElements,
    },
    {
      given: { A: '0.4418 in²', S_y: '42 ksi', L_e: '32 in', r: '0.1875 in', E: '30e6 psi' },
      gives: '4490 lbf',
      tolerance: 1e-3,
      because: 'another solution rounds r and gives 4473',
      source: machineElements,
    },
    {
      given: { A: '0.981748 in²', S_y: '70 ksi', L_e: '36 in', r: '0.450694 in', E: '29e6 psi' },
      gives: '41913 lbf',
      tolerance: 1e-4,
      because: 'five figures',
      source: tubeRows,
    },
  ],
  remark: 'A straight rod pushed along its axis. A bent one, or a load beside the axis, carries less: use the secant formula.',
  compute: ({ A, S_y, L_e, r, E }) => {
    const slenderness = L_e / r
    const johnson = slenderness < Math.sqrt((2 * Math.PI ** 2 * E) / S_y)
    return si(
      johnson ? A * S_y * (1 - (S_y * slenderness ** 2) / (4 * Math.PI ** 2 * E)) : (Math.PI ** 2 * E * A) / slenderness ** 2,
      'force',
    )
  },
})
export const columnAllowable = defineFormula({
  id: 'column.allowable',
  title: 'Load allowed on a column',
  equation: 'F = P / N',
  symbols: {
    P: { meaning: 'load at which the column gives way', dimension: 'force', min: 0 },
    N: { meaning: "design factor; 3 to 5 in cylinder makers' advice for rods", dimension: 'ratio', min: 1 },
  },
  result: { symbol: 'F', meaning: 'load allowed', dimension: 'force' },
  source: machineElements,
  examples: [{ given: { P: '12169 lbf', N: '3' }, gives: '4056 lbf', tolerance: 1e-4, because: 'four figures', source: machineElements }],
  compute: ({ P, N }) => si(P / N, 'force'),
})
export const columnJohnsonDiameter = defineFormula({
  id: 'column.johnson-diameter',
  title: 'Solid rod for a load, middling length (Johnson)',
  equation: 'D = sqrt((N * F + S_y^2 * L_e^2 / (pi * E)) / (pi / 4 * S_y))',
  symbols: {
    F: { meaning: 'load to carry', dimension: 'force', above: 0 },
    N: { meaning: 'design factor', dimension: 'ratio', min: 1 },
    S_y: yieldStrength,
    L_e: effective,
    E: modulus,
  },
  result: { symbol: 'D', meaning: 'diameter of a solid round rod', dimension: 'length' },
  source: faires,
  examples: [
    {
      given: { F: '10 kip', N: '3', S_y: '48 ksi', L_e: '25 in', E: '30e6 psi' },
      gives: '1.096 in',
      tolerance: 5e-4,
      because: 'four figures',
      source: faires,
    },
  ],
  remark: 'Holds if the rod so found is short enough for Johnson; otherwise take the Euler diameter.',
  compute: ({ F, N, S_y, L_e, E }) => si(Math.sqrt((N * F + (S_y ** 2 * L_e ** 2) / (Math.PI * E)) / ((Math.PI / 4) * S_y)), 'length'),
})
export const columnEulerDiameter = defineFormula({
  id: 'column.euler-diameter',
  title: 'Solid rod for a load, slender (Euler)',
  equation: 'D = (64 * N * F * L_e^2 / (pi^3 * E))^(1 / 4)',
  symbols: {
    F: { meaning: 'load to carry', dimension: 'force', above: 0 },
    N: { meaning: 'design factor', dimension: 'ratio', min: 1 },
    L_e: effective,
    E: modulus,
  },
  result: { symbol: 'D', meaning: 'diameter of a solid round rod', dimension: 'length' },
  source: faires,
  examples: [
    {
      given: { F: '10 kip', N: '3', L_e: '50 in', E: '30e6 psi' },
      gives: '1.507 in',
      tolerance: 5e-4,
      because: 'four figures',
      source: faires,
    },
    {
      given: { F: '10 kip', N: '3', L_e: '25 in', E: '30e6 psi' },
      gives: '1.0657 in',
      tolerance: 1e-4,
      because: 'five figures',
      source: faires,
    },
  ],
  remark: 'Holds if the rod so found is slender enough for Euler; otherwise take the Johnson diameter.',
  compute: ({ F, N, L_e, E }) => si(((64 * N * F * L_e ** 2) / (Math.PI ** 3 * E)) ** 0.25, 'length'),
})
export const columnStepped = defineFormula({
  id: 'column.stepped',
  title: 'Buckling load of a pinned column of two sections (a ram: body and rod)',
  equation: 'tan(L_1 * sqrt(P / (E * I_1))) * sqrt(I_1) = -tan(L_2 * sqrt(P / (E * I_2))) * sqrt(I_2)',
  procedure: true,
  symbols: {
    E: modulus,
    I_1: { meaning: 'second moment of area of the first section', dimension: 'secondMomentOfArea', above: 0 },
    L_1: { meaning: 'length of the first section', dimension: 'length', above: 0 },
    I_2: { meaning: 'second moment of area of the second section', dimension: 'secondMomentOfArea', above: 0 },
    L_2: { meaning: 'length of the second section', dimension: 'length', above: 0 },
  },
  result: { symbol: 'P', meaning: 'lowest load at which it buckles', dimension: 'force' },
  source: {
    id: 'stepped-column',
    cites: 'Two beam-column segments joined with one slope, pinned at both ends',
    mark: 'derived',
    checked: 'a finite-element program, 0.1 % at one case',
  },
  examples: [
    {
      given: { E: '210 GPa', I_1: '43220 mm⁴', L_1: '0.5 m', I_2: '43220 mm⁴', L_2: '0.7 m' },
      gives: '62.2 kN',
      tolerance: 1e-3,
      because: "with equal sections it is the book's pinned column of 1.2 m",
      source: mechanicsOfMaterials,
    },
    {
      given: { E: '210 GPa', I_1: '1e6 m⁴', L_1: '0.5 m', I_2: '43220 mm⁴', L_2: '0.7 m' },
      gives: '85.49 kN',
      tolerance: 1e-4,
      because: 'a rigid first part leaves L_1 k + tan(k L_2) = 0, solved apart',
      source: arithmetic,
    },
  ],
  remark:
    'Pinned at both ends and rigid at the step: play in the piston and gland is not in it, and takes from it. ISO/TS 13725 has a fuller model, not for double-ended rams.',
  compute: ({ E, I_1, L_1, I_2, L_2 }) => {
    // The angle of the bent line's phase at the far end grows steadily with the load and passes π at the lowest root,
    // so halving the interval between the Euler loads of the thinner and the thicker section cannot miss it.
    const euler = (I) => (Math.PI ** 2 * E * I) / (L_1 + L_2) ** 2
    let low = euler(Math.min(I_1, I_2))
    let high = euler(Math.max(I_1, I_2))
    for (let step = 0; step < 200; step++) {
      const middle = (low + high) / 2
      if (middle <= low || middle >= high) break
      if (phase(middle / E, I_1, L_1, I_2, L_2) < Math.PI) low = middle
      else high = middle
    }
    return si((low + high) / 2, 'force')
  },
})
/** Phase of the deflection at the far end; P_E is the load over the modulus. Past π in the first section it stays past it. */
function phase(P_E, I_1, L_1, I_2, L_2) {
  const k1 = Math.sqrt(P_E / I_1)
  const k2 = Math.sqrt(P_E / I_2)
  if (k1 * L_1 >= Math.PI) return k1 * L_1 + k2 * L_2
  return Math.atan2(k2 * Math.sin(k1 * L_1), k1 * Math.cos(k1 * L_1)) + k2 * L_2
}
