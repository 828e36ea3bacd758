import { threadMinorInternal60, threadPitchDiameter55, threadPitchDiameter60 } from '../../formulas/threads/diameters.ts'
import { threadPitchMismatch } from '../../formulas/threads/mismatch.ts'
import type { Thread } from '../../model/end/types.ts'
import type { Length } from '../../quantities/dimension.ts'
import { inches, mm } from '../../quantities/make.ts'
import { G_R_THREADS, NPT_THREADS } from '../../standards/threads/pipe.ts'
import type { Evidence } from '../plan.ts'
import { proof } from './make.ts'

/**
 * What happens when a male thread meets a female one that is not its own:
 * `too big` the male does not start; `too small` it drops through, or wobbles on less thread than the tolerances may take away;
 * `binds` it starts and jams after
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
/**
 * Least share of the female's thread that the male must overlap to hold at all. About half of what the class 2 tolerances of the
 * male's crest and the female's bore may take away together (ASME B1.1); the pairs known as dangerous overlap a third and more.
 * Chosen; no published source.
 */
const LEAST_OVERLAP = 0.2
const TEN_MM = mm(10)

/** Diameter change per length of every taper pipe thread: 1 in 16 (ASME B1.20.1, ISO 7-1). */
const PIPE_TAPER = 1 / 16
/** Height of a pipe thread, ASME B1.20.1: h = 0.8 P; major and minor lie one height either side of twice the pitch radius. */
const NPT_HEIGHT = 0.8
const TAN_HALF_FLANK = { 60: Math.tan(Math.PI / 6), 55: Math.tan((27.5 * Math.PI) / 180) } as const

const npt = new Map<string, { readonly tip: Length; readonly mouth: Length }>(
  NPT_THREADS.rows.map((row) => [`${row.size}-${row.tpi}`, { tip: inches(row.e0_in), mouth: inches(row.e1_in) }]),
)
/** How much smaller the tip of an R thread is than its gauge plane, where the table gives its diameters (ISO 7-1). */
const belowGauge = new Map<string, number>(
  G_R_THREADS.rows.flatMap((row) =>
    row.gauge_length_mm === null ? [] : [[`R ${row.size}`, mm(row.gauge_length_mm) * PIPE_TAPER] as const],
  ),
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
  const straight = straightDiameters(t)
  const below = belowGauge.get(t.designation) ?? 0
  return { major: straight.major - below, pitch: straight.pitch - below, minor: straight.minor - below }
}

/** Diameters of a female thread at its mouth, m: of a taper thread the hand-tight or gauge plane. */
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
  if (m.major - f.minor < LEAST_OVERLAP * (f.major - f.minor)) return { how: 'too small', turns: null, evidence }
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

/**
 * Turns until the play is used up, null when it never is. Over n turns the pitches drift n |dP| apart, which takes n |dP| / tan of
 * diameter from the first and the last thread together. A taper takes n P / 16 more at the mouth: from every thread where both are
 * tapered, so all of it counts; where one is, the tip keeps its play, so half of it counts, until the mouth has none left.
 */
function turnsUntilItJams(play: number, drift: number, male: Thread, female: Thread): number | null {
  const flank = TAN_HALF_FLANK[Math.max(male.flankAngle, female.flankAngle) as 60 | 55]
  const byPitch = drift < 1e-9 ? 0 : drift / flank
  const tapers = Number(male.tapered) + Number(female.tapered)
  const perTurn = male.pitch * PIPE_TAPER
  if (byPitch === 0 && tapers === 0) return null
  const whenWedged = tapers === 0 ? Number.POSITIVE_INFINITY : play / perTurn
  return Math.min(play / (byPitch + (perTurn * tapers) / 2), whenWedged)
}
