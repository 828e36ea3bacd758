import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { summaryText } from '../../../src/shared/report/summary-text.ts'
import { fill, wrap } from '../../../src/shared/report/text-columns.ts'
import { sample } from '../../main/documents/sample.ts'

describe('summaryText', () => {
  const lines = summaryText(sample()).split('\n')

  it('keeps to 100 characters a line, without trailing spaces, ending in a new line', () => {
    for (const line of lines) {
      expect(line.length).toBeLessThanOrEqual(100)
      expect(line).toBe(line.trimEnd())
    }
    expect(lines.at(-1)).toBe('')
  })

  it('gives state by sign and word, boxes to tick, and tables in columns', () => {
    const all = lines.join('\n')
    for (const words of [
      'What stops the build\n====================',
      '■  Stops the build: Stud 1:8 in an arm reamed 1:10',
      '   Seen: stud taper 1:8 (1.5 in/ft); arm taper 1:10 (1.2 in/ft)',
      '▲ to order',
      '■ goes',
      '  1 [ ] Raise the axle and set it on stands',
      '        !  Stands on firm ground.',
      '   A = π·(1.75 in)² / 4',
      '8 3/16 in ± 0.031 in',
    ])
      expect(all).toContain(words)
  })

  it('stands long words', () => {
    const text = summaryText(sample([{ id: 'a', heading: 'h'.repeat(300), blocks: [{ kind: 'list', items: ['w'.repeat(300)] }] }]))
    for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(100)
    expect(text.replace(/\s/g, '')).toContain('w'.repeat(100))
  })
})

describe('wrap', () => {
  it('loses nothing and keeps to the width', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 300 }), fc.integer({ min: 1, max: 60 }), (text, width) => {
        const lines = wrap(text, width)
        for (const line of lines) expect(line.length).toBeLessThanOrEqual(width)
        expect(lines.join('').replace(/\s/g, '')).toBe(text.replace(/\s/g, ''))
      }),
    )
  })

  it('hangs further lines under the first', () => {
    expect(fill('-  ', 'one two three', 9)).toEqual(['-  one', '   two', '   three'])
  })
})
