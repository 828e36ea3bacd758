import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { b1_20_1, b1_20_1Rows } from '../sources.ts'

const INCH = 0.0254
export const threadNptE0 = defineFormula({
  id: 'thread.npt-e0',
  title: 'Pitch diameter of an NPT thread at its small end',
  equation: 'E_0 = D - (0.05 * D / 0.0254 + 1.1) / n',
  symbols: {
    D: { meaning: 'outside diameter of the pipe', dimension: 'length', above: 0 },
    n: { meaning: 'threads per unit of length', dimension: 'curvature', above: 0 },
  },
  result: { symbol: 'E_0', meaning: 'pitch diameter at the small end of the external thread', dimension: 'length' },
  requires: [
    {
      says: 'the thread is not deeper than the pipe is thick',
      holds: ({ D, n }) => ((0.05 * D) / INCH + 1.1) / n < D,
    },
  ],
  source: b1_20_1,
  examples: [
    { given: { D: '0.675 in', n: '18 tpi' }, gives: '0.61201 in', tolerance: 3.3e-5, because: 'five decimals', source: b1_20_1Rows },
    { given: { D: '0.840 in', n: '14 tpi' }, gives: '0.75843 in', tolerance: 2.7e-5, because: 'five decimals', source: b1_20_1Rows },
    { given: { D: '1.050 in', n: '14 tpi' }, gives: '0.96768 in', tolerance: 2.1e-5, because: 'five decimals', source: b1_20_1Rows },
  ],
  remark: "The standard's 0.05 D takes D in inches: 0.0254 m is that inch.",
  compute: ({ D, n }) => si(D - ((0.05 * D) / INCH + 1.1) / n, 'length'),
})
export const threadNptE1 = defineFormula({
  id: 'thread.npt-e1',
  title: 'Pitch diameter of an NPT thread at the hand-tight plane',
  equation: 'E_1 = E_0 + L_1 / 16',
  symbols: {
    E_0: { meaning: 'pitch diameter at the small end', dimension: 'length', above: 0 },
    L_1: { meaning: 'hand-tight engagement', dimension: 'length', min: 0 },
  },
  result: { symbol: 'E_1', meaning: 'pitch diameter at the hand-tight plane', dimension: 'length' },
  source: b1_20_1,
  examples: [
    {
      given: { E_0: '0.61201 in', L_1: '0.240 in' },
      gives: '0.62701 in',
      tolerance: 3.2e-5,
      because: 'five decimals',
      source: b1_20_1Rows,
    },
    {
      given: { E_0: '0.75843 in', L_1: '0.320 in' },
      gives: '0.77843 in',
      tolerance: 2.6e-5,
      because: 'five decimals',
      source: b1_20_1Rows,
    },
  ],
  compute: ({ E_0, L_1 }) => si(E_0 + L_1 / 16, 'length'),
})
