import { defineTable } from '../table.ts'

export interface HoseBendRadiusRow {
  readonly dn: number
  readonly dash: string
  /** measured at the inside of the bend */
  readonly radius_mm: number
}

/** Least bend radius by nominal size. DN 8 is left out: not known here. */
export const HOSE_BEND_RADII = defineTable<HoseBendRadiusRow>({
  name: 'hose-bend-radii',
  title: 'Least bend radius of wire-braid hose',
  sources: [{ id: 'memory', cites: 'EN 853 types 1SN and 2SN, least bend radius, from memory', mark: 'memory' }],
  key: 'dn',
  columns: [
    { key: 'dn', title: 'Nominal size, DN' },
    { key: 'dash', title: 'Dash' },
    { key: 'radius_mm', title: 'Least bend radius', unit: 'mm' },
  ],
  rows: [
    { dn: 6, dash: '-4', radius_mm: 100 },
    { dn: 10, dash: '-6', radius_mm: 130 },
    { dn: 12, dash: '-8', radius_mm: 180 },
    { dn: 16, dash: '-10', radius_mm: 200 },
    { dn: 19, dash: '-12', radius_mm: 240 },
    { dn: 25, dash: '-16', radius_mm: 300 },
  ],
})
