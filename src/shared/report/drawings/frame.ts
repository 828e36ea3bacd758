import type { Vec } from '../../formulas/linkage/plane.ts'
import type { Ink, Item, Point } from '../drawing.ts'

/** Takes a place of the vehicle (metres, x right, y ahead) to a point on the sheet (mm, y down). */
export type Place = (v: Vec) => Point

/** A frame with the origin of the vehicle at a point of the sheet. `factor`: paper millimetres a metre. */
export const placeAt =
  (origin: Point, factor: number): Place =>
  ({ x, y }) => ({ x: origin.x + x * factor, y: origin.y - y * factor })

export const line = (from: Point, to: Point, ink: Ink): Item => ({ kind: 'line', from, to, ink })
export const circle = (centre: Point, radius: number, ink: Ink): Item => ({ kind: 'circle', centre, radius, ink })
export const shape = (points: readonly Point[], ink: Ink): Item => ({ kind: 'polyline', points, closed: true, ink })
export const curve = (points: readonly Point[], ink: Ink): Item => ({ kind: 'polyline', points, closed: false, ink })

export const label = (
  at: Point,
  text: string,
  anchor: 'start' | 'middle' | 'end' = 'middle',
  size: 2.5 | 3.5 | 5 = 2.5,
  state?: Extract<Item, { kind: 'text' }>['state'],
): Item => ({ kind: 'text', at, text, size, anchor, ...(state && { state }) })

/** A round bar from one place to another, seen from above: two edges and round ends left away. */
export function bar(place: Place, a: Vec, b: Vec, width: number, ink: Ink): Item {
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1
  const [nx, ny] = [(-(b.y - a.y) / length) * (width / 2), ((b.x - a.x) / length) * (width / 2)]
  return shape(
    [
      { x: a.x + nx, y: a.y + ny },
      { x: b.x + nx, y: b.y + ny },
      { x: b.x - nx, y: b.y - ny },
      { x: a.x - nx, y: a.y - ny },
    ].map(place),
    ink,
  )
}

/** Points about an arc of a circle, from one angle to another (to the left positive). */
export function arc(place: Place, centre: Vec, radius: number, from: number, to: number, steps = 16): readonly Point[] {
  return Array.from({ length: steps + 1 }, (_, i) => {
    const at = from + ((to - from) * i) / steps
    return place({ x: centre.x + radius * Math.cos(at), y: centre.y + radius * Math.sin(at) })
  })
}
