import * as z from 'zod'
import { day, id, name, note, quantity } from './fields.ts'
import { forces } from './forces.ts'
import { geometry } from './geometry.ts'
import { joint } from './joint.ts'
import { part } from './part.ts'
import { alignmentReading, torqueRecord, torqueSpec } from './records.ts'
import { session, task } from './schedule.ts'
import { limit, survey } from './survey.ts'
import { axle, vehicle } from './vehicle.ts'

export const FORMAT = 'steerwright build'
export const FORMAT_VERSION = 1

export const header = z.strictObject({
  id,
  name,
  revision: z.int().min(1).max(1_000_000),
  /** what numbers are shown in first */
  units: z.enum(['inch', 'metric']),
  /** ISO 4217 code of every price */
  currency: z
    .string()
    .regex(/^[A-Z]{3}$/)
    .optional(),
  startedOn: day.optional(),
  /** share of the fluid to have in hand for purging, beside what the system holds: "25 %" */
  purgeAllowance: quantity('ratio', { min: 0, max: 5 }).optional(),
  notes: note.optional(),
})

/** One build with all it needs, as it stands in one exchange file. Key by key the same as the file. */
export const buildFile = z.strictObject({
  format: z.literal(FORMAT),
  version: z.literal(FORMAT_VERSION),
  build: header,
  vehicle,
  axle: axle.optional(),
  geometry: geometry.optional(),
  forces: forces.optional(),
  parts: z.array(part).max(5000),
  joints: z.array(joint).max(5000),
  survey: survey.optional(),
  limits: z.array(limit).max(200).optional(),
  torqueSpecs: z.array(torqueSpec).max(5000).optional(),
  torqueRecords: z.array(torqueRecord).max(50_000).optional(),
  alignment: z.array(alignmentReading).max(5000).optional(),
  tasks: z.array(task).max(1000).optional(),
  sessions: z.array(session).max(1000).optional(),
})

/** The file as JSON holds it: every quantity and connection a string as typed. */
export type BuildFile = z.input<typeof buildFile>
/** The model: every quantity with its value beside what was typed, every connection understood. */
export type Build = z.output<typeof buildFile>
