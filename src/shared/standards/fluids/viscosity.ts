import { defineTable } from '../table.ts'

export interface ViscosityGradeRow {
  readonly grade: string
  readonly mid_cst: number
  readonly min_cst: number
  readonly max_cst: number
  /** null where not known */
  readonly typical_100_min_cst: number | null
  readonly typical_100_max_cst: number | null
}

/** Viscosity grades of hydraulic oils. */
export const VISCOSITY_GRADES = defineTable<ViscosityGradeRow>({
  name: 'viscosity-grades',
  title: 'ISO viscosity grades, ISO 3448',
  sources: [
    {
      id: 'iso-3448',
      cites: 'ISO 3448:1992, limits at 40 °C',
      mark: 'published',
      read: 'reproductions of the table, 25 November 2026',
      checked: 'midpoint plus and minus 10 %',
    },
    {
      id: 'typical-100',
      cites: 'typical viscosity at 100 °C: 5.5 for VG 32 and 6.5 for VG 46 seen in print, the other ends from memory',
      mark: 'memory',
    },
  ],
  key: 'grade',
  columns: [
    { key: 'grade', title: 'Grade' },
    { key: 'mid_cst', title: 'Midpoint at 40 °C', unit: 'cSt' },
    { key: 'min_cst', title: 'Least at 40 °C', unit: 'cSt' },
    { key: 'max_cst', title: 'Most at 40 °C', unit: 'cSt' },
    { key: 'typical_100_min_cst', title: 'Typical at 100 °C, from', unit: 'cSt' },
    { key: 'typical_100_max_cst', title: 'Typical at 100 °C, to', unit: 'cSt' },
  ],
  rows: [
    { grade: 'VG 22', mid_cst: 22, min_cst: 19.8, max_cst: 24.2, typical_100_min_cst: null, typical_100_max_cst: null },
    { grade: 'VG 32', mid_cst: 32, min_cst: 28.8, max_cst: 35.2, typical_100_min_cst: 5.4, typical_100_max_cst: 5.5 },
    { grade: 'VG 46', mid_cst: 46, min_cst: 41.4, max_cst: 50.6, typical_100_min_cst: 6.5, typical_100_max_cst: 6.8 },
    { grade: 'VG 68', mid_cst: 68, min_cst: 61.2, max_cst: 74.8, typical_100_min_cst: null, typical_100_max_cst: null },
    { grade: 'VG 100', mid_cst: 100, min_cst: 90, max_cst: 110, typical_100_min_cst: null, typical_100_max_cst: null },
    { grade: 'VG 150', mid_cst: 150, min_cst: 135, max_cst: 165, typical_100_min_cst: null, typical_100_max_cst: null },
    { grade: 'VG 220', mid_cst: 220, min_cst: 198, max_cst: 242, typical_100_min_cst: null, typical_100_max_cst: null },
  ],
})

export interface SteeringFluidRow {
  readonly name: string
  readonly at_40_min_cst: number
  readonly at_40_max_cst: number
  readonly at_100_cst: number
  readonly density_min_kg_m3: number
  readonly density_max_kg_m3: number
}

/** Typical figures of steering fluid, for estimates only. */
export const STEERING_FLUIDS = defineTable<SteeringFluidRow>({
  name: 'steering-fluids',
  title: 'Steering fluids',
  sources: [
    { id: 'atf-100', cites: 'automatic-transmission-type fluid, viscosity at 100 °C', mark: 'published', read: 'a data page' },
    { id: 'atf-memory', cites: 'its viscosity at 40 °C and its density at 15 °C, from memory', mark: 'memory' },
  ],
  key: 'name',
  columns: [
    { key: 'name', title: 'Fluid' },
    { key: 'at_40_min_cst', title: 'At 40 °C, from', unit: 'cSt' },
    { key: 'at_40_max_cst', title: 'At 40 °C, to', unit: 'cSt' },
    { key: 'at_100_cst', title: 'At 100 °C', unit: 'cSt' },
    { key: 'density_min_kg_m3', title: 'Density at 15 °C, from', unit: 'kg/m³' },
    { key: 'density_max_kg_m3', title: 'Density at 15 °C, to', unit: 'kg/m³' },
  ],
  rows: [
    {
      name: 'transmission-type steering fluid',
      at_40_min_cst: 34,
      at_40_max_cst: 40,
      at_100_cst: 7.5,
      density_min_kg_m3: 850,
      density_max_kg_m3: 875,
    },
  ],
})
