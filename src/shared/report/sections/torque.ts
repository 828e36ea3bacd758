import type { Plan, TorqueLine } from '../../planner/plan.ts'
import { BOX, column, TICK, text } from '../cells.ts'
import type { DocumentCell, Section } from '../document.ts'
import type { Show } from '../units.ts'

const FROM_WORDS: Readonly<Record<TorqueLine['from'], string>> = {
  maker: "maker's value",
  'published table': 'published table',
  computed: 'computed',
  'own practice': 'own practice',
}

/** What each fastener is tightened to and who says so, with boxes to write in what was done. */
export function torqueSection({ torques }: Plan, show: Show): Section {
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

function torqueRow(t: TorqueLine, show: Show): DocumentCell[] {
  const [value, second] = valueTexts(t, show)
  const [tolerance, otherTolerance] = toleranceTexts(t, show)
  return [
    text(t.what, history(t, show)),
    text(value, second),
    text(tolerance, otherTolerance),
    text(FROM_WORDS[t.from], t.source),
    BOX,
    BOX,
    BOX,
    TICK,
  ]
}

/** The value to the letter as it was typed from its source; below it the reader's units and what is turned on from there. */
function valueTexts(t: TorqueLine, show: Show): [string, string | null] {
  const angle = t.angle === null ? null : show(t.angle, 'angle')
  if (t.value === null) return [angle ?? 'not known', null]
  const own = show(t.value, 'torque')
  const typed = t.typedValue ?? own
  const below = [typed === own ? null : `= ${own}`, angle && `then ${angle}`].filter((s) => s !== null)
  return [typed, below.join(', ') || null]
}

/** The tolerance as typed, so that it stands in the unit of its value; below it the reader's units. */
function toleranceTexts(t: TorqueLine, show: Show): [string, string | null] {
  if (t.tolerance === null) return ['–', null]
  const own = show(t.tolerance, 'torque')
  const typed = t.typedTolerance ?? own
  return [`± ${typed}`, typed === own ? null : `= ± ${own}`]
}

/** What was applied last, and when it is to be checked again. */
function history(t: TorqueLine, show: Show): string {
  const within = { true: ', within tolerance', false: ', outside tolerance', null: '' }
  const last = t.lastRecord && `Last: ${show(t.lastRecord.value, 'torque')} on ${t.lastRecord.on}${within[`${t.lastRecord.within}`]}.`
  const again = t.recheckAfter && `Check again after ${t.recheckAfter}.`
  return [last, again].filter((s) => s).join(' ')
}
