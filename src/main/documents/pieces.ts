import { newPage, type Sheet } from './sheet.ts'

/** A strip of the sheet that is never cut: its height in points, and how to draw it at a height down the page. */
export interface Piece {
  readonly height: number
  readonly draw: (y: number) => void
  /** empty space before it, left out at the head of a page */
  readonly gap?: number
  /** must stand on the same page as the piece after it */
  readonly keep?: boolean
  /** drawn again above it when a page break falls before it: a table's head */
  readonly again?: Piece
}

/** Places pieces one below another and breaks pages between them, so that what is to be kept together is. */
export function place(sheet: Sheet, pieces: readonly Piece[]): void {
  let i = 0
  while (i < pieces.length) {
    const group = keptTogether(pieces, i)
    const first = group[0] as Piece
    const wanted = group.reduce((sum, p) => sum + p.height + (p.gap ?? 0), 0)
    if (sheet.y > sheet.top && sheet.y + wanted > sheet.bottom) breakBefore(sheet, first)
    for (const piece of group) {
      if (sheet.y > sheet.top) sheet.y += piece.gap ?? 0
      if (sheet.y > sheet.top && sheet.y + piece.height > sheet.bottom) breakBefore(sheet, piece)
      piece.draw(sheet.y)
      sheet.y += piece.height
    }
    i += group.length
  }
}

function keptTogether(pieces: readonly Piece[], from: number): readonly Piece[] {
  let end = from
  while (end < pieces.length - 1 && pieces[end]?.keep) end += 1
  return pieces.slice(from, end + 1)
}

function breakBefore(sheet: Sheet, piece: Piece): void {
  newPage(sheet)
  if (!piece.again) return
  piece.again.draw(sheet.y)
  sheet.y += piece.again.height
}

/** The room a single page offers. */
export const pageRoom = (sheet: Sheet): number => sheet.bottom - sheet.top
