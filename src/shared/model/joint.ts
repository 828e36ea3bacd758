import * as z from 'zod'
import { id, name, note } from './fields.ts'

/** "tie-rod-tube/left": an end of a part. */
export const endRef = z.string().regex(/^[a-z0-9][a-z0-9-]{0,63}\/[a-z0-9][a-z0-9-]{0,63}$/)

/** What goes between two ends or on them to make the joint good. */
export const JOINT_AIDS = [
  'sealant',
  'bonded washer',
  'crush washers',
  'jam nut',
  'castle nut and cotter',
  'lock nut',
  'weld',
  'hose clamp',
  'pinch bolt',
] as const

/** Two ends that are to be put together. */
export const joint = z.strictObject({
  id,
  name: name.optional(),
  a: endRef,
  b: endRef,
  /** what goes between or on: the condition a verdict asks for is met when it is named here */
  with: z.array(z.enum(JOINT_AIDS)).max(8).optional(),
  note: note.optional(),
})

export type Joint = z.output<typeof joint>
export type JointAid = NonNullable<Joint['with']>[number]

/** Takes "part/end" apart. */
export function splitEndRef(ref: string): { part: string; end: string } {
  const [part, end] = ref.split('/') as [string, string]
  return { part, end }
}
