import type { Procedures } from '../../shared/contract/contract.ts'
import { part as partShape } from '../../shared/model/part.ts'
import { type AcrossIndex, makeAcrossIndex, wayAcross } from '../../shared/planner/across/across.ts'
import { adaptersAmong } from '../../shared/planner/across/shelf.ts'
import { acrossWords } from '../../shared/report/text/across.ts'
import { showIn } from '../../shared/report/units.ts'
import type { ReadableShelf } from '../database/index.ts'
import { done, refuse } from './answer.ts'
import { readTwo } from './fit.ts'
import type { Store } from './store.ts'

/** The way across from one end to another by the adapters of the shelf. */
export function acrossProcedures(store: Store): Pick<Procedures, 'fit.across'> {
  let kept: { readonly state: string; readonly index: AcrossIndex } | undefined
  /** made anew only when the shelf has changed, since that takes as long as many answers */
  const indexOf = (shelf: ReadableShelf): AcrossIndex => {
    const state = shelf.state()
    if (kept?.state !== state) {
      // a part that the model no longer takes joins nothing; the shelf's own screen tells its faults
      const parts = shelf.all().flatMap((file) => partShape.safeParse(file).data ?? [])
      kept = { state, index: makeAcrossIndex(adaptersAmong(parts)) }
    }
    return kept.index
  }
  return {
    'fit.across': ({ a, b, units, hoseEnds, buy }) =>
      store.use(({ shelf }) => {
        const ends = readTwo(a, b)
        if (!ends.ok) return refuse(ends.issues)
        const way = wayAcross(...ends.value, indexOf(shelf), {
          ...(hoseEnds === undefined ? {} : { hoseEnds }),
          ...(buy === undefined ? {} : { buy }),
        })
        return done(acrossWords(way, showIn(units)))
      }),
  }
}
