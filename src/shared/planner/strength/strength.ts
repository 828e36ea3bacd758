import { armBending, clampOffset, ramRodOut, studBending } from '../../formulas/forces/strength.ts'
import { marginForce, marginStress } from '../../formulas/forces/supply.ts'
import { ramAnnulusArea, ramCapArea, ramForce } from '../../formulas/hydraulics/ram.ts'
import { demandForceAtLever } from '../../formulas/linkage/demand.ts'
import { columnCriticalLoad, columnEuler, columnStepped } from '../../formulas/strength/column.ts'
import { tubeArea, tubeRadiusOfGyration, tubeSecondMoment } from '../../formulas/strength/tube.ts'
import type { Build } from '../../model/build.ts'
import { si } from '../../quantities/dimension.ts'
import { metres, pascals, ratio } from '../../quantities/make.ts'
import type { StrengthLine } from '../forces-types.ts'
import { chosen, entered, type Known, type Ledger } from '../ledger.ts'
import { missingOf, typed } from '../linkage/gather.ts'
import type { KnownSteering } from '../linkage/gather-rest.ts'
import { type KnownBolt, planBolts } from './bolts.ts'
import { type Clamp, planLink, strengthLine, WANTED } from './link.ts'

/** As the cylinder maker's page on buckling takes it for the rod. */
const STEEL = pascals(210e9)

/**
 * Everything the ram can pull on, under its full force with one wheel blocked: how many times over each part holds, in each way
 * in which it can give way.
 */
export function planStrength(
  build: Build,
  steering: KnownSteering | null,
  relief: Known<'pressure'> | undefined,
  sectorTorque: Known<'torque'> | undefined,
  bolts: readonly (KnownBolt | undefined)[],
  ledger: Ledger,
): readonly StrengthLine[] {
  const lines: StrengthLine[] = []
  const full = fullForce(build, relief, ledger)
  const box = ['left', 'right'].map((turn) => ledger.known(`supply.${turn}.box`, 'force')).filter((f) => f !== undefined)
  const [most] = box.sort((a, b) => b.si - a.si)
  const P = full && (most ? ledger.sum('strength.blocked', 'force', { ram: full, box: most }) : full)
  planLink(build, 'tie rod', steering?.linkage.c, P, steering ? clampOf(build, steering, ledger) : undefined, lines, ledger)
  dragLink(build, steering, sectorTorque, lines, ledger)
  ramColumn(build, full, lines, ledger)
  planBolts(build, bolts, full, lines, ledger)
  stud(build, P, lines, ledger)
  arm(build, P, lines, ledger)
  tell(lines, P, ledger)
  return lines
}

/** Relief pressure on the greater side, without losses: a blocked ram stands still, and its seals rest. */
function fullForce(build: Build, relief: Known<'pressure'> | undefined, ledger: Ledger): Known<'force'> | undefined {
  const i = build.parts.findIndex((p) => p.kind === 'ram')
  const ram = build.parts[i]
  if (ram?.kind !== 'ram' || !relief || !ram.ended) return undefined
  const D = entered('length', ram.bore, ['parts', i, 'bore'])
  const d = entered('length', ram.rod, ['parts', i, 'rod'])
  const A =
    ram.ended === 'single'
      ? D && ledger.compute('strength.via-ram-area', ramCapArea, { D })
      : D && d && ledger.compute('strength.via-ram-area', ramAnnulusArea, { D, d })
  return A && ledger.compute('strength.ram-full', ramForce, { p: relief, A })
}

/** Where the ram takes hold of the tie rod; undefined until its places are known, which the ram's own rule asks for. */
function clampOf(build: Build, { ram, linkage }: KnownSteering, ledger: Ledger): Clamp | undefined {
  const above = typed(build, 'ram', 'rodAbove', 'length')
  if (!ram || !above || ram.s.si <= 0 || ram.s.si >= linkage.c.si) return undefined
  const e = ledger.compute('strength.via-clamp-offset', clampOffset, { e_1: ram.e, e_2: above })
  return e && { e, a: ram.s }
}

function dragLink(
  build: Build,
  steering: KnownSteering | null,
  T: Known<'torque'> | undefined,
  lines: StrengthLine[],
  ledger: Ledger,
): void {
  const r = typed(build, 'pitman', 'length', 'length')
  const P = T && r && ledger.compute('strength.drag-link-push', demandForceAtLever, { T, r })
  const chain = steering?.geometry.chain
  if (!P || !chain) return
  const L = typed(build, 'dragLink', 'length', 'length') ?? ledger.searched('strength.via-drag-link', 'length', metres(chain.link), {})
  planLink(build, 'drag link', L, P, undefined, lines, ledger)
}

/** The ram fully out, pushing: as body and rod together, and the rod alone as the cylinder maker checks it. */
function ramColumn(build: Build, F: Known<'force'> | undefined, lines: StrengthLine[], ledger: Ledger): void {
  const i = build.parts.findIndex((p) => p.kind === 'ram')
  const ram = build.parts[i]
  if (ram?.kind !== 'ram' || !F || F.si <= 0) return
  if (ram.ended === 'double') {
    ledger.add({ code: 'strength.double_ended', severity: 'noted', about: ['parts', i], facts: { part: ram.name } })
    return
  }
  const D = entered('length', ram.bore, ['parts', i, 'bore'])
  const d = entered('length', ram.rod, ['parts', i, 'rod'])
  const L_c = entered('length', ram.closedLength, ['parts', i, 'closedLength'])
  const s = entered('length', ram.stroke, ['parts', i, 'stroke'])
  const OD = typed(build, 'ram', 'bodyDiameter', 'length')
  const L_1 = typed(build, 'ram', 'bodyLength', 'length')
  const missing = missingOf({
    'closed length': L_c,
    stroke: s,
    'outside diameter of the body': OD,
    'length of the body': L_1,
    bore: D,
    rod: d,
  })
  if (missing.length > 0) ledger.measure('ram column', ['geometry', 'ram'], { part: ram.name, missing })
  if (!D || !d || !L_c || !s) return
  const E = chosen('pressure', STEEL, 'steel modulus')
  const none = chosen('length', metres(0), 'solid')
  const I_2 = ledger.compute('strength.ram.via-rod-moment', tubeSecondMoment, { D: d, d: none })
  const L_k = ledger.sum('strength.ram.via-length', 'length', { closed: L_c, stroke: s })
  const alone = rodAlone(build, d, none, I_2, L_k, E, ledger)
  const simple = alone && ledger.compute('margin.ram-rod', marginForce, { R: alone, F })
  strengthLine(lines, 'ram', 'rod alone', simple, WANTED.ram)
  const I_1 = OD && ledger.compute('strength.ram.via-body-moment', tubeSecondMoment, { D: OD, d: D })
  const L_2 = L_1 && ledger.compute('strength.ram.via-rod-out', ramRodOut, { L_c, s, L_1 })
  const both = I_1 && I_2 && L_1 && L_2 && ledger.compute('strength.ram.column', columnStepped, { E, I_1, L_1, I_2, L_2 })
  const factor = both && ledger.compute('margin.ram-column', marginForce, { R: both, F })
  strengthLine(lines, 'ram', 'stepped column', factor, WANTED.ram)
}

/** Euler; by Johnson too where the rod's yield strength is known. */
function rodAlone(
  build: Build,
  D: Known<'length'>,
  d: Known<'length'>,
  I: Known<'secondMomentOfArea'> | undefined,
  L: Known<'length'>,
  E: Known<'pressure'>,
  ledger: Ledger,
): Known<'force'> | undefined {
  const S_y = entered('pressure', build.forces?.ramRod?.yield, ['forces', 'ramRod', 'yield'])
  const A = S_y && ledger.compute('strength.ram.via-rod-area', tubeArea, { D, d })
  const r = S_y && ledger.compute('strength.ram.via-gyration', tubeRadiusOfGyration, { D, d })
  if (S_y && A && r) return ledger.compute('strength.ram.rod-alone', columnCriticalLoad, { A, S_y, L_e: L, r, E })
  return I && ledger.compute('strength.ram.rod-alone', columnEuler, { n: chosen('ratio', ratio(1), 'pinned'), E, I, L })
}

function stud(build: Build, F: Known<'force'> | undefined, lines: StrengthLine[], ledger: Ledger): void {
  const at = (key: 'studDiameter' | 'studLever') => entered('length', build.forces?.rodEnd?.[key], ['forces', 'rodEnd', key])
  const [d, l] = [at('studDiameter'), at('studLever')]
  const S_y = entered('pressure', build.forces?.rodEnd?.studYield, ['forces', 'rodEnd', 'studYield'])
  const missing = missingOf({ 'diameter at the root of the cone': d, 'from there to the ball': l, 'yield strength': S_y })
  if (F && missing.length > 0) ledger.measure('ball stud', ['forces', 'rodEnd'], { missing })
  if (!F || F.si <= 0 || !d || !l || !S_y) return
  const s = ledger.compute('strength.via-stud', studBending, { F, l, d })
  strengthLine(lines, 'ball stud', 'bending', s && ledger.compute('margin.ball-stud', marginStress, { R: S_y, F: s }), WANTED.yields)
}

function arm(build: Build, F: Known<'force'> | undefined, lines: StrengthLine[], ledger: Ledger): void {
  const given = build.forces?.steeringArm
  const at = (key: 'thickness' | 'width' | 'lever') => entered('length', given?.[key], ['forces', 'steeringArm', key])
  const [b, h, l] = [at('thickness'), at('width'), at('lever')]
  const S_y = entered('pressure', given?.yield, ['forces', 'steeringArm', 'yield'])
  const missing = missingOf({ 'thickness at the root': b, 'width at the root': h, 'from the root to the joint': l, 'yield strength': S_y })
  if (F && missing.length > 0) ledger.measure('steering arm', ['forces', 'steeringArm'], { missing })
  if (!F || F.si <= 0 || !b || !h || !l || !S_y) return
  const s = ledger.compute('strength.via-arm', armBending, { F, l, b, h })
  strengthLine(lines, 'steering arm', 'bending', s && ledger.compute('margin.steering-arm', marginStress, { R: S_y, F: s }), WANTED.yields)
}

/** The rod alone is the rough check of a ram: it stands back where body and rod together are known. */
const counts = (line: StrengthLine, _i: number, all: readonly StrengthLine[]): boolean =>
  line.mode !== 'rod alone' || all.every((l) => l.mode !== 'stepped column')

/** What gives way first and by what, and everything that holds less often over than is wanted. */
function tell(lines: readonly StrengthLine[], P: Known<'force'> | undefined, ledger: Ledger): void {
  const counted = lines.filter(counts)
  for (const line of counted) {
    if (line.factor >= line.wanted) continue
    ledger.add({
      code: line.factor < 1 ? 'strength.gives_way' : 'strength.thin',
      severity: line.factor < 1 ? 'stops' : 'look',
      about: ['forces'],
      facts: { part: line.part, mode: line.mode },
      evidence: [
        { name: 'holds so many times over', dimension: 'ratio', si: line.factor },
        { name: 'wanted', dimension: 'ratio', si: line.wanted },
        ...(P ? [{ name: 'load, one wheel blocked', dimension: 'force' as const, si: P.si }] : []),
      ],
      numbers: [line.number],
    })
  }
  const [first] = [...counted].sort((a, b) => a.factor - b.factor)
  if (!first || counted.length < 2) return
  ledger.add({
    code: 'strength.first',
    severity: 'noted',
    about: ['forces'],
    facts: { part: first.part, mode: first.mode },
    evidence: [{ name: 'holds so many times over', dimension: 'ratio', si: si(first.factor, 'ratio') }],
    numbers: [first.number],
  })
}
