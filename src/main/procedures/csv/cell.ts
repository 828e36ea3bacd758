/*
 * What a spreadsheet would take for a formula gets an apostrophe before it. A text that has apostrophes before such a sign
 * already gets one more, so that reading, which takes one away, always gives back the text. A text that is there and empty is
 * written as one apostrophe, since an empty cell says that there is none; a text of apostrophes alone gets one more, too.
 */
const SIGN = '[=+\\-@\\t\\r\\n＝＋－＠]'
const GUARDED = new RegExp(`^'+(?:${SIGN}|$)`)
const TO_GUARD = new RegExp(`^'*(?:${SIGN}|$)`)

/** A text as a cell that no spreadsheet takes for a formula; undefined, which is no text, as an empty one. */
export const toCell = (text: string | undefined): string => (text === undefined ? '' : TO_GUARD.test(text) ? `'${text}` : text)

/** The text that {@link toCell} was given. A text that nobody has guarded comes back as it is: "-6" stays "-6". */
export const fromCell = (cell: string): string | undefined => (cell === '' ? undefined : GUARDED.test(cell) ? cell.slice(1) : cell)
