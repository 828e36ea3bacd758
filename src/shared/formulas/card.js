import { fail, issue, ok } from '../result/result.ts'
export const defineFormula = (card) => card
/**
 * Evaluates a card within its range.
 *
 * @param inputs every symbol in base SI
 * @returns the result in base SI, or issues `formula.out_of_range` (facts: symbol, value, min, max), `formula.requires`
 *   (facts: says) or `formula.no_value` where the arithmetic has no finite answer
 */
export function evaluate(card, inputs) {
  const issues = []
  for (const [symbol, spec] of Object.entries(card.symbols)) {
    const value = inputs[symbol]
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
function withinRange(value, spec) {
  return (
    Number.isFinite(value) &&
    (spec.min === undefined || value >= spec.min) &&
    (spec.max === undefined || value <= spec.max) &&
    (spec.above === undefined || value > spec.above) &&
    (spec.below === undefined || value < spec.below)
  )
}
