import { DirectedGraph } from 'graphology'
import { dijkstra } from 'graphology-shortest-path'
import { parseEnd } from '../../src/shared/model/end/parse.ts'
import { allPortSizes } from '../../src/shared/model/end/ports.ts'
import { allThreads } from '../../src/shared/model/end/threads.ts'
import type { Connection, End } from '../../src/shared/model/end/types.ts'
import { makeAcrossIndex, wayAcross } from '../../src/shared/planner/across/across.ts'
import { costOf, LEAK, weight } from '../../src/shared/planner/across/cost.ts'
import { endKey } from '../../src/shared/planner/across/end-class.ts'
import type { ShelfAdapter } from '../../src/shared/planner/across/types.ts'
import { fitEnds } from '../../src/shared/planner/fit/fit.ts'
import { mm } from '../../src/shared/quantities/make.ts'
import { middleOf, ms, percentile, times, timesOf } from './measure.ts'

const PARTS = 100_000
/** A graph with an edge for every pair of ends that fit grows with the square of the shelf; that of 100,000 parts fits into no 4 GB. */
const BARE_PARTS = 10_000

/** The same numbers at every run: a bench that searches another shelf each time compares nothing. */
function dice(seed: number): (sides: number) => number {
  let state = seed
  return (sides) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    return Math.floor((state / 2 ** 32) * sides)
  }
}

/** Every port and thread of the tables, male and female: what a shelf of adapters can have for ends. */
function allEnds(): readonly Connection[] {
  const ends: End[] = []
  for (const sex of ['male', 'female'] as const) {
    for (const { family, size, thread } of allPortSizes()) ends.push({ kind: 'port', family, size, thread, sex })
    for (const thread of allThreads()) ends.push({ kind: 'thread', thread, hand: 'right', sex })
  }
  return ends.map((end) => ({ typed: endKey(end), end }))
}

export function makeShelf(parts: number): readonly ShelfAdapter[] {
  const roll = dice(7)
  const ends = allEnds()
  return Array.from({ length: parts }, (_, i): ShelfAdapter => {
    const one = roll(ends.length)
    const other = roll(ends.length)
    return {
      id: `part-${i}`,
      name: `Adapter ${i}`,
      ends: [one, other].map((k, at) => ({ name: `end-${at}`, connection: ends[k] as Connection })),
      ...(roll(4) === 0 ? {} : { price: `${roll(80)}.${String(roll(100)).padStart(2, '0')}` }),
      ...(roll(4) === 0 ? {} : { length: mm(10 + roll(90)) }),
    }
  })
}

const end = (typed: string): End => {
  const read = parseEnd(typed)
  if (!read.ok) throw new Error(typed)
  return read.value
}

const QUESTIONS = [
  ['-6 37° flare male', '3/8 NPT female'],
  ['M18x1.5 O-ring tube nut female', '-8 37° flare female'],
  ['G 3/8 ISO 1179 female', 'M16x1.5 ISO 6149 female'],
  ['5/8-18 inverted flare female', '-10 face seal male'],
  ['7/8-14 male', 'M22x1.5 male'],
  ['12S 24° cone male', '1 NPT male'],
  ['7/8-18 LH male', '7/8-18 LH male'],
].map(([a, b]) => [end(a as string), end(b as string)] as const)

/** The way across on a shelf of 100,000 parts, and against the same search of the graph library over the ends of every part. */
export async function bench(): Promise<readonly string[]> {
  const shelf = makeShelf(PARTS)
  const start = performance.now()
  const index = makeAcrossIndex(shelf)
  const built = performance.now() - start
  index.withStandard()
  const builtBoth = performance.now() - start - built
  const answers: number[] = []
  for (const [a, b] of QUESTIONS) answers.push(...(await timesOf(20, () => wayAcross(a, b, index))).slice(5))
  const ours = percentile(answers, 0.5)

  const fewer = makeShelf(BARE_PARTS)
  const bareStart = performance.now()
  const bare = bareGraph(fewer)
  const bareBuilt = performance.now() - bareStart
  const fewerIndex = makeAcrossIndex(fewer)
  const [a, b] = QUESTIONS[0] as readonly [End, End]
  const theirs = await middleOf(5, () => bareSearch(bare, fewer, a, b), 1)
  const same = await middleOf(50, () => wayAcross(a, b, fewerIndex, { buy: false, most: 1 }))
  const all = await middleOf(50, () => wayAcross(a, b, index, { buy: false, most: 1 }))
  return [
    `shelf of ${PARTS} parts: index ${ms(built)}, with the standard adapters ${ms(builtBoth)} more`,
    `graph: ${index.shelf.graph.order} nodes, ${index.shelf.graph.size} edges`,
    `answer, warm: middle ${ms(ours)}, worst of 95 % ${ms(percentile(answers, 0.95))}, worst ${ms(Math.max(...answers))} (wanted: under 50 ms)`,
    `the library with no index of ours, shelf of ${BARE_PARTS}: ${bare.order} nodes, ${bare.size} edges, built in ${ms(bareBuilt)}`,
    `its search, one chain: ${ms(theirs)}; ours on the same shelf: ${ms(same)}, ${times(theirs / same)} faster; ours on ${PARTS}: ${ms(all)}, ${times(theirs / all)} faster`,
  ]
}

interface Way {
  readonly weight: number
}

/** No classes and no drawers: only equal verdicts are remembered, or nobody would live to see the end of it. */
function bareGraph(shelf: readonly ShelfAdapter[]): DirectedGraph<object, Way> {
  const graph = new DirectedGraph<object, Way>({ multi: false })
  const byKey = new Map<string, { readonly end: End; readonly nodes: string[] }>()
  for (const [i, part] of shelf.entries()) {
    for (const [at, { connection }] of part.ends.entries()) {
      graph.addNode(`in:${i}:${at}`)
      graph.addNode(`out:${i}:${at}`)
      const group = byKey.get(connection.typed) ?? { end: connection.end, nodes: [] }
      byKey.set(connection.typed, group)
      group.nodes.push(`${i}:${at}`)
    }
    const cost = weight(costOf(part))
    graph.addEdge(`in:${i}:0`, `out:${i}:1`, { weight: cost })
    graph.addEdge(`in:${i}:1`, `out:${i}:0`, { weight: cost })
  }
  const groups = [...byKey.values()]
  for (const one of groups) {
    for (const other of groups) {
      const { kind } = fitEnds(one.end, other.end)
      if (kind !== 'fits' && kind !== 'fits if') continue
      for (const x of one.nodes) for (const y of other.nodes) graph.addEdge(`out:${x}`, `in:${y}`, { weight: LEAK })
    }
  }
  return graph
}

function bareSearch(graph: DirectedGraph<object, Way>, shelf: readonly ShelfAdapter[], a: End, b: End): readonly string[] | null {
  graph.addNode('from')
  graph.addNode('to')
  const on = (x: End, y: End) => ['fits', 'fits if'].includes(fitEnds(x, y).kind)
  for (const [i, part] of shelf.entries()) {
    for (const [at, { connection }] of part.ends.entries()) {
      if (on(a, connection.end)) graph.addEdge('from', `in:${i}:${at}`, { weight: LEAK })
      if (on(b, connection.end)) graph.addEdge(`out:${i}:${at}`, 'to', { weight: LEAK })
    }
  }
  const path = dijkstra.bidirectional(graph, 'from', 'to', 'weight')
  graph.dropNode('from')
  graph.dropNode('to')
  return path
}
