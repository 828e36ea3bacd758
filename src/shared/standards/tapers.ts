import type { Source } from './source.ts'
import { defineTable } from './table.ts'

export interface TaperRow {
  readonly name: string
  /** change of diameter per length: the exact figure to store and compare, never a rounded angle */
  readonly ratio: number
  readonly in_per_ft: number
  readonly half_angle_deg: number
  readonly included_angle_deg: number
  readonly use: string
}

/**
 * Ball-stud tapers. Ratios are on the diameter. The two reamers sold by an angle carry the included angle. SAE J491 is the
 * recommended practice for the joint as a whole; it sends the user to the maker for the dimensions.
 */
export const TAPERS = defineTable<TaperRow>({
  name: 'ball-stud-tapers',
  title: 'Ball-stud tapers',
  sources: [
    {
      id: 'taper-geometry',
      cites: 'geometry: half angle = atan(ratio/2), taper per foot = 12 ratio',
      mark: 'derived',
    },
    {
      id: 'taper-names',
      cites: 'machinists’ discussion of tie-rod tapers: 1.2 and 1.5 in/ft as the common North American ones',
      mark: 'published',
    },
    { id: 'taper-use', cites: 'where each taper is met: common practice, no published source', mark: 'practice' },
  ],
  key: 'name',
  columns: [
    { key: 'name', title: 'Taper' },
    { key: 'ratio', title: 'Diameter per length' },
    { key: 'in_per_ft', title: 'Taper per foot', unit: 'in/ft' },
    { key: 'half_angle_deg', title: 'Half angle', unit: '°' },
    { key: 'included_angle_deg', title: 'Included angle', unit: '°' },
    { key: 'use', title: 'Met on' },
  ],
  rows: [
    {
      name: '1:10',
      ratio: 0.1,
      in_per_ft: 1.2,
      half_angle_deg: 2.8624,
      included_angle_deg: 5.7248,
      use: 'many European and Asian tie-rod ends; some North American ones',
    },
    {
      name: '7° included',
      ratio: 0.12233,
      in_per_ft: 1.468,
      half_angle_deg: 3.5,
      included_angle_deg: 7,
      use: 'reamers sold by angle, meant for 1.5 in/ft studs: 0.15° short of it',
    },
    {
      name: '1:8',
      ratio: 0.125,
      in_per_ft: 1.5,
      half_angle_deg: 3.5763,
      included_angle_deg: 7.1527,
      use: 'the usual light and heavy truck tie-rod and drag-link stud, 1.5 in/ft',
    },
    {
      name: '1:6',
      ratio: 1 / 6,
      in_per_ft: 2,
      half_angle_deg: 4.7636,
      included_angle_deg: 9.5273,
      use: 'some ball joints, 2 in/ft',
    },
    {
      name: '10° included',
      ratio: 0.17498,
      in_per_ft: 2.1,
      half_angle_deg: 5,
      included_angle_deg: 10,
      use: 'reamers sold by angle',
    },
  ],
})

export interface StandOffBand {
  readonly min_in: number
  readonly max_in: number
  readonly source: Source
}

/** Gap wanted between the arm's face and the stud's shoulder when the taper is seated. Outside it, arm or stud is worn or wrong. */
export const STAND_OFF_BAND: StandOffBand = {
  min_in: 3 / 32,
  max_in: 1 / 4,
  source: {
    id: 'stand-off',
    cites: '1942 to 1947 passenger-car shop manual, steering section: 3/32 to 1/4 in between arm and stud shoulder',
    mark: 'published',
  },
}
