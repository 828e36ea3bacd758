import { describe, expect, it } from 'vitest'
import { BOLT_GRADES } from '../../../src/shared/standards/bolts/grades.ts'
import { PROPERTY_CLASSES } from '../../../src/shared/standards/bolts/property-classes.ts'
import { DASH_PORTS } from '../../../src/shared/standards/ports/dash.ts'
import { METRIC_THREADS } from '../../../src/shared/standards/threads/metric.ts'
import { UNIFIED_THREADS } from '../../../src/shared/standards/threads/unified.ts'
import { INCH_BOLT_TORQUES, METRIC_BOLT_TORQUES } from '../../../src/shared/standards/torque/bolt-torques.ts'
import { FACE_SEAL_TORQUES } from '../../../src/shared/standards/torque/face-seal.ts'
import { FLARE_37_TORQUES } from '../../../src/shared/standards/torque/flare-37.ts'
import { METRIC_STUD_TORQUES } from '../../../src/shared/standards/torque/metric-studs.ts'
import { NUT_FACTORS } from '../../../src/shared/standards/torque/nut-factors.ts'
import { O_RING_BOSS_TORQUES } from '../../../src/shared/standards/torque/o-ring-boss.ts'
import { inchStressArea, metricStressArea, NM_PER_LBF_FT, rising, row } from './rows.ts'

describe('fitting torques', () => {
  it.each([...O_RING_BOSS_TORQUES.rows, ...FLARE_37_TORQUES.rows].map((each) => [each.id, each] as const))(
    '%s: the two units agree',
    (_id, each) => {
      // each figure is rounded on its own: half a lbf·ft is 0.68 N·m, half a N·m comes on top; the 5/16-24 high and the large sizes
      // are rounded to 5 lbf·ft (3.4 N·m)
      const coarse = each.torque_nm >= 100 ? 2.5 * NM_PER_LBF_FT : 0.5 * NM_PER_LBF_FT
      expect(Math.abs(each.torque_nm - each.torque_lbf_ft * NM_PER_LBF_FT)).toBeLessThanOrEqual(coarse + 0.5)
    },
  )

  it.each(['low', 'high'] as const)('O-ring boss torque grows with the thread in the %s series', (series) => {
    const rows = O_RING_BOSS_TORQUES.rows.filter((each) => each.series === series)
    expect(rising(rows.map((each) => each.torque_nm))).toBe(true)
    expect(rising(rows.map((each) => row(UNIFIED_THREADS, each.thread).major_in))).toBe(true)
  })

  it('the high series lies above the low one for every thread they share', () => {
    for (const low of O_RING_BOSS_TORQUES.rows.filter((each) => each.series === 'low')) {
      const ratio = row(O_RING_BOSS_TORQUES, `${low.thread} high`).torque_nm / low.torque_nm
      expect(ratio).toBeGreaterThanOrEqual(1.5)
      expect(ratio).toBeLessThan(2.4)
    }
  })

  it('37° flare rows carry the thread of their dash', () => {
    for (const each of FLARE_37_TORQUES.rows) expect(row(DASH_PORTS, each.dash).flare_37).toBe(each.thread)
    for (const source of ['engine-manual', 'windrower-manual']) {
      expect(rising(FLARE_37_TORQUES.rows.filter((each) => each.source === source).map((each) => each.torque_nm))).toBe(true)
    }
  })

  it('face-seal rows carry the thread of their dash, and bands do not overlap', () => {
    for (const each of FACE_SEAL_TORQUES.rows) expect(row(DASH_PORTS, each.dash).face_seal).toBe(each.thread)
    expect(rising(FACE_SEAL_TORQUES.rows.flatMap((each) => [each.min_nm, each.max_nm]))).toBe(true)
  })

  it('metric stud torque grows with the thread, and aluminium takes less than steel', () => {
    for (const port of ['steel', 'steel or grey iron', 'aluminium']) {
      const rows = METRIC_STUD_TORQUES.rows.filter((each) => each.port === port)
      expect(rising(rows.map((each) => each.torque_nm))).toBe(true)
      expect(rising(rows.map((each) => row(METRIC_THREADS, each.thread).major_mm))).toBe(true)
    }
    for (const aluminium of METRIC_STUD_TORQUES.rows.filter((each) => each.port === 'aluminium')) {
      expect(aluminium.torque_nm).toBeLessThan(row(METRIC_STUD_TORQUES, `${aluminium.thread} plug steel`).torque_nm)
    }
  })
})

describe('bolt torques', () => {
  const proofPsi = (grade: string, diameter: number): number => {
    const found = BOLT_GRADES.rows.find((each) => each.grade === grade && diameter > each.over_in && diameter <= each.to_in)
    return (found?.proof_ksi ?? Number.NaN) * 1000
  }

  it.each(INCH_BOLT_TORQUES.rows.map((each) => [each.id, each] as const))(
    '%s: clamp is three quarters of proof, torque is 0.2 d F',
    (_id, each) => {
      const { major_in, tpi } = row(UNIFIED_THREADS, each.thread)
      // the sources take the stress area rounded to three figures: within 0.3 %
      expect(Math.abs((0.75 * proofPsi(each.grade, major_in) * inchStressArea(major_in, tpi)) / each.clamp_lbf - 1)).toBeLessThan(0.003)
      // torque is printed to three figures and the 1/2 to 9/16 rows to whole lbf·ft: within 0.6 %
      expect(Math.abs((0.2 * major_in * each.clamp_lbf) / 12 / each.torque_lbf_ft - 1)).toBeLessThan(0.006)
    },
  )

  it.each(METRIC_BOLT_TORQUES.rows.map((each) => [each.id, each] as const))(
    '%s is near 0.2 d F at three quarters of proof',
    (_id, each) => {
      const { major_mm, pitch_mm } = row(METRIC_THREADS, each.thread)
      const strength = PROPERTY_CLASSES.rows.find(
        (one) => one.property_class === each.property_class && major_mm > one.over_mm && major_mm <= one.to_mm,
      )
      const torque = (0.2 * major_mm * 0.75 * (strength?.proof_mpa ?? Number.NaN) * metricStressArea(major_mm, pitch_mm)) / 1000
      // printed to two or three figures from a slightly different proof stress: within 5 % (M8 10.9 is 4.05 % off)
      expect(Math.abs(torque / each.torque_nm - 1)).toBeLessThan(0.05)
    },
  )

  it('the two conventions of K are kept apart and differ by half for plain bolts', () => {
    expect(row(NUT_FACTORS, 'plain, textbook').k / row(NUT_FACTORS, 'plain, industry').k).toBeCloseTo(1.5, 12)
    for (const each of NUT_FACTORS.rows) expect(each.id).toBe(`${each.condition}, ${each.convention}`)
  })
})
