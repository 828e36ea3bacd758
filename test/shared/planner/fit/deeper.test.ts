import { describe, expect, it } from 'vitest'
import { parseEnd } from '../../../../src/shared/model/end/parse.ts'
import { fitEnds } from '../../../../src/shared/planner/fit/fit.ts'
import { verdictWords } from '../../../../src/shared/report/text/verdicts.ts'
import { showIn } from '../../../../src/shared/report/units.ts'

const end = (typed: string) => {
  const read = parseEnd(typed)
  if (!read.ok) throw new Error(`${typed}: ${JSON.stringify(read.issues)}`)
  return read.value
}
const judge = (a: string, b: string) => {
  const verdict = fitEnds(end(a), end(b))
  return {
    kind: verdict.kind,
    reasons: verdict.reasons.map((r) => r.code),
    measure: verdict.measure,
    words: verdictWords(verdict, showIn('inch')),
  }
}

/** 5/8-18 slotted nut of ASME B18.2.2: 0.547 in high, slots from 0.32 in; pin hole 0.172 in. Arm 0.75 in, shoulder 0.16 in off. */
const ARM = 'taper 1.5 in/ft hole, large 0.850 in, through 0.75 in'
const stud = (cotterHole: string) => `taper 1.5 in/ft stud, large 0.870 in, length 1.10 in, cotter hole ${cotterHole}, nut 5/8-18`

describe('cotter hole in the slots of the castle nut', () => {
  it.each([
    // 0.16 + 0.75 + 0.32 + 0.086 = 1.316: from there the whole hole clears the floor of the slots
    ['1.30 in', 'does not fit', ['cotter.below_slots']],
    ['1.32 in', 'fits if', ['taper.same']],
    // 0.16 + 0.75 + 0.547 = 1.457: there its middle reaches the top of the nut
    ['1.45 in', 'fits if', ['taper.same']],
    ['1.47 in', 'does not fit', ['cotter.above_slots']],
  ])('hole at %s from the shoulder: %s', (at, kind, reasons) => {
    expect(judge(stud(at), ARM)).toMatchObject({ kind, reasons })
  })

  it('says nothing where the nut or the arm is not known', () => {
    expect(judge('taper 1.5 in/ft stud, large 0.870 in, cotter hole 3 in', ARM).kind).toBe('fits if')
    expect(judge(stud('3 in'), 'taper 1.5 in/ft hole, large 0.850 in').kind).toBe('fits if')
  })

  it('names what a thousandth of an inch in the bore does: 0.008 in at 1.5 in/ft', () => {
    // the geometry of a taper: dz = dD / k = 0.001 / 0.125
    expect(judge(stud('1.40 in'), ARM).words.reasons[0]).toContain('0.008 in')
  })
})

describe('tilt of a rod end over the travel', () => {
  it.each([
    ['bore 5/8 in, tilts 16°', 'pin 5/8 in, tilts 12°', 'fits if', []],
    ['bore 5/8 in, tilts 16°', 'pin 5/8 in, tilts 20°', 'goes together and is wrong', []],
    ['bore 5/8 in, tilts 16°', 'pin 5/8 in', 'not known', ['how far the joint tilts over the travel']],
    ['bore 5/8 in', 'pin 5/8 in, tilts 12°', 'not known', ['how far the rod end can tilt']],
    ['bore 5/8 in', 'pin 5/8 in', 'fits if', []],
  ])('%s with %s: %s', (a, b, kind, measure) => {
    expect(judge(a, b)).toMatchObject({ kind, measure })
    expect(judge(b, a)).toMatchObject({ kind, measure })
  })
})

describe('clamp: width and wall, common practice', () => {
  it.each([
    ['clamp 1 1/2 in, wide 1 1/8 in', 'tube 1 1/2 in, wall 0.150 in', 'fits', 'clamp.same'],
    ['clamp 1 1/2 in, wide 1 in', 'tube 1 1/2 in, wall 0.150 in', 'does not fit', 'clamp.narrow'],
    ['clamp 1 1/2 in, wide 2 in', 'tube 1 1/2 in, wall 0.140 in', 'does not fit', 'clamp.thin_wall'],
  ])('%s on %s: %s', (a, b, kind, code) => {
    expect(judge(a, b)).toMatchObject({ kind, reasons: [code] })
  })

  it('refuses facets on ends that have none', () => {
    for (const typed of [
      '7/8-18 male, wall 2 mm',
      'clamp 1 in, wall 2 mm',
      'tube 1 in, tilts 5°',
      'bore 1 in, nut 5/8-18',
      '-6 JIC male, large 3 mm',
    ]) {
      expect(parseEnd(typed).ok, typed).toBe(false)
    }
  })
})
