import { defineTable } from '../table.ts'

export interface CastleNutInchRow {
  readonly size: string
  readonly flats_in: string
  readonly thickness_in: string
  /** height of the unslotted part: a pin hole lower than this is covered */
  readonly floor_max_in: number
  readonly floor_min_in: number
  readonly slot_min_in: number
  readonly slot_max_in: number
  readonly slots: number
}

/** Slotted nuts for inch threads: six slots, so one sixth of a turn from slot to slot. */
export const CASTLE_NUTS_INCH = defineTable<CastleNutInchRow>({
  name: 'castle-nuts-inch',
  title: 'Slotted hex nuts, inch',
  sources: [
    { id: 'b18.2.2', cites: 'ASME B18.2.2, hex slotted nuts', mark: 'published', read: 'two reproductions of the table, 25 November 2026' },
  ],
  key: 'size',
  columns: [
    { key: 'size', title: 'Thread diameter', unit: 'in' },
    { key: 'flats_in', title: 'Width across flats', unit: 'in' },
    { key: 'thickness_in', title: 'Thickness', unit: 'in' },
    { key: 'floor_max_in', title: 'Slot floor, most', unit: 'in' },
    { key: 'floor_min_in', title: 'Slot floor, least', unit: 'in' },
    { key: 'slot_min_in', title: 'Slot width, least', unit: 'in' },
    { key: 'slot_max_in', title: 'Slot width, most', unit: 'in' },
    { key: 'slots', title: 'Slots' },
  ],
  rows: [
    {
      size: '1/4',
      flats_in: '7/16',
      thickness_in: '7/32',
      floor_max_in: 0.14,
      floor_min_in: 0.12,
      slot_min_in: 0.07,
      slot_max_in: 0.1,
      slots: 6,
    },
    {
      size: '5/16',
      flats_in: '1/2',
      thickness_in: '17/64',
      floor_max_in: 0.18,
      floor_min_in: 0.16,
      slot_min_in: 0.09,
      slot_max_in: 0.12,
      slots: 6,
    },
    {
      size: '3/8',
      flats_in: '9/16',
      thickness_in: '21/64',
      floor_max_in: 0.21,
      floor_min_in: 0.19,
      slot_min_in: 0.12,
      slot_max_in: 0.15,
      slots: 6,
    },
    {
      size: '7/16',
      flats_in: '11/16',
      thickness_in: '3/8',
      floor_max_in: 0.23,
      floor_min_in: 0.21,
      slot_min_in: 0.12,
      slot_max_in: 0.15,
      slots: 6,
    },
    {
      size: '1/2',
      flats_in: '3/4',
      thickness_in: '7/16',
      floor_max_in: 0.29,
      floor_min_in: 0.27,
      slot_min_in: 0.15,
      slot_max_in: 0.18,
      slots: 6,
    },
    {
      size: '9/16',
      flats_in: '7/8',
      thickness_in: '31/64',
      floor_max_in: 0.31,
      floor_min_in: 0.29,
      slot_min_in: 0.15,
      slot_max_in: 0.18,
      slots: 6,
    },
    {
      size: '5/8',
      flats_in: '15/16',
      thickness_in: '35/64',
      floor_max_in: 0.34,
      floor_min_in: 0.32,
      slot_min_in: 0.18,
      slot_max_in: 0.24,
      slots: 6,
    },
    {
      size: '3/4',
      flats_in: '1-1/8',
      thickness_in: '41/64',
      floor_max_in: 0.4,
      floor_min_in: 0.38,
      slot_min_in: 0.18,
      slot_max_in: 0.24,
      slots: 6,
    },
    {
      size: '7/8',
      flats_in: '1-5/16',
      thickness_in: '3/4',
      floor_max_in: 0.52,
      floor_min_in: 0.49,
      slot_min_in: 0.18,
      slot_max_in: 0.24,
      slots: 6,
    },
    {
      size: '1',
      flats_in: '1-1/2',
      thickness_in: '55/64',
      floor_max_in: 0.59,
      floor_min_in: 0.56,
      slot_min_in: 0.24,
      slot_max_in: 0.3,
      slots: 6,
    },
    {
      size: '1-1/8',
      flats_in: '1-11/16',
      thickness_in: '31/32',
      floor_max_in: 0.64,
      floor_min_in: 0.61,
      slot_min_in: 0.24,
      slot_max_in: 0.33,
      slots: 6,
    },
    {
      size: '1-1/4',
      flats_in: '1-7/8',
      thickness_in: '1-1/16',
      floor_max_in: 0.7,
      floor_min_in: 0.67,
      slot_min_in: 0.31,
      slot_max_in: 0.4,
      slots: 6,
    },
  ],
})

export interface CastleNutMetricRow {
  readonly size: string
  readonly flats_mm: number
  readonly thickness_mm: number
  /** height of the unslotted part */
  readonly floor_max_mm: number
  readonly slot_min_mm: number
  readonly slot_max_mm: number
  readonly slots: number
}

/** Castle nuts for metric threads, six slots. */
export const CASTLE_NUTS_METRIC = defineTable<CastleNutMetricRow>({
  name: 'castle-nuts-metric',
  title: 'Castle nuts, metric',
  sources: [
    {
      id: 'din-935',
      cites: 'DIN 935-1, hexagon slotted and castle nuts',
      mark: 'published',
      read: 'two reproductions of the table, 25 November 2026',
    },
  ],
  key: 'size',
  columns: [
    { key: 'size', title: 'Thread diameter' },
    { key: 'flats_mm', title: 'Width across flats', unit: 'mm' },
    { key: 'thickness_mm', title: 'Thickness', unit: 'mm' },
    { key: 'floor_max_mm', title: 'Slot floor, most', unit: 'mm' },
    { key: 'slot_min_mm', title: 'Slot width, least', unit: 'mm' },
    { key: 'slot_max_mm', title: 'Slot width, most', unit: 'mm' },
    { key: 'slots', title: 'Slots' },
  ],
  rows: [
    { size: 'M6', flats_mm: 10, thickness_mm: 7.5, floor_max_mm: 5, slot_min_mm: 2, slot_max_mm: 2.25, slots: 6 },
    { size: 'M8', flats_mm: 13, thickness_mm: 9.5, floor_max_mm: 6.5, slot_min_mm: 2.5, slot_max_mm: 2.75, slots: 6 },
    { size: 'M10', flats_mm: 16, thickness_mm: 12, floor_max_mm: 8, slot_min_mm: 2.8, slot_max_mm: 3.05, slots: 6 },
    { size: 'M12', flats_mm: 18, thickness_mm: 15, floor_max_mm: 10, slot_min_mm: 3.5, slot_max_mm: 3.8, slots: 6 },
    { size: 'M14', flats_mm: 21, thickness_mm: 16, floor_max_mm: 11, slot_min_mm: 3.5, slot_max_mm: 3.8, slots: 6 },
    { size: 'M16', flats_mm: 24, thickness_mm: 19, floor_max_mm: 13, slot_min_mm: 4.5, slot_max_mm: 4.8, slots: 6 },
    { size: 'M18', flats_mm: 27, thickness_mm: 21, floor_max_mm: 15, slot_min_mm: 4.5, slot_max_mm: 4.8, slots: 6 },
    { size: 'M20', flats_mm: 30, thickness_mm: 22, floor_max_mm: 16, slot_min_mm: 4.5, slot_max_mm: 4.8, slots: 6 },
    { size: 'M22', flats_mm: 34, thickness_mm: 26, floor_max_mm: 18, slot_min_mm: 5.5, slot_max_mm: 5.8, slots: 6 },
    { size: 'M24', flats_mm: 36, thickness_mm: 27, floor_max_mm: 19, slot_min_mm: 5.5, slot_max_mm: 5.8, slots: 6 },
    { size: 'M27', flats_mm: 41, thickness_mm: 30, floor_max_mm: 22, slot_min_mm: 5.5, slot_max_mm: 5.8, slots: 6 },
  ],
})
