import { defineTable } from '../table.ts'

export interface CotterHoleInchRow {
  readonly size: string
  readonly pin_in: string
  readonly hole_in: number
}

/** Cotter pin and hole by thread diameter, inch. */
export const COTTER_HOLES_INCH = defineTable<CotterHoleInchRow>({
  name: 'cotter-holes-inch',
  title: 'Cotter pins and holes, inch',
  sources: [
    {
      id: 'b18.8.1',
      cites: 'ASME B18.8.1, cotter pins: nominal size and gauge hole',
      mark: 'published',
      read: 'a reproduction of the table, 25 November 2026',
    },
    {
      id: 'pin-by-thread',
      cites: 'which pin belongs to which thread, from memory',
      mark: 'memory',
      checked: 'pin passes the slot of the ASME B18.2.2 slotted nut',
    },
  ],
  key: 'size',
  columns: [
    { key: 'size', title: 'Thread diameter', unit: 'in' },
    { key: 'pin_in', title: 'Cotter pin', unit: 'in' },
    { key: 'hole_in', title: 'Hole', unit: 'in' },
  ],
  rows: [
    { size: '1/4', pin_in: '1/16', hole_in: 0.078 },
    { size: '5/16', pin_in: '1/16', hole_in: 0.078 },
    { size: '3/8', pin_in: '3/32', hole_in: 0.109 },
    { size: '7/16', pin_in: '3/32', hole_in: 0.109 },
    { size: '1/2', pin_in: '1/8', hole_in: 0.141 },
    { size: '9/16', pin_in: '1/8', hole_in: 0.141 },
    { size: '5/8', pin_in: '5/32', hole_in: 0.172 },
    { size: '3/4', pin_in: '5/32', hole_in: 0.172 },
    { size: '7/8', pin_in: '5/32', hole_in: 0.172 },
    { size: '1', pin_in: '3/16', hole_in: 0.203 },
    { size: '1-1/8', pin_in: '3/16', hole_in: 0.203 },
    { size: '1-1/4', pin_in: '7/32', hole_in: 0.234 },
  ],
})

export interface CotterHoleMetricRow {
  readonly size: string
  /** nominal size, which is the diameter of the hole */
  readonly pin_mm: number
}

/** Split pin by thread diameter, metric. */
export const COTTER_HOLES_METRIC = defineTable<CotterHoleMetricRow>({
  name: 'cotter-holes-metric',
  title: 'Cotter pins and holes, metric',
  sources: [
    { id: 'din-935', cites: 'DIN 935-1, split pin by thread', mark: 'published', read: 'a reproduction of the table, 25 November 2026' },
    { id: 'iso-1234', cites: 'ISO 1234: a pin’s nominal size is the diameter of its hole; M24 and M27 pin, from memory', mark: 'memory' },
  ],
  key: 'size',
  columns: [
    { key: 'size', title: 'Thread diameter' },
    { key: 'pin_mm', title: 'Split pin', unit: 'mm' },
  ],
  rows: [
    { size: 'M6', pin_mm: 1.6 },
    { size: 'M8', pin_mm: 2 },
    { size: 'M10', pin_mm: 2.5 },
    { size: 'M12', pin_mm: 3.2 },
    { size: 'M14', pin_mm: 3.2 },
    { size: 'M16', pin_mm: 4 },
    { size: 'M18', pin_mm: 4 },
    { size: 'M20', pin_mm: 4 },
    { size: 'M22', pin_mm: 5 },
    { size: 'M24', pin_mm: 5 },
    { size: 'M27', pin_mm: 5 },
  ],
})
