import type { Build } from '../../model/build.ts'
import { forcesLabel } from './forces-labels.ts'
import { FORCES_CHOICES } from './forces-measures.ts'
import { LINKAGE_CHOICES, linkageLabel } from './linkage.ts'

/** What each number of the plan is called. An id with a part's name in it ("ram.front-ram.push") is told by its last word. */
const LABELS: Readonly<Record<string, string>> = {
  'survey.left': 'Travel to the left',
  'survey.right': 'Travel to the right',
  'survey.total': 'Lock-to-lock travel',
  'survey.off-centre': 'Middle of the travel, off centre',
  'survey.stroke': 'Ram stroke wanted',
  'survey.u-resolution': 'Standard uncertainty of one look at the tape',
  'survey.u-left': 'Standard uncertainty, mark left',
  'survey.u-centre': 'Standard uncertainty, mark centre',
  'survey.u-right': 'Standard uncertainty, mark right',
  'survey.u-repeat-left': 'Scatter of the readings, mark left',
  'survey.u-repeat-centre': 'Scatter of the readings, mark centre',
  'survey.u-repeat-right': 'Scatter of the readings, mark right',
  'survey.left.u': 'Standard uncertainty of the travel left',
  'survey.right.u': 'Standard uncertainty of the travel right',
  'survey.total.u': 'Standard uncertainty of the whole travel',
  'survey.left.U': 'Travel left, plus and minus',
  'survey.right.U': 'Travel right, plus and minus',
  'survey.total.U': 'Whole travel, plus and minus',
  'fluid.held': 'Fluid in the system',
  'fluid.to-buy': 'Fluid to have in hand',
  'fluid.bottles': 'Bottles',
}

const OF_A_RAM: Readonly<Record<string, string>> = {
  'cap-area': 'Area of the bore',
  'annulus-area': 'Area beside the rod',
  push: 'Push at relief pressure',
  pull: 'Pull at relief pressure',
  content: 'Oil in the ram, fully out',
}

/** The name of a number for the reader. */
export function labelOf(id: string): string {
  const known = LABELS[id] ?? linkageLabel(id) ?? forcesLabel(id)
  if (known) return known
  const [kind, ...rest] = id.split('.')
  const last = rest.at(-1) ?? id
  if (kind === 'ram') return `${OF_A_RAM[last] ?? last}${rest.length > 1 ? ` (${rest[0]})` : ''}`
  if (kind === 'hose') return `Oil in the hose (${last})`
  if (kind === 'fluid') return `Oil in all of them (${last})`
  return id
}

/** The same with a part's name in place of its id. */
export function labelIn(build: Build, id: string): string {
  return labelOf(id).replace(/\(([a-z0-9-]+)\)$/, (whole, part: string) => {
    const name = build.parts.find((p) => p.id === part)?.name
    return name === undefined ? whole : `(${name})`
  })
}

/** Words for a value that the program chose. */
export const chosenWords = (why: string): string =>
  ({
    ...LINKAGE_CHOICES,
    ...FORCES_CHOICES,
    coverage: 'coverage factor 2, about 95 in 100 (JCGM 100)',
    'ram parallel': 'ram taken as parallel to the tie rod, since its angle was not measured',
    'purge allowance': 'a quarter for purging and spills; common practice, no published source',
  })[why] ?? why
