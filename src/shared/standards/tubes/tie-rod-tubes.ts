import { defineTable } from '../table.ts'

export interface TieRodTubeRow {
  /** outside diameter and wall, in: "1.500x0.250" */
  readonly size: string
  readonly od_in: number
  readonly wall_in: number
  readonly id_in: number
}

/** Tubes that tie rods and drag links are made of. Their section properties are formulas, not table values. */
export const TIE_ROD_TUBES = defineTable<TieRodTubeRow>({
  name: 'tie-rod-tubes',
  title: 'Tie-rod tubes',
  sources: [{ id: 'tube-choice', cites: 'common practice, no published source', mark: 'practice' }],
  key: 'size',
  columns: [
    { key: 'size', title: 'Outside diameter x wall', unit: 'in' },
    { key: 'od_in', title: 'Outside diameter', unit: 'in' },
    { key: 'wall_in', title: 'Wall', unit: 'in' },
    { key: 'id_in', title: 'Inside diameter', unit: 'in' },
  ],
  rows: [
    { size: '1.250x0.188', od_in: 1.25, wall_in: 0.188, id_in: 0.874 },
    { size: '1.250x0.250', od_in: 1.25, wall_in: 0.25, id_in: 0.75 },
    { size: '1.375x0.250', od_in: 1.375, wall_in: 0.25, id_in: 0.875 },
    { size: '1.500x0.188', od_in: 1.5, wall_in: 0.188, id_in: 1.124 },
    { size: '1.500x0.250', od_in: 1.5, wall_in: 0.25, id_in: 1 },
    { size: '1.500x0.375', od_in: 1.5, wall_in: 0.375, id_in: 0.75 },
    { size: '1.750x0.250', od_in: 1.75, wall_in: 0.25, id_in: 1.25 },
    { size: '2.000x0.250', od_in: 2, wall_in: 0.25, id_in: 1.5 },
  ],
})
