import { defineTable } from '../table.ts'

export interface InputShaftSplineRow {
  /** diameter-splines; splines counted as if they went all round, though a flat takes some away */
  readonly size: string
  readonly diameter_in: string
  readonly splines: number
  /** null where not known */
  readonly measured_min_in: number | null
  readonly measured_max_in: number | null
}

/** Input shafts of steering boxes and racks. */
export const INPUT_SHAFT_SPLINES = defineTable<InputShaftSplineRow>({
  name: 'input-shaft-splines',
  title: 'Steering-box input shafts',
  sources: [
    { id: 'input-chart', cites: 'steering-shaft selection charts of suppliers', mark: 'published', read: 'two charts, 25 November 2026' },
  ],
  key: 'size',
  columns: [
    { key: 'size', title: 'Size' },
    { key: 'diameter_in', title: 'Nominal diameter', unit: 'in' },
    { key: 'splines', title: 'Splines' },
    { key: 'measured_min_in', title: 'Measured over splines, from', unit: 'in' },
    { key: 'measured_max_in', title: 'Measured over splines, to', unit: 'in' },
  ],
  rows: [
    { size: '9/16-26', diameter_in: '9/16', splines: 26, measured_min_in: null, measured_max_in: null },
    { size: '9/16-36', diameter_in: '9/16', splines: 36, measured_min_in: null, measured_max_in: null },
    { size: '5/8-36', diameter_in: '5/8', splines: 36, measured_min_in: null, measured_max_in: null },
    { size: '3/4-30', diameter_in: '3/4', splines: 30, measured_min_in: 0.72, measured_max_in: 0.725 },
    { size: '3/4-36', diameter_in: '3/4', splines: 36, measured_min_in: null, measured_max_in: null },
    { size: '3/4-48', diameter_in: '3/4', splines: 48, measured_min_in: null, measured_max_in: null },
    { size: '13/16-36', diameter_in: '13/16', splines: 36, measured_min_in: 0.8, measured_max_in: 0.805 },
  ],
})
