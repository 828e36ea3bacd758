import { DirectedGraph } from 'graphology'
import { dijkstra } from 'graphology-shortest-path'
import type { End } from '../../model/end/types.ts'
import { LEAK, MOST_ADAPTERS } from './cost.ts'
import { inNode, type Net, outNode, type Way } from './net.ts'

/** One step of a way found: a piece of the stock, and the classes of the ends it is entered and left by. */
export interface Step {
  readonly edge: string
  readonly piece: number
}

export interface Found {
  readonly steps: readonly Step[]
  readonly weight: number
}

/** Pieces not to be used on an edge. */
type Bans = ReadonlyMap<string, ReadonlySet<number>>

const FROM = 'from'
const TO = 'to'
/** A piece used more often than there are of it splits the search in two; nothing real needs more than a few of these splits. */
const MOST_SPLITS = 6

/**
 * The best chain from one end to another, and others that each do without one of its pieces; the best first. Empty: there is
 * none of up to MOST_ADAPTERS pieces. Other chains are sought only where one or two pieces do it: nobody chooses among long ones.
 */
export function search(net: Net, a: End, b: End, most: number): readonly Found[] {
  const starts = net.mates(a)
  const goals = net.mates(b)
  const islands = new Set(starts.map(net.island))
  if (!goals.some((k) => islands.has(net.island(k)))) return []
  const near = { ...net, graph: nearby(net.graph, starts, goals) }
  const short = between(near, starts, goals, () => bestAndOthers(near, most))
  // a third piece would be a fourth leak point
  if (short[0] && short[0].weight < 4 * LEAK) return short
  return between(net, starts, goals, () => bestAndOthers(net, 1))
}

/** Puts the two ends of the question into the graph while it is searched. */
function between(net: Net, starts: readonly number[], goals: readonly number[], ask: () => readonly Found[]): readonly Found[] {
  const { graph } = net
  graph.addNode(FROM)
  graph.addNode(TO)
  try {
    for (const k of starts) graph.addEdgeWithKey(`${FROM}+${k}`, FROM, inNode(k), { weight: LEAK, pieces: null })
    for (const k of goals) graph.addEdgeWithKey(`${k}+${TO}`, outNode(k), TO, { weight: LEAK, pieces: null })
    return ask()
  } finally {
    graph.dropNode(FROM)
    graph.dropNode(TO)
  }
}

/** The part of a graph in which every chain of one or two pieces lies: nearly every answer, in a hundredth of the edges. */
function nearby(graph: Net['graph'], starts: readonly number[], goals: readonly number[]): Net['graph'] {
  const near: Net['graph'] = new DirectedGraph({ multi: false })
  const take = (edge: string, way: Way, from: string, to: string) => {
    if (!near.hasEdge(edge)) near.mergeEdgeWithKey(edge, from, to, way)
  }
  for (const k of starts) near.mergeNode(inNode(k))
  for (const k of goals) near.mergeNode(outNode(k))
  const last = new Set<string>()
  for (const k of goals) {
    graph.forEachInboundEdge(outNode(k), (edge, way, from, to) => {
      last.add(from)
      take(edge, way, from, to)
    })
  }
  const first = new Set<string>()
  for (const k of starts) {
    graph.forEachOutboundEdge(inNode(k), (edge, way, from, to) => {
      first.add(to)
      take(edge, way, from, to)
    })
  }
  for (const node of first) {
    graph.forEachOutboundEdge(node, (edge, way, from, to) => {
      if (last.has(to)) take(edge, way, from, to)
    })
  }
  return near
}

function bestAndOthers(net: Net, most: number): readonly Found[] {
  const best = shortest(net, new Map(), MOST_SPLITS)
  if (!best) return []
  const found = [best]
  const seen = new Set([signature(best)])
  if (most > 1) {
    for (const { edge, piece } of best.steps) {
      const other = shortest(net, new Map([[edge, new Set([piece])]]), MOST_SPLITS)
      if (!other || seen.has(signature(other))) continue
      seen.add(signature(other))
      found.push(other)
    }
  }
  return found.sort((x, y) => x.weight - y.weight).slice(0, most)
}

const signature = (f: Found): string => f.steps.map((s) => `${s.edge}:${s.piece}`).join(' ')

/** The best chain with the bans kept and no piece used more often than there are of it. */
function shortest(net: Net, bans: Bans, splits: number): Found | undefined {
  const found = run(net, bans, 0) ?? undefined
  const short = found === undefined || found.steps.length <= MOST_ADAPTERS ? found : run(net, bans, LEAK * 64)
  if (!short || short.steps.length > MOST_ADAPTERS) return undefined
  const spent = overdrawn(net, short)
  if (!spent) return short
  if (splits === 0) return undefined
  // no chain that can be built uses this piece in all of these places: leave it out of one of them at a time
  return spent
    .map(({ edge, piece }) => shortest(net, new Map([...bans, [edge, new Set([...(bans.get(edge) ?? []), piece])]]), splits - 1))
    .filter((f) => f !== undefined)
    .sort((x, y) => x.weight - y.weight)[0]
}

/** The steps of a chain that take a piece of which there are not so many; undefined when there are enough of all. */
function overdrawn(net: Net, { steps }: Found): readonly Step[] | undefined {
  const uses = Map.groupBy(steps, (s) => s.piece)
  return [...uses].find(([piece, taken]) => taken.length > (net.stock[piece]?.quantity ?? 0))?.[1]
}

/** `perPiece` is added for every piece: it makes the search put few pieces before all else. */
function run({ graph, weights }: Net, bans: Bans, perPiece: number): Found | undefined {
  const pieceOn = (edge: string, way: Way): number | undefined => {
    const banned = bans.get(edge)
    return banned ? way.pieces?.find((p) => !banned.has(p)) : way.pieces?.[0]
  }
  const cost = (edge: string, way: Way): number => {
    if (way.pieces === null) return way.weight
    if (!bans.has(edge)) return way.weight + perPiece
    const piece = pieceOn(edge, way)
    return piece === undefined ? Number.POSITIVE_INFINITY : (weights[piece] as number) + perPiece
  }
  const nodes = dijkstra.bidirectional(graph, FROM, TO, cost) as string[] | null
  if (nodes === null) return undefined
  const steps: Step[] = []
  let total = 0
  for (const [i, node] of nodes.slice(0, -1).entries()) {
    const edge = graph.edge(node, nodes[i + 1]) as string
    const way = graph.getEdgeAttributes(edge)
    if (way.pieces === null) {
      total += way.weight
      continue
    }
    const piece = pieceOn(edge, way)
    if (piece === undefined) return undefined
    total += weights[piece] as number
    steps.push({ edge, piece })
  }
  return { steps, weight: total }
}
