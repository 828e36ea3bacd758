import type { Build } from '../../model/build.ts'
import type { Evidence } from '../plan.ts'
import { atTravel } from './at-travel.ts'
import { bestClamp, statesBetween } from './clamp.ts'
import type { KnownSteering } from './gather-rest.ts'
import type { Side, SideOrder } from './plan-types.ts'

/**
 * The numbers that put a side right: where to set the stop (travel, wheel angle, gap), how far to move the ram's clamp and how
 * much stroke that leaves, and what the stop costs in turning circle.
 *
 * @param between travel a side that the ram has to serve
 * @param room wanted between the stop and whatever comes next
 */
export function remedyEvidence(
  build: Build,
  order: SideOrder,
  between: Readonly<Record<Side, number>>,
  steering: KnownSteering | null,
  room: number,
): readonly Evidence[] {
  const others = order.lines.filter((l) => l.what !== 'knuckle stop')
  const [nearest] = others
  const out: Evidence[] = []
  if (!nearest) return out
  const setting = nearest.travel - room
  if (setting <= 0) return out
  out.push({ name: 'set the stop at a travel of', dimension: 'length', si: setting })
  if (!steering) return out
  const g = steering.geometry
  const way = order.side === 'left' ? 1 : -1
  const s = atTravel(g, way * setting)
  if (!s.ok) return out
  const angle = Math.abs(s.value[order.side])
  out.push({ name: 'that is a wheel angle of', dimension: 'angle', si: angle })
  const radius = order.lines.find((l) => l.what === 'knuckle stop')?.radius
  if (radius) out.push({ name: 'and a gap at the stop of', dimension: 'length', si: 2 * radius * Math.sin(angle / 2) })
  out.push(...circle(build, steering, order, setting, way))
  if (nearest.what === 'ram') out.push(...clampEvidence(steering, between))
  return out
}

function circle(build: Build, { geometry: g, track }: KnownSteering, order: SideOrder, setting: number, way: 1 | -1): readonly Evidence[] {
  const now = order.lines[0]?.travel
  const spacing = g.groundSpacing ?? g.linkage.spacing
  const width = build.geometry?.wheel?.width?.si ?? 0
  const at = (travel: number): number | undefined => {
    const s = atTravel(g, way * travel)
    if (!s.ok || g.wheelbase === null || !track) return undefined
    const outer = Math.abs(way === 1 ? s.value.right : s.value.left)
    return outer > 0 ? 2 * (g.wheelbase / Math.sin(outer) + (track.si - spacing) / 2 + width / 2) : undefined
  }
  const [before, after] = [now === undefined ? undefined : at(now), at(setting)]
  return [
    ...(before === undefined ? [] : [{ name: 'turning circle now', dimension: 'length' as const, si: before }]),
    ...(after === undefined ? [] : [{ name: 'turning circle then', dimension: 'length' as const, si: after }]),
  ]
}

function clampEvidence({ geometry }: KnownSteering, between: Readonly<Record<Side, number>>): readonly Evidence[] {
  const best = bestClamp(geometry, statesBetween(geometry, between.left, between.right))
  if (!best) return []
  return [
    { name: 'clamp to move along the tie rod, to the right', dimension: 'length', si: best.shift },
    { name: 'room a side then', dimension: 'length', si: best.margin },
  ]
}
