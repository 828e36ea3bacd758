import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { BuildFile } from '../../../src/shared/model/build.ts'
import type { Plan, Step } from '../../../src/shared/planner/plan.ts'
import { arbitraryBuild } from '../../main/database/arbitrary-build.ts'
import { bare, DEMO, found, planOf } from './builds.ts'

const usual = (planned: Plan): readonly Step[] => planned.steps.filter((s) => s.typed === undefined)
const place = (planned: Plan, code: string): number => usual(planned).findIndex((s) => s.code === code)

/** What must come before what, whoever wrote the templates: the order of a safe installation. */
const BEFORE: readonly (readonly [string, string])[] = [
  ['inspect', 'raise'],
  ['dry-fit', 'weld'],
  ...[
    'relieve-pressure',
    'weld',
    'axle',
    'arms',
    'tie-rod',
    'box',
    'drag-link',
    'measure-travel',
    'ram',
    'hoses',
    'purge',
    'full-lock-check',
  ].map((code) => ['raise', code] as const),
  ['relieve-pressure', 'weld'],
  ['relieve-pressure', 'hoses'],
  ['weld', 'ram'],
  ['clean-tapers', 'tie-rod'],
  ['measure-travel', 'knuckle-stops'],
  ['knuckle-stops', 'ram'],
  ['ram', 'ram-through-travel'],
  ['ram-through-travel', 'hoses'],
  ['tie-rod', 'torque'],
  ['hoses', 'fill'],
  ['torque', 'cotters'],
  ['torque', 'jam-nuts'],
  ['fill', 'purge'],
  ['purge', 'leak-check'],
  ['leak-check', 'lower'],
  ['full-lock-check', 'lower'],
  ['cotters', 'lower'],
  ['lower', 'toe'],
  ['toe', 'jam-nuts-after-toe'],
  ['toe', 'first-drive'],
  ['jam-nuts-after-toe', 'first-drive'],
  ['cotters', 'first-drive'],
  ['first-drive', 're-torque'],
]

function expectSafe(planned: Plan): void {
  const steps = usual(planned)
  const done = new Set<string>()
  for (const step of steps) {
    for (const before of step.after)
      expect({ step: step.code, before, done: done.has(before) }).toEqual({ step: step.code, before, done: true })
    expect(done.has(step.code)).toBe(false)
    done.add(step.code)
  }
  for (const [first, then] of BEFORE) {
    const [a, b] = [place(planned, first), place(planned, then)]
    if (a >= 0 && b >= 0) expect({ first, then, order: a < b }).toEqual({ first, then, order: true })
  }
}

describe('the steps', () => {
  it.each(['bought', 'corrected'] as const)('of the demo as %s: all that is to be done, in a safe order', (name) => {
    const planned = planOf(DEMO[name])
    expectSafe(planned)
    for (const code of new Set(BEFORE.flat())) expect({ code, there: place(planned, code) >= 0 }).toEqual({ code, there: true })
  })

  it('of any build: none before one that it waits for, and nothing under the vehicle before it stands safe', () => {
    fc.assert(
      fc.property(arbitraryBuild, (file) => {
        const planned = planOf(file)
        expectSafe(planned)
        // looking, lifting, measuring, lowering and driving belong to every build, whatever is in it
        for (const code of ['inspect', 'raise', 'measure-travel', 'knuckle-stops', 'full-lock-check', 'lower', 'first-drive']) {
          expect({ code, there: place(planned, code) >= 0 }).toEqual({ code, there: true })
        }
        expect(usual(planned).find((s) => s.code === 'raise')?.cautions).toContain('stands')
      }),
      { numRuns: 150 },
    )
  })

  it('speak of the parts they deal with', () => {
    const planned = planOf(DEMO.bought)
    const step = (code: string) => usual(planned)[place(planned, code)]
    expect(step('tie-rod')?.about).toEqual(['tie-rod'])
    expect(step('ram')?.about).toEqual(['ram'])
    expect(step('weld')?.about).toEqual(['ram-bracket-weld'])
    expect(step('cotters')?.about).toEqual(['tie-left-stud', 'tie-right-stud', 'drag-box-stud', 'drag-arm-stud'])
    expect(step('purge')?.cautions).toContain('injection')
    expect(step('torque')?.about).toEqual(DEMO.bought.torqueSpecs?.map((s) => s.id))
  })

  it('leave out what the build has nothing of', () => {
    const codes = usual(planOf(bare())).map((s) => s.code)
    for (const code of ['weld', 'hoses', 'ram', 'purge', 'torque', 'cotters', 'tie-rod']) expect(codes).not.toContain(code)
  })
})

describe("the user's own tasks", () => {
  const task = (id: string, after: readonly string[] = []) => ({
    id,
    name: `Task ${id}`,
    hours: { low: '1 h', likely: '1 h', high: '1 h' },
    after: [...after],
  })
  const own = (tasks: NonNullable<BuildFile['tasks']>) => {
    const planned = planOf(bare({ tasks }))
    return { planned, order: planned.steps.filter((s) => s.typed !== undefined).map((s) => s.about[0]) }
  }

  it('come after those they wait for; else as they stand in the file', () => {
    expect(own([task('c', ['b']), task('a'), task('b', ['a']), task('d')]).order).toEqual(['a', 'b', 'c', 'd'])
    expect(own([task('z'), task('y'), task('x')]).order).toEqual(['z', 'y', 'x'])
  })

  it('that wait for each other in a circle stop the build, and stand as in the file', () => {
    for (const tasks of [
      [task('a', ['b']), task('b', ['a'])],
      [task('a', ['a'])],
      [task('x'), task('a', ['c']), task('b', ['a']), task('c', ['b'])],
    ]) {
      const { planned, order } = own(tasks)
      expect(found(planned, 'tasks.circle')).toMatchObject([{ severity: 'stops', about: ['tasks'] }])
      expect(order).toEqual(tasks.map((t) => t.id))
    }
  })

  it('of any number, without a circle: each after those it waits for', () => {
    const tasks = fc.integer({ min: 0, max: 40 }).chain((n) =>
      fc
        .tuple(
          ...Array.from({ length: n }, (_, i) =>
            fc.subarray(
              Array.from({ length: i }, (_, j) => `t${j}`),
              { maxLength: Math.min(4, i) },
            ),
          ),
        )
        .chain((afters) =>
          fc.shuffledSubarray(
            afters.map((after, i) => task(`t${i}`, after)),
            { minLength: n },
          ),
        ),
    )
    fc.assert(
      fc.property(tasks, (all) => {
        const { order } = own(all)
        expect([...order].sort()).toEqual(all.map((t) => t.id).sort())
        for (const t of all) for (const before of t.after) expect(order.indexOf(before)).toBeLessThan(order.indexOf(t.id))
      }),
      { numRuns: 60 },
    )
  })
})
