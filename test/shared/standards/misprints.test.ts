import { describe, expect, it } from 'vitest'
import { BOLT_GRADES } from '../../../src/shared/standards/bolts/grades.ts'
import { TUBE_PRESSURES } from '../../../src/shared/standards/lines/tube-pressure.ts'
import { TUBE_MATERIALS } from '../../../src/shared/standards/materials/tubes.ts'
import { G_R_THREADS, NPT_THREADS } from '../../../src/shared/standards/threads/pipe.ts'
import { UNIFIED_THREADS } from '../../../src/shared/standards/threads/unified.ts'
import { INCH_BOLT_TORQUES, METRIC_BOLT_TORQUES } from '../../../src/shared/standards/torque/bolt-torques.ts'
import { O_RING_BOSS_TORQUES } from '../../../src/shared/standards/torque/o-ring-boss.ts'
import { LOAD_INDICES } from '../../../src/shared/standards/tyres/load-index.ts'
import { inchStressArea, metricStressArea, row } from './rows.ts'

const off = (value: number, wanted: number): number => Math.abs(value / wanted - 1)

/**
 * Misprints met in copies of these tables. Each is shown to fail the formula that guards the table, and not to be in it:
 * a guard that lets the misprint through would be no guard.
 */
describe('misprints of copied tables', () => {
  it('NPT 3/8: L2 printed 0.0478 in for 0.4078', () => {
    const { od_in, tpi, l2_in } = row(NPT_THREADS, '3/8-18 NPT')
    const formula = (0.8 * od_in + 6.8) / tpi
    expect(Math.abs(0.0478 - formula)).toBeGreaterThan(0.3)
    expect(Math.abs(l2_in - formula)).toBeLessThan(1.1e-4)
    expect(l2_in).toBe(0.4078)
  })

  it('NPT 1-1/2: L1 printed 0.402 in for 0.420', () => {
    const { e0_in, e1_in, l1_in } = row(NPT_THREADS, '1-1/2-11.5 NPT')
    expect(Math.abs(e0_in + 0.402 / 16 - e1_in)).toBeGreaterThan(1e-3)
    expect(Math.abs(e0_in + l1_in / 16 - e1_in)).toBeLessThan(2e-5)
  })

  it('UNC 7/16-14: stress area printed 0.0163 in2 for 0.1063', () => {
    const { major_in, tpi } = row(UNIFIED_THREADS, '7/16-14')
    expect(off(inchStressArea(major_in, tpi), 0.0163)).toBeGreaterThan(5)
    expect(off(inchStressArea(major_in, tpi), 0.1063)).toBeLessThan(0.0025)
  })

  it('load index 62: printed 165 kg for 265', () => {
    const rule = 45 * 10 ** (62 / 80)
    expect(off(165, rule)).toBeGreaterThan(0.3)
    expect(off(row(LOAD_INDICES, 62).load_kg, rule)).toBeLessThan(0.02)
    expect(row(LOAD_INDICES, 62).load_kg).toBe(265)
    expect(LOAD_INDICES.rows.map((each) => each.load_kg)).not.toContain(165)
  })

  it('M4 10.9: ultimate load printed 91 130 N for 9130', () => {
    const load = metricStressArea(4, 0.7) * 1040
    expect(off(91_130, load)).toBeGreaterThan(8)
    expect(off(9130, load)).toBeLessThan(0.007)
  })

  it('British pipe: NPT pipe diameters printed as G diameters', () => {
    for (const [size, printed] of [
      ['1/8', 10.29],
      ['1/4', 13.72],
      ['3/8', 17.15],
    ] as const) {
      expect(Math.abs(row(G_R_THREADS, size).major_mm - printed)).toBeGreaterThan(0.4)
      const npt = NPT_THREADS.rows.find((each) => each.size === size)
      expect(Math.abs((npt?.od_in ?? Number.NaN) * 25.4 - printed)).toBeLessThan(0.006)
    }
  })

  it('tube 3/8 x 0.083 at factor 4: printed 7300 psi for 6087', () => {
    const barlow = (2 * 55_000 * 0.083) / 0.375 / 4
    expect(off(7300, barlow)).toBeGreaterThan(0.15)
    expect(off(6087, barlow)).toBeLessThan(0.001)
    expect(TUBE_PRESSURES.rows.map((each) => each.working_psi)).not.toContain(7300)
  })

  it('M16 8.8: torque printed 255 N.m in one of two sister manuals for 225', () => {
    const torque = (0.2 * 16 * 0.75 * 580 * metricStressArea(16, 2)) / 1000
    expect(off(255, torque)).toBeGreaterThan(0.1)
    expect(off(row(METRIC_BOLT_TORQUES, 'M16x2 8.8').torque_nm, torque)).toBeLessThan(0.05)
    expect(METRIC_BOLT_TORQUES.rows.map((each) => each.torque_nm)).not.toContain(255)
  })

  it('1-8 grade 5: clamp printed 33 633 lbf at 74 ksi for 38 633 at 85, the size limit including 1 in', () => {
    const { proof_ksi, to_in } = row(BOLT_GRADES, '5 to 1')
    const clamp = 0.75 * proof_ksi * 1000 * inchStressArea(1, 8)
    expect(to_in).toBe(1)
    expect(off(33_633, clamp)).toBeGreaterThan(0.1)
    expect(off(38_633, clamp)).toBeLessThan(0.003)
    expect(off(row(INCH_BOLT_TORQUES, '1-8 grade 5').clamp_lbf, clamp)).toBeLessThan(0.003)
  })
})

describe('disagreements that are kept, not averaged', () => {
  it('A513 1026 DOM yields at 70 or at 75 ksi, by the copy read', () => {
    const yields = TUBE_MATERIALS.rows
      .filter((each) => each.grade === '1026' && each.condition === 'mandrel-drawn')
      .map((each) => each.yield_ksi)
    expect(yields).toEqual([70, 75])
  })

  it('O-ring boss 7/16-20 takes 12 or 22 N.m, by the series', () => {
    expect(O_RING_BOSS_TORQUES.rows.filter((each) => each.thread === '7/16-20').map((each) => [each.series, each.torque_nm])).toEqual([
      ['low', 12],
      ['high', 22],
    ])
  })
})
