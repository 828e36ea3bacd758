import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkPart, checkParts } from '../../../src/shared/model/check-part.ts'
import { part } from '../../main/database/arbitrary-part.ts'
import { ids } from '../../main/database/arbitrary-values.ts'
import { mutate, mutation } from './mutate.ts'

const good = (id: string) => ({ kind: 'adapter', id, name: id, state: 'here', ends: [{ name: 'a', connection: '7/8-18 LH female' }] })

describe('checkParts', () => {
  it('says of each what checkPart says of it alone, be they good or bad', () => {
    const some = ids(1, 6).chain((known) => fc.tuple(...known.map(part)))
    fc.assert(
      fc.property(some, fc.array(mutation, { maxLength: 2 }), (parts, mutations) => {
        const mutated = mutations.reduce<unknown>(mutate, parts)
        const values: readonly unknown[] = Array.isArray(mutated) ? mutated : [mutated]
        expect(checkParts(values)).toEqual(values.map(checkPart))
      }),
      { numRuns: 150 },
    )
  })

  it('does not hold one against another, and keeps the order over many', () => {
    const many = Array.from({ length: 350 }, (_, i) => good(`p${i}`))
    const values = [...many, good('p0'), { ...good('bad'), state: 'lost' }, good('last'), good('last')]
    const checked = checkParts(values)
    expect(checked.map((c) => (c.ok ? c.value.file : c.issues.map((i) => i.path)))).toEqual(
      values.map((v) => (v.id === 'bad' ? [['state']] : v)),
    )
    expect(checkParts([])).toEqual([])
  })
})
