import { defineTable } from '../table.ts'

export interface DomSizeRow {
  readonly size: string
  readonly od_in: number
  readonly wall_in: number
  readonly id_in: number
}

/** Mandrel-drawn tube that a steel yard usually keeps. */
export const DOM_SIZES = defineTable<DomSizeRow>({
  name: 'dom-sizes',
  title: 'Mandrel-drawn tube commonly stocked',
  sources: [{ id: 'dom-memory', cites: 'stock lists of mandrel-drawn (DOM) tube, from memory', mark: 'memory' }],
  key: 'size',
  columns: [
    { key: 'size', title: 'Outside diameter x wall', unit: 'in' },
    { key: 'od_in', title: 'Outside diameter', unit: 'in' },
    { key: 'wall_in', title: 'Wall', unit: 'in' },
    { key: 'id_in', title: 'Inside diameter', unit: 'in' },
  ],
  rows: [
    { size: '1.000x0.120', od_in: 1, wall_in: 0.12, id_in: 0.76 },
    { size: '1.000x0.188', od_in: 1, wall_in: 0.188, id_in: 0.624 },
    { size: '1.000x0.250', od_in: 1, wall_in: 0.25, id_in: 0.5 },
    { size: '1.125x0.120', od_in: 1.125, wall_in: 0.12, id_in: 0.885 },
    { size: '1.125x0.188', od_in: 1.125, wall_in: 0.188, id_in: 0.749 },
    { size: '1.125x0.250', od_in: 1.125, wall_in: 0.25, id_in: 0.625 },
    { size: '1.250x0.120', od_in: 1.25, wall_in: 0.12, id_in: 1.01 },
    { size: '1.250x0.188', od_in: 1.25, wall_in: 0.188, id_in: 0.874 },
    { size: '1.250x0.250', od_in: 1.25, wall_in: 0.25, id_in: 0.75 },
    { size: '1.375x0.120', od_in: 1.375, wall_in: 0.12, id_in: 1.135 },
    { size: '1.375x0.188', od_in: 1.375, wall_in: 0.188, id_in: 0.999 },
    { size: '1.375x0.250', od_in: 1.375, wall_in: 0.25, id_in: 0.875 },
    { size: '1.500x0.120', od_in: 1.5, wall_in: 0.12, id_in: 1.26 },
    { size: '1.500x0.188', od_in: 1.5, wall_in: 0.188, id_in: 1.124 },
    { size: '1.500x0.250', od_in: 1.5, wall_in: 0.25, id_in: 1 },
    { size: '1.500x0.375', od_in: 1.5, wall_in: 0.375, id_in: 0.75 },
    { size: '1.625x0.188', od_in: 1.625, wall_in: 0.188, id_in: 1.249 },
    { size: '1.625x0.250', od_in: 1.625, wall_in: 0.25, id_in: 1.125 },
    { size: '1.750x0.120', od_in: 1.75, wall_in: 0.12, id_in: 1.51 },
    { size: '1.750x0.188', od_in: 1.75, wall_in: 0.188, id_in: 1.374 },
    { size: '1.750x0.250', od_in: 1.75, wall_in: 0.25, id_in: 1.25 },
    { size: '1.750x0.375', od_in: 1.75, wall_in: 0.375, id_in: 1 },
    { size: '2.000x0.120', od_in: 2, wall_in: 0.12, id_in: 1.76 },
    { size: '2.000x0.188', od_in: 2, wall_in: 0.188, id_in: 1.624 },
    { size: '2.000x0.250', od_in: 2, wall_in: 0.25, id_in: 1.5 },
    { size: '2.000x0.375', od_in: 2, wall_in: 0.375, id_in: 1.25 },
  ],
})
