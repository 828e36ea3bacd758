import { defineTable } from '../table.ts'

export interface ORingBossTorqueRow {
  /** "3/4-16 low" */
  readonly id: string
  readonly thread: string
  /** the two published series differ by about two: a sheet must say which it prints */
  readonly series: 'low' | 'high'
  readonly torque_nm: number
  /** null where the source prints none */
  readonly tolerance_nm: number | null
  readonly torque_lbf_ft: number
  /** id of the source in this table */
  readonly source: string
}

/** Torque of straight-thread O-ring ends in steel. Two published series stand side by side; neither is a mean of the other. */
export const O_RING_BOSS_TORQUES = defineTable<ORingBossTorqueRow>({
  name: 'o-ring-boss-torques',
  title: 'O-ring boss assembly torque, two series',
  sources: [
    {
      id: 'farm-chart',
      cites:
        'agricultural-machine manual, O-ring boss fitting torque chart of 21 October 1996; windrower setup manual, form 169558 rev D, page 8',
      mark: 'published',
    },
    {
      id: 'engine-manual',
      cites:
        'diesel-engine workshop manual TSD3450E issue 1, pages 21 and 23: straight-thread O-ring fittings, ferrous; half of it in non-ferrous parts',
      mark: 'published',
    },
    {
      id: 'which-series',
      cites: 'the low series for adjustable ends and for anything not shown to be high-pressure: common practice, no published source',
      mark: 'practice',
    },
  ],
  key: 'id',
  columns: [
    { key: 'id', title: 'Row' },
    { key: 'thread', title: 'Thread' },
    { key: 'series', title: 'Series' },
    { key: 'torque_nm', title: 'Torque', unit: 'N·m' },
    { key: 'tolerance_nm', title: 'Tolerance, plus or minus', unit: 'N·m' },
    { key: 'torque_lbf_ft', title: 'Torque', unit: 'lbf·ft' },
    { key: 'source', title: 'Source' },
  ],
  rows: [
    { id: '3/8-24 low', thread: '3/8-24', series: 'low', torque_nm: 8, tolerance_nm: null, torque_lbf_ft: 6, source: 'farm-chart' },
    { id: '7/16-20 low', thread: '7/16-20', series: 'low', torque_nm: 12, tolerance_nm: null, torque_lbf_ft: 9, source: 'farm-chart' },
    { id: '1/2-20 low', thread: '1/2-20', series: 'low', torque_nm: 16, tolerance_nm: null, torque_lbf_ft: 12, source: 'farm-chart' },
    { id: '9/16-18 low', thread: '9/16-18', series: 'low', torque_nm: 24, tolerance_nm: null, torque_lbf_ft: 18, source: 'farm-chart' },
    { id: '3/4-16 low', thread: '3/4-16', series: 'low', torque_nm: 46, tolerance_nm: null, torque_lbf_ft: 34, source: 'farm-chart' },
    { id: '7/8-14 low', thread: '7/8-14', series: 'low', torque_nm: 62, tolerance_nm: null, torque_lbf_ft: 46, source: 'farm-chart' },
    {
      id: '1-1/16-12 low',
      thread: '1-1/16-12',
      series: 'low',
      torque_nm: 102,
      tolerance_nm: null,
      torque_lbf_ft: 75,
      source: 'farm-chart',
    },
    {
      id: '1-3/16-12 low',
      thread: '1-3/16-12',
      series: 'low',
      torque_nm: 122,
      tolerance_nm: null,
      torque_lbf_ft: 90,
      source: 'farm-chart',
    },
    {
      id: '1-5/16-12 low',
      thread: '1-5/16-12',
      series: 'low',
      torque_nm: 142,
      tolerance_nm: null,
      torque_lbf_ft: 105,
      source: 'farm-chart',
    },
    { id: '5/16-24 high', thread: '5/16-24', series: 'high', torque_nm: 5, tolerance_nm: 1.5, torque_lbf_ft: 4, source: 'engine-manual' },
    { id: '3/8-24 high', thread: '3/8-24', series: 'high', torque_nm: 12, tolerance_nm: 2, torque_lbf_ft: 9, source: 'engine-manual' },
    { id: '7/16-20 high', thread: '7/16-20', series: 'high', torque_nm: 22, tolerance_nm: 2, torque_lbf_ft: 16, source: 'engine-manual' },
    { id: '1/2-20 high', thread: '1/2-20', series: 'high', torque_nm: 30, tolerance_nm: 3, torque_lbf_ft: 22, source: 'engine-manual' },
    { id: '9/16-18 high', thread: '9/16-18', series: 'high', torque_nm: 48, tolerance_nm: 5, torque_lbf_ft: 35, source: 'engine-manual' },
    { id: '3/4-16 high', thread: '3/4-16', series: 'high', torque_nm: 82, tolerance_nm: 8, torque_lbf_ft: 60, source: 'engine-manual' },
    { id: '7/8-14 high', thread: '7/8-14', series: 'high', torque_nm: 143, tolerance_nm: 15, torque_lbf_ft: 105, source: 'engine-manual' },
    {
      id: '1-1/16-12 high',
      thread: '1-1/16-12',
      series: 'high',
      torque_nm: 190,
      tolerance_nm: 20,
      torque_lbf_ft: 140,
      source: 'engine-manual',
    },
    {
      id: '1-3/16-12 high',
      thread: '1-3/16-12',
      series: 'high',
      torque_nm: 250,
      tolerance_nm: 25,
      torque_lbf_ft: 185,
      source: 'engine-manual',
    },
    {
      id: '1-5/16-12 high',
      thread: '1-5/16-12',
      series: 'high',
      torque_nm: 300,
      tolerance_nm: 30,
      torque_lbf_ft: 220,
      source: 'engine-manual',
    },
  ],
})
