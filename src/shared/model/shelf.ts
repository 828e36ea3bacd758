import { fail, type Issue, issue, ok, type Result } from '../result/result.ts'
import { FORMAT, FORMAT_VERSION } from './build.ts'
import { checkBuild, readBuild } from './exchange.ts'
import type { Part } from './part.ts'

/** A build with nothing in it, to check parts in. */
const EMPTY = {
  format: FORMAT,
  version: FORMAT_VERSION,
  build: { id: 'shelf', name: 'Shelf', revision: 1, units: 'inch' },
  vehicle: { id: 'none', name: 'None' },
  joints: [],
}
/** Parts are checked in builds of so many, which is fewer than a build may hold. */
const AT_A_TIME = 4000

/**
 * Reads the text of a parts shelf: a build file (its parts), or a JSON array of parts as they stand in one.
 *
 * @returns the parts, or every fault at once, each with its path: those of `readBuild`
 */
export function readShelf(text: string): Result<readonly Part[]> {
  if (!/^\uFEFF?\s*\[/.test(text)) {
    const read = readBuild(text)
    return read.ok ? ok(read.value.build.parts) : read
  }
  try {
    return checkShelf(JSON.parse(text.replace(/^\uFEFF/, '')) as readonly unknown[])
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error
    return fail(issue('file.not_json', [], { says: error.message.slice(0, 200) }))
  }
}

function checkShelf(values: readonly unknown[]): Result<readonly Part[]> {
  const issues: Issue[] = []
  const parts: Part[] = []
  for (let from = 0; from < values.length; from += AT_A_TIME) {
    const checked = checkBuild({ ...EMPTY, parts: values.slice(from, from + AT_A_TIME) })
    if (checked.ok) for (const part of checked.value.build.parts) parts.push(part)
    else for (const found of checked.issues) issues.push(inShelf(found, from))
  }
  const seen = new Set<string>()
  for (const [i, { id }] of parts.entries()) {
    if (seen.has(id) && issues.length === 0) issues.push(issue('reference.twice', [i, 'id'], { id }))
    seen.add(id)
  }
  return issues.length > 0 ? { ok: false, issues } : ok(parts)
}

/** parts[0] of a build is the shelf's part at `from`. */
const inShelf = ({ path: [, place, ...rest], ...found }: Issue, from: number): Issue => ({
  ...found,
  path: typeof place === 'number' ? [place + from, ...rest] : [],
})
