import bought from '../../../src/main/procedures/demo/bought.json' with { type: 'json' }
import corrected from '../../../src/main/procedures/demo/corrected.json' with { type: 'json' }
import type { Build, BuildFile } from '../../../src/shared/model/build.ts'
import { checkBuild } from '../../../src/shared/model/exchange.ts'
import { plan } from '../../../src/shared/planner/index.ts'
import type { Finding, Plan, PlanNumber } from '../../../src/shared/planner/plan.ts'

export const DEMO = { bought, corrected } as unknown as Readonly<Record<'bought' | 'corrected', BuildFile>>

/** The model of a file, or a failed test with what is wrong with it. */
export function built(file: unknown): Build {
  const read = checkBuild(file)
  if (!read.ok) throw new Error(JSON.stringify(read.issues))
  return read.value.build
}

type Part = BuildFile['parts'][number]

/** A build of nothing but what is given. */
export const bare = (more: Partial<BuildFile> = {}): BuildFile => ({
  format: 'steerwright build',
  version: 1,
  build: { id: 'b', name: 'B', revision: 1, units: 'inch' },
  vehicle: { id: 'v', name: 'V' },
  parts: [],
  joints: [],
  ...more,
})

/** A part of the kind with its ends, each written "name: connection". */
export const part = (kind: Part['kind'], id: string, ends: readonly string[] = [], more: Readonly<Record<string, unknown>> = {}): Part =>
  ({
    kind,
    id,
    name: id,
    state: 'here',
    ends: ends.map((e) => {
      const at = e.indexOf(': ')
      return { name: e.slice(0, at), connection: e.slice(at + 2) }
    }),
    ...more,
  }) as Part

export const planOf = (file: unknown): Plan => plan(built(file))

export const found = (planned: Plan, code: string): readonly Finding[] => planned.findings.filter((f) => f.code === code)
export const number = (planned: Plan, id: string): PlanNumber => {
  const all = planned.numbers.filter((n) => n.id === id)
  if (all.length !== 1) throw new Error(`${all.length} numbers ${id}; there are ${planned.numbers.map((n) => n.id).join(', ')}`)
  return all[0] as PlanNumber
}
export const asked = (planned: Plan): string[] => found(planned, 'measure').map((f) => String(f.facts.what))

/** Evidence of a finding by name, base SI. */
export const shown = (finding: Finding | undefined, name: string): number =>
  finding?.evidence.find((e) => e.name === name)?.si ?? Number.NaN

export function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null) {
    Object.freeze(value)
    for (const inner of Object.values(value)) frozen(inner)
  }
  return value
}
