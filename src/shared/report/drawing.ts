import type { State } from './document.ts'

/** A point on the sheet: millimetres right of and below the drawing's upper left corner. */
export interface Point {
  readonly x: number
  readonly y: number
}

/** Line kinds after ISO 128-2: wide for visible edges, thin for the rest, dashes for what is hidden, chain for axes. */
export type LineKind = 'visible' | 'thin' | 'hidden' | 'axis'

export interface Ink {
  readonly line: LineKind
  /** fills the shape lightly; the outline says the state too, by kind or by a label */
  readonly fill?: 'none' | 'part' | 'paper'
  readonly state?: State
}

export type Item =
  | { readonly kind: 'line'; readonly from: Point; readonly to: Point; readonly ink: Ink }
  | { readonly kind: 'polyline'; readonly points: readonly Point[]; readonly closed: boolean; readonly ink: Ink }
  | { readonly kind: 'circle'; readonly centre: Point; readonly radius: number; readonly ink: Ink }
  | {
      readonly kind: 'text'
      readonly at: Point
      readonly text: string
      /** height of a capital, mm: 2.5, 3.5 or 5 after ISO 3098 */
      readonly size: 2.5 | 3.5 | 5
      readonly anchor: 'start' | 'middle' | 'end'
      readonly state?: State
    }
  /** a filled arrow head at the end of a dimension line (ISO 129-1), pointing along `angle` (radians, x right, y down) */
  | { readonly kind: 'arrow'; readonly at: Point; readonly angle: number }

/** One drawing, to be painted on screen and paper alike. */
export interface Drawing {
  readonly id: string
  readonly title: string
  /** the drawing in words, for those who cannot see it */
  readonly description: string
  /** millimetres */
  readonly width: number
  readonly height: number
  readonly items: readonly Item[]
}
