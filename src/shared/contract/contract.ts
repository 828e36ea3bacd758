import * as z from 'zod'

/**
 * Every procedure the window may call: its name, what goes in, what comes out. Both doors (Electron's IPC and the loopback
 * host) mount the same list. What comes out is plain JSON. A refusal is `ok: false` with sentences for the reader.
 */

const documentShape = z.custom<import('../report/document.ts').Document>((v) => typeof v === 'object' && v !== null)
const findings = z.custom<readonly import('../report/document.ts').FindingText[]>(Array.isArray)
const numbers = z.custom<readonly import('../report/document.ts').NumberText[]>(Array.isArray)
const workings = z.custom<readonly import('../report/document.ts').WorkingText[]>(Array.isArray)

const buildId = z.string().min(1).max(64)
const units = z.enum(['inch', 'metric'])
const paper = z.enum(['a4', 'letter'])

/** A sentence about one thing wrong with an input, with the place it is about ("parts[3].ends[0].connection"). */
export const problem = z.strictObject({ code: z.string(), place: z.string(), sentence: z.string() })
export type Problem = z.output<typeof problem>

const refusable = <T extends z.ZodType>(value: T) =>
  z.discriminatedUnion('ok', [
    z.strictObject({ ok: z.literal(true), value }),
    z.strictObject({ ok: z.literal(false), problems: z.array(problem) }),
  ])

export const buildSummary = z.strictObject({
  id: buildId, name: z.string(), vehicle: z.string(), revision: z.int(), changedAt: z.string(),
  stops: z.int(), looks: z.int(),
})
export type BuildSummary = z.output<typeof buildSummary>

const openBuild = z.strictObject({
  summary: buildSummary, units, document: documentShape, findings, numbers, workings,
})
export type OpenBuild = z.output<typeof openBuild>

const savedFile = z.strictObject({ fileName: z.string(), mediaType: z.string(), base64: z.string() })
export type SavedFile = z.output<typeof savedFile>

export const CONTRACT = {
  /** what program this is and where its data lie */
  'program.about': {
    input: z.strictObject({}),
    output: z.strictObject({ version: z.string(), host: z.enum(['window', 'browser']), dataFolder: z.string(), database: refusable(z.null()) }),
  },
  'builds.list': { input: z.strictObject({}), output: refusable(z.array(buildSummary)) },
  /** the build's plan as a report, in the units asked for (absent: the build's own) */
  'builds.open': { input: z.strictObject({ id: buildId, units: units.optional() }), output: refusable(openBuild) },
  /** reads an exchange file; all of it or nothing. An id that exists is refused unless `replace` is set */
  'builds.import': {
    input: z.strictObject({ text: z.string().max(20_000_000), replace: z.boolean() }),
    output: refusable(z.strictObject({ id: buildId, replaced: z.boolean() })),
  },
  'builds.export': { input: z.strictObject({ id: buildId }), output: refusable(savedFile) },
  /** adds the demo build, as first bought (with its mistakes) or as corrected */
  'demo.add': { input: z.strictObject({ which: z.enum(['bought', 'corrected']) }), output: refusable(z.strictObject({ id: buildId })) },
  'sheet.print': { input: z.strictObject({ id: buildId, paper, units: units.optional() }), output: refusable(savedFile) },
  /** Electron only: asks where to save, and saves. In the browser the page downloads instead and never calls this. */
  'files.save': { input: savedFile, output: refusable(z.strictObject({ saved: z.boolean(), path: z.string().nullable() })) },
} as const satisfies Record<string, { input: z.ZodType; output: z.ZodType }>

export type ProcedureName = keyof typeof CONTRACT
export type ProcedureInput<N extends ProcedureName> = z.input<(typeof CONTRACT)[N]['input']>
export type ProcedureOutput<N extends ProcedureName> = z.output<(typeof CONTRACT)[N]['output']>
/** The procedures as functions: what a host mounts and what a window calls. */
export type Procedures = { readonly [N in ProcedureName]: (input: ProcedureInput<N>) => Promise<ProcedureOutput<N>> }
