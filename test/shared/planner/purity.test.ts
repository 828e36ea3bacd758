import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { findFormula } from '../../../src/shared/formulas/index.ts'
import { checkBuild } from '../../../src/shared/model/exchange.ts'
import { plan } from '../../../src/shared/planner/index.ts'
import type { Plan } from '../../../src/shared/planner/plan.ts'
import { SEARCH, SUM } from '../../../src/shared/planner/plan.ts'
import { arbitraryBuild } from '../../main/database/arbitrary-build.ts'
import { fullBuild } from '../../main/database/full-build.ts'
import { mutate, mutation } from '../model/mutate.ts'
import { built, DEMO, frozen } from './builds.ts'

describe('plan()', () => {
  it.each(Object.entries(DEMO))('leaves the build (%s) alone, and says the same twice', (_name, file) => {
    const build = frozen(built(file))
    const once = plan(build)
    expect(plan(build)).toStrictEqual(once)
    expect(plan(built(structuredClone(file)))).toStrictEqual(once)
  })

  it('does so for any build, and gives a plain value that survives JSON', () => {
    fc.assert(
      fc.property(fc.oneof(arbitraryBuild, fc.constant(fullBuild())), (file) => {
        const build = frozen(built(file))
        const once = plan(build)
        expect(plan(build)).toStrictEqual(once)
        expectPlain(once)
        expectSound(once)
      }),
      { numRuns: 150 },
    )
  })

  it('never throws on a file that the check has passed, however it came about', () => {
    let planned = 0
    fc.assert(
      fc.property(fc.array(mutation, { minLength: 1, maxLength: 3 }), (mutations) => {
        const read = checkBuild(mutations.reduce<unknown>(mutate, DEMO.corrected))
        if (!read.ok) return
        planned++
        const result = plan(frozen(read.value.build))
        expectPlain(result)
        expectSound(result)
      }),
      { numRuns: 400 },
    )
    expect(planned).toBeGreaterThan(10)
  })
})

/** Nothing in it that JSON would lose or change: no undefined values among lists, no NaN, no Infinity. */
function expectPlain(value: Plan): void {
  const text = JSON.stringify(value, (_key, v: unknown) => {
    if (typeof v === 'number' && !Number.isFinite(v)) throw new Error(`${v} in the plan`)
    if (typeof v === 'function' || typeof v === 'bigint' || typeof v === 'symbol') throw new Error(`${typeof v} in the plan`)
    // JSON has no negative nought
    return v === 0 ? 0 : v
  })
  expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)))
}

/** Every number is named once, has a card or is a sum, and rests on numbers written down before it; findings name numbers that are there. */
function expectSound(planned: Plan): void {
  const known = new Set<string>()
  for (const n of planned.numbers) {
    expect({ id: n.id, twice: known.has(n.id) }).toEqual({ id: n.id, twice: false })
    for (const input of Object.values(n.inputs)) if (input.origin.kind === 'number') expect(known.has(input.origin.id)).toBe(true)
    const card = findFormula(n.card)
    if (n.card === SUM) expect(Object.values(n.inputs).reduce((s, v) => s + v.si, 0)).toBeCloseTo(n.si, 12)
    else if (n.card !== SEARCH) {
      expect(card).toBeDefined()
      expect(Object.keys(n.inputs).sort()).toEqual(Object.keys(card?.symbols ?? {}).sort())
    }
    known.add(n.id)
  }
  for (const f of planned.findings)
    for (const id of f.numbers) expect({ code: f.code, id, known: known.has(id) }).toEqual({ code: f.code, id, known: true })
}
