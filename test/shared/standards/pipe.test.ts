import { describe, expect, it } from 'vitest'
import { G_R_THREADS, NPT_THREADS } from '../../../src/shared/standards/threads/pipe.ts'
import { inches, rising, row } from './rows.ts'

describe('NPT threads', () => {
  it('runs by size', () => {
    expect(rising(NPT_THREADS.rows.map((each) => inches(each.size)))).toBe(true)
    expect(rising(NPT_THREADS.rows.map((each) => each.od_in))).toBe(true)
  })

  it.each(NPT_THREADS.rows.map((each) => [each.designation, each] as const))(
    '%s follows the formulas of ASME B1.20.1',
    (designation, each) => {
      expect(designation).toBe(`${each.size}-${each.tpi} NPT`)
      // pitch diameters are printed to 1e-5 in, from a length rounded to 1e-4: within 2e-5
      expect(Math.abs(each.e0_in - (each.od_in - (0.05 * each.od_in + 1.1) / each.tpi))).toBeLessThan(2e-5)
      expect(Math.abs(each.e1_in - (each.e0_in + each.l1_in / 16))).toBeLessThan(2e-5)
      // L2 is printed to 1e-4 in
      expect(Math.abs(each.l2_in - (0.8 * each.od_in + 6.8) / each.tpi)).toBeLessThan(1.1e-4)
      expect(rising([each.e0_in, each.e1_in, each.od_in])).toBe(true)
      expect(each.l1_in).toBeLessThan(each.l2_in)
    },
  )

  it.each([
    ['1/8-27 NPT', 10.287],
    ['1/4-18 NPT', 13.716],
    ['3/8-18 NPT', 17.145],
    ['1/2-14 NPT', 21.336],
    ['3/4-14 NPT', 26.67],
    ['1-11.5 NPT', 33.401],
  ])('%s has the pipe diameter printed in millimetres', (designation, printed) => {
    expect(Math.abs(row(NPT_THREADS, designation).od_in * 25.4 - printed)).toBeLessThan(0.0006)
  })
})

describe('G and R threads', () => {
  it('runs by size', () => {
    expect(rising(G_R_THREADS.rows.map((each) => inches(each.size)))).toBe(true)
    expect(rising(G_R_THREADS.rows.map((each) => each.major_mm))).toBe(true)
  })

  it.each(G_R_THREADS.rows.map((each) => [each.size, each] as const))('%s follows the 55 degree form', (_size, each) => {
    const pitch = 25.4 / each.tpi
    // the standard takes 0.640327 of a pitch rounded to 0.001 mm: up to 0.0012 mm between the two
    expect(Math.abs(each.pitch_diameter_mm - (each.major_mm - 0.640327 * pitch))).toBeLessThan(0.0012)
    expect(Math.abs(each.minor_mm - (each.major_mm - 1.280654 * pitch))).toBeLessThan(0.0022)
    expect(rising([each.minor_mm, each.pitch_diameter_mm, each.major_mm])).toBe(true)
  })

  it('has a taper thread for every plumbing size and none for 5/8, 7/8, 1-1/8 and 1-3/4', () => {
    expect(G_R_THREADS.rows.filter((each) => !each.r_exists).map((each) => each.size)).toEqual(['5/8', '7/8', '1-1/8', '1-3/4'])
  })

  it('has the gauge lengths of ISO 7-1, a few threads of each, and none where there is no taper thread', () => {
    const lengths = Object.fromEntries(G_R_THREADS.rows.map((each) => [each.size, each.gauge_length_mm]))
    // the lengths typed a second time from the list they were read in
    const again = { '1/16': 4, '1/8': 4, '1/4': 6, '3/8': 6.4, '1/2': 8.2, '3/4': 9.5, 1: 10.4, '1-1/4': 12.7, '1-1/2': 12.7, 2: 15.9 }
    expect(lengths).toEqual({ ...again, '5/8': null, '7/8': null, '1-1/8': null, '1-3/4': null })
    for (const each of G_R_THREADS.rows) {
      if (each.gauge_length_mm === null) continue
      const turns = (each.gauge_length_mm * each.tpi) / 25.4
      expect(turns).toBeGreaterThan(4)
      expect(turns).toBeLessThan(7)
    }
  })

  it('agrees with an independent copy of the major diameters', () => {
    const other =
      '1/16 7.723, 1/8 9.728, 1/4 13.157, 3/8 16.662, 1/2 20.955, 5/8 22.911, 3/4 26.441, 7/8 30.201, 1 33.249, 1-1/8 37.897, 1-1/4 41.91, 1-1/2 47.803, 1-3/4 53.746, 2 59.614'
    expect(G_R_THREADS.rows.map((each) => `${each.size} ${each.major_mm}`).join(', ')).toBe(other)
  })
})

describe('NPT against G at the hand-tight plane', () => {
  // REFERENCE figures by arithmetic on the two tables, to 0.001 mm
  it.each([
    ['1/8', 0.342],
    ['1/4', 0.186],
    ['3/8', 0.12],
    ['1/2', -0.021],
    ['3/4', -0.162],
  ])('%s differs by %f mm on the pitch diameter', (size, printed) => {
    const npt = NPT_THREADS.rows.find((each) => each.size === size)
    expect((npt?.e1_in ?? Number.NaN) * 25.4 - row(G_R_THREADS, size).pitch_diameter_mm).toBeCloseTo(printed, 2)
  })
})
