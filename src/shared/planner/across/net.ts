import { DirectedGraph } from 'graphology'
import type { Connection, End } from '../../model/end/types.ts'
import type { Length } from '../../quantities/dimension.ts'
import type { Source } from '../../standards/source.ts'
import { fitEnds } from '../fit/fit.ts'
import { type Cost, LEAK, weight } from './cost.ts'
import { drawersOf, drawersSought, endKey } from './end-class.ts'

/** A part of the shelf or an adapter to buy, ready for the search. */
export interface Stock {
  readonly id: string
  readonly name: string
  readonly ends: readonly { readonly name: string; readonly connection: Connection }[]
  readonly toBuy: Source | null
  readonly price: string | null
  readonly length: Length | null
  readonly quantity: number
  readonly cost: Cost
}

/** A way through pieces from one class of end to another; the pieces that offer it, the best first. Null: two ends that meet. */
export interface Way {
  readonly weight: number
  readonly pieces: readonly number[] | null
}

/**
 * The graph of a stock. Its nodes are classes of ends, not parts, each of them twice: `in:7` is an end about to be entered,
 * `out:7` one that stands open. Edges `out` to `in` are ends that fit, edges `in` to `out` the pieces between them. So a
 * shelf of 100,000 parts becomes a graph of as many nodes as it has different ends.
 */
export interface Net {
  readonly graph: DirectedGraph<object, Way>
  readonly stock: readonly Stock[]
  /** weight of each piece of the stock, by its place */
  readonly weights: readonly number[]
  readonly classOf: ReadonlyMap<string, number>
  /** the classes that an end fits, by their number */
  readonly mates: (end: End) => readonly number[]
  /** classes with the same number here may be joined; others cannot be, however long the chain */
  readonly island: (node: number) => number
}

export const inNode = (k: number): string => `in:${k}`
export const outNode = (k: number): string => `out:${k}`

/** Whether two ends may stand together in a chain. */
export const goesOn = (a: End, b: End): boolean => {
  const { kind } = fitEnds(a, b)
  return kind === 'fits' || kind === 'fits if'
}

/** Builds the graph of a stock. Every pair of ends that share a drawer is judged once, here. */
export function makeNet(stock: readonly Stock[]): Net {
  const weights = stock.map((s) => weight(s.cost))
  const order = stock.map((_, i) => i).sort((i, j) => (weights[i] as number) - (weights[j] as number) || i - j)
  const { classOf, ends, through } = collect(stock, order)

  const drawers = new Map<string, number[]>()
  for (const [k, end] of ends.entries()) for (const d of drawersOf(end)) push(drawers, d, k)
  const mates = (end: End): readonly number[] => {
    const near = new Set(drawersSought(end).flatMap((d) => drawers.get(d) ?? []))
    return [...near].filter((k) => mayMeet(end, ends[k] as End) && goesOn(end, ends[k] as End))
  }

  const graph = new DirectedGraph<object, Way>({ multi: false })
  const parent = ends.map((_, k) => k)
  const island = (k: number): number => {
    let top = k
    while (parent[top] !== top) top = parent[top] as number
    parent[k] = top
    return top
  }
  for (const k of ends.keys()) {
    graph.addNode(inNode(k))
    graph.addNode(outNode(k))
  }
  for (const [from, ways] of through) {
    for (const [to, pieces] of ways) {
      graph.addEdgeWithKey(`${from}>${to}`, inNode(from), outNode(to), { weight: weights[pieces[0] as number] as number, pieces })
      parent[island(from)] = island(to)
    }
  }
  for (const [k, end] of ends.entries()) {
    for (const other of mates(end)) {
      graph.addEdgeWithKey(`${k}+${other}`, outNode(k), inNode(other), { weight: LEAK, pieces: null })
      parent[island(k)] = island(other)
    }
  }
  return { graph, stock, weights, classOf, mates, island }
}

/** Two of a sex never go together: half the pairs need no verdict. */
function mayMeet(a: End, b: End): boolean {
  return !('sex' in a && 'sex' in b && a.kind === b.kind) || a.sex !== b.sex
}

/** The classes of all ends, and for every two of them the pieces that lead from one to the other, in the order given. */
function collect(stock: readonly Stock[], order: readonly number[]) {
  const classOf = new Map<string, number>()
  const ends: End[] = []
  const number = (end: End): number => {
    const key = endKey(end)
    const known = classOf.get(key)
    if (known !== undefined) return known
    classOf.set(key, ends.length)
    return ends.push(end) - 1
  }
  // on a shelf the same few hundred ends occur thousands of times: what was typed the same way is the same end
  const byTyped = new Map<string, number>()
  const numberOf = ({ typed, end }: Connection): number => {
    const known = byTyped.get(typed)
    if (known !== undefined) return known
    const k = number(end)
    byTyped.set(typed, k)
    return k
  }
  const through = new Map<number, Map<number, number[]>>()
  for (const i of order) {
    const ks = (stock[i] as Stock).ends.map((e) => numberOf(e.connection))
    const seen = new Set<string>()
    for (const [x, from] of ks.entries()) {
      for (const [y, to] of ks.entries()) {
        if (x === y || seen.has(`${from}>${to}`)) continue
        seen.add(`${from}>${to}`)
        const ways = through.get(from) ?? new Map<number, number[]>()
        through.set(from, ways)
        push(ways, to, i)
      }
    }
  }
  return { classOf, ends, through }
}

function push<K>(map: Map<K, number[]>, key: K, value: number): void {
  const list = map.get(key)
  if (list) list.push(value)
  else map.set(key, [value])
}
