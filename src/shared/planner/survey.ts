import { mean, standardDeviation } from '../formulas/survey/statistics.ts'
import { surveyOffCentre, surveyStroke, surveyTotal, surveyTravel } from '../formulas/survey/survey.ts'
import {
  surveyCombinedUncertainty,
  surveyExpandedUncertainty,
  surveyRepeatability,
  surveyResolutionUncertainty,
} from '../formulas/survey/uncertainty.ts'
import type { Build } from '../model/build.ts'
import type { Survey } from '../model/survey.ts'
import type { Length } from '../quantities/dimension.ts'
import { degrees, ratio } from '../quantities/make.ts'
import { chosen, entered, fromOrigin, type Known, type Ledger } from './ledger.ts'
import type { SurveyPicture } from './plan.ts'

type Mark = 'left' | 'centre' | 'right'
const MARKS = ['left', 'centre', 'right'] as const
/** Off-centre by more than this share of the travel a side points at something set wrong. Common practice, no published source. */
const OFF_CENTRE_SHARE = 0.05
/** Readings of one mark further apart than this many divisions do not belong together. Chosen. */
const SPREAD_IN_DIVISIONS = 4
/** What doubles may lose in a difference of readings: a limit that is just met is met, wherever the datum lies. */
const ROUNDING = 1 + 1e-9

export interface SurveyResult {
  readonly total: Known<'length'>
  readonly stroke: Known<'length'> | undefined
  /** expanded uncertainty of the total, m, k = 2 */
  readonly uncertainty: number | undefined
}

/**
 * Travel to each side, total, off-centre and the stroke wanted, with uncertainty after JCGM 100 (resolution and repeats).
 * Without all three marks, or with marks in an order that cannot be, there are findings and no numbers.
 */
export function planSurvey(build: Build, ledger: Ledger): { result: SurveyResult | null; picture: SurveyPicture | null } {
  const none = { result: null, picture: null }
  const survey = build.survey
  if (!survey) {
    ledger.measure('travel survey', ['survey'])
    return none
  }
  const readings = byMark(survey)
  const missing = MARKS.filter((m) => readings[m].length === 0)
  if (missing.length > 0) {
    for (const mark of missing) ledger.measure('survey mark', ['survey', 'readings'], { mark })
    return none
  }
  const at = Object.fromEntries(MARKS.map((m) => [m, meanOf(m, readings[m])])) as Record<Mark, Known<'length'>>
  if ((at.left.si - at.centre.si) * (at.right.si - at.centre.si) >= 0) {
    ledger.add({
      code: 'survey.impossible_order',
      severity: 'stops',
      about: ['survey', 'readings'],
      evidence: MARKS.map((m) => ({ name: `mark ${m}`, dimension: 'length', si: at[m].si })),
    })
    return none
  }
  checkCare(survey, readings, ledger)
  const result = numbers(survey, readings, at, ledger)
  return { result, picture: picture(survey, at) }
}

function byMark(survey: Survey): Record<Mark, readonly Length[]> {
  const of = (mark: Mark) => survey.readings.filter((r) => r.mark === mark).map((r) => r.at.si)
  return { left: of('left'), centre: of('centre'), right: of('right') }
}

function meanOf(mark: Mark, readings: readonly Length[]): Known<'length'> {
  return fromOrigin('length', mean(readings, 'length') as Length, { kind: 'readings', mark, statistic: 'mean' })
}

function numbers(
  survey: Survey,
  readings: Record<Mark, readonly Length[]>,
  at: Record<Mark, Known<'length'>>,
  ledger: Ledger,
): SurveyResult | null {
  const left = ledger.compute('survey.left', surveyTravel, { x_m: at.left, x_c: at.centre })
  const right = ledger.compute('survey.right', surveyTravel, { x_m: at.right, x_c: at.centre })
  const total = left && right && ledger.compute('survey.total', surveyTotal, { t_L: left, t_R: right })
  if (!left || !right || !total) return null
  const offCentre = ledger.compute('survey.off-centre', surveyOffCentre, { t_L: left, t_R: right })

  const resolution = ledger.compute('survey.u-resolution', surveyResolutionUncertainty, {
    r: entered('length', survey.resolution, ['survey', 'resolution']) as Known<'length'>,
  })
  const u = Object.fromEntries(MARKS.map((m) => [m, markUncertainty(m, readings[m], resolution, ledger)])) as Record<
    Mark,
    Known<'length'> | undefined
  >
  const expanded = (id: string, a: Known<'length'> | undefined, b: Known<'length'> | undefined): Known<'length'> | undefined => {
    const combined = a && b && ledger.compute(`${id}.u`, surveyCombinedUncertainty, { u_1: a, u_2: b })
    const wide = combined && ledger.compute(`${id}.U`, surveyExpandedUncertainty, { k: chosen('ratio', ratio(2), 'coverage'), u: combined })
    if (wide) ledger.setUncertainty(id, wide.si)
    return wide
  }
  expanded('survey.left', u.left, u.centre)
  expanded('survey.right', u.right, u.centre)
  const wide = expanded('survey.total', u.left, u.right)

  const angle = entered('angle', survey.ramAngle, ['survey', 'ramAngle'])
  if (!angle) ledger.measure('ram angle', ['survey', 'ramAngle'])
  const stroke = ledger.compute('survey.stroke', surveyStroke, { T: total, alpha: angle ?? chosen('angle', degrees(0), 'ram parallel') })
  if (offCentre) checkCentre(left.si, right.si, offCentre.si, ledger)
  return { total, stroke, uncertainty: wide?.si }
}

function markUncertainty(
  mark: Mark,
  readings: readonly Length[],
  resolution: Known<'length'> | undefined,
  ledger: Ledger,
): Known<'length'> | undefined {
  const s = standardDeviation(readings, 'length')
  if (s === undefined || !resolution) return resolution
  const repeat = ledger.compute(`survey.u-repeat-${mark}`, surveyRepeatability, {
    s: fromOrigin('length', s, { kind: 'readings', mark, statistic: 'standard deviation' }),
    n: fromOrigin('ratio', ratio(readings.length), { kind: 'readings', mark, statistic: 'count' }),
  })
  return repeat && ledger.compute(`survey.u-${mark}`, surveyCombinedUncertainty, { u_1: resolution, u_2: repeat })
}

/** What was not made sure of, marks read once only, and readings of one mark too far apart to be of one mark. */
function checkCare(survey: Survey, readings: Record<Mark, readonly Length[]>, ledger: Ledger): void {
  const wanted = ['on stands', 'tyres straight at centre', 'hand wheel centred', 'same straight-edge seat'] as const
  const left = wanted.filter((w) => !survey.madeSure.includes(w))
  if (left.length > 0) ledger.add({ code: 'survey.not_made_sure', severity: 'look', about: ['survey', 'madeSure'], facts: { left } })
  const once = MARKS.filter((m) => readings[m].length === 1)
  if (once.length > 0) ledger.add({ code: 'survey.read_once', severity: 'look', about: ['survey', 'readings'], facts: { marks: once } })
  for (const side of ['left', 'right'] as const) {
    if (survey.endedBy[side] === 'not known') ledger.measure('what stopped the wheel', ['survey', 'endedBy', side], { side })
  }
  for (const mark of MARKS) {
    const values = readings[mark]
    const spread = Math.max(...values) - Math.min(...values)
    const most = SPREAD_IN_DIVISIONS * survey.resolution.si * ROUNDING
    if (spread > most) {
      const apart = readingApart(survey, mark, most)
      ledger.add({
        code: 'survey.spread',
        severity: 'look',
        about: apart === undefined ? ['survey', 'readings'] : ['survey', 'readings', apart],
        facts: { mark },
        evidence: [
          ...(apart === undefined
            ? []
            : [{ name: 'the reading that lies apart', dimension: 'length' as const, si: survey.readings[apart]?.at.si ?? 0 }]),
          { name: 'spread of the readings', dimension: 'length', si: spread },
          { name: 'smallest division', dimension: 'length', si: survey.resolution.si },
        ],
      })
    }
  }
}

/** Place of the one reading of a mark without which the others belong together; undefined where no single one explains it. */
function readingApart(survey: Survey, mark: Mark, most: number): number | undefined {
  const own = survey.readings.flatMap((r, i) => (r.mark === mark ? [{ i, at: r.at.si }] : []))
  if (own.length < 3) return undefined
  const explains = own.filter(({ i }) => {
    const others = own.filter((r) => r.i !== i).map((r) => r.at)
    return Math.max(...others) - Math.min(...others) <= most
  })
  return explains.length === 1 ? explains[0]?.i : undefined
}

function checkCentre(left: number, right: number, offCentre: number, ledger: Ledger): void {
  if (Math.abs(offCentre) <= OFF_CENTRE_SHARE * Math.min(left, right) * ROUNDING) return
  ledger.add({
    code: 'survey.off_centre',
    severity: 'look',
    about: ['survey'],
    facts: { more: offCentre > 0 ? 'right' : 'left' },
    evidence: [
      { name: 'travel left', dimension: 'length', si: left },
      { name: 'travel right', dimension: 'length', si: right },
      { name: 'off centre', dimension: 'length', si: Math.abs(offCentre) },
    ],
    numbers: ['survey.left', 'survey.right', 'survey.off-centre'],
  })
}

/** Readings counted from the centre mark with the left mark on the left, whichever way the tape ran. */
function picture(survey: Survey, at: Record<Mark, Known<'length'>>): SurveyPicture {
  const way = at.right.si > at.left.si ? 1 : -1
  const place = (x: number) => (x - at.centre.si) * way
  return {
    left: place(at.left.si),
    right: place(at.right.si),
    readings: survey.readings.map((r) => ({ mark: r.mark, at: place(r.at.si) })),
  }
}
