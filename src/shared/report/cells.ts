import type { DocumentCell, State, TableColumn } from './document.ts'

export const text = (value: string, second?: string | null): DocumentCell =>
  second ? { kind: 'text', text: value, second } : { kind: 'text', text: value }

export const strong = (value: string): Extract<DocumentCell, { kind: 'text' }> => ({ kind: 'text', text: value, strong: true })

export const state = (of: State, word: string): DocumentCell => ({ kind: 'state', state: of, text: word })

export const BOX: DocumentCell = { kind: 'box' }
export const TICK: DocumentCell = { kind: 'tick' }

export const column = (title: string, weight: number, align: TableColumn['align'] = 'left'): TableColumn => ({ title, align, weight })

/** "1 part", "3 parts". */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`

/** A first letter made large, for a sentence that starts with a name of the model. */
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)

/** The words with a full stop, unless they end in one already. */
export const sentence = (words: string): string => (/[.!?]$/.test(words) ? words : `${words}.`)

/** An amount in hundredths with its currency: "42.50 EUR". */
export function money(minor: number | null, currency: string | null): string {
  if (minor === null) return 'not known'
  const amount = `${Math.trunc(minor / 100)}.${String(Math.abs(minor % 100)).padStart(2, '0')}`
  return currency === null ? amount : `${amount} ${currency}`
}
