import type { Severity } from '../planner/plan.ts'
import type { Drawing } from './drawing.ts'

/**
 * A report as data: words, order and digits are settled here, and painted unchanged to the screen, to PDF and to the
 * terminal. Painters lay out; they neither compute nor reword.
 */
export interface Document {
  readonly title: string
  /** "Larch · front axle and assist steering · revision 7" */
  readonly subject: string
  readonly language: 'en'
  /** printed on every page beside the page number */
  readonly footer: string
  /** day of printing, ISO; handed in by the edge, since shared reads no clock */
  readonly printedOn: string
  readonly sections: readonly Section[]
}

export interface Section {
  /** stable: "stops", "parts", "fit", "survey", "ram", "fluid", "torque", "checklist", "cautions", "workings" */
  readonly id: string
  readonly heading: string
  readonly blocks: readonly Block[]
  readonly startsPage?: boolean
}

export interface TableColumn {
  readonly title: string
  readonly align: 'left' | 'right' | 'centre'
  /** share of the width */
  readonly weight: number
}

/** A cell: its text; `state` adds a shape as well as a colour; `box` is an empty box to write in; `tick` an empty square to tick. */
export type DocumentCell =
  | { readonly kind: 'text'; readonly text: string; readonly second?: string; readonly strong?: boolean; readonly number?: string }
  | { readonly kind: 'state'; readonly state: State; readonly text: string }
  | { readonly kind: 'box' }
  | { readonly kind: 'tick' }

/** How something stands; each is shown by a word and a shape beside its colour. */
export type State = 'good' | 'noted' | 'look' | 'stops' | 'unknown'

export interface FindingText {
  readonly code: string
  readonly severity: Severity
  readonly title: string
  readonly why: string
  readonly todo: string
  /** "stud taper 1:8", "arm taper 1:10" */
  readonly evidence: readonly string[]
  /** place in the build file it is about, as a path */
  readonly about: readonly (string | number)[]
  readonly aboutText: string
  readonly numbers: readonly string[]
}

export interface NumberText {
  readonly id: string
  readonly label: string
  readonly value: string
  /** the same in the other unit system, where both are shown */
  readonly second: string | null
  readonly uncertainty: string | null
}

/** What an input of a margin does to it. */
export interface MovedText {
  /** "bore of Assist ram" */
  readonly name: string
  readonly value: string
  /** change of the margin with the input 10 % greater, and 10 % smaller: "+12.3 %" */
  readonly greater: string
  readonly smaller: string
}

/** How a number came about, as a hand calculation is written down. */
export interface WorkingText {
  readonly id: string
  readonly label: string
  readonly title: string
  /** "A = π·D² / 4" */
  readonly equation: string
  /** "A = π·(1.75 in)² / 4" */
  readonly withValues: string
  /** "A = 2.405 in²" */
  readonly result: string
  readonly source: string
  readonly remark: string | null
  readonly inputs: readonly {
    readonly symbol: string
    readonly meaning: string
    readonly value: string
    /** "typed: 1 3/4 in (ram, bore)", "table: ...", "computed: cap area" */
    readonly from: string
    /** id of the number it was computed as, when there is one */
    readonly opens: string | null
  }[]
  /** for a margin: what moves it most, the greatest first */
  readonly movedBy?: readonly MovedText[]
}

export interface ChecklistItem {
  readonly number: string
  readonly text: string
  readonly details: readonly string[]
  readonly cautions: readonly string[]
}

export type Block =
  | { readonly kind: 'paragraph'; readonly text: string; readonly tone?: 'plain' | 'caution' | 'quiet' }
  | { readonly kind: 'list'; readonly items: readonly string[] }
  | {
      readonly kind: 'table'
      readonly caption: string
      readonly columns: readonly TableColumn[]
      readonly rows: readonly (readonly DocumentCell[])[]
    }
  | { readonly kind: 'findings'; readonly items: readonly FindingText[] }
  | { readonly kind: 'numbers'; readonly items: readonly NumberText[] }
  | { readonly kind: 'workings'; readonly items: readonly WorkingText[] }
  | { readonly kind: 'checklist'; readonly items: readonly ChecklistItem[] }
  | { readonly kind: 'figure'; readonly drawing: Drawing; readonly caption: string }
