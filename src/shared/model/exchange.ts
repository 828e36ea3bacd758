import * as z from 'zod'
import { type Fact, fail, type Issue, issue, ok, type Result } from '../result/result.ts'
import { type Build, type BuildFile, buildFile, FORMAT, FORMAT_VERSION } from './build.ts'
import { referenceIssues } from './references.ts'

const LARGEST_FILE = 20_000_000

export interface CheckedBuild {
  /** the file as typed, key by key */
  readonly file: BuildFile
  /** the same, understood */
  readonly build: Build
}

/**
 * Reads the text of an exchange file.
 *
 * @returns the file and its model, or every fault at once, each with its path: `file.too_large`, `file.not_json`, and
 *   those of {@link checkBuild}
 */
export function readBuild(text: string): Result<CheckedBuild> {
  if (text.length > LARGEST_FILE) return fail(issue('file.too_large', [], { length: text.length, largest: LARGEST_FILE }))
  let value: unknown
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    return fail(issue('file.not_json', [], { says: error instanceof Error ? error.message.slice(0, 200) : '' }))
  }
  return checkBuild(value)
}

/**
 * Checks a value that should be an exchange file.
 *
 * @returns the file and its model, or every fault at once: `file.not_an_object`, `file.other_format`, `file.newer`,
 *   `file.unknown_key`, `file.missing`, `file.wrong_type`, `file.not_allowed`, `quantity.*`, `end.*`, `reference.*`
 */
export function checkBuild(value: unknown): Result<CheckedBuild> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return fail(issue('file.not_an_object'))
  const raw = value as Record<string, unknown>
  const checked = buildFile.safeParse(value, { reportInput: true })
  const issues = [
    ...formatIssues(raw),
    ...(checked.success ? [] : kindFirst(checked.error.issues).flatMap(fromZod)),
    ...referenceIssues(raw),
  ]
  // not spread into fail(): a hostile file has more faults than a call takes arguments
  if (issues.length > 0 || !checked.success) return { ok: false, issues }
  return ok({ file: value as BuildFile, build: checked.data })
}

/** The exchange file as text: two spaces, keys in the order of the schema, a newline at the end. */
export function writeBuild(file: BuildFile): string {
  return `${JSON.stringify(file, null, 2)}\n`
}

/** JSON Schema (draft 2020-12) of the exchange file. */
export function buildFileJsonSchema(): object {
  return { $id: 'steerwright-build-1', title: 'Steerwright build, version 1', ...z.toJSONSchema(buildFile, { io: 'input' }) }
}

/** What is wrong with the two keys that say what file this is; zod's own words on them are left out below. */
function formatIssues({ format, version }: Record<string, unknown>): Issue[] {
  const issues: Issue[] = []
  if (format === undefined) issues.push(issue('file.missing', ['format'], { expected: FORMAT }))
  else if (format !== FORMAT) issues.push(issue('file.other_format', ['format'], { found: short(format), known: FORMAT }))
  if (version === undefined) issues.push(issue('file.missing', ['version'], { expected: FORMAT_VERSION }))
  else if (typeof version === 'number' && version > FORMAT_VERSION) {
    issues.push(issue('file.newer', ['version'], { found: version, known: FORMAT_VERSION }))
  } else if (version !== FORMAT_VERSION) issues.push(issue('file.not_allowed', ['version'], { allowed: [String(FORMAT_VERSION)] }))
  return issues
}

/** One of zod's issues in our own words: code, path, facts. */
function fromZod(found: z.core.$ZodIssue): Issue[] {
  const path = found.path.map((p) => (typeof p === 'symbol' ? String(p) : p))
  if (path.length === 1 && (path[0] === 'format' || path[0] === 'version')) return []
  if (found.code !== 'custom' && found.code !== 'unrecognized_keys' && found.input === undefined) {
    return [
      issue('file.missing', path, {
        expected: found.code === 'invalid_type' ? found.expected : found.code === 'invalid_value' ? found.values.join(', ') : 'value',
      }),
    ]
  }
  switch (found.code) {
    case 'custom': {
      const params = found.params as { code?: string; facts?: Record<string, Fact> } | undefined
      return [issue(params?.code ?? 'file.not_allowed', path, params?.facts ?? {})]
    }
    case 'unrecognized_keys':
      return found.keys.map((key) => issue('file.unknown_key', [...path, key], { key }))
    case 'invalid_type':
      return [issue('file.wrong_type', path, { expected: found.expected })]
    case 'invalid_value':
      return [issue('file.not_allowed', path, { found: short(found.input), allowed: found.values.map(String) })]
    case 'invalid_union':
      return [wrongChoice(found, path)]
    case 'invalid_format':
      return [issue('file.wrong_form', path, { found: short(found.input), form: found.format, pattern: found.pattern ?? null })]
    case 'too_small':
      return [issue('file.too_small', path, { limit: Number(found.minimum), of: found.origin })]
    case 'too_big':
      return [issue('file.too_big', path, { limit: Number(found.maximum), of: found.origin })]
    default:
      return [issue('file.not_allowed', path, { found: short(found.input) })]
  }
}

/** An empty list where a text belongs is of the wrong kind, and not a text too short as well. */
function kindFirst(issues: readonly z.core.$ZodIssue[]): readonly z.core.$ZodIssue[] {
  return issues.filter((found, i) => {
    const before = issues[i - 1]
    return !(before?.code === 'invalid_type' && found.code.startsWith('too_') && String(before.path) === String(found.path))
  })
}

/** A key that decides what the rest should be, such as a part's kind: zod's path names the key and its input is the whole. */
function wrongChoice(found: z.core.$ZodIssueInvalidUnion, path: readonly (string | number)[]): Issue {
  const allowed = ('options' in found ? (found.options as readonly unknown[]) : []).map(String)
  const key = path.at(-1)
  const said = key === undefined ? undefined : (found.input as Record<string | number, unknown>)[key]
  return said === undefined
    ? issue('file.missing', path, { expected: allowed.join(', ') })
    : issue('file.not_allowed', path, { found: short(said), allowed })
}

function short(value: unknown): string {
  return typeof value === 'string' ? value.slice(0, 60) : typeof value
}
