import type { Hand, PortFamily, Sex, Thread } from '../../model/end/types.ts'
import type { Length, Ratio } from '../../quantities/dimension.ts'
import type { Source } from '../../standards/source.ts'

/** A reading with its uncertainty. */
export interface Measured {
  readonly value: Length
  /** the true value lies within this of the reading nearly always (95 of 100 times) */
  readonly u: Length
  /** nobody said the uncertainty: it was assumed */
  readonly assumed: boolean
}

/** How an end is seen to seal. */
export type SealSeen =
  | 'none'
  | 'cone 37'
  | 'cone 45'
  | 'cone 24'
  | 'cone 60'
  | 'o-ring in chamfer'
  | 'o-ring in face'
  | 'flat face'
  | 'inverted seat'
  | 'o-ring on nose'

/** What was read off a thread. Absent: not looked at, or not known. */
export interface ThreadReadings {
  readonly what: 'thread'
  /** across the crests of a male thread, or inside the crests of a female one */
  readonly diameter: Measured
  readonly sex: Sex
  readonly pitch?: Measured
  readonly tapered?: boolean
  readonly seal?: SealSeen
  readonly hand?: Hand
  readonly flank?: 60 | 55
}

/** Two diameters of a cone and how far apart they were taken. */
export interface TaperReadings {
  readonly what: 'taper'
  readonly one: Measured
  readonly other: Measured
  readonly apart: Measured
}

export interface TubeReadings {
  readonly what: 'tube'
  readonly outside?: Measured
  readonly inside?: Measured
  readonly wall?: Measured
}

export interface SplineReadings {
  readonly what: 'spline'
  readonly count?: number
  readonly diameter?: Measured
}

export type Readings = ThreadReadings | TaperReadings | TubeReadings | SplineReadings

/** `consistent`: explains every reading within its uncertainty; `nearly`: a worn, painted or hastily measured one could be it. */
export type Match = 'consistent' | 'nearly'

interface Ranked {
  readonly match: Match
  /** candidates of one rank explain the readings equally well */
  readonly rank: number
  /** how far off the readings are, in their uncertainties */
  readonly off: number
}

export interface PortUse {
  readonly family: PortFamily
  readonly size: string
}

export interface ThreadCandidate extends Ranked {
  readonly what: 'thread'
  readonly thread: Thread
  readonly sex: Sex
  readonly hand: Hand
  /** where the crests of a real one lie, from least to most */
  readonly crest: { readonly least: Length; readonly most: Length; readonly source: Source }
  /** hydraulic ends with this thread that look as seen */
  readonly ports: readonly PortUse[]
  /** the seal that was seen belongs to no hydraulic end known here with this thread */
  readonly sealUnexplained: boolean
}

/** A row of a table: a ball stud's taper, a tube, a splined shaft. */
export interface RowCandidate extends Ranked {
  readonly what: 'taper' | 'tube' | 'spline'
  readonly table: string
  readonly row: string
  readonly ratio?: Ratio
  readonly outside?: Length
  readonly wall?: Length
  readonly inside?: Length
  readonly count?: number
}

export type Candidate = ThreadCandidate | RowCandidate

/** What a further measurement would read on one of the candidates. */
export type Expected =
  | { readonly of: string; readonly si: number; readonly dimension: 'length' | 'angle' | 'ratio' }
  | { readonly of: string; readonly looks: readonly string[] }

/** The one further measurement that tells the leading candidates apart. */
export interface Further {
  readonly property:
    | 'pitch over ten turns'
    | 'flank angle'
    | 'taper'
    | 'seal'
    | 'crest diameter'
    | 'papers'
    | 'difference of diameters'
    | 'wall'
    | 'outside diameter'
    | 'number of splines'
    | 'diameter over splines'
  /** uncertainty that is good enough; of a taper also the length over which to measure */
  readonly within?: number
  readonly over?: Length
  readonly expected: readonly Expected[]
}

export interface IdentifyResult {
  readonly what: Readings['what']
  readonly readings: Readings
  /** of a taper: its rate and the uncertainty of the rate */
  readonly ratio?: { readonly value: Ratio; readonly u: Ratio }
  /** the best first; empty: no candidate */
  readonly candidates: readonly Candidate[]
  /** null: one candidate is left, or none */
  readonly further: Further | null
}
