import { defineTable } from '../table.ts'

export interface BoltGradeRow {
  readonly id: string
  readonly grade: '2' | '5' | '8'
  /** diameter greater than this, except that the first row of a grade includes it */
  readonly over_in: number
  /** and up to this, inclusive */
  readonly to_in: number
  readonly proof_ksi: number
  readonly yield_ksi: number
  readonly tensile_ksi: number
  readonly note: string | null
}

/** Strength of inch bolts by grade and size. Grade 5 holds its higher figures up to and including 1 in. */
export const BOLT_GRADES = defineTable<BoltGradeRow>({
  name: 'bolt-grades',
  title: 'Inch bolt grades, SAE J429',
  sources: [
    {
      id: 'j429',
      cites: 'SAE J429, mechanical and material requirements for externally threaded fasteners',
      mark: 'published',
      read: 'a reproduction of the table',
    },
  ],
  key: 'id',
  columns: [
    { key: 'id', title: 'Row' },
    { key: 'grade', title: 'Grade' },
    { key: 'over_in', title: 'Over', unit: 'in' },
    { key: 'to_in', title: 'To', unit: 'in' },
    { key: 'proof_ksi', title: 'Proof stress', unit: 'ksi' },
    { key: 'yield_ksi', title: 'Yield', unit: 'ksi' },
    { key: 'tensile_ksi', title: 'Tensile strength, least', unit: 'ksi' },
    { key: 'note', title: 'Note' },
  ],
  rows: [
    {
      id: '2 to 3/4',
      grade: '2',
      over_in: 0.25,
      to_in: 0.75,
      proof_ksi: 55,
      yield_ksi: 57,
      tensile_ksi: 74,
      note: 'above 6 in long it falls to grade 1',
    },
    { id: '2 over 3/4', grade: '2', over_in: 0.75, to_in: 1.5, proof_ksi: 33, yield_ksi: 36, tensile_ksi: 60, note: null },
    { id: '5 to 1', grade: '5', over_in: 0.25, to_in: 1, proof_ksi: 85, yield_ksi: 92, tensile_ksi: 120, note: null },
    { id: '5 over 1', grade: '5', over_in: 1, to_in: 1.5, proof_ksi: 74, yield_ksi: 81, tensile_ksi: 105, note: null },
    { id: '8', grade: '8', over_in: 0.25, to_in: 1.5, proof_ksi: 120, yield_ksi: 130, tensile_ksi: 150, note: null },
  ],
})
