import type { BuildFile } from '../../../shared/model/build.ts'

export type SurveyFile = NonNullable<BuildFile['survey']>
export type Reading = SurveyFile['readings'][number]
export type Mark = Reading['mark']
export type Sure = SurveyFile['madeSure'][number]
export type Stopper = SurveyFile['endedBy']['left']

/** The survey as it is filled in: all that can be said, some of it not said yet. */
export interface SurveyForm {
  readonly takenOn: string
  readonly madeSure: readonly Sure[]
  readonly method: SurveyFile['method'] | null
  readonly resolution: string
  readonly readings: readonly Reading[]
  readonly endedBy: { readonly left: Stopper; readonly right: Stopper }
  readonly ramAngle: string
  readonly note: string
}

export const SURE: readonly { readonly key: Sure; readonly text: string; readonly how: string }[] = [
  { key: 'on stands', text: 'Axle on stands', how: 'not on a jack; wheels off the ground' },
  { key: 'tyres straight at centre', text: 'Tyres straight at the centre mark', how: 'sighted along both, or by string' },
  { key: 'hand wheel centred', text: 'Hand wheel centred', how: 'as many turns to either side' },
  { key: 'alignment good', text: 'Alignment good', how: 'toe as it shall stay' },
  { key: 'same straight-edge seat', text: 'Straight edge in one seat', how: 'the same place on the axle for every mark' },
]

export const METHODS: readonly { readonly key: SurveyFile['method']; readonly text: string; readonly how: string }[] = [
  { key: 'to the stops', text: 'To the stops', how: 'The wheels are turned each way until the stops on the knuckles touch.' },
  {
    key: 'to equal angles',
    text: 'To equal angles',
    how: 'The wheels are turned equally far each way, short of where tyre or spring touch: the middle of the tyre sighted against the same place of the body on each side.',
  },
]

/** The smallest divisions of usual tapes. */
export const DIVISIONS = ['1/16 in', '1/32 in', '1/64 in', '1 mm', '0.5 mm'] as const

/** In the order in which the tape is read. */
export const MARKS: readonly { readonly key: Mark; readonly name: string; readonly how: string }[] = [
  { key: 'centre', name: 'Centre', how: 'Wheels straight. Straight edge in its seat, mark the tie rod, read the tape at the mark.' },
  { key: 'left', name: 'Full left', how: 'Wheels fully left. Same seat, mark the tie rod, read the tape from the same datum.' },
  { key: 'right', name: 'Full right', how: 'Wheels fully right. Same seat, mark the tie rod, read the tape from the same datum.' },
]

/** How often a mark is best read. */
export const OFTEN = 3

export const STEPS = ['sure', 'method', 'tape', 'centre', 'left', 'right', 'ends', 'angle', 'note', 'result'] as const
export type StepId = (typeof STEPS)[number]

export const STEP_NAME: Readonly<Record<StepId, string>> = {
  sure: 'Made sure of',
  method: 'How it is measured',
  tape: 'The tape',
  centre: 'Centre mark',
  left: 'Full left',
  right: 'Full right',
  ends: 'What ended each side',
  angle: 'Angle of the ram',
  note: 'Day and note',
  result: 'Result',
}

export const formOf = (survey: SurveyFile | undefined): SurveyForm => ({
  takenOn: survey?.takenOn ?? '',
  madeSure: survey?.madeSure ?? [],
  method: survey?.method ?? null,
  resolution: survey?.resolution ?? '',
  readings: (survey?.readings ?? []).map(({ mark, at, by, note }) => ({
    mark,
    at,
    ...(by === undefined ? {} : { by }),
    ...(note === undefined ? {} : { note }),
  })),
  endedBy: { left: survey?.endedBy.left ?? 'not known', right: survey?.endedBy.right ?? 'not known' },
  ramAngle: survey?.ramAngle ?? '',
  note: survey?.note ?? '',
})

/** All that a survey says, to the letter, whatever the order of its keys. */
export const sayingOf = (survey: SurveyFile | undefined): string => JSON.stringify(formOf(survey))

/** The survey as a file holds it; null until method and tape are said, without which there is none. */
export function surveyOf(form: SurveyForm): SurveyFile | null {
  if (form.method === null || form.resolution === '') return null
  return {
    ...(form.takenOn === '' ? {} : { takenOn: form.takenOn }),
    resolution: form.resolution,
    method: form.method,
    endedBy: form.endedBy,
    madeSure: [...form.madeSure],
    readings: [...form.readings],
    ...(form.ramAngle === '' ? {} : { ramAngle: form.ramAngle }),
    ...(form.note === '' ? {} : { note: form.note }),
  }
}

/** Whether a step has been filled in. */
export function isDone(step: StepId, form: SurveyForm): boolean {
  switch (step) {
    case 'sure':
      return form.madeSure.length === SURE.length
    case 'method':
      return form.method !== null
    case 'tape':
      return form.resolution !== ''
    case 'ends':
      return form.endedBy.left !== 'not known' && form.endedBy.right !== 'not known'
    case 'angle':
      return form.ramAngle !== ''
    case 'note':
      return form.takenOn !== '' || form.note !== ''
    case 'result':
      return false
    default:
      return form.readings.some((reading) => reading.mark === step)
  }
}

/** A number that comes without a unit gets the one chosen; whatever has one keeps it. */
export const withUnit = (typed: string, unit: string): string => {
  const text = typed.trim().replace(/\s+/g, ' ')
  return /[\d¼½¾⅐-⅞.]$/.test(text) ? `${text}${unit === '°' ? '' : ' '}${unit}` : text
}
