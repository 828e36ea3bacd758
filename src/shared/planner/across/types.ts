import type { Connection, End } from '../../model/end/types.ts'
import type { Length } from '../../quantities/dimension.ts'
import type { Fact } from '../../result/result.ts'
import type { Source } from '../../standards/source.ts'
import type { Verdict } from '../fit/verdict.ts'

/** A part with two or more ends that can stand between two others. */
export interface ShelfAdapter {
  readonly id: string
  readonly name: string
  readonly ends: readonly { readonly name: string; readonly connection: Connection }[]
  /** as typed: "42.50"; absent: not known */
  readonly price?: string
  /** seat to seat; absent: not known */
  readonly length?: Length
  /** how many of it there are; absent: one */
  readonly quantity?: number
}

/** One piece of a chain, in at one end and out at another. */
export interface Piece {
  readonly id: string
  readonly name: string
  /** null: it lies on the shelf. Otherwise it must be bought, and this says how far it can be counted on to exist */
  readonly toBuy: Source | null
  readonly in: { readonly name: string; readonly connection: Connection }
  readonly out: { readonly name: string; readonly connection: Connection }
  /** ends of the piece that the chain leaves open: each wants a plug, and can leak */
  readonly open: readonly string[]
  readonly price: string | null
  readonly length: Length | null
}

/** Two ends that meet in a chain, with the verdict on them (always `fits` or `fits if`). */
export interface Meeting {
  readonly from: End
  readonly to: End
  readonly verdict: Verdict
}

export interface Chain {
  /** from A to B */
  readonly pieces: readonly Piece[]
  /** one more than there are pieces */
  readonly meetings: readonly Meeting[]
  /** places that can leak (or work loose): every meeting, and every end left open */
  readonly leakPoints: number
  /** sum of the prices in the shelf's currency, as "42.50"; null when one of them is not known */
  readonly price: string | null
  /** sum of the lengths; null when one of them is not known */
  readonly length: Length | null
  /** how many pieces must be bought */
  readonly toBuy: number
}

/** Where one of the two ends is a hose's: the hose end that would go on the other without anything between. */
export interface Instead {
  /** which of the two ends is changed */
  readonly change: 'a' | 'b'
  readonly to: Connection
  readonly verdict: Verdict
}

/** Why there is no way across, by code and facts. */
export interface NoWay {
  readonly code: 'not measured' | 'kinds' | 'hand' | 'nothing mates' | 'no chain'
  readonly facts: Readonly<Record<string, Fact>>
}

interface Answer {
  /** the verdict on the two ends themselves */
  readonly direct: Verdict
  readonly instead: readonly Instead[]
}

export type AcrossResult =
  /** the two ends go together as they are */
  | (Answer & { readonly outcome: 'not needed' })
  /**
   * `chains`, the best first: from the shelf alone where that can be done, otherwise with pieces to buy. `buying`: chains with
   * something to buy that have fewer leak points than the shelf's best.
   */
  | (Answer & { readonly outcome: 'found'; readonly chains: readonly Chain[]; readonly buying: readonly Chain[] })
  | (Answer & { readonly outcome: 'none'; readonly why: NoWay })
