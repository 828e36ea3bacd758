import { boxVolume, pumpFlow, pumpFlowLimited, speedHandWheel, speedTime } from '../../formulas/forces/supply.ts'
import { hydraulicPower, ramAnnulusArea, ramCapArea, ramVolume } from '../../formulas/hydraulics/ram.ts'
import { chainAt } from '../../formulas/linkage/chain.ts'
import { boxHandWheelTurns } from '../../formulas/linkage/mounts.ts'
import { ramLength } from '../../formulas/linkage/ram-space.ts'
import type { Build } from '../../model/build.ts'
import { si } from '../../quantities/dimension.ts'
import type { Motion } from '../demand/motion.ts'
import type { SpeedLine, Turn } from '../forces-types.ts'
import { entered, type Known, type Ledger } from '../ledger.ts'
import { missingOf } from '../linkage/gather.ts'
import type { KnownSteering } from '../linkage/gather-rest.ts'
import { workingSide } from './supply.ts'

/** Slower than this the hand wheel goes heavy in ordinary manoeuvres. Common practice, no published source. */
const SLOW_TURNS = 1

export interface PumpFlows {
  readonly idle: Known<'flow'> | undefined
  readonly cruise: Known<'flow'> | undefined
}

/** Flow at idle and cruise: as measured or rated, otherwise from displacement and speed. */
export function pumpFlows(build: Build, ledger: Ledger): PumpFlows {
  const i = build.parts.findIndex((p) => p.kind === 'pump')
  const part = build.parts[i]
  const pump = part?.kind === 'pump' ? part : undefined
  const given = build.forces?.pump
  const at = (key: 'displacement' | 'pulleyRatio' | 'efficiency' | 'idleSpeed' | 'cruiseSpeed' | 'flowControl') =>
    ['forces', 'pump', key] as const
  const V = entered('volume', given?.displacement, at('displacement'))
  const ratio = entered('ratio', given?.pulleyRatio, at('pulleyRatio'))
  const eta = entered('ratio', given?.efficiency, at('efficiency'))
  const Q_c = entered('flow', given?.flowControl, at('flowControl'))
  const computed = (which: 'idle' | 'cruise'): Known<'flow'> | undefined => {
    const n = entered('angularSpeed', given?.[`${which}Speed`], at(`${which}Speed`))
    if (!V || !ratio || !eta || !n) return undefined
    const inputs = { V, i: ratio, n, eta }
    const id = `speed.${which}-flow`
    return Q_c ? ledger.compute(id, pumpFlowLimited, { ...inputs, Q_c }) : ledger.compute(id, pumpFlow, inputs)
  }
  const idle = entered('flow', pump?.idleFlow, ['parts', i, 'idleFlow']) ?? computed('idle')
  const cruise = entered('flow', pump?.cruiseFlow, ['parts', i, 'cruiseFlow']) ?? computed('cruise')
  if (pump) {
    const missing = missingOf({ 'at idle': idle, 'at cruise': cruise })
    if (missing.length > 0) ledger.measure('pump flow', ['parts', i], { part: pump.name, missing })
  }
  return { idle, cruise }
}

/** Lock-to-lock time and hand-wheel speed at idle and cruise, and the heat while a stop is held. */
export function planSpeed(
  build: Build,
  steering: KnownSteering | null,
  motions: readonly Motion[] | null,
  flows: PumpFlows,
  relief: Known<'pressure'> | undefined,
  ledger: Ledger,
): readonly SpeedLine[] {
  const volume = { left: volumeOf(build, steering, motions, 'left', ledger), right: volumeOf(build, steering, motions, 'right', ledger) }
  const turns = handTurns(steering, motions, ledger)
  return (['idle', 'cruise'] as const).flatMap((at): SpeedLine[] => {
    const Q = flows[at]
    if (!Q || Q.si <= 0) return []
    const time = (turn: Turn) => {
      const V = volume[turn]
      return V && ledger.compute(`speed.${at}-time-${turn}`, speedTime, { V, Q })
    }
    const [left, right] = [time('left'), time('right')]
    const slower = left && right ? (left.si >= right.si ? left : right) : undefined
    const hand =
      slower && slower.si > 0 && turns ? ledger.compute(`speed.${at}-hand-wheel`, speedHandWheel, { N: turns, t: slower }) : undefined
    const heat = relief && ledger.compute(`speed.${at}-heat`, hydraulicPower, { Q, p: relief })
    if (at === 'idle' && hand) tellSlow(hand, slower, ledger)
    if (at === 'cruise' && heat) {
      ledger.add({
        code: 'speed.heat',
        severity: 'noted',
        about: ['parts'],
        evidence: [{ name: 'heat while a stop is held', dimension: 'power', si: heat.si }],
        numbers: ['speed.cruise-heat'],
      })
    }
    return [
      {
        at,
        flow: Q.si,
        timeLeft: left?.si ?? null,
        timeRight: right?.si ?? null,
        handWheel: hand?.si ?? null,
        heat: heat?.si ?? null,
      },
    ]
  })
}

function tellSlow(hand: Known<'angularSpeed'>, time: Known<'time'> | undefined, ledger: Ledger): void {
  const slow = hand.si < SLOW_TURNS * 2 * Math.PI
  ledger.add({
    code: slow ? 'speed.slow_at_idle' : 'speed.at_idle',
    severity: slow ? 'look' : 'noted',
    about: ['parts'],
    evidence: [
      { name: 'hand wheel before it goes heavy', dimension: 'angularSpeed', si: hand.si },
      ...(time ? [{ name: 'stop to stop', dimension: 'time' as const, si: time.si }] : []),
    ],
    numbers: ['speed.idle-hand-wheel'],
  })
}

/** Oil that ram and box take from stop to stop in one turn. Without the ram's places its stroke counts for its way. */
function volumeOf(
  build: Build,
  steering: KnownSteering | null,
  all: readonly Motion[] | null,
  turn: Turn,
  ledger: Ledger,
): Known<'volume'> | undefined {
  const i = build.parts.findIndex((p) => p.kind === 'ram')
  const ram = build.parts[i]
  const terms: Record<string, Known<'volume'>> = {}
  if (ram?.kind === 'ram') {
    const D = entered('length', ram.bore, ['parts', i, 'bore'])
    const d = entered('length', ram.rod, ['parts', i, 'rod'])
    const mount = steering?.geometry.ram
    const ends = [all?.[0], all?.at(-1)]
    const [from, to] = mount && ends[0] && ends[1] ? [ramLength(mount, ends[0].state), ramLength(mount, ends[1].state)] : [null, null]
    const way =
      from === null ? (ledger.known('survey.stroke', 'length') ?? ledger.known('survey.total', 'length')) : travelled(from, to, ledger)
    const side = ram.ended === 'double' ? 'pull' : (workingSide(turn, from === null ? null : to - from) ?? 'push')
    const A =
      D &&
      (side === 'push'
        ? ledger.compute(`speed.via-area-${turn}`, ramCapArea, { D })
        : d && ledger.compute(`speed.via-area-${turn}`, ramAnnulusArea, { D, d }))
    const V = A && way && ledger.compute(`speed.via-ram-${turn}`, ramVolume, { A, s: way })
    if (!V) return undefined
    terms.ram = V
  }
  const A_b = ledger.known('supply.via-box-piston', 'area')
  const r_s = entered('length', build.forces?.box?.sectorRadius, ['forces', 'box', 'sectorRadius'])
  const phi = pitmanTurn(steering, all, ledger)
  const box = A_b && r_s && phi && ledger.compute(`speed.via-box-${turn}`, boxVolume, { A_b, r_s, phi })
  if (box) terms.box = box
  return Object.keys(terms).length > 0 ? ledger.sum(`speed.via-volume-${turn}`, 'volume', terms) : undefined
}

function travelled(from: number, to: number, ledger: Ledger): Known<'length'> {
  const id = 'speed.via-ram-way'
  return ledger.known(id, 'length') ?? ledger.searched(id, 'length', si(Math.abs(to - from), 'length'), {})
}

/** From stop to stop; undefined without the places of pitman arm and drag link. */
function pitmanTurn(steering: KnownSteering | null, all: readonly Motion[] | null, ledger: Ledger): Known<'angle'> | undefined {
  const id = 'speed.via-pitman'
  const known = ledger.known(id, 'angle')
  const g = steering?.geometry
  const [first, last] = [all?.[0], all?.at(-1)]
  if (known || !g?.chain || !first || !last) return known
  const [a, b] = [chainAt(g.linkage, g.chain, first.state), chainAt(g.linkage, g.chain, last.state)]
  return a && b && ledger.searched(id, 'angle', si(Math.abs(b.pitman - a.pitman), 'angle'), {})
}

/** Between the stops where pitman arm and drag link are known; otherwise all that the box has. */
function handTurns(steering: KnownSteering | null, all: readonly Motion[] | null, ledger: Ledger): Known<'ratio'> | undefined {
  if (!steering?.turns) return undefined
  const phi = pitmanTurn(steering, all, ledger)
  return phi && steering.sweep
    ? ledger.compute('speed.via-hand-turns', boxHandWheelTurns, { n: steering.turns, phi, S: steering.sweep })
    : steering.turns
}
