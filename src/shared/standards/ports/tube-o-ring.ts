import { defineTable } from '../table.ts'

export interface TubeORingNutRow {
  readonly designation: string
}

/** Tube nuts of steering pumps and boxes that seal with an O-ring on the tube's nose, below the thread. */
export const TUBE_O_RING_NUTS = defineTable<TubeORingNutRow>({
  name: 'tube-o-ring-nuts',
  title: 'Steering O-ring tube nuts',
  sources: [{ id: 'tube-o-ring-practice', cites: 'common practice, no published source', mark: 'practice' }],
  key: 'designation',
  columns: [{ key: 'designation', title: 'Thread' }],
  rows: [{ designation: 'M14x1.5' }, { designation: 'M16x1.5' }, { designation: 'M18x1.5' }],
})
