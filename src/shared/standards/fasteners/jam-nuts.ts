import { defineTable } from '../table.ts'

export interface JamNutInchRow {
  readonly size: string
  readonly flats_in: number
  readonly thickness_in: number
}

/** Jam nuts for inch threads. Rod ends and tie rods may use others: measure what is there. */
export const JAM_NUTS_INCH = defineTable<JamNutInchRow>({
  name: 'jam-nuts-inch',
  title: 'Hex jam nuts, inch',
  sources: [
    {
      id: 'b18.2.2',
      cites: 'ASME B18.2.2-2015, hex jam nuts, basic sizes',
      mark: 'published',
      read: 'Machinery’s Handbook, 31st edition, page 1677, Table 7, 25 November 2026',
    },
  ],
  key: 'size',
  columns: [
    { key: 'size', title: 'Thread diameter', unit: 'in' },
    { key: 'flats_in', title: 'Width across flats', unit: 'in' },
    { key: 'thickness_in', title: 'Thickness', unit: 'in' },
  ],
  rows: [
    { size: '1/4', flats_in: 0.4375, thickness_in: 0.15625 },
    { size: '5/16', flats_in: 0.5, thickness_in: 0.1875 },
    { size: '3/8', flats_in: 0.5625, thickness_in: 0.21875 },
    { size: '7/16', flats_in: 0.6875, thickness_in: 0.25 },
    { size: '1/2', flats_in: 0.75, thickness_in: 0.3125 },
    { size: '9/16', flats_in: 0.875, thickness_in: 0.3125 },
    { size: '5/8', flats_in: 0.9375, thickness_in: 0.375 },
    { size: '3/4', flats_in: 1.125, thickness_in: 0.421875 },
    { size: '7/8', flats_in: 1.3125, thickness_in: 0.484375 },
    { size: '1', flats_in: 1.5, thickness_in: 0.546875 },
    { size: '1-1/8', flats_in: 1.6875, thickness_in: 0.609375 },
    { size: '1-1/4', flats_in: 1.875, thickness_in: 0.71875 },
    { size: '1-3/8', flats_in: 2.0625, thickness_in: 0.78125 },
    { size: '1-1/2', flats_in: 2.25, thickness_in: 0.84375 },
  ],
})

export interface JamNutMetricRow {
  readonly size: string
  readonly flats_mm: number
  readonly thickness_mm: number
  /** id of the source in this table */
  readonly source: string
}

/** Thin nuts for metric threads. The older DIN flats (17, 19, 22 and 32 for M10, M12, M14, M22) are still met. */
export const JAM_NUTS_METRIC = defineTable<JamNutMetricRow>({
  name: 'jam-nuts-metric',
  title: 'Hex jam nuts, metric',
  sources: [
    { id: 'iso-4035', cites: 'ISO 4035, hexagon thin nuts', mark: 'published', read: 'a reproduction of the table, 25 November 2026' },
    { id: 'memory', cites: 'ISO 4035, M18, M22 and M27, from memory', mark: 'memory' },
  ],
  key: 'size',
  columns: [
    { key: 'size', title: 'Thread diameter' },
    { key: 'flats_mm', title: 'Width across flats', unit: 'mm' },
    { key: 'thickness_mm', title: 'Thickness, most', unit: 'mm' },
    { key: 'source', title: 'Source' },
  ],
  rows: [
    { size: 'M6', flats_mm: 10, thickness_mm: 3.2, source: 'iso-4035' },
    { size: 'M8', flats_mm: 13, thickness_mm: 4, source: 'iso-4035' },
    { size: 'M10', flats_mm: 16, thickness_mm: 5, source: 'iso-4035' },
    { size: 'M12', flats_mm: 18, thickness_mm: 6, source: 'iso-4035' },
    { size: 'M14', flats_mm: 21, thickness_mm: 7, source: 'iso-4035' },
    { size: 'M16', flats_mm: 24, thickness_mm: 8, source: 'iso-4035' },
    { size: 'M18', flats_mm: 27, thickness_mm: 9, source: 'memory' },
    { size: 'M20', flats_mm: 30, thickness_mm: 10, source: 'iso-4035' },
    { size: 'M22', flats_mm: 34, thickness_mm: 11, source: 'memory' },
    { size: 'M24', flats_mm: 36, thickness_mm: 12, source: 'iso-4035' },
    { size: 'M27', flats_mm: 41, thickness_mm: 13.5, source: 'memory' },
    { size: 'M30', flats_mm: 46, thickness_mm: 15, source: 'iso-4035' },
  ],
})
