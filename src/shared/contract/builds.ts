import * as z from 'zod'
import { buildJson, id, paper, refusable, revision, savedFile, units } from './shapes.ts'

const documentShape = z.custom<import('../report/document.ts').Document>((v) => typeof v === 'object' && v !== null)
const findings = z.custom<readonly import('../report/document.ts').FindingText[]>(Array.isArray)
const numbers = z.custom<readonly import('../report/document.ts').NumberText[]>(Array.isArray)
const workings = z.custom<readonly import('../report/document.ts').WorkingText[]>(Array.isArray)

export const buildSummary = z.strictObject({
  id,
  name: z.string(),
  vehicle: z.string(),
  revision: z.int(),
  changedAt: z.string(),
  stops: z.int(),
  looks: z.int(),
})
export type BuildSummary = z.output<typeof buildSummary>

const openBuild = z.strictObject({ summary: buildSummary, units, document: documentShape, findings, numbers, workings })
export type OpenBuild = z.output<typeof openBuild>

/** What a build's row in the database says of its state; what is changed next is based on it. */
const saved = z.strictObject({ id, revision, changedAt: z.string() })
export type SavedBuild = z.output<typeof saved>

/** Builds as a whole: listed, opened as a report, read and written as files. */
export const BUILDS = {
  'builds.list': { input: z.strictObject({}), output: refusable(z.array(buildSummary)) },
  /** the build's plan as a report, in the units asked for (absent: the build's own) */
  'builds.open': { input: z.strictObject({ id, units: units.optional() }), output: refusable(openBuild) },
  /** the build as it is in a file, to be changed and written back */
  'builds.read': {
    input: z.strictObject({ id }),
    output: refusable(z.strictObject({ file: buildJson, revision, changedAt: z.string() })),
  },
  /**
   * Puts a changed file in the place of the one it was made from, as revision `basedOn` + 1 (what the file itself says of its
   * revision does not count). Refused with `build.changed_meanwhile` where the stored one is not of revision `basedOn`, or,
   * where `changedAt` is given, was changed at another time; with `build.unknown` where there is none.
   */
  'builds.write': {
    input: z.strictObject({ file: buildJson, basedOn: revision, changedAt: z.string().optional() }),
    output: refusable(saved),
  },
  /** a new build with nothing in it; its id is made from its name */
  'builds.create': { input: z.strictObject({ name: z.string(), vehicle: z.string(), units }), output: refusable(saved) },
  /** takes a build out and hands it over once more, so that it can be put back; refused as `builds.write` is */
  'builds.remove': { input: z.strictObject({ id, revision }), output: refusable(z.strictObject({ file: buildJson })) },
  /** reads an exchange file; all of it or nothing. An id that exists is refused unless `replace` is set */
  'builds.import': {
    input: z.strictObject({ text: z.string().max(20_000_000), replace: z.boolean() }),
    output: refusable(z.strictObject({ id, replaced: z.boolean() })),
  },
  'builds.export': { input: z.strictObject({ id }), output: refusable(savedFile) },
  /** adds the demo build, as first bought (with its mistakes) or as corrected */
  'demo.add': { input: z.strictObject({ which: z.enum(['bought', 'corrected']) }), output: refusable(z.strictObject({ id })) },
  /** the shop sheet as PDF; with `workings` the appendix that shows how every number came about, which is long */
  'sheet.print': {
    input: z.strictObject({ id, paper, units: units.optional(), workings: z.boolean().optional() }),
    output: refusable(savedFile),
  },
} as const
