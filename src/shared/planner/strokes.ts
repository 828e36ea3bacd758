import { si } from '../quantities/dimension.ts'
import { inches, mm } from '../quantities/make.ts'
import { RAM_STROKES } from '../standards/ram/sizes.ts'
import { ROOM, stopTravel } from './limits.ts'
import { bestClamp, ramUse, statesBetween } from './linkage/clamp.ts'
import type { KnownSteering } from './linkage/gather-rest.ts'
import type { LimitsPlan, StrokeLine } from './linkage/plan-types.ts'

/** Twice the room that is wanted or more is a longer, heavier ram than the travel needs. Chosen. */
const LONGER = 4

const RANK: Readonly<Record<StrokeLine['verdict'], number>> = {
  chosen: 0,
  good: 1,
  'longer than needed': 2,
  'no room to spare': 3,
  'does not fit closed': 4,
  'too short': 5,
}

/**
 * Every standard stroke held against the travel between the stops: the room it leaves a side with the clamp at its best place, how
 * far the clamp would have to move, its closed length, and why it is not the one. The best first.
 *
 * @returns null where ram or stops are not known in place
 */
export function planStrokes({ geometry: g, ram }: KnownSteering, limits: LimitsPlan | null): readonly StrokeLine[] | null {
  if (!limits || !ram || !g.ram || limits.left.lines.length === 0 || limits.right.lines.length === 0) return null
  const states = statesBetween(g, stopTravel(limits.left), stopTravel(limits.right))
  if (states.length === 0) return null
  const { closed, stroke: own, ended } = g.ram
  const dead = closed !== null && own !== null ? closed - own : null
  const use = ramUse(g.ram, states)
  const needed = use.longest - use.shortest
  const lines = RAM_STROKES.rows.map((row): StrokeLine => {
    const stroke = row.unit === 'in' ? inches(row.value) : mm(row.value)
    const closedThen = ended === 'single' && dead !== null ? si(dead + stroke, 'length') : null
    // a stroke that is short anyway has no best place worth the search
    const best = stroke > needed ? bestClamp(g, states, stroke, closedThen) : undefined
    const margin = best?.margin ?? (stroke - needed) / 2
    const isOwn = own !== null && Math.abs(stroke - own) < 1e-6
    const verdict = verdictOf(margin, best !== undefined || ended === 'double', isOwn)
    return { size: row.size, stroke, series: row.series, closed: closedThen, margin, shift: best?.shift ?? null, verdict }
  })
  return lines.sort((a, b) => RANK[a.verdict] - RANK[b.verdict] || Math.abs(a.margin - ROOM) - Math.abs(b.margin - ROOM))
}

function verdictOf(margin: number, fits: boolean, isOwn: boolean): StrokeLine['verdict'] {
  if (margin < 0) return 'too short'
  if (!fits) return 'does not fit closed'
  if (margin < ROOM) return 'no room to spare'
  if (isOwn) return 'chosen'
  return margin > LONGER * ROOM ? 'longer than needed' : 'good'
}
