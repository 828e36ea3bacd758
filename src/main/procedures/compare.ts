import type { Procedures } from '../../shared/contract/contract.ts'
import { checkBuild } from '../../shared/model/exchange.ts'
import { comparePlans } from '../../shared/planner/compare.ts'
import { plan } from '../../shared/planner/index.ts'
import type { Plan } from '../../shared/planner/plan.ts'
import { comparisonBlocks } from '../../shared/report/comparison.ts'
import { done, refuse } from './answer.ts'
import type { Store } from './store.ts'

const stopsIn = ({ findings }: Plan): number => findings.filter((f) => f.severity === 'stops').length

/** A change looked at before it is kept. */
export const compareProcedures = (store: Store): Pick<Procedures, 'plan.compare'> => ({
  'plan.compare': ({ id, file, units }) =>
    store.build(id, ({ build }) => {
      const changed = checkBuild(file)
      if (!changed.ok) return refuse(changed.issues)
      const [before, after] = [plan(build), plan(changed.value.build)]
      return done({
        blocks: comparisonBlocks(changed.value.build, comparePlans(before, after), units),
        stopsBefore: stopsIn(before),
        stopsAfter: stopsIn(after),
      })
    }),
})
