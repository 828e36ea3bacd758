import type { BuildFile } from '../../shared/model/build.ts'
import { type CheckedBuild, checkBuild } from '../../shared/model/exchange.ts'
import { issue, type Result } from '../../shared/result/result.ts'
import { type BasedOn, troubleOf, type WritableDatabase } from '../database/index.ts'
import { type Answer, done, refuse } from './answer.ts'

/** The database as procedures use it: what the disk is to blame for becomes a refusal, whichever procedure it happens in. */
export interface Store {
  /** runs `use` on the database, or gives the reason why there is none */
  readonly use: <T>(use: (database: WritableDatabase) => Answer<T> | Promise<Answer<T>>) => Promise<Answer<T>>
  /** runs `use` on one checked build */
  readonly build: <T>(
    id: string,
    use: (checked: CheckedBuild, database: WritableDatabase) => Answer<T> | Promise<Answer<T>>,
  ) => Promise<Answer<T>>
  /** the time, ISO 8601 in UTC */
  readonly now: () => string
}

/** Makes the store of an opened database, or of the reason why there is none. */
export function makeStore(database: Result<WritableDatabase>, clock: () => Date): Store {
  const use: Store['use'] = async (work) => {
    if (!database.ok) return refuse(database.issues)
    try {
      return await work(database.value)
    } catch (error) {
      const trouble = troubleOf(error)
      if (trouble === undefined) throw error
      return refuse([trouble])
    }
  }
  return {
    use,
    build: (id, work) =>
      use((store) => {
        const file = store.loadBuild(id)
        if (file === undefined) return noBuild(id)
        const checked = checkBuild(file)
        return checked.ok ? work(checked.value, store) : refuse(checked.issues)
      }),
    now: () => clock().toISOString(),
  }
}

export const noBuild = (id: string) => refuse([issue('build.unknown', [], { id })])

/** Puts a changed file in the place of the one in the database, as the next revision. The file is checked first. */
export function writeNext(
  database: WritableDatabase,
  value: BuildFile,
  basedOn: BasedOn,
  changedAt: string,
): Answer<{ id: string; revision: number; changedAt: string }> {
  const checked = checkBuild(value)
  if (!checked.ok) return refuse(checked.issues)
  const { file } = checked.value
  const revision = basedOn.revision + 1
  const saved = database.saveBuild({ ...file, build: { ...file.build, revision } }, { replace: true, changedAt, basedOn })
  return saved.ok ? done({ id: file.build.id, revision, changedAt }) : refuse(saved.issues)
}
