import type { Build } from '../../../../src/shared/model/build.ts'
import { plan } from '../../../../src/shared/planner/index.ts'
import type { Plan } from '../../../../src/shared/planner/plan.ts'
import { built, DEMO } from '../builds.ts'

type Change = Readonly<Record<string, unknown>>

/** The demo truck with its steering's places, and with what is changed: keys of the file, of its geometry's groups, of its ram. */
export function larch(
  change: { file?: Change; geometry?: Readonly<Record<string, Change>>; ram?: Change; box?: Change } = {},
  from = DEMO.corrected,
): Build {
  const file = { ...structuredClone(from), ...change.file } as Record<string, unknown>
  const groups = { ...(file.geometry as Record<string, object>) }
  for (const [group, values] of Object.entries(change.geometry ?? {})) groups[group] = { ...groups[group], ...values }
  const parts = (file.parts as { kind: string }[]).map((p) =>
    p.kind === 'ram' ? { ...p, ...change.ram } : p.kind === 'steering box' ? { ...p, ...change.box } : p,
  )
  // what is changed to nothing is left out, as a person would leave it out
  return built(JSON.parse(JSON.stringify({ ...file, geometry: groups, parts })))
}

export const larchPlan = (change: Parameters<typeof larch>[0] = {}, from = DEMO.corrected): Plan => plan(larch(change, from))
