import type { Source } from './source.ts'

export interface Column {
  readonly key: string
  readonly title: string
  /** unit the figures are printed in, as the standard prints them; absent for names and counts */
  readonly unit?: string
}

export type Cell = string | number | boolean | null

/**
 * A table of a standard as data: rows keyed by designation, holding what the standard prints (inch rows keep inches and
 * whole threads per inch). A cell that the standard leaves empty, or that nobody here has seen, is null.
 */
export interface StandardTable<Row extends object = object> {
  readonly name: string
  readonly title: string
  readonly sources: readonly Source[]
  /** the key of the column that names a row; unique in the table */
  readonly key: string
  readonly columns: readonly Column[]
  readonly rows: readonly Row[]
}

export const defineTable = <const Row extends object>(table: StandardTable<Row>): StandardTable<Row> => table
