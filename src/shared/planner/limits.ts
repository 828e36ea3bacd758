import { limitMargin, limitWrongOrder } from '../formulas/linkage/stops.ts'
import type { Build } from '../model/build.ts'
import { inches } from '../quantities/make.ts'
import { fromOrigin, type Known, type Ledger } from './ledger.ts'
import { anglesAt } from './linkage/angles.ts'
import { collectLimits } from './linkage/collect-limits.ts'
import type { KnownSteering } from './linkage/gather-rest.ts'
import { type LimitKind, type LimitLine, type LimitsPlan, SIDES, type Side, type SideOrder } from './linkage/plan-types.ts'
import { remedyEvidence } from './linkage/remedy.ts'
import type { Evidence } from './plan.ts'

/** Room wanted between the stop and what must not be reached: common practice, no published source. */
export const ROOM = inches(0.25)
/** A chance above this that another one stops first is told. Chosen. */
const DOUBT = 0.05
/** A chance below this is not put before the reader. Chosen. */
const WORTH_SAYING = 0.001
/** Sides that differ by more than this share are told. Common practice, as for the survey. */
const UNEQUAL = 0.05

const FIRST: Readonly<Record<Exclude<LimitKind, 'knuckle stop'>, string>> = {
  ram: 'limits.ram_first',
  'steering box': 'limits.box_first',
  'tyre contact': 'limits.tyre_first',
}

/**
 * Who stops the wheels on each side: all limits in the order in which they are met, the room to the next, and the chance that
 * the order is wrong; with a finding for each thing that is not as it should be and the numbers that put it right.
 *
 * @returns null where nothing is known that could end the travel
 */
export function planLimits(build: Build, steering: KnownSteering | null, ledger: Ledger): LimitsPlan | null {
  const lines = collectLimits(build, steering, ledger)
  if (lines.length === 0) {
    if (build.limits || build.geometry) ledger.measure('limits', ['limits'])
    return null
  }
  const [left, right] = SIDES.map((side) => orderOf(side, lines, steering, ledger)) as [SideOrder, SideOrder]
  const between = { left: stopTravel(left), right: stopTravel(right) }
  for (const order of [left, right]) judge(build, order, between, steering, ledger)
  compareSides(left, right, ledger)
  return { left, right, room: ROOM }
}

function orderOf(side: Side, all: readonly LimitLine[], steering: KnownSteering | null, ledger: Ledger): SideOrder {
  const lines = all.filter((l) => l.side === side).sort((a, b) => a.travel - b.travel)
  const [first] = lines
  const next = lines.find((l) => l.what !== first?.what)
  const empty = { side, lines, margin: null, next: null, wrongOrder: null, angles: null }
  if (!first) return empty
  const x = signedTravel(first, ledger)
  const state = steering && x && anglesAt(`linkage.${side}-lock`, steering.linkage, x, ledger)
  const angles = state ? { left: state.left.si, right: state.right.si } : null
  if (!next) return { ...empty, angles }
  const [x_1, x_2] = [ledger.known(first.number, 'length'), ledger.known(next.number, 'length')]
  const m = x_1 && x_2 && ledger.compute(`limit.margin.${side}`, limitMargin, { x_1, x_2 })
  const chance = m && chanceOf(side, m, first, next, ledger)
  return { side, lines, margin: m?.si ?? null, next: next.id, wrongOrder: chance?.si ?? null, angles }
}

function chanceOf(side: Side, m: Known<'length'>, first: LimitLine, next: LimitLine, ledger: Ledger): Known<'ratio'> | undefined {
  const [u_1, u_2] = [first, next].map((l) => ledger.known(`${l.number}.u`, 'length'))
  return u_1 && u_2 && u_1.si + u_2.si > 0 ? ledger.compute(`limit.wrong-order.${side}`, limitWrongOrder, { m, u_1, u_2 }) : undefined
}

/** The travel of a limit with the sign of its side: left positive. */
function signedTravel(line: LimitLine, ledger: Ledger): Known<'length'> | undefined {
  const known = ledger.known(line.number, 'length')
  return known && (line.side === 'left' ? known : fromOrigin('length', -known.si as typeof known.si, known.origin))
}

/** The travel that the knuckle stop gives, or where there is none the first limit. */
export const stopTravel = ({ lines }: SideOrder): number => (lines.find((l) => l.what === 'knuckle stop') ?? lines[0])?.travel ?? 0

function judge(
  build: Build,
  order: SideOrder,
  between: Readonly<Record<Side, number>>,
  steering: KnownSteering | null,
  ledger: Ledger,
): void {
  const [first] = order.lines
  const { side } = order
  const stop = order.lines.find((l) => l.what === 'knuckle stop')
  if (!first) {
    ledger.measure('limits of a side', ['limits'], { side })
    return
  }
  const what = order.lines.find((l) => l.id === order.next)?.what ?? null
  const facts = { side, first: first.what, next: what }
  const numbers = [first.number, `limit.margin.${side}`, `limit.wrong-order.${side}`].filter((id) =>
    ledger.numbers.some((n) => n.id === id),
  )
  const shared = { about: ['limits'], facts, numbers }
  const travels = order.lines.map((l): Evidence => ({ name: `${l.what}, travel ${side}`, dimension: 'length', si: l.travel }))
  const chance: Evidence[] =
    order.wrongOrder === null || order.wrongOrder < WORTH_SAYING
      ? []
      : [{ name: 'chance of the other order', dimension: 'ratio', si: order.wrongOrder }]
  const evidence = [...travels, ...chance]
  const remedy = () => remedyEvidence(build, order, between, steering, ROOM)
  const ramMayEnd = build.geometry?.ram?.endsTravel === true
  if (first.what !== 'knuckle stop') {
    const chosenRam = first.what === 'ram' && ramMayEnd
    const code = chosenRam ? 'limits.ram_chosen' : FIRST[first.what]
    const severity = chosenRam || first.what === 'tyre contact' ? 'look' : 'stops'
    ledger.add({ code, severity, ...shared, evidence: [...evidence, ...remedy()] })
    if (!stop) ledger.add({ code: 'limits.no_positive_stop', severity: 'look', ...shared, evidence: remedy() })
    return
  }
  if (order.wrongOrder !== null && order.wrongOrder > DOUBT) {
    ledger.add({ code: 'limits.order_uncertain', severity: 'look', ...shared, evidence: [...evidence, ...remedy()] })
  } else if (order.margin !== null && order.margin < ROOM) {
    ledger.add({ code: 'limits.little_room', severity: 'look', ...shared, evidence: [...evidence, ...remedy()] })
  } else {
    ledger.add({ code: 'limits.in_order', severity: 'noted', ...shared, evidence })
  }
}

function compareSides(left: SideOrder, right: SideOrder, ledger: Ledger): void {
  const [l, r] = [left.lines[0], right.lines[0]]
  if (!l || !r || Math.abs(l.travel - r.travel) <= UNEQUAL * Math.min(l.travel, r.travel)) return
  ledger.add({
    code: 'limits.sides_unequal',
    severity: 'look',
    about: ['limits'],
    facts: { more: l.travel > r.travel ? 'left' : 'right' },
    evidence: [
      { name: 'travel left', dimension: 'length', si: l.travel },
      { name: 'travel right', dimension: 'length', si: r.travel },
    ],
    numbers: [l.number, r.number],
  })
}
