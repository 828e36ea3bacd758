import { flowMinorDrop, hoseBurst, hoseLengthNeeded, ramReturnFlow, reservoirSwing } from '../../formulas/forces/flow.ts'
import { marginStress } from '../../formulas/forces/supply.ts'
import { flowDarcyDrop, flowReynolds, flowVelocity } from '../../formulas/hydraulics/flow.ts'
import { frictionChurchill, frictionLaminar } from '../../formulas/hydraulics/friction.ts'
import { ramRodVolume } from '../../formulas/hydraulics/ram.ts'
import type { Build } from '../../model/build.ts'
import type { PartOf } from '../../model/part.ts'
import { mm, ratio } from '../../quantities/make.ts'
import { HOSE_BEND_RADII } from '../../standards/hoses/bend-radius.ts'
import { LINE_VELOCITIES } from '../../standards/lines/velocity.ts'
import type { FlowLine, FlowLoss } from '../forces-types.ts'
import { chosen, entered, type Known, type Ledger } from '../ledger.ts'
import type { PumpFlows } from '../supply/speed.ts'
import { type Oil, planOil } from './oil.ts'

const FOOT = 0.3048
/** Where laminar flow ends, and where turbulent flow is sure. */
const [LAMINAR, TURBULENT] = [2300, 4000]
/** One hose end with its bend, in velocity heads. Common practice, no published source. */
const HOSE_END = ratio(1.5)
/** Drawn hose is smooth. */
const SMOOTH = ratio(0)
/** A hose gets shorter by up to this under pressure, SAE J517. From memory. */
const SHORTER = ratio(0.04)
/** A reservoir whose level moves by more than this part needs room for it. Common practice, no published source. */
const SWING = 0.15

/** Velocities and losses of every hose, cold and hot; ratings, bends and lengths; how far the reservoir's level swings. */
export function planFlow(build: Build, flows: PumpFlows, relief: Known<'pressure'> | undefined, ledger: Ledger): readonly FlowLine[] {
  const hoses = build.parts.flatMap((part, i) => (part.kind === 'hose' ? [{ hose: part, i }] : []))
  swing(build, ledger)
  for (const { hose, i } of hoses) {
    rating(hose, i, relief, ledger)
    bendAndLength(build, hose, i, ledger)
  }
  const Q = flows.cruise ?? flows.idle
  if (hoses.length === 0 || !Q) return []
  const oil = planOil(build, ledger)
  const back = returnFlow(Q, ledger)
  return hoses.flatMap(({ hose, i }) => {
    const found = line(build, hose, i, hose.line === 'return' ? back : Q, oil, ledger)
    return found ? [found] : []
  })
}

/** A single-ended ram that is pulled in pushes out more than the pump delivers. */
function returnFlow(Q: Known<'flow'>, ledger: Ledger): Known<'flow'> {
  const [A, a] = [ledger.known('supply.via-cap', 'area'), ledger.known('supply.via-annulus', 'area')]
  return (A && a && ledger.compute('flow.return', ramReturnFlow, { Q, A, a })) ?? Q
}

function line(build: Build, hose: PartOf<'hose'>, i: number, Q: Known<'flow'>, oil: Oil | undefined, ledger: Ledger): FlowLine | undefined {
  const d = entered('length', hose.bore, ['parts', i, 'bore'])
  const L = entered('length', hose.length, ['parts', i, 'length'])
  if (hose.line === undefined) ledger.measure('hose line', ['parts', i, 'line'], { part: hose.name })
  if (!d || !hose.line) return undefined
  const id = `flow.${hose.id}`
  const v = ledger.compute(`${id}.velocity`, flowVelocity, { Q, d })
  if (!v) return undefined
  const most = mostVelocity(hose.line)
  if (v.si > most) {
    ledger.add({
      code: 'flow.fast',
      severity: 'look',
      about: ['parts', i, 'bore'],
      facts: { part: hose.name, line: hose.line },
      evidence: [
        { name: 'velocity', dimension: 'speed', si: v.si },
        { name: 'guide for that line', dimension: 'speed', si: most },
      ],
      numbers: [`${id}.velocity`],
    })
  }
  const K = entered('ratio', build.forces?.losses?.hoseEnd, ['forces', 'losses', 'hoseEnd']) ?? chosen('ratio', HOSE_END, 'hose end')
  const loss = (at: 'cold' | 'hot'): FlowLoss | null => {
    const nu = oil?.[at]
    return (oil && nu && L && lossOf(`${id}.${at}`, { v, d, L, K, nu, rho: oil.rho }, ledger)) ?? null
  }
  return {
    hose: hose.id,
    name: hose.name,
    line: hose.line,
    flow: Q.si,
    velocity: v.si,
    velocityMost: most,
    cold: loss('cold'),
    hot: loss('hot'),
  }
}

interface LossInputs {
  readonly v: Known<'speed'>
  readonly d: Known<'length'>
  readonly L: Known<'length'>
  readonly K: Known<'ratio'>
  readonly nu: Known<'kinematicViscosity'>
  readonly rho: Known<'density'>
}

function lossOf(id: string, { v, d, L, K, nu, rho }: LossInputs, ledger: Ledger): FlowLoss | undefined {
  const Re = ledger.compute(`${id}.via-reynolds`, flowReynolds, { v, d, nu })
  if (!Re || Re.si <= 0) return undefined
  const f =
    Re.si <= LAMINAR
      ? ledger.compute(`${id}.via-friction`, frictionLaminar, { Re })
      : ledger.compute(`${id}.via-friction`, frictionChurchill, { Re, eps: chosen('ratio', SMOOTH, 'smooth hose') })
  const hose = f && ledger.compute(`${id}.via-hose`, flowDarcyDrop, { f, L, d, rho, v })
  const ends = ledger.compute(`${id}.via-ends`, flowMinorDrop, { m: chosen('ratio', ratio(2), 'two ends'), K, rho, v })
  if (!hose || !ends) return undefined
  const drop = ledger.sum(`${id}.drop`, 'pressure', { hose, ends })
  return { reynolds: Re.si, regime: Re.si <= LAMINAR ? 'laminar' : Re.si < TURBULENT ? 'between' : 'turbulent', drop: drop.si }
}

/** The sizing limits after SAE practice; a ram's hoses are pressure lines. */
function mostVelocity(kind: NonNullable<PartOf<'hose'>['line']>): number {
  const wanted = kind === 'ram' ? 'pressure' : kind
  const row = LINE_VELOCITIES.rows.find((r) => r.line === wanted && r.basis === 'sizing limit')
  return row ? row.max * (row.unit === 'ft/s' ? FOOT : 1) : Number.POSITIVE_INFINITY
}

/** What the hose bursts at, and how many times over the relief pressure it may work. */
function rating(hose: PartOf<'hose'>, i: number, relief: Known<'pressure'> | undefined, ledger: Ledger): void {
  const p_w = entered('pressure', hose.workingPressure, ['parts', i, 'workingPressure'])
  if (!p_w || !relief || hose.line === 'return' || hose.line === 'suction') return
  ledger.compute(`flow.${hose.id}.burst`, hoseBurst, { p_w })
  ledger.compute(`margin.hose-${hose.id}`, marginStress, { R: p_w, F: relief })
}

function bendAndLength(build: Build, hose: PartOf<'hose'>, i: number, ledger: Ledger): void {
  const n = build.forces?.hoses?.findIndex((h) => h.hose === hose.id) ?? -1
  const given = build.forces?.hoses?.[n]
  if (!given) return
  const path = ['forces', 'hoses', n] as const
  const row = hose.bore && HOSE_BEND_RADII.rows.find((r) => Math.abs(dashBore(r.dash) - (hose.bore?.si ?? 0)) < 0.15 * dashBore(r.dash))
  if (given.bend && row && given.bend.si < mm(row.radius_mm)) {
    ledger.add({
      code: 'flow.tight_bend',
      severity: 'look',
      about: [...path, 'bend'],
      facts: { part: hose.name },
      evidence: [
        { name: 'bend', dimension: 'length', si: given.bend.si },
        { name: 'least bend of wire-braid hose', dimension: 'length', si: mm(row.radius_mm) },
      ],
    })
  }
  const s = entered('length', given.longestWay, [...path, 'longestWay'])
  const needed = s && ledger.compute(`flow.${hose.id}.length-needed`, hoseLengthNeeded, { s, x: chosen('ratio', SHORTER, 'hose shortens') })
  if (!needed || !hose.length || hose.length.si >= needed.si) return
  ledger.add({
    code: 'flow.short_hose',
    severity: 'stops',
    about: ['parts', i, 'length'],
    facts: { part: hose.name },
    evidence: [
      { name: 'length of the hose', dimension: 'length', si: hose.length.si },
      { name: 'length needed', dimension: 'length', si: needed.si },
    ],
    numbers: [`flow.${hose.id}.length-needed`],
  })
}

const dashBore = (dash: string): number => (Number(dash.slice(1)) / 16) * 0.0254

/** A single-ended ram's rod pushes oil out of the system and takes it back in. */
function swing(build: Build, ledger: Ledger): void {
  const i = build.parts.findIndex((p) => p.kind === 'ram')
  const ram = build.parts[i]
  if (ram?.kind !== 'ram' || ram.ended !== 'single') return
  const d = entered('length', ram.rod, ['parts', i, 'rod'])
  const s = entered('length', ram.stroke, ['parts', i, 'stroke'])
  const V_d = d && s && ledger.compute('flow.rod-volume', ramRodVolume, { d, s })
  const r = build.parts.findIndex((p) => p.kind === 'reservoir')
  const reservoir = build.parts[r]
  const V_r = reservoir?.kind === 'reservoir' ? entered('volume', reservoir.volume, ['parts', r, 'volume']) : undefined
  const x = V_d && V_r && ledger.compute('flow.swing', reservoirSwing, { V_d, V_r })
  if (!V_d || !x) return
  ledger.add({
    code: 'flow.swing',
    severity: x.si > SWING ? 'look' : 'noted',
    about: ['parts', r, 'volume'],
    facts: { much: x.si > SWING },
    evidence: [
      { name: 'oil that comes and goes', dimension: 'volume', si: V_d.si },
      { name: 'part of the reservoir', dimension: 'ratio', si: x.si },
    ],
    numbers: ['flow.rod-volume', 'flow.swing'],
  })
}
