import type { Fact } from '../../result/result.ts'
import type { Source } from '../../standards/source.ts'
import type { Evidence } from '../plan.ts'

/**
 * - `fits`: goes together and works
 * - `fits if`: works on the conditions named
 * - `does not fit`: cannot be put together as it should, and shows it
 * - `goes together and is wrong`: assembles, and fails later: the dangerous one
 * - `not known`: something must be measured first
 */
export type VerdictKind = 'fits' | 'fits if' | 'does not fit' | 'goes together and is wrong' | 'not known'

/** One reason, by code and facts, with its numbers and the source of the rule. */
export interface Reason {
  readonly code: string
  readonly facts: Readonly<Record<string, Fact>>
  readonly evidence: readonly Evidence[]
  readonly source: Source
}

export interface Verdict {
  readonly kind: VerdictKind
  /** the rule that decided */
  readonly rule: string
  readonly reasons: readonly Reason[]
  /** codes of conditions to be met (`fits if`), each an aid that a joint can name */
  readonly conditions: readonly string[]
  /** codes of what to measure (`not known`) */
  readonly measure: readonly string[]
}
