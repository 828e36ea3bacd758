import type { VerdictKind } from '../../../../src/shared/planner/fit/verdict.ts'

/** Two ends as typed, and what a fitter who knows the standards says of them, with the reason. */
export interface Pair {
  readonly a: string
  readonly b: string
  readonly verdict: VerdictKind
  readonly because: string
}

export type Row = readonly [a: string, b: string, verdict: VerdictKind, because: string]

export const pairsOf = (rows: readonly Row[]): readonly Pair[] => rows.map(([a, b, verdict, because]) => ({ a, b, verdict, because }))

export const FITS = 'fits'
export const FITS_IF = 'fits if'
export const NO = 'does not fit'
export const WRONG = 'goes together and is wrong'
export const NOT_KNOWN = 'not known'
