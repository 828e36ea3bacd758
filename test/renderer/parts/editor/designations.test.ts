import { describe, expect, it } from 'vitest'
import { type Choice, FAMILIES, writeEnd } from '../../../../src/renderer/parts/editor/designations.ts'
import { familyOf } from '../../../../src/shared/model/end/family.ts'
import { parseEnd } from '../../../../src/shared/model/end/parse.ts'

const BLANK: Choice = { size: '', sex: 'male', left: false, jamNut: false, length: '', diameter: '' }
const FULL: Partial<Choice> = { jamNut: true, length: '1 1/4 in', diameter: '0.85 in' }

/** Every choice a person can make of a family. */
const choices = (sizes: readonly string[]): readonly Choice[] =>
  (sizes.length === 0 ? [''] : sizes).flatMap((size) =>
    (['male', 'female'] as const).flatMap((sex) =>
      [true, false].flatMap((left) => [
        { ...BLANK, size, sex, left },
        { ...BLANK, ...FULL, size, sex, left },
      ]),
    ),
  )

describe('an end written from choices', () => {
  it.each(FAMILIES.map((family) => [family.label, family] as const))('%s: is read back, whatever was chosen', (_, family) => {
    const refused = choices(family.sizes)
      .map((choice) => writeEnd(family, choice))
      .filter((written) => !parseEnd(written).ok)
    expect(refused).toEqual([])
  })

  it('is read back as what was chosen', () => {
    for (const family of FAMILIES.filter(({ asks, sizes }) => asks.includes('sex') && sizes.length > 0)) {
      for (const choice of choices(family.sizes)) {
        const read = parseEnd(writeEnd(family, choice))
        if (!read.ok) throw new Error(writeEnd(family, choice))
        const { value: end } = read
        expect([writeEnd(family, choice), familyOf(end), 'sex' in end && end.sex]).toEqual([
          writeEnd(family, choice),
          family.id,
          choice.sex,
        ])
        if (family.asks.includes('hand')) expect('hand' in end && end.hand).toBe(choice.left ? 'left' : 'right')
        if (family.asks.includes('jam nut')) expect(end.jamNut ?? false).toBe(choice.jamNut)
      }
    }
  })

  it('offers a useful number of families and sizes', () => {
    expect(FAMILIES.length).toBeGreaterThan(25)
    expect(FAMILIES.flatMap((family) => family.sizes).length).toBeGreaterThan(400)
  })
})
