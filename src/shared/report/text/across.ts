import { carriesOil } from '../../planner/across/end-class.ts'
import type { AcrossResult, Chain, NoWay } from '../../planner/across/types.ts'
import type { State } from '../document.ts'
import type { Show } from '../units.ts'
import { verdictWords } from './verdicts.ts'

export interface PieceWords {
  readonly id: string
  readonly name: string
  /** "on the shelf" or "to buy" */
  readonly from: string
  /** "in at 37° (-6 37° flare female), out at pipe (3/8 NPT male)" */
  readonly through: string
  /** the ends by which the chain goes in and out, as they stand in a file */
  readonly in: { readonly name: string; readonly connection: string }
  readonly out: { readonly name: string; readonly connection: string }
  /** as typed; null where it is not known */
  readonly price: string | null
  /** what to do with ends left open, and what may be doubted */
  readonly notes: readonly string[]
}

export interface MeetingWords {
  readonly word: string
  readonly state: State
  readonly conditions: readonly string[]
  /** the conditions as a joint names them */
  readonly with: readonly string[]
}

export interface InsteadWords {
  readonly change: 'a' | 'b'
  /** what the end becomes, as typed */
  readonly to: string
  readonly with: readonly string[]
}

export interface ChainWords {
  /** "2 leak points, 12.50, 1.2 in long" */
  readonly title: string
  readonly pieces: readonly PieceWords[]
  /** one more than there are pieces: A with the first, …, the last with B */
  readonly meetings: readonly MeetingWords[]
}

export interface AcrossWords {
  readonly outcome: AcrossResult['outcome']
  readonly state: State
  /** the answer in one sentence */
  readonly answer: string
  /** the two ends as they are */
  readonly direct: string
  readonly chains: readonly ChainWords[]
  /** chains with fewer leak points than the shelf's best, with something to buy */
  readonly buying: readonly ChainWords[]
  readonly instead: readonly string[]
  /** the same as `instead`, one by one, as data */
  readonly changes: readonly InsteadWords[]
  readonly measure: readonly string[]
}

/** The way across in words, as plain JSON. */
export function acrossWords(result: AcrossResult, show: Show): AcrossWords {
  const direct = verdictWords(result.direct, show)
  return {
    outcome: result.outcome,
    state: result.outcome === 'not needed' ? direct.state : result.outcome === 'found' ? 'noted' : 'stops',
    answer: answer(result),
    direct: [direct.word, ...direct.reasons].join(': '),
    chains: result.outcome === 'found' ? result.chains.map((c) => chainWords(c, show)) : [],
    buying: result.outcome === 'found' ? result.buying.map((c) => chainWords(c, show)) : [],
    instead: result.instead.map(
      ({ change, to, verdict }) =>
        `Where ${change === 'a' ? 'the first' : 'the second'} end is a hose's, have a hose made with ${to.typed} instead: it goes on the other end directly${conditions(verdictWords(verdict, show).conditions)}`,
    ),
    changes: result.instead.map(({ change, to, verdict }) => ({ change, to: to.typed, with: [...verdict.conditions] })),
    measure: result.outcome === 'none' && Array.isArray(result.why.facts.measure) ? [...(result.why.facts.measure as string[])] : [],
  }
}

const conditions = (all: readonly string[]): string => (all.length === 0 ? '' : `, with ${all.join(' and ')}`)
/** What carries no oil does not leak: there every place is a joint that can work loose. */
const places = (c: Chain): string => count(c.leakPoints, c.meetings.some((m) => carriesOil(m.from)) ? 'leak point' : 'joint')
const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`

function answer(result: AcrossResult): string {
  switch (result.outcome) {
    case 'not needed':
      return result.direct.kind === 'fits'
        ? 'No adapter is needed: the two ends go together.'
        : `No adapter is needed: the two ends go together on a condition.`
    case 'found': {
      const best = result.chains[0]
      if (!best) return ''
      const pieces = count(best.pieces.length, 'piece')
      return best.toBuy === 0
        ? `${pieces} from the shelf, ${places(best)}.`
        : `${pieces}, ${best.toBuy === best.pieces.length ? 'all to buy' : `${best.toBuy} to buy`}, ${places(best)}.`
    }
    case 'none':
      return why(result.why)
  }
}

function why({ code, facts }: NoWay): string {
  const where = facts.buy === true ? 'on the shelf or among the standard adapters' : 'on the shelf'
  switch (code) {
    case 'not measured':
      return 'No way across can be named before the ends are measured.'
    case 'kinds':
      return facts.aOil === facts.bOil
        ? `A ${facts.a} and a ${facts.b} are different kinds of end, and nothing ${where} leads from one to the other.`
        : 'One end carries oil, the other does not: no adapter joins them.'
    case 'hand':
      return `One thread is left-hand and the other is not, and nothing ${where} changes the hand.`
    case 'nothing mates': {
      const ends = Array.isArray(facts.ends) ? (facts.ends as string[]) : []
      const which = ends.length === 2 ? 'either end' : ends[0] === 'a' ? 'the first end' : 'the second end'
      return `Nothing ${where} goes on ${which}.`
    }
    case 'no chain':
      return `No chain of up to ${facts.most} adapters ${where} joins these two ends.`
  }
}

function chainWords(chain: Chain, show: Show): ChainWords {
  const price = chain.price === null ? 'price not known' : chain.price
  const length = chain.length === null ? 'length not known' : `${show(chain.length, 'length')} long`
  return {
    title: `${places(chain)}, ${price}, ${length}${chain.toBuy === 0 ? '' : `, ${chain.toBuy} to buy`}`,
    pieces: chain.pieces.map((p) => ({
      id: p.id,
      name: p.name,
      from: p.toBuy === null ? 'on the shelf' : 'to buy',
      through: `in at ${p.in.connection.typed}, out at ${p.out.connection.typed}`,
      in: { name: p.in.name, connection: p.in.connection.typed },
      out: { name: p.out.name, connection: p.out.connection.typed },
      price: p.price,
      notes: [...p.open.map((name) => `plug the open end "${name}"`), ...(p.toBuy === null ? [] : [`${p.toBuy.cites} (${p.toBuy.mark})`])],
    })),
    meetings: chain.meetings.map(({ verdict }) => {
      const { word, state, conditions: on } = verdictWords(verdict, show)
      return { word, state, conditions: on, with: [...verdict.conditions] }
    }),
  }
}
