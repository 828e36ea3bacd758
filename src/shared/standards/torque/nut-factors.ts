import { defineTable } from '../table.ts'

export interface NutFactorRow {
  readonly id: string
  readonly condition: 'plain' | 'zinc' | 'lubricated' | 'cadmium'
  /** the two differ by half for plain bolts: a torque must say which K it came from */
  readonly convention: 'textbook' | 'industry'
  readonly k: number
  /** id of the source in this table */
  readonly source: string
}

/** Nut factors in the two conventions in use. Some charts print 0.15 for every plated bolt. */
export const NUT_FACTORS = defineTable<NutFactorRow>({
  name: 'nut-factors',
  title: 'Nut factors K of T = K d F',
  sources: [
    { id: 'shigley', cites: 'Shigley, Mechanical Engineering Design, 9th edition, Table 8-15', mark: 'published' },
    { id: 'industry', cites: 'fastener charts, one of them a guide to grades 5 and 8 based on IFI data sheet N-12', mark: 'published' },
  ],
  key: 'id',
  columns: [
    { key: 'id', title: 'Row' },
    { key: 'condition', title: 'Condition' },
    { key: 'convention', title: 'Convention' },
    { key: 'k', title: 'K' },
    { key: 'source', title: 'Source' },
  ],
  rows: [
    { id: 'plain, textbook', condition: 'plain', convention: 'textbook', k: 0.3, source: 'shigley' },
    { id: 'zinc, textbook', condition: 'zinc', convention: 'textbook', k: 0.2, source: 'shigley' },
    { id: 'lubricated, textbook', condition: 'lubricated', convention: 'textbook', k: 0.18, source: 'shigley' },
    { id: 'cadmium, textbook', condition: 'cadmium', convention: 'textbook', k: 0.16, source: 'shigley' },
    { id: 'plain, industry', condition: 'plain', convention: 'industry', k: 0.2, source: 'industry' },
    { id: 'zinc, industry', condition: 'zinc', convention: 'industry', k: 0.17, source: 'industry' },
    { id: 'lubricated, industry', condition: 'lubricated', convention: 'industry', k: 0.15, source: 'industry' },
  ],
})
