import { expect, it } from 'vitest'
import { parseEnd } from '../../../../src/shared/model/end/parse.ts'
import { readEnd } from '../../../../src/shared/model/end/read.ts'

it('reads as parseEnd does, the first time, again, and after more ends than it remembers', () => {
  const typed = ['7/8-18 LH female', '-6 37° flare male', 'weld', 'glue', '', '7/8-18 LH female ']
  const wanted = typed.map(parseEnd)
  expect(typed.map(readEnd)).toEqual(wanted)
  expect(typed.map(readEnd)).toEqual(wanted)
  for (let i = 1; i <= 5000; i++) readEnd(`bore ${i} mm`)
  expect(typed.map(readEnd)).toEqual(wanted)
})
