import type { TaperEnd, Thread } from '../../model/end/types.ts'
import { type Length, si } from '../../quantities/dimension.ts'
import { inches, mm } from '../../quantities/make.ts'
import { CASTLE_NUTS_INCH, CASTLE_NUTS_METRIC } from '../../standards/fasteners/castle-nuts.ts'
import { COTTER_HOLES_INCH, COTTER_HOLES_METRIC } from '../../standards/fasteners/cotter-holes.ts'
import { proof, reason } from './make.ts'
import { FROM } from './sources.ts'
import type { Reason } from './verdict.ts'

/** What a castle nut of one size leaves for the pin: between the floor of its slots and its top, from its bearing face. */
interface Slots {
  readonly floor: Length
  readonly top: Length
  readonly hole: Length
}

/**
 * Whether the stud's cotter hole lies in the slots of its castle nut once the taper is seated: the nut bears on the arm, the arm is as
 * thick as the hole is long, and the shoulder stands off by `standOff`. Undefined where it does, or where a dimension is not known.
 */
export function cotterTrouble(stud: TaperEnd, hole: TaperEnd, standOff: Length): Reason | undefined {
  if (stud.cotterHole === undefined || stud.nut === undefined || hole.length === undefined) return undefined
  const slots = slotsOf(stud.nut)
  if (!slots) return undefined
  const height = si(stud.cotterHole - standOff - hole.length, 'length')
  const numbers = [
    proof('lower edge of the cotter hole above the arm', 'length', height - slots.hole / 2),
    proof('middle of the cotter hole above the arm', 'length', height),
    proof('floor of the slots', 'length', slots.floor),
    proof('top of the nut', 'length', slots.top),
  ]
  const facts = { nut: stud.nut.designation }
  if (height > slots.top) return reason('cotter.above_slots', FROM.cotter, facts, numbers)
  if (height - slots.hole / 2 < slots.floor) return reason('cotter.below_slots', FROM.cotter, facts, numbers)
  return undefined
}

/** A castle nut's slots and pin hole by its thread; undefined where no table has the size. */
function slotsOf(thread: Thread): Slots | undefined {
  if (thread.family === 'metric') {
    const size = thread.designation.split('x')[0]
    const nut = CASTLE_NUTS_METRIC.rows.find((r) => r.size === size)
    const pin = COTTER_HOLES_METRIC.rows.find((r) => r.size === size)
    return nut && pin && { floor: mm(nut.floor_max_mm), top: mm(nut.thickness_mm), hole: mm(pin.pin_mm) }
  }
  const size = thread.designation.slice(0, thread.designation.lastIndexOf('-'))
  const nut = CASTLE_NUTS_INCH.rows.find((r) => r.size === size)
  const pin = COTTER_HOLES_INCH.rows.find((r) => r.size === size)
  const thickness = nut && inchesOf(nut.thickness_in)
  return nut && pin && thickness !== undefined
    ? { floor: inches(nut.floor_min_in), top: inches(thickness), hole: inches(pin.hole_in) }
    : undefined
}

/** "21/64", "1-1/16": the figure as the table prints it. */
function inchesOf(printed: string): number | undefined {
  const m = /^(?:(\d+)-)?(\d+)(?:\/(\d+))?$/.exec(printed)
  return m ? Number(m[1] ?? 0) + Number(m[2]) / Number(m[3] ?? 1) : undefined
}
