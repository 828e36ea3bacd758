import { existsSync } from 'node:fs'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { openDatabase } from '../../src/main/database/index.ts'
import { makeDispatch } from '../../src/main/hosts/dispatch.ts'
import { startLoopback } from '../../src/main/hosts/loopback.ts'
import { findProgram } from '../../src/main/hosts/program.ts'
import { makeProcedures } from '../../src/main/procedures/index.ts'
import type { Procedures } from '../../src/shared/contract/contract.ts'

/** The whole program behind its loopback door: real database, real planner, real page. */
export interface Running {
  /** with the token, as the program prints it */
  readonly address: string
  readonly origin: string
  readonly folder: string
  /** the same procedures the page calls, to hold what it shows against */
  readonly procedures: Procedures
  /** faults of the program noted while it ran; a test ends with none */
  readonly faults: readonly string[]
  readonly close: () => Promise<void>
}

/**
 * Starts the program on a data folder of its own.
 * @param prepare lays something into the data folder first
 */
export async function startProgram(prepare?: (folder: string) => Promise<void>): Promise<Running> {
  const program = findProgram()
  if (!existsSync(join(program.renderer, 'index.html'))) throw new Error('The page is not built: npm run build first (npm test does it).')
  const folder = await mkdtemp(join(tmpdir(), 'steerwright-window-'))
  await prepare?.(folder)
  const database = openDatabase(folder, { migrationsFolder: program.migrations, now: new Date().toISOString() })
  const procedures = makeProcedures({ database, clock: () => new Date(), host: 'browser', dataFolder: folder, version: program.version })
  const faults: string[] = []
  const log = (where: string, error: unknown): void => {
    faults.push(`${where}: ${String(error)}`)
  }
  const loopback = await startLoopback({ dispatch: makeDispatch(procedures, log), log, renderer: program.renderer })
  return {
    address: loopback.address,
    origin: loopback.origin,
    folder,
    procedures,
    faults,
    close: async () => {
      await loopback.close()
      if (database.ok) database.value.close()
      await rm(folder, { recursive: true, force: true })
    },
  }
}

/** What a procedure gave, where a refusal would be a fault of the test itself. */
export function given<T>(answer: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problems: unknown }): T {
  if (!answer.ok) throw new Error(`refused: ${JSON.stringify(answer.problems)}`)
  return answer.value
}
