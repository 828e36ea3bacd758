import type { Dimension } from '../../quantities/dimension.ts'
import type { Fact } from '../../result/result.ts'
import type { Source } from '../../standards/source.ts'
import type { Evidence } from '../plan.ts'
import type { Reason, Verdict, VerdictKind } from './verdict.ts'

/** One number that proves a reason, base SI. */
export const proof = (name: string, dimension: Dimension, si: number): Evidence => ({ name, dimension, si })

export const reason = (
  code: string,
  source: Source,
  facts: Readonly<Record<string, Fact>> = {},
  evidence: readonly Evidence[] = [],
): Reason => ({ code, facts, evidence, source })

const make =
  (kind: VerdictKind) =>
  (rule: string, reasons: readonly Reason[], more: { conditions?: readonly string[]; measure?: readonly string[] } = {}): Verdict => ({
    kind,
    rule,
    reasons,
    conditions: more.conditions ?? [],
    measure: more.measure ?? [],
  })

export const fits = make('fits')
export const doesNotFit = make('does not fit')
export const goesTogetherWrong = make('goes together and is wrong')

export const fitsIf = (rule: string, conditions: readonly string[], reasons: readonly Reason[]): Verdict =>
  make('fits if')(rule, reasons, { conditions })

export const notKnown = (rule: string, measure: readonly string[], reasons: readonly Reason[] = []): Verdict =>
  make('not known')(rule, reasons, { measure })
