import type { LimitLine, StrokeLine } from '../../planner/linkage/plan-types.ts'
import { SIDES } from '../../planner/linkage/plan-types.ts'
import type { Plan } from '../../planner/plan.ts'
import { capital, column, state, text } from '../cells.ts'
import type { Block, DocumentCell, NumberText, Section } from '../document.ts'
import { bumpSteerDrawing } from '../drawings/bump-steer.ts'
import { frontView } from '../drawings/front-view.ts'
import { limitsLedgerDrawing } from '../drawings/limits-ledger.ts'
import { planView } from '../drawings/plan-view.ts'
import { LIMIT_LETTERS } from '../drawings/travel-scale.ts'
import { showTape, type UnitSystem } from '../units.ts'

/** Numbers of this section and of the next, by what their ids begin with. */
export const isLimitNumber = (id: string): boolean => /^(?:limit|linkage|turning|ram-space)\./.test(id)
export const isAlignmentNumber = (id: string): boolean => /^(?:bump|alignment)\./.test(id)

/** The plan view, what stops the wheels in which order, and the strokes that would do; null where nothing of it is known. */
export function limitsSection(plan: Plan, numbers: readonly NumberText[], units: UnitSystem): Section | null {
  const { linkage, limits, strokes } = plan
  if (!linkage && !limits) return null
  const blocks: Block[] = []
  if (linkage) {
    blocks.push({
      kind: 'figure',
      drawing: planView(linkage.geometry, limits, 0, units),
      caption: `Wheels straight ahead. On the scale: ${Object.entries(LIMIT_LETTERS)
        .map(([what, letter]) => `${letter} ${what}`)
        .join(', ')}.`,
    })
  }
  if (limits) {
    blocks.push({ kind: 'figure', drawing: limitsLedgerDrawing(limits, units), caption: 'Tie-rod travel at which each would end it.' })
    blocks.push({
      kind: 'table',
      caption: 'Limits in the order in which they are met',
      columns: [
        column('Side', 1),
        column('What', 2),
        column('Travel', 1.4, 'right'),
        column('± (k = 2)', 1.2, 'right'),
        column('Known from', 2),
      ],
      rows: SIDES.flatMap((side) => limits[side].lines.map((l, i) => limitRow(l, i === 0, units))),
    })
  }
  if (strokes) blocks.push(strokeTable(strokes, units))
  if (numbers.length > 0) blocks.push({ kind: 'numbers', items: numbers })
  return { id: 'limits', heading: 'What stops the wheels', blocks }
}

const FROM: Readonly<Record<LimitLine['from'], string>> = { limits: 'entered', survey: 'met in the survey', geometry: 'worked out' }

function limitRow(l: LimitLine, first: boolean, units: UnitSystem): readonly DocumentCell[] {
  return [
    text(capital(l.side)),
    first ? state(l.what === 'knuckle stop' ? 'good' : 'stops', `${l.what}, first`) : text(l.what),
    text(showTape(l.travel, units)),
    text(l.u === null ? 'not known' : showTape(2 * l.u, units)),
    text(FROM[l.from]),
  ]
}

const REASONS: Readonly<Record<StrokeLine['verdict'], string>> = {
  chosen: 'the one listed; it will do',
  good: 'will do',
  'too short': 'ends the travel before the stop',
  'no room to spare': 'less room than a stop that wears should have',
  'does not fit closed': 'no place on the tie rod at which it fits between the brackets',
  'longer than needed': 'longer and heavier than the travel asks for',
}

function strokeTable(strokes: readonly StrokeLine[], units: UnitSystem): Block {
  const shift = (l: StrokeLine) =>
    l.shift === null
      ? 'no place'
      : `${showTape(Math.abs(l.shift), units)}${Math.abs(l.shift) < 1e-4 ? '' : l.shift > 0 ? ' right' : ' left'}`
  return {
    kind: 'table',
    caption: 'Standard strokes, the clamp moved to its best place, the ram as long beside its stroke as the one listed',
    columns: [
      column('Stroke', 1),
      column('Room a side', 1.2, 'right'),
      column('Closed', 1.2, 'right'),
      column('Clamp to move', 1.4, 'right'),
      column('Verdict', 3),
    ],
    rows: strokes.map((l) => [
      text(l.size),
      text(showTape(l.margin, units)),
      text(l.closed === null ? '–' : showTape(l.closed, units)),
      text(shift(l)),
      l.verdict === 'chosen' || l.verdict === 'good' ? state('good', REASONS[l.verdict]) : text(REASONS[l.verdict]),
    ]),
  }
}

/** Bump steer and alignment: the curve and the numbers; null where there is neither. */
export function alignmentSection(plan: Plan, numbers: readonly NumberText[], units: UnitSystem): Section | null {
  const blocks: Block[] = []
  const front = plan.bumpSteer && plan.linkage && frontView(plan.linkage.geometry, plan.bumpSteer.rise.at(-1) ?? 0, units)
  if (front) blocks.push({ kind: 'figure', drawing: front, caption: 'At ride height in thin lines, at full bump in wide ones.' })
  if (plan.bumpSteer) {
    blocks.push({
      kind: 'figure',
      drawing: bumpSteerDrawing(plan.bumpSteer, units),
      caption: 'Steer with the hand wheel held, over bump and droop.',
    })
  }
  if (numbers.length > 0) blocks.push({ kind: 'numbers', items: numbers })
  return blocks.length === 0 ? null : { id: 'alignment', heading: 'Bump steer and alignment', blocks }
}
