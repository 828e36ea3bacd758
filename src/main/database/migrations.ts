import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import * as z from 'zod'

/** One step of the schema, as drizzle-kit wrote it. */
export interface Migration {
  readonly tag: string
  /** when it was made (ms since 1970); with the hash, what tells it from all others */
  readonly madeAt: number
  readonly hash: string
  readonly statements: readonly string[]
}

const journal = z.object({ entries: z.array(z.object({ tag: z.string(), when: z.number() })) })

/**
 * The steps in a folder, oldest first. Line ends do not count, so that a checkout on Windows hashes alike.
 * Throws where the folder is not as drizzle-kit left it: then the program is not whole.
 */
export function readMigrations(folder: string): readonly Migration[] {
  const { entries } = journal.parse(JSON.parse(readFileSync(join(folder, 'meta', '_journal.json'), 'utf8')))
  return entries.map(({ tag, when }) => {
    const text = readFileSync(join(folder, `${tag}.sql`), 'utf8').replaceAll('\r\n', '\n')
    return {
      tag,
      madeAt: when,
      hash: createHash('sha256').update(text).digest('hex'),
      statements: text.split('--> statement-breakpoint').filter((s) => s.trim() !== ''),
    }
  })
}
