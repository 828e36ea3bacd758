import * as z from 'zod'
import { DIMENSIONS, type Dimension } from '../quantities/dimension.ts'
import { refusable } from './shapes.ts'

const dimension = z.enum(Object.keys(DIMENSIONS) as [Dimension, ...Dimension[]])

/** A quantity typed with its unit. */
export const QUANTITIES = {
  /** the quantity as it is understood, printed in the units of both systems, or why it is not understood */
  'quantity.read': {
    input: z.strictObject({ typed: z.string().max(80), dimension }),
    output: refusable(z.strictObject({ inch: z.string(), metric: z.string() })),
  },
} as const
