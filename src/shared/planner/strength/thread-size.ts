import { threadStressAreaInch, threadStressAreaMetric } from '../../formulas/threads/stress-area.ts'
import { parseEnd } from '../../model/end/parse.ts'
import type { Thread } from '../../model/end/types.ts'
import { si } from '../../quantities/dimension.ts'
import { fromOrigin, type Known, type Ledger } from '../ledger.ts'
import type { Origin } from '../plan.ts'

/** A bolt's thread as the trade writes it: "1/2-13", "M12x1.75"; undefined for anything that is no straight 60° thread. */
export function boltThread(typed: string): Thread | undefined {
  const read = parseEnd(typed)
  return read.ok && read.value.kind === 'thread' && read.value.thread.flankAngle === 60 && !read.value.thread.tapered
    ? read.value.thread
    : undefined
}

/** Diameter and stress area of a thread, which `origin` names. */
export function threadSizes(
  id: string,
  thread: Thread,
  origin: Origin,
  ledger: Ledger,
): { readonly d: Known<'length'>; readonly P: Known<'length'>; readonly A_t: Known<'area'> | undefined } {
  const d = fromOrigin('length', thread.major, origin)
  const P = fromOrigin('length', thread.pitch, origin)
  const A_t =
    thread.family === 'metric'
      ? ledger.compute(`${id}.via-stress-area`, threadStressAreaMetric, { d, P })
      : ledger.compute(`${id}.via-stress-area`, threadStressAreaInch, {
          D: d,
          n: fromOrigin('curvature', si(1 / thread.pitch, 'curvature'), origin),
        })
  return { d, P, A_t }
}
