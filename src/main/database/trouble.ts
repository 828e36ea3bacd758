import { type Fact, fail, type Issue, issue, type Result } from '../../shared/result/result.ts'

/**
 * What SQLite's complaints mean to the person whose disk it is. A broken constraint is not here: a checked build breaks
 * none, so that would be a fault of this program.
 */
const MEANING: readonly (readonly [sqlite: RegExp, code: string])[] = [
  [/^SQLITE_NOTADB/, 'database.not_a_database'],
  [/^SQLITE_CORRUPT/, 'database.damaged'],
  [/^SQLITE_(READONLY|PERM)|^(EACCES|EPERM|EROFS)$/, 'database.read_only'],
  [/^SQLITE_(BUSY|LOCKED|PROTOCOL)/, 'database.locked'],
  [/^SQLITE_FULL|^ENOSPC|^EDQUOT/, 'database.full'],
  [/^SQLITE_IOERR|^EIO/, 'database.disk_failed'],
  [/^SQLITE_CANTOPEN|^(ENOTDIR|EEXIST|ENOENT|ELOOP|ENAMETOOLONG|EISDIR)$/, 'database.folder_unusable'],
]

/** The issue an error of SQLite or the file system amounts to, or undefined where the fault lies with the program. */
export function troubleOf(error: unknown, facts: Readonly<Record<string, Fact>> = {}): Issue | undefined {
  // drizzle wraps what SQLite threw
  for (let e = error; e instanceof Error; e = e.cause) {
    const { code } = e as { code?: unknown }
    const found = typeof code === 'string' ? MEANING.find(([sqlite]) => sqlite.test(code)) : undefined
    if (found) return issue(found[1], [], { ...facts, says: e.message })
  }
  return undefined
}

/** Runs `work`; what the disk or the file is to blame for comes back as an issue, anything else is thrown on. */
export function guarded<T>(work: () => Result<T>, facts: Readonly<Record<string, Fact>> = {}): Result<T> {
  try {
    return work()
  } catch (error) {
    const trouble = troubleOf(error, facts)
    if (!trouble) throw error
    return fail(trouble)
  }
}
