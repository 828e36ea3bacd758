import type { RoundEnd, SplineEnd, TailEnd, ThreadEnd } from '../../model/end/types.ts'
import { mm } from '../../quantities/make.ts'
import { doesNotFit, fits, fitsIf, goesTogetherWrong, notKnown, proof, reason } from './make.ts'
import { FROM } from './sources.ts'
import type { Verdict } from './verdict.ts'

/** A split clamp closes this much and no more; see FROM.clamp. */
const CLAMP = { tighter: mm(0.1), looser: mm(0.4) }
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
  return outer.form === 'clamp' ? fitClamp(inner.diameter, outer.diameter) : fitBolt(inner.diameter, outer.diameter)
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

function fitClamp(tube: number, clamp: number): Verdict {
  const numbers = [proof('outside diameter of the tube', 'length', tube), proof('bore of the clamp', 'length', clamp)]
  const play = clamp - tube
  if (play < -CLAMP.tighter) return doesNotFit('cylinders', [reason('clamp.too_small', FROM.clamp, {}, numbers)])
  if (play > CLAMP.looser) return doesNotFit('cylinders', [reason('clamp.too_big', FROM.clamp, {}, numbers)])
  return fits('cylinders', [reason('clamp.same', FROM.clamp, {}, numbers)])
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
  if (Math.abs(a.bore - b.bore) > mm(0.5)) return doesNotFit('hose tails', [reason('tail.bore', FROM.hose, {}, numbers)])
  return fitsIf('hose tails', ['hose clamp'], [reason('tail.same', FROM.hose, {}, numbers)])
}
