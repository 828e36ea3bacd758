import { parseEnd } from '../../shared/model/end/parse.ts'
import type { End } from '../../shared/model/end/types.ts'
import type { Result } from '../../shared/result/result.ts'

const MOST = 4096
const read = new Map<string, Result<End>>()

/** `parseEnd`, which does not read again what it has read lately: on a shelf of thousands the same few hundred ends come again and again. */
export function readEnd(typed: string): Result<End> {
  const known = read.get(typed)
  if (known) return known
  const fresh = parseEnd(typed)
  if (read.size >= MOST) read.clear()
  read.set(typed, fresh)
  return fresh
}
