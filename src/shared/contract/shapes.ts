import * as z from 'zod'
import type { BuildFile } from '../model/build.ts'
import type { EndKind } from '../model/end/types.ts'
import type { PartFile } from '../model/part.ts'
import type { VerdictKind } from '../planner/fit/verdict.ts'
import type { State } from '../report/document.ts'

/*
 * Shapes that several procedures share. A build or a part travels as the plain JSON it is in a file; what is checked here is
 * that it is an object at all, and the model checks the rest and says every fault with its place.
 */

const isObject = (value: unknown): boolean => typeof value === 'object' && value !== null && !Array.isArray(value)

export const buildJson = z.custom<BuildFile>(isObject)
export const partJson = z.custom<PartFile>(isObject)

export const id = z.string().min(1).max(64)
export const ids = z.array(id).min(1).max(1000)
export const endRef = z.string().min(3).max(129)
export const typedEnd = z.string().max(160)
export const units = z.enum(['inch', 'metric'])
export const paper = z.enum(['a4', 'letter'])
export const revision = z.int().min(1)

/** A sentence about one thing wrong with an input, with the place it is about ("parts[3].ends[0].connection"). */
export const problem = z.strictObject({ code: z.string(), place: z.string(), sentence: z.string() })
export type Problem = z.output<typeof problem>

export const refusable = <T extends z.ZodType>(value: T) =>
  z.discriminatedUnion('ok', [
    z.strictObject({ ok: z.literal(true), value }),
    z.strictObject({ ok: z.literal(false), problems: z.array(problem) }),
  ])

export const savedFile = z.strictObject({ fileName: z.string(), mediaType: z.string(), base64: z.string() })
export type SavedFile = z.output<typeof savedFile>

/** Which state of a build is meant: the one in the database, or the one in the window that nobody has saved yet. */
export const buildSource = z.union([z.strictObject({ id }), z.strictObject({ file: buildJson })])
export type BuildSource = z.output<typeof buildSource>

const VERDICTS = ['fits', 'fits if', 'does not fit', 'goes together and is wrong', 'not known'] as const satisfies readonly VerdictKind[]
export const verdictKind = z.enum(VERDICTS)
const STATES = ['stops', 'look', 'noted', 'good', 'unknown'] as const satisfies readonly State[]
export const state = z.enum(STATES)

/** A verdict in words, with the rule that decided and what the rule rests on. */
export const verdictText = z.strictObject({
  kind: verdictKind,
  rule: z.string(),
  word: z.string(),
  state,
  reasons: z.array(z.string()),
  conditions: z.array(z.string()),
  measure: z.array(z.string()),
  sources: z.array(z.strictObject({ cites: z.string(), mark: z.enum(['published', 'derived', 'practice', 'memory']) })),
})
export type VerdictText = z.output<typeof verdictText>

const END_KINDS = ['thread', 'port', 'taper', 'round', 'spline', 'tail', 'weld', 'unmeasured'] as const satisfies readonly EndKind[]

/** An end as it was understood. */
export const endText = z.strictObject({
  kind: z.enum(END_KINDS),
  /** all of it on one line: "37° flare, -6, male, thread 9/16-18" */
  line: z.string(),
  /** the same, fact by fact: "pitch", "18 per inch (1.411 mm)" */
  facts: z.array(z.strictObject({ label: z.string(), value: z.string() })),
})
export type EndText = z.output<typeof endText>
