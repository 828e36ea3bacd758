import type { Build } from '../../model/build.ts'
import type { Plan } from '../../planner/plan.ts'
import type { Section } from '../document.ts'
import { cautionText, GENERAL_CAUTIONS, shortCaution, stepWords } from '../text/index.ts'

/** The installation step by step, each with its tick box and the cautions that belong beside it. */
export function checklistSection(build: Build, { steps }: Plan): Section {
  const heading = 'Install checklist'
  if (steps.length === 0) return { id: 'checklist', heading, blocks: [{ kind: 'paragraph', text: 'No steps follow from this build yet.' }] }
  const items = steps.map((step, i) => {
    const { text, details } = stepWords(step, build)
    return { number: String(i + 1), text, details, cautions: step.cautions.map(shortCaution) }
  })
  return { id: 'checklist', heading, blocks: [{ kind: 'checklist', items }], startsPage: true }
}

/** Every caution once: those for the whole work, then those that stand beside a step, in the order in which they are met. */
export function cautionsSection({ steps }: Plan): Section {
  const beside = steps.flatMap((s) => s.cautions).map(cautionText)
  const items = [...new Set([...GENERAL_CAUTIONS, ...beside])]
  return { id: 'cautions', heading: 'Cautions', blocks: [{ kind: 'list', items }] }
}
