import type { ThreadEnd } from '../../model/end/types.ts'
import { doesNotFit, fits, fitsIf, goesTogetherWrong, notKnown, proof, reason } from './make.ts'
import { FROM } from './sources.ts'
import { type Meeting, meet } from './thread-meeting.ts'
import type { Verdict } from './verdict.ts'

const RULE = 'threads'

/** Engagement wanted, in diameters, by the weaker of the two. Common practice, no published source. */
const ENGAGEMENT = { steel: 1, 'cast iron': 1.5, aluminium: 1.5 } as const

/** Screw thread on screw thread: sex, hand, pipe families, form, size, pitch, engagement. */
export function fitThreads(a: ThreadEnd, b: ThreadEnd): Verdict {
  if (a.sex === null || b.sex === null) return notKnown(RULE, ['sex of the thread'])
  if (a.sex === b.sex) return doesNotFit(RULE, [reason('thread.same_sex', FROM.threadForm, { sex: a.sex })])
  const [male, female] = a.sex === 'male' ? [a, b] : [b, a]
  if (male.hand !== female.hand) {
    return doesNotFit(RULE, [reason('thread.hand', FROM.handOfThread, { male: male.hand, female: female.hand })])
  }
  return (
    fitPipes(male, female) ?? (male.thread.designation === female.thread.designation ? fitSame(male, female) : fitLookAlike(male, female))
  )
}

/** The families that seal on their threads, among themselves. Undefined: neither is a pipe thread, or the forms have nothing in common. */
function fitPipes(male: ThreadEnd, female: ThreadEnd): Verdict | undefined {
  const [m, f] = [male.thread, female.thread]
  const american = (t: string) => t === 'npt' || t === 'nptf'
  const size = (d: string) => d.replace(/ NPTF?$/, '')
  if (american(m.family) && american(f.family)) {
    if (size(m.designation) !== size(f.designation)) return undefined
    if (m.family === 'nptf' && f.family === 'nptf') return fits(RULE, [reason('pipe.dryseal', FROM.pipeSealant)])
    return fitsIf(RULE, ['sealant'], [reason('pipe.taper_seals_with_sealant', FROM.pipeSealant)])
  }
  const british = (t: string) => t === 'g' || t === 'r' || t === 'rc' || t === 'rp'
  if (!british(m.family) || !british(f.family)) return undefined
  if (m.designation.split(' ')[1] !== f.designation.split(' ')[1]) return undefined
  const pair = `${m.family}-${f.family}`
  switch (pair) {
    case 'r-rc':
    case 'r-rp':
      return fitsIf(RULE, ['sealant'], [reason('pipe.taper_seals_with_sealant', FROM.britishPipe)])
    case 'g-g':
      return fitsIf(RULE, ['bonded washer'], [reason('pipe.parallel_needs_washer', FROM.britishPipe)])
    case 'r-g':
    case 'g-rp':
      return goesTogetherWrong(RULE, [reason('pipe.does_not_seal', FROM.britishPipe, { male: m.designation, female: f.designation })])
    default:
      return doesNotFit(RULE, [reason('pipe.wrong_pair', FROM.britishPipe, { male: m.designation, female: f.designation })])
  }
}

function fitSame(male: ThreadEnd, female: ThreadEnd): Verdict {
  const material = weaker(male.material ?? 'steel', female.material ?? 'steel')
  const wanted = ENGAGEMENT[material] * male.thread.major
  const engaged = Math.min(male.length ?? Number.POSITIVE_INFINITY, female.length ?? Number.POSITIVE_INFINITY)
  if (engaged < wanted * (1 - 1e-9)) {
    return goesTogetherWrong(RULE, [
      reason('thread.short_engagement', FROM.engagement, { material, diameters: ENGAGEMENT[material] }, [
        proof('engagement', 'length', engaged),
        proof('engagement wanted', 'length', wanted),
      ]),
    ])
  }
  const conditions = male.jamNut || female.jamNut ? ['jam nut'] : []
  const same = reason('thread.same', FROM.threadForm, { thread: male.thread.designation, hand: male.hand })
  return conditions.length > 0 ? fitsIf(RULE, conditions, [same]) : fits(RULE, [same])
}

type Material = keyof typeof ENGAGEMENT

/** The thread of which more must be engaged: that one strips. */
const weaker = (male: Material, female: Material): Material => (ENGAGEMENT[male] > ENGAGEMENT[female] ? male : female)

function fitLookAlike(male: ThreadEnd, female: ThreadEnd): Verdict {
  const meeting = meet(male.thread, female.thread)
  const found = threadReason(meeting, male.thread.designation, female.thread.designation)
  return meeting.how === 'slides' ? goesTogetherWrong(RULE, [found]) : doesNotFit(RULE, [found])
}

/** Why two different threads do not belong together, from how they meet. */
export function threadReason(meeting: Meeting, male: string, female: string) {
  const code = {
    same: 'thread.same',
    'too big': 'thread.does_not_start',
    'too small': 'thread.falls_through',
    binds: 'thread.binds',
    slides: 'thread.slides',
  }[meeting.how]
  return reason(code, FROM.lookAlike, { male, female, turns: meeting.turns }, meeting.evidence)
}
