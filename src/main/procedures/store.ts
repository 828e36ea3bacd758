import type { BuildFile } from '../../shared/model/build.ts'
import type { Result } from '../../shared/result/result.ts'

/** One stored build, as a list shows it. */
export interface StoredRow {
  readonly id: string
  readonly name: string
  readonly vehicle: string
  readonly revision: number
  readonly changedAt: string
}

/** What the procedures ask of the database. */
export interface Store {
  listBuilds(): readonly StoredRow[]
  loadBuild(id: string): BuildFile | undefined
  saveBuild(file: BuildFile, how: { readonly replace: boolean; readonly changedAt: string }): Result<{ readonly replaced: boolean }>
}
