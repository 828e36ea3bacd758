import type { Build } from '../model/build.ts'
import type { TorqueRecord, TorqueSpec } from '../model/records.ts'
import type { Ledger } from './ledger.ts'
import type { JointVerdict, TorqueLine } from './plan.ts'

/** Kinds of joint that are tightened to something. */
const TIGHTENED: readonly string[] = ['threads', 'ports', 'tapers', 'cylinders']

/** Every torque that the build names, with the last record of each; findings for values missing, joints without one, records out of tolerance. */
export function planTorques(build: Build, joints: readonly JointVerdict[], ledger: Ledger): readonly TorqueLine[] {
  const specs = build.torqueSpecs ?? []
  const withSpec = new Set(specs.flatMap((s) => s.joints ?? []))
  const without = joints.flatMap(({ joint, verdict }, i) =>
    TIGHTENED.includes(verdict.rule) && !withSpec.has(joint) ? [build.joints[i]?.name ?? joint] : [],
  )
  if (without.length > 0)
    ledger.add({ code: 'torque.none_for_joint', severity: 'noted', about: ['torqueSpecs'], facts: { joints: without } })
  const records = Map.groupBy(build.torqueRecords ?? [], (r) => r.spec)
  return specs.map((spec, i) => {
    if (!spec.value && !spec.angle) ledger.measure('torque', ['torqueSpecs', i, 'value'], { spec: spec.what })
    return line(spec, i, lastRecord(records.get(spec.id) ?? []), ledger)
  })
}

/**
 * The newest record of a spec that no other one of it corrects. Where records correct each other in a circle none stands before
 * the others, and the newest counts.
 */
function lastRecord(records: readonly TorqueRecord[]): TorqueRecord | undefined {
  const corrected = new Set(records.flatMap((r) => (r.corrects === undefined || r.corrects === r.id ? [] : [r.corrects])))
  const standing = records.filter((r) => !corrected.has(r.id))
  return [...(standing.length > 0 ? standing : records)].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0)).at(-1)
}

function line(spec: TorqueSpec, i: number, record: TorqueRecord | undefined, ledger: Ledger): TorqueLine {
  const within = record && spec.value && spec.tolerance ? Math.abs(record.value.si - spec.value.si) <= spec.tolerance.si * (1 + 1e-9) : null
  if (record && within === false) {
    ledger.add({
      code: 'torque.out_of_tolerance',
      severity: 'stops',
      about: ['torqueSpecs', i],
      facts: { what: spec.what, on: record.on },
      evidence: [
        { name: 'torque applied', dimension: 'torque', si: record.value.si },
        { name: 'torque wanted', dimension: 'torque', si: spec.value?.si ?? 0 },
        { name: 'tolerance', dimension: 'torque', si: spec.tolerance?.si ?? 0 },
      ],
    })
  }
  return {
    spec: spec.id,
    joints: spec.joints ?? [],
    what: spec.what,
    value: spec.value?.si ?? null,
    tolerance: spec.tolerance?.si ?? null,
    angle: spec.angle?.si ?? null,
    typedValue: spec.value?.typed ?? null,
    typedTolerance: spec.tolerance?.typed ?? null,
    from: spec.from,
    source: spec.source ?? null,
    recheckAfter: spec.recheckAfter ?? null,
    lastRecord: record ? { on: record.on, value: record.value.si, within } : null,
  }
}
