import { findFormula } from '../formulas/index.ts'
import type { Build } from '../model/build.ts'
import type { KnownValue, Plan, PlanNumber } from '../planner/plan.ts'
import type { Source, SourceMark } from '../standards/source.ts'
import type { WorkingText } from './document.ts'
import { setEquation, setSymbol } from './equation.ts'
import { aboutText } from './text/index.ts'
import { labelOf } from './text/labels.ts'
import { showIn, showTaper, showWithUncertainty, type UnitSystem } from './units.ts'

const MARK_WORDS: Readonly<Record<SourceMark, string>> = {
  published: 'seen in the publication or a copy of it',
  derived: 'derived by arithmetic from published figures',
  practice: 'common shop practice, no published source',
  memory: 'from memory, not checked against a document',
}

/** A source as a reader would look it up, with how well it is known in words. */
export function sourceText(source: Source): string {
  const read = source.read === undefined ? '' : ` Read: ${source.read}.`
  return `${source.cites} (${MARK_WORDS[source.mark]}).${read}`
}

/** The working of every number of the plan, as a good hand calculation is written down. */
export function workingTexts(build: Build, plan: Plan, units: UnitSystem): WorkingText[] {
  return plan.numbers.map((n) => workingText(build, n, units))
}

function workingText(build: Build, n: PlanNumber, units: UnitSystem): WorkingText {
  const card = findFormula(n.card)
  if (!card) throw new Error(`number ${n.id} names a formula that does not exist: ${n.card}`)
  const show = showIn(units)
  const inputs = Object.entries(n.inputs)
  const shown = (symbol: string, value: KnownValue) =>
    value.dimension === 'ratio' && /taper/i.test(card.symbols[symbol]?.meaning ?? '')
      ? showTaper(value.si)
      : show(value.si, value.dimension)
  const sure = n.uncertainty === undefined ? null : showWithUncertainty(n.si, n.uncertainty, n.dimension, units)
  const result = sure ? `${sure.value} ± ${sure.uncertainty}` : show(n.si, n.dimension)
  return {
    id: n.id,
    label: labelOf(n.id),
    title: card.title,
    equation: setEquation(card.equation),
    withValues: setEquation(card.equation, Object.fromEntries(inputs.map(([symbol, v]) => [symbol, show(v.si, v.dimension)]))),
    result: `${setSymbol(card.result.symbol)} = ${result}`,
    source: sourceText(card.source),
    remark: card.remark ?? null,
    inputs: inputs.map(([symbol, value]) => ({
      symbol: setSymbol(symbol),
      meaning: card.symbols[symbol]?.meaning ?? symbol,
      value: shown(symbol, value),
      from: originText(build, value),
      opens: value.origin.kind === 'number' ? value.origin.id : null,
    })),
  }
}

function originText(build: Build, { origin }: KnownValue): string {
  switch (origin.kind) {
    case 'entered':
      return `typed: ${origin.typed} (${aboutText(build, origin.path)}${origin.on === undefined ? '' : `, ${origin.on}`})`
    case 'table':
      return `table: ${origin.table}, row ${origin.row}, column ${origin.column}`
    case 'chosen':
      return `chosen: ${origin.why}`
    case 'number':
      return `computed: ${labelOf(origin.id)}`
  }
}
