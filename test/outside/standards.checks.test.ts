import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { describe, expect, it } from 'vitest'
import { BOLT_GRADES } from '../../src/shared/standards/bolts/grades.ts'
import { PROOF_LOADS } from '../../src/shared/standards/bolts/proof-loads.ts'
import { VISCOSITY_GRADES } from '../../src/shared/standards/fluids/viscosity.ts'
import { TUBE_PRESSURES } from '../../src/shared/standards/lines/tube-pressure.ts'
import { FREE_PLAY_LIMITS } from '../../src/shared/standards/steering/free-play.ts'
import { TAPERS } from '../../src/shared/standards/tapers.ts'
import { METRIC_THREADS, type MetricThreadRow } from '../../src/shared/standards/threads/metric.ts'
import { G_R_THREADS, NPT_THREADS } from '../../src/shared/standards/threads/pipe.ts'
import { UNIFIED_THREADS, type UnifiedThreadRow } from '../../src/shared/standards/threads/unified.ts'
import { INCH_BOLT_TORQUES, METRIC_BOLT_TORQUES } from '../../src/shared/standards/torque/bolt-torques.ts'
import { FLARE_37_TORQUES } from '../../src/shared/standards/torque/flare-37.ts'
import { METRIC_STUD_TORQUES } from '../../src/shared/standards/torque/metric-studs.ts'
import { O_RING_BOSS_TORQUES } from '../../src/shared/standards/torque/o-ring-boss.ts'
import { LOAD_INDICES } from '../../src/shared/standards/tyres/load-index.ts'
import { inchStressArea, metricStressArea, row } from '../shared/standards/rows.ts'

interface Check {
  readonly id: string
  readonly topic: string
  readonly inputs: Readonly<Record<string, { readonly value: number | string } | undefined>>
  readonly expected: { readonly value: number | string }
  readonly tolerance: { readonly type: string; readonly value: number }
  readonly source: string
  readonly formula?: string
}

const checks: readonly Check[] = JSON.parse(readFileSync(resolve(import.meta.dirname, 'checks.json'), 'utf8'))
const CHECKS = new Map(checks.map((check) => [check.id, check]))

const input = (check: Check, name: string): number => {
  const value = check.inputs[name]?.value
  if (typeof value !== 'number') throw new Error(`${check.id} has no number ${name}`)
  return value
}

const metric = (d: number, p: number): MetricThreadRow => row(METRIC_THREADS, `M${d}x${p}`)
const unified = (d: number, n: number): UnifiedThreadRow => {
  const found = UNIFIED_THREADS.rows.find((each) => each.major_in === d && each.tpi === n)
  if (found === undefined) throw new Error(`no unified thread ${d} in, ${n} tpi`)
  return found
}
const metricOf = (check: Check): MetricThreadRow => metric(input(check, 'd'), input(check, 'P'))
const unifiedOf = (check: Check): UnifiedThreadRow => unified(input(check, 'D'), input(check, 'n'))
const nptBy = (key: 'od_in' | 'e0_in', value: number) => {
  const found = NPT_THREADS.rows.find((each) => each[key] === value)
  if (found === undefined) throw new Error(`no NPT thread with ${key} ${value}`)
  return found
}
const proofLoad = (key: string) => row(PROOF_LOADS, key).proof_n
const pitchOf = (thread: string): number => {
  if (thread.startsWith('M')) return row(METRIC_THREADS, thread).pitch_mm
  if (thread.startsWith('G')) return 25.4 / row(G_R_THREADS, thread.slice(1)).tpi
  return 25.4 / row(UNIFIED_THREADS, thread).tpi
}
const mismatch = (a: string, b: string): number => (10 / pitchOf(a)) * Math.abs(pitchOf(a) - pitchOf(b))
const tubePressure = (size: string) => row(TUBE_PRESSURES, size).working_psi
const proofPsi = (key: string) => row(BOLT_GRADES, key).proof_ksi * 1000

/** What the tables say to each check: the row itself, or arithmetic on the row where the check is about arithmetic. */
const ANSWERS: Readonly<Record<string, (check: Check) => number>> = {
  ...Object.fromEntries(
    ['TM01', 'TM02', 'TM03', 'TM05', 'TM07', 'TM08', 'TM10', 'TM13', 'TM15', 'TM20', 'TM21', 'TM22', 'TM23'].map((id) => [
      id,
      (check: Check) => metricStressArea(metricOf(check).major_mm, metricOf(check).pitch_mm),
    ]),
  ),
  ...Object.fromEntries(
    ['TI01', 'TI02', 'TI03', 'TI05', 'TI07', 'TI09', 'TI10', 'TI12', 'TI13'].map((id) => [
      id,
      (check: Check) => inchStressArea(unifiedOf(check).major_in, unifiedOf(check).tpi),
    ]),
  ),
  TP01: (check) => unifiedOf(check).major_in - 0.649519 / unifiedOf(check).tpi,
  TP02: (check) => metricOf(check).major_mm - 0.649519 * metricOf(check).pitch_mm,
  TP03: (check) => metricOf(check).major_mm - 1.082532 * metricOf(check).pitch_mm,
  PN02: (check) => nptBy('od_in', input(check, 'OD')).e0_in,
  PN03: (check) => nptBy('od_in', input(check, 'OD')).e0_in,
  PN04: (check) => nptBy('od_in', input(check, 'OD')).e0_in,
  PN11: (check) => nptBy('e0_in', input(check, 'E0')).e1_in,
  PB02: () => row(G_R_THREADS, '1/4').pitch_diameter_mm,
  PB03: () => row(G_R_THREADS, '3/8').pitch_diameter_mm,
  PB11: () => pitchOf('G1/4'),
  PB12: () => pitchOf('G1/2'),
  PB22: () => row(NPT_THREADS, '1/2-14 NPT').od_in * 25.4,
  LK01: () => mismatch('1/2-20', 'M12x1.25'),
  LK03: () => mismatch('9/16-18', 'M14x1.5'),
  LK04: () => mismatch('7/8-14', 'M22x1.5'),
  LK06: () => mismatch('11/16-18', 'M18x1.5'),
  LK07: () => mismatch('G3/8', 'M16x1.5'),
  LK10: () => mismatch('1-1/16-12', 'M27x2'),
  LK11: () => mismatch('3/8-24', 'M10x1'),
  FT01: () => row(O_RING_BOSS_TORQUES, '7/16-20 low').torque_nm,
  FT04: () => row(O_RING_BOSS_TORQUES, '7/8-14 low').torque_nm,
  FT12: () => row(O_RING_BOSS_TORQUES, '9/16-18 high').torque_nm,
  FT13: () => row(O_RING_BOSS_TORQUES, '3/4-16 high').torque_nm,
  FT14: () => row(O_RING_BOSS_TORQUES, '7/8-14 high').torque_nm,
  FT21: () => row(FLARE_37_TORQUES, '-4 engine').torque_nm,
  FT22: () => row(FLARE_37_TORQUES, '-6 engine').torque_nm,
  FT23: () => row(FLARE_37_TORQUES, '-8 engine').torque_nm,
  FT32: () => row(METRIC_STUD_TORQUES, 'M12x1.5 light').torque_nm,
  FT36: () => row(METRIC_STUD_TORQUES, 'M22x1.5 light').torque_nm,
  TA03: () => row(TAPERS, '1:10').included_angle_deg,
  TA07: (check) => 1 / (TAPERS.rows.find((each) => each.in_per_ft === input(check, 'tpf'))?.ratio ?? Number.NaN),
  BP01: () => proofLoad('M12x1.75 8.8'),
  BP03: () => proofLoad('M18x2.5 8.8'),
  BP05: () => proofLoad('M10x1.5 10.9'),
  BP08: () => proofLoad('M12x1.75 12.9'),
  BP09: () => proofLoad('M16x2 12.9'),
  BF01: () => row(INCH_BOLT_TORQUES, '1/2-13 grade 5').clamp_lbf,
  BF02: () => row(INCH_BOLT_TORQUES, '5/8-11 grade 5').clamp_lbf,
  BF03: () => row(INCH_BOLT_TORQUES, '3/4-10 grade 5').clamp_lbf,
  BF04: () => row(INCH_BOLT_TORQUES, '5/8-11 grade 8').clamp_lbf,
  BF05: () => row(INCH_BOLT_TORQUES, '1/2-20 grade 5').clamp_lbf,
  BF08: () => 0.75 * proofPsi('5 to 1') * inchStressArea(1, row(UNIFIED_THREADS, '1-8').tpi),
  BT01: () => row(INCH_BOLT_TORQUES, '1/2-13 grade 5').torque_lbf_ft,
  BT02: () => row(INCH_BOLT_TORQUES, '5/8-11 grade 5').torque_lbf_ft,
  BT04: () => row(INCH_BOLT_TORQUES, '5/8-11 grade 8').torque_lbf_ft,
  BT06: () => row(INCH_BOLT_TORQUES, '5/8-18 grade 8').torque_lbf_ft,
  BT07: () => row(INCH_BOLT_TORQUES, '3/4-16 grade 8').torque_lbf_ft,
  BT08: () => row(INCH_BOLT_TORQUES, '1-8 grade 5').torque_lbf_ft,
  BM02: () => row(METRIC_BOLT_TORQUES, 'M10x1.5 8.8').torque_nm,
  BM03: () => row(METRIC_BOLT_TORQUES, 'M12x1.75 8.8').torque_nm,
  BM04: () => row(METRIC_BOLT_TORQUES, 'M20x2.5 8.8').torque_nm,
  VG02: () => row(VISCOSITY_GRADES, 'VG 32').max_cst,
  VG03: () => row(VISCOSITY_GRADES, 'VG 46').min_cst,
  VG04: () => row(VISCOSITY_GRADES, 'VG 46').max_cst,
  VG05: () => row(VISCOSITY_GRADES, 'VG 68').min_cst,
  VG06: () => row(VISCOSITY_GRADES, 'VG 68').max_cst,
  BW01: () => tubePressure('3/8x0.035'),
  BW03: () => tubePressure('1/2x0.049'),
  BW05: () => tubePressure('3/4x0.065'),
  SG22: (check) => row(FREE_PLAY_LIMITS, input(check, 'D')).lash_in,
  TY10: (check) => row(LOAD_INDICES, input(check, 'LI')).load_kg,
  TY12: (check) => row(LOAD_INDICES, input(check, 'LI')).load_kg,
  TY15: (check) => row(LOAD_INDICES, input(check, 'LI')).load_kg,
  TY16: (check) => row(LOAD_INDICES, input(check, 'LI')).load_kg,
}

describe('the tables answer the outside checks', () => {
  it.each(Object.entries(ANSWERS))('%s', (id, answer) => {
    const check = CHECKS.get(id)
    if (check === undefined) throw new Error(`no check ${id}`)
    expect(typeof check.expected.value).toBe('number')
    const wanted = Number(check.expected.value)
    const slack = check.tolerance.type === 'rel' ? Math.abs(wanted) * check.tolerance.value : check.tolerance.value
    const found = answer(check)
    expect(Math.abs(found - wanted), `${check.topic}; ${check.source}: ${found} against ${wanted}`).toBeLessThanOrEqual(slack)
  })

  it('leaves no look-up unanswered', () => {
    const lookups = [...CHECKS.values()].filter((check) => check.formula === 'lookup').map((check) => check.id)
    expect(lookups.length).toBeGreaterThan(0)
    for (const id of lookups) expect(Object.keys(ANSWERS)).toContain(id)
  })
})
