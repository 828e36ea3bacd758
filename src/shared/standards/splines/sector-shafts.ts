import { defineTable } from '../table.ts'

export interface SectorShaftSplineRow {
  readonly id: string
  readonly splines: number
  /** null: measure it */
  readonly diameter_in: number | null
  /** the arm is drawn up a taper, so a loose nut is a loose arm */
  readonly taper: boolean
  readonly note: string
}

/** Sector (pitman) shaft splines. Only what is known for certain: count and measure the rest. */
export const SECTOR_SHAFT_SPLINES = defineTable<SectorShaftSplineRow>({
  name: 'sector-shaft-splines',
  title: 'Sector shafts',
  sources: [
    { id: 'sector-practice', cites: 'common practice, no published source; every other size is left out as not known', mark: 'practice' },
  ],
  key: 'id',
  columns: [
    { key: 'id', title: 'Row' },
    { key: 'splines', title: 'Splines' },
    { key: 'diameter_in', title: 'Diameter', unit: 'in' },
    { key: 'taper', title: 'Tapered' },
    { key: 'note', title: 'Note' },
  ],
  rows: [
    {
      id: '32',
      splines: 32,
      diameter_in: null,
      taper: true,
      note: 'the common light-truck box; blind splines at four places let the arm on in four positions only',
    },
  ],
})
