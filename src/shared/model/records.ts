import * as z from 'zod'
import { day, id, name, note, quantity } from './fields.ts'

/** What a fastener or fitting is to be tightened to. `from` says who says so: the maker's value goes before any other. */
export const torqueSpec = z.strictObject({
  id,
  /** the joints it speaks for; absent where there is none in the build, and `what` says it in words */
  joints: z.array(id).min(1).max(100).optional(),
  what: name,
  value: quantity('torque', { positive: true, max: 5000 }).optional(),
  /** plus and minus */
  tolerance: quantity('torque', { min: 0, max: 1000 }).optional(),
  /** turned on from snug, for joints tightened by angle or flats */
  angle: quantity('angle', { positive: true, max: 20 }).optional(),
  from: z.enum(['maker', 'published table', 'computed', 'own practice']),
  source: name.optional(),
  /** distance after which it is to be checked again, as typed: "100 miles" */
  recheckAfter: name.optional(),
})

/** A torque that was applied. Records are never changed: a correction is a further record that names the one it corrects. */
export const torqueRecord = z.strictObject({
  id,
  spec: id,
  on: day,
  value: quantity('torque', { positive: true, max: 5000 }),
  wrench: name.optional(),
  by: name.optional(),
  odometer: name.optional(),
  corrects: id.optional(),
  note: note.optional(),
})

const angle = quantity('angle', { min: -0.8, max: 0.8 }).optional()

/** One alignment reading. Toe-in, negative camber top-in and positive caster top-back carry the signs of ISO 8855. */
export const alignmentReading = z.strictObject({
  id,
  on: day,
  when: z.enum(['before', 'after', 'check']),
  /** total toe as a distance, with the diameter it was measured at */
  toe: quantity('length', { min: -0.2, max: 0.2 }).optional(),
  toeAt: quantity('length', { positive: true, max: 2 }).optional(),
  camberLeft: angle,
  camberRight: angle,
  casterLeft: angle,
  casterRight: angle,
  method: name.optional(),
  by: name.optional(),
  odometer: name.optional(),
  corrects: id.optional(),
  note: note.optional(),
})

export type TorqueSpec = z.output<typeof torqueSpec>
export type TorqueRecord = z.output<typeof torqueRecord>
export type AlignmentReading = z.output<typeof alignmentReading>
