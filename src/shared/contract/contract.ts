import * as z from 'zod'
import { BUILDS } from './builds.ts'
import { COMPARE } from './compare.ts'
import { FIT } from './fit.ts'
import { QUANTITIES } from './quantities.ts'
import { refusable, savedFile } from './shapes.ts'
import { SHELF } from './shelf.ts'
import { STEERING } from './steering.ts'

export type { BuildSummary, OpenBuild, SavedBuild } from './builds.ts'
export { buildSummary } from './builds.ts'
export type { Candidate } from './fit.ts'
export type { BuildSource, EndText, Problem, SavedFile, VerdictText } from './shapes.ts'
export { problem } from './shapes.ts'
export type { CsvAnswer, ShelfRow, ShelfSort } from './shelf.ts'
export { SHELF_SORTS } from './shelf.ts'

/**
 * Every procedure the window may call: its name, what goes in, what comes out. Both doors (Electron's IPC and the loopback
 * host) mount the same list. What comes out is plain JSON. A refusal is `ok: false` with sentences for the reader.
 */
export const CONTRACT = {
  /** what program this is and where its data lie */
  'program.about': {
    input: z.strictObject({}),
    output: z.strictObject({
      version: z.string(),
      host: z.enum(['window', 'browser']),
      dataFolder: z.string(),
      database: refusable(z.null()),
    }),
  },
  ...BUILDS,
  ...COMPARE,
  ...FIT,
  ...QUANTITIES,
  ...SHELF,
  ...STEERING,
  /** Electron only: asks where to save, and saves. In the browser the page downloads instead and never calls this. */
  'files.save': { input: savedFile, output: refusable(z.strictObject({ saved: z.boolean(), path: z.string().nullable() })) },
} as const satisfies Record<string, { input: z.ZodType; output: z.ZodType }>

export type ProcedureName = keyof typeof CONTRACT
export type ProcedureInput<N extends ProcedureName> = z.input<(typeof CONTRACT)[N]['input']>
export type ProcedureOutput<N extends ProcedureName> = z.output<(typeof CONTRACT)[N]['output']>
/** The procedures as functions: what a host mounts and what a window calls. */
export type Procedures = { readonly [N in ProcedureName]: (input: ProcedureInput<N>) => Promise<ProcedureOutput<N>> }
