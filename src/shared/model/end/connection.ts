import * as z from 'zod'
import { raise } from '../fields.ts'
import { readEnd } from './read.ts'
import type { Connection } from './types.ts'

/** An end as the trade writes it, typed on one line; becomes what was typed beside what it means. */
export const connection = z
  .string()
  .max(160)
  .transform((typed, ctx): Connection => {
    const read = readEnd(typed)
    return read.ok ? { typed, end: read.value } : raise(ctx, read.issues)
  })
  .meta({
    description: 'an end as the trade writes it',
    examples: ['7/8-18 LH female', '-6 37° flare male', 'taper 1.5 in/ft stud, large 0.70 in', 'clamp 1 1/4 in'],
  })
