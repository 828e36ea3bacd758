import { defineTable } from '../table.ts'

export interface MetricSpecialThreadRow {
  /** always with its pitch: "M13x1.25" */
  readonly designation: string
  readonly major_mm: number
  readonly pitch_mm: number
}

/** Metric threads that ISO 261 does not list and that parts and look-alike lists name all the same. */
export const METRIC_SPECIAL_THREADS = defineTable<MetricSpecialThreadRow>({
  name: 'metric-special-threads',
  title: 'Metric threads outside ISO 261',
  sources: [{ id: 'metric-special-practice', cites: 'common practice, no published source: not a size of ISO 261:1998', mark: 'practice' }],
  key: 'designation',
  columns: [
    { key: 'designation', title: 'Thread' },
    { key: 'major_mm', title: 'Major diameter', unit: 'mm' },
    { key: 'pitch_mm', title: 'Pitch', unit: 'mm' },
  ],
  rows: [{ designation: 'M13x1.25', major_mm: 13, pitch_mm: 1.25 }],
})
