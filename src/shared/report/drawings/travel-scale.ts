import { type LimitKind, type LimitsPlan, SIDES } from '../../planner/linkage/plan-types.ts'
import { AXIS, THIN, textWidth, VISIBLE } from '../dimension-line.ts'
import type { Item } from '../drawing.ts'
import { showTape, type UnitSystem } from '../units.ts'
import { label, line, shape } from './frame.ts'

/** A letter and a shape for each kind of limit, so that none is told by colour. */
export const LIMIT_LETTERS: Readonly<Record<LimitKind, string>> = {
  'knuckle stop': 'S',
  'steering box': 'B',
  'tyre contact': 'T',
  ram: 'R',
}

const SIDE = 22

/** The travel as a scale from full left to full right, every limit on it by its letter, and a pointer where the tie rod stands. */
export function travelScale(limits: LimitsPlan | null, travel: number, y: number, width: number, units: UnitSystem): Item[] {
  const lines = limits ? SIDES.flatMap((side) => limits[side].lines) : []
  const furthest = Math.max(Math.abs(travel), 0.02, ...lines.map((l) => l.travel)) * 1.04
  // the sheet's left is the left turn
  const x = (at: number) => width / 2 - (at / furthest) * (width / 2 - SIDE)
  const rows: Record<'left' | 'right', number> = { left: 0, right: 0 }
  const marks = lines.flatMap((l): Item[] => {
    const at = x(l.side === 'left' ? l.travel : -l.travel)
    const row = rows[l.side]++
    const reached = (l.side === 'left' ? travel : -travel) >= l.travel - 1e-9
    const text = `${LIMIT_LETTERS[l.what]} ${showTape(l.travel, units)}`
    const anchor = at + (l.side === 'left' ? 0 : textWidth(text, 2.5)) > width ? 'end' : l.side === 'left' ? 'end' : 'start'
    const down = y + 6 + row * 3.6
    return [
      line({ x: at, y: y - 3 }, { x: at, y: down - 1 }, row === 0 ? VISIBLE : THIN),
      label(
        { x: at + (anchor === 'end' ? -1 : 1), y: down },
        text,
        anchor,
        2.5,
        reached ? (l.what === 'knuckle stop' ? 'look' : 'stops') : undefined,
      ),
    ]
  })
  const at = x(travel)
  return [
    line({ x: x(furthest), y }, { x: x(-furthest), y }, VISIBLE),
    line({ x: x(0), y: y - 4 }, { x: x(0), y: y + 4 }, AXIS),
    label({ x: x(furthest) - 3, y: y + 1.2 }, 'L', 'end', 3.5),
    label({ x: x(0), y: y + 8.5 }, 'C', 'middle', 3.5),
    label({ x: x(-furthest) + 3, y: y + 1.2 }, 'R', 'start', 3.5),
    ...marks,
    shape(
      [
        { x: at, y: y - 0.8 },
        { x: at - 2, y: y - 5 },
        { x: at + 2, y: y - 5 },
      ],
      { line: 'visible', fill: 'part' },
    ),
  ]
}
