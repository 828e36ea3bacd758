import { toeWheelAngle } from '../../formulas/alignment/toe.ts'
import { type Linkage, type LinkageRange, makeLinkage, rangeOf } from '../../formulas/linkage/linkage.ts'
import { placeFromKingpin } from '../../formulas/linkage/mounts.ts'
import { linkageRodLength, linkageRodMiddle } from '../../formulas/linkage/rod.ts'
import type { Build } from '../../model/build.ts'
import type { Geometry } from '../../model/geometry.ts'
import type { Dimension, Quantity, Typed } from '../../quantities/dimension.ts'
import { degrees, ratio } from '../../quantities/make.ts'
import { chosen, entered, type Known, type Ledger } from '../ledger.ts'

/** The linkage in plan view with where each of its sizes came from. */
export interface KnownLinkage {
  readonly made: Linkage
  readonly range: LinkageRange
  readonly w: Known<'length'>
  readonly r_L: Known<'length'>
  readonly r_R: Known<'length'>
  readonly beta_L: Known<'angle'>
  readonly beta_R: Known<'angle'>
  readonly c: Known<'length'>
  readonly k: Known<'ratio'>
  /** total toe at straight ahead */
  readonly tau: Known<'angle'>
  readonly x_0: Known<'length'>
}

/** A value of the geometry that somebody typed. */
export function typed<G extends keyof Geometry, D extends Dimension>(
  build: Build,
  group: G,
  key: keyof NonNullable<Geometry[G]> & string,
  dimension: D,
): Known<D> | undefined {
  const values = build.geometry?.[group] as Readonly<Record<string, unknown>> | undefined
  return entered(dimension, values?.[key] as Typed<D> | undefined, ['geometry', group, key])
}

/**
 * Kingpins, arms and tie rod, from the axle and what the geometry adds to it. What is missing is asked for in one finding; a
 * rod that does not reach stops the build.
 */
export function gatherLinkage(build: Build, ledger: Ledger): KnownLinkage | null {
  if (!build.axle && !build.geometry) return null
  const axle = build.axle
  const ofAxle = <D extends Dimension>(key: 'kingpinSpacing' | 'armLength' | 'armAngle', dimension: D) =>
    entered(dimension, axle?.[key] as Typed<D> | undefined, ['axle', key])
  const w = ofAxle('kingpinSpacing', 'length')
  const r_L = typed(build, 'arms', 'leftLength', 'length') ?? ofAxle('armLength', 'length')
  const r_R = typed(build, 'arms', 'rightLength', 'length') ?? ofAxle('armLength', 'length')
  const beta_L = typed(build, 'arms', 'leftAngle', 'angle') ?? ofAxle('armAngle', 'angle')
  const beta_R = typed(build, 'arms', 'rightAngle', 'angle') ?? ofAxle('armAngle', 'angle')
  const where = axle?.tieRod
  if (!w || !r_L || !r_R || !beta_L || !beta_R || !where) {
    const wanted = { 'kingpin spacing': w, 'arm length': r_L && r_R, 'arm angle': beta_L && beta_R, 'tie rod behind or ahead': where }
    ledger.measure('linkage sizes', ['axle'], { missing: missingOf(wanted) })
    return null
  }
  const k: Known<'ratio'> = {
    dimension: 'ratio',
    si: ratio(where === 'behind' ? 1 : -1),
    origin: { kind: 'entered', path: ['axle', 'tieRod'], typed: where },
  }
  const sizes = {
    tieRod: where,
    spacing: w.si,
    left: { length: r_L.si, lean: beta_L.si },
    right: { length: r_R.si, lean: beta_R.si },
  } as const
  const rod = typed(build, 'tieRod', 'length', 'length')
  const toe = rod ? undefined : (staticToe(build, ledger) ?? chosen('angle', degrees(0), 'no toe'))
  const made = makeLinkage(rod ? { ...sizes, rod: rod.si } : { ...sizes, toe: toe?.si ?? 0 })
  if (!made.ok) {
    const facts = made.issues[0]?.facts ?? {}
    ledger.add({
      code: 'linkage.does_not_close',
      severity: 'stops',
      about: ['geometry', 'tieRod'],
      evidence: (['rod', 'shortest', 'longest'] as const).flatMap((name) =>
        typeof facts[name] === 'number' ? [{ name: `${name} tie rod`, dimension: 'length' as const, si: facts[name] }] : [],
      ),
    })
    return null
  }
  const known = { w, r_L, r_R, beta_L, beta_R, k }
  const tau = toe ?? chosen('angle', made.value.toe as Quantity<'angle'>, 'toe of the rod')
  const c = rod ?? ledger.compute('linkage.rod-length', linkageRodLength, { ...known, tau })
  const x_0 = ledger.compute('linkage.via-middle', linkageRodMiddle, { r_L, r_R, beta_L, beta_R, k, tau })
  return c && x_0 ? { made: made.value, range: rangeOf(made.value), ...known, c, tau, x_0 } : null
}

/** Total static toe as an angle, from the distance that was typed; undefined where none is. */
export function staticToe(build: Build, ledger: Ledger): Known<'angle'> | undefined {
  const T = typed(build, 'tieRod', 'toe', 'length')
  const D = typed(build, 'tieRod', 'toeAt', 'length')
  const wheel = T && D && ledger.compute('alignment.toe-set', toeWheelAngle, { T, D })
  return wheel && ledger.sum('alignment.toe-set-total', 'angle', { 'left wheel': wheel, 'right wheel': wheel })
}

/** The names of what is not known. */
export const missingOf = (wanted: Readonly<Record<string, unknown>>): string[] =>
  Object.entries(wanted).flatMap(([name, value]) => (value === undefined ? [name] : []))

export interface KnownPlace {
  readonly x: Known<'length'>
  readonly y: Known<'length'>
}

/** A place on axle or frame, by the kingpin or middle it was measured from; undefined with anything of it missing. */
export function placeOnAxle(build: Build, group: 'pitman' | 'ram', w: Known<'length'>, ledger: Ledger): KnownPlace | undefined {
  const from = build.geometry?.[group]?.from
  const along = typed(build, group, 'along', 'length')
  const y = typed(build, group, 'ahead', 'length')
  if (!from || !along || !y) return undefined
  if (from === 'middle') return { x: along, y }
  const h: Known<'ratio'> = {
    dimension: 'ratio',
    si: ratio(from === 'right kingpin' ? 1 : -1),
    origin: { kind: 'entered', path: ['geometry', group, 'from'], typed: from },
  }
  const x = ledger.compute(`linkage.via-${group}`, placeFromKingpin, { w, a: along, h })
  return x && { x, y }
}
