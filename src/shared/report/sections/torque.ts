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
  const value = t.value === null ? (t.angle === null ? 'not known' : show(t.angle, 'angle')) : show(t.value, 'torque')
  const turned = t.value !== null && t.angle !== null ? `then ${show(t.angle, 'angle')}` : null
  const tolerance = t.tolerance === null ? '–' : `± ${show(t.tolerance, 'torque')}`
  return [text(t.what, history(t, show)), text(value, turned), text(tolerance), text(FROM_WORDS[t.from], t.source), BOX, BOX, BOX, TICK]
}

/** What was applied last, and when it is to be checked again. */
function history(t: TorqueLine, show: Show): string {
  const within = { true: ', within tolerance', false: ', outside tolerance', null: '' }
  const last = t.lastRecord && `Last: ${show(t.lastRecord.value, 'torque')} on ${t.lastRecord.on}${within[`${t.lastRecord.within}`]}.`
  const again = t.recheckAfter && `Check again after ${t.recheckAfter}.`
  return [last, again].filter((s) => s).join(' ')
}
