import type { PortEnd, PortFamily, ThreadEnd } from '../../model/end/types.ts'
import type { Source } from '../../standards/source.ts'
import { doesNotFit, fits, fitsIf, goesTogetherWrong, notKnown, reason } from './make.ts'
import { FROM } from './sources.ts'
import { meet } from './thread-meeting.ts'
import { threadReason } from './threads.ts'
import type { Reason, Verdict } from './verdict.ts'

const RULE = 'ports'

/** What makes a joint of each family tight, and what must be brought along. */
const FAMILY: Readonly<Record<PortFamily, { readonly source: Source; readonly conditions: readonly string[] }>> = {
  'flare 37': { source: FROM.flare37, conditions: [] },
  'o-ring boss': { source: FROM.oRingBoss, conditions: [] },
  'flare 45': { source: FROM.flare45, conditions: [] },
  'inverted flare': { source: FROM.flare45, conditions: [] },
  'face seal': { source: FROM.faceSeal, conditions: [] },
  'iso 6149': { source: FROM.metricPort, conditions: [] },
  'iso 9974': { source: FROM.flatFace, conditions: ['bonded washer'] },
  'iso 1179': { source: FROM.flatFace, conditions: ['bonded washer'] },
  'cone 24 light': { source: FROM.cone24, conditions: [] },
  'cone 24 heavy': { source: FROM.cone24, conditions: [] },
  'bsp cone 60': { source: FROM.cone60, conditions: [] },
  banjo: { source: FROM.banjo, conditions: ['crush washers'] },
  'tube o-ring': { source: FROM.tubeORing, conditions: [] },
}

/** Families whose port has the flat face all round that a washer needs. */
const FLAT_FACED: readonly PortFamily[] = ['iso 9974', 'iso 1179', 'banjo']

/** Hydraulic end on hydraulic end: thread and way of sealing must both be the same; the same thread alone is never enough. */
export function fitPorts(a: PortEnd, b: PortEnd): Verdict {
  if (a.sex === null || b.sex === null) return notKnown(RULE, ['sex of the port'])
  if (a.sex === b.sex) return doesNotFit(RULE, [reason('port.same_sex', FAMILY[a.family].source, { sex: a.sex })])
  const [male, female] = a.sex === 'male' ? [a, b] : [b, a]
  const meeting = meet(male.thread, female.thread)
  const facts = { male: male.family, female: female.family, maleSize: male.size, femaleSize: female.size }
  if (meeting.how !== 'same') {
    const why: Reason[] = [threadReason(meeting, male.thread.designation, female.thread.designation)]
    if (male.family !== female.family) why.push(reason('port.other_seal', FROM.sealMethods, facts))
    return meeting.how === 'slides' ? goesTogetherWrong(RULE, why) : doesNotFit(RULE, why)
  }
  if (male.family === female.family && male.size === female.size) {
    const { source, conditions } = FAMILY[male.family]
    const why = [reason('port.same', source, facts)]
    return conditions.length > 0 ? fitsIf(RULE, conditions, why) : fits(RULE, why)
  }
  if (FLAT_FACED.includes(male.family) && FLAT_FACED.includes(female.family)) {
    const why =
      male.family === 'banjo'
        ? reason('port.banjo_on_flat_face', FROM.banjo, facts)
        : reason('port.washer_under_shoulder', FROM.flatFace, { family: female.family, thread: male.thread.designation })
    return fitsIf(RULE, FAMILY[male.family].conditions, [why])
  }
  return goesTogetherWrong(RULE, [reason('port.same_thread_other_seal', FROM.sealMethods, { ...facts, thread: male.thread.designation })])
}

/** A thread of which no seal is said, in or on a hydraulic end: it may screw in and seals, if at all, by a washer on a flat face. */
export function fitThreadWithPort(thread: ThreadEnd, port: PortEnd): Verdict {
  if (thread.sex === null) return notKnown(RULE, ['sex of the thread'])
  if (port.sex === null) return notKnown(RULE, ['sex of the port'])
  if (thread.sex === port.sex) return doesNotFit(RULE, [reason('port.same_sex', FAMILY[port.family].source, { sex: port.sex })])
  if (thread.hand === 'left')
    return doesNotFit(RULE, [reason('thread.hand', FROM.handOfThread, { [thread.sex]: 'left', [port.sex]: 'right' })])
  const [male, female] = thread.sex === 'male' ? [thread.thread, port.thread] : [port.thread, thread.thread]
  const meeting = meet(male, female)
  if (meeting.how !== 'same') {
    const why = [threadReason(meeting, male.designation, female.designation)]
    return meeting.how === 'slides' ? goesTogetherWrong(RULE, why) : doesNotFit(RULE, why)
  }
  return fitSameThread(thread, port)
}

/** Plain thread and hydraulic end share their thread: what is left of the question is the seal. */
function fitSameThread({ thread, sex }: ThreadEnd, port: PortEnd): Verdict {
  const facts = { family: port.family, thread: thread.designation }
  if (FLAT_FACED.includes(port.family)) {
    if (sex === 'male') return fitsIf(RULE, ['bonded washer'], [reason('port.washer_under_shoulder', FROM.flatFace, facts)])
    // G is a pipe thread: inside, it is a port, and its seal is the face. Any other thread may be a mere tapped hole.
    return thread.family === 'g'
      ? fitsIf(RULE, FAMILY[port.family].conditions, [reason('pipe.parallel_needs_washer', FROM.britishPipe)])
      : notKnown(RULE, ['whether the face round the hole is flat'])
  }
  // G ends are made with the cone and without; only the seat of the other end is known
  if (port.family === 'bsp cone 60') return notKnown(RULE, ['whether the G thread has a 60° cone, a seat for one, or neither'])
  return goesTogetherWrong(RULE, [reason('port.no_seal', FROM.sealMethods, facts)])
}
