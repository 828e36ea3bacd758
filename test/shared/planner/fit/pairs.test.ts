import { describe, expect, it } from 'vitest'
import { parseEnd } from '../../../../src/shared/model/end/parse.ts'
import type { End } from '../../../../src/shared/model/end/types.ts'
import { fitEnds } from '../../../../src/shared/planner/fit/fit.ts'
import { PAIRS } from './pairs.ts'

function end(typed: string): End {
  const read = parseEnd(typed)
  if (!read.ok) throw new Error(`"${typed}": ${JSON.stringify(read.issues)}`)
  return read.value
}

/** What of a verdict must not depend on the order in which the two ends are named. */
const settled = (a: End, b: End) => {
  const { kind, rule, conditions, measure } = fitEnds(a, b)
  return { kind, rule, conditions, measure: [...measure].sort() }
}

describe('pairs of ends judged by hand', () => {
  it('are more than 330, each asked once', () => {
    expect(PAIRS.length).toBeGreaterThanOrEqual(330)
    const asked = PAIRS.map(({ a, b }) => `${a} | ${b}`)
    expect(asked.filter((pair, i) => asked.indexOf(pair) !== i)).toEqual([])
  })

  it('reach every kind of verdict often', () => {
    for (const kind of ['fits', 'fits if', 'does not fit', 'goes together and is wrong', 'not known']) {
      expect(PAIRS.filter((pair) => pair.verdict === kind).length, kind).toBeGreaterThan(30)
    }
  })

  it.each(PAIRS)('$a with $b: $verdict, because $because', ({ a, b, verdict }) => {
    expect(fitEnds(end(a), end(b)).kind).toBe(verdict)
    expect(settled(end(a), end(b))).toEqual(settled(end(b), end(a)))
  })
})
