import type { Dimension, Quantity } from '../quantities/dimension.ts'
import { fail, type Issue, issue, ok, type Result } from '../result/result.ts'
import type { Source } from '../standards/source.ts'

/** One symbol of a formula: what it means, what it measures, and the values for which the formula holds (base SI, inclusive unless said). */
export interface SymbolCard {
  readonly meaning: string
  readonly dimension: Dimension
  readonly min?: number
  readonly max?: number
  /** the value must be greater than this, not equal */
  readonly above?: number
  /** the value must be less than this, not equal */
  readonly below?: number
}

export type SymbolCards = Readonly<Record<string, SymbolCard>>

export type Inputs<S extends SymbolCards> = { readonly [K in keyof S]: Quantity<S[K]['dimension']> }

/** A worked example from outside: values as a person types them, and the tolerance the source's own rounding needs. */
export interface WorkedExample {
  readonly given: Readonly<Record<string, string>>
  readonly gives: string
  /** relative tolerance, with the reason in `because` */
  readonly tolerance: number
  readonly because: string
  readonly source: Source
}

/**
 * A formula, defined once: the function, and the card that the screen, the printed appendix, the reference page and the
 * worked-example test all read. `equation` is written in plain arithmetic (`A = pi * D^2 / 4`) that a test evaluates
 * with an independent library and compares with `compute`; where the method is a procedure (a root search, a march in
 * time) `procedure` says so and `equation` states the condition that is solved.
 */
export interface FormulaCard<S extends SymbolCards = SymbolCards, R extends Dimension = Dimension> {
  readonly id: string
  readonly title: string
  readonly equation: string
  readonly procedure?: true
  readonly symbols: S
  readonly result: { readonly symbol: string; readonly meaning: string; readonly dimension: R }
  /** conditions between symbols ("d < D"), beside each symbol's own range */
  readonly requires?: readonly { readonly says: string; holds(inputs: Inputs<S>): boolean }[]
  readonly source: Source
  readonly examples: readonly WorkedExample[]
  /** further remark for the reader: what the formula leaves out */
  readonly remark?: string
  /** written as a method, so that cards of different symbols go into one list */
  compute(inputs: Inputs<S>): Quantity<R>
}

export const defineFormula = <const S extends SymbolCards, const R extends Dimension>(card: FormulaCard<S, R>): FormulaCard<S, R> => card

/**
 * Evaluates a card within its range.
 *
 * @param inputs every symbol in base SI
 * @returns the result in base SI, or issues `formula.out_of_range` (facts: symbol, value, min, max), `formula.requires`
 *   (facts: says) or `formula.no_value` where the arithmetic has no finite answer
 */
export function evaluate<S extends SymbolCards, R extends Dimension>(card: FormulaCard<S, R>, inputs: Inputs<S>): Result<Quantity<R>> {
  const issues: Issue[] = []
  for (const [symbol, spec] of Object.entries(card.symbols)) {
    const value: number = inputs[symbol as keyof S]
    if (!withinRange(value, spec)) {
      issues.push(
        issue('formula.out_of_range', [symbol], {
          formula: card.id,
          symbol,
          dimension: spec.dimension,
          value,
          min: spec.min ?? spec.above ?? null,
          max: spec.max ?? spec.below ?? null,
        }),
      )
    }
  }
  if (issues.length > 0) return fail(...issues)
  for (const { says, holds } of card.requires ?? []) {
    if (!holds(inputs)) issues.push(issue('formula.requires', [], { formula: card.id, says }))
  }
  if (issues.length > 0) return fail(...issues)
  const value = card.compute(inputs)
  return Number.isFinite(value) ? ok(value) : fail(issue('formula.no_value', [], { formula: card.id }))
}

function withinRange(value: number, spec: SymbolCard): boolean {
  return (
    Number.isFinite(value) &&
    (spec.min === undefined || value >= spec.min) &&
    (spec.max === undefined || value <= spec.max) &&
    (spec.above === undefined || value > spec.above) &&
    (spec.below === undefined || value < spec.below)
  )
}
