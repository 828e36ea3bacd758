import type { Chain } from '../../formulas/linkage/chain.ts'
import type { Linkage, LinkageRange } from '../../formulas/linkage/linkage.ts'
import type { RamMount } from '../../formulas/linkage/ram-space.ts'
import type { Suspension } from '../../formulas/linkage/suspension.ts'

export type Side = 'left' | 'right'
export const SIDES = ['left', 'right'] as const

/** Everything that picture and dragging need, in plain numbers: base SI, the frame of `formulas/linkage/plane.ts`. */
export interface SteeringGeometry {
  readonly linkage: Linkage
  readonly range: LinkageRange
  /** height of the tie rod above the axle's centre line; null: not known */
  readonly rodHeight: number | null
  readonly rodDiameter: number | null
  readonly chain: Chain | null
  readonly box: { readonly turns: number | null; readonly sweep: number | null }
  readonly ram:
    | (RamMount & {
        readonly closed: number | null
        readonly stroke: number | null
        readonly bodyLength: number | null
        readonly bodyDiameter: number | null
      })
    | null
  readonly suspension: Suspension | null
  readonly wheel: { readonly diameter: number | null; readonly width: number | null; readonly outset: number | null }
  readonly wheelbase: number | null
  /** distance between the kingpins at the ground; null: not known */
  readonly groundSpacing: number | null
}

/** Curves over the travel: one entry a point, lists of one length; a list that needs something unknown is null. */
export interface LinkageCurve {
  readonly travel: readonly number[]
  readonly left: readonly number[]
  readonly right: readonly number[]
  /** outer wheel less what true rolling asks of it; null at straight ahead and without a wheelbase */
  readonly ackermann: readonly number[] | null
  readonly pitman: readonly (number | null)[] | null
  /** hand wheel over road wheels (mean of both) */
  readonly ratio: readonly (number | null)[] | null
  readonly ramLength: readonly number[] | null
  readonly ramClearance: readonly number[] | null
}

export interface LinkagePlan {
  readonly geometry: SteeringGeometry
  readonly curve: LinkageCurve
}

export type LimitKind = 'knuckle stop' | 'steering box' | 'tyre contact' | 'ram'

/** One thing that can end the travel on one side. */
export interface LimitLine {
  readonly id: string
  readonly what: LimitKind
  readonly side: Side
  /** tie-rod travel to that side, positive */
  readonly travel: number
  /** standard uncertainty; null: not known */
  readonly u: number | null
  /** id of the number of the plan */
  readonly number: string
  /** from the list of limits, from the survey, or worked out of the geometry */
  readonly from: 'limits' | 'survey' | 'geometry'
  /** distance from kingpin to stop, where it is known */
  readonly radius: number | null
}

/** Who stops the wheels on one side, in their order. */
export interface SideOrder {
  readonly side: Side
  /** first to stop first */
  readonly lines: readonly LimitLine[]
  /** room between the first and the next of another kind; null without one */
  readonly margin: number | null
  readonly next: string | null
  /** chance that the order of these two is the other way round; null: an uncertainty is not known */
  readonly wrongOrder: number | null
  /** wheel angles at the first stop, positive to the left; null without a linkage */
  readonly angles: { readonly left: number; readonly right: number } | null
}

export interface LimitsPlan {
  readonly left: SideOrder
  readonly right: SideOrder
  /** room wanted between the stop and what may not be reached */
  readonly room: number
}

/** One standard stroke held against the travel between the stops. */
export interface StrokeLine {
  readonly size: string
  readonly stroke: number
  readonly series: string
  /** closed length it would have, the dead length taken as that of the ram listed; null: not known */
  readonly closed: number | null
  /** room a side with the clamp moved to the best place; below zero it ends the travel */
  readonly margin: number
  /** how far the clamp would have to move along the tie rod, to the right positive; null: no place within the rod */
  readonly shift: number | null
  readonly verdict: 'chosen' | 'good' | 'too short' | 'no room to spare' | 'does not fit closed' | 'longer than needed'
}

export interface BumpSteerPlan {
  /** axle rise against the frame, droop negative */
  readonly rise: readonly number[]
  /** steer error of the mean of both wheels for each steer, at each rise; null where a link does not reach */
  readonly curves: readonly { readonly travel: number; readonly error: readonly (number | null)[] }[]
  readonly best: { readonly height: number; readonly worst: number } | null
}
