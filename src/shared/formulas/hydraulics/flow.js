import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic, fluidMechanics, lineVelocities } from '../sources.ts'

const bore = { meaning: 'inside diameter', dimension: 'length', above: 0 }
const flow = { meaning: 'flow', dimension: 'flow', min: 0 }
const velocity = { meaning: 'mean velocity', dimension: 'speed', min: 0 }
const length = { meaning: 'length of the line', dimension: 'length', min: 0 }
const friction = { meaning: 'Darcy friction factor (four times the Fanning factor)', dimension: 'ratio', above: 0 }
const dynamic = { meaning: 'dynamic viscosity', dimension: 'dynamicViscosity', above: 0 }
const kinematic = { meaning: 'kinematic viscosity', dimension: 'kinematicViscosity', above: 0 }
const density = { meaning: 'density', dimension: 'density', above: 0 }
const laminar = {
  id: 'hagen-poiseuille',
  cites: 'Law of Hagen and Poiseuille, laminar flow in a round pipe',
  mark: 'published',
  read: 'a discussion of oil in a pipe',
}
const velocityOfFlow = {
  id: 'mean-velocity',
  cites: 'Flow over area; v = 0.3208 gpm / A[in²] ft/s in a fluid-power tip on line sizes',
  mark: 'published',
}
const germanSizing = {
  id: 'nominal-width',
  cites: "Hydraulics maker's answers to questions, 'Nominal width'",
  mark: 'published',
  read: 'web copy',
}
export const flowVelocity = defineFormula({
  id: 'flow.velocity',
  title: 'Velocity of oil in a line',
  equation: 'v = 4 * Q / (pi * d^2)',
  symbols: { Q: flow, d: bore },
  result: { symbol: 'v', meaning: 'mean velocity', dimension: 'speed' },
  source: velocityOfFlow,
  examples: [
    {
      given: { Q: '9.5 gpm', d: '0.622 in' },
      gives: '10 ft/s',
      tolerance: 4e-3,
      because: 'flow printed to two figures',
      source: lineVelocities,
    },
  ],
  compute: ({ Q, d }) => si((4 * Q) / (Math.PI * d ** 2), 'speed'),
})
export const flowAtVelocity = defineFormula({
  id: 'flow.at-velocity',
  title: 'Flow that a line carries at a velocity',
  equation: 'Q = v * pi * d^2 / 4',
  symbols: { v: velocity, d: bore },
  result: { symbol: 'Q', meaning: 'flow', dimension: 'flow' },
  source: velocityOfFlow,
  examples: [
    { given: { v: '20 ft/s', d: '0.493 in' }, gives: '11.9 gpm', tolerance: 8e-3, because: 'three figures', source: lineVelocities },
    { given: { v: '10 ft/s', d: '0.824 in' }, gives: '16.6 gpm', tolerance: 8e-3, because: 'three figures', source: lineVelocities },
  ],
  compute: ({ v, d }) => si((v * Math.PI * d ** 2) / 4, 'flow'),
})
export const flowBoreForVelocity = defineFormula({
  id: 'flow.bore-for-velocity',
  title: 'Bore of a line for a flow and a velocity',
  equation: 'd = sqrt(4 * Q / (pi * v))',
  symbols: { Q: flow, v: { ...velocity, meaning: 'velocity allowed', above: 0 } },
  result: { symbol: 'd', meaning: 'inside diameter', dimension: 'length' },
  source: { id: 'bore-formula', cites: 'Trade article on line sizing, its printed formula turned the right way up', mark: 'derived' },
  examples: [
    { given: { Q: '20 L/min', v: '0.5 m/s' }, gives: '29 mm', tolerance: 0.019, because: 'whole millimetres', source: germanSizing },
    { given: { Q: '20 L/min', v: '2 m/s' }, gives: '15 mm', tolerance: 0.035, because: 'whole millimetres', source: germanSizing },
  ],
  compute: ({ Q, v }) => si(Math.sqrt((4 * Q) / (Math.PI * v)), 'length'),
})
export const flowDynamicViscosity = defineFormula({
  id: 'flow.dynamic-viscosity',
  title: 'Dynamic from kinematic viscosity',
  equation: 'mu = nu * rho',
  symbols: { nu: kinematic, rho: density },
  result: { symbol: 'mu', meaning: 'dynamic viscosity', dimension: 'dynamicViscosity' },
  source: { id: 'viscosity-definition', cites: 'Definition of kinematic viscosity', mark: 'derived' },
  examples: [{ given: { nu: '32 cSt', rho: '870 kg/m³' }, gives: '27.84 mPa·s', tolerance: 1e-9, because: 'exact', source: arithmetic }],
  compute: ({ nu, rho }) => si(nu * rho, 'dynamicViscosity'),
})
export const flowReynolds = defineFormula({
  id: 'flow.reynolds',
  title: 'Reynolds number of a line',
  equation: 'Re = v * d / nu',
  symbols: { v: velocity, d: bore, nu: kinematic },
  result: { symbol: 'Re', meaning: 'Reynolds number; below about 2300 the flow is laminar', dimension: 'ratio' },
  source: fluidMechanics,
  examples: [
    { given: { v: '6.4 m/s', d: '0.2 m', nu: '1e-5 m²/s' }, gives: '128000', tolerance: 1e-9, because: 'exact', source: fluidMechanics },
  ],
  compute: ({ v, d, nu }) => si((v * d) / nu, 'ratio'),
})
export const flowHeadLoss = defineFormula({
  id: 'flow.head-loss',
  title: 'Head lost to friction in a line',
  equation: 'h = f * L / d * v^2 / (2 * g)',
  symbols: {
    f: friction,
    L: length,
    d: bore,
    v: velocity,
    g: { meaning: 'acceleration of free fall', dimension: 'acceleration', above: 0 },
  },
  result: { symbol: 'h', meaning: 'head lost, as height of the same fluid', dimension: 'length' },
  source: fluidMechanics,
  examples: [
    {
      given: { f: '0.02', L: '200 ft', d: '0.5 ft', v: '6 ft/s', g: '32.2 ft/s²' },
      gives: '4.5 ft',
      tolerance: 0.011,
      because: 'two figures',
      source: fluidMechanics,
    },
  ],
  compute: ({ f, L, d, v, g }) => si((((f * L) / d) * v ** 2) / (2 * g), 'length'),
})
export const flowDarcyDrop = defineFormula({
  id: 'flow.darcy-drop',
  title: 'Pressure lost to friction in a line (Darcy)',
  equation: 'dp = f * L / d * rho * v^2 / 2',
  symbols: { f: friction, L: length, d: bore, rho: density, v: velocity },
  result: { symbol: 'dp', meaning: 'pressure drop', dimension: 'pressure' },
  source: fluidMechanics,
  examples: [
    {
      given: { f: '0.0198', L: '200 ft', d: '0.5 ft', rho: '62.4 lb/ft³', v: '6 ft/s' },
      gives: '1.944 psi',
      tolerance: 0.02,
      because: 'the book prints 280 lbf/ft², two figures, from a factor read off a chart',
      source: fluidMechanics,
    },
  ],
  remark: 'Straight line only: fittings and bends come on top, and sudden adapters often take more than the hose.',
  compute: ({ f, L, d, rho, v }) => si((((f * L) / d) * rho * v ** 2) / 2, 'pressure'),
})
export const flowLaminarDrop = defineFormula({
  id: 'flow.laminar-drop',
  title: 'Pressure lost in laminar flow, from the flow',
  equation: 'dp = 128 * mu * L * Q / (pi * d^4)',
  symbols: { mu: dynamic, L: length, Q: flow, d: bore },
  result: { symbol: 'dp', meaning: 'pressure drop', dimension: 'pressure' },
  source: laminar,
  examples: [
    {
      given: { mu: '0.15531 Pa·s', L: '1 m', Q: '72 L/h', d: '20 mm' },
      gives: '795.18 Pa',
      tolerance: 6e-3,
      because: 'the answer rounds the velocity to 0.064 m/s',
      source: { id: 'homework-sae-30', cites: 'Homework answer, SAE 30 oil in a 20 mm tube', mark: 'published' },
    },
    {
      given: { mu: '27.84 mPa·s', L: '2.5 m', Q: '8 L/min', d: '9.5 mm' },
      gives: '46.411 kPa',
      tolerance: 2e-3,
      because: 'four figures',
      source: arithmetic,
    },
  ],
  remark: 'For Reynolds numbers up to about 2300, long lines, one temperature all along.',
  compute: ({ mu, L, Q, d }) => si((128 * mu * L * Q) / (Math.PI * d ** 4), 'pressure'),
})
export const flowLaminarDropFromVelocity = defineFormula({
  id: 'flow.laminar-drop-from-velocity',
  title: 'Pressure lost in laminar flow, from the velocity',
  equation: 'dp = 32 * mu * L * v / d^2',
  symbols: { mu: dynamic, L: length, v: velocity, d: bore },
  result: { symbol: 'dp', meaning: 'pressure drop', dimension: 'pressure' },
  source: laminar,
  examples: [
    { given: { mu: '0.29 Pa·s', L: '25 m', v: '2 m/s', d: '40 mm' }, gives: '290 kPa', tolerance: 1e-9, because: 'exact', source: laminar },
  ],
  remark: 'For Reynolds numbers up to about 2300.',
  compute: ({ mu, L, v, d }) => si((32 * mu * L * v) / d ** 2, 'pressure'),
})
