import { defineTable } from '../table.ts'

export interface TubePressureRow {
  /** outside diameter x wall, in */
  readonly size: string
  readonly od_in: number
  readonly wall_in: number
  readonly id_in: number
  readonly working_psi: number
}

/** Working pressure of steel hydraulic tube, as published. */
export const TUBE_PRESSURES = defineTable<TubePressureRow>({
  name: 'tube-pressures',
  title: 'Steel tube working pressure',
  sources: [
    {
      id: 'barlow-table',
      cites:
        'note on tubing pressure ratings: Barlow, 50 000 psi tensile, factor 4, rounded to 50 psi; a sheet prints 7300 psi for 3/8 x 0.083 at 55 000 psi, a misprint for 6087',
      mark: 'published',
      checked: 'p = 2 S t/(D N)',
    },
  ],
  key: 'size',
  columns: [
    { key: 'size', title: 'Tube' },
    { key: 'od_in', title: 'Outside diameter', unit: 'in' },
    { key: 'wall_in', title: 'Wall', unit: 'in' },
    { key: 'id_in', title: 'Inside diameter', unit: 'in' },
    { key: 'working_psi', title: 'Working pressure', unit: 'psi' },
  ],
  rows: [
    { size: '3/8x0.035', od_in: 0.375, wall_in: 0.035, id_in: 0.305, working_psi: 2350 },
    { size: '3/8x0.049', od_in: 0.375, wall_in: 0.049, id_in: 0.277, working_psi: 3250 },
    { size: '1/2x0.049', od_in: 0.5, wall_in: 0.049, id_in: 0.402, working_psi: 2450 },
    { size: '5/8x0.065', od_in: 0.625, wall_in: 0.065, id_in: 0.495, working_psi: 2600 },
    { size: '3/4x0.065', od_in: 0.75, wall_in: 0.065, id_in: 0.62, working_psi: 2150 },
  ],
})
