import type { Severity } from '../planner/plan.ts'

/** The word that stands beside a finding's shape, so that state is never colour alone. */
export const SEVERITY_WORDS: Readonly<Record<Severity, string>> = {
  stops: 'Stops the build',
  look: 'Look at this',
  noted: 'For information',
}

/** The few words that stand between the parts of a block, the same on screen, paper and terminal. */
export const BLOCK_WORDS = {
  at: 'At',
  seen: 'Seen',
  why: 'Why',
  todo: 'Do',
  source: 'Source',
  remark: 'Note',
  page: 'Page',
  of: 'of',
  movedBy: 'What moves it most',
  movedColumns: ['Input', 'Its value', '10 % more', '10 % less'],
  numberColumns: ['Number', 'Value', '± (k = 2)', 'Other units'],
} as const
