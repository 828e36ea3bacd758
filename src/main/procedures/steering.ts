import type { Procedures } from '../../shared/contract/contract.ts'
import { plan } from '../../shared/planner/index.ts'
import { done } from './answer.ts'
import type { Store } from './store.ts'

/** The steering of a build as plain numbers. */
export const steeringProcedures = (store: Store): Pick<Procedures, 'plan.steering'> => ({
  'plan.steering': ({ id }) =>
    store.build(id, ({ build }) => {
      const { linkage, limits, bumpSteer } = plan(build)
      return done({ revision: build.build.revision, linkage, limits, bumpSteer })
    }),
})
