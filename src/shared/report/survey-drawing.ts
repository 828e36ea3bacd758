import type { SurveyPicture } from '../planner/plan.ts'
import { AXIS, fittingScale, horizontalDimension, THIN, VISIBLE } from './dimension-line.ts'
import type { Drawing, Item } from './drawing.ts'
import { showTape, type UnitSystem } from './units.ts'

const WIDTH = 180
const HEIGHT = 78
/** paper left on each side for the rod's ends and the letters */
const SIDE = 24
const ROD_TOP = 30
const ROD_BOTTOM = 38
const MARK_TOP = 26
const MARK_BOTTOM = 42
const READINGS_TOP = 44
const READINGS_BOTTOM = 48

/** The tie rod with its marks centre, left and right, to a stated scale, every reading as a tick, and the travel a side dimensioned. */
export function surveyDrawing(survey: SurveyPicture, units: UnitSystem): Drawing {
  const ats = [0, survey.left, survey.right, ...survey.readings.map((r) => r.at)]
  const low = Math.min(...ats)
  const high = Math.max(...ats)
  const scale = fittingScale(Math.max(high - low, 1e-3), WIDTH - 2 * SIDE)
  const origin = WIDTH / 2 - ((low + high) / 2) * scale.factor
  const x = (at: number) => origin + at * scale.factor
  const [xl, xc, xr] = [x(survey.left), x(0), x(survey.right)]
  const leftText = showTape(Math.abs(survey.left), units)
  const rightText = showTape(Math.abs(survey.right), units)
  const totalText = showTape(survey.right - survey.left, units)

  const items: Item[] = [
    ...rod(),
    ...mark(xc, 'C'),
    ...mark(xl, 'L'),
    ...mark(xr, 'R'),
    ...survey.readings.map(
      (r): Item => ({ kind: 'line', from: { x: x(r.at), y: READINGS_TOP }, to: { x: x(r.at), y: READINGS_BOTTOM }, ink: THIN }),
    ),
    ...(xl === xc ? [] : horizontalDimension(xl, xc, READINGS_BOTTOM, 60, leftText)),
    ...(xr === xc ? [] : horizontalDimension(xc, xr, READINGS_BOTTOM, 60, rightText)),
    ...(xl === xr ? [] : horizontalDimension(xl, xr, READINGS_BOTTOM, 72, totalText)),
    { kind: 'text', at: { x: 2, y: 7 }, text: `Scale ${scale.text}`, size: 3.5, anchor: 'start' },
    { kind: 'text', at: { x: WIDTH - 2, y: 7 }, text: 'rod diameter not to scale', size: 2.5, anchor: 'end' },
  ]
  return {
    id: 'survey',
    title: 'Travel survey: marks on the tie rod',
    description:
      `The tie rod to scale ${scale.text} with its marks: left lock ${leftText} to the left of centre, right lock ${rightText} to the right, ` +
      `${totalText} from lock to lock; ${survey.readings.length} readings shown as ticks.`,
    width: WIDTH,
    height: HEIGHT,
    items,
  }
}

/** Two wide edges, broken off at both ends by zigzag break lines (ISO 128-2), about a chain axis. */
function rod(): Item[] {
  const [start, end] = [8, WIDTH - 8]
  const middle = (ROD_TOP + ROD_BOTTOM) / 2
  const edge = (y: number): Item => ({ kind: 'line', from: { x: start, y }, to: { x: end, y }, ink: VISIBLE })
  const breakLine = (x: number): Item => ({
    kind: 'polyline',
    closed: false,
    ink: THIN,
    points: [
      { x, y: ROD_TOP - 2 },
      { x, y: middle - 2 },
      { x: x - 1.5, y: middle - 0.7 },
      { x: x + 1.5, y: middle + 0.7 },
      { x, y: middle + 2 },
      { x, y: ROD_BOTTOM + 2 },
    ],
  })
  return [
    edge(ROD_TOP),
    edge(ROD_BOTTOM),
    { kind: 'line', from: { x: start - 4, y: middle }, to: { x: end + 4, y: middle }, ink: AXIS },
    breakLine(start),
    breakLine(end),
  ]
}

function mark(x: number, letter: string): Item[] {
  return [
    { kind: 'line', from: { x, y: MARK_TOP }, to: { x, y: MARK_BOTTOM }, ink: VISIBLE },
    { kind: 'text', at: { x, y: MARK_TOP - 2.5 }, text: letter, size: 5, anchor: 'middle' },
  ]
}
