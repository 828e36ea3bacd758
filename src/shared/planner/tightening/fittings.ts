import type { PortEnd } from '../../model/end/types.ts'
import { FACE_SEAL_TORQUES } from '../../standards/torque/face-seal.ts'
import { FLARE_37_TORQUES } from '../../standards/torque/flare-37.ts'
import { METRIC_STUD_TORQUES } from '../../standards/torque/metric-studs.ts'
import { O_RING_BOSS_TORQUES } from '../../standards/torque/o-ring-boss.ts'
import type { TorqueValue } from '../forces-types.ts'

/** Every published torque of a fitting: both series where there are two, neither a mean of the other. Empty: none is known here. */
export function fittingTorques({ family, size, thread }: PortEnd): readonly TorqueValue[] {
  const value = (table: string, row: string, nm: number, minus = 0, plus = minus): TorqueValue => ({
    low: nm - minus,
    high: nm + plus,
    from: { table, row },
  })
  switch (family) {
    case 'o-ring boss':
      return O_RING_BOSS_TORQUES.rows
        .filter((r) => r.thread === thread.designation)
        .map((r) => value('o-ring-boss-torques', r.id, r.torque_nm, r.tolerance_nm ?? 0))
    case 'flare 37':
      return FLARE_37_TORQUES.rows
        .filter((r) => r.dash === size)
        .map((r) => value('flare-37-torques', r.id, r.torque_nm, r.tolerance_nm ?? 0))
    case 'face seal':
      return FACE_SEAL_TORQUES.rows
        .filter((r) => r.dash === size)
        .map((r) => ({ low: r.min_nm, high: r.max_nm, from: { table: 'face-seal-torques', row: r.dash } }))
    case 'iso 6149':
      return METRIC_STUD_TORQUES.rows
        .filter((r) => r.thread === thread.designation)
        .map((r) => value('metric-stud-torques', r.id, r.torque_nm, 0, (r.torque_nm * (r.plus_percent ?? 0)) / 100))
    default:
      return []
  }
}
