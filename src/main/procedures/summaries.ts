import type { BuildSummary } from '../../shared/contract/contract.ts'
import type { BuildFile } from '../../shared/model/build.ts'
import { checkBuild } from '../../shared/model/exchange.ts'
import { plan } from '../../shared/planner/index.ts'
import type { Plan } from '../../shared/planner/plan.ts'
import type { StoredBuild } from '../database/index.ts'

type Counts = Pick<BuildSummary, 'stops' | 'looks'>

export interface Summaries {
  /** the summary of a stored build; its file is loaded and planned only when it has changed since it was last asked for */
  of(row: StoredBuild, load: () => BuildFile | undefined): BuildSummary
  /** the same from a plan that is already made */
  from(row: StoredBuild, planned: Plan): BuildSummary
}

/** Counts each build's findings once for each change of it, so that a long list does not plan every build at every look. */
export function makeSummaries(): Summaries {
  const known = new Map<string, { readonly state: string; readonly counts: Counts }>()
  const keep = (row: StoredBuild, counts: Counts): BuildSummary => {
    known.set(row.id, { state: stateOf(row), counts })
    return summary(row, counts)
  }
  return {
    of(row, load) {
      const kept = known.get(row.id)
      return kept?.state === stateOf(row) ? summary(row, kept.counts) : keep(row, countFile(load()))
    },
    from: (row, planned) => keep(row, count(planned)),
  }
}

const stateOf = ({ revision, changedAt }: StoredBuild): string => `${revision} ${changedAt}`

const summary = ({ id, name, vehicle, revision, changedAt }: StoredBuild, counts: Counts): BuildSummary => ({
  id,
  name,
  vehicle,
  revision,
  changedAt,
  ...counts,
})

const count = ({ findings }: Plan): Counts => ({
  stops: findings.filter(({ severity }) => severity === 'stops').length,
  looks: findings.filter(({ severity }) => severity === 'look').length,
})

/** A stored build that the model no longer accepts cannot go on either: each fault counts as a stop, and opening it tells them. */
function countFile(file: BuildFile | undefined): Counts {
  if (file === undefined) return { stops: 0, looks: 0 }
  const checked = checkBuild(file)
  return checked.ok ? count(plan(checked.value.build)) : { stops: checked.issues.length, looks: 0 }
}
