import { travelAtPitman } from '../../formulas/linkage/chain.ts'
import { stateAtTravel } from '../../formulas/linkage/linkage.ts'
import { limitTravelASide, stopAngleFromGap } from '../../formulas/linkage/mounts.ts'
import { ramLength } from '../../formulas/linkage/ram-space.ts'
import { root } from '../../formulas/linkage/solve.ts'
import { limitFromBounds, limitFromGap, limitLessClearance } from '../../formulas/linkage/stops.ts'
import type { Build } from '../../model/build.ts'
import type { Limit } from '../../model/survey.ts'
import { si, type Typed } from '../../quantities/dimension.ts'
import { entered, type Known, type Ledger } from '../ledger.ts'
import { anglesAt, travelAtAngle } from './angles.ts'
import { atTravel, spareOf } from './at-travel.ts'
import { typed } from './gather.ts'
import type { KnownSteering } from './gather-rest.ts'
import { type LimitKind, type LimitLine, SIDES, type Side } from './plan-types.ts'

type Found = { readonly travel: Known<'length'>; readonly u: Known<'length'> | undefined } | undefined

/** Everything that can end the travel, brought to tie-rod travel a side: what was entered, what the survey met, what the geometry gives. */
export function collectLimits(build: Build, steering: KnownSteering | null, ledger: Ledger): readonly LimitLine[] {
  const lines: LimitLine[] = []
  const add = (id: string, what: LimitKind, side: Side, from: LimitLine['from'], radius: number | null, found: Found) => {
    if (!found) return
    const origin = found.travel.origin
    const number = origin.kind === 'number' ? origin.id : ''
    if (found.u) ledger.setUncertainty(number, 2 * found.u.si)
    lines.push({ id, what, side, travel: found.travel.si, u: found.u?.si ?? null, number, from, radius })
  }
  const has = (what: LimitKind, side: Side) => lines.some((l) => l.what === what && l.side === side)
  for (const [i, limit] of (build.limits ?? []).entries()) {
    for (const side of SIDES) {
      if (limit.side !== 'both' && limit.side !== side) continue
      add(limit.id, limit.what, side, 'limits', limit.radius?.si ?? null, ofLimit(limit, i, side, steering, ledger))
    }
  }
  for (const side of SIDES) {
    const what = build.survey?.endedBy[side]
    if (what !== undefined && what !== 'not known' && what !== 'chosen angle' && !has(what, side)) {
      const travel = ledger.known(`survey.${side}`, 'length')
      add('survey', what, side, 'survey', null, travel && { travel, u: ledger.known(`survey.${side}.u`, 'length') })
    }
    if (!steering) continue
    if (!has('steering box', side)) add('box', 'steering box', side, 'geometry', null, ofBox(steering, side, ledger))
    if (!has('ram', side)) add('ram', 'ram', side, 'geometry', null, ofRam(build, steering, side, ledger))
  }
  return lines
}

/** One line of the list of limits, for one side. */
function ofLimit(limit: Limit, i: number, side: Side, steering: KnownSteering | null, ledger: Ledger): Found {
  const id = `limit.${limit.id}.${side}`
  const path = ['limits', i] as const
  const at: At = (key, dimension) => entered(dimension, limit[key] as Typed<typeof dimension> | undefined, [...path, key])
  const spread = at('uncertainty', 'length')
  const u = () => spread && ledger.compute(`${id}.u`, limitFromBounds, { a: spread })
  const measured = at('travel', 'length')
  const [gap, R] = [at('gap', 'length'), at('radius', 'length')]
  if (limit.what === 'tyre contact') return tyre(id, side, at, steering, ledger, u)
  if (measured) {
    const travel = ledger.compute(id, limitTravelASide, { x: measured })
    return travel && { travel, u: u() }
  }
  const angle = at('angle', 'angle')
  if (!steering || (!angle && !(gap && R))) {
    ledger.measure('limit', path, { what: limit.what, side, given: angle || gap ? 'no linkage' : 'nothing' })
    return undefined
  }
  if (limit.what === 'steering box') return angle && boxAt(id, side, angle, steering, ledger, u)
  const allowed = angle ?? (gap && R ? ledger.compute(`${id}.via-angle`, stopAngleFromGap, { g: gap, R }) : undefined)
  const travel = allowed && travelAtAngle(id, steering.linkage, side, allowed, ledger)
  if (!travel) return undefined
  if (angle || !gap || gap.si <= 0) return { travel, u: u() }
  const atGap = spread && ledger.compute(`${id}.u-gap`, limitFromBounds, { a: spread })
  return { travel, u: atGap && ledger.compute(`${id}.u`, limitFromGap, { u_g: atGap, x: travel, g: gap }) }
}

type At = <D extends 'length' | 'angle'>(
  key: 'travel' | 'angle' | 'gap' | 'radius' | 'clearance' | 'uncertainty',
  dimension: D,
) => Known<D> | undefined

/** Tyre contact less the clearance wanted, which counts at the place of contact. */
function tyre(id: string, side: Side, at: At, steering: KnownSteering | null, ledger: Ledger, u: () => Known<'length'> | undefined): Found {
  const [measured, given] = [at('travel', 'length'), at('angle', 'angle')]
  const [g, R] = [at('clearance', 'length'), at('radius', 'length')]
  if (measured && !(g && R && steering)) {
    const travel = ledger.compute(id, limitTravelASide, { x: measured })
    return travel && { travel, u: u() }
  }
  if (!steering) return undefined
  const signed = measured && ({ ...measured, si: side === 'left' ? measured.si : -measured.si } as Known<'length'>)
  const there = signed && anglesAt(`${id}.via-contact`, steering.linkage, signed, ledger)?.[side]
  const touches = given ?? (there && ({ ...there, si: Math.abs(there.si) } as Known<'angle'>))
  if (!touches) return undefined
  const allowed = g && R ? ledger.compute(`${id}.via-angle`, limitLessClearance, { delta_c: touches, g, R }) : touches
  const travel = allowed && allowed.si > 0 ? travelAtAngle(id, steering.linkage, side, allowed, ledger) : undefined
  return travel && { travel, u: u() }
}

/** What the box allows a side: half of its sweep, less what it stands off its centre. */
function ofBox(steering: KnownSteering, side: Side, ledger: Ledger): Found {
  const { sweep, geometry } = steering
  if (!sweep || !geometry.chain) return undefined
  const half = { ...sweep, si: si(sweep.si / 2, 'angle') }
  return boxAt(`limit.box.${side}`, side, half, steering, ledger, () => undefined)
}

function boxAt(
  id: string,
  side: Side,
  angle: Known<'angle'>,
  { geometry: g, sweep }: KnownSteering,
  ledger: Ledger,
  u: () => Known<'length'> | undefined,
): Found {
  const { chain, linkage, range } = g
  if (!chain) {
    ledger.measure('limit', ['limits'], { what: 'steering box', side, given: 'no chain' })
    return undefined
  }
  // which way the pitman arm turns for this side
  const little = stateAtTravel(linkage, side === 'left' ? 1e-4 : -1e-4, range)
  const way = little.ok ? Math.sign(atTravelPitman(g, little.value.travel) ?? 0) : 0
  const reached = travelAtPitman(linkage, chain, range, way * angle.si - chain.offCentre)
  if (reached === undefined || way === 0) return undefined
  const inputs = { phi: angle, ...(sweep && sweep.si !== 2 * angle.si && { S: sweep }) }
  return { travel: ledger.searched(id, 'length', si(Math.abs(reached), 'length'), inputs), u: u() }
}

function atTravelPitman(g: KnownSteering['geometry'], travel: number): number | undefined {
  const s = atTravel(g, travel)
  return s.ok ? s.value.pitman?.angle : undefined
}

/** How far the ram lets the rod go to one side before it bottoms or is fully out. */
function ofRam(build: Build, { geometry: g, ram }: KnownSteering, side: Side, ledger: Ledger): Found {
  if (!ram?.stroke || !g.ram) return undefined
  const reached = ramReach(g, side)
  if (reached === null || reached <= 0) return undefined
  const inputs = { ...(ram.closed && { L_c: ram.closed }), s: ram.stroke }
  const spread = typed(build, 'ram', 'uncertainty', 'length')
  const travel = ledger.searched(`limit.ram.${side}`, 'length', si(reached, 'length'), inputs)
  return { travel, u: spread && ledger.compute(`limit.ram.${side}.u`, limitFromBounds, { a: spread }) }
}

/** The travel to a side at which the ram comes to an end; null: not within the linkage's range, or a size is not known. */
export function ramReach(g: KnownSteering['geometry'], side: Side): number | null {
  const way = side === 'left' ? 1 : -1
  const { ram } = g
  if (!ram) return null
  const room = (travel: number): number => {
    const s = stateAtTravel(g.linkage, way * travel, g.range)
    if (!s.ok) return Number.NaN
    const { spareClosed, spareOpen } = spareOf(ram, ramLength(ram, s.value))
    return spareClosed !== null && spareOpen !== null ? Math.min(spareClosed, spareOpen) : Number.NaN
  }
  if (!(room(0) > 0)) return room(0) <= 0 ? 0 : null
  const end = Math.abs(g.range[side].travel) * (1 - 1e-9)
  const steps = 12
  for (let i = 1; i <= steps; i++) {
    const next = (end * i) / steps
    if (!(room(next) > 0)) return root(room, (end * (i - 1)) / steps, next) ?? null
  }
  return null
}
