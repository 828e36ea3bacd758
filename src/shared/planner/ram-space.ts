import { ramAngleToRod, ramLengthInSpace, ramRodPlace, ramSpareClosed, ramSpareOpen } from '../formulas/linkage/mounts.ts'
import { linkagePointAcross, linkagePointAhead, linkageRodBack } from '../formulas/linkage/rod.ts'
import { si } from '../quantities/dimension.ts'
import { inches, metres } from '../quantities/make.ts'
import { chosen, type Known, type Ledger } from './ledger.ts'
import { stopTravel } from './limits.ts'
import { anglesAt, type KnownState } from './linkage/angles.ts'
import { clearanceAt } from './linkage/at-travel.ts'
import { bestClamp, statesBetween } from './linkage/clamp.ts'
import type { KnownRam, KnownSteering } from './linkage/gather-rest.ts'
import type { LimitsPlan } from './linkage/plan-types.ts'

/** A body that comes nearer to the tie rod than this is told: dirt and a bent rod need room. Chosen. */
const NEAR = inches(0.25)
/** A clamp that stands further than this from its best place is told. Chosen. */
const OFF_BEST = inches(0.25)

/**
 * The ram in space: its length straight ahead and at both stops, the room before it is closed and fully out, its angle, its
 * clearance to the tie rod, and the place of the clamp that would leave equal room.
 */
export function planRamInSpace(steering: KnownSteering, limits: LimitsPlan | null, ledger: Ledger): void {
  const { ram, linkage } = steering
  if (!ram) return
  const straight = anglesAt('linkage.straight', linkage, chosen('length', metres(0), 'straight ahead'), ledger)
  const there = straight && lengthAt('straight', straight, steering, ram, ledger)
  if (!there) return
  if (ram.ended === 'single') {
    ledger.compute('ram-space.straight.angle', ramAngleToRod, { x_p: there.x, x_b: ram.base.x, L: there.length })
  }
  fitsStraight(there.length, ram, ledger)
  if (!limits) return
  const lengths = (['left', 'right'] as const).flatMap((side) => {
    const state = knownState(`linkage.${side}-lock`, ledger)
    return (state && lengthAt(`${side}-lock`, state, steering, ram, ledger)?.length) ?? []
  })
  spare([there.length, ...lengths], ram, ledger)
  clamp(steering, limits, ledger)
  clearance(steering, limits, ram, ledger)
}

function knownState(id: string, ledger: Ledger): KnownState | undefined {
  const [x_m, theta] = [ledger.known(`${id}.via-middle`, 'length'), ledger.known(`${id}.via-tilt`, 'angle')]
  const [left, right] = [ledger.known(`${id}.left`, 'angle'), ledger.known(`${id}.right`, 'angle')]
  return x_m && theta && left && right && { x_m, theta, left, right }
}

function lengthAt(
  at: string,
  { x_m, theta }: KnownState,
  { linkage: { w, r_L, r_R, c, k } }: KnownSteering,
  ram: KnownRam,
  ledger: Ledger,
): { readonly length: Known<'length'>; readonly x: Known<'length'> } | undefined {
  const id = (name: string) => `ram-space.${at}.${name}`
  const place = { c, theta, k, s: ram.s, e: ram.e }
  const y_m = ledger.compute(id('via-back'), linkageRodBack, { w, r_L, r_R, c, x_m, theta, k })
  const x = ledger.compute(id('via-across'), linkagePointAcross, { x_m, ...place })
  const y = y_m && ledger.compute(id('via-ahead'), linkagePointAhead, { y_m, ...place })
  if (!x || !y) return undefined
  const { x: x_b, y: y_b, z: z_b } = ram.base
  const length =
    ram.ended === 'double'
      ? ledger.compute(id('rod-place'), ramRodPlace, { x_p: x, x_b })
      : ledger.compute(id('length'), ramLengthInSpace, { x_p: x, y_p: y, z_p: ram.z, x_b, y_b, z_b })
  return length && { length, x }
}

/** Straight ahead the ram must be neither shorter than closed nor longer than fully out. */
function fitsStraight(length: Known<'length'>, { closed, stroke, ended, i }: KnownRam, ledger: Ledger): void {
  if (!stroke || (ended === 'single' && !closed)) return
  const shortest = ended === 'double' ? -stroke.si / 2 : (closed?.si ?? 0)
  if (length.si > shortest && length.si < shortest + stroke.si) return
  ledger.add({
    code: 'ram.does_not_fit',
    severity: 'stops',
    about: ['parts', i],
    facts: { too: length.si <= shortest ? 'long' : 'short' },
    evidence: [
      { name: 'between its pins, wheels straight', dimension: 'length', si: length.si },
      { name: 'fully closed', dimension: 'length', si: shortest },
      { name: 'fully out', dimension: 'length', si: shortest + stroke.si },
    ],
    numbers: [ended === 'double' ? 'ram-space.straight.rod-place' : 'ram-space.straight.length'],
  })
}

function spare(lengths: readonly Known<'length'>[], { closed, stroke, ended }: KnownRam, ledger: Ledger): void {
  if (!stroke || !closed || ended === 'double' || lengths.length < 3) return
  const sorted = [...lengths].sort((a, b) => a.si - b.si)
  const [shortest, longest] = [sorted[0], sorted.at(-1)]
  if (shortest) ledger.compute('ram-space.spare-closed', ramSpareClosed, { L: shortest, L_c: closed })
  if (longest) ledger.compute('ram-space.spare-open', ramSpareOpen, { L: longest, L_c: closed, s: stroke })
}

function clamp({ geometry }: KnownSteering, limits: LimitsPlan, ledger: Ledger): void {
  const best = bestClamp(geometry, statesBetween(geometry, stopTravel(limits.left), stopTravel(limits.right)))
  if (!best || Math.abs(best.shift) < OFF_BEST || best.margin < 0) return
  const spareNow = (['spare-closed', 'spare-open'] as const).flatMap((name) => ledger.known(`ram-space.${name}`, 'length') ?? [])
  ledger.add({
    code: 'ram.clamp_off_best',
    severity: 'noted',
    about: ['geometry', 'ram', 'rodAlong'],
    facts: { way: best.shift > 0 ? 'right' : 'left' },
    evidence: [
      { name: 'to move', dimension: 'length', si: Math.abs(best.shift) },
      { name: 'room a side then', dimension: 'length', si: best.margin },
      { name: 'least room now', dimension: 'length', si: Math.min(...spareNow.map((s) => s.si), best.margin) },
    ],
    numbers: spareNow.flatMap((s) => (s.origin.kind === 'number' ? [s.origin.id] : [])),
  })
}

function clearance({ geometry: g }: KnownSteering, limits: LimitsPlan, { i, stroke, closed, s }: KnownRam, ledger: Ledger): void {
  const states = statesBetween(g, stopTravel(limits.left), stopTravel(limits.right))
  const gaps = states.flatMap((state) => clearanceAt(g, state) ?? [])
  if (gaps.length === 0) {
    ledger.measure('ram body', ['geometry', 'ram', 'bodyLength'], {})
    return
  }
  const least = Math.min(...gaps)
  const inputs = { s, ...(stroke && { stroke }), ...(closed && { closed }) }
  ledger.searched('ram-space.least-clearance', 'length', si(least, 'length'), inputs)
  if (least >= NEAR) return
  ledger.add({
    code: least < 0 ? 'ram.touches_rod' : 'ram.near_rod',
    severity: least < 0 ? 'stops' : 'look',
    about: ['parts', i],
    evidence: [{ name: 'least clearance to the tie rod', dimension: 'length', si: least }],
    numbers: ['ram-space.least-clearance'],
  })
}
