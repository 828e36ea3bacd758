import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DEMO_FILES } from '../../../src/main/procedures/demo.ts'
import { checkBuild } from '../../../src/shared/model/exchange.ts'
import { mutate, mutation } from '../../shared/model/mutate.ts'
import { must, NOW, opened } from './stage.ts'

describe('a hostile file on its way into the database', () => {
  it('is stored whole, to the letter, or not at all; what was there before stays', () => {
    const db = opened()
    must(db.saveBuild(DEMO_FILES.corrected, { replace: false, changedAt: NOW }))
    const { id } = DEMO_FILES.corrected.build
    let stored = 0
    let refused = 0
    fc.assert(
      fc.property(fc.array(mutation, { minLength: 1, maxLength: 4 }), (mutations) => {
        const before = db.listBuilds()
        const held = new Map(before.map((b) => [b.id, db.loadBuild(b.id)]))
        const value = mutations.reduce<unknown>(mutate, DEMO_FILES.bought)
        const checked = checkBuild(value)
        const saved = checked.ok ? db.saveBuild(checked.value.file, { replace: true, changedAt: NOW }) : checked
        if (checked.ok && saved.ok) {
          stored++
          expect(db.loadBuild(checked.value.file.build.id)).toStrictEqual(value)
          must(db.saveBuild(DEMO_FILES.corrected, { replace: true, changedAt: NOW }))
        } else {
          refused++
          expect(db.listBuilds()).toEqual(before)
          for (const [one, file] of held) expect(db.loadBuild(one)).toStrictEqual(file)
        }
      }),
      { numRuns: 200 },
    )
    expect(db.loadBuild(id)).toStrictEqual(DEMO_FILES.corrected)
    // both roads were taken, so the test has tried both
    expect(stored).toBeGreaterThan(0)
    expect(refused).toBeGreaterThan(20)
  })
})
