import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fileName } from '../../../src/main/procedures/file-name.ts'

describe('fileName', () => {
  it.each([
    ['Front axle & assist steering', 'front-axle-assist-steering.pdf'],
    ['  ../../etc/passwd  ', 'etc-passwd.pdf'],
    ['CON: 7/8"-14?', 'con-7-8-14.pdf'],
    ['Lärche № 2', 'larche-no-2.pdf'],
    ['***', 'build.pdf'],
  ])('makes a good name of "%s"', (title, name) => {
    expect(fileName(title, 'pdf')).toBe(name)
  })

  it('makes of any title a name without separators, dots or spaces, that is never empty or endless', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (title) => {
        expect(fileName(title, 'pdf')).toMatch(/^[^\s./\\:*?"<>|]{1,300}\.pdf$/)
      }),
    )
  })
})
