import {
  clampLoadFactor,
  secantLoadFactor,
  shearYield,
  stressDirect,
  threadStripArea,
  tubeInsideDiameter,
} from '../../formulas/forces/strength.ts'
import { marginForce, marginStress } from '../../formulas/forces/supply.ts'
import { columnConstant, columnCriticalLoad, columnEuler, columnSlenderness } from '../../formulas/strength/column.ts'
import { tubeArea, tubeRadiusOfGyration, tubeSecondMoment, tubeSectionModulus } from '../../formulas/strength/tube.ts'
import { threadPitchDiameter60 } from '../../formulas/threads/diameters.ts'
import type { Build } from '../../model/build.ts'
import type { ThreadEnd } from '../../model/end/types.ts'
import { splitEndRef } from '../../model/joint.ts'
import type { PartOf } from '../../model/part.ts'
import { si } from '../../quantities/dimension.ts'
import { ksi, ratio } from '../../quantities/make.ts'
import type { FailureMode, StrengthLine, StrengthPart } from '../forces-types.ts'
import { chosen, entered, type Known, type Ledger } from '../ledger.ts'
import { missingOf } from '../linkage/gather.ts'
import { disagreeing, type TubeMaterial, tubeMaterial } from './materials.ts'
import { threadSizes } from './thread-size.ts'

/** Wanted of a column that must not buckle, and of a part that must not yield, both at the design load. Common practice, no published source. */
export const WANTED = { column: 2, yields: 1.5, ram: 3.5 } as const

/** Adds one way of giving way to the list. */
export function strengthLine(
  lines: StrengthLine[],
  part: StrengthPart,
  mode: FailureMode,
  factor: Known<'ratio'> | undefined,
  wanted: number,
): void {
  if (factor?.origin.kind === 'number') lines.push({ part, mode, factor: factor.si, wanted, number: factor.origin.id })
}

/** A ram's clamp on the link: how far its line is from the axis, and its place from one joint. */
export interface Clamp {
  readonly e: Known<'length'>
  readonly a: Known<'length'>
}

/** A straight link of tube between two ball joints, pushed: buckling, clamp, jog, weld zone, threads. */
export function planLink(
  build: Build,
  which: 'tie rod' | 'drag link',
  L: Known<'length'> | undefined,
  P: Known<'force'> | undefined,
  clamp: Clamp | undefined,
  lines: StrengthLine[],
  ledger: Ledger,
): void {
  const i = build.parts.findIndex((p) => p.kind === 'tube' && p.serves === which)
  const part = build.parts[i]
  if (part?.kind !== 'tube') return
  const key = which === 'tie rod' ? 'tieRod' : 'dragLink'
  const given = build.forces?.[key]
  const D = entered('length', part.outsideDiameter, ['parts', i, 'outsideDiameter'])
  const t = entered('length', part.wall, ['parts', i, 'wall'])
  const material = tubeMaterial(given?.material)
  if (given?.material === undefined || !material)
    ledger.measure('tube material', ['forces', key, 'material'], { part: part.name, given: given?.material ?? null })
  const missing = missingOf({ 'outside diameter': D, wall: t, 'length between its joints': L, 'force of the ram': P })
  if (missing.length > 0) ledger.measure('link strength', ['parts', i], { part: part.name, missing })
  const id = `strength.${key === 'tieRod' ? 'tie-rod' : 'drag-link'}`
  const d = D && t && ledger.compute(`${id}.via-inside`, tubeInsideDiameter, { D, t })
  if (!D || !d || !material || !L || !P || P.si <= 0) return
  tellDisagreement(material, part.name, key, ledger)
  const A = ledger.compute(`${id}.via-area`, tubeArea, { D, d })
  const I = ledger.compute(`${id}.via-second-moment`, tubeSecondMoment, { D, d })
  const Z = ledger.compute(`${id}.via-modulus`, tubeSectionModulus, { D, d })
  const r = ledger.compute(`${id}.via-gyration`, tubeRadiusOfGyration, { D, d })
  if (!A || !I || !Z || !r) return
  const section = { D, A, I, Z, r }
  buckling(id, which, section, material, L, P, part, lines, ledger)
  const { S_y, E } = material
  if (clamp && clamp.e.si > 0 && clamp.a.si > 0 && clamp.a.si < L.si) {
    const factor = ledger.compute(`margin.${key}-clamp`, clampLoadFactor, { P, ...clamp, L, A, I, Z, E, S_y })
    strengthLine(lines, which, 'clamp bending', factor, WANTED.yields)
  }
  const jog = entered('length', given?.jog, ['forces', key, 'jog'])
  if (jog && jog.si > 0) {
    const c = { ...D, si: si(D.si / 2, 'length') }
    const factor = ledger.compute(`margin.${key}-jog`, secantLoadFactor, { P, A, e: jog, c, r, L_e: L, E, S_y })
    strengthLine(lines, which, 'jog', factor, WANTED.yields)
  }
  if (given?.weldedEnds) weldZone(id, build, key, which, A, P, lines, ledger)
  threads(id, build, part, i, which, material, P, lines, ledger)
}

interface Section {
  readonly A: Known<'area'>
  readonly I: Known<'secondMomentOfArea'>
  readonly r: Known<'length'>
}

function buckling(
  id: string,
  which: 'tie rod' | 'drag link',
  { A, I, r }: Section,
  { S_y, E, row }: TubeMaterial,
  L: Known<'length'>,
  P: Known<'force'>,
  part: PartOf<'tube'>,
  lines: StrengthLine[],
  ledger: Ledger,
): void {
  const critical = ledger.compute(`${id}.critical`, columnCriticalLoad, { A, S_y, L_e: L, r, E })
  const euler = ledger.compute(`${id}.euler`, columnEuler, { n: chosen('ratio', ratio(1), 'pinned'), E, I, L })
  const lambda = ledger.compute(`${id}.slenderness`, columnSlenderness, { L_e: L, r })
  const C_c = ledger.compute(`${id}.via-constant`, columnConstant, { E, S_y })
  const key = which === 'tie rod' ? 'tieRod' : 'dragLink'
  const factor = critical && ledger.compute(`margin.${key}-buckling`, marginForce, { R: critical, F: P })
  strengthLine(lines, which, 'buckling', factor, WANTED.column)
  if (!critical || !euler || !lambda || !C_c) return
  const slender = lambda.si >= C_c.si
  ledger.add({
    code: slender ? 'strength.euler' : 'strength.johnson',
    severity: 'noted',
    about: ['forces', key, 'material'],
    facts: { part: part.name, material: row.id },
    evidence: [
      { name: 'gives way at', dimension: 'force', si: critical.si },
      { name: 'slenderness', dimension: 'ratio', si: lambda.si },
      { name: 'Euler begins at', dimension: 'ratio', si: C_c.si },
      { name: 'Euler load', dimension: 'force', si: euler.si },
    ],
    numbers: [`${id}.critical`, `${id}.euler`, `${id}.slenderness`],
  })
}

function tellDisagreement({ row }: TubeMaterial, part: string, key: string, ledger: Ledger): void {
  const others = disagreeing(row)
  if (others.length === 0) return
  ledger.add({
    code: 'strength.sources_disagree',
    severity: 'noted',
    about: ['forces', key, 'material'],
    facts: { part, material: row.id, others: others.map((o) => o.id) },
    evidence: [row, ...others].map((r) => ({ name: `yield, ${r.id}`, dimension: 'pressure', si: ksi(r.yield_ksi) })),
  })
}

/** Beside a welded bung the cold work is gone: the strength of the weld zone against the plain push. */
function weldZone(
  id: string,
  build: Build,
  key: 'tieRod' | 'dragLink',
  which: 'tie rod' | 'drag link',
  A: Known<'area'>,
  P: Known<'force'>,
  lines: StrengthLine[],
  ledger: Ledger,
): void {
  const given = build.forces?.[key]?.weldMaterial
  const weld = tubeMaterial(given)
  if (!weld) {
    ledger.measure('weld material', ['forces', key, 'weldMaterial'], { given: given ?? null, part: which })
    return
  }
  const s = ledger.compute(`${id}.via-direct`, stressDirect, { F: P, A })
  const factor = s && s.si > 0 ? ledger.compute(`margin.${key}-weld`, marginStress, { R: weld.S_y, F: s }) : undefined
  strengthLine(lines, which, 'weld zone', factor, WANTED.yields)
}

/** The threads in the link's ends: the shank in its core, and the tube's thread in shear. */
function threads(
  id: string,
  build: Build,
  part: PartOf<'tube'>,
  i: number,
  which: 'tie rod' | 'drag link',
  material: TubeMaterial,
  P: Known<'force'>,
  lines: StrengthLine[],
  ledger: Ledger,
): void {
  const key = which === 'tie rod' ? 'tieRod' : 'dragLink'
  const S_s = entered('pressure', build.forces?.rodEnd?.yield, ['forces', 'rodEnd', 'yield'])
  if (!S_s && part.ends.some((e) => e.connection.end.kind === 'thread')) ledger.measure('rod end yield', ['forces', 'rodEnd', 'yield'])
  part.ends.forEach((end, j) => {
    const { end: own, typed } = end.connection
    if (own.kind !== 'thread' || own.thread.flankAngle !== 60) return
    const origin = { kind: 'entered', path: ['parts', i, 'ends', j], typed } as const
    const { d, P: pitch, A_t } = threadSizes(`${id}.${end.name}`, own.thread, origin, ledger)
    const s = A_t && ledger.compute(`${id}.${end.name}.via-core`, stressDirect, { F: P, A: A_t })
    const core = s && S_s && ledger.compute(`margin.${key}-thread-${end.name}`, marginStress, { R: S_s, F: s })
    strengthLine(lines, 'rod end', 'thread', core, WANTED.yields)
    const engaged = engagement(build, `${part.id}/${end.name}`, own)
    const d_2 = engaged && ledger.compute(`${id}.${end.name}.via-pitch-diameter`, threadPitchDiameter60, { d, P: pitch })
    const A_s = d_2 && engaged && ledger.compute(`${id}.${end.name}.via-strip`, threadStripArea, { d_2, L: engaged })
    const tau_y = ledger.compute(`${id}.${end.name}.via-shear-yield`, shearYield, { S_y: material.S_y })
    const tau = A_s && ledger.compute(`${id}.${end.name}.via-shear`, stressDirect, { F: P, A: A_s })
    const strips = tau && tau_y && ledger.compute(`margin.${key}-strip-${end.name}`, marginStress, { R: tau_y, F: tau })
    strengthLine(lines, which, 'thread strips', strips, WANTED.yields)
  })
}

/** The shorter of what the two ends of a joint can engage; undefined where neither says. */
function engagement(build: Build, ref: string, own: ThreadEnd): Known<'length'> | undefined {
  const j = build.joints.findIndex((joint) => joint.a === ref || joint.b === ref)
  const other = build.joints[j]
  const far = other && splitEndRef(other.a === ref ? other.b : other.a)
  const p = build.parts.findIndex((x) => x.id === far?.part)
  const e = build.parts[p]?.ends.findIndex((x) => x.name === far?.end) ?? -1
  const male = build.parts[p]?.ends[e]
  const here = placeOfEnd(build, ref)
  const ends = [
    ...(own.length && here ? [{ length: own.length, ...here }] : []),
    ...(male?.connection.end.length
      ? [{ length: male.connection.end.length, path: ['parts', p, 'ends', e] as const, typed: male.connection.typed }]
      : []),
  ]
  const [shorter] = ends.sort((a, b) => a.length - b.length)
  return shorter && { dimension: 'length', si: shorter.length, origin: { kind: 'entered', path: shorter.path, typed: shorter.typed } }
}

function placeOfEnd(build: Build, ref: string) {
  const { part, end } = splitEndRef(ref)
  const p = build.parts.findIndex((x) => x.id === part)
  const e = build.parts[p]?.ends.findIndex((x) => x.name === end) ?? -1
  const found = build.parts[p]?.ends[e]
  return found && { path: ['parts', p, 'ends', e] as const, typed: found.connection.typed }
}
