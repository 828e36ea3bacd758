import { fail, type Issue, ok, type Result } from '../result/result.ts'
import { type BuildFile, FORMAT, FORMAT_VERSION } from './build.ts'
import { checkBuild } from './exchange.ts'
import type { Part, PartFile } from './part.ts'

export interface CheckedPart {
  /** as typed */
  readonly file: PartFile
  /** the same, understood */
  readonly part: Part
}

/** A build with nothing in it. */
export const EMPTY: Omit<BuildFile, 'parts'> = {
  format: FORMAT,
  version: FORMAT_VERSION,
  build: { id: 'none', name: 'None', revision: 1, units: 'inch' },
  vehicle: { id: 'none', name: 'None' },
  joints: [],
}

/**
 * Checks a value that should be one part, by the rules for a part of a build.
 *
 * @returns the part as typed and as understood, or every fault at once, each with its path in the part ("ends", 0, "connection")
 */
export function checkPart(value: unknown): Result<CheckedPart> {
  const checked = checkBuild({ ...EMPTY, parts: [value] })
  if (!checked.ok) return { ok: false, issues: checked.issues.map(inPart) }
  const [file, part] = [checked.value.file.parts[0], checked.value.build.parts[0]]
  return file && part ? ok({ file, part }) : fail()
}

/** parts[0].name is the part's name. */
const inPart = (issue: Issue): Issue => ({ ...issue, path: issue.path.slice(2) })
