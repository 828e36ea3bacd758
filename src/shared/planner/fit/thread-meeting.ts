import { threadMinorInternal60, threadPitchDiameter55, threadPitchDiameter60 } from '../../formulas/threads/diameters.ts'
import { threadPitchMismatch } from '../../formulas/threads/mismatch.ts'
import type { Thread } from '../../model/end/types.ts'
import type { Length } from '../../quantities/dimension.ts'
import { inches, mm } from '../../quantities/make.ts'
import { NPT_THREADS } from '../../standards/threads/pipe.ts'
import type { Evidence } from '../plan.ts'
import { proof } from './make.ts'

/**
 * What happens when a male thread meets a female one that is not its own:
 * `too big` the male does not start; `too small` it drops through without touching; `binds` it starts and jams after
 * `turns`; `slides` it goes all the way in on part of its flanks and holds on them alone.
 */
export type Meeting = {
  readonly how: 'same' | 'too big' | 'too small' | 'binds' | 'slides'
  readonly turns: number | null
  readonly evidence: readonly Evidence[]
}

/** Play that tolerances of both threads add between nominal sizes; a male this much over still starts. Chosen: about a class 2 / 6g-6H allowance. */
const TOLERANCE_PLAY = mm(0.03)
/** A wrong thread that turns in by hand this far feels right and invites the wrench. Chosen; no published source. */
export const DECEIVING_TURNS = 3
const TEN_MM = mm(10)

/** Diameter change per length of every taper pipe thread: 1 in 16 (ASME B1.20.1, ISO 7-1). */
const PIPE_TAPER = 1 / 16
/** Height of a pipe thread, ASME B1.20.1: h = 0.8 P; major and minor lie one height either side of twice the pitch radius. */
const NPT_HEIGHT = 0.8
const TAN_HALF_FLANK = { 60: Math.tan(Math.PI / 6), 55: Math.tan((27.5 * Math.PI) / 180) } as const

const npt = new Map<string, { readonly tip: Length; readonly mouth: Length }>(
  NPT_THREADS.rows.map((row) => [`${row.size}-${row.tpi}`, { tip: inches(row.e0_in), mouth: inches(row.e1_in) }]),
)
/** Pitch diameters of an American pipe thread, NPT and its dryseal form alike; undefined for any other thread. */
const nptDiameters = (t: Thread) => (t.family === 'npt' || t.family === 'nptf' ? npt.get(t.designation.replace(/ NPTF?$/, '')) : undefined)

interface Diameters {
  readonly major: number
  /** pitch diameter where the two first meet: a male's tip, a female's mouth */
  readonly pitch: number
  readonly minor: number
}

/** Diameters of a male thread where it starts, m: at the tip, for a taper thread its small end. */
function maleDiameters(t: Thread): Diameters {
  const size = nptDiameters(t)
  if (size) {
    return { major: size.tip + NPT_HEIGHT * t.pitch, pitch: size.tip, minor: size.tip - NPT_HEIGHT * t.pitch }
  }
  return straightDiameters(t)
}

/** Diameters of a female thread at its mouth, m: of a taper thread the hand-tight plane. */
function femaleDiameters(t: Thread): Diameters {
  const size = nptDiameters(t)
  if (size) {
    return { major: size.mouth + NPT_HEIGHT * t.pitch, pitch: size.mouth, minor: size.mouth - NPT_HEIGHT * t.pitch }
  }
  return straightDiameters(t)
}

function straightDiameters(t: Thread): Diameters {
  const of = { d: t.major, P: t.pitch }
  if (t.flankAngle === 60) {
    return { major: t.major, pitch: threadPitchDiameter60.compute(of), minor: threadMinorInternal60.compute(of) }
  }
  const pitch = threadPitchDiameter55.compute(of)
  return { major: t.major, pitch, minor: 2 * pitch - t.major }
}

/** How the male of one thread meets the female of another. */
export function meet(male: Thread, female: Thread): Meeting {
  if (male.designation === female.designation) return { how: 'same', turns: null, evidence: [] }
  const [m, f] = [maleDiameters(male), femaleDiameters(female)]
  const drift = Math.abs(male.pitch - female.pitch)
  const evidence: Evidence[] = [
    proof('major diameter, male', 'length', male.major),
    proof('major diameter, female', 'length', female.major),
    proof('pitch, male', 'length', male.pitch),
    proof('pitch, female', 'length', female.pitch),
    proof('pitch drift over 10 mm', 'length', threadPitchMismatch.compute({ L: TEN_MM, P_a: male.pitch, P_b: female.pitch })),
  ]
  if (m.major <= f.minor) return { how: 'too small', turns: null, evidence }
  const play = f.pitch - m.pitch
  if (play < -TOLERANCE_PLAY) return { how: 'too big', turns: null, evidence }
  const turns = turnsUntilItJams(Math.max(play, 0), drift, male, female)
  if (turns === null) return { how: 'slides', turns, evidence }
  return {
    how: turns >= DECEIVING_TURNS ? 'slides' : 'binds',
    turns,
    evidence: [...evidence, proof('turns until it binds', 'ratio', turns)],
  }
}

/** The fewer of the turns that the drifting pitches allow and those that a taper on one side allows; null: it never jams. */
function turnsUntilItJams(play: number, drift: number, male: Thread, female: Thread): number | null {
  const flank = TAN_HALF_FLANK[Math.max(male.flankAngle, female.flankAngle) as 60 | 55]
  const byDrift = drift < 1e-9 ? Number.POSITIVE_INFINITY : (play * flank) / drift
  const byTaper = male.tapered === female.tapered ? Number.POSITIVE_INFINITY : play / PIPE_TAPER / male.pitch
  const turns = Math.min(byDrift, byTaper)
  return Number.isFinite(turns) ? turns : null
}
