import * as z from 'zod'
import { day, name, note, quantity } from './fields.ts'

export const WHEEL_STOPPERS = ['knuckle stop', 'tyre contact', 'steering box', 'chosen angle', 'ram', 'not known'] as const
export const wheelStopper = z.enum(WHEEL_STOPPERS)

/** One look at the tape: where the straight edge crosses the tie rod, counted along the rod from any one datum. */
export const reading = z.strictObject({
  mark: z.enum(['centre', 'left', 'right']),
  at: quantity('length', { min: -10, max: 10 }),
  by: name.optional(),
  note: note.optional(),
})

/**
 * Lock-to-lock travel, measured with a straight edge held to the same seat on the axle and marks on the tie rod.
 * "left" is the mark with the wheels turned fully left. The datum does not matter; it must stay the same.
 */
export const survey = z.strictObject({
  takenOn: day.optional(),
  /** the smallest division that was read */
  resolution: quantity('length', { positive: true, max: 0.1 }),
  method: z.enum(['to the stops', 'to equal angles']),
  endedBy: z.strictObject({ left: wheelStopper, right: wheelStopper }),
  /** what was made sure of before measuring */
  madeSure: z
    .array(z.enum(['on stands', 'tyres straight at centre', 'hand wheel centred', 'alignment good', 'same straight-edge seat']))
    .max(5),
  readings: z.array(reading).max(200),
  /** between the ram's line and the tie rod, seen from above and in height together */
  ramAngle: quantity('angle', { min: 0, max: 1.2 }).optional(),
  note: note.optional(),
})

/** Something that can end the wheels' travel on one side. `travel` counts along the tie rod, from straight ahead. */
export const limit = z.strictObject({
  id: z.string().regex(/^[a-z0-9][a-z0-9-]{0,63}$/),
  what: z.enum(['knuckle stop', 'steering box', 'tyre contact', 'ram']),
  side: z.enum(['left', 'right', 'both']),
  travel: quantity('length', { positive: true, max: 2 }).optional(),
  /** of the wheel on that side; of the pitman arm where the steering box is meant */
  angle: quantity('angle', { positive: true, max: 1.5 }).optional(),
  /** at a knuckle stop: between bolt and pad with the wheels straight ahead, straight across */
  gap: quantity('length', { min: 0, max: 1 }).optional(),
  /** from the kingpin to where stop or tyre touches, seen from above */
  radius: quantity('length', { positive: true, max: 2 }).optional(),
  /** at a tyre contact: how much room is to be left there */
  clearance: quantity('length', { min: 0, max: 0.5 }).optional(),
  /** plus and minus this: on the gap where there is one, otherwise on the tie rod's travel */
  uncertainty: quantity('length', { min: 0, max: 0.2 }).optional(),
  note: note.optional(),
})

export type Survey = z.output<typeof survey>
export type Reading = z.output<typeof reading>
export type Limit = z.output<typeof limit>
export type WheelStopper = z.output<typeof wheelStopper>
