import { defineTable } from '../table.ts'

export interface FreePlayRow {
  /** outside diameter of the hand wheel, up to and including */
  readonly wheel_in: number
  /** measured at the rim */
  readonly lash_in: number
}

/** Most free play at the rim of the hand wheel, by its diameter. Local rules go before it. */
export const FREE_PLAY_LIMITS = defineTable<FreePlayRow>({
  name: 'steering-free-play',
  title: 'Free play at the hand wheel',
  sources: [
    { id: 'rcw', cites: 'Revised Code of Washington 46.37.375', mark: 'published' },
    {
      id: 'cfr-570',
      cites: '49 CFR 570.60, Table 2, which prints the same figures',
      mark: 'published',
      read: 'a copy of the section, 25 November 2026',
    },
  ],
  key: 'wheel_in',
  columns: [
    { key: 'wheel_in', title: 'Hand wheel, up to', unit: 'in' },
    { key: 'lash_in', title: 'Free play, most', unit: 'in' },
  ],
  rows: [
    { wheel_in: 16, lash_in: 2 },
    { wheel_in: 18, lash_in: 2.25 },
    { wheel_in: 20, lash_in: 2.5 },
    { wheel_in: 22, lash_in: 2.75 },
  ],
})

export interface LinkagePlayRow {
  readonly rim: string
  readonly over_in: number
  /** null: no upper end */
  readonly to_in: number | null
  /** measured at the tyre */
  readonly play_in: number
}

/** Most play in the linkage, measured at the front wheel. The stricter of two rules governs. */
export const LINKAGE_PLAY_LIMITS = defineTable<LinkagePlayRow>({
  name: 'steering-linkage-play',
  title: 'Play in the steering linkage',
  sources: [
    { id: 'cfr-570', cites: '49 CFR 570.60, Table 3', mark: 'published', read: 'a copy of the section, 25 November 2026' },
    { id: 'rcw', cites: 'Revised Code of Washington 46.37.375: 1/4 in for every wheel', mark: 'published' },
  ],
  key: 'rim',
  columns: [
    { key: 'rim', title: 'Rim' },
    { key: 'over_in', title: 'Rim, over', unit: 'in' },
    { key: 'to_in', title: 'Rim, to', unit: 'in' },
    { key: 'play_in', title: 'Play, most', unit: 'in' },
  ],
  rows: [
    { rim: '16 in or less', over_in: 0, to_in: 16, play_in: 0.25 },
    { rim: '16.01 to 18 in', over_in: 16, to_in: 18, play_in: 0.375 },
    { rim: '18.01 in or more', over_in: 18, to_in: null, play_in: 0.5 },
  ],
})
