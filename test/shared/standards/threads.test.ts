import { describe, expect, it } from 'vitest'
import { METRIC_THREADS } from '../../../src/shared/standards/threads/metric.ts'
import { METRIC_SPECIAL_THREADS } from '../../../src/shared/standards/threads/metric-special.ts'
import { UNIFIED_THREADS } from '../../../src/shared/standards/threads/unified.ts'
import { inches, inchStressArea, metricStressArea, rising, row } from './rows.ts'

const NUMBERED: Readonly<Record<string, number>> = { '#8': 0.164, '#10': 0.19, '#12': 0.216 }

describe('unified threads', () => {
  it.each(UNIFIED_THREADS.rows.map((each) => [each.designation, each] as const))('%s is what its name says', (designation, each) => {
    expect(designation).toBe(`${each.size}-${each.tpi}`)
    // sixteenths are exact in binary: no tolerance
    expect(each.major_in).toBe(NUMBERED[each.size] ?? inches(each.size))
    const pitch = 1 / each.tpi
    const [minor, pitchDiameter] = [each.major_in - 1.082532 * pitch, each.major_in - 0.649519 * pitch]
    expect(minor).toBeGreaterThan(0)
    expect(rising([minor, pitchDiameter, each.major_in])).toBe(true)
  })

  it('runs by diameter, then by threads per inch', () => {
    expect(rising(UNIFIED_THREADS.rows.map((each) => each.major_in * 1000 + each.tpi / 100))).toBe(true)
  })

  it('has at most one coarse, one fine and one extra-fine thread a size, in that order', () => {
    for (const size of new Set(UNIFIED_THREADS.rows.map((each) => each.size))) {
      const of = (series: string) =>
        UNIFIED_THREADS.rows.filter((each) => each.size === size && each.series === series).map((each) => each.tpi)
      const ladder = [...of('UNC'), ...of('UNF'), ...of('UNEF')]
      expect(ladder.length).toBeLessThanOrEqual(3)
      expect(rising(ladder)).toBe(true)
    }
  })

  it('gives the constant-pitch series only pitches that have a series', () => {
    for (const each of UNIFIED_THREADS.rows) if (each.series === 'UN') expect([4, 6, 8, 12, 16, 20, 28, 32]).toContain(each.tpi)
  })

  it('continues the 8, 12 and 16 series without a gap from 1-1/16 to 2 in', () => {
    for (let sixteenths = 17; sixteenths <= 32; sixteenths++) {
      const here = UNIFIED_THREADS.rows.filter((each) => each.major_in === sixteenths / 16).map((each) => each.tpi)
      for (const tpi of [8, 12, 16]) expect(here, `${sixteenths}/16 in`).toContain(tpi)
    }
  })

  it('calls 1-12 fine and 1-14 special, as ASME B1.1 does', () => {
    expect(row(UNIFIED_THREADS, '1-12').series).toBe('UNF')
    expect(row(UNIFIED_THREADS, '1-14').series).toBe('UNS')
    expect(row(UNIFIED_THREADS, '7/8-18').series).toBe('UNS')
  })

  // stress areas printed in reproductions of the UNC and UNF tables; printed to three or four figures
  it.each([
    ['5/16-24', 0.058],
    ['3/8-24', 0.0878],
    ['7/16-14', 0.1063],
    ['7/16-20', 0.1187],
    ['1/2-13', 0.1419],
    ['1/2-20', 0.1599],
    ['9/16-12', 0.182],
    ['9/16-18', 0.203],
    ['5/8-11', 0.226],
    ['5/8-18', 0.256],
    ['3/4-10', 0.334],
    ['3/4-16', 0.373],
    ['7/8-14', 0.509],
    ['1-12', 0.663],
    ['1-1/8-12', 0.856],
    ['1-1/4-12', 1.073],
  ])('%s has the stress area that is printed for it', (designation, printed) => {
    const { major_in, tpi } = row(UNIFIED_THREADS, designation)
    expect(Math.abs(inchStressArea(major_in, tpi) / printed - 1)).toBeLessThan(0.0025)
  })

  it('agrees up to 1 in with an independent copy of the coarse, fine and extra-fine series', () => {
    // size: UNC UNF UNEF, - where there is none
    const other = `#8 32 36 -, #10 24 32 -, #12 24 28 32, 1/4 20 28 32, 5/16 18 24 32, 3/8 16 24 32, 7/16 14 20 28, 1/2 13 20 28, 9/16 12 18 24,
      5/8 11 18 24, 11/16 - - 24, 3/4 10 16 20, 13/16 - - 20, 7/8 9 14 20, 15/16 - - 20, 1 8 12 20`
    const theirs = other.split(',').flatMap((line) => {
      const [size, ...tpis] = line.trim().split(/\s+/)
      return tpis.flatMap((tpi, i) => (tpi === '-' ? [] : [`${size}-${tpi} ${['UNC', 'UNF', 'UNEF'][i]}`]))
    })
    const ours = UNIFIED_THREADS.rows
      .filter((each) => each.major_in <= 1 && ['UNC', 'UNF', 'UNEF'].includes(each.series))
      .map((each) => `${each.designation} ${each.series}`)
    expect(ours.toSorted()).toEqual(theirs.toSorted())
  })
})

describe('metric threads', () => {
  it.each(METRIC_THREADS.rows.map((each) => [each.designation, each] as const))('%s is what its name says', (designation, each) => {
    expect(designation).toBe(`M${each.major_mm}x${each.pitch_mm}`)
    const [minor, pitchDiameter] = [each.major_mm - 1.082532 * each.pitch_mm, each.major_mm - 0.649519 * each.pitch_mm]
    expect(minor).toBeGreaterThan(0)
    expect(rising([minor, pitchDiameter, each.major_mm])).toBe(true)
  })

  it('runs by diameter, then from coarse to fine', () => {
    expect(rising(METRIC_THREADS.rows.map((each) => each.major_mm * 100 - each.pitch_mm))).toBe(true)
  })

  it('has at most one coarse pitch a diameter, always for the first two choices, and it is the largest', () => {
    for (const major of new Set(METRIC_THREADS.rows.map((each) => each.major_mm))) {
      const here = METRIC_THREADS.rows.filter((each) => each.major_mm === major)
      const coarse = here.filter((each) => each.series === 'coarse')
      expect(new Set(here.map((each) => each.choice)).size).toBe(1)
      if (here[0]?.choice !== 3) expect(coarse).toHaveLength(1)
      expect(coarse.length).toBeLessThanOrEqual(1)
      for (const each of coarse) expect(each).toBe(here[0])
    }
  })

  it('has coarse pitches that grow with the diameter', () => {
    const pitches = METRIC_THREADS.rows.filter((each) => each.series === 'coarse').map((each) => each.pitch_mm)
    expect(pitches).toEqual(pitches.toSorted((a, b) => a - b))
  })

  it('knows no M22x1.75: that is nearly always a 7/8-14 measured wrongly', () => {
    expect(METRIC_THREADS.rows.map((each) => each.designation)).not.toContain('M22x1.75')
    expect(METRIC_THREADS.rows.map((each) => each.designation)).not.toContain('M13x1.25')
  })

  it('keeps the sizes outside ISO 261 apart, each what its name says', () => {
    const listed = new Set(METRIC_THREADS.rows.map((each) => each.designation))
    for (const each of METRIC_SPECIAL_THREADS.rows) {
      expect(each.designation).toBe(`M${each.major_mm}x${each.pitch_mm}`)
      expect(listed).not.toContain(each.designation)
    }
    expect(METRIC_SPECIAL_THREADS.rows.map((each) => each.designation)).toEqual(['M13x1.25'])
  })

  // ISO 898-1 and ASME B1.13M stress-area tables, printed to three or four figures
  it.each([
    ['M8x1.25', 36.61],
    ['M8x1', 39.17],
    ['M10x1.5', 57.99],
    ['M10x1.25', 61.2],
    ['M12x1.75', 84.27],
    ['M12x1.25', 92.07],
    ['M14x2', 115.4],
    ['M14x1.5', 124.5],
    ['M16x2', 156.7],
    ['M16x1.5', 167.2],
    ['M18x2.5', 192],
    ['M20x2.5', 244.8],
    ['M20x1.5', 271.5],
    ['M22x2.5', 303],
    ['M24x3', 352.5],
    ['M24x2', 384.4],
    ['M27x3', 459],
    ['M30x3.5', 560.6],
    ['M30x2', 621.2],
    ['M33x3.5', 694],
  ])('%s has the stress area that is printed for it', (designation, printed) => {
    const { major_mm, pitch_mm } = row(METRIC_THREADS, designation)
    expect(Math.abs(metricStressArea(major_mm, pitch_mm) / printed - 1)).toBeLessThan(0.0025)
  })

  it('agrees with an independent copy of the fine pitches of ISO 261', () => {
    const fine: Readonly<Record<1 | 2 | 3, string>> = {
      1: `5 0.5; 6 0.75; 8 1 0.75; 10 1.25 1 0.75; 12 1.5 1.25 1; 16 1.5 1; 20 2 1.5 1; 24 2 1.5 1; 30 3 2 1.5; 36 3 2 1.5; 42 4 3 2 1.5;
        48 4 3 2 1.5; 56 4 3 2 1.5; 64 4 3 2 1.5`,
      2: '7 0.75; 14 1.5 1.25 1; 18 2 1.5 1; 22 2 1.5 1; 27 2 1.5 1; 33 3 2 1.5; 39 3 2 1.5; 45 4 3 2 1.5; 52 4 3 2 1.5; 60 4 3 2 1.5',
      3: `5.5 0.5; 9 1 0.75; 11 1 0.75; 15 1.5 1; 17 1.5 1; 25 2 1.5 1; 26 1.5; 28 2 1.5 1; 32 2 1.5; 35 1.5; 38 1.5; 40 3 2 1.5; 50 3 2 1.5;
        55 4 3 2 1.5; 58 4 3 2 1.5; 62 4 3 2 1.5`,
    }
    for (const choice of [1, 2, 3] as const) {
      const theirs = fine[choice].split(';').flatMap((line) => {
        const [major, ...pitches] = line.trim().split(/\s+/)
        return pitches.map((pitch) => `M${major}x${pitch}`)
      })
      // M30x1 is the one pitch that the copy has not: it stands in the table from memory, with a source of its own
      const ours = METRIC_THREADS.rows
        .filter((each) => each.series === 'fine' && each.choice === choice && each.designation !== 'M30x1')
        .map((each) => each.designation)
      expect(ours.toSorted()).toEqual(theirs.toSorted())
    }
  })
})
