import { casterFromSweep } from '../formulas/alignment/caster.ts'
import { camberChange } from '../formulas/alignment/sweep.ts'
import { sleeveTurns, toeWheelAngle } from '../formulas/alignment/toe.ts'
import { linkageRodLength } from '../formulas/linkage/rod.ts'
import { kingpinGroundOffset } from '../formulas/linkage/steering.ts'
import { limitMargin } from '../formulas/linkage/stops.ts'
import type { Build } from '../model/build.ts'
import type { ThreadEnd } from '../model/end/types.ts'
import { si } from '../quantities/dimension.ts'
import { entered, fromOrigin, type Known, type Ledger } from './ledger.ts'
import { type KnownLinkage, staticToe, typed } from './linkage/gather.ts'

/** Toe as angles, what the tie rod has to change to give the toe wanted and how many turns that is; caster from a sweep; scrub radius. */
export function planAlignment(build: Build, linkage: KnownLinkage | null, ledger: Ledger): void {
  const newest = newestReading(build)
  if (newest !== undefined) planToe(build, newest, linkage, ledger)
  planCaster(build, ledger)
  planScrub(build, ledger)
}

/** The last reading that no later one corrects. */
function newestReading(build: Build): number | undefined {
  const all = build.alignment ?? []
  const corrected = new Set(all.map((r) => r.corrects))
  const good = all.flatMap((r, i) => (corrected.has(r.id) || !r.toe || !r.toeAt ? [] : [{ i, on: r.on }]))
  return good.sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.i - b.i)).at(-1)?.i
}

function planToe(build: Build, i: number, linkage: KnownLinkage | null, ledger: Ledger): void {
  const reading = build.alignment?.[i]
  const T = entered('length', reading?.toe, ['alignment', i, 'toe'])
  const D = entered('length', reading?.toeAt, ['alignment', i, 'toeAt'])
  const wheel = T && D && ledger.compute('alignment.toe-wheel', toeWheelAngle, { T, D })
  const now = wheel && ledger.sum('alignment.toe-total', 'angle', { 'left wheel': wheel, 'right wheel': wheel })
  const wanted = ledger.known('alignment.toe-set-total', 'angle') ?? (linkage ? undefined : staticToe(build, ledger))
  if (!now || !wanted || !linkage) return
  const { w, r_L, r_R, beta_L, beta_R, k } = linkage
  const sizes = { w, r_L, r_R, beta_L, beta_R, k }
  const before = ledger.compute('alignment.via-rod-now', linkageRodLength, { ...sizes, tau: now })
  const after = ledger.compute('alignment.via-rod-wanted', linkageRodLength, { ...sizes, tau: wanted })
  const dL = before && after && ledger.compute('alignment.rod-change', limitMargin, { x_1: before, x_2: after })
  const n = dL && sleeveThread(build)
  if (n) ledger.compute('alignment.turns', sleeveTurns, { dL, n })
}

/** Threads a length of a tie rod whose ends have the same pitch and opposite hands, so that turning it sets the toe. */
function sleeveThread(build: Build): Known<'curvature'> | undefined {
  const i = build.parts.findIndex((p) => p.kind === 'tube' && p.serves === 'tie rod')
  const ends = (build.parts[i]?.ends ?? []).flatMap((e, j) =>
    e.connection.end.kind === 'thread' ? [{ end: e.connection.end as ThreadEnd, e, j }] : [],
  )
  const [a, b] = ends
  if (!a || !b || ends.length !== 2 || a.end.hand === b.end.hand || a.end.thread.pitch !== b.end.thread.pitch) return undefined
  return fromOrigin('curvature', si(1 / a.end.thread.pitch, 'curvature'), {
    kind: 'entered',
    path: ['parts', i, 'ends', a.j, 'connection'],
    typed: a.e.connection.typed,
  })
}

function planCaster(build: Build, ledger: Ledger): void {
  const phi = typed(build, 'casterSweep', 'turn', 'angle')
  for (const side of ['left', 'right'] as const) {
    const [c_o, c_i] = [typed(build, 'casterSweep', `${side}Out`, 'angle'), typed(build, 'casterSweep', `${side}In`, 'angle')]
    const dc = phi && c_o && c_i && ledger.compute(`alignment.${side}.via-camber`, camberChange, { c_o, c_i })
    if (dc) ledger.compute(`alignment.${side}.caster`, casterFromSweep, { dc, phi })
  }
}

function planScrub(build: Build, ledger: Ledger): void {
  const [b, o, R] = [
    typed(build, 'wheel', 'hubFace', 'length'),
    typed(build, 'wheel', 'offset', 'length'),
    typed(build, 'wheel', 'loadedRadius', 'length'),
  ]
  const sigma = entered('angle', build.axle?.kingpinInclination, ['axle', 'kingpinInclination'])
  if (b && o && R && sigma) ledger.compute('alignment.scrub', kingpinGroundOffset, { b, o, R, sigma })
}
