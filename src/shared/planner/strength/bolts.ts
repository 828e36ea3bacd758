import { boltPreload } from '../../formulas/fasteners/bolt.ts'
import { boltCombinedStress, boltOverturning, boltShearStress, clampSlip } from '../../formulas/forces/strength.ts'
import { marginForce, marginStress } from '../../formulas/forces/supply.ts'
import type { Build } from '../../model/build.ts'
import type { BoltGroup } from '../../model/forces.ts'
import { ratio } from '../../quantities/make.ts'
import type { StrengthLine } from '../forces-types.ts'
import { chosen, entered, fromOrigin, type Known, type Ledger } from '../ledger.ts'
import { missingOf } from '../linkage/gather.ts'
import { strengthLine, WANTED } from './link.ts'
import { boltStrength } from './materials.ts'
import { boltThread, threadSizes } from './thread-size.ts'

/** Of the proof load, for joints that are taken apart again. */
const PRELOAD = ratio(0.75)
/** Steel clamp on oily steel tube. Common practice, no published source. */
const CLAMP_FRICTION = ratio(0.12)

/** Bolts of the ram's bracket under the full force of the ram, and the grip of its clamp. */
export function planBolts(
  build: Build,
  bolts: readonly (KnownBolt | undefined)[],
  F: Known<'force'> | undefined,
  lines: StrengthLine[],
  ledger: Ledger,
): void {
  for (const [i, group] of (build.forces?.bolts ?? []).entries()) {
    if (group.place === 'ram bracket') bracket(group, bolts[i], i, F, lines, ledger)
    else if (group.place === 'ram clamp') slip(build, group, bolts[i], i, F, lines, ledger)
  }
}

export type KnownBolt = NonNullable<ReturnType<typeof oneBolt>>

/** Each group's bolt, in the order of the groups; what is missing is asked for once. */
export const knownBolts = (build: Build, ledger: Ledger): readonly (KnownBolt | undefined)[] =>
  (build.forces?.bolts ?? []).map((group, i) => oneBolt(group, i, ledger))

/** What is known of one bolt of a group: diameter, stress area, proof and yield strength, preload wanted. */
function oneBolt(group: BoltGroup, i: number, ledger: Ledger) {
  const id = `bolts.${i}`
  const path = ['forces', 'bolts', i] as const
  const thread = boltThread(group.thread)
  const strength =
    thread && group.grade !== undefined
      ? boltStrength(group.grade, thread.major, thread.family === 'metric' ? 'metric' : 'inch')
      : undefined
  if (!thread || !strength) {
    ledger.measure('bolt strength', path, {
      what: group.what,
      thread: group.thread,
      grade: group.grade ?? null,
      knownThread: thread !== undefined,
    })
    return undefined
  }
  const { d, A_t } = threadSizes(id, thread, { kind: 'entered', path: [...path, 'thread'], typed: group.thread }, ledger)
  const x = entered('ratio', group.preload, [...path, 'preload']) ?? chosen('ratio', PRELOAD, 'preload share')
  const F_i = A_t && ledger.compute(`${id}.preload`, boltPreload, { x, S_p: strength.proof, A_t })
  return A_t && F_i && { id, path, d, A_t, F_i, ...strength }
}

const counted = (count: number, path: readonly (string | number)[]): Known<'ratio'> =>
  fromOrigin('ratio', ratio(count), { kind: 'entered', path, typed: String(count) })

function bracket(
  group: BoltGroup,
  bolt: KnownBolt | undefined,
  i: number,
  F: Known<'force'> | undefined,
  lines: StrengthLine[],
  ledger: Ledger,
): void {
  const path = ['forces', 'bolts', i] as const
  const h = entered('length', group.height, [...path, 'height'])
  const b = entered('length', group.rows, [...path, 'rows'])
  const missing = missingOf({
    'number of bolts': group.count,
    'planes sheared': group.planes,
    'height of the pin': h,
    'distance between the rows': b,
    'force of the ram': F,
  })
  if (missing.length > 0) ledger.measure('bracket bolts', path, { what: group.what, missing })
  const { count, planes } = group
  if (!F || F.si <= 0 || count === undefined || planes === undefined || !h || !b || !bolt) return
  const m = counted(count, [...path, 'count'])
  const tau = ledger.compute(`${bolt.id}.via-shear`, boltShearStress, { F, m, q: counted(planes, [...path, 'planes']), A_t: bolt.A_t })
  const P = ledger.compute(`${bolt.id}.via-pull`, boltOverturning, { F, h, m, b })
  const s = tau && P && ledger.compute(`${bolt.id}.via-stress`, boltCombinedStress, { P, A_t: bolt.A_t, tau })
  const factor = s && s.si > 0 ? ledger.compute(`margin.bolts-${i}`, marginStress, { R: bolt.yield, F: s }) : undefined
  strengthLine(lines, 'ram bracket', 'bolts', factor, WANTED.yields)
  if (P && P.si > bolt.F_i.si) {
    ledger.add({
      code: 'strength.bracket_lifts',
      severity: 'look',
      about: path,
      facts: { what: group.what },
      evidence: [
        { name: 'pull in a bolt', dimension: 'force', si: P.si },
        { name: 'preload of a bolt', dimension: 'force', si: bolt.F_i.si },
      ],
      numbers: [`${bolt.id}.via-pull`, `${bolt.id}.preload`],
    })
  }
}

function slip(
  build: Build,
  group: BoltGroup,
  bolt: KnownBolt | undefined,
  i: number,
  F: Known<'force'> | undefined,
  lines: StrengthLine[],
  ledger: Ledger,
): void {
  const path = ['forces', 'bolts', i] as const
  const missing = missingOf({ 'number of bolts': group.count, 'force of the ram': F })
  if (missing.length > 0) ledger.measure('clamp bolts', path, { what: group.what, missing })
  if (!F || F.si <= 0 || group.count === undefined) return
  const mu = entered('ratio', build.forces?.clampFriction, ['forces', 'clampFriction']) ?? chosen('ratio', CLAMP_FRICTION, 'clamp friction')
  const R = bolt && ledger.compute(`${bolt.id}.slip`, clampSlip, { mu, m: counted(group.count, [...path, 'count']), F_i: bolt.F_i })
  const factor = R && ledger.compute(`margin.bolts-${i}`, marginForce, { R, F })
  strengthLine(lines, 'ram clamp', 'slip', factor, WANTED.yields)
}
