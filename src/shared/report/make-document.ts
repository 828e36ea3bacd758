import type { Build } from '../model/build.ts'
import type { Plan } from '../planner/plan.ts'
import type { Block, Document, NumberText, Section } from './document.ts'
import { findingTexts } from './findings.ts'
import { isHelper, numberTexts } from './numbers.ts'
import { cautionsSection, checklistSection, tasksSection } from './sections/checklist.ts'
import { lookSection, stopsSection } from './sections/findings.ts'
import { fitSection } from './sections/fit.ts'
import { forcesSection } from './sections/forces.ts'
import { alignmentSection, isAlignmentNumber, isLimitNumber, limitsSection } from './sections/limits.ts'
import { partsSection } from './sections/parts.ts'
import { flowSection, strengthSection, tighteningBlocks } from './sections/strength.ts'
import { summarySection } from './sections/summary.ts'
import { surveySection } from './sections/survey.ts'
import { torqueSection } from './sections/torque.ts'
import { isFlowNumber, isForcesNumber, isStrengthNumber } from './text/forces-labels.ts'
import { showIn, type UnitSystem } from './units.ts'
import { workingTexts } from './workings.ts'

export interface DocumentOptions {
  readonly units: UnitSystem
  /** day of printing, ISO; shared reads no clock */
  readonly printedOn: string
  /** leave out the appendix of workings and sources; for a terminal, where `formula` and the window open them one by one */
  readonly withoutWorkings?: boolean
}

/** Numbers that stand in a section of their own. */
const ELSEWHERE = [isLimitNumber, isAlignmentNumber, isForcesNumber, isStrengthNumber, isFlowNumber]

const of =
  (is: (id: string) => boolean) =>
  (n: NumberText): boolean =>
    is(n.id)

const withBlocks = (section: Section, more: readonly Block[]): Section => ({ ...section, blocks: [...section.blocks, ...more] })

/** The shop sheet of a build: everything its plan found, in the order in which the work asks for it. */
export function makeDocument(build: Build, plan: Plan, { units, printedOn, withoutWorkings = false }: DocumentOptions): Document {
  const show = showIn(units)
  const findings = findingTexts(build, plan, units)
  const numbers = numberTexts(build, plan, units).filter((n) => !isHelper(n.id))
  const ofSurvey = (n: NumberText) => n.id.startsWith('survey.')
  const subject = `${plan.build.vehicle} · ${plan.build.name} · revision ${plan.build.revision}`
  const sections: (Section | null)[] = [
    summarySection(build, plan, units, printedOn),
    stopsSection(findings),
    lookSection(findings),
    partsSection(plan),
    fitSection(build, plan, show),
    surveySection(build, plan, numbers.filter(ofSurvey), units),
    limitsSection(
      plan,
      numbers.filter((n) => isLimitNumber(n.id)),
      units,
    ),
    ramSection(numbers.filter((n) => !ofSurvey(n) && !ELSEWHERE.some((is) => is(n.id)))),
    forcesSection(plan, numbers.filter(of(isForcesNumber)), units, show),
    strengthSection(build, plan, numbers.filter(of(isStrengthNumber)), show),
    flowSection(plan, numbers.filter(of(isFlowNumber)), show),
    alignmentSection(
      plan,
      numbers.filter((n) => isAlignmentNumber(n.id)),
      units,
    ),
    withBlocks(torqueSection(plan, show), tighteningBlocks(plan, show)),
    tasksSection(build, plan),
    checklistSection(build, plan),
    cautionsSection(plan),
    withoutWorkings ? null : workingsSection(build, plan, units),
  ]
  return {
    title: `Shop sheet: ${plan.build.vehicle}, ${plan.build.name}`,
    subject,
    language: 'en',
    footer: `${stopped(plan)}${subject} · printed ${printedOn}`,
    printedOn,
    sections: sections.filter((s) => s !== null),
  }
}

/** Stands on every page, so that a loose one does not look good to go. */
function stopped(plan: Plan): string {
  const stops = plan.findings.filter((f) => f.severity === 'stops').length
  return stops === 0 ? '' : `STOPPED by ${stops} ${stops === 1 ? 'point' : 'points'} · `
}

function ramSection(items: readonly NumberText[]): Section {
  const block: Block =
    items.length > 0
      ? { kind: 'numbers', items }
      : { kind: 'paragraph', text: 'No ram, pump or hose with sizes is entered, so there is nothing to compute yet.' }
  return { id: 'ram', heading: 'Ram and fluid', blocks: [block] }
}

function workingsSection(build: Build, plan: Plan, units: UnitSystem): Section | null {
  // what only serves an uncertainty is opened on the screen; on paper it would bury the rest
  const items = workingTexts(build, plan, units).filter((w) => !isHelper(w.id))
  return items.length === 0
    ? null
    : { id: 'workings', heading: 'Workings and sources', blocks: [{ kind: 'workings', items }], startsPage: true }
}
