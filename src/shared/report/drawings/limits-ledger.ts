import { type LimitLine, type LimitsPlan, SIDES } from '../../planner/linkage/plan-types.ts'
import { AXIS, THIN, VISIBLE } from '../dimension-line.ts'
import type { Drawing, Item } from '../drawing.ts'
import { showTape, type UnitSystem } from '../units.ts'
import { label, line, shape } from './frame.ts'

const WIDTH = 180
const MIDDLE = WIDTH / 2
const NAMES = 30
const ROW = 9
const TOP = 14
const SIDE_ROOM = 20

/** Every limit as a bar from straight ahead to where it ends the travel, left and right of the middle, with its uncertainty (k = 2) as a whisker. */
export function limitsLedgerDrawing(limits: LimitsPlan, units: UnitSystem): Drawing {
  const lines = SIDES.flatMap((side) => limits[side].lines)
  const furthest = Math.max(...lines.map((l) => l.travel + 2 * (l.u ?? 0)), 0.01)
  const kinds = [...new Set(lines.map((l) => l.what))].sort((a, b) => least(lines, a) - least(lines, b))
  const length = (travel: number) => (travel / furthest) * (MIDDLE - NAMES / 2 - SIDE_ROOM)
  const items = kinds.flatMap((kind, row): Item[] => {
    const y = TOP + row * ROW
    const bars = SIDES.flatMap((side) => {
      const line_ = limits[side].lines.find((l) => l.what === kind)
      return line_ ? barOf(line_, y, length, limits[side].lines[0] === line_, units) : [missing(side, y)]
    })
    return [label({ x: MIDDLE, y: y + 1.2 }, kind, 'middle', 2.5), ...bars]
  })
  const height = TOP + kinds.length * ROW + 4
  return {
    id: 'limits-ledger',
    title: 'What stops the wheels',
    description: describe(limits, units),
    width: WIDTH,
    height,
    items: [
      label({ x: MIDDLE - NAMES / 2 - 2, y: 6 }, 'left turn', 'end', 3.5),
      label({ x: MIDDLE + NAMES / 2 + 2, y: 6 }, 'right turn', 'start', 3.5),
      ...[-1, 1].map((way) => {
        const x = MIDDLE + (way * NAMES) / 2
        return line({ x, y: 8 }, { x, y: height - 2 }, AXIS)
      }),
      ...items,
    ],
  }
}

const least = (lines: readonly LimitLine[], kind: LimitLine['what']): number =>
  Math.min(...lines.filter((l) => l.what === kind).map((l) => l.travel))

function barOf(l: LimitLine, y: number, length: (travel: number) => number, first: boolean, units: UnitSystem): Item[] {
  const way = l.side === 'left' ? -1 : 1
  const from = MIDDLE + (way * NAMES) / 2
  const end = from + way * length(l.travel)
  const spread = l.u === null ? 0 : length(2 * l.u)
  return [
    shape(
      [
        { x: from, y: y - 2 },
        { x: end, y: y - 2 },
        { x: end, y: y + 2 },
        { x: from, y: y + 2 },
      ],
      { line: first ? 'visible' : 'thin', fill: first ? 'part' : 'paper' },
    ),
    ...(spread > 0
      ? [
          line({ x: end - spread, y }, { x: end + spread, y }, VISIBLE),
          line({ x: end - spread, y: y - 1 }, { x: end - spread, y: y + 1 }, THIN),
          line({ x: end + spread, y: y - 1 }, { x: end + spread, y: y + 1 }, THIN),
        ]
      : []),
    label({ x: end + way * (spread + 1.5), y: y + 1 }, `${showTape(l.travel, units)}${first ? ' first' : ''}`, way < 0 ? 'end' : 'start'),
  ]
}

const missing = (side: 'left' | 'right', y: number): Item =>
  label({ x: MIDDLE + (side === 'left' ? -1 : 1) * (NAMES / 2 + 3), y: y + 1 }, 'not known', side === 'left' ? 'end' : 'start')

function describe(limits: LimitsPlan, units: UnitSystem): string {
  return SIDES.map((side) => {
    const order = limits[side].lines.map((l) => `${l.what} at ${showTape(l.travel, units)}`)
    return `To the ${side}: ${order.length > 0 ? order.join(', then ') : 'nothing known'}.`
  }).join(' ')
}
