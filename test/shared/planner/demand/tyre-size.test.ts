import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { tyreOverallDiameter } from '../../../../src/shared/formulas/tyres/tyre.ts'
import { parseTyreSize } from '../../../../src/shared/planner/demand/tyre-size.ts'

const INCH = 0.0254

describe('a tyre size', () => {
  it.each([
    ['36x12.50R17', 36, 12.5, 17, false],
    ['37x12.50R17LT', 37, 12.5, 17, true],
    ['31x10.5 R15 LT', 31, 10.5, 15, true],
    ['31X10.50-15', 31, 10.5, 15, false],
    ['35 x 12.5 R 17', 35, 12.5, 17, false],
  ])('%s is read in inches', (typed, overall, section, rim, lightTruck) => {
    expect(parseTyreSize(typed)).toEqual({
      kind: 'inch',
      overall: expect.closeTo(overall * INCH, 12),
      section: expect.closeTo(section * INCH, 12),
      rim: expect.closeTo(rim * INCH, 12),
      lightTruck,
    })
  })

  it.each([
    ['LT315/75R16', 0.315, 0.75, 16, true, 0.8789],
    ['315/75 R 16', 0.315, 0.75, 16, false, 0.8789],
    ['LT235/85R16 120/116R', 0.235, 0.85, 16, true, 0.8059],
    ['P245/55R18', 0.245, 0.55, 18, false, 0.7267],
    ['245/55ZR18', 0.245, 0.55, 18, false, 0.7267],
  ])('%s is read in millimetres, and its overall diameter is the published one', (typed, section, aspect, rim, lightTruck, overall) => {
    const size = parseTyreSize(typed)
    expect(size).toMatchObject({ kind: 'metric', lightTruck })
    if (size?.kind !== 'metric') throw new Error('not metric')
    expect([size.section, size.aspect, size.rim]).toEqual([
      expect.closeTo(section, 12),
      expect.closeTo(aspect, 12),
      expect.closeTo(rim * INCH, 12),
    ])
    // published to a tenth of a millimetre
    expect(tyreOverallDiameter.compute({ d_r: size.rim, w: size.section, a: size.aspect })).toBeCloseTo(overall, 4)
  })

  it.each(['', '36', 'LT', '36x12.50', '12x36R17', '315/750R16', '31x10.5R40', 'big ones', '9.00-16'])('%j is not guessed at', (typed) => {
    expect(parseTyreSize(typed)).toBeUndefined()
  })

  it('never throws, and never gives a size that no tyre has', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[LTP]{0,2}\d{1,4}[x/]\d{1,4}\.?\d{0,2}R?\d{1,3}$/)), (typed) => {
        const size = parseTyreSize(typed)
        if (size?.kind === 'inch') expect(size.overall).toBeGreaterThan(size.rim)
        if (size) expect(size.section).toBeGreaterThan(0.08)
      }),
    )
  })
})
