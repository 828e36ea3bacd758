import { defineTable } from '../table.ts'

export interface NptThreadRow {
  /** "3/8-18 NPT" */
  readonly designation: string
  readonly size: string
  readonly tpi: number
  /** outside diameter of the pipe, not a parallel major diameter */
  readonly od_in: number
  /** pitch diameter at the small end */
  readonly e0_in: number
  /** length of hand-tight engagement */
  readonly l1_in: number
  /** pitch diameter at the hand-tight plane */
  readonly e1_in: number
  /** length of effective external thread */
  readonly l2_in: number
}

/** American taper pipe threads, 1 in 16 on diameter, 60 degrees. The dryseal form (NPTF) has the same sizes. */
export const NPT_THREADS = defineTable<NptThreadRow>({
  name: 'npt-threads',
  title: 'NPT taper pipe threads',
  sources: [
    {
      id: 'b1.20.1',
      cites: 'ASME B1.20.1, Pipe Threads, General Purpose (Inch), basic dimensions of NPT, sizes 1/8 to 2: E1, L1, L2',
      mark: 'published',
      read: 'three reproductions of the table; two misprints set right: L2 of 3/8 printed 0.0478, L1 of 1-1/2 printed 0.402',
      checked: 'E0 = OD - (0.05 OD + 1.1)/n, E1 = E0 + L1/16, L2 = (0.80 OD + 6.8)/n',
    },
    {
      id: 'b1.20.1-e0',
      cites: 'ASME B1.20.1, E0 of sizes 1-1/4 to 2 by its formula; E0 of 1/8 to 1 seen in print',
      mark: 'derived',
    },
    {
      id: 'b1.20.1-memory',
      cites: 'ASME B1.20.1, size 1/16, and the fourth digit of L1 of 1/8 and 1/4 (copies print 0.162 and 0.228), from memory',
      mark: 'memory',
      checked: 'the same three formulas',
    },
  ],
  key: 'designation',
  columns: [
    { key: 'designation', title: 'Thread' },
    { key: 'size', title: 'Nominal size' },
    { key: 'tpi', title: 'Threads per inch', unit: '1/in' },
    { key: 'od_in', title: 'Pipe outside diameter', unit: 'in' },
    { key: 'e0_in', title: 'Pitch diameter at the small end, E0', unit: 'in' },
    { key: 'l1_in', title: 'Hand-tight length, L1', unit: 'in' },
    { key: 'e1_in', title: 'Pitch diameter at the hand-tight plane, E1', unit: 'in' },
    { key: 'l2_in', title: 'Effective thread length, L2', unit: 'in' },
  ],
  rows: [
    { designation: '1/16-27 NPT', size: '1/16', tpi: 27, od_in: 0.3125, e0_in: 0.27118, l1_in: 0.16, e1_in: 0.28118, l2_in: 0.2611 },
    { designation: '1/8-27 NPT', size: '1/8', tpi: 27, od_in: 0.405, e0_in: 0.36351, l1_in: 0.1615, e1_in: 0.3736, l2_in: 0.2639 },
    { designation: '1/4-18 NPT', size: '1/4', tpi: 18, od_in: 0.54, e0_in: 0.47739, l1_in: 0.2278, e1_in: 0.49163, l2_in: 0.4018 },
    { designation: '3/8-18 NPT', size: '3/8', tpi: 18, od_in: 0.675, e0_in: 0.61201, l1_in: 0.24, e1_in: 0.62701, l2_in: 0.4078 },
    { designation: '1/2-14 NPT', size: '1/2', tpi: 14, od_in: 0.84, e0_in: 0.75843, l1_in: 0.32, e1_in: 0.77843, l2_in: 0.5337 },
    { designation: '3/4-14 NPT', size: '3/4', tpi: 14, od_in: 1.05, e0_in: 0.96768, l1_in: 0.339, e1_in: 0.98887, l2_in: 0.5457 },
    { designation: '1-11.5 NPT', size: '1', tpi: 11.5, od_in: 1.315, e0_in: 1.21363, l1_in: 0.4, e1_in: 1.23863, l2_in: 0.6828 },
    { designation: '1-1/4-11.5 NPT', size: '1-1/4', tpi: 11.5, od_in: 1.66, e0_in: 1.55713, l1_in: 0.42, e1_in: 1.58338, l2_in: 0.7068 },
    { designation: '1-1/2-11.5 NPT', size: '1-1/2', tpi: 11.5, od_in: 1.9, e0_in: 1.79609, l1_in: 0.42, e1_in: 1.82234, l2_in: 0.7235 },
    { designation: '2-11.5 NPT', size: '2', tpi: 11.5, od_in: 2.375, e0_in: 2.26902, l1_in: 0.436, e1_in: 2.29627, l2_in: 0.7565 },
  ],
})

export interface GRThreadRow {
  readonly size: string
  readonly tpi: number
  /** of R at the gauge plane */
  readonly major_mm: number
  readonly pitch_diameter_mm: number
  readonly minor_mm: number
  /** false where ISO 228-1 has the parallel thread and ISO 7-1 has no taper thread */
  readonly r_exists: boolean
  /** R only: from the small end to the gauge plane, where the diameters of the row are measured; null where there is no R */
  readonly gauge_length_mm: number | null
}

/** Pipe threads of 55 degrees: parallel (G) and taper (R, Rc, Rp), which share their diameters at the gauge plane. */
export const G_R_THREADS = defineTable<GRThreadRow>({
  name: 'g-r-threads',
  title: 'G and R pipe threads',
  sources: [
    {
      id: 'iso-228-7',
      cites: 'ISO 228-1 and ISO 7-1: tpi and major diameter of every size, pitch diameter of 1/8 to 3/4 and 1, minor of 1/8 to 3/8',
      mark: 'published',
      read: 'reproductions of the tables, one of them a mechanical engineer’s pocket book, section 4.1.38, and a public copy, 25 November 2026',
      checked: 'd2 = d - 0.640327 P, d1 = d - 1.280654 P, P = 25.4/n',
    },
    {
      id: 'iso-228-7-derived',
      cites: 'the other pitch and minor diameters, by the same formulas',
      mark: 'derived',
    },
    {
      id: 'iso-7-gauge-lengths',
      cites: 'ISO 7-1, basic gauge length of the outside taper thread, sizes 1/16 to 2',
      mark: 'published',
      read: 'an encyclopedia’s table of British standard pipe sizes, 25 November 2026',
    },
    {
      id: 'iso-7-sizes',
      cites: 'ISO 7-1, which sizes have a taper thread, from memory',
      mark: 'memory',
    },
  ],
  key: 'size',
  columns: [
    { key: 'size', title: 'Nominal size' },
    { key: 'tpi', title: 'Threads per inch', unit: '1/in' },
    { key: 'major_mm', title: 'Major diameter', unit: 'mm' },
    { key: 'pitch_diameter_mm', title: 'Pitch diameter', unit: 'mm' },
    { key: 'minor_mm', title: 'Minor diameter', unit: 'mm' },
    { key: 'r_exists', title: 'Taper thread exists' },
    { key: 'gauge_length_mm', title: 'Gauge length of R', unit: 'mm' },
  ],
  rows: [
    { size: '1/16', tpi: 28, major_mm: 7.723, pitch_diameter_mm: 7.142, minor_mm: 6.561, r_exists: true, gauge_length_mm: 4 },
    { size: '1/8', tpi: 28, major_mm: 9.728, pitch_diameter_mm: 9.147, minor_mm: 8.566, r_exists: true, gauge_length_mm: 4 },
    { size: '1/4', tpi: 19, major_mm: 13.157, pitch_diameter_mm: 12.301, minor_mm: 11.445, r_exists: true, gauge_length_mm: 6 },
    { size: '3/8', tpi: 19, major_mm: 16.662, pitch_diameter_mm: 15.806, minor_mm: 14.95, r_exists: true, gauge_length_mm: 6.4 },
    { size: '1/2', tpi: 14, major_mm: 20.955, pitch_diameter_mm: 19.793, minor_mm: 18.631, r_exists: true, gauge_length_mm: 8.2 },
    { size: '5/8', tpi: 14, major_mm: 22.911, pitch_diameter_mm: 21.749, minor_mm: 20.587, r_exists: false, gauge_length_mm: null },
    { size: '3/4', tpi: 14, major_mm: 26.441, pitch_diameter_mm: 25.279, minor_mm: 24.117, r_exists: true, gauge_length_mm: 9.5 },
    { size: '7/8', tpi: 14, major_mm: 30.201, pitch_diameter_mm: 29.039, minor_mm: 27.877, r_exists: false, gauge_length_mm: null },
    { size: '1', tpi: 11, major_mm: 33.249, pitch_diameter_mm: 31.77, minor_mm: 30.291, r_exists: true, gauge_length_mm: 10.4 },
    { size: '1-1/8', tpi: 11, major_mm: 37.897, pitch_diameter_mm: 36.418, minor_mm: 34.939, r_exists: false, gauge_length_mm: null },
    { size: '1-1/4', tpi: 11, major_mm: 41.91, pitch_diameter_mm: 40.431, minor_mm: 38.952, r_exists: true, gauge_length_mm: 12.7 },
    { size: '1-1/2', tpi: 11, major_mm: 47.803, pitch_diameter_mm: 46.324, minor_mm: 44.845, r_exists: true, gauge_length_mm: 12.7 },
    { size: '1-3/4', tpi: 11, major_mm: 53.746, pitch_diameter_mm: 52.267, minor_mm: 50.788, r_exists: false, gauge_length_mm: null },
    { size: '2', tpi: 11, major_mm: 59.614, pitch_diameter_mm: 58.135, minor_mm: 56.656, r_exists: true, gauge_length_mm: 15.9 },
  ],
})
