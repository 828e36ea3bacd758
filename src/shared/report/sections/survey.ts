import type { Build } from '../../model/build.ts'
import type { WheelStopper } from '../../model/survey.ts'
import type { Plan } from '../../planner/plan.ts'
import { capital, column, text } from '../cells.ts'
import type { Block, NumberText, Section } from '../document.ts'
import { surveyDrawing } from '../survey-drawing.ts'
import type { UnitSystem } from '../units.ts'

/** The travel survey: the marks to scale, what follows from them, and every reading as it was taken. */
export function surveySection(build: Build, plan: Plan, numbers: readonly NumberText[], units: UnitSystem): Section {
  const blocks: Block[] = []
  const { survey } = build
  if (plan.survey) {
    const drawing = surveyDrawing(plan.survey, units)
    blocks.push({
      kind: 'figure',
      drawing,
      caption: 'Marks on the tie rod, seen from above: C wheels straight ahead, L full left, R full right.',
    })
  }
  if (numbers.length > 0) blocks.push({ kind: 'numbers', items: numbers })
  if (!survey) {
    blocks.push({ kind: 'paragraph', text: 'No travel survey has been entered. Measure lock to lock before a ram is chosen.' })
    return { id: 'survey', heading: 'Travel survey', blocks }
  }
  blocks.push({
    kind: 'paragraph',
    text:
      `Read to ${survey.resolution.typed}, ${survey.method}${survey.takenOn === undefined ? '' : `, on ${survey.takenOn}`}. ` +
      `On the left ${endedBy(survey.endedBy.left)}; on the right ${endedBy(survey.endedBy.right)}.`,
  })
  if (survey.readings.length > 0) {
    blocks.push({
      kind: 'table',
      caption: 'Readings as taken',
      columns: [column('Mark', 1), column('Reading', 1.2, 'right'), column('By', 1), column('Note', 3)],
      rows: survey.readings.map((r) => [text(capital(r.mark)), text(r.at.typed), text(r.by ?? '–'), text(r.note ?? '–')]),
    })
  }
  return { id: 'survey', heading: 'Travel survey', blocks }
}

const endedBy = (what: WheelStopper): string =>
  what === 'not known' ? 'nobody noted what ended the travel' : `the travel was ended by ${what === 'tyre contact' ? what : `the ${what}`}`
