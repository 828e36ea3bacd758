import { type LimitLine, type LimitsPlan, SIDES, type Side, type SideOrder } from '../../planner/linkage/plan-types.ts'
import { significant } from '../../quantities/print.ts'
import { showTape, type UnitSystem } from '../units.ts'

/** Who stops the wheels on one side, in words. */
export interface LedgerSide {
  readonly side: Side
  /** travels that the picture can be sent to, first to stop first */
  readonly stops: readonly { readonly key: string; readonly what: LimitLine['what']; readonly travel: number }[]
  /** "1/2 in of room, then the ram" */
  readonly margin: string
  /** chance that the order is the other way round */
  readonly chance: string
}

export const ledgerSides = (limits: LimitsPlan, units: UnitSystem): readonly LedgerSide[] =>
  SIDES.map((side) => {
    const order = limits[side]
    const way = side === 'left' ? 1 : -1
    const stops = order.lines.map((l) => ({ key: `${l.id} ${side}`, what: l.what, travel: way * l.travel }))
    return { side, stops, margin: marginOf(order, units), chance: chanceOf(order) }
  })

function marginOf(order: SideOrder, units: UnitSystem): string {
  if (order.lines.length === 0) return 'nothing known that ends the travel'
  const next = order.lines.find((l) => l.id === order.next)
  if (order.margin === null || !next) return 'nothing else known after it'
  return `${showTape(order.margin, units)} of room, then the ${next.what}`
}

function chanceOf({ wrongOrder, next }: SideOrder): string {
  if (next === null) return ''
  if (wrongOrder === null) return 'chance of the other order not known: an uncertainty is missing'
  return wrongOrder < 0.001 ? 'chance of the other order below 0.1 %' : `chance of the other order ${significant(100 * wrongOrder, 2)} %`
}
