import { basename } from 'node:path'
import type { Procedures } from '../../shared/contract/contract.ts'
import type { Result } from '../../shared/result/result.ts'
import type { WritableDatabase } from '../database/index.ts'
import { acrossProcedures } from './across.ts'
import { done, refuse, refused } from './answer.ts'
import { buildProcedures } from './builds.ts'
import { compareProcedures } from './compare.ts'
import { fitProcedures } from './fit.ts'
import { readQuantity } from './read-quantity.ts'
import { shelfProcedures } from './shelf.ts'
import { steeringProcedures } from './steering.ts'
import { makeStore } from './store.ts'
import { writeWhole } from './write-whole.ts'

export interface World {
  /** the opened database, or why there is none: the program starts all the same and says so */
  readonly database: Result<WritableDatabase>
  readonly clock: () => Date
  /** which of the two doors is asking */
  readonly host: 'window' | 'browser'
  readonly dataFolder: string
  readonly version: string
  /** asks the user where to save; gives null when the user would rather not. Absent where the page saves by itself */
  readonly saveDialog?: (suggested: string) => Promise<string | null>
}

/** The contract, carried out: gathers from the database, hands to the shared rooms, and gives back what they made. */
export function makeProcedures({ database, clock, host, dataFolder, version, saveDialog }: World): Procedures {
  const store = makeStore(database, clock)
  return {
    'program.about': async () => ({ version, host, dataFolder, database: database.ok ? done(null) : refuse(database.issues) }),

    ...buildProcedures(store, () => dayOf(clock())),
    ...compareProcedures(store),
    ...fitProcedures(store),
    ...acrossProcedures(store),
    ...shelfProcedures(store),
    ...steeringProcedures(store),

    'quantity.read': readQuantity,

    'files.save': async ({ fileName: suggested, base64 }) => {
      if (saveDialog === undefined) return refused('save.browser', 'A browser saves files by itself; the program does not do it for it.')
      const path = await saveDialog(basename(suggested))
      if (path === null) return done({ saved: false, path: null })
      const trouble = await writeWhole(path, Buffer.from(base64, 'base64'))
      return trouble === undefined ? done({ saved: true, path }) : refused('save.failed', `The file could not be saved: ${trouble}.`)
    },
  }
}

/** The day on the wall calendar where the program runs, ISO. */
function dayOf(now: Date): string {
  const two = (n: number): string => String(n).padStart(2, '0')
  return `${String(now.getFullYear()).padStart(4, '0')}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}
