import { defineTable } from '../table.ts'

export interface RodEndRow {
  readonly id: string
  readonly bore_in: number
  readonly thread: string
  /** null where makers differ too much */
  readonly ball_width_in: number | null
}

/** Male rod ends with right- or left-hand shank. */
export const ROD_ENDS = defineTable<RodEndRow>({
  name: 'rod-ends',
  title: 'Spherical rod ends, inch, male',
  sources: [
    { id: 'rod-ends-memory', cites: 'common male inch rod ends, bore, shank and ball width, from memory; makers differ', mark: 'memory' },
  ],
  key: 'id',
  columns: [
    { key: 'id', title: 'Bore x shank' },
    { key: 'bore_in', title: 'Bore', unit: 'in' },
    { key: 'thread', title: 'Shank thread' },
    { key: 'ball_width_in', title: 'Ball width', unit: 'in' },
  ],
  rows: [
    { id: '1/4 x 1/4-28', bore_in: 0.25, thread: '1/4-28', ball_width_in: 0.375 },
    { id: '5/16 x 5/16-24', bore_in: 0.3125, thread: '5/16-24', ball_width_in: 0.4375 },
    { id: '3/8 x 3/8-24', bore_in: 0.375, thread: '3/8-24', ball_width_in: 0.5 },
    { id: '7/16 x 7/16-20', bore_in: 0.4375, thread: '7/16-20', ball_width_in: 0.5625 },
    { id: '1/2 x 1/2-20', bore_in: 0.5, thread: '1/2-20', ball_width_in: 0.625 },
    { id: '5/8 x 5/8-18', bore_in: 0.625, thread: '5/8-18', ball_width_in: 0.75 },
    { id: '5/8 x 3/4-16', bore_in: 0.625, thread: '3/4-16', ball_width_in: null },
    { id: '3/4 x 3/4-16', bore_in: 0.75, thread: '3/4-16', ball_width_in: 0.875 },
    { id: '3/4 x 7/8-14', bore_in: 0.75, thread: '7/8-14', ball_width_in: null },
    { id: '7/8 x 7/8-14', bore_in: 0.875, thread: '7/8-14', ball_width_in: 0.875 },
    { id: '1 x 1-14', bore_in: 1, thread: '1-14', ball_width_in: null },
    { id: '1 x 1-1/4-12', bore_in: 1, thread: '1-1/4-12', ball_width_in: 1.375 },
  ],
})

export interface ClevisBoreRow {
  readonly size: string
  readonly bore_in: number
}

/** Bores met in ram eyes, clevises and brackets. */
export const CLEVIS_BORES = defineTable<ClevisBoreRow>({
  name: 'clevis-bores',
  title: 'Clevis and pin bores of rams',
  sources: [{ id: 'clevis-practice', cites: 'common practice, no published source', mark: 'practice' }],
  key: 'size',
  columns: [
    { key: 'size', title: 'Size' },
    { key: 'bore_in', title: 'Bore', unit: 'in' },
  ],
  rows: [
    { size: '1/2 in', bore_in: 0.5 },
    { size: '5/8 in', bore_in: 0.625 },
    { size: '3/4 in', bore_in: 0.75 },
    { size: '7/8 in', bore_in: 0.875 },
    { size: '1 in', bore_in: 1 },
  ],
})
