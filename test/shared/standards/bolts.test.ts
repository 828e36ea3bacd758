import { describe, expect, it } from 'vitest'
import { BOLT_GRADES } from '../../../src/shared/standards/bolts/grades.ts'
import { PROOF_LOADS } from '../../../src/shared/standards/bolts/proof-loads.ts'
import { PROPERTY_CLASSES } from '../../../src/shared/standards/bolts/property-classes.ts'
import { METRIC_THREADS } from '../../../src/shared/standards/threads/metric.ts'
import { metricStressArea, rising, row } from './rows.ts'

describe('strength of bolts', () => {
  it('proof < yield < tensile in every class and grade', () => {
    for (const each of PROPERTY_CLASSES.rows) expect(rising([each.proof_mpa, each.yield_mpa, each.tensile_mpa])).toBe(true)
    for (const each of BOLT_GRADES.rows) expect(rising([each.proof_ksi, each.yield_ksi, each.tensile_ksi])).toBe(true)
  })

  it('a class covers its sizes once, without a gap', () => {
    for (const name of new Set(PROPERTY_CLASSES.rows.map((each) => each.property_class))) {
      const rows = PROPERTY_CLASSES.rows.filter((each) => each.property_class === name)
      expect(rows[0]?.over_mm).toBe(0)
      for (const [i, each] of rows.entries()) if (i > 0) expect(each.over_mm).toBe(rows[i - 1]?.to_mm)
    }
  })

  it('grade 5 holds 85 ksi up to and including 1 in', () => {
    expect(row(BOLT_GRADES, '5 to 1')).toMatchObject({ to_in: 1, proof_ksi: 85 })
    expect(row(BOLT_GRADES, '5 over 1')).toMatchObject({ over_in: 1, proof_ksi: 74 })
  })
})

describe('proof loads', () => {
  it.each(PROOF_LOADS.rows.map((each) => [each.id, each] as const))('%s is stress times area', (_id, each) => {
    const { major_mm, pitch_mm, series } = row(METRIC_THREADS, each.thread)
    expect(series).toBe('coarse')
    const strength = PROPERTY_CLASSES.rows.find(
      (one) => one.property_class === each.property_class && major_mm > one.over_mm && major_mm <= one.to_mm,
    )
    const area = metricStressArea(major_mm, pitch_mm)
    // the standard rounds area and load to three figures each: within 0.7 %
    expect(Math.abs(area / each.stress_area_mm2 - 1)).toBeLessThan(0.007)
    expect(Math.abs((area * (strength?.proof_mpa ?? Number.NaN)) / each.proof_n - 1)).toBeLessThan(0.007)
    expect(Math.abs((area * (strength?.tensile_mpa ?? Number.NaN)) / each.ultimate_n - 1)).toBeLessThan(0.007)
  })
})
