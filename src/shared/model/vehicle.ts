import * as z from 'zod'
import { id, name, note, quantity } from './fields.ts'

/** The vehicle the work is done on. Everything but its name may still be unknown: the plan then says what to measure. */
export const vehicle = z.strictObject({
  id,
  name,
  description: note.optional(),
  wheelbase: quantity('length', { positive: true, max: 10 }).optional(),
  /** weight carried by the steered axle, at its worst loading */
  frontAxleLoad: quantity('force', { positive: true, max: 200_000 }).optional(),
  tyre: z
    .strictObject({
      /** as moulded on the tyre: "36x12.50R17", "LT315/75R16" */
      size: name.optional(),
      pressure: quantity('pressure', { positive: true, max: 2e6 }).optional(),
      /** nominal width of the print on the ground */
      printWidth: quantity('length', { positive: true, max: 1 }).optional(),
    })
    .optional(),
  odometer: name.optional(),
  notes: note.optional(),
})

/** The steered axle: a solid beam with kingpins or ball joints at both ends. */
export const axle = z.strictObject({
  id,
  name,
  /** between the steering axes, at the height of the tie rod */
  kingpinSpacing: quantity('length', { positive: true, max: 3 }).optional(),
  /** from steering axis to tie-rod joint, seen from above */
  armLength: quantity('length', { positive: true, max: 1 }).optional(),
  /** inward lean of the arm from straight back (tie rod behind) or straight ahead (tie rod ahead, where it is usually negative) */
  armAngle: quantity('angle', { min: -1.2, max: 1.2 }).optional(),
  tieRod: z.enum(['behind', 'ahead']).optional(),
  kingpinInclination: quantity('angle', { min: -0.5, max: 0.5 }).optional(),
  caster: quantity('angle', { min: -0.5, max: 0.5 }).optional(),
  track: quantity('length', { positive: true, max: 4 }).optional(),
  notes: note.optional(),
})

export type Vehicle = z.output<typeof vehicle>
export type Axle = z.output<typeof axle>
