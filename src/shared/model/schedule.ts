import * as z from 'zod'
import { day, id, name, note, quantity } from './fields.ts'

const hours = quantity('time', { min: 0, max: 3_600 * 1_000 })

/** A piece of the work. */
export const task = z.strictObject({
  id,
  name,
  hours: z.strictObject({ low: hours, likely: hours, high: hours }),
  /** ids of tasks that come before */
  after: z.array(id).max(100),
  /** ids of parts that must be here */
  needs: z.array(id).max(200).optional(),
  helpers: z.int().min(0).max(20).optional(),
  /** curing or drying afterwards, by the clock, not by the hand */
  cures: hours.optional(),
  /** must not be left half done when a session ends */
  finishInOneGo: z.literal(true).optional(),
  done: z.literal(true).optional(),
  note: note.optional(),
})

/** A day on which work is done. */
export const session = z.strictObject({
  id,
  on: day,
  hours: quantity('time', { positive: true, max: 86_400 }),
  helpers: z.int().min(0).max(20).optional(),
  note: note.optional(),
})

export type Task = z.output<typeof task>
export type Session = z.output<typeof session>
