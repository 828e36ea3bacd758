import { onRod } from './chain.ts'
import { type Linkage, type LinkageState, ratesAt } from './linkage.ts'
import { distance3, segmentsApart, type Vec3 } from './plane.ts'

/**
 * A ram between axle and tie rod, in the frame of `plane.ts`. A single-ended one turns about both of its pins; the body of a
 * double-ended one is held along the axle, and its rod goes to and fro with the clamp.
 */
export interface RamMount {
  readonly ended: 'single' | 'double'
  /** fixed pin on the axle; middle of the body of a double-ended ram */
  readonly base: Vec3
  /** pin on the tie rod: so far along it from the left joint, so far ahead of its line, at this height */
  readonly along: number
  readonly ahead: number
  readonly above: number
}

/** Where the ram's moving pin stands. */
export const ramPin = (m: RamMount, s: LinkageState): Vec3 => ({ ...onRod(s, m.along, m.ahead), z: m.above })

/** Pin to pin. Of a double-ended ram: how far the rod stands to the right of the body's middle, taken along the axle. */
export function ramLength(m: RamMount, s: LinkageState): number {
  const pin = ramPin(m, s)
  return m.ended === 'double' ? pin.x - m.base.x : distance3(m.base, pin)
}

/** Change of the ram's length a metre of tie-rod travel, in closed form: also the share of the ram's force that moves the rod. */
export function ramRate(l: Linkage, m: RamMount, s: LinkageState): number {
  const [rates, pin] = [ratesAt(l, s), ramPin(m, s)]
  const vx = rates.a.x - (pin.y - s.a.y) * rates.tilt
  if (m.ended === 'double') return vx
  const vy = rates.a.y + (pin.x - s.a.x) * rates.tilt
  return ((pin.x - m.base.x) * vx + (pin.y - m.base.y) * vy) / distance3(m.base, pin)
}

/** Distance between the ram's body and the tie rod, surface to surface; below zero they run into each other. */
export function ramClearance(
  m: RamMount,
  s: LinkageState,
  rodHeight: number,
  body: { length: number; diameter: number },
  rodDiameter: number,
): number {
  const pin = ramPin(m, s)
  const full = distance3(m.base, pin)
  const share = m.ended === 'double' ? 0 : Math.min(1, body.length / full)
  const towards = (k: number): Vec3 => ({
    x: m.base.x + k * (pin.x - m.base.x),
    y: m.base.y + k * (pin.y - m.base.y),
    z: m.base.z + k * (pin.z - m.base.z),
  })
  const [from, to] =
    m.ended === 'double'
      ? [
          { ...m.base, x: m.base.x - body.length / 2 },
          { ...m.base, x: m.base.x + body.length / 2 },
        ]
      : [m.base, towards(share)]
  return segmentsApart(from, to, { ...s.a, z: rodHeight }, { ...s.b, z: rodHeight }) - body.diameter / 2 - rodDiameter / 2
}
