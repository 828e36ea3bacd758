import * as z from 'zod'
import type { Dimension, Typed } from '../quantities/dimension.ts'
import { DIMENSIONS } from '../quantities/dimension.ts'
import { parseQuantity } from '../quantities/parse.ts'
import type { Issue } from '../result/result.ts'

/** Range of a quantity in base SI. `positive` excludes zero. */
export interface QuantityRange {
  readonly positive?: true
  readonly min?: number
  readonly max?: number
}

/** Carries one of our issues out of a zod transform; `exchange.ts` turns it back. */
export const raise = (ctx: z.RefinementCtx, issues: readonly Issue[]): typeof z.NEVER => {
  for (const { code, path, facts } of issues) {
    ctx.addIssue({ code: 'custom', message: code, path: [...path], params: { code, facts } })
  }
  return z.NEVER
}

/**
 * A quantity as a person types it, unit included; becomes what was typed beside the value in base SI.
 * Out of range raises `quantity.out_of_range`.
 */
export function quantity<D extends Dimension>(dimension: D, range: QuantityRange = {}) {
  return z
    .string()
    .transform((typed, ctx): Typed<D> => {
      const read = parseQuantity(typed, dimension)
      if (!read.ok) return raise(ctx, read.issues)
      const v = read.value.si as number
      const min = range.positive ? 0 : range.min
      const low = range.positive ? v <= 0 : range.min !== undefined && v < range.min
      if (low || (range.max !== undefined && v > range.max)) {
        return raise(ctx, [
          {
            code: 'quantity.out_of_range',
            path: [],
            facts: { typed, dimension, min: min ?? null, max: range.max ?? null, excludesMin: range.positive ?? false },
          },
        ])
      }
      return read.value
    })
    .meta({ description: `${dimension}, typed with its unit (SI: ${DIMENSIONS[dimension].unit})` })
}

/**
 * Text that comes back from a file or a database as it went in: half a surrogate pair has no UTF-8, and much of what reads
 * text stops at U+0000. Anything else raises `text.not_kept`.
 */
const kept = (text: string, ctx: z.RefinementCtx): void => {
  if (!text.isWellFormed() || text.includes('\0')) raise(ctx, [{ code: 'text.not_kept', path: [], facts: {} }])
}

/** Names a thing inside one file: lower-case letters, digits, hyphens; unique among its kind. */
export const id = z.string().regex(/^[a-z0-9][a-z0-9-]{0,63}$/)
export const name = z.string().min(1).max(200).superRefine(kept)
export const note = z.string().max(4000).superRefine(kept)
export const day = z.iso.date()
export const side = z.enum(['left', 'right'])
export const count = z.int().min(1).max(10_000)
/** A price in the build's currency, as typed: "42.50". */
export const price = z.string().regex(/^\d{1,9}(\.\d{1,2})?$/)

export type Side = z.output<typeof side>
