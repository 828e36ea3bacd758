import type { Build } from '../model/build.ts'
import type { Finding, Plan, Severity } from '../planner/plan.ts'
import type { FindingText } from './document.ts'
import { aboutText, findingWords } from './text/index.ts'
import { showIn, showNamed, type UnitSystem } from './units.ts'

const ORDER: Readonly<Record<Severity, number>> = { stops: 0, look: 1, noted: 2 }

/** The plan's findings in words, what stops the build first; the planner's order is kept within a severity. */
export function findingTexts(build: Build, plan: Plan, units: UnitSystem): FindingText[] {
  return [...plan.findings].sort((a, b) => ORDER[a.severity] - ORDER[b.severity]).map((f) => findingText(build, f, units))
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
