import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { onTestFinished } from 'vitest'
import { type Database, openDatabase } from '../../../src/main/database/index.ts'
import { makeDispatch } from '../../../src/main/hosts/dispatch.ts'
import { makeProcedures } from '../../../src/main/procedures/index.ts'
import type { Procedures } from '../../../src/shared/contract/contract.ts'

const migrationsFolder = resolve(import.meta.dirname, '../../../migrations')

/** A real database in a folder of its own; both go when the test ends. */
export function openedDatabase(): Database {
  const folder = mkdtempSync(join(tmpdir(), 'steerwright-'))
  const opened = openDatabase(folder, { migrationsFolder, now: '2030-01-01T00:00:00.000Z' })
  onTestFinished(() => {
    if (opened.ok) opened.value.close()
    rmSync(folder, { recursive: true })
  })
  if (!opened.ok) throw new Error(JSON.stringify(opened.issues))
  return opened.value
}

/** The procedures behind the same check of the contract that both doors use, so that an output out of form fails a test. */
export function proceduresOn(database: Database): Procedures {
  let ticks = 0
  const made = makeProcedures({
    database: { ok: true, value: database },
    clock: () => new Date(2030, 1, 3, 12, 0, ticks++),
    host: 'browser',
    dataFolder: 'nowhere',
    version: '1.2.3',
  })
  const dispatch = makeDispatch(made, (_where, error) => {
    throw error
  })
  const checked = Object.keys(made).map((name) => [name, async (input: unknown) => (await dispatch(name, input)).body])
  return Object.fromEntries(checked) as Procedures
}

/** The value of an answer that went well. */
export function got<T>(answer: { ok: true; value: T } | { ok: false; problems: unknown }): T {
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems))
  return answer.value
}

/** The codes and places of a refusal. */
export function problems(answer: { ok: boolean; problems?: readonly { code: string; place: string }[] }): readonly string[] {
  return (answer.problems ?? []).map(({ code, place }) => (place === '' ? code : `${place}: ${code}`))
}
