import { defineTable } from '../table.ts'

export interface PropertyClassRow {
  readonly id: string
  readonly property_class: '8.8' | '10.9' | '12.9'
  /** thread diameter greater than this */
  readonly over_mm: number
  /** and up to this, inclusive */
  readonly to_mm: number
  readonly proof_mpa: number
  readonly yield_mpa: number
  readonly tensile_mpa: number
}

/** Strength of metric bolts by property class. Class 8.8 changes above M16. */
export const PROPERTY_CLASSES = defineTable<PropertyClassRow>({
  name: 'property-classes',
  title: 'Metric property classes, ISO 898-1',
  sources: [
    {
      id: 'iso-898-1',
      cites: 'ISO 898-1, mechanical properties of bolts: proof and tensile of 8.8, 10.9, 12.9; yield above M16',
      mark: 'published',
      read: 'a distributor’s proof-load table, a minimum ultimate load table, a design textbook’s Table 3.2 and a summary of the 1999 edition',
      checked: 'proof load = proof stress times stress area',
    },
    { id: 'iso-898-1-memory', cites: 'ISO 898-1, yield of 8.8 up to M16, from memory', mark: 'memory' },
  ],
  key: 'id',
  columns: [
    { key: 'id', title: 'Row' },
    { key: 'property_class', title: 'Class' },
    { key: 'over_mm', title: 'Over', unit: 'mm' },
    { key: 'to_mm', title: 'To', unit: 'mm' },
    { key: 'proof_mpa', title: 'Proof stress', unit: 'MPa' },
    { key: 'yield_mpa', title: 'Yield, 0.2 %', unit: 'MPa' },
    { key: 'tensile_mpa', title: 'Tensile strength, least', unit: 'MPa' },
  ],
  rows: [
    { id: '8.8 to M16', property_class: '8.8', over_mm: 0, to_mm: 16, proof_mpa: 580, yield_mpa: 640, tensile_mpa: 800 },
    { id: '8.8 over M16', property_class: '8.8', over_mm: 16, to_mm: 39, proof_mpa: 600, yield_mpa: 660, tensile_mpa: 830 },
    { id: '10.9', property_class: '10.9', over_mm: 0, to_mm: 39, proof_mpa: 830, yield_mpa: 940, tensile_mpa: 1040 },
    { id: '12.9', property_class: '12.9', over_mm: 0, to_mm: 39, proof_mpa: 970, yield_mpa: 1100, tensile_mpa: 1220 },
  ],
})
