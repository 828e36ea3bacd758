import { parseEnd } from '../../../../src/shared/model/end/parse.ts'
import type { End, EndKind } from '../../../../src/shared/model/end/types.ts'

/** Reads an end, or fails the test with what was said against it. */
export function end<K extends EndKind>(typed: string, kind: K): Extract<End, { kind: K }> {
  const read = parseEnd(typed)
  if (!read.ok) throw new Error(`${typed}: ${JSON.stringify(read.issues)}`)
  if (read.value.kind !== kind) throw new Error(`${typed}: read as ${read.value.kind}`)
  return read.value as Extract<End, { kind: K }>
}

/** The codes of what is wrong with it; what it was read as where nothing is. */
export function trouble(typed: string): string {
  const read = parseEnd(typed)
  return read.ok ? `read as ${JSON.stringify(read.value)}` : read.issues.map((i) => i.code).join()
}
