import { defineTable } from '../table.ts'

export interface Iso6149PortRow {
  /** "M16x1.5" */
  readonly designation: string
  readonly o_ring_inside_mm: number
  readonly o_ring_section_mm: number
}

/** Metric ports with an O-ring in a chamfered mouth. */
export const ISO_6149_PORTS = defineTable<Iso6149PortRow>({
  name: 'iso-6149-ports',
  title: 'Metric O-ring ports, ISO 6149',
  sources: [
    { id: 'iso-6149-threads', cites: 'ISO 6149-1, list of port threads', mark: 'published', read: 'a metric O-ring port size chart' },
    { id: 'iso-6149-o-rings', cites: 'ISO 6149-2, O-ring of each stud end, from memory', mark: 'memory' },
  ],
  key: 'designation',
  columns: [
    { key: 'designation', title: 'Thread' },
    { key: 'o_ring_inside_mm', title: 'O-ring inside diameter', unit: 'mm' },
    { key: 'o_ring_section_mm', title: 'O-ring section', unit: 'mm' },
  ],
  rows: [
    { designation: 'M8x1', o_ring_inside_mm: 6.1, o_ring_section_mm: 1.6 },
    { designation: 'M10x1', o_ring_inside_mm: 8.1, o_ring_section_mm: 1.6 },
    { designation: 'M12x1.5', o_ring_inside_mm: 9.3, o_ring_section_mm: 2.2 },
    { designation: 'M14x1.5', o_ring_inside_mm: 11.3, o_ring_section_mm: 2.2 },
    { designation: 'M16x1.5', o_ring_inside_mm: 13.3, o_ring_section_mm: 2.2 },
    { designation: 'M18x1.5', o_ring_inside_mm: 15.3, o_ring_section_mm: 2.2 },
    { designation: 'M22x1.5', o_ring_inside_mm: 19.3, o_ring_section_mm: 2.2 },
    { designation: 'M27x2', o_ring_inside_mm: 23.6, o_ring_section_mm: 2.9 },
    { designation: 'M33x2', o_ring_inside_mm: 29.6, o_ring_section_mm: 2.9 },
    { designation: 'M42x2', o_ring_inside_mm: 38.6, o_ring_section_mm: 2.9 },
    { designation: 'M48x2', o_ring_inside_mm: 44.6, o_ring_section_mm: 2.9 },
    { designation: 'M60x2', o_ring_inside_mm: 56.6, o_ring_section_mm: 2.9 },
  ],
})

export interface Iso9974PortRow {
  readonly designation: string
  /** least diameter of the flat round the mouth */
  readonly spot_face_mm: number
  /** flat sealing ring under the shoulder */
  readonly washer_inside_mm: number
  readonly washer_outside_mm: number
}

/** Metric ports with a flat spot face; a washer, a profile ring or a bonded seal does the sealing. */
export const ISO_9974_PORTS = defineTable<Iso9974PortRow>({
  name: 'iso-9974-ports',
  title: 'Metric flat-face ports, ISO 9974',
  sources: [
    {
      id: 'din-3852-1',
      cites: 'DIN 3852-1, port form X, the pattern that ISO 9974-1 took over: threads and spot faces',
      mark: 'published',
      read: 'a table of stud and port forms, 25 November 2026',
    },
    { id: 'din-7603-washers', cites: 'DIN 7603 flat sealing rings for these studs, from memory', mark: 'memory' },
  ],
  key: 'designation',
  columns: [
    { key: 'designation', title: 'Thread' },
    { key: 'spot_face_mm', title: 'Spot face, least diameter', unit: 'mm' },
    { key: 'washer_inside_mm', title: 'Washer inside diameter', unit: 'mm' },
    { key: 'washer_outside_mm', title: 'Washer outside diameter', unit: 'mm' },
  ],
  rows: [
    { designation: 'M10x1', spot_face_mm: 15, washer_inside_mm: 10, washer_outside_mm: 13.5 },
    { designation: 'M12x1.5', spot_face_mm: 18, washer_inside_mm: 12, washer_outside_mm: 15.5 },
    { designation: 'M14x1.5', spot_face_mm: 20, washer_inside_mm: 14, washer_outside_mm: 18 },
    { designation: 'M16x1.5', spot_face_mm: 22, washer_inside_mm: 16, washer_outside_mm: 20 },
    { designation: 'M18x1.5', spot_face_mm: 24, washer_inside_mm: 18, washer_outside_mm: 22 },
    { designation: 'M20x1.5', spot_face_mm: 26, washer_inside_mm: 20, washer_outside_mm: 24 },
    { designation: 'M22x1.5', spot_face_mm: 28, washer_inside_mm: 22, washer_outside_mm: 27 },
    { designation: 'M26x1.5', spot_face_mm: 32, washer_inside_mm: 26, washer_outside_mm: 31 },
    { designation: 'M27x2', spot_face_mm: 33, washer_inside_mm: 27, washer_outside_mm: 32 },
    { designation: 'M33x2', spot_face_mm: 40, washer_inside_mm: 33, washer_outside_mm: 39 },
    { designation: 'M42x2', spot_face_mm: 50, washer_inside_mm: 42, washer_outside_mm: 49 },
    { designation: 'M48x2', spot_face_mm: 56, washer_inside_mm: 48, washer_outside_mm: 55 },
  ],
})

export interface Cone24Row {
  readonly series: 'light' | 'heavy'
  readonly tube_mm: number
  readonly thread: string
  /** tube outside diameter and series: "10L", "12S" */
  readonly designation: string
}

/** Metric tube fittings with the 24 degree cone: thread by series and tube. The same thread serves two tubes, one in each series. */
export const CONE_24 = defineTable<Cone24Row>({
  name: 'cone-24',
  title: '24° cone tube fittings',
  sources: [
    {
      id: 'din-3902',
      cites: 'DIN 3902, male threads by tube and series, the pattern of ISO 8434-1 (formerly DIN 2353)',
      mark: 'published',
      read: 'a reproduction of the table, 25 November 2026',
    },
  ],
  key: 'designation',
  columns: [
    { key: 'designation', title: 'Size' },
    { key: 'series', title: 'Series' },
    { key: 'tube_mm', title: 'Tube outside diameter', unit: 'mm' },
    { key: 'thread', title: 'Thread' },
  ],
  rows: [
    { series: 'light', tube_mm: 6, thread: 'M12x1.5', designation: '6L' },
    { series: 'light', tube_mm: 8, thread: 'M14x1.5', designation: '8L' },
    { series: 'light', tube_mm: 10, thread: 'M16x1.5', designation: '10L' },
    { series: 'light', tube_mm: 12, thread: 'M18x1.5', designation: '12L' },
    { series: 'light', tube_mm: 15, thread: 'M22x1.5', designation: '15L' },
    { series: 'light', tube_mm: 18, thread: 'M26x1.5', designation: '18L' },
    { series: 'light', tube_mm: 22, thread: 'M30x2', designation: '22L' },
    { series: 'light', tube_mm: 28, thread: 'M36x2', designation: '28L' },
    { series: 'light', tube_mm: 35, thread: 'M45x2', designation: '35L' },
    { series: 'light', tube_mm: 42, thread: 'M52x2', designation: '42L' },
    { series: 'heavy', tube_mm: 6, thread: 'M14x1.5', designation: '6S' },
    { series: 'heavy', tube_mm: 8, thread: 'M16x1.5', designation: '8S' },
    { series: 'heavy', tube_mm: 10, thread: 'M18x1.5', designation: '10S' },
    { series: 'heavy', tube_mm: 12, thread: 'M20x1.5', designation: '12S' },
    { series: 'heavy', tube_mm: 14, thread: 'M22x1.5', designation: '14S' },
    { series: 'heavy', tube_mm: 16, thread: 'M24x1.5', designation: '16S' },
    { series: 'heavy', tube_mm: 20, thread: 'M30x2', designation: '20S' },
    { series: 'heavy', tube_mm: 25, thread: 'M36x2', designation: '25S' },
    { series: 'heavy', tube_mm: 30, thread: 'M42x2', designation: '30S' },
    { series: 'heavy', tube_mm: 38, thread: 'M52x2', designation: '38S' },
  ],
})
