import type { FindingText, NumberText, Section, State } from '../../shared/report/document.ts'

/** Worst first: what a section's mark shows when it holds several. */
const WORST_FIRST: readonly State[] = ['stops', 'unknown', 'look', 'noted', 'good']

/** Which places of the build file a section deals with, so that a finding shows beside the section it is about. */
const DEALS_WITH: Readonly<Record<string, readonly string[]>> = {
  parts: ['parts'],
  fit: ['joints', 'parts'],
  survey: ['survey', 'limits', 'axle'],
  ram: ['vehicle', 'axle'],
  torque: ['torqueSpecs', 'torqueRecords'],
}

/** Ids of the numbers that a section lists. */
const listed = (section: Section): readonly string[] =>
  section.blocks.flatMap((block) => (block.kind === 'numbers' ? block.items.map((item) => item.id) : []))

/** The numbers that the report lists anywhere but in the section shown, so that none stands on the screen twice. */
export function numbersBeside(shown: Section, sections: readonly Section[], numbers: readonly NumberText[]): readonly NumberText[] {
  const wanted = new Set(sections.flatMap(listed))
  for (const id of listed(shown)) wanted.delete(id)
  return numbers.filter((number) => wanted.has(number.id))
}

function statesOf(section: Section): State[] {
  return section.blocks.flatMap((block): State[] => {
    if (block.kind === 'findings') return block.items.map((item) => item.severity)
    if (block.kind === 'table') return block.rows.flatMap((row) => row.flatMap((cell) => (cell.kind === 'state' ? [cell.state] : [])))
    return []
  })
}

const many = (count: number, one: string, more: string): string => `${count} ${count === 1 ? one : more}`

function contents(section: Section): string {
  for (const block of section.blocks) {
    if (block.kind === 'checklist') return many(block.items.length, 'step', 'steps')
    if (block.kind === 'table') return many(block.rows.length, 'line', 'lines')
    if (block.kind === 'workings') return many(block.items.length, 'working', 'workings')
    if (block.kind === 'numbers') return many(block.items.length, 'number', 'numbers')
    if (block.kind === 'figure') return 'drawing'
  }
  return ''
}

const COUNTED: Readonly<Record<State, readonly [one: string, more: string]>> = {
  stops: ['stops the build', 'stop the build'],
  unknown: ['not known', 'not known'],
  look: ['to look at', 'to look at'],
  noted: ['noted', 'noted'],
  good: ['good', 'good'],
}

/** How a section stands, for its mark in the rail: the worst state it shows, and its two worst counts in words. */
export function standing(section: Section): { readonly state: State | 'none'; readonly note: string } {
  const states = statesOf(section)
  const present = WORST_FIRST.filter((state) => states.includes(state))
  const [worst] = present
  if (worst === undefined) return { state: 'none', note: contents(section) }
  const words = present.slice(0, 2).map((state) => many(states.filter((other) => other === state).length, ...COUNTED[state]))
  return { state: worst, note: words.join(' · ') }
}

/**
 * The findings that belong beside a section: those about the places it deals with or resting on a number it lists. None where
 * the section shows findings itself.
 */
export function findingsBeside(section: Section, findings: readonly FindingText[]): readonly FindingText[] {
  if (section.blocks.some((block) => block.kind === 'findings')) return []
  const places = DEALS_WITH[section.id] ?? []
  const numbers = listed(section)
  return findings.filter((finding) => places.includes(String(finding.about[0])) || finding.numbers.some((id) => numbers.includes(id)))
}
