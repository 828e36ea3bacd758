import type { Build } from '../../model/build.ts'
import type { Plan, Step } from '../../planner/plan.ts'
import type { ChecklistItem, Section } from '../document.ts'
import { cautionText, GENERAL_CAUTIONS, shortCaution, stepWords } from '../text/index.ts'

/** The installation step by step, each with its tick box and the cautions that belong beside it. */
export function checklistSection(build: Build, { steps }: Plan): Section {
  const heading = 'Install checklist'
  const usual = steps.filter((step) => step.typed === undefined)
  if (usual.length === 0) return { id: 'checklist', heading, blocks: [{ kind: 'paragraph', text: 'No steps follow from this build yet.' }] }
  return { id: 'checklist', heading, blocks: [{ kind: 'checklist', items: itemsOf(build, usual) }], startsPage: true }
}

/** The user's own tasks in an order that keeps to what comes after what; null where there are none. */
export function tasksSection(build: Build, { steps }: Plan): Section | null {
  const own = steps.filter((step) => step.typed !== undefined)
  if (own.length === 0) return null
  return {
    id: 'tasks',
    heading: 'Your own tasks',
    blocks: [
      {
        kind: 'paragraph',
        text: 'In an order that keeps to what you said comes after what. The checklist below says how each piece of the work is done.',
      },
      { kind: 'checklist', items: itemsOf(build, own) },
    ],
  }
}

const itemsOf = (build: Build, steps: readonly Step[]): ChecklistItem[] =>
  steps.map((step, i) => ({ number: String(i + 1), ...stepWords(step, build), cautions: step.cautions.map(shortCaution) }))

/** Every caution once: those for the whole work, then those that stand beside a step, in the order in which they are met. */
export function cautionsSection({ steps }: Plan): Section {
  const beside = steps.flatMap((s) => s.cautions).map(cautionText)
  const items = [...new Set([...GENERAL_CAUTIONS, ...beside])]
  return { id: 'cautions', heading: 'Cautions', blocks: [{ kind: 'list', items }] }
}
