import { fail, issue, type Result } from '../../result/result.ts'
import type { End } from './types.ts'

export function parseEnd(typed: string): Result<End> {
  return fail(issue('end.not_understood', [], { typed }))
}
