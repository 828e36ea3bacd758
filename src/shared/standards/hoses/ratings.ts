import { defineTable } from '../table.ts'

export interface HoseRatingRow {
  readonly id: string
  /** 1SN = 100R1AT type S, 2SN = 100R2AT type S, R17 = 100R17 */
  readonly type: '1SN' | '2SN' | 'R17'
  readonly dn: number
  readonly dash: string
  readonly bore_mm: number
  readonly working_bar: number
  /** id of the source of the pressure */
  readonly source: string
}

/** Working pressure of wire-braid hose. Older tables without the S values still circulate: the marking on the hose governs. */
export const HOSE_RATINGS = defineTable<HoseRatingRow>({
  name: 'hose-ratings',
  title: 'Hydraulic hose working pressure',
  sources: [
    { id: 'marked-hose', cites: 'lay line of a marked hose: -10, 5/8, EN 853 2SN 16, 25.0 MPa', mark: 'published' },
    {
      id: 'memory',
      cites: 'EN 853 / ISO 1436 types 1SN and 2SN (SAE J517 100R1AT and 100R2AT, type S) and SAE J517 100R17, from memory',
      mark: 'memory',
    },
    {
      id: 'design-factor',
      cites: 'hose maker’s overview of SAE standards: burst four times, proof twice the working pressure',
      mark: 'published',
    },
  ],
  key: 'id',
  columns: [
    { key: 'id', title: 'Row' },
    { key: 'type', title: 'Type' },
    { key: 'dn', title: 'Nominal size, DN' },
    { key: 'dash', title: 'Dash' },
    { key: 'bore_mm', title: 'Bore', unit: 'mm' },
    { key: 'working_bar', title: 'Working pressure', unit: 'bar' },
    { key: 'source', title: 'Source' },
  ],
  rows: [
    { id: '1SN DN6', type: '1SN', dn: 6, dash: '-4', bore_mm: 6.3, working_bar: 225, source: 'memory' },
    { id: '1SN DN8', type: '1SN', dn: 8, dash: '-5', bore_mm: 7.9, working_bar: 215, source: 'memory' },
    { id: '1SN DN10', type: '1SN', dn: 10, dash: '-6', bore_mm: 9.5, working_bar: 180, source: 'memory' },
    { id: '1SN DN12', type: '1SN', dn: 12, dash: '-8', bore_mm: 12.7, working_bar: 160, source: 'memory' },
    { id: '1SN DN16', type: '1SN', dn: 16, dash: '-10', bore_mm: 15.9, working_bar: 130, source: 'memory' },
    { id: '1SN DN19', type: '1SN', dn: 19, dash: '-12', bore_mm: 19, working_bar: 105, source: 'memory' },
    { id: '1SN DN25', type: '1SN', dn: 25, dash: '-16', bore_mm: 25.4, working_bar: 88, source: 'memory' },
    { id: '2SN DN6', type: '2SN', dn: 6, dash: '-4', bore_mm: 6.3, working_bar: 400, source: 'memory' },
    { id: '2SN DN8', type: '2SN', dn: 8, dash: '-5', bore_mm: 7.9, working_bar: 350, source: 'memory' },
    { id: '2SN DN10', type: '2SN', dn: 10, dash: '-6', bore_mm: 9.5, working_bar: 330, source: 'memory' },
    { id: '2SN DN12', type: '2SN', dn: 12, dash: '-8', bore_mm: 12.7, working_bar: 275, source: 'memory' },
    { id: '2SN DN16', type: '2SN', dn: 16, dash: '-10', bore_mm: 15.9, working_bar: 250, source: 'marked-hose' },
    { id: '2SN DN19', type: '2SN', dn: 19, dash: '-12', bore_mm: 19, working_bar: 215, source: 'memory' },
    { id: '2SN DN25', type: '2SN', dn: 25, dash: '-16', bore_mm: 25.4, working_bar: 165, source: 'memory' },
    { id: 'R17 DN6', type: 'R17', dn: 6, dash: '-4', bore_mm: 6.3, working_bar: 210, source: 'memory' },
    { id: 'R17 DN8', type: 'R17', dn: 8, dash: '-5', bore_mm: 7.9, working_bar: 210, source: 'memory' },
    { id: 'R17 DN10', type: 'R17', dn: 10, dash: '-6', bore_mm: 9.5, working_bar: 210, source: 'memory' },
    { id: 'R17 DN12', type: 'R17', dn: 12, dash: '-8', bore_mm: 12.7, working_bar: 210, source: 'memory' },
    { id: 'R17 DN16', type: 'R17', dn: 16, dash: '-10', bore_mm: 15.9, working_bar: 210, source: 'memory' },
    { id: 'R17 DN19', type: 'R17', dn: 19, dash: '-12', bore_mm: 19, working_bar: 210, source: 'memory' },
    { id: 'R17 DN25', type: 'R17', dn: 25, dash: '-16', bore_mm: 25.4, working_bar: 210, source: 'memory' },
  ],
})

export interface SteeringHoseStandardRow {
  readonly standard: string
  readonly use: string
  /** null where not known */
  readonly working_psi: number | null
}

/** The hose standards made for power steering. */
export const STEERING_HOSE_STANDARDS = defineTable<SteeringHoseStandardRow>({
  name: 'steering-hose-standards',
  title: 'Power-steering hose standards',
  sources: [{ id: 'sae-memory', cites: 'SAE J188, J2050 and J189, scope, from memory', mark: 'memory' }],
  key: 'standard',
  columns: [
    { key: 'standard', title: 'Standard' },
    { key: 'use', title: 'Use' },
    { key: 'working_psi', title: 'Working pressure', unit: 'psi' },
  ],
  rows: [
    { standard: 'SAE J188', use: 'power-steering pressure hose, high volumetric expansion', working_psi: 1500 },
    { standard: 'SAE J189', use: 'power-steering return hose', working_psi: 250 },
    { standard: 'SAE J2050', use: 'power-steering pressure hose, high temperature', working_psi: null },
  ],
})
