import { taperMismatchGap, taperStandOffShift } from '../../formulas/tapers/taper.ts'
import type { TaperEnd } from '../../model/end/types.ts'
import { type Length, type Ratio, si } from '../../quantities/dimension.ts'
import { inches, mm } from '../../quantities/make.ts'
import { cotterTrouble } from './cotter.ts'
import { doesNotFit, fitsIf, goesTogetherWrong, notKnown, proof, reason } from './make.ts'
import { FROM } from './sources.ts'
import type { Verdict } from './verdict.ts'

const RULE = 'tapers'
/** Two tapers count as one when their rates differ by less than this share: it takes in 3.58° for 1.5 in/ft, not 7° for it. Chosen. */
const SAME_RATE = 0.005
/** Between arm face and the stud's shoulder when seated. See FROM.standOff. */
const STAND_OFF = { least: inches(3 / 32), most: inches(1 / 4) }
/** A slip of the reamer worth naming: one thousandth of an inch. */
const BORE_ERROR = inches(0.001)
const NUT_AND_PIN = 'castle nut and cotter'

/** A ball stud's cone in the hole it pulls into. */
export function fitTapers(a: TaperEnd, b: TaperEnd): Verdict {
  if (a.sex === null || b.sex === null) return notKnown(RULE, ['which is stud and which is hole'])
  if (a.sex === b.sex) return doesNotFit(RULE, [reason('taper.same_sex', FROM.taperMatch, { sex: a.sex })])
  const [stud, hole] = a.sex === 'male' ? [a, b] : [b, a]
  if (stud.ratio === null || hole.ratio === null) {
    return notKnown(RULE, [...(stud.ratio === null ? ['taper of the stud'] : []), ...(hole.ratio === null ? ['taper of the hole'] : [])])
  }
  if (Math.abs(stud.ratio - hole.ratio) / Math.max(stud.ratio, hole.ratio) > SAME_RATE)
    return fitMismatch(stud.ratio, hole.ratio, hole.length)
  const [studLarge, holeLarge] = [largeOf(stud, stud.ratio), largeOf(hole, hole.ratio)]
  if (studLarge === null || holeLarge === null) {
    return notKnown(RULE, [
      ...(studLarge === null ? ['large diameter of the stud'] : []),
      ...(holeLarge === null ? ['large diameter of the hole'] : []),
    ])
  }
  return fitSeat(stud, hole, stud.ratio, studLarge, holeLarge)
}

/** The large diameter as measured, or from the small one over the whole length; null where neither says it. */
function largeOf({ large, small, length }: TaperEnd, k: Ratio): Length | null {
  if (large !== null) return large
  return small === null || length === undefined ? null : si(small + k * length, 'length')
}

/** Contact at one end only; tightening harder hides it. */
function fitMismatch(stud: Ratio, hole: Ratio, length: Length | undefined): Verdict {
  const over = length ?? mm(10)
  const gap = taperMismatchGap.compute({ L: over, k_1: stud, k_2: hole })
  return goesTogetherWrong(RULE, [
    reason(
      'taper.rates_differ',
      FROM.taperMatch,
      { contactsAt: stud > hole ? 'large end' : 'small end', assumedLength: length === undefined },
      [
        proof('taper of the stud', 'ratio', stud),
        proof('taper of the hole', 'ratio', hole),
        proof('length compared', 'length', over),
        proof('gap at the other end', 'length', gap),
      ],
    ),
  ])
}

/** Same rate: where does the stud sit, and does the whole bore bear on the cone? */
function fitSeat(stud: TaperEnd, hole: TaperEnd, k: Ratio, studLarge: Length, holeLarge: Length): Verdict {
  const standOff = si((studLarge - holeLarge) / k, 'length')
  const numbers = [
    proof('large diameter of the stud', 'length', studLarge),
    proof('large diameter of the hole', 'length', holeLarge),
    proof('stand-off of the shoulder', 'length', standOff),
    proof('stand-off wanted at least', 'length', STAND_OFF.least),
    proof('stand-off wanted at most', 'length', STAND_OFF.most),
    proof('bore error', 'length', BORE_ERROR),
    proof('moves the shoulder by', 'length', taperStandOffShift.compute({ dD: BORE_ERROR, k })),
  ]
  if (standOff <= 0) return goesTogetherWrong(RULE, [reason('taper.shoulder_bottoms', FROM.standOff, {}, numbers)])
  if (standOff < STAND_OFF.least || standOff > STAND_OFF.most) {
    return doesNotFit(RULE, [
      reason(standOff < STAND_OFF.least ? 'taper.sits_too_deep' : 'taper.sits_too_high', FROM.standOff, {}, numbers),
    ])
  }
  const coneLength = stud.length ?? (stud.small === null ? undefined : si((studLarge - stud.small) / k, 'length'))
  if (coneLength !== undefined && hole.length !== undefined && standOff + hole.length > coneLength) {
    return goesTogetherWrong(RULE, [
      reason('taper.bore_beyond_cone', FROM.taperMatch, {}, [
        ...numbers,
        proof('length of the cone', 'length', coneLength),
        proof('thickness of the arm', 'length', hole.length),
      ]),
    ])
  }
  const trouble = cotterTrouble(stud, hole, standOff)
  if (trouble) return doesNotFit(RULE, [trouble])
  return fitsIf(RULE, [NUT_AND_PIN], [reason('taper.same', FROM.standOff, {}, numbers)])
}
