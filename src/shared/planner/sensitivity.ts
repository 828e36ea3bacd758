import type { FormulaCard } from '../formulas/card.ts'
import { FORMULAS } from '../formulas/index.ts'
import type { Sensitivity } from './forces-types.ts'
import { type KnownValue, type Origin, type PlanNumber, SEARCH } from './plan.ts'

const CARDS = new Map(FORMULAS.map((card) => [card.id, card]))
/** How much an input is varied. */
const STEP = 0.1
const MOST = 5
/** A margin that moves by less is not moved. */
const NOTHING = 1e-6

/** Values that the program sets once and for all, of which a tenth more means nothing. */
const FIXED = new Set([
  'pinned',
  'no ram',
  'solid',
  'two ends',
  'of the data sheet',
  'smooth hose',
  'wheel goes out',
  'wheel comes back',
  'coverage',
  'no toe',
])
/** Symbols that say which of two ways something is, or count. */
const WAYS = new Set(['k', 'h', 'm', 'q', 'b'])

/** What tells one input from another; undefined for a number that was itself computed. A thread's text holds a diameter and a pitch. */
function leafName(origin: Origin, symbol: string): string | undefined {
  switch (origin.kind) {
    case 'number':
      return undefined
    case 'entered': {
      const two = origin.path.includes('bolts') || origin.path.includes('ends')
      return `entered ${origin.path.join('/')}${two ? ` ${symbol}` : ''}`
    }
    case 'table':
      return `table ${origin.table}/${origin.row}/${origin.column}`
    case 'chosen':
      return `chosen ${origin.why}`
    case 'readings':
      return `readings ${origin.mark}/${origin.statistic}`
  }
}

const isFixed = ({ origin, si, dimension }: KnownValue, symbol: string): boolean =>
  si === 0 ||
  (origin.kind === 'chosen' && FIXED.has(origin.why)) ||
  (origin.kind === 'entered' && dimension === 'ratio' && WAYS.has(symbol) && Number.isInteger(si))

/** One number of the plan, ready to be computed again and again. */
interface Node {
  readonly number: PlanNumber
  readonly card: FormulaCard | undefined
  /** the inputs as they are; those that rest on the varied leaf are changed for a moment and put back */
  readonly given: Record<string, number>
  readonly inputs: readonly Wire[]
  /** places of the leaves it rests on */
  readonly leaves: ReadonlySet<number>
}
interface Wire {
  readonly symbol: string
  readonly si: number
  /** place of the leaf it is; -1: none */
  readonly leaf: number
  /** place of the node it comes from; -1: none */
  readonly from: number
  /** what it is of that node's value: an input may be a number with its sign turned */
  readonly part: number
}

/**
 * For each margin the five inputs that move it most: every input is made a tenth greater and a tenth smaller, and all that rests on
 * it is computed anew by the same cards. What was searched for along the travel stays where it was found.
 *
 * @param numbers all numbers of the plan, each after those it rests on
 * @param margins ids of the numbers asked about
 */
export function sensitivities(numbers: readonly PlanNumber[], margins: readonly string[]): readonly Sensitivity[] {
  const { nodes, leaves } = wired(neededFor(numbers, margins))
  const wanted = new Set(margins)
  const moved = new Map<string, { value: KnownValue; name: string; greater: number; smaller: number; size: number }[]>()
  const values = new Float64Array(nodes.length)
  leaves.forEach(({ name, value }, leaf) => {
    const resting = nodes.flatMap((node, i) => (node.leaves.has(leaf) ? [i] : []))
    const up = vary(nodes, resting, leaf, 1 + STEP, values, wanted)
    const down = vary(nodes, resting, leaf, 1 - STEP, values, wanted)
    for (const [id, greater] of up) {
      const smaller = down.get(id) ?? 0
      const size = Math.max(Math.abs(greater), Math.abs(smaller))
      if (size <= NOTHING) continue
      const list = moved.get(id)
      if (list) list.push({ value, name, greater, smaller, size })
      else moved.set(id, [{ value, name, greater, smaller, size }])
    }
  })
  return margins.flatMap((margin): Sensitivity[] => {
    const inputs = (moved.get(margin) ?? [])
      .sort((a, b) => b.size - a.size)
      .slice(0, MOST)
      .map(({ name, value: { dimension, origin, si }, greater, smaller }) => ({ name, dimension, origin, si, greater, smaller }))
    return inputs.length > 0 ? [{ margin, inputs }] : []
  })
}

/** The numbers that the margins rest on, in the order of the plan. */
function neededFor(numbers: readonly PlanNumber[], margins: readonly string[]): readonly PlanNumber[] {
  const byId = new Map(numbers.map((n) => [n.id, n]))
  const needed = new Set<string>()
  const open = [...margins]
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    const n = byId.get(id)
    if (!n || needed.has(id)) continue
    needed.add(id)
    for (const { origin } of Object.values(n.inputs)) if (origin.kind === 'number') open.push(origin.id)
  }
  return numbers.filter((n) => needed.has(n.id))
}

function wired(numbers: readonly PlanNumber[]): { nodes: readonly Node[]; leaves: readonly { name: string; value: KnownValue }[] } {
  const at = new Map<string, number>()
  const leafAt = new Map<string, number>()
  const leaves: { name: string; value: KnownValue }[] = []
  const nodes: Node[] = []
  for (const number of numbers) {
    const over = new Set<number>()
    const inputs = Object.entries(number.inputs).map(([symbol, value]): Wire => {
      const { origin, si } = value
      if (origin.kind === 'number') {
        const from = at.get(origin.id) ?? -1
        for (const leaf of nodes[from]?.leaves ?? []) over.add(leaf)
        const whole = nodes[from]?.number.si ?? 0
        return whole === 0 ? { symbol, si, leaf: -1, from: -1, part: 1 } : { symbol, si, leaf: -1, from, part: si / whole }
      }
      const name = isFixed(value, symbol) ? undefined : leafName(origin, symbol)
      if (name === undefined) return { symbol, si, leaf: -1, from: -1, part: 1 }
      const leaf = leafAt.get(name) ?? leaves.push({ name, value }) - 1
      leafAt.set(name, leaf)
      over.add(leaf)
      return { symbol, si, leaf, from: -1, part: 1 }
    })
    const given = Object.fromEntries(inputs.map((wire) => [wire.symbol, wire.si]))
    const leavesOf = number.card === SEARCH ? new Set<number>() : over
    at.set(number.id, nodes.push({ number, card: CARDS.get(number.card), given, inputs, leaves: leavesOf }) - 1)
  }
  return { nodes, leaves }
}

/** Change of each margin, as a part of it, with one leaf varied; a margin without a value then is left out. */
function vary(
  nodes: readonly Node[],
  resting: readonly number[],
  leaf: number,
  factor: number,
  values: Float64Array,
  wanted: ReadonlySet<string>,
): ReadonlyMap<string, number> {
  const changes = new Map<string, number>()
  for (const i of resting) {
    const { number, card, given, inputs } = nodes[i] as Node
    for (const wire of inputs) {
      if (wire.leaf === leaf) given[wire.symbol] = wire.si * factor
      else if (wire.from >= 0 && nodes[wire.from]?.leaves.has(leaf)) given[wire.symbol] = (values[wire.from] ?? 0) * wire.part
    }
    const value = card ? (card.compute(given as never) as number) : Object.values(given).reduce((a, b) => a + b, 0)
    for (const wire of inputs) given[wire.symbol] = wire.si
    values[i] = value
    if (wanted.has(number.id) && number.si !== 0 && Number.isFinite(value)) changes.set(number.id, value / number.si - 1)
  }
  return changes
}
