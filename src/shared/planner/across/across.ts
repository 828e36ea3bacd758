import type { End } from '../../model/end/types.ts'
import { type Length, si } from '../../quantities/dimension.ts'
import { fitEnds } from '../fit/fit.ts'
import { asPrice, cents, costOf, MOST_ADAPTERS, MOST_ENDS } from './cost.ts'
import { carriesOil, endKey, unmeasured } from './end-class.ts'
import { insteadOf } from './instead.ts'
import { makeNet, type Net, type Stock } from './net.ts'
import { type Found, search } from './search.ts'
import { COMMONLY_MADE, standardAdapters } from './standard.ts'
import type { AcrossResult, Chain, Meeting, NoWay, Piece, ShelfAdapter } from './types.ts'

/** A shelf made ready for the question what joins two ends; make it once and ask it often. */
export interface AcrossIndex {
  readonly shelf: Net
  /** the shelf with the adapters of the tables; made when it is first wanted */
  readonly withStandard: () => Net
}

export interface AcrossOptions {
  /** which of the two ends may be changed for another because it is a hose's; both unless said */
  readonly hoseEnds?: readonly ('a' | 'b')[]
  /** may pieces be bought? They may unless said */
  readonly buy?: boolean
  /** chains wanted at most; 3 unless said */
  readonly most?: number
}

/** Makes a shelf ready. Parts of one end, and of more than MOST_ENDS, are no adapters and left out. */
export function makeAcrossIndex(shelf: readonly ShelfAdapter[]): AcrossIndex {
  const stock = shelf
    .filter((p) => p.ends.length >= 2 && p.ends.length <= MOST_ENDS)
    .map(fromShelf)
    .sort((x, y) => (x.id < y.id ? -1 : x.id > y.id ? 1 : 0))
  let both: Net | undefined
  return {
    shelf: makeNet(stock),
    withStandard: () => {
      both ??= makeNet([...stock, ...fromTables()])
      return both
    },
  }
}

/**
 * What joins end A to end B: from the shelf alone where that can be done, otherwise with adapters to buy. Fewest leak points come
 * first, then the fewest pieces to buy, then the price, then the length; what is not known comes after what is.
 *
 * @returns the chains with every meeting and its conditions; that none is needed; or why there is none
 */
export function wayAcross(a: End, b: End, index: AcrossIndex, options: AcrossOptions = {}): AcrossResult {
  const direct = fitEnds(a, b)
  if (direct.kind === 'fits' || direct.kind === 'fits if') return { outcome: 'not needed', direct, instead: [] }
  const measure = [...new Set([...unmeasured(a), ...unmeasured(b)])]
  const instead = insteadOf(a, b, options.hoseEnds ?? ['a', 'b'])
  if (measure.length > 0) return { outcome: 'none', direct, instead, why: { code: 'not measured', facts: { measure } } }

  const most = options.most ?? 3
  const buy = options.buy ?? true
  const fromShelf = chains(index.shelf, a, b, most)
  const fewest = fromShelf[0]?.leakPoints
  // two leak points are the fewest that any chain has
  const mixed = buy && (fewest === undefined || fewest > 2) ? chains(index.withStandard(), a, b, most) : []
  // nobody buys one adapter more than needed
  const buying = mixed.filter(
    (c) => c.toBuy > 0 && c.leakPoints === mixed[0]?.leakPoints && (fewest === undefined || c.leakPoints < fewest),
  )
  if (fromShelf.length > 0) return { outcome: 'found', direct, instead, chains: fromShelf, buying }
  if (buying.length > 0) return { outcome: 'found', direct, instead, chains: buying, buying: [] }
  return { outcome: 'none', direct, instead, why: whyNot(a, b, buy ? index.withStandard() : index.shelf, buy) }
}

/** The chains of a net, found from the end that sorts first, so that A to B and B to A are one answer read from either side. */
function chains(net: Net, a: End, b: End, most: number): readonly Chain[] {
  const turned = endKey(a) > endKey(b)
  const found = turned ? search(net, b, a, most) : search(net, a, b, most)
  return (
    found
      .map((f) => ({ chain: read(net, a, b, f, turned), weight: f.weight, names: f.steps.map((s) => net.stock[s.piece]?.id).join(' ') }))
      .sort((x, y) => better(x.chain, y.chain) || x.weight - y.weight || (x.names < y.names ? -1 : 1))
      // the same pieces turned about are no other chain
      .filter((x, i, all) => all.findIndex((y) => y.names === x.names) === i)
      .map(({ chain }) => chain)
  )
}

function read(net: Net, a: End, b: End, { steps }: Found, turned: boolean): Chain {
  const found = steps.map(({ edge, piece }) => {
    const [from, to] = edge.split('>').map(Number) as [number, number]
    return asPiece(net, net.stock[piece] as Stock, from, to)
  })
  const pieces = turned ? found.map((p) => ({ ...p, in: p.out, out: p.in })).reverse() : found
  const prices = pieces.map((p) => p.price)
  const lengths = pieces.map((p) => p.length)
  return {
    pieces,
    meetings: meetings(a, pieces, b),
    leakPoints: pieces.length + 1 + pieces.reduce((n, p) => n + p.open.length, 0),
    price: prices.every((p) => p !== null) ? asPrice(prices.reduce((sum, p) => sum + cents(p), 0)) : null,
    length: lengths.every((l) => l !== null) ? total(lengths) : null,
    toBuy: pieces.filter((p) => p.toBuy !== null).length,
  }
}

const total = (lengths: readonly Length[]): Length =>
  si(
    lengths.reduce<number>((sum, l) => sum + l, 0),
    'length',
  )

function meetings(a: End, pieces: readonly Piece[], b: End): readonly Meeting[] {
  const outs = [a, ...pieces.map((p) => p.out.connection.end)]
  const ins = [...pieces.map((p) => p.in.connection.end), b]
  return outs.map((from, i) => {
    const to = ins[i] as End
    return { from, to, verdict: fitEnds(from, to) }
  })
}

function asPiece(net: Net, s: Stock, from: number, to: number): Piece {
  const classes = s.ends.map((e) => net.classOf.get(endKey(e.connection.end)))
  const i = classes.indexOf(from)
  const j = classes.findIndex((k, at) => k === to && at !== i)
  const [into, out] = [s.ends[i], s.ends[j]]
  if (!into || !out) throw new Error(`${s.id} has no such two ends`)
  const open = s.ends.filter((_, at) => at !== i && at !== j).map((e) => e.name)
  return { id: s.id, name: s.name, toBuy: s.toBuy, in: into, out, open, price: s.price, length: s.length }
}

/** Fewest leak points, then pieces to buy, then price, then length; the unknown after the known. */
function better(x: Chain, y: Chain): number {
  const unknown = (c: Chain, of: 'price' | 'length') => c.pieces.filter((p) => p.toBuy === null && p[of] === null).length
  return (
    x.leakPoints - y.leakPoints ||
    x.toBuy - y.toBuy ||
    unknown(x, 'price') - unknown(y, 'price') ||
    known(x, 'price') - known(y, 'price') ||
    unknown(x, 'length') - unknown(y, 'length') ||
    known(x, 'length') - known(y, 'length')
  )
}

/** What is known of a chain's price (hundredths) or length (m): the sum over the pieces that have one. */
const known = (chain: Chain, of: 'price' | 'length'): number =>
  chain.pieces.reduce((sum, p) => sum + (of === 'price' ? (p.price === null ? 0 : cents(p.price)) : (p.length ?? 0)), 0)

function whyNot(a: End, b: End, net: Net, buy: boolean): NoWay {
  const facts = { a: a.kind, b: b.kind, most: MOST_ADAPTERS, buy }
  if (carriesOil(a) !== carriesOil(b)) return { code: 'kinds', facts: { ...facts, aOil: carriesOil(a), bOil: carriesOil(b) } }
  const hands = [a, b].map((e) => (e.kind === 'thread' ? e.hand : 'right'))
  const lonely = [a, b].map((e) => net.mates(e).length === 0)
  if (lonely.includes(true)) {
    return hands.includes('left') && hands[0] !== hands[1] && lonely[hands.indexOf('left')]
      ? { code: 'hand', facts }
      : { code: 'nothing mates', facts: { ...facts, ends: ['a', 'b'].filter((_, i) => lonely[i]) } }
  }
  return { code: a.kind === b.kind || (carriesOil(a) && carriesOil(b)) ? 'no chain' : 'kinds', facts }
}

const fromShelf = (part: ShelfAdapter): Stock => ({
  id: part.id,
  name: part.name,
  ends: part.ends,
  toBuy: null,
  price: part.price ?? null,
  length: part.length ?? null,
  quantity: part.quantity ?? 1,
  cost: costOf(part),
})

/** An oddness as a length: of a piece to buy no length is known, so that this room in the cost is free for what is plainest. */
const ODDNESS_STEP = 0.25e-3

const fromTables = (): readonly Stock[] =>
  standardAdapters().map(({ id, ends, oddness }) => ({
    id,
    name: id,
    ends: ends.map((connection, i) => ({ name: i === 0 ? 'one end' : 'other end', connection })),
    toBuy: COMMONLY_MADE,
    price: null,
    length: null,
    quantity: Number.POSITIVE_INFINITY,
    cost: { open: 0, toBuy: 1, unknownPrices: 0, cents: 0, unknownLengths: 1, length: oddness * ODDNESS_STEP },
  }))
