import { describe, expect, it } from 'vitest'
import { DEMO_FILES } from '../../../../src/main/procedures/demo.ts'
import {
  blankForm,
  differs,
  endForm,
  formOf,
  freeId,
  idFrom,
  NEW_KIND,
  partOf,
  renamedEnds,
} from '../../../../src/renderer/parts/editor/form.ts'
import { keysOf } from '../../../../src/renderer/parts/fields/kinds.ts'
import { checkPart } from '../../../../src/shared/model/check-part.ts'
import { PART_KINDS, part as partShape } from '../../../../src/shared/model/part.ts'

const parts = [...DEMO_FILES.bought.parts, ...DEMO_FILES.corrected.parts]

describe('the fields of a part', () => {
  it('give every part of the demo back as it was', () => {
    for (const part of parts) expect(partOf(formOf(part))).toEqual(part)
    expect(parts.length).toBeGreaterThan(40)
  })

  it('have a place for every key that the file knows, of every kind', () => {
    for (const kind of PART_KINDS) {
      const shape = partShape.options.find((option) => option.shape.kind.safeParse(kind).success)
      const keys = Object.keys(shape?.shape ?? {}).filter((key) => !['kind', 'id', 'ends'].includes(key))
      expect([kind, [...keysOf(kind)].sort()]).toEqual([kind, keys.sort()])
    }
  })

  it('differ from what is stored as soon as a letter does, and no sooner', () => {
    for (const part of parts.slice(0, 10)) {
      const form = formOf(part)
      expect(differs(form, part)).toBe(false)
      expect(differs({ ...form, values: { ...form.values, name: `${part.name} ` } }, part)).toBe(true)
      expect(differs({ ...form, ends: [...form.ends, endForm()] }, part)).toBe(true)
    }
    expect(differs(blankForm(NEW_KIND), null)).toBe(false)
    expect(differs(blankForm('tube'), null)).toBe(true)
    expect(differs({ ...blankForm('tube'), values: { state: 'here', maker: 'M' } }, null)).toBe(true)
  })

  it('keep what was typed of another kind, and send only what this kind has', () => {
    const form = { ...blankForm('tube'), values: { state: 'here', name: 'Tie rod', wall: '0.250 in', stroke: '8 in' } }
    expect(partOf(form)).toEqual({ kind: 'tube', id: 'tie-rod', name: 'Tie rod', state: 'here', wall: '0.250 in', ends: [] })
    expect(checkPart(partOf(form)).ok).toBe(true)
    expect(partOf({ ...form, kind: 'ram' })).toHaveProperty('stroke', '8 in')
  })

  it('send a count as a number, and what is no count as it was typed, so that the program says so', () => {
    const form = (quantity: string) => partOf({ ...blankForm('other'), values: { state: 'here', name: 'Nut', quantity } })
    expect(form('4')).toHaveProperty('quantity', 4)
    expect(form('four')).toHaveProperty('quantity', 'four')
    expect(checkPart(form('four')).ok).toBe(false)
  })

  it('know which ends were renamed and which are gone', () => {
    const [part] = parts.filter(({ ends }) => ends.length === 3)
    if (part === undefined) throw new Error('no part with three ends')
    const form = formOf(part)
    const [first, second] = form.ends
    if (first === undefined || second === undefined) throw new Error('no ends')
    const renamed = renamedEnds({ ...form, ends: [{ ...second, name: 'new-name' }, first] }, part)
    expect([...renamed]).toEqual([
      [part.ends[1]?.name, 'new-name'],
      [part.ends[2]?.name, null],
    ])
  })
})

describe('an id made from a name', () => {
  it.each([
    ['Tie rod, left', 'tie-rod-left'],
    ['Élan 3/8"', 'elan-3-8'],
    ['  —  ', ''],
  ])('%s', (name, id) => expect(idFrom(name)).toBe(id))

  it('is counted up where it is taken', () => {
    expect(freeId('a', new Set())).toBe('a')
    expect(freeId('a', new Set(['a', 'a-2']))).toBe('a-3')
    expect(freeId('', new Set(['part']))).toBe('part-2')
  })
})

describe('an end made like another', () => {
  it('is another: what is typed in one does not show in both', () => {
    const end = endForm({ name: 'left', connection: '7/8-18 LH female' })
    const copy = endForm({ ...end, name: 'left-2' })
    expect(copy.key).not.toBe(end.key)
    expect(copy.connection).toBe(end.connection)
  })
})
