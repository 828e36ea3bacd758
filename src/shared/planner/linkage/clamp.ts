import { type LinkageState, stateAtTravel } from '../../formulas/linkage/linkage.ts'
import { type RamMount, ramLength } from '../../formulas/linkage/ram-space.ts'
import { root } from '../../formulas/linkage/solve.ts'
import type { SteeringGeometry } from './plan-types.ts'

/** The linkage at places between two travels a side, ends and middle among them; empty where it does not go so far. */
export function statesBetween(g: SteeringGeometry, left: number, right: number): readonly LinkageState[] {
  const steps = 8
  const out: LinkageState[] = []
  for (let i = -steps; i <= steps; i++) {
    const s = stateAtTravel(g.linkage, ((i < 0 ? right : left) * i) / steps, g.range)
    if (!s.ok) return []
    out.push(s.value)
  }
  return out
}

/** How short and how long the ram gets over these states. */
export function ramUse(mount: RamMount, states: readonly LinkageState[]): { readonly shortest: number; readonly longest: number } {
  const lengths = states.map((s) => ramLength(mount, s))
  return { shortest: Math.min(...lengths), longest: Math.max(...lengths) }
}

/**
 * The place of the clamp along the tie rod that leaves as much room before the ram is closed as before it is fully out.
 *
 * @param stroke @param closed of the ram looked at; its own where they are left out
 * @returns the shift from where it is (to the right positive) and the room a side it then has (below zero: too short a stroke);
 *   undefined where a size is not known or no place on the rod does it
 */
export function bestClamp(
  g: SteeringGeometry,
  states: readonly LinkageState[],
  stroke = g.ram?.stroke ?? null,
  closed = g.ram?.closed ?? null,
): { readonly shift: number; readonly margin: number } | undefined {
  const { ram, linkage } = g
  const [middle] = states.slice(states.length >> 1)
  if (!ram || stroke === null || !middle || (ram.ended === 'single' && closed === null)) return undefined
  const shortest = ram.ended === 'double' ? -stroke / 2 : (closed ?? 0)
  const uneven = (along: number): number => {
    const use = ramUse({ ...ram, along }, states)
    return use.shortest - shortest - (shortest + stroke - use.longest)
  }
  // only on the side of the fixed pin on which the clamp is: past it the ram would turn over
  const pin = ram.ended === 'double' ? 0 : Math.min(linkage.rod, Math.max(0, ram.base.x - middle.a.x))
  const [from, to] = ram.ended === 'single' && ram.along < pin ? [0, pin] : [pin, linkage.rod]
  const along = root(uneven, from, to)
  return along === undefined ? undefined : { shift: along - ram.along, margin: ramUse({ ...ram, along }, states).shortest - shortest }
}
