import * as z from 'zod'
import { buildJson, id, refusable, units } from './shapes.ts'

const blocks = z.custom<readonly import('../report/document.ts').Block[]>(Array.isArray)

/** A change looked at before it is kept. */
export const COMPARE = {
  /**
   * What a changed file, saved nowhere, would change in the plan of the stored build `id`: before and after side by side, and how
   * many findings stop the build without and with the change. Nothing is stored. A faulty file is refused with every fault.
   */
  'plan.compare': {
    input: z.strictObject({ id, file: buildJson, units }),
    output: refusable(z.strictObject({ blocks, stopsBefore: z.int(), stopsAfter: z.int() })),
  },
} as const
