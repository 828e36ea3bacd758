import { findFormula } from '../formulas/index.ts'
import type { Build } from '../model/build.ts'
import { type KnownValue, type Plan, type PlanNumber, SUM } from '../planner/plan.ts'
import { exhaustive } from '../result/result.ts'
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

/** What a working takes from a formula's card. */
interface Method {
  readonly title: string
  readonly equation: string
  readonly result: string
  readonly meanings: Readonly<Record<string, string>>
  readonly source: string
  readonly remark: string | null
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
  const method = n.card === SUM ? sumOf(n) : methodOf(n)
  const inputs = Object.entries(n.inputs)
  const shown = (symbol: string, value: KnownValue) =>
    value.dimension === 'ratio' && /taper/i.test(method.meanings[symbol] ?? '')
      ? showTaper(value.si)
      : showIn(units)(value.si, value.dimension)
  const values = Object.fromEntries(inputs.map(([symbol, v]) => [symbol, showIn(units)(v.si, v.dimension)]))
  return {
    id: n.id,
    label: labelOf(n.id),
    title: method.title,
    equation: setEquation(method.equation),
    withValues: setEquation(method.equation, values),
    result: `${setSymbol(method.result)} = ${resultText(n, units)}`,
    source: method.source,
    remark: method.remark,
    inputs: inputs.map(([symbol, value]) => ({
      symbol: setSymbol(symbol),
      meaning: method.meanings[symbol] ?? symbol,
      value: shown(symbol, value),
      from: originText(build, value),
      opens: value.origin.kind === 'number' ? value.origin.id : null,
    })),
  }
}

function resultText(n: PlanNumber, units: UnitSystem): string {
  if (n.uncertainty === undefined) return showIn(units)(n.si, n.dimension)
  const sure = showWithUncertainty(n.si, n.uncertainty, n.dimension, units)
  return `${sure.value} ± ${sure.uncertainty}`
}

function methodOf(n: PlanNumber): Method {
  const card = findFormula(n.card)
  if (!card) throw new Error(`number ${n.id} names a formula that does not exist: ${n.card}`)
  return {
    title: card.title,
    equation: card.equation,
    result: card.result.symbol,
    meanings: Object.fromEntries(Object.entries(card.symbols).map(([symbol, s]) => [symbol, s.meaning])),
    source: sourceText(card.source),
    remark: card.remark ?? null,
  }
}

function sumOf(n: PlanNumber): Method {
  const symbols = Object.keys(n.inputs)
  const meaning = (v: KnownValue) => (v.origin.kind === 'number' ? labelOf(v.origin.id) : 'term of the sum')
  return {
    title: 'Sum of its terms',
    equation: `S = ${symbols.join(' + ')}`,
    result: 'S',
    meanings: Object.fromEntries(Object.entries(n.inputs).map(([symbol, v]) => [symbol, meaning(v)])),
    source: 'Plain addition.',
    remark: null,
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
    case 'readings':
      return `${origin.statistic} of the readings of the ${origin.mark} mark`
    default:
      return exhaustive(origin, 'origin')
  }
}
