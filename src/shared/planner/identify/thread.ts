import { allPortSizes } from '../../model/end/ports.ts'
import { allThreads } from '../../model/end/threads.ts'
import type { PortFamily, Sex, Thread } from '../../model/end/types.ts'
import { crestOf, outside } from './crests.ts'
import { ranked } from './rank.ts'
import type { SealSeen, ThreadCandidate, ThreadReadings } from './types.ts'

/** What a family is seen to seal with, by sex: a nut on a flat-faced stud shows nothing of its own. */
export const SEAL_OF: Readonly<Record<PortFamily, SealSeen>> = {
  'flare 37': 'cone 37',
  'flare 45': 'cone 45',
  'cone 24 light': 'cone 24',
  'cone 24 heavy': 'cone 24',
  'bsp cone 60': 'cone 60',
  'o-ring boss': 'o-ring in chamfer',
  'iso 6149': 'o-ring in chamfer',
  'face seal': 'o-ring in face',
  'iso 9974': 'flat face',
  'iso 1179': 'flat face',
  banjo: 'flat face',
  'inverted flare': 'inverted seat',
  'tube o-ring': 'o-ring on nose',
}

/**
 * A real part may be worn, nicked or corroded on its crests, plated or painted over: up to these shares of the diameter a
 * reading is called nearly right. Chosen, no published source: 7/8-14 taken for a worn G 5/8 lies just inside it.
 */
const WORN = 0.025
const COATED = 0.01
/** A pitch this many uncertainties off is nearly right, no more. */
const NEARLY_PITCH = 1.5
const MOST = 12

/** Threads that explain the readings, the best first, each with the hydraulic ends that have it and look as seen. */
export function threadCandidates(r: ThreadReadings): readonly ThreadCandidate[] {
  const found = allThreads()
    .filter((t) => may(t, r))
    .flatMap((t): Omit<ThreadCandidate, 'rank'>[] => {
      const judged = judge(t, r)
      return judged === undefined ? [] : [judged]
    })
  return ranked(found).slice(0, MOST)
}

function may(t: Thread, r: ThreadReadings): boolean {
  if (r.tapered !== undefined && t.tapered !== r.tapered) return false
  if (r.flank !== undefined && t.flankAngle !== r.flank) return false
  // pipe threads are cut right-hand only, as far as anybody here knows
  if (r.hand === 'left' && t.family !== 'unified' && t.family !== 'metric') return false
  if (t.family === 'r') return r.sex === 'male'
  if (t.family === 'rc' || t.family === 'rp') return r.sex === 'female'
  return true
}

function judge(t: Thread, r: ThreadReadings): Omit<ThreadCandidate, 'rank'> | undefined {
  const crest = crestOf(t, r.sex)
  const { value, u } = r.diameter
  const off = outside(value, crest)
  // wear takes off a male's crests and opens a female's
  const worn = r.sex === 'male' ? off < 0 : off > 0
  const room = u + t.major * (worn ? WORN : COATED)
  if (Math.abs(off) > room) return undefined
  const pitchOff = r.pitch === undefined ? 0 : Math.abs(t.pitch - r.pitch.value) / r.pitch.u
  if (pitchOff > NEARLY_PITCH) return undefined
  const uses = r.hand === 'left' ? [] : portsOn(t, r.sex)
  const ports = r.seal === undefined ? uses : r.seal === 'none' ? [] : uses.filter((p) => SEAL_OF[p.family] === r.seal)
  const sealUnexplained = r.seal !== undefined && r.seal !== 'none' && ports.length === 0
  const diameterOff = Math.abs(off) / u
  const consistent = diameterOff <= 1 + 1e-9 && pitchOff <= 1 + 1e-9 && !sealUnexplained
  return {
    what: 'thread',
    thread: t,
    sex: r.sex,
    hand: r.hand ?? 'right',
    crest,
    ports,
    sealUnexplained,
    match: consistent ? 'consistent' : 'nearly',
    off: Math.hypot(diameterOff, pitchOff),
  }
}

function portsOn(t: Thread, sex: Sex) {
  // a tube nut over an O-ring and an inverted flare are nuts outside and ports inside; every family has both sexes here
  return allPortSizes()
    .filter((p) => p.thread.designation === t.designation && !(p.family === 'banjo' && sex === 'female'))
    .map(({ family, size }) => ({ family, size }))
}
