import { defineTable } from '../table.ts'

export interface BspPortRow {
  /** "G 1/4" */
  readonly designation: string
}

/** Ports with a G thread and a flat face: a washer, a profile ring or a bonded seal does the sealing. */
export const ISO_1179_PORTS = defineTable<BspPortRow>({
  name: 'iso-1179-ports',
  title: 'G-thread flat-face ports, ISO 1179',
  sources: [{ id: 'iso-1179', cites: 'ISO 1179-1, list of port threads, from memory', mark: 'memory' }],
  key: 'designation',
  columns: [{ key: 'designation', title: 'Thread' }],
  rows: [
    { designation: 'G 1/8' },
    { designation: 'G 1/4' },
    { designation: 'G 3/8' },
    { designation: 'G 1/2' },
    { designation: 'G 3/4' },
    { designation: 'G 1' },
    { designation: 'G 1-1/4' },
    { designation: 'G 1-1/2' },
  ],
})

export interface BspConeRow {
  readonly designation: string
}

/** Fittings with a G thread and a 60 degree included cone: the male carries the seat. */
export const BSP_CONES = defineTable<BspConeRow>({
  name: 'bsp-cones',
  title: 'G-thread fittings with a 60° cone',
  sources: [{ id: 'iso-8434-6', cites: 'ISO 8434-6, list of threads, from memory', mark: 'memory' }],
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
