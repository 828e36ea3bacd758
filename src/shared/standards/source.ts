/**
 * Where a figure comes from and how well it is known.
 *
 * - `published`: seen in the publication named, or in a copy of it
 * - `derived`: follows by arithmetic from published figures
 * - `practice`: common practice, no published source
 * - `memory`: from memory, not seen in a document
 */
export type SourceMark = 'published' | 'derived' | 'practice' | 'memory'

export interface Source {
  readonly id: string
  /** the publication as a reader would look it up: standard or book, edition, table or page */
  readonly cites: string
  readonly mark: SourceMark
  /** where the figures were read, and the day, when that is not the publication itself */
  readonly read?: string
  /** what they were checked against */
  readonly checked?: string
}
