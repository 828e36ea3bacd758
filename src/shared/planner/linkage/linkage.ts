import { ackermannOuterAngle, ackermannPercentage } from '../../formulas/linkage/ackermann.ts'
import { chainRange } from '../../formulas/linkage/chain.ts'
import { boxHandWheelTurns } from '../../formulas/linkage/mounts.ts'
import { turningKerbCircle, turningWallCircle } from '../../formulas/linkage/turning.ts'
import type { Build } from '../../model/build.ts'
import { si } from '../../quantities/dimension.ts'
import { degrees } from '../../quantities/make.ts'
import type { Known, Ledger } from '../ledger.ts'
import { atTravel } from './at-travel.ts'
import { typed } from './gather.ts'
import type { KnownSteering } from './gather-rest.ts'
import { type LimitsPlan, type LinkageCurve, type LinkagePlan, SIDES, type Side, type SteeringGeometry } from './plan-types.ts'

const POINTS = 30
/** With no limit known the curves go so far of the left wheel. */
const UNLIMITED = degrees(40)
/** The box may stand off its centre by this before it is told; a worn drag link end is worth as much. Common practice. */
const OFF_CENTRE = degrees(2)

/** Wheel angles, true rolling, turning circles and turns of the hand wheel at the stops; curves over the travel; links that open. */
export function planLinkage(build: Build, steering: KnownSteering, limits: LimitsPlan | null, ledger: Ledger): LinkagePlan {
  for (const side of SIDES) atLock(build, steering, side, limits, ledger)
  handWheel(steering, limits, ledger)
  const reach = { left: reachOf(steering.geometry, limits, 'left'), right: reachOf(steering.geometry, limits, 'right') }
  open(steering.geometry, limits, ledger)
  return { geometry: steering.geometry, curve: curveOf(steering.geometry, reach) }
}

/** The limits and a little more, within what the linkage can do. */
function reachOf(g: SteeringGeometry, limits: LimitsPlan | null, side: Side): number {
  const end = Math.abs(g.range[side].travel) * (1 - 1e-9)
  const lines = limits?.[side].lines ?? []
  const furthest = Math.max(0, ...lines.map((l) => l.travel)) * 1.05
  return Math.min(end, furthest > 0 ? furthest : g.linkage.left.length * Math.sin(UNLIMITED))
}

function atLock(build: Build, steering: KnownSteering, side: Side, limits: LimitsPlan | null, ledger: Ledger): void {
  const id = `linkage.${side}-lock`
  const [left, right] = [ledger.known(`${id}.left`, 'angle'), ledger.known(`${id}.right`, 'angle')]
  if (!limits || !left || !right || left.si * right.si <= 0) return
  const positive = (a: Known<'angle'>): Known<'angle'> => ({ ...a, si: si(Math.abs(a.si), 'angle') })
  const [delta_i, delta_o] = side === 'left' ? [positive(left), positive(right)] : [positive(right), positive(left)]
  const { wheelbase: l, track } = steering
  const w = steering.groundSpacing ?? steering.linkage.w
  if (!l || delta_i.si >= Math.PI / 2 || delta_o.si >= Math.PI / 2) return
  ledger.compute(`${id}.true-rolling`, ackermannOuterAngle, { delta_i, w, l })
  ledger.compute(`${id}.ackermann`, ackermannPercentage, { delta_i, delta_o, w, l })
  const t = typed(build, 'wheel', 'width', 'length')
  if (track && t) ledger.compute(`turning.${side}.kerb`, turningKerbCircle, { l, delta_o, b: track, w, t })
  const [e, f] = [typed(build, 'corner', 'out', 'length'), typed(build, 'corner', 'ahead', 'length')]
  if (e && f) ledger.compute(`turning.${side}.wall`, turningWallCircle, { l, delta_o, w, e, f })
}

/** Turns of the hand wheel between the stops. */
function handWheel({ geometry: g, turns, sweep }: KnownSteering, limits: LimitsPlan | null, ledger: Ledger): void {
  const [left, right] = [limits?.left.lines[0]?.travel, limits?.right.lines[0]?.travel]
  const { chain } = g
  if (!chain) return
  if (Math.abs(chain.offCentre) > OFF_CENTRE) {
    ledger.add({
      code: 'chain.off_centre',
      severity: 'look',
      about: ['geometry', 'dragLink', 'length'],
      evidence: [
        { name: 'pitman arm off its centre', dimension: 'angle', si: Math.abs(chain.offCentre) },
        { name: 'drag link, seen from above', dimension: 'length', si: chain.link },
      ],
    })
  }
  if (!turns || !sweep || left === undefined || right === undefined) return
  const at = (travel: number): number | undefined => {
    const s = atTravel(g, travel)
    return s.ok ? s.value.pitman?.angle : undefined
  }
  const [a, b] = [at(left), at(-right)]
  if (a === undefined || b === undefined) return
  const inputs = { 'travel left': limits?.left.lines[0]?.number ?? '', 'travel right': limits?.right.lines[0]?.number ?? '' }
  const known = Object.fromEntries(
    Object.entries(inputs).flatMap(([name, id]) => {
      const number = ledger.known(id, 'length')
      return number ? [[name, number] as const] : []
    }),
  )
  const phi = ledger.searched('linkage.pitman-turn', 'angle', si(Math.abs(a - b), 'angle'), known)
  ledger.compute('linkage.hand-wheel-turns', boxHandWheelTurns, { n: turns, phi, S: sweep })
}

/** A link that comes into line before the first stop: the wheels can be pushed over it and lock there. */
function open(g: SteeringGeometry, limits: LimitsPlan | null, ledger: Ledger): void {
  const ends = g.chain ? chainRange(g.linkage, g.chain, g.range) : {}
  for (const side of SIDES) {
    const first = limits?.[side].lines[0]
    const toggles = [
      ...(g.range[side].why === 'toggle' ? [{ what: 'tie rod and steering arm', travel: Math.abs(g.range[side].travel) }] : []),
      ...(ends[side] ? [{ what: 'drag link and pitman arm', travel: Math.abs(ends[side].travel) }] : []),
    ]
    for (const { what, travel } of toggles) {
      if (first && first.travel < travel) continue
      ledger.add({
        code: 'linkage.toggle',
        severity: first ? 'stops' : 'look',
        about: ['axle'],
        facts: { what, side },
        evidence: [
          { name: 'travel at which they come into line', dimension: 'length', si: travel },
          ...(first ? [{ name: 'travel of the first stop', dimension: 'length' as const, si: first.travel }] : []),
        ],
        numbers: first ? [first.number] : [],
      })
    }
  }
}

/** Everything over the travel, as lists of one length. */
export function curveOf(g: SteeringGeometry, reach: Readonly<Record<Side, number>>): LinkageCurve {
  const states = Array.from({ length: 2 * POINTS + 1 }, (_, i) => {
    const travel = ((i < POINTS ? reach.right : reach.left) * (i - POINTS)) / POINTS
    const s = atTravel(g, travel)
    return s.ok ? [s.value] : []
  }).flat()
  const each = <T>(of: (s: (typeof states)[number]) => T | null): readonly T[] | null => {
    const values = states.map(of)
    return values.some((v) => v === null) ? null : (values as T[])
  }
  return {
    travel: states.map((s) => s.travel),
    left: states.map((s) => s.left),
    right: states.map((s) => s.right),
    ackermann: g.wheelbase === null ? null : states.map((s) => s.ackermann ?? 0),
    pitman: g.chain ? states.map((s) => s.pitman?.angle ?? null) : null,
    ratio: g.chain && g.box.turns !== null && g.box.sweep !== null ? states.map((s) => s.ratio) : null,
    ramLength: each((s) => s.ram?.length ?? null),
    ramClearance: each((s) => s.clearance),
  }
}
