import type { FindingText, Section, State } from '../../shared/report/document.ts'

/** Worst first: what a section's mark shows when it holds several. */
const WORST_FIRST: readonly State[] = ['stops', 'unknown', 'look', 'noted', 'good']

/** Which places of the build file a section deals with, so that a finding shows beside the section it is about. */
const DEALS_WITH: Readonly<Record<string, readonly string[]>> = {
  parts: ['parts'],
  fit: ['joints', 'parts'],
  survey: ['survey', 'limits', 'axle'],
  ram: ['vehicle', 'axle'],
  fluid: ['build'],
  torque: ['torqueSpecs', 'torqueRecords'],
  weekends: ['tasks', 'sessions'],
  records: ['torqueRecords', 'alignment'],
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
  return 'to read'
}

const COUNTED: Readonly<Record<State, readonly [one: string, more: string]>> = {
  stops: ['stops', 'stop'],
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

/** The findings that belong beside a section: those about the places it deals with, unless it shows findings itself. */
export function findingsBeside(section: Section, findings: readonly FindingText[]): readonly FindingText[] {
  const places = DEALS_WITH[section.id]
  if (places === undefined || section.blocks.some((block) => block.kind === 'findings')) return []
  return findings.filter((finding) => places.includes(String(finding.about[0])))
}
