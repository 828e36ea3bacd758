import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic, mechanics, mechanicsOfMaterials } from '../sources.ts'

const push = { meaning: 'pushing load', dimension: 'force', min: 0 }
const modulus = { meaning: "modulus of elasticity (Young's)", dimension: 'pressure', above: 0 }
const area = { meaning: 'section area', dimension: 'area', above: 0 }
const second = { meaning: 'second moment of area', dimension: 'secondMomentOfArea', above: 0 }
const eccentricity = { meaning: 'distance of the load from the axis, or the jog of a bent rod', dimension: 'length', min: 0 }
const length = { meaning: 'length between the joints', dimension: 'length', above: 0 }
const euler = { meaning: 'Euler load', dimension: 'force', above: 0 }
const moment = { meaning: 'bending moment without the push', dimension: 'torque', min: 0 }
const belowEuler = { says: 'the push is below the Euler load' }
const amplification = {
  id: 'amplification',
  cites: 'Beam-column amplification M0 / (1 - P/Pe)',
  mark: 'memory',
  checked: 'a finite-element run of a central load, within 0.5 %',
}
export const columnSecantStress = defineFormula({
  id: 'column.secant-stress',
  title: 'Greatest stress of a column loaded beside its axis (secant formula)',
  equation: 's = P / A * (1 + e * c / r^2 / cos(L_e / (2 * r) * sqrt(P / (E * A))))',
  symbols: {
    P: push,
    A: area,
    e: eccentricity,
    c: { meaning: 'distance from the axis to the outermost fibre', dimension: 'length', above: 0 },
    r: { meaning: 'radius of gyration', dimension: 'length', above: 0 },
    L_e: { meaning: 'effective length', dimension: 'length', above: 0 },
    E: modulus,
  },
  result: { symbol: 's', meaning: 'greatest compressive stress', dimension: 'pressure' },
  requires: [{ ...belowEuler, holds: ({ P, A, r, L_e, E }) => (L_e / r) * Math.sqrt(P / (E * A)) < Math.PI }],
  source: { id: 'secant-formula', cites: 'Secant formula, mechanics of materials, course text 9.3', mark: 'published', read: 'web copy' },
  examples: [
    {
      given: { P: '5 kip', A: '4.5160 in²', e: '3 in', c: '3 in', r: '2.03485 in', L_e: '720 in', E: '29000 ksi' },
      gives: '6.34 ksi',
      tolerance: 3e-3,
      because: 'the text works with 1.107 (1 + 2.173 · 2.175)',
      source: { id: 'secant-example', cites: 'Course text 9.3, hollow round post, fixed and free', mark: 'published', read: 'web copy' },
    },
    {
      given: { P: '20 kip', A: '4 in²', e: '0.75 in', c: '1 in', r: '0.57735 in', L_e: '36 in', E: '29000 ksi' },
      gives: '17.3 ksi',
      tolerance: 3e-3,
      because: 'three figures; one copy misprints 17.16',
      source: { ...mechanicsOfMaterials, mark: 'memory' },
    },
  ],
  remark: 'The stress grows faster than the load: compare the load at yield with the load, not the stresses.',
  compute: ({ P, A, e, c, r, L_e, E }) =>
    si((P / A) * (1 + (e * c) / r ** 2 / Math.cos((L_e / (2 * r)) * Math.sqrt(P / (E * A)))), 'pressure'),
})
export const columnEccentricDeflection = defineFormula({
  id: 'column.eccentric-deflection',
  title: 'Bow of a column loaded beside its axis',
  equation: 'delta = e * (1 / cos(L / 2 * sqrt(P / (E * I))) - 1)',
  symbols: { e: eccentricity, L: length, P: push, E: modulus, I: second },
  result: { symbol: 'delta', meaning: 'bow in the middle', dimension: 'length' },
  requires: [{ ...belowEuler, holds: ({ L, P, E, I }) => L * Math.sqrt(P / (E * I)) < Math.PI }],
  source: mechanicsOfMaterials,
  examples: [
    {
      given: { e: '0.5 in', L: '30 in', P: '2800 lbf', E: '10e6 psi', I: '0.166667 in⁴' },
      gives: '0.112 in',
      tolerance: 5e-3,
      because: 'three figures',
      source: mechanicsOfMaterials,
    },
  ],
  compute: ({ e, L, P, E, I }) => si(e * (1 / Math.cos((L / 2) * Math.sqrt(P / (E * I))) - 1), 'length'),
})
export const columnEccentricMoment = defineFormula({
  id: 'column.eccentric-moment',
  title: 'Bending of a column loaded beside its axis',
  equation: 'M = P * e / cos(L / 2 * sqrt(P / (E * I)))',
  symbols: { P: push, e: eccentricity, L: length, E: modulus, I: second },
  result: { symbol: 'M', meaning: 'greatest bending moment', dimension: 'torque' },
  requires: [{ ...belowEuler, holds: ({ L, P, E, I }) => L * Math.sqrt(P / (E * I)) < Math.PI }],
  source: mechanicsOfMaterials,
  examples: [
    {
      given: { P: '2800 lbf', e: '0.5 in', L: '30 in', E: '10e6 psi', I: '0.166667 in⁴' },
      gives: '1714 lbf·in',
      tolerance: 5e-4,
      because: 'four figures; one copy misprints 11714',
      source: mechanicsOfMaterials,
    },
  ],
  compute: ({ P, e, L, E, I }) => si((P * e) / Math.cos((L / 2) * Math.sqrt(P / (E * I))), 'torque'),
})
export const beamColumnMoment = defineFormula({
  id: 'beam-column.moment',
  title: 'Bending moment made larger by a push',
  equation: 'M = M_0 / (1 - P / P_e)',
  symbols: { M_0: moment, P: push, P_e: euler },
  result: { symbol: 'M', meaning: 'bending moment with the push', dimension: 'torque' },
  requires: [{ ...belowEuler, holds: ({ P, P_e }) => P < P_e }],
  source: amplification,
  examples: [
    { given: { M_0: '100 N·m', P: '20 kN', P_e: '100 kN' }, gives: '125 N·m', tolerance: 1e-9, because: 'exact', source: arithmetic },
  ],
  remark:
    'Near enough for a load across the middle. For the couple of a clamp it gives 1.00 to 1.62 times the true value: safe, but it turns away good rods.',
  compute: ({ M_0, P, P_e }) => si(M_0 / (1 - P / P_e), 'torque'),
})
export const beamColumnCentralFactor = defineFormula({
  id: 'beam-column.central-factor',
  title: 'Exact growth of the bow under a load across the middle and a push',
  equation: 'chi = 3 * (tan(u) - u) / u^3',
  symbols: {
    u: { meaning: 'half length times sqrt(P / (E I))', dimension: 'ratio', min: 0.01, below: Math.PI / 2 },
  },
  result: { symbol: 'chi', meaning: 'bow with the push against bow without', dimension: 'ratio' },
  source: {
    id: 'central-load-factor',
    cites: 'Beam-column with a central load, closed form',
    mark: 'memory',
    checked: 'against M0 / (1 - P/Pe)',
  },
  examples: [{ given: { u: '0.785398' }, gives: '1.3289', tolerance: 1e-4, because: 'five figures, tan = 1', source: arithmetic }],
  remark: 'Below u = 0.01 it is 1 to within 0.01 %.',
  compute: ({ u }) => si((3 * (Math.tan(u) - u)) / u ** 3, 'ratio'),
})
export const beamColumnStress = defineFormula({
  id: 'beam-column.stress',
  title: 'Stress of a rod pushed and bent',
  equation: 's = P / A + M_0 / (Z * (1 - P / P_e))',
  symbols: { P: push, A: area, M_0: moment, Z: { meaning: 'section modulus', dimension: 'volume', above: 0 }, P_e: euler },
  result: { symbol: 's', meaning: 'greatest compressive stress', dimension: 'pressure' },
  requires: [{ ...belowEuler, holds: ({ P, P_e }) => P < P_e }],
  source: { id: 'combined-stress', cites: 'Direct stress and amplified bending together, against yield over a factor', mark: 'memory' },
  examples: [
    {
      given: { P: '20 kN', A: '500 mm²', M_0: '100 N·m', Z: '5000 mm³', P_e: '100 kN' },
      gives: '65 MPa',
      tolerance: 1e-9,
      because: 'exact: 40 + 20 · 1.25',
      source: arithmetic,
    },
  ],
  compute: ({ P, A, M_0, Z, P_e }) => si(P / A + M_0 / (Z * (1 - P / P_e)), 'pressure'),
})
export const clampCouple = defineFormula({
  id: 'clamp.couple',
  title: "Couple that a ram's clamp puts on the rod",
  equation: 'M_0 = F * e',
  symbols: {
    F: { meaning: 'force of the ram along the rod', dimension: 'force', min: 0 },
    e: { meaning: "distance of the ram's line from the rod's axis", dimension: 'length', min: 0 },
  },
  result: { symbol: 'M_0', meaning: 'couple at the clamp', dimension: 'torque' },
  source: mechanics,
  examples: [{ given: { F: '10 kN', e: '50 mm' }, gives: '500 N·m', tolerance: 1e-9, because: 'exact', source: arithmetic }],
  compute: ({ F, e }) => si(F * e, 'torque'),
})
export const clampBending = defineFormula({
  id: 'clamp.bending',
  title: "Bending beside a ram's clamp, without the push in the rod",
  equation: 'M = F * e * a / L',
  symbols: {
    F: { meaning: 'force of the ram along the rod', dimension: 'force', min: 0 },
    e: { meaning: "distance of the ram's line from the rod's axis", dimension: 'length', min: 0 },
    a: { meaning: "from the clamp to the rod's joint on the side looked at", dimension: 'length', min: 0 },
    L: length,
  },
  result: { symbol: 'M', meaning: 'bending moment just beside the clamp on that side', dimension: 'torque' },
  requires: [{ says: 'the clamp is between the joints: a <= L', holds: ({ a, L }) => a <= L }],
  source: mechanics,
  examples: [
    { given: { F: '10 kN', e: '50 mm', a: '300 mm', L: '1.2 m' }, gives: '125 N·m', tolerance: 1e-9, because: 'exact', source: arithmetic },
  ],
  remark: 'Once for each side; the longer side bends more.',
  compute: ({ F, e, a, L }) => si((F * e * a) / L, 'torque'),
})
export const clampCoupleMaximum = defineFormula({
  id: 'clamp.couple-maximum',
  title: 'Greatest bending of a pushed rod with a couple at its clamp',
  equation:
    'M = M_0 * max(abs(cos((L - a) * sqrt(P / (E * I)))) * sin(min(a * sqrt(P / (E * I)), pi / 2)), abs(cos(a * sqrt(P / (E * I)))) * sin(min((L - a) * sqrt(P / (E * I)), pi / 2))) / sin(L * sqrt(P / (E * I)))',
  symbols: {
    M_0: { meaning: 'couple at the clamp', dimension: 'torque', min: 0 },
    P: { ...push, above: 0 },
    a: { meaning: 'from one joint to the clamp', dimension: 'length', min: 0 },
    L: length,
    E: modulus,
    I: second,
  },
  result: { symbol: 'M', meaning: 'greatest bending moment anywhere in the rod', dimension: 'torque' },
  requires: [
    { says: 'the clamp is between the joints: a <= L', holds: ({ a, L }) => a <= L },
    { ...belowEuler, holds: ({ P, L, E, I }) => L * Math.sqrt(P / (E * I)) < Math.PI },
  ],
  source: { id: 'couple-on-column', cites: 'Pinned column under a push with a couple at one place, exact solution', mark: 'derived' },
  examples: [
    {
      given: { M_0: '500 N·m', P: '1 N', a: '300 mm', L: '1.2 m', E: '200 GPa', I: '80000 mm⁴' },
      gives: '375 N·m',
      tolerance: 1e-4,
      because: 'with hardly any push it is M_0 (L - a) / L',
      source: arithmetic,
    },
  ],
  remark: 'The push is taken over the whole length, which is on the safe side where only a part is pushed.',
  compute: ({ M_0, P, a, L, E, I }) => {
    const k = Math.sqrt(P / (E * I))
    const highest = (part) => Math.sin(Math.min(k * part, Math.PI / 2))
    const near = Math.abs(Math.cos(k * (L - a))) * highest(a)
    const far = Math.abs(Math.cos(k * a)) * highest(L - a)
    return si((M_0 * Math.max(near, far)) / Math.sin(k * L), 'torque')
  },
})
