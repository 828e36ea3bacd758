import type { RoundEnd, SplineEnd, TailEnd, ThreadEnd } from '../../model/end/types.ts'
import { mm } from '../../quantities/make.ts'
import { doesNotFit, fits, fitsIf, goesTogetherWrong, notKnown, proof, reason } from './make.ts'
import { FROM } from './sources.ts'
import type { Verdict } from './verdict.ts'

/** A split clamp closes this much and no more; see FROM.clamp. */
const CLAMP = { tighter: mm(0.1), looser: mm(0.4) }
/** Width of a clamp and wall of the tube under it, in tube diameters; see FROM.clampSize. */
const CLAMP_WIDTH = 0.75
const CLAMP_WALL = 0.1
/** Keeps a size that is just enough from failing by the last digit of its arithmetic. */
const SLACK = 1 - 1e-9
const ROUNDING = mm(1e-6)
/** See FROM.bolt. Above `rattles` nobody takes it for a fit. */
const BOLT = { play: mm(0.2), rattles: mm(1.5) }
/** A nominal diameter is a nominal diameter when it differs by less than this. */
const SAME = mm(0.05)

const isOutside = (e: RoundEnd) => e.form === 'tube' || e.form === 'pin'

/** Clamp on tube, bolt in bore. */
export function fitRounds(a: RoundEnd, b: RoundEnd): Verdict {
  if (isOutside(a) === isOutside(b)) return doesNotFit('cylinders', [reason('round.same_sex', FROM.kinds, { a: a.form, b: b.form })])
  const [inner, outer] = isOutside(a) ? [a, b] : [b, a]
  if (inner.diameter === null || outer.diameter === null) {
    return notKnown('cylinders', [
      ...(outer.diameter === null ? [`diameter of the ${outer.form}`] : []),
      ...(inner.diameter === null ? [`diameter of the ${inner.form}`] : []),
    ])
  }
  if (outer.form === 'clamp') return fitClamp(inner, outer, inner.diameter, outer.diameter)
  return tiltTrouble(inner, outer) ?? fitBolt(inner.diameter, outer.diameter)
}

/** A rod end that says how far it tilts is asked whether that is enough; where only one side says it, the other must be measured. */
function tiltTrouble(bolt: RoundEnd, bore: RoundEnd): Verdict | undefined {
  if (bolt.tilt === undefined && bore.tilt === undefined) return undefined
  if (bore.tilt === undefined) return notKnown('cylinders', ['how far the rod end can tilt'])
  if (bolt.tilt === undefined) return notKnown('cylinders', ['how far the joint tilts over the travel'])
  if (bolt.tilt <= bore.tilt) return undefined
  return goesTogetherWrong('cylinders', [
    reason('bolt.tilt', FROM.tilt, {}, [
      proof('tilt over the travel', 'angle', bolt.tilt),
      proof('tilt of the rod end', 'angle', bore.tilt),
    ]),
  ])
}

/** A bolt's thread stands for its shank in a bore. */
export function fitBoltThread(thread: ThreadEnd, bore: RoundEnd): Verdict {
  const { family } = thread.thread
  if (thread.sex === null && bore.form === 'bore') return notKnown('cylinders', ['sex of the thread'])
  if (thread.sex !== 'male' || bore.form !== 'bore' || (family !== 'unified' && family !== 'metric'))
    return doesNotFit('cylinders', [reason('kinds', FROM.kinds, { a: 'thread', b: bore.form })])
  if (bore.diameter === null) return notKnown('cylinders', ['diameter of the bore'])
  return fitBolt(thread.thread.major, bore.diameter)
}

function fitClamp(inner: RoundEnd, outer: RoundEnd, tube: number, clamp: number): Verdict {
  const numbers = [proof('outside diameter of the tube', 'length', tube), proof('bore of the clamp', 'length', clamp)]
  const play = clamp - tube
  if (play < -CLAMP.tighter - ROUNDING) return doesNotFit('cylinders', [reason('clamp.too_small', FROM.clamp, {}, numbers)])
  if (play > CLAMP.looser + ROUNDING) return doesNotFit('cylinders', [reason('clamp.too_big', FROM.clamp, {}, numbers)])
  const same = reason('clamp.same', FROM.clamp, {}, numbers)
  const [width, wall] = [outer.length, inner.wall]
  if (width !== undefined && width < CLAMP_WIDTH * tube * SLACK) {
    return doesNotFit('cylinders', [reason('clamp.narrow', FROM.clampSize, {}, [...numbers, proof('width of the clamp', 'length', width)])])
  }
  if (wall !== undefined && wall < CLAMP_WALL * tube * SLACK) {
    return doesNotFit('cylinders', [reason('clamp.thin_wall', FROM.clampSize, {}, [...numbers, proof('wall of the tube', 'length', wall)])])
  }
  return fits('cylinders', [same])
}

function fitBolt(pin: number, bore: number): Verdict {
  const numbers = [proof('diameter of the bolt', 'length', pin), proof('diameter of the bore', 'length', bore)]
  const play = bore - pin
  if (play < -SAME) return doesNotFit('cylinders', [reason('bolt.too_big', FROM.bolt, {}, numbers)])
  if (play > BOLT.rattles) return doesNotFit('cylinders', [reason('bolt.too_small', FROM.bolt, {}, numbers)])
  if (play > BOLT.play)
    return goesTogetherWrong('cylinders', [reason('bolt.play', FROM.bolt, {}, [...numbers, proof('play', 'length', play)])])
  return fitsIf('cylinders', ['lock nut'], [reason('bolt.same', FROM.bolt, {}, numbers)])
}

/** Shaft in hub. */
export function fitSplines(a: SplineEnd, b: SplineEnd): Verdict {
  if (a.sex === null || b.sex === null) return notKnown('splines', ['which is shaft and which is hub'])
  if (a.sex === b.sex) return doesNotFit('splines', [reason('spline.same_sex', FROM.spline, { sex: a.sex })])
  if (a.count === null || b.count === null) return notKnown('splines', ['number of splines'])
  const counts = { a: a.count, b: b.count }
  if (a.count !== b.count) return doesNotFit('splines', [reason('spline.count', FROM.spline, counts)])
  if (a.diameter === null || b.diameter === null) return notKnown('splines', ['outside diameter of the splines'])
  const numbers = [proof('diameter over the splines', 'length', a.diameter), proof('the other', 'length', b.diameter)]
  if (Math.abs(a.diameter - b.diameter) > 4 * SAME) return doesNotFit('splines', [reason('spline.diameter', FROM.spline, counts, numbers)])
  return fitsIf('splines', ['pinch bolt'], [reason('spline.same', FROM.spline, counts, numbers)])
}

/** Hose on barb. */
export function fitTails(a: TailEnd, b: TailEnd): Verdict {
  if (a.form === b.form) return doesNotFit('hose tails', [reason('tail.same_sex', FROM.hose, { form: a.form })])
  if (a.bore === null || b.bore === null) return notKnown('hose tails', ['bore of the hose and size of the barb'])
  const numbers = [proof('one', 'length', a.bore), proof('the other', 'length', b.bore)]
  if (Math.abs(a.bore - b.bore) > mm(0.3)) return doesNotFit('hose tails', [reason('tail.bore', FROM.hose, {}, numbers)])
  return fitsIf('hose tails', ['hose clamp'], [reason('tail.same', FROM.hose, {}, numbers)])
}
