import type { BuildFile } from '../../../shared/model/build.ts'
import { as, choice, day, id, list, name, nested, note, optional, quantity } from '../field.ts'
import { table } from '../table.ts'
import { listed, single, withinSingle } from './keys.ts'

export type SurveyFile = NonNullable<BuildFile['survey']>
export type ReadingFile = SurveyFile['readings'][number]
export type MadeSure = SurveyFile['madeSure'][number]
export type LimitFile = NonNullable<BuildFile['limits']>[number]

const stopper = choice('knuckle stop', 'tyre contact', 'steering box', 'chosen angle', 'ram', 'not known')

export const survey = table<SurveyFile>('survey', {
  ...single,
  fields: {
    takenOn: optional(day),
    resolution: quantity('length', { positive: true, max: 0.1 }),
    method: choice('to the stops', 'to equal angles'),
    endedBy: nested({ left: stopper, right: stopper }),
    madeSure: list(),
    readings: list(),
    ramAngle: optional(quantity('angle', { min: 0, max: 1.2 })),
    note: optional(note),
  },
})

/** What was made sure of before measuring, one word a row. */
export const surveyMadeSure = table<{ what: MadeSure }>('survey_made_sure', {
  ...withinSingle(() => survey),
  fields: {
    what: choice('on stands', 'tyres straight at centre', 'hand wheel centred', 'alignment good', 'same straight-edge seat'),
  },
})

export const reading = table<ReadingFile>('reading', {
  ...withinSingle(() => survey),
  fields: {
    mark: choice('centre', 'left', 'right'),
    at: quantity('length', { min: -10, max: 10 }),
    by: as('read_by', optional(name)),
    note: optional(note),
  },
})

export const travelLimit = table<LimitFile>('travel_limit', {
  ...listed,
  fields: {
    id,
    what: choice('knuckle stop', 'steering box', 'tyre contact', 'ram'),
    side: choice('left', 'right', 'both'),
    travel: optional(quantity('length', { positive: true, max: 2 })),
    angle: optional(quantity('angle', { positive: true, max: 1.5 })),
    gap: optional(quantity('length', { min: 0, max: 1 })),
    radius: optional(quantity('length', { positive: true, max: 2 })),
    clearance: optional(quantity('length', { min: 0, max: 0.5 })),
    uncertainty: optional(quantity('length', { min: 0, max: 0.2 })),
    note: optional(note),
  },
})
