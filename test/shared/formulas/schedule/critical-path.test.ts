import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Activity, type CriticalPath, criticalPath } from '../../../../src/shared/formulas/schedule/critical-path.ts'
import { si } from '../../../../src/shared/quantities/dimension.ts'

const activity = (id: string, hours: number, ...after: string[]): Activity => ({ id, duration: si(hours, 'time'), after })
const solved = (activities: readonly Activity[]): CriticalPath => {
  const result = criticalPath(activities)
  if (!result.ok) throw new Error(JSON.stringify(result.issues))
  return result.value
}
const codes = (activities: readonly Activity[]) => {
  const result = criticalPath(activities)
  return result.ok ? [] : result.issues.map((i) => [i.code, ...i.path])
}

/** Networks without circles: each activity waits for some of those before it, then all are shuffled. */
const networks = fc.integer({ min: 1, max: 9 }).chain((n) =>
  fc
    .tuple(
      ...Array.from({ length: n }, (_, i) =>
        fc.record({ hours: fc.integer({ min: 0, max: 20 }), after: fc.subarray(Array.from({ length: i }, (_, j) => `t${j}`)) }),
      ),
    )
    .chain((list) =>
      fc.shuffledSubarray(
        list.map(({ hours, after }, i) => activity(`t${i}`, hours, ...after)),
        { minLength: n, maxLength: n },
      ),
    ),
)

/** Length of the longest chain that ends with this activity, by trying them all. */
function longestTo(id: string, all: readonly Activity[]): number {
  const a = all.find((x) => x.id === id)
  if (!a) throw new Error(id)
  return a.duration + Math.max(0, ...a.after.map((b) => longestTo(b, all)))
}

describe('the critical path', () => {
  it('of nothing takes no time', () => expect(solved([])).toEqual({ duration: 0, activities: [] }))

  it('of a published network has the printed table', () => {
    // course notes on network planning, example 1: ES, EF, LS, LF of seven activities
    const path = solved([
      activity('A', 6),
      activity('B', 2, 'A'),
      activity('C', 2, 'A'),
      activity('D', 3, 'B'),
      activity('F', 2, 'C'),
      activity('E', 4, 'D', 'F'),
      activity('G', 1, 'E'),
    ])
    expect(path.duration).toBe(16)
    expect(path.activities.map((a) => [a.id, a.earliestStart, a.earliestFinish, a.latestStart, a.latestFinish, a.critical])).toEqual([
      ['A', 0, 6, 0, 6, true],
      ['B', 6, 8, 6, 8, true],
      ['C', 6, 8, 7, 9, false],
      ['D', 8, 11, 8, 11, true],
      ['F', 8, 10, 9, 11, false],
      ['E', 11, 15, 11, 15, true],
      ['G', 15, 16, 15, 16, true],
    ])
  })

  it('is the longest chain, found by trying all chains', () => {
    fc.assert(
      fc.property(networks, (activities) => {
        const path = solved(activities)
        expect(path.duration).toBe(Math.max(...activities.map((a) => longestTo(a.id, activities))))
        for (const a of path.activities) expect(a.earliestFinish).toBe(longestTo(a.id, activities))
      }),
    )
  })

  it('leaves slack that may be used up and not more', () => {
    fc.assert(
      fc.property(networks, fc.nat(), (activities, pick) => {
        const path = solved(activities)
        const n = pick % activities.length
        const slack = path.activities[n]?.slack ?? 0
        const slipped = (by: number) =>
          solved(activities.map((a, i) => (i === n ? { ...a, duration: si(a.duration + by, 'time') } : a))).duration
        expect(slipped(slack)).toBe(path.duration)
        expect(slipped(slack + 1)).toBe(path.duration + 1)
      }),
    )
  })

  it('does not take the rounding of tenths for slack', () => {
    const path = solved([activity('a', 0.1), activity('b', 0.2, 'a'), activity('c', 0.3), activity('end', 1, 'b', 'c')])
    expect(path.activities.every((a) => a.critical)).toBe(true)
  })

  it('is found in a chain of a hundred thousand', () => {
    const chain = Array.from({ length: 100_000 }, (_, i) => activity(`t${i}`, 1, ...(i === 0 ? [] : [`t${i - 1}`])))
    expect(solved(chain).duration).toBe(100_000)
  })

  it('tells every fault at once', () => {
    expect(codes([activity('a', -1), activity('a', Number.NaN), activity('b', 1, 'nobody')])).toEqual([
      ['schedule.duration', 0, 'duration'],
      ['schedule.duplicate', 1, 'id'],
      ['schedule.duration', 1, 'duration'],
      ['schedule.unknown', 2, 'after'],
    ])
  })

  it('names those that wait for each other, and not those that only wait for them', () => {
    const result = criticalPath([activity('first', 1), activity('a', 1, 'b', 'first'), activity('b', 1, 'a'), activity('last', 1, 'b')])
    expect(result).toMatchObject({ ok: false, issues: [{ code: 'schedule.circle', facts: { ids: ['a', 'b'] } }] })
    expect(codes([activity('self', 1, 'self')])).toEqual([['schedule.circle']])
  })
})
