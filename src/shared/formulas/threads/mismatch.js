import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { lookAlikes } from '../sources.ts'

const pitchA = { meaning: 'pitch of the one thread', dimension: 'length', above: 0 }
const pitchB = { meaning: 'pitch of the other thread', dimension: 'length', above: 0 }
export const threadPitchMismatch = defineFormula({
  id: 'thread.pitch-mismatch',
  title: 'How far two pitches drift apart over an engaged length',
  equation: 'delta = L / P_a * abs(P_a - P_b)',
  symbols: { L: { meaning: 'engaged length', dimension: 'length', min: 0 }, P_a: pitchA, P_b: pitchB },
  result: { symbol: 'delta', meaning: 'accumulated axial mismatch', dimension: 'length' },
  source: lookAlikes,
  examples: [
    {
      given: { L: '10 mm', P_a: '1.27 mm', P_b: '1.25 mm' },
      gives: '0.157 mm',
      tolerance: 5e-3,
      because: 'three figures',
      source: lookAlikes,
    },
    {
      given: { L: '10 mm', P_a: '1.411111 mm', P_b: '1.5 mm' },
      gives: '0.63 mm',
      tolerance: 2e-3,
      because: 'three figures',
      source: lookAlikes,
    },
  ],
  remark: 'Counted over the turns of thread a in the length L; nominal pitches, without tolerances.',
  compute: ({ L, P_a, P_b }) => si((L / P_a) * Math.abs(P_a - P_b), 'length'),
})
export const threadTurnsToBind = defineFormula({
  id: 'thread.turns-to-bind',
  title: 'Turns that a wrong male thread goes in before the flanks bind',
  equation: 'n = (d_f - d_m) * tan(pi / 6) / abs(P_a - P_b)',
  symbols: {
    d_f: { meaning: 'pitch diameter of the female thread', dimension: 'length', above: 0 },
    d_m: { meaning: 'pitch diameter of the male thread', dimension: 'length', above: 0 },
    P_a: pitchA,
    P_b: pitchB,
  },
  result: { symbol: 'n', meaning: 'engaged turns until it binds', dimension: 'ratio' },
  requires: [
    { says: 'the male thread is not larger than the female: d_m <= d_f', holds: ({ d_f, d_m }) => d_m <= d_f },
    { says: 'the pitches differ; with equal pitches it never binds', holds: ({ P_a, P_b }) => P_a !== P_b },
  ],
  source: lookAlikes,
  examples: [
    {
      given: { d_f: '11.8751 mm', d_m: '11.1881 mm', P_a: '1.27 mm', P_b: '1.25 mm' },
      gives: '19.8',
      tolerance: 3e-3,
      because: 'three figures',
      source: lookAlikes,
    },
    {
      given: { d_f: '9.3505 mm', d_m: '8.8376 mm', P_a: '1 mm', P_b: '1.058333 mm' },
      gives: '5.1',
      tolerance: 1e-2,
      because: 'two figures',
      source: lookAlikes,
    },
  ],
  remark:
    'Nominal sizes, flanks of 30°; tolerances add a little play. A large number is the dangerous one: the wrong part goes all the way in on shallow flanks.',
  compute: ({ d_f, d_m, P_a, P_b }) => si(((d_f - d_m) * Math.tan(Math.PI / 6)) / Math.abs(P_a - P_b), 'ratio'),
})
