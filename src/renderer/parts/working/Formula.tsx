import { keyed } from '../keyed.ts'

/** "x_m" and "F_1" in a line of mathematics: a letter, an underscore and the letters or digits set below the line. */
const SUBSCRIPT = /(?<=\p{L})_([\p{L}\p{N}]+)/gu

/** A line of mathematics, with subscripts set as such. */
export function Formula({ text }: { readonly text: string }) {
  // split() with a group gives text, subscript, text, subscript, …, text
  let below = true
  return keyed(text.split(SUBSCRIPT), (piece) => piece).map(({ key, item }) => {
    below = !below
    return below ? <sub key={key}>{item}</sub> : <span key={key}>{item}</span>
  })
}
