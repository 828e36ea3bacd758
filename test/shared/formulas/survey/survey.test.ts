import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { mean, standardDeviation } from '../../../../src/shared/formulas/survey/statistics.ts'
import { surveyOffCentre, surveyStroke, surveyTotal, surveyTravel } from '../../../../src/shared/formulas/survey/survey.ts'
import { degrees, metres, mm } from '../../../../src/shared/quantities/make.ts'

/** Places on the tape; + 0 makes no difference of zero's sign. */
const at = fc.double({ min: -1, max: 1, noNaN: true }).map((x) => x + 0)

describe('repeated readings', () => {
  it('of nothing have no mean, and of one no spread', () => {
    expect(mean([], 'length')).toBeUndefined()
    expect(standardDeviation([], 'length')).toBeUndefined()
    expect(standardDeviation([mm(3)], 'length')).toBeUndefined()
  })

  it('that agree give that reading, to the last digit, without spread', () => {
    fc.assert(
      fc.property(at, fc.integer({ min: 2, max: 20 }), (x, n) => {
        const readings = Array.from({ length: n }, () => metres(x))
        expect(mean(readings, 'length')).toBe(x)
        expect(standardDeviation(readings, 'length')).toBe(0)
      }),
    )
  })

  it('give the textbook figures', () => {
    // 2, 4, 4, 4, 5, 5, 7, 9: mean 5, sum of squares 32, by hand
    const readings = [2, 4, 4, 4, 5, 5, 7, 9].map(mm)
    expect(mean(readings, 'length')).toBeCloseTo(0.005, 12)
    expect(standardDeviation(readings, 'length')).toBeCloseTo(Math.sqrt(32 / 7) / 1000, 12)
  })

  it('have a mean between the least and the greatest, whatever their order', () => {
    fc.assert(
      fc.property(fc.array(at, { minLength: 1, maxLength: 30 }), (xs) => {
        const m = mean(xs.map(metres), 'length') as number
        expect(m).toBeGreaterThanOrEqual(Math.min(...xs) - 1e-12)
        expect(m).toBeLessThanOrEqual(Math.max(...xs) + 1e-12)
        expect(mean(xs.toReversed().map(metres), 'length')).toBeCloseTo(m, 12)
      }),
    )
  })
})

describe('the travel survey', () => {
  it('does not depend on the datum of the tape, and its total not on the centre mark', () => {
    fc.assert(
      fc.property(
        fc.tuple(at, at, at).map((three) => three.toSorted((a, b) => a - b)),
        at,
        (marks, shift) => {
          const survey = ([l = 0, c = 0, r = 0]: readonly number[]) => {
            const travel = {
              t_L: surveyTravel.compute({ x_m: metres(l), x_c: metres(c) }),
              t_R: surveyTravel.compute({ x_m: metres(r), x_c: metres(c) }),
            }
            return { total: surveyTotal.compute(travel), off: surveyOffCentre.compute(travel) }
          }
          const one = survey(marks)
          const moved = survey(marks.map((x) => x + shift))
          expect(moved.total).toBeCloseTo(one.total, 12)
          expect(moved.off).toBeCloseTo(one.off, 12)
          expect(one.total).toBeCloseTo((marks[2] as number) - (marks[0] as number), 12)
          expect(Math.abs(one.off)).toBeLessThanOrEqual(one.total / 2 + 1e-12)
        },
      ),
    )
  })

  it('asks the whole travel of a ram in line, and less of one at an angle', () => {
    expect(surveyStroke.compute({ T: mm(200), alpha: degrees(0) })).toBe(0.2)
    expect(surveyStroke.compute({ T: mm(200), alpha: degrees(15) })).toBeLessThan(0.2)
  })
})
