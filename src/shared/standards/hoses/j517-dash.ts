import { defineTable } from '../table.ts'

export interface HoseDashSizeRow {
  readonly id: string
  readonly dash: string
  readonly types: 'most' | 'R5, R14'
  readonly bore_in: string
  readonly bore_mm: number
}

/** Bore by dash size. A -6 braided 100R5 or 100R14 hose is 5/16 in, not 3/8. */
export const HOSE_DASH_SIZES = defineTable<HoseDashSizeRow>({
  name: 'hose-dash-sizes',
  title: 'Hose dash size and bore',
  sources: [
    {
      id: 'j517-dash',
      cites: 'SAE J517: dash is the bore in sixteenths for most types; 100R5 and 100R14 keep the dash of the tube they replace',
      mark: 'published',
      read: 'a hose supplier’s selection page, 25 November 2026',
    },
  ],
  key: 'id',
  columns: [
    { key: 'id', title: 'Row' },
    { key: 'dash', title: 'Dash' },
    { key: 'types', title: 'Hose types' },
    { key: 'bore_in', title: 'Bore', unit: 'in' },
    { key: 'bore_mm', title: 'Bore', unit: 'mm' },
  ],
  rows: [
    { id: '-3 most', dash: '-3', types: 'most', bore_in: '3/16', bore_mm: 4.8 },
    { id: '-4 most', dash: '-4', types: 'most', bore_in: '1/4', bore_mm: 6.4 },
    { id: '-5 most', dash: '-5', types: 'most', bore_in: '5/16', bore_mm: 7.9 },
    { id: '-6 most', dash: '-6', types: 'most', bore_in: '3/8', bore_mm: 9.5 },
    { id: '-8 most', dash: '-8', types: 'most', bore_in: '1/2', bore_mm: 12.7 },
    { id: '-10 most', dash: '-10', types: 'most', bore_in: '5/8', bore_mm: 15.9 },
    { id: '-12 most', dash: '-12', types: 'most', bore_in: '3/4', bore_mm: 19 },
    { id: '-16 most', dash: '-16', types: 'most', bore_in: '1', bore_mm: 25.4 },
    { id: '-4 R5, R14', dash: '-4', types: 'R5, R14', bore_in: '3/16', bore_mm: 4.8 },
    { id: '-5 R5, R14', dash: '-5', types: 'R5, R14', bore_in: '1/4', bore_mm: 6.4 },
    { id: '-6 R5, R14', dash: '-6', types: 'R5, R14', bore_in: '5/16', bore_mm: 7.9 },
    { id: '-8 R5, R14', dash: '-8', types: 'R5, R14', bore_in: '13/32', bore_mm: 10.3 },
    { id: '-10 R5, R14', dash: '-10', types: 'R5, R14', bore_in: '1/2', bore_mm: 12.7 },
    { id: '-12 R5, R14', dash: '-12', types: 'R5, R14', bore_in: '5/8', bore_mm: 15.9 },
    { id: '-16 R5, R14', dash: '-16', types: 'R5, R14', bore_in: '7/8', bore_mm: 22.2 },
  ],
})
