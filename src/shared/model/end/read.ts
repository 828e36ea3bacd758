import type { Result } from '../../result/result.ts'
import { parseEnd } from './parse.ts'
import type { End } from './types.ts'

const MOST = 4096
const read = new Map<string, Result<End>>()

/**
 * `parseEnd`, which does not read again what it has read lately: in a build as on a shelf of thousands the same few hundred ends
 * come again and again. What it gives is the same object each time, and nobody's to change.
 */
export function readEnd(typed: string): Result<End> {
  const known = read.get(typed)
  if (known) return known
  const fresh = parseEnd(typed)
  if (read.size >= MOST) read.clear()
  read.set(typed, fresh)
  return fresh
}
