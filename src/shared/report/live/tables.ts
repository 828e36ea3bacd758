import type { BumpSteerPlan, LinkageCurve } from '../../planner/linkage/plan-types.ts'
import { column, text } from '../cells.ts'
import type { Block, DocumentCell } from '../document.ts'
import { showIn, showTape, type UnitSystem } from '../units.ts'
import { placeOf } from './steering.ts'

type Table = Extract<Block, { kind: 'table' }>

const ROWS = 13

/** The plan view as a table: wheel angles, true rolling and ram over the travel. */
export function travelTable(curve: LinkageCurve, units: UnitSystem): Table {
  const show = showIn(units)
  const turned = (a: number | null | undefined): DocumentCell =>
    text(a === null || a === undefined ? '–' : `${show(Math.abs(a), 'angle')}${Math.abs(a) < 1e-4 ? '' : a > 0 ? ' left' : ' right'}`)
  const last = curve.travel.length - 1
  const at = Array.from({ length: Math.min(ROWS, last + 1) }, (_, i) =>
    Math.round((i * last) / (Math.min(ROWS, last + 1) - 1 || 1)),
  ).reverse()
  const { ackermann, pitman, ramLength, ramClearance } = curve
  const tape = (l: number | undefined): DocumentCell => text(l === undefined ? '–' : showTape(l, units))
  return {
    kind: 'table',
    caption: 'The steering over its travel, from full left to full right',
    columns: [
      column('Tie rod', 2),
      column('Left wheel', 1.4, 'right'),
      column('Right wheel', 1.4, 'right'),
      ...(ackermann ? [column('Outer wheel against true rolling', 1.6, 'right')] : []),
      ...(pitman ? [column('Pitman arm', 1.4, 'right')] : []),
      ...(ramLength ? [column('Ram, pin to pin', 1.4, 'right')] : []),
      ...(ramClearance ? [column('Ram to tie rod', 1.4, 'right')] : []),
    ],
    rows: at.map((i) => [
      text(placeOf(curve.travel[i] ?? 0, units)),
      turned(curve.left[i]),
      turned(curve.right[i]),
      ...(ackermann ? [text(show(ackermann[i] ?? 0, 'angle'))] : []),
      ...(pitman ? [turned(pitman[i])] : []),
      ...(ramLength ? [tape(ramLength[i])] : []),
      ...(ramClearance ? [tape(ramClearance[i])] : []),
    ]),
  }
}

/** "3 in up", "at ride height". */
export const riseOf = (rise: number, units: UnitSystem): string =>
  Math.abs(rise) < 1e-6 ? 'at ride height' : `${showTape(Math.abs(rise), units)} ${rise > 0 ? 'up' : 'down'}`

const nameOf = (travel: number): string => (travel === 0 ? 'Straight ahead' : travel > 0 ? 'Half left' : 'Half right')

const steer = (error: number | null | undefined, units: UnitSystem): string => {
  if (error === null || error === undefined) return 'a link does not reach'
  return Math.abs(error) < 1e-5 ? 'none' : `${showIn(units)(Math.abs(error), 'angle')} ${error > 0 ? 'left' : 'right'}`
}

/** Steer that one place of the suspension puts in, for each place of the hand wheel. */
export const bumpReadOuts = (
  plan: BumpSteerPlan,
  at: number,
  units: UnitSystem,
): readonly { readonly label: string; readonly value: string }[] =>
  plan.curves.map(({ travel, error }) => ({ label: `Steer, ${nameOf(travel).toLowerCase()}`, value: steer(error[at], units) }))

/** The curve of bump steer as a table. */
export function bumpTable(plan: BumpSteerPlan, units: UnitSystem): Table {
  return {
    kind: 'table',
    caption: 'Steer with the hand wheel held, from full bump to full droop',
    columns: [column('Axle', 1.4), ...plan.curves.map(({ travel }) => column(nameOf(travel), 1.2, 'right'))],
    rows: plan.rise
      .map((rise, i) => [text(riseOf(rise, units)), ...plan.curves.map(({ error }) => text(steer(error[i], units)))])
      .reverse(),
  }
}
