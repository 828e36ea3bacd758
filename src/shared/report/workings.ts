import { findFormula } from '../formulas/index.ts'
import type { Build } from '../model/build.ts'
import { type KnownValue, type Plan, type PlanNumber, SEARCH, SUM } from '../planner/plan.ts'
import { exhaustive } from '../result/result.ts'
import type { Source, SourceMark } from '../standards/source.ts'
import type { WorkingText } from './document.ts'
import { setEquation, setSymbol } from './equation.ts'
import { movedTexts } from './moved-by.ts'
import { aboutText } from './text/index.ts'
import { chosenWords, labelIn, labelOf } from './text/labels.ts'
import { showIn, showLike, showTaper, showWithUncertainty, type UnitSystem } from './units.ts'

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
  readonly inputs: readonly { readonly symbol: string; readonly meaning: string; readonly value: KnownValue; readonly shown: string }[]
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
  const moved = new Map(plan.forces.sensitivities.map((s) => [s.margin, movedTexts(build, s, showIn(units))]))
  return plan.numbers.map((n) => {
    const movedBy = moved.get(n.id)
    return { ...workingText(build, n, units), ...(movedBy ? { movedBy } : {}) }
  })
}

function workingText(build: Build, n: PlanNumber, units: UnitSystem): WorkingText {
  const method = n.card === SUM ? sumOf(build, n, units) : n.card === SEARCH ? searchOf(build, n, units) : methodOf(n, units)
  const values = Object.fromEntries(method.inputs.map(({ symbol, shown }) => [symbol, shown]))
  return {
    id: n.id,
    label: labelIn(build, n.id),
    title: method.title,
    equation: setEquation(method.equation),
    withValues: setEquation(method.equation, values),
    result: `${setSymbol(method.result)} = ${resultText(n, units)}`,
    source: method.source,
    remark: method.remark,
    inputs: method.inputs.map(({ symbol, meaning, value, shown }) => ({
      symbol: setSymbol(symbol),
      meaning,
      value: value.dimension === 'ratio' && /taper/i.test(meaning) ? showTaper(value.si) : shown,
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

function methodOf(n: PlanNumber, units: UnitSystem): Method {
  const card = findFormula(n.card)
  if (!card) throw new Error(`number ${n.id} names a formula that does not exist: ${n.card}`)
  return {
    title: card.title,
    equation: card.equation,
    result: card.result.symbol,
    inputs: Object.entries(n.inputs).map(([symbol, value]) => ({
      symbol,
      meaning: card.symbols[symbol]?.meaning ?? symbol,
      value,
      shown: showIn(units)(value.si, value.dimension),
    })),
    source: sourceText(card.source),
    remark: card.remark ?? null,
  }
}

/** A sum has no card: its terms are numbered, and printed in the unit of the sum. */
function sumOf(build: Build, n: PlanNumber, units: UnitSystem): Method {
  const inputs = Object.values(n.inputs).map((value, i) => ({
    symbol: `s${i + 1}`,
    meaning: termMeaning(build, value),
    value,
    shown: showLike(value.si, n.si, n.dimension, units),
  }))
  return {
    title: 'Sum of its terms',
    equation: `S = ${inputs.map(({ symbol }) => symbol).join(' + ')}`,
    result: 'S',
    inputs,
    source: 'Plain addition.',
    remark: null,
  }
}

/** A search has no card either: the plan-view geometry is solved at one travel after another until the value is met. */
function searchOf(build: Build, n: PlanNumber, units: UnitSystem): Method {
  const inputs = Object.entries(n.inputs).map(([symbol, value]) => ({
    symbol,
    meaning: termMeaning(build, value),
    value,
    shown: showIn(units)(value.si, value.dimension),
  }))
  return {
    title: 'Searched for along the travel',
    // a dash is no arithmetic, so the words are set as they are
    equation: 'x — the travel at which the value below is met',
    result: 'x',
    inputs,
    source: 'Plan-view geometry of the steering, solved at one travel after another until the value is met (halving and interpolation).',
    remark: null,
  }
}

function termMeaning(build: Build, { origin }: KnownValue): string {
  if (origin.kind === 'number') return labelOf(origin.id)
  return origin.kind === 'entered' ? aboutText(build, origin.path) : 'term of the sum'
}

/** ", on 2026-10-17": the day of a measurement, where it is known. */
const onDay = (day: string | undefined): string => (day === undefined ? '' : `, on ${day}`)

function originText(build: Build, { origin }: KnownValue): string {
  switch (origin.kind) {
    case 'entered':
      return `typed: ${origin.typed} (${aboutText(build, origin.path)}${onDay(origin.on ?? (origin.path[0] === 'survey' ? build.survey?.takenOn : undefined))})`
    case 'table':
      return `table: ${origin.table}, row ${origin.row}, column ${origin.column}`
    case 'chosen':
      return `chosen: ${chosenWords(origin.why)}`
    case 'number':
      return `computed: ${labelOf(origin.id)}`
    case 'readings':
      return `${origin.statistic} of the readings of the ${origin.mark} mark${onDay(build.survey?.takenOn)}`
    default:
      return exhaustive(origin, 'origin')
  }
}
