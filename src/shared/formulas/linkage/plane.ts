/**
 * Plane geometry of the linkage, in one frame for all of it: x to the right, y ahead, z up (right-handed), metres; origin in
 * the middle between the kingpins, at the height of the axle's centre line. Angles are radians, positive to the left (counter-
 * clockwise from above), the sign that ISO 8855 gives a steer angle.
 */
export interface Vec {
  readonly x: number
  readonly y: number
}

export interface Vec3 extends Vec {
  readonly z: number
}

export const dot = (a: Vec, b: Vec): number => a.x * b.x + a.y * b.y
/** z of the cross product: positive when b lies to the left of a */
export const cross = (a: Vec, b: Vec): number => a.x * b.y - a.y * b.x
export const minus = (a: Vec, b: Vec): Vec => ({ x: a.x - b.x, y: a.y - b.y })
export const distance = (a: Vec, b: Vec): number => Math.hypot(b.x - a.x, b.y - a.y)
export const distance3 = (a: Vec3, b: Vec3): number => Math.hypot(b.x - a.x, b.y - a.y, b.z - a.z)

/** The vector turned to the left by `angle`. */
export function turned(v: Vec, angle: number): Vec {
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  return { x: v.x * c - v.y * s, y: v.x * s + v.y * c }
}

/** From the direction of `from` to that of `to`, positive to the left, within half a turn either way. */
export const angleBetween = (from: Vec, to: Vec): number => Math.atan2(cross(from, to), dot(from, to))

export type Branch = 1 | -1

/**
 * Where two circles meet: two bars pinned together.
 *
 * @param branch 1: the meeting point to the left of the way from `a` to `b`; -1: the one to the right
 * @returns undefined where the circles do not reach each other
 */
export function circlesMeet(a: Vec, radiusA: number, b: Vec, radiusB: number, branch: Branch): Vec | undefined {
  const [dx, dy] = [b.x - a.x, b.y - a.y]
  const d = Math.hypot(dx, dy)
  const along = (d + ((radiusA - radiusB) * (radiusA + radiusB)) / d) / 2
  const square = (radiusA - along) * (radiusA + along)
  if (!(square >= 0)) return undefined
  const off = branch * Math.sqrt(square)
  return { x: a.x + (along * dx - off * dy) / d, y: a.y + (along * dy + off * dx) / d }
}

/** On which side of the way from `a` to `b` a point lies. */
export const branchOf = (a: Vec, b: Vec, point: Vec): Branch => (cross(minus(b, a), minus(point, a)) >= 0 ? 1 : -1)

/** Shortest distance between two straight pieces in space, each given by its ends. */
export function segmentsApart(p0: Vec3, p1: Vec3, q0: Vec3, q1: Vec3): number {
  const sub = (a: Vec3, b: Vec3): Vec3 => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z })
  const by = (a: Vec3, b: Vec3): number => a.x * b.x + a.y * b.y + a.z * b.z
  const within = (v: number): number => Math.min(1, Math.max(0, v))
  const [u, v, w] = [sub(p1, p0), sub(q1, q0), sub(p0, q0)]
  const [a, b, c, d, e] = [by(u, u), by(u, v), by(v, v), by(u, w), by(v, w)]
  const spread = a * c - b * b
  // parallel pieces: any foot will do as a start, the clamping below finds the right one
  let s = spread > 1e-14 * a * c ? within((b * e - c * d) / spread) : 0
  const t = c > 0 ? within((b * s + e) / c) : 0
  s = a > 0 ? within((b * t - d) / a) : 0
  const at = (p: Vec3, dir: Vec3, k: number): Vec3 => ({ x: p.x + k * dir.x, y: p.y + k * dir.y, z: p.z + k * dir.z })
  return distance3(at(p0, u, s), at(q0, v, t))
}
