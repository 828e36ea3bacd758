import * as z from 'zod'
import { id, refusable, revision } from './shapes.ts'

const isObjectOrNull = (value: unknown): boolean => typeof value === 'object'

const linkage = z.custom<import('../planner/linkage/plan-types.ts').LinkagePlan | null>(isObjectOrNull)
const limits = z.custom<import('../planner/linkage/plan-types.ts').LimitsPlan | null>(isObjectOrNull)
const bumpSteer = z.custom<import('../planner/linkage/plan-types.ts').BumpSteerPlan | null>(isObjectOrNull)

/** The steering as plain numbers, so that its picture can follow a finger without asking at every step. */
export const STEERING = {
  /** what the plan knows of linkage, limits and bump steer; null where too little is measured */
  'plan.steering': {
    input: z.strictObject({ id }),
    output: refusable(z.strictObject({ revision, linkage, limits, bumpSteer })),
  },
} as const
