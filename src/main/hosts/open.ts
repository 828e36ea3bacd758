import { homedir } from 'node:os'
import type { Result } from '../../shared/result/result.ts'
import { openDatabase } from '../database/index.ts'
import { makeProcedures, type World } from '../procedures/index.ts'
import { dataFolder } from './data-folder.ts'
import { type Dispatch, makeDispatch } from './dispatch.ts'
import { type Log, openLog } from './log.ts'
import { findProgram, type Program } from './program.ts'

/** The program behind either door, ready to be asked. */
export interface Opened {
  readonly program: Program
  readonly dispatch: Dispatch
  readonly log: Log
  /** lets go of the database; may be called twice */
  readonly close: () => void
}

const clock = (): Date => new Date()

/** Where this user's data lie on this machine. */
export const ownDataFolder = (): string => dataFolder({ platform: process.platform, env: process.env, home: homedir() })

/**
 * Opens the database and mounts the procedures. A database that cannot be opened does not keep the program from starting:
 * every command then answers with the reason.
 */
export function openProgram(own: Pick<World, 'host' | 'saveDialog'>): Opened {
  const program = findProgram()
  const folder = ownDataFolder()
  const log = openLog(folder, clock)
  const database = openDatabase(folder, { migrationsFolder: program.migrations, now: clock().toISOString() })
  const procedures = makeProcedures({ ...own, database, clock, dataFolder: folder, version: program.version })
  return { program, log, dispatch: makeDispatch(procedures, log), close: closer(database) }
}

function closer(database: Result<{ close(): void }>): () => void {
  let open = database.ok
  return () => {
    if (open && database.ok) database.value.close()
    open = false
  }
}
