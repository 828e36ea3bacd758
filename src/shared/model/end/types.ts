import type { Angle, Length, Ratio } from '../../quantities/dimension.ts'

/** Who goes into whom. A hose nut on a flare is the female thread; the port in a box is female. */
export type Sex = 'male' | 'female'
export type Hand = 'right' | 'left'

export type ThreadFamily = 'unified' | 'metric' | 'npt' | 'nptf' | 'g' | 'r' | 'rc' | 'rp'

/** A screw thread's form, whatever it belongs to. */
export interface Thread {
  readonly family: ThreadFamily
  /** as the standard writes it: "7/8-18", "M18x1.5", "3/8-18 NPT", "G 3/8" */
  readonly designation: string
  /** basic major diameter; of a taper pipe thread at the gauge plane (NPT: the pipe's outside diameter) */
  readonly major: Length
  readonly pitch: Length
  readonly flankAngle: 60 | 55
  readonly tapered: boolean
}

export const PORT_FAMILIES = [
  'flare 37',
  'o-ring boss',
  'flare 45',
  'inverted flare',
  'face seal',
  'iso 6149',
  'iso 9974',
  'iso 1179',
  'cone 24 light',
  'cone 24 heavy',
  'bsp cone 60',
  'banjo',
  'tube o-ring',
] as const
/** How a hydraulic connection seals. Two families may share a thread and still not seal on one another. */
export type PortFamily = (typeof PORT_FAMILIES)[number]

/** Facts any end may carry beside what it is. Absent means not said. */
export interface EndFacets {
  /** length over which it can engage: thread, bore, clamp or tapered seat */
  readonly length?: Length
  /** what it is made of, where that matters to engagement */
  readonly material?: 'steel' | 'cast iron' | 'aluminium'
  /** this end can be turned to adjust and is locked by a jam nut */
  readonly jamNut?: true
}

export interface ThreadEnd extends EndFacets {
  readonly kind: 'thread'
  readonly thread: Thread
  readonly hand: Hand
  readonly sex: Sex | null
  /** class of fit as typed: "2A", "6g" */
  readonly fitClass?: string
}

export interface PortEnd extends EndFacets {
  readonly kind: 'port'
  readonly family: PortFamily
  /** "-6" for the dash families, the thread's designation for the others */
  readonly size: string
  readonly thread: Thread
  readonly sex: Sex | null
}

/** A ball stud's cone (male) or the hole it pulls into (female). */
export interface TaperEnd extends EndFacets {
  readonly kind: 'taper'
  /** change of diameter per length */
  readonly ratio: Ratio | null
  readonly sex: Sex | null
  readonly large: Length | null
  readonly small: Length | null
  /** a stud's shoulder to its cotter hole's centre, along the axis */
  readonly cotterHole?: Length
  /** the thread of the stud, which its castle nut goes on */
  readonly nut?: Thread
}

/** Plain cylinders: a clamp's bore or a hole (female), a tube or a pin (male). */
export interface RoundEnd extends EndFacets {
  readonly kind: 'round'
  readonly form: 'clamp' | 'tube' | 'bore' | 'pin'
  readonly diameter: Length | null
  /** wall of a tube */
  readonly wall?: Length
  /** of a rod end's bore: how far it can tilt each way; of the bolt in it: how far it must over the travel */
  readonly tilt?: Angle
}

export interface SplineEnd extends EndFacets {
  readonly kind: 'spline'
  readonly count: number | null
  readonly diameter: Length | null
  readonly sex: Sex | null
}

/** Hose pushed over or crimped on a tail. */
export interface TailEnd extends EndFacets {
  readonly kind: 'tail'
  readonly form: 'hose' | 'barb'
  readonly bore: Length | null
}

/** A place made to be welded. */
export interface WeldEnd extends EndFacets {
  readonly kind: 'weld'
}

/** Nobody has measured it yet. */
export interface UnmeasuredEnd extends EndFacets {
  readonly kind: 'unmeasured'
}

export type End = ThreadEnd | PortEnd | TaperEnd | RoundEnd | SplineEnd | TailEnd | WeldEnd | UnmeasuredEnd
export type EndKind = End['kind']

/** An end's description as typed, beside what was understood. */
export interface Connection {
  readonly typed: string
  readonly end: End
}
