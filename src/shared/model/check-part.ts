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

/**
 * Checks values that should be parts, each by itself and not against the others.
 *
 * @returns for each what {@link checkPart} gives, in a fraction of the time where they are many and most of them good
 */
export function checkParts(values: readonly unknown[]): readonly Result<CheckedPart>[] {
  const all: Result<CheckedPart>[] = []
  for (let from = 0; from < values.length; from += AT_A_TIME) {
    const some = values.slice(from, from + AT_A_TIME)
    const checked = checkBuild({ ...EMPTY, parts: some })
    const { file, build } = checked.ok ? checked.value : {}
    for (const [i, value] of some.entries()) {
      const [typed, part] = [file?.parts[i], build?.parts[i]]
      // a fault, or an id that two of them have: then each is asked by itself
      all.push(typed && part ? ok({ file: typed, part }) : checkPart(value))
    }
  }
  return all
}

const AT_A_TIME = 100

/** parts[0].name is the part's name. */
const inPart = (issue: Issue): Issue => ({ ...issue, path: issue.path.slice(2) })
