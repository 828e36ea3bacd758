import type { BoltGroup, DemandRoute } from '../model/forces.ts'
import type { Dimension } from '../quantities/dimension.ts'
import type { Origin } from './plan.ts'

export type Turn = 'left' | 'right'

/** Torque about ONE kingpin and about BOTH of them: two names, so that one is never taken for the other. */
export interface RouteTorque {
  readonly route: DemandRoute
  readonly perWheel: number
  readonly bothWheels: number
  /** id of the number of one wheel */
  readonly number: string
}

/** Curves over the travel: one entry a point, lists of one length; left turn positive. Forces count along the tie rod's travel. */
export interface ForceCurve {
  readonly travel: readonly number[]
  /** asked for to turn on to the left, and to the right, from each place */
  readonly demandLeft: readonly number[]
  readonly demandRight: readonly number[]
  /** what ram and box bring; null without both pressure and areas */
  readonly supplyLeft: readonly number[] | null
  readonly supplyRight: readonly number[] | null
}

/** The place at which one turn is hardest, with its numbers. */
export interface WorstPlace {
  readonly turn: Turn
  readonly travel: number
  readonly demand: number
  readonly rock: number
  readonly supply: number | null
  /** supply over demand, standing and wedged */
  readonly margin: number | null
  readonly rockMargin: number | null
  /** which side of a single-ended ram works; null: it cannot be told */
  readonly side: 'push' | 'pull' | null
}

export interface DemandPlan {
  readonly routes: readonly RouteTorque[]
  readonly used: DemandRoute
  readonly chosenByUser: boolean
  readonly curve: ForceCurve | null
  readonly worst: readonly WorstPlace[]
}

export interface SpeedLine {
  readonly at: 'idle' | 'cruise'
  readonly flow: number
  /** stop to stop, by the turn */
  readonly timeLeft: number | null
  readonly timeRight: number | null
  /** turns a second of the hand wheel before it goes heavy, in the slower turn */
  readonly handWheel: number | null
  readonly heat: number | null
}

export type RamLoss = 'weak' | 'weak in rock' | 'short stroke' | 'too long' | 'slow' | 'rod buckles' | 'tie rod'

/** One standard ram held against what is asked. Null: it cannot be told. */
export interface RamCandidate {
  readonly bore: string
  readonly rod: string
  readonly stroke: string
  readonly ended: 'single' | 'double'
  readonly push: number
  readonly pull: number
  /** least over the travel and both turns, supply over demand */
  readonly margin: number | null
  readonly rockMargin: number | null
  /** stroke over what the survey asks */
  readonly strokeOver: number | null
  readonly closed: number | null
  readonly time: number | null
  readonly rodFactor: number | null
  readonly tieRodFactor: number | null
  /** empty: it passes */
  readonly lost: readonly RamLoss[]
  readonly smallest: boolean
  /** it is the ram that the build has; its sizes then are as typed */
  readonly own: boolean
}

export type StrengthPart = 'tie rod' | 'drag link' | 'ram' | 'ram clamp' | 'ram bracket' | 'ball stud' | 'rod end' | 'steering arm'
export type FailureMode =
  | 'buckling'
  | 'clamp bending'
  | 'jog'
  | 'weld zone'
  | 'thread'
  | 'thread strips'
  | 'stepped column'
  | 'rod alone'
  | 'slip'
  | 'bolts'
  | 'bending'

/** One way in which one part gives way, with how many times over the load may grow. */
export interface StrengthLine {
  readonly part: StrengthPart
  readonly mode: FailureMode
  readonly factor: number
  readonly wanted: number
  readonly number: string
}

export interface FlowLine {
  readonly hose: string
  readonly name: string
  readonly line: 'pressure' | 'return' | 'suction' | 'ram'
  readonly flow: number
  readonly velocity: number
  readonly velocityMost: number
  readonly cold: FlowLoss | null
  readonly hot: FlowLoss | null
}
export interface FlowLoss {
  readonly reynolds: number
  readonly regime: 'laminar' | 'between' | 'turbulent'
  readonly drop: number
}

/** One published or computed value for a joint. */
export interface TorqueValue {
  readonly low: number
  readonly high: number
  /** what it rests on: a row of a table, or a nut factor of a convention */
  readonly from:
    | { readonly table: string; readonly row: string }
    | { readonly k: number; readonly convention: 'textbook' | 'industry'; readonly number: string }
}
export interface TighteningLine {
  readonly what: string
  /** joints by id, or the group of bolts */
  readonly joints: readonly string[]
  readonly bolts: BoltGroup['id'] | null
  readonly kind: 'bolt' | 'castle nut' | 'jam nut' | 'fitting'
  readonly size: string
  /** the maker's value goes first */
  readonly maker: number | null
  readonly values: readonly TorqueValue[]
  /** maker's less the nearest of the others; null without both */
  readonly difference: number | null
  /** a castle nut is turned on by at most so much to the next slot */
  readonly turnOn: number | null
}

/** How one input moves one margin. */
export interface Sensitivity {
  readonly margin: string
  readonly inputs: readonly {
    readonly name: string
    readonly dimension: Dimension
    readonly origin: Origin
    readonly si: number
    /** change of the margin, as a part of it, for the input 10 % greater and 10 % smaller */
    readonly greater: number
    readonly smaller: number
  }[]
}

export interface ForcesPlan {
  readonly demand: DemandPlan | null
  readonly speed: readonly SpeedLine[]
  readonly candidates: readonly RamCandidate[] | null
  readonly strength: readonly StrengthLine[]
  readonly flow: readonly FlowLine[]
  readonly tightening: readonly TighteningLine[]
  readonly sensitivities: readonly Sensitivity[]
}
