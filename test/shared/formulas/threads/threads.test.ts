import { describe, expect, it } from 'vitest'
import {
  threadMinorExternal60,
  threadPitchDiameter55,
  threadPitchDiameter60,
  threadStressAreaFromDiameters,
} from '../../../../src/shared/formulas/threads/diameters.ts'
import { threadTurnsToBind } from '../../../../src/shared/formulas/threads/mismatch.ts'
import { threadStressAreaMetric } from '../../../../src/shared/formulas/threads/stress-area.ts'
import { mm } from '../../../../src/shared/quantities/make.ts'

/** Nominal sizes, mm: major diameter and pitch. G threads have 55° flanks. */
const METRIC = {
  M10x1: [10, 1],
  'M12x1.25': [12, 1.25],
  'M14x1.5': [14, 1.5],
  'M16x1.5': [16, 1.5],
  'M18x1.5': [18, 1.5],
  'M20x1.5': [20, 1.5],
}
const inch = (major: number, tpi: number): [number, number] => [major * 25.4, 25.4 / tpi]
const SIZES: Record<string, readonly number[]> = {
  ...METRIC,
  '3/8-24': inch(0.375, 24),
  '7/16-20': inch(0.4375, 20),
  '7/16-24': inch(0.4375, 24),
  '1/2-20': inch(0.5, 20),
  '9/16-18': inch(0.5625, 18),
  '5/8-18': inch(0.625, 18),
  '11/16-18': inch(0.6875, 18),
  '3/4-16': inch(0.75, 16),
  '7/8-18': inch(0.875, 18),
  'M22x1.5': [22, 1.5],
  'G1/4': [13.157, 25.4 / 19],
  'G3/8': [16.662, 25.4 / 19],
  'G1/2': [20.955, 25.4 / 14],
}
const size = (name: string) => {
  const [d = 0, P = 0] = SIZES[name] ?? []
  const known = { d: mm(d), P: mm(P) }
  const pitchDiameter = (name.startsWith('G') ? threadPitchDiameter55 : threadPitchDiameter60).compute(known)
  return { ...known, pitchDiameter }
}

describe('turns until the flanks bind', () => {
  // male in female, turns: arithmetic on nominal sizes of ASME B1.1, ISO 261 and ISO 228-1, printed to two or three figures
  it.each([
    ['M12x1.25', '1/2-20', 19.8],
    ['7/16-20', 'M12x1.25', 26],
    ['3/8-24', 'M10x1', 5.1],
    ['M14x1.5', '9/16-18', 2.2],
    ['5/8-18', 'M16x1.5', 0.4],
    ['11/16-18', 'M18x1.5', 3.1],
    ['M18x1.5', '3/4-16', 6.6],
    ['3/4-16', 'M20x1.5', 6.6],
    ['M22x1.5', '7/8-18', 1.8],
    ['G1/4', 'M14x1.5', 2.6],
    ['1/2-20', 'G1/4', 3.7],
    ['M16x1.5', 'G3/8', 2.8],
    ['G1/2', 'M22x1.5', 2.3],
  ] as const)('%s in %s: %d', (male, female, turns) => {
    const [m, f] = [size(male), size(female)]
    expect(threadTurnsToBind.compute({ d_f: f.pitchDiameter, d_m: m.pitchDiameter, P_a: m.P, P_b: f.P })).toBeCloseTo(
      turns,
      turns < 20 ? 1 : 0,
    )
  })
})

describe('stress area', () => {
  it.each(Object.keys(METRIC))('by its two forms of ISO 898-1 is the same for %s', (name) => {
    const { d, P, pitchDiameter } = size(name)
    const area = threadStressAreaFromDiameters.compute({ d_2: pitchDiameter, d_3: threadMinorExternal60.compute({ d, P }) })
    // 0.938194 is the mean of 0.649519 and 1.226869, all rounded to six figures
    expect(area / threadStressAreaMetric.compute({ d, P })).toBeCloseTo(1, 6)
  })
})
