import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { iso898Rows } from '../sources.ts'

const machineDesign = {
  id: 'machine-design-bolts',
  cites: "Shigley's Mechanical Engineering Design, 9th edition, chapter 8, Example 8-3 (p. 439)",
  mark: 'published',
  read: 'a copy of the page',
}
const actuatorManual = {
  id: 'actuator-manual-bolts',
  cites: 'Actuator manual E2K-405-0218, A.7, bolt torques (K = 0.2, 75 % of proof)',
  mark: 'published',
}
const guide = {
  id: 'bolt-guide-n12',
  cites: 'Bolt tightening guide for grades 5 and 8, after IFI data N-12',
  mark: 'published',
}
const area = { meaning: 'tensile stress area of the thread', dimension: 'area', above: 0 }
export const boltTorque = defineFormula({
  id: 'bolt.torque',
  title: 'Tightening torque of a bolt',
  equation: 'T = K * d * F',
  symbols: {
    K: { meaning: 'nut factor, for the finish and lubrication', dimension: 'ratio', above: 0, max: 0.5 },
    d: { meaning: 'nominal diameter', dimension: 'length', above: 0 },
    F: { meaning: 'preload wanted', dimension: 'force', min: 0 },
  },
  result: { symbol: 'T', meaning: 'tightening torque', dimension: 'torque' },
  source: machineDesign,
  examples: [
    {
      given: { K: '0.2', d: '1/2 in', F: '9046 lbf' },
      gives: '75.4 lbf·ft',
      tolerance: 7e-4,
      because: 'three figures',
      source: actuatorManual,
    },
    { given: { K: '0.2', d: '5/8 in', F: '23025 lbf' }, gives: '240 lbf·ft', tolerance: 3e-3, because: 'rounded to 5', source: guide },
  ],
  remark:
    'The preload scatters by 25 to 30 % at one torque. Published K for a plain bolt ranges from 0.20 to 0.30: the torque is worth what its K is worth.',
  compute: ({ K, d, F }) => si(K * d * F, 'torque'),
})
export const boltPreload = defineFormula({
  id: 'bolt.preload',
  title: 'Preload as a part of the proof load',
  equation: 'F = x * S_p * A_t',
  symbols: {
    x: { meaning: 'part of the proof load; 0.75 for a joint that is taken apart again', dimension: 'ratio', above: 0, max: 1 },
    S_p: { meaning: 'proof strength', dimension: 'pressure', above: 0 },
    A_t: area,
  },
  result: { symbol: 'F', meaning: 'preload', dimension: 'force' },
  source: actuatorManual,
  examples: [
    {
      given: { x: '0.75', S_p: '85 ksi', A_t: '0.1419 in²' },
      gives: '9046 lbf',
      tolerance: 1e-4,
      because: 'four figures',
      source: actuatorManual,
    },
    {
      given: { x: '0.75', S_p: '120 ksi', A_t: '0.226 in²' },
      gives: '20340 lbf',
      tolerance: 1e-4,
      because: 'five figures',
      source: actuatorManual,
    },
  ],
  compute: ({ x, S_p, A_t }) => si(x * S_p * A_t, 'force'),
})
export const boltProofLoad = defineFormula({
  id: 'bolt.proof-load',
  title: 'Proof load of a bolt',
  equation: 'F_p = S_p * A_t',
  symbols: { S_p: { meaning: 'proof strength', dimension: 'pressure', above: 0 }, A_t: area },
  result: { symbol: 'F_p', meaning: 'proof load', dimension: 'force' },
  source: iso898Rows,
  examples: [
    { given: { S_p: '580 MPa', A_t: '84.27 mm²' }, gives: '48900 N', tolerance: 1e-3, because: 'three figures', source: iso898Rows },
    { given: { S_p: '830 MPa', A_t: '57.99 mm²' }, gives: '48100 N', tolerance: 1e-3, because: 'three figures', source: iso898Rows },
  ],
  compute: ({ S_p, A_t }) => si(S_p * A_t, 'force'),
})
export const boltPreloadStress = defineFormula({
  id: 'bolt.preload-stress',
  title: 'Stress of the preload',
  equation: 's_i = F_i / A_t',
  symbols: { F_i: { meaning: 'preload', dimension: 'force', min: 0 }, A_t: area },
  result: { symbol: 's_i', meaning: 'stress from tightening alone', dimension: 'pressure' },
  source: machineDesign,
  examples: [
    { given: { F_i: '25 kip', A_t: '0.373 in²' }, gives: '67.02 ksi', tolerance: 1e-4, because: 'four figures', source: machineDesign },
  ],
  remark: 'The twist left from tightening is not in it.',
  compute: ({ F_i, A_t }) => si(F_i / A_t, 'pressure'),
})
export const boltJointConstant = defineFormula({
  id: 'bolt.joint-constant',
  title: 'Part of an outer load that the bolt feels',
  equation: 'C = k_b / (k_b + k_m)',
  symbols: {
    k_b: { meaning: 'stiffness of the bolt', dimension: 'stiffness', above: 0 },
    k_m: { meaning: 'stiffness of the clamped members', dimension: 'stiffness', above: 0 },
  },
  result: { symbol: 'C', meaning: 'part of the load that the bolt takes', dimension: 'ratio' },
  source: machineDesign,
  examples: [
    {
      given: { k_b: '6.5e6 lbf/in', k_m: '13.8e6 lbf/in' },
      gives: '0.320',
      tolerance: 1e-3,
      because: 'three figures',
      source: machineDesign,
    },
  ],
  remark: 'Holds while the joint stays closed.',
  compute: ({ k_b, k_m }) => si(k_b / (k_b + k_m), 'ratio'),
})
export const boltServiceStress = defineFormula({
  id: 'bolt.service-stress',
  title: 'Stress of a tightened bolt under load',
  equation: 's_b = C * P / A_t + s_i',
  symbols: {
    C: { meaning: 'part of the load that the bolt takes', dimension: 'ratio', min: 0, max: 1 },
    P: { meaning: 'outer load along the bolt', dimension: 'force', min: 0 },
    A_t: area,
    s_i: { meaning: 'stress of the preload', dimension: 'pressure', min: 0 },
  },
  result: { symbol: 's_b', meaning: 'stress in the bolt', dimension: 'pressure' },
  source: machineDesign,
  examples: [
    {
      given: { C: '0.320', P: '6 kip', A_t: '0.373 in²', s_i: '67.02 ksi' },
      gives: '72.17 ksi',
      tolerance: 1e-4,
      because: 'four figures',
      source: machineDesign,
    },
  ],
  remark: 'Steady load along the bolt, no fatigue, no bending, no shear; the joint stays closed.',
  compute: ({ C, P, A_t, s_i }) => si((C * P) / A_t + s_i, 'pressure'),
})
