import { defineTable } from '../table.ts'

export interface BanjoBoltRow {
  /** "M14x1.5", "7/16-20", "G 1/4" */
  readonly designation: string
  readonly family: 'metric' | 'unified' | 'g'
}

/** Bolts met through banjo eyes on steering and brake lines: two washers, one on each side of the eye. */
export const BANJO_BOLTS = defineTable<BanjoBoltRow>({
  name: 'banjo-bolts',
  title: 'Banjo bolts',
  sources: [{ id: 'banjo-practice', cites: 'common practice, no published source', mark: 'practice' }],
  key: 'designation',
  columns: [
    { key: 'designation', title: 'Thread' },
    { key: 'family', title: 'Thread family' },
  ],
  rows: [
    { designation: 'M8x1', family: 'metric' },
    { designation: 'M10x1', family: 'metric' },
    { designation: 'M10x1.25', family: 'metric' },
    { designation: 'M10x1.5', family: 'metric' },
    { designation: 'M12x1', family: 'metric' },
    { designation: 'M12x1.25', family: 'metric' },
    { designation: 'M12x1.5', family: 'metric' },
    { designation: 'M14x1.5', family: 'metric' },
    { designation: 'M16x1.5', family: 'metric' },
    { designation: 'M18x1.5', family: 'metric' },
    { designation: 'M22x1.5', family: 'metric' },
    { designation: '3/8-24', family: 'unified' },
    { designation: '7/16-20', family: 'unified' },
    { designation: '7/16-24', family: 'unified' },
    { designation: '1/2-20', family: 'unified' },
    { designation: '9/16-18', family: 'unified' },
    { designation: '5/8-18', family: 'unified' },
    { designation: 'G 1/8', family: 'g' },
    { designation: 'G 1/4', family: 'g' },
    { designation: 'G 3/8', family: 'g' },
    { designation: 'G 1/2', family: 'g' },
  ],
})
