import * as z from 'zod'
import { buildSource, endRef, endText, id, partJson, refusable, state, typedEnd, units, verdictKind, verdictText } from './shapes.ts'

const acrossWords = z.custom<import('../report/text/across.ts').AcrossWords>((v) => typeof v === 'object' && v !== null)
const identifyWords = z.custom<import('../report/text/identify.ts').IdentifyWords>((v) => typeof v === 'object' && v !== null)

const candidate = z.strictObject({
  /** "part/end" */
  end: endRef,
  /** names of the part and its end, and the end as typed */
  part: z.string(),
  name: z.string(),
  connection: z.string(),
  /** left open on purpose */
  leftOpen: z.boolean(),
  kind: verdictKind,
  word: z.string(),
  state,
  /** the first reason, or the first thing to measure; null where there is nothing to say */
  because: z.string().nullable(),
})
export type Candidate = z.output<typeof candidate>

/** One end, two ends, and the ends of a build: what goes on what, what leads from one to the other, and what a measured one is. */
export const FIT = {
  /** an end as it is understood, or why it is not; lengths in the units asked for (absent: inch) */
  'end.read': { input: z.strictObject({ typed: typedEnd, units: units.optional() }), output: refusable(endText) },
  /** checks a part as a build's part is checked: each end as it is understood, or every fault with its place in the part */
  'part.check': {
    input: z.strictObject({ part: partJson, units: units.optional() }),
    output: refusable(z.strictObject({ ends: z.array(z.strictObject({ name: id, understood: endText })) })),
  },
  /** the verdict on two ends as typed; a fault's place is "a" or "b" */
  'fit.ends': { input: z.strictObject({ a: typedEnd, b: typedEnd, units }), output: refusable(verdictText) },
  /** every end of other parts in the build that is not joined yet, with the verdict on it and `end`; what fits comes first */
  'fit.candidates': {
    input: z.strictObject({ build: buildSource, end: endRef, units }),
    output: refusable(z.strictObject({ candidates: z.array(candidate) })),
  },
  /**
   * What joins two ends: adapters of the shelf first (a piece "on the shelf" is named by its id there), then those to buy.
   * `hoseEnds` says which of the two ends are a hose's and may be changed instead (absent: both may).
   */
  'fit.across': {
    input: z.strictObject({
      a: typedEnd,
      b: typedEnd,
      units,
      hoseEnds: z.array(z.enum(['a', 'b'])).optional(),
      buy: z.boolean().optional(),
    }),
    output: refusable(acrossWords),
  },
  /**
   * What a measured thread, taper, tube or spline can be. Readings as in the terminal: "od=22.1 mm ± 0.05 mm", "tpi=14", first
   * perhaps "thread", "taper", "tube" or "spline". A fault's place is the name of its reading.
   */
  identify: {
    input: z.strictObject({ readings: z.array(z.string().max(120)).min(1).max(20), units }),
    output: refusable(identifyWords),
  },
} as const
