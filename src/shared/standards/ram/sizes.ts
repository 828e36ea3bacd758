import { defineTable } from '../table.ts'

export interface RamBoreRow {
  readonly size: string
  /** in the unit beside it */
  readonly value: number
  readonly unit: 'mm' | 'in'
  readonly series: 'ISO 3320' | 'NFPA' | 'trade'
  /** id of the source in this table */
  readonly source: string
}

/** Cylinder bores from the metric and inch series, and those met in steering rams. */
export const RAM_BORES = defineTable<RamBoreRow>({
  name: 'ram-bores',
  title: 'Ram bores',
  sources: [
    {
      id: 'iso-3320',
      cites: 'ISO 3320:2013 (1987 edition = IS 8208:2004); existence and scope seen in print, the sizes from memory',
      mark: 'memory',
      checked: 'bores from 40 mm against a cylinder maker’s push-force table',
    },
    { id: 'nfpa', cites: 'NFPA T3.6.7, from memory', mark: 'memory', checked: 'bores and rods to 2 in against an air-cylinder parts list' },
    { id: 'trade', cites: 'sizes met in the trade in steering rams: common practice, no published source', mark: 'practice' },
  ],
  key: 'size',
  columns: [
    { key: 'size', title: 'Size' },
    { key: 'value', title: 'Bore' },
    { key: 'unit', title: 'Unit' },
    { key: 'series', title: 'Series' },
    { key: 'source', title: 'Source' },
  ],
  rows: [
    { size: '25 mm', value: 25, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '32 mm', value: 32, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '40 mm', value: 40, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '50 mm', value: 50, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '63 mm', value: 63, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '80 mm', value: 80, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '100 mm', value: 100, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '125 mm', value: 125, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '160 mm', value: 160, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '200 mm', value: 200, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '1.5 in', value: 1.5, unit: 'in', series: 'NFPA', source: 'nfpa' },
    { size: '2 in', value: 2, unit: 'in', series: 'NFPA', source: 'nfpa' },
    { size: '2.5 in', value: 2.5, unit: 'in', series: 'NFPA', source: 'nfpa' },
    { size: '3.25 in', value: 3.25, unit: 'in', series: 'NFPA', source: 'nfpa' },
    { size: '4 in', value: 4, unit: 'in', series: 'NFPA', source: 'nfpa' },
    { size: '5 in', value: 5, unit: 'in', series: 'NFPA', source: 'nfpa' },
    { size: '6 in', value: 6, unit: 'in', series: 'NFPA', source: 'nfpa' },
    { size: '1.75 in', value: 1.75, unit: 'in', series: 'trade', source: 'trade' },
    { size: '3 in', value: 3, unit: 'in', series: 'trade', source: 'trade' },
  ],
})

export interface RamRodRow {
  readonly size: string
  /** in the unit beside it */
  readonly value: number
  readonly unit: 'mm' | 'in'
  readonly series: 'ISO 3320' | 'NFPA' | 'trade'
  /** id of the source in this table */
  readonly source: string
}

/** Piston rod diameters from the metric and inch series, and those met in steering rams. */
export const RAM_RODS = defineTable<RamRodRow>({
  name: 'ram-rods',
  title: 'Ram rod diameters',
  sources: [
    {
      id: 'iso-3320',
      cites: 'ISO 3320:2013 (1987 edition = IS 8208:2004); existence and scope seen in print, the sizes from memory',
      mark: 'memory',
      checked: 'bores from 40 mm against a cylinder maker’s push-force table',
    },
    { id: 'nfpa', cites: 'NFPA T3.6.7, from memory', mark: 'memory', checked: 'bores and rods to 2 in against an air-cylinder parts list' },
    { id: 'trade', cites: 'sizes met in the trade in steering rams: common practice, no published source', mark: 'practice' },
  ],
  key: 'size',
  columns: [
    { key: 'size', title: 'Size' },
    { key: 'value', title: 'Rod diameter' },
    { key: 'unit', title: 'Unit' },
    { key: 'series', title: 'Series' },
    { key: 'source', title: 'Source' },
  ],
  rows: [
    { size: '12 mm', value: 12, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '14 mm', value: 14, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '16 mm', value: 16, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '18 mm', value: 18, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '20 mm', value: 20, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '22 mm', value: 22, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '25 mm', value: 25, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '28 mm', value: 28, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '32 mm', value: 32, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '36 mm', value: 36, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '40 mm', value: 40, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '45 mm', value: 45, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '50 mm', value: 50, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '56 mm', value: 56, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '63 mm', value: 63, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '70 mm', value: 70, unit: 'mm', series: 'ISO 3320', source: 'iso-3320' },
    { size: '0.625 in', value: 0.625, unit: 'in', series: 'NFPA', source: 'nfpa' },
    { size: '1 in', value: 1, unit: 'in', series: 'NFPA', source: 'nfpa' },
    { size: '1.375 in', value: 1.375, unit: 'in', series: 'NFPA', source: 'nfpa' },
    { size: '1.75 in', value: 1.75, unit: 'in', series: 'NFPA', source: 'nfpa' },
    { size: '2 in', value: 2, unit: 'in', series: 'NFPA', source: 'nfpa' },
    { size: '2.5 in', value: 2.5, unit: 'in', series: 'NFPA', source: 'nfpa' },
    { size: '0.75 in', value: 0.75, unit: 'in', series: 'trade', source: 'trade' },
    { size: '1.25 in', value: 1.25, unit: 'in', series: 'trade', source: 'trade' },
    { size: '1.5 in', value: 1.5, unit: 'in', series: 'trade', source: 'trade' },
  ],
})

export interface RamStrokeRow {
  readonly size: string
  /** in the unit beside it */
  readonly value: number
  readonly unit: 'mm' | 'in'
  readonly series: 'ISO 4393' | 'trade'
  /** id of the source in this table */
  readonly source: string
}

/** Strokes of the metric series, and those steering rams are sold in. */
export const RAM_STROKES = defineTable<RamStrokeRow>({
  name: 'ram-strokes',
  title: 'Ram strokes',
  sources: [
    { id: 'iso-4393', cites: 'ISO 4393, from memory', mark: 'memory' },
    { id: 'trade', cites: 'sizes met in the trade in steering rams: common practice, no published source', mark: 'practice' },
  ],
  key: 'size',
  columns: [
    { key: 'size', title: 'Size' },
    { key: 'value', title: 'Stroke' },
    { key: 'unit', title: 'Unit' },
    { key: 'series', title: 'Series' },
    { key: 'source', title: 'Source' },
  ],
  rows: [
    { size: '25 mm', value: 25, unit: 'mm', series: 'ISO 4393', source: 'iso-4393' },
    { size: '50 mm', value: 50, unit: 'mm', series: 'ISO 4393', source: 'iso-4393' },
    { size: '80 mm', value: 80, unit: 'mm', series: 'ISO 4393', source: 'iso-4393' },
    { size: '100 mm', value: 100, unit: 'mm', series: 'ISO 4393', source: 'iso-4393' },
    { size: '125 mm', value: 125, unit: 'mm', series: 'ISO 4393', source: 'iso-4393' },
    { size: '160 mm', value: 160, unit: 'mm', series: 'ISO 4393', source: 'iso-4393' },
    { size: '200 mm', value: 200, unit: 'mm', series: 'ISO 4393', source: 'iso-4393' },
    { size: '250 mm', value: 250, unit: 'mm', series: 'ISO 4393', source: 'iso-4393' },
    { size: '320 mm', value: 320, unit: 'mm', series: 'ISO 4393', source: 'iso-4393' },
    { size: '400 mm', value: 400, unit: 'mm', series: 'ISO 4393', source: 'iso-4393' },
    { size: '500 mm', value: 500, unit: 'mm', series: 'ISO 4393', source: 'iso-4393' },
    { size: '6 in', value: 6, unit: 'in', series: 'trade', source: 'trade' },
    { size: '8 in', value: 8, unit: 'in', series: 'trade', source: 'trade' },
    { size: '9 in', value: 9, unit: 'in', series: 'trade', source: 'trade' },
    { size: '10 in', value: 10, unit: 'in', series: 'trade', source: 'trade' },
  ],
})

export interface RamPairRow {
  /** bore x rod, in: "2x1.25" */
  readonly size: string
  readonly bore_in: number
  readonly rod_in: number
}

/** Bore and rod that single-ended inch rams are sold with. */
export const RAM_PAIRS = defineTable<RamPairRow>({
  name: 'ram-pairs',
  title: 'Bore and rod of inch rams',
  sources: [{ id: 'trade', cites: 'pairings met in the trade: common practice, no published source', mark: 'practice' }],
  key: 'size',
  columns: [
    { key: 'size', title: 'Bore x rod', unit: 'in' },
    { key: 'bore_in', title: 'Bore', unit: 'in' },
    { key: 'rod_in', title: 'Rod', unit: 'in' },
  ],
  rows: [
    { size: '1.5x0.75', bore_in: 1.5, rod_in: 0.75 },
    { size: '1.75x0.75', bore_in: 1.75, rod_in: 0.75 },
    { size: '2x1', bore_in: 2, rod_in: 1 },
    { size: '2x1.25', bore_in: 2, rod_in: 1.25 },
    { size: '2.5x1.25', bore_in: 2.5, rod_in: 1.25 },
    { size: '2.5x1.5', bore_in: 2.5, rod_in: 1.5 },
    { size: '3x1.5', bore_in: 3, rod_in: 1.5 },
  ],
})
