import type { Dimension } from '../quantities/dimension.ts'
import type { Fact } from '../result/result.ts'
import type { Verdict } from './fit/verdict.ts'
import type { ForcesPlan } from './forces-types.ts'
import type { BumpSteerPlan, LimitsPlan, LinkagePlan, StrokeLine } from './linkage/plan-types.ts'

/** `stops`: the build must not go on like this. `look`: a person must look and decide. `noted`: for information. */
export type Severity = 'stops' | 'look' | 'noted'

/** What something is about: a place in the build file, so that the screen can lead there. */
export type Subject = readonly (string | number)[]

/** A number that proves a finding, named so that the report can put it into words. */
export interface Evidence {
  readonly name: string
  readonly dimension: Dimension
  /** base SI */
  readonly si: number
}

/** One judgement. Its words (title, why, what to do) are written in `report/text` from the code and the facts. */
export interface Finding {
  readonly code: string
  readonly severity: Severity
  readonly about: Subject
  readonly facts: Readonly<Record<string, Fact>>
  readonly evidence: readonly Evidence[]
  /** ids of numbers of the plan that it rests on */
  readonly numbers: readonly string[]
  /** the verdict it tells of, when it is about a joint */
  readonly verdict?: Verdict
}

/** Where the value of one symbol came from. */
export type Origin =
  | { readonly kind: 'entered'; readonly path: Subject; readonly typed: string; readonly on?: string }
  | { readonly kind: 'table'; readonly table: string; readonly row: string; readonly column: string }
  | { readonly kind: 'chosen'; readonly why: string }
  | { readonly kind: 'number'; readonly id: string }
  /** a statistic of the survey's readings of one mark */
  | { readonly kind: 'readings'; readonly mark: 'centre' | 'left' | 'right'; readonly statistic: 'mean' | 'standard deviation' | 'count' }

export interface KnownValue {
  readonly dimension: Dimension
  /** base SI */
  readonly si: number
  readonly origin: Origin
}

/** In place of a card: the number is the sum of its inputs. */
export const SUM = 'sum'

/** In place of a card: the place along the travel was searched for at which something reaches the value named. */
export const SEARCH = 'search'

/** A number of the plan with all of its working: the card it was computed by and where each symbol's value came from. */
export interface PlanNumber {
  readonly id: string
  readonly dimension: Dimension
  /** base SI */
  readonly si: number
  /** expanded uncertainty (k = 2), base SI, where it is known */
  readonly uncertainty?: number
  /** id of the card it was computed by, or {@link SUM}, or {@link SEARCH} */
  readonly card: string
  readonly inputs: Readonly<Record<string, KnownValue>>
}

/** The verdict on one joint of the build. */
export interface JointVerdict {
  readonly joint: string
  readonly a: string
  readonly b: string
  readonly verdict: Verdict
  /** conditions of the verdict that the joint does not name as met */
  readonly unmet: readonly string[]
}

export type PartState = 'to order' | 'ordered' | 'here' | 'fitted'

export interface PartsLine {
  /** ids of the parts counted here */
  readonly parts: readonly string[]
  readonly name: string
  readonly maker: string | null
  readonly partNumber: string | null
  readonly supplier: string | null
  readonly quantity: number
  readonly state: PartState
  /** price of one, in hundredths of the build's currency; null: not known */
  readonly eachMinor: number | null
  readonly totalMinor: number | null
}

export interface PartsList {
  readonly lines: readonly PartsLine[]
  readonly currency: string | null
  /** of the lines with a price; `unpriced` counts the lines without */
  readonly totalMinor: number
  readonly toOrderMinor: number
  readonly unpriced: number
}

/** One step of the installation. `code` names the step; its words, cautions included, are in `report/text`. */
export interface Step {
  readonly code: string
  /** parts, joints or torque specs it deals with, by id */
  readonly about: readonly string[]
  /** codes of cautions that stand beside it */
  readonly cautions: readonly string[]
  /** codes of steps that come before */
  readonly after: readonly string[]
  /** a name typed by the user, where the step is one of the user's own tasks */
  readonly typed?: string
}

export interface TorqueLine {
  readonly spec: string
  /** ids of the joints it speaks for */
  readonly joints: readonly string[]
  readonly what: string
  readonly value: number | null
  readonly tolerance: number | null
  readonly angle: number | null
  readonly typedValue: string | null
  readonly typedTolerance: string | null
  readonly from: 'maker' | 'published table' | 'computed' | 'own practice'
  readonly source: string | null
  readonly recheckAfter: string | null
  readonly lastRecord: { readonly on: string; readonly value: number; readonly within: boolean | null } | null
}

/** The survey's marks as measured, for the picture: positions along the tie rod from the centre mark, left negative, metres. */
export interface SurveyPicture {
  readonly left: number
  readonly right: number
  readonly readings: readonly { readonly mark: 'centre' | 'left' | 'right'; readonly at: number }[]
}

/** All that the planner found, in one plain value. */
export interface Plan {
  readonly build: { readonly id: string; readonly name: string; readonly revision: number; readonly vehicle: string }
  readonly findings: readonly Finding[]
  readonly numbers: readonly PlanNumber[]
  readonly joints: readonly JointVerdict[]
  readonly parts: PartsList
  readonly torques: readonly TorqueLine[]
  readonly steps: readonly Step[]
  readonly survey: SurveyPicture | null
  readonly linkage: LinkagePlan | null
  readonly limits: LimitsPlan | null
  readonly strokes: readonly StrokeLine[] | null
  readonly bumpSteer: BumpSteerPlan | null
  readonly forces: ForcesPlan
}
