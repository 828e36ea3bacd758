import type { Pair } from './pair.ts'
import { PIPE_PAIRS } from './pairs-pipes.ts'
import { PORT_PAIRS } from './pairs-ports.ts'
import { SHAPE_PAIRS } from './pairs-shapes.ts'
import { THREAD_PAIRS } from './pairs-threads.ts'

/** Pairs of ends judged by hand, from the standards and from practice; none was copied from what the program says. */
export const PAIRS: readonly Pair[] = [...THREAD_PAIRS, ...PIPE_PAIRS, ...PORT_PAIRS, ...SHAPE_PAIRS]
