import { defineTable } from '../table.ts'

export type PortFamilyName =
  | 'flare 37'
  | 'o-ring boss'
  | 'flare 45'
  | 'inverted flare'
  | 'face seal'
  | 'iso 6149'
  | 'iso 9974'
  | 'iso 1179'
  | 'cone 24 light'
  | 'cone 24 heavy'
  | 'bsp cone 60'
  | 'banjo'
  | 'tube o-ring'

export type SealMethod =
  | 'cone 37'
  | 'cone 45'
  | 'seat 42 in port'
  | 'o-ring in chamfer'
  | 'o-ring in face'
  | 'washer on flat face'
  | 'cone 24'
  | 'cone 60'
  | 'washers both sides'
  | 'o-ring on tube nose'

export interface PortFamilyRow {
  readonly family: PortFamilyName
  readonly standard: string
  readonly seal: SealMethod
  /** half angle of the sealing cone or seat; null where the seal is no cone */
  readonly half_angle_deg: number | null
  readonly thread: 'unified' | 'metric' | 'g' | 'metric, unified or g'
  readonly note: string
  /** id of the source in this table */
  readonly source: string
}

/** How each family of hydraulic connection seals. Two families may share a thread and still not seal on one another. */
export const PORT_FAMILY_FACTS = defineTable<PortFamilyRow>({
  name: 'port-families',
  title: 'Families of hydraulic connections',
  sources: [
    { id: 'j514', cites: 'SAE J514-1 DEC2021 / ISO 8434-2, scope and front matter', mark: 'published' },
    { id: 'j1926', cites: 'SAE J1926-1 to -3 / ISO 11926, summaries of the 1988 and 2023 editions', mark: 'published' },
    { id: 'j512', cites: 'SAE J512, abstract, and a reproduction of its thread and seat angles', mark: 'published' },
    { id: 'j1453', cites: 'SAE J1453-2 FEB2007 / ISO 8434-3, front matter', mark: 'published' },
    {
      id: 'iso-6149',
      cites: 'ISO 6149-1 to -3, list of sizes',
      mark: 'published',
      read: 'a size list; SAE J1926-4 JUL2009 scope for its place',
    },
    { id: 'washers', cites: 'article on sealing washers naming DIN 7603, ISO 9974 and ISO 1179', mark: 'published' },
    { id: 'iso-8434-1', cites: 'ISO 8434-1 (formerly DIN 2353), from memory', mark: 'memory' },
    { id: 'iso-8434-6', cites: 'ISO 8434-6, from memory; the 30° half angle seen in a thread note', mark: 'memory' },
    { id: 'practice', cites: 'common practice, no published source', mark: 'practice' },
  ],
  key: 'family',
  columns: [
    { key: 'family', title: 'Family' },
    { key: 'standard', title: 'Standard' },
    { key: 'seal', title: 'Seals by' },
    { key: 'half_angle_deg', title: 'Half angle', unit: '°' },
    { key: 'thread', title: 'Thread' },
    { key: 'note', title: 'Note' },
    { key: 'source', title: 'Source' },
  ],
  rows: [
    {
      family: 'flare 37',
      standard: 'SAE J514 / ISO 8434-2',
      seal: 'cone 37',
      half_angle_deg: 37,
      thread: 'unified',
      note: 'metal on metal, 74° included; shares threads with the O-ring boss and in part with the 45° flare',
      source: 'j514',
    },
    {
      family: 'o-ring boss',
      standard: 'SAE J1926 / ISO 11926',
      seal: 'o-ring in chamfer',
      half_angle_deg: null,
      thread: 'unified',
      note: 'an O-ring squeezed into the chamfered mouth of the port',
      source: 'j1926',
    },
    {
      family: 'flare 45',
      standard: 'SAE J512',
      seal: 'cone 45',
      half_angle_deg: 45,
      thread: 'unified',
      note: 'low-pressure and refrigeration flare; the 37° cone does not seal on it',
      source: 'j512',
    },
    {
      family: 'inverted flare',
      standard: 'SAE J512',
      seal: 'seat 42 in port',
      half_angle_deg: 42,
      thread: 'unified',
      note: 'a male nut presses a 45° double-flared tube on the raised 42° seat inside the port',
      source: 'j512',
    },
    {
      family: 'face seal',
      standard: 'SAE J1453 / ISO 8434-3',
      seal: 'o-ring in face',
      half_angle_deg: null,
      thread: 'unified',
      note: 'an O-ring in the flat face of the male end',
      source: 'j1453',
    },
    {
      family: 'iso 6149',
      standard: 'ISO 6149',
      seal: 'o-ring in chamfer',
      half_angle_deg: null,
      thread: 'metric',
      note: 'the metric O-ring port, the one for new designs; a raised ring or a groove marks it (the marking from memory)',
      source: 'iso-6149',
    },
    {
      family: 'iso 9974',
      standard: 'ISO 9974 (DIN 3852)',
      seal: 'washer on flat face',
      half_angle_deg: null,
      thread: 'metric',
      note: 'washer, profile ring or bonded seal on a spot face',
      source: 'washers',
    },
    {
      family: 'iso 1179',
      standard: 'ISO 1179',
      seal: 'washer on flat face',
      half_angle_deg: null,
      thread: 'g',
      note: 'washer, profile ring or bonded seal on a spot face, parallel pipe thread',
      source: 'washers',
    },
    {
      family: 'cone 24 light',
      standard: 'ISO 8434-1 (DIN 2353), L',
      seal: 'cone 24',
      half_angle_deg: 12,
      thread: 'metric',
      note: 'bite ring or O-ring cone; the same thread belongs to a smaller tube in the heavy series',
      source: 'iso-8434-1',
    },
    {
      family: 'cone 24 heavy',
      standard: 'ISO 8434-1 (DIN 2353), S',
      seal: 'cone 24',
      half_angle_deg: 12,
      thread: 'metric',
      note: 'bite ring or O-ring cone; the same thread belongs to a larger tube in the light series',
      source: 'iso-8434-1',
    },
    {
      family: 'bsp cone 60',
      standard: 'ISO 8434-6',
      seal: 'cone 60',
      half_angle_deg: 30,
      thread: 'g',
      note: 'the swivel’s cone in the seat of the male; a male with this seat has no flat face for a washer',
      source: 'iso-8434-6',
    },
    {
      family: 'banjo',
      standard: 'DIN 7603 (washers)',
      seal: 'washers both sides',
      half_angle_deg: null,
      thread: 'metric, unified or g',
      note: 'a drilled bolt through an eye, a new crush washer on each side; the port needs a full flat face',
      source: 'practice',
    },
    {
      family: 'tube o-ring',
      standard: 'none known',
      seal: 'o-ring on tube nose',
      half_angle_deg: null,
      thread: 'metric',
      note: 'steering pump and box lines: an O-ring on the tube’s nose below the thread; not a metric O-ring port',
      source: 'practice',
    },
  ],
})
