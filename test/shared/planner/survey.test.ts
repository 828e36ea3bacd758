import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { BuildFile } from '../../../src/shared/model/build.ts'
import { asked, bare, DEMO, found, number, planOf, shown } from './builds.ts'

type Survey = NonNullable<BuildFile['survey']>
type Reading = Survey['readings'][number]

const ALL_SURE: Survey['madeSure'] = [
  'on stands',
  'tyres straight at centre',
  'hand wheel centred',
  'alignment good',
  'same straight-edge seat',
]
const survey = (readings: Readonly<Record<Reading['mark'], readonly string[]>>, more: Partial<Survey> = {}): Survey => ({
  resolution: '1/32 in',
  method: 'to the stops',
  endedBy: { left: 'knuckle stop', right: 'knuckle stop' },
  madeSure: ALL_SURE,
  ramAngle: '0°',
  readings: (['centre', 'left', 'right'] as const).flatMap((mark) => readings[mark].map((at) => ({ mark, at }))),
  ...more,
})
const planned = (s: Survey) => planOf(bare({ survey: s }))
const INCH = 0.0254

describe('the demo survey, worked by hand after JCGM 100:2008', () => {
  const demo = planOf(DEMO.bought)
  // readings in thirty-seconds of an inch, as on the tape: centre 386 386 387, left 255 256 255, right 517 516 517
  const unit = INCH / 32
  const mean = { centre: 1159 / 3, left: 766 / 3, right: 1550 / 3 }
  // each mark has two readings alike and one a division away: s² = (2 (1/3)² + (2/3)²) / 2 = 1/3, so s²/n = 1/9 (4.2.3)
  const repeat = 1 / 9
  // a reading to the nearest division lies evenly within half of one: u² = 1/12 (4.3.7)
  const resolution = 1 / 12
  const oneMark = repeat + resolution
  const U = 2 * Math.sqrt(2 * oneMark) * unit

  it('travel to each side, total, off centre', () => {
    expect(number(demo, 'survey.left').si).toBeCloseTo((mean.centre - mean.left) * unit, 12)
    expect(number(demo, 'survey.right').si).toBeCloseTo((mean.right - mean.centre) * unit, 12)
    expect(number(demo, 'survey.total').si).toBeCloseTo((mean.right - mean.left) * unit, 12)
    expect(number(demo, 'survey.off-centre').si).toBeCloseTo(((mean.right + mean.left) / 2 - mean.centre) * unit, 12)
  })

  it('expanded uncertainty, k = 2, of each', () => {
    for (const id of ['survey.left', 'survey.right', 'survey.total']) {
      expect(number(demo, id).uncertainty).toBeCloseTo(U, 12)
      expect(number(demo, `${id}.U`).si).toBeCloseTo(U, 12)
    }
    expect(number(demo, 'survey.u-resolution').si).toBeCloseTo(unit / Math.sqrt(12), 15)
  })

  it('the stroke wanted at the angle of 4°', () => {
    expect(number(demo, 'survey.stroke').si).toBeCloseTo((784 / 3) * unit * Math.cos((4 * Math.PI) / 180), 12)
  })

  it('its picture counts from the centre mark, left negative', () => {
    expect(demo.survey?.left).toBeCloseTo(-(393 / 3) * unit, 12)
    expect(demo.survey?.right).toBeCloseTo((391 / 3) * unit, 12)
    expect(demo.survey?.readings).toHaveLength(9)
  })

  it('has nothing to say against it', () => {
    expect(demo.findings.filter((f) => f.code.startsWith('survey.'))).toEqual([])
  })
})

describe('a survey that cannot be, or says too little', () => {
  it('no survey: measure, and no numbers', () => {
    const none = planOf(bare())
    expect(asked(none)).toContain('travel survey')
    expect(none.numbers).toEqual([])
    expect(none.survey).toBeNull()
  })

  it('a mark that is missing', () => {
    const two = planned(survey({ centre: ['12 in'], left: ['8 in'], right: [] }))
    expect(found(two, 'measure').map((f) => f.facts.mark)).toEqual(['right'])
    expect(two.numbers).toEqual([])
  })

  it.each([
    ['12 in', '13 in', '14 in'],
    ['12 in', '8 in', '9 in'],
    ['12 in', '12 in', '16 in'],
    ['12 in', '12 in', '12 in'],
  ])('centre %s, left %s, right %s stops the build', (centre, left, right) => {
    const wrong = planned(survey({ centre: [centre], left: [left], right: [right] }))
    const [finding] = found(wrong, 'survey.impossible_order')
    expect(finding?.severity).toBe('stops')
    expect(shown(finding, 'mark centre')).toBeCloseTo(12 * INCH, 12)
    expect(wrong.numbers).toEqual([])
    expect(wrong.survey).toBeNull()
  })

  it('read once; not made sure of; ended by nobody knows what; angle not measured', () => {
    const poor = planned({
      ...survey(
        { centre: ['12 in'], left: ['8 in', '8 in'], right: ['16 in'] },
        { madeSure: [], endedBy: { left: 'not known', right: 'ram' } },
      ),
      ramAngle: undefined as never,
    })
    expect(found(poor, 'survey.read_once')[0]?.facts.marks).toEqual(['centre', 'right'])
    expect(found(poor, 'survey.not_made_sure')[0]?.facts.left).toHaveLength(4)
    expect(asked(poor)).toEqual(expect.arrayContaining(['what stopped the wheel', 'ram angle']))
    // for a parallel ram the stroke is the travel
    expect(number(poor, 'survey.stroke').si).toBeCloseTo(8 * INCH, 12)
    // read once: only the tape's resolution is known
    expect(number(poor, 'survey.total').uncertainty).toBeCloseTo((2 * Math.SQRT2 * INCH) / 32 / Math.sqrt(12), 12)
  })

  it('equal readings have no scatter, and say so', () => {
    const sure = planned(survey({ centre: ['12 in', '12 in'], left: ['8 in', '8 in'], right: ['16 in', '16 in'] }))
    expect(number(sure, 'survey.u-repeat-left').si).toBe(0)
    expect(number(sure, 'survey.total').uncertainty).toBeCloseTo((2 * Math.SQRT2 * INCH) / 32 / Math.sqrt(12), 12)
    expect(found(sure, 'number.outside_range')).toEqual([])
  })

  it('readings of one mark that lie too far apart', () => {
    const far = planned(survey({ centre: ['12 in', '12 in'], left: ['8 in', '8 5/32 in'], right: ['16 in', '16 1/8 in'] }))
    expect(found(far, 'survey.spread').map((f) => f.facts.mark)).toEqual(['left'])
    expect(shown(found(far, 'survey.spread')[0], 'spread of the readings')).toBeCloseTo((5 / 32) * INCH, 12)
  })

  it('the one of three readings without which the others belong together; none where more than one would do', () => {
    const about = (left: readonly string[]) => {
      const far = planned(survey({ centre: ['12 in'], left: [...left], right: ['16 in'] }))
      return found(far, 'survey.spread').map((f) => f.about)
    }
    expect(about(['8 in', '8 1/2 in', '8 1/32 in'])).toEqual([['survey', 'readings', 2]])
    // one in the middle: either end explains it
    expect(about(['8 in', '8 1/8 in', '8 1/4 in'])).toEqual([['survey', 'readings']])
    expect(about(['8 in', '8 1/2 in'])).toEqual([['survey', 'readings']])
    expect(about(['8 in', '8 in', '8 in'])).toEqual([])
  })

  it('off centre by more than a twentieth of the smaller side', () => {
    const off = (right: string) => found(planned(survey({ centre: ['12 in'], left: ['8 in'], right: [right] })), 'survey.off_centre')
    expect(off('16 3/8 in')).toEqual([])
    const [finding] = off('17 in')
    expect(finding?.facts.more).toBe('right')
    expect(shown(finding, 'off centre')).toBeCloseTo(0.5 * INCH, 12)
    expect(off('15 in')[0]?.facts.more).toBe('left')
  })
})

describe('the datum', () => {
  const marks = fc.record({
    left: fc.array(fc.integer({ min: 200, max: 260 }), { minLength: 1, maxLength: 4 }),
    centre: fc.array(fc.integer({ min: 370, max: 400 }), { minLength: 1, maxLength: 4 }),
    right: fc.array(fc.integer({ min: 500, max: 560 }), { minLength: 1, maxLength: 4 }),
  })
  /** A thirty-second of an inch as a fraction that the tape shows; negative ones too. */
  const typed = (n: number) => `${n < 0 ? '-' : ''}${Math.abs(n)}/32 in`
  const at = (m: { left: number[]; centre: number[]; right: number[] }, place: (n: number) => number) =>
    planned(
      survey({
        left: m.left.map((n) => typed(place(n))),
        centre: m.centre.map((n) => typed(place(n))),
        right: m.right.map((n) => typed(place(n))),
      }),
    )

  it('does not matter, nor which way the tape runs', () => {
    fc.assert(
      fc.property(marks, fc.integer({ min: -5000, max: 5000 }), fc.boolean(), (m, shift, turned) => {
        const one = at(m, (n) => n)
        const other = at(m, (n) => (turned ? shift - n : shift + n))
        expect(other.findings.map((f) => f.code)).toEqual(one.findings.map((f) => f.code))
        expect(other.numbers.map((n) => n.id)).toEqual(one.numbers.map((n) => n.id))
        // a shift of metres costs the last bits of a travel of a decimetre
        one.numbers.forEach((n, i) => {
          expect(other.numbers[i]?.si).toBeCloseTo(n.si, 12)
          expect(other.numbers[i]?.uncertainty ?? 0).toBeCloseTo(n.uncertainty ?? 0, 12)
        })
        expect(other.survey?.left).toBeCloseTo(one.survey?.left ?? Number.NaN, 12)
        expect(other.survey?.right).toBeCloseTo(one.survey?.right ?? Number.NaN, 12)
      }),
      { numRuns: 100 },
    )
  })

  it('a change of sides changes sides and nothing else', () => {
    fc.assert(
      fc.property(marks, (m) => {
        const one = at(m, (n) => n)
        const other = at({ left: m.right, centre: m.centre, right: m.left }, (n) => n)
        expect(number(other, 'survey.left').si).toBeCloseTo(number(one, 'survey.right').si, 14)
        expect(number(other, 'survey.total').si).toBeCloseTo(number(one, 'survey.total').si, 14)
        expect(number(other, 'survey.off-centre').si).toBeCloseTo(-number(one, 'survey.off-centre').si, 14)
      }),
      { numRuns: 50 },
    )
  })
})
