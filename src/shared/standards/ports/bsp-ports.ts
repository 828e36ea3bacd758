import { defineTable } from '../table.ts'

export interface BspPortRow {
  /** "G 1/4" */
  readonly designation: string
  /** least diameter of the flat round the mouth */
  readonly spot_face_mm: number
}

/** Ports with a G thread and a flat face: a washer, a profile ring or a bonded seal does the sealing. */
export const ISO_1179_PORTS = defineTable<BspPortRow>({
  name: 'iso-1179-ports',
  title: 'G-thread flat-face ports, ISO 1179',
  sources: [
    {
      id: 'din-3852-2',
      cites: 'DIN 3852-2, port form X, the pattern that ISO 1179-1 took over: threads and spot faces',
      mark: 'published',
      read: 'a table of stud and port forms, 25 November 2026; its "G 1/5" is a misprint for G 1/2',
    },
  ],
  key: 'designation',
  columns: [
    { key: 'designation', title: 'Thread' },
    { key: 'spot_face_mm', title: 'Spot face, least diameter', unit: 'mm' },
  ],
  rows: [
    { designation: 'G 1/8', spot_face_mm: 15 },
    { designation: 'G 1/4', spot_face_mm: 19 },
    { designation: 'G 3/8', spot_face_mm: 23 },
    { designation: 'G 1/2', spot_face_mm: 27 },
    { designation: 'G 3/4', spot_face_mm: 33 },
    { designation: 'G 1', spot_face_mm: 40 },
    { designation: 'G 1-1/4', spot_face_mm: 50 },
    { designation: 'G 1-1/2', spot_face_mm: 56 },
  ],
})

export interface BspConeRow {
  readonly designation: string
}

/** Fittings with a G thread and a 60 degree included cone: the male carries the seat. */
export const BSP_CONES = defineTable<BspConeRow>({
  name: 'bsp-cones',
  title: 'G-thread fittings with a 60° cone',
  sources: [
    {
      id: 'bspp-chart',
      cites: 'BSPP male with 30° seat and swivel nose (ISO 8434-6), sizes and threads per inch',
      mark: 'published',
      read: 'an international thread chart, 25 November 2026; its tie to ISO 8434-6 is from memory',
    },
  ],
  key: 'designation',
  columns: [{ key: 'designation', title: 'Thread' }],
  rows: [
    { designation: 'G 1/8' },
    { designation: 'G 1/4' },
    { designation: 'G 3/8' },
    { designation: 'G 1/2' },
    { designation: 'G 5/8' },
    { designation: 'G 3/4' },
    { designation: 'G 1' },
    { designation: 'G 1-1/4' },
    { designation: 'G 1-1/2' },
    { designation: 'G 2' },
  ],
})
