import { BOX, column, TICK, text } from '../cells.ts'

const FROM_WORDS = {
  maker: "maker's value",
  'published table': 'published table',
  computed: 'computed',
  'own practice': 'own practice',
}
/** What each fastener is tightened to and who says so, with boxes to write in what was done. */
export function torqueSection({ torques }, show) {
  const heading = 'Torque'
  if (torques.length === 0) {
    return {
      id: 'torque',
      heading,
      blocks: [{ kind: 'paragraph', text: "No torque values are entered. Look each one up in its maker's sheet before tightening." }],
    }
  }
  return {
    id: 'torque',
    heading,
    blocks: [
      {
        kind: 'paragraph',
        text: "The part maker's value goes before any value printed here. Write down what was applied, who did it and when.",
      },
      {
        kind: 'table',
        caption: 'Torque values, with boxes to fill in',
        columns: [
          column('What', 2.6),
          column('Value', 1.3, 'right'),
          column('Tolerance', 1.35, 'right'),
          column('Source', 1.7),
          column('Applied', 1.2),
          column('Initials', 1),
          column('Date', 1.2),
          column('Done', 0.8, 'centre'),
        ],
        rows: torques.map((t) => torqueRow(t, show)),
      },
    ],
  }
}
function torqueRow(t, show) {
  const [value, second] = valueTexts(t, show)
  const tolerance = t.tolerance === null ? '–' : `± ${show(t.tolerance, 'torque')}`
  return [text(t.what, history(t, show)), text(value, second), text(tolerance), text(FROM_WORDS[t.from], t.source), BOX, BOX, BOX, TICK]
}
/** The value to the letter as it was typed from its source; below it the reader's units and what is turned on from there. */
function valueTexts(t, show) {
  const angle = t.angle === null ? null : show(t.angle, 'angle')
  if (t.value === null) return [angle ?? 'not known', null]
  const own = show(t.value, 'torque')
  const typed = t.typedValue ?? own
  const below = [typed === own ? null : `= ${own}`, angle && `then ${angle}`].filter((s) => s !== null)
  return [typed, below.join(', ') || null]
}
/** What was applied last, and when it is to be checked again. */
function history(t, show) {
  const within = { true: ', within tolerance', false: ', outside tolerance', null: '' }
  const last = t.lastRecord && `Last: ${show(t.lastRecord.value, 'torque')} on ${t.lastRecord.on}${within[`${t.lastRecord.within}`]}.`
  const again = t.recheckAfter && `Check again after ${t.recheckAfter}.`
  return [last, again].filter((s) => s).join(' ')
}
