import type { Build } from '../model/build.ts'
import type { Finding, Plan } from '../planner/plan.ts'
import type { FindingText } from './document.ts'
import { aboutText, findingWords } from './text/index.ts'
import { showIn, showNamed, type UnitSystem } from './units.ts'

/** The plan's findings in words, in the planner's order: what stops the build first. */
export function findingTexts(build: Build, plan: Plan, units: UnitSystem): FindingText[] {
  return plan.findings.map((f) => findingText(build, f, units))
}

function findingText(build: Build, finding: Finding, units: UnitSystem): FindingText {
  const { title, why, todo } = findingWords(finding, showIn(units))
  return {
    code: finding.code,
    severity: finding.severity,
    title,
    why,
    todo,
    evidence: finding.evidence.map((e) => showNamed(e.name, e.si, e.dimension, units)),
    about: finding.about,
    aboutText: aboutText(build, finding.about),
    numbers: finding.numbers,
  }
}
