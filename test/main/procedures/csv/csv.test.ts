import fc from 'fast-check'
import Papa from 'papaparse'
import { describe, expect, it } from 'vitest'
import { fromCell, toCell } from '../../../../src/main/procedures/csv/cell.ts'
import { COLUMNS, KEYS } from '../../../../src/main/procedures/csv/columns.ts'
import { columnOf, readCsv } from '../../../../src/main/procedures/csv/read.ts'
import { writeCsv } from '../../../../src/main/procedures/csv/write.ts'
import type { PartFile } from '../../../../src/shared/model/part.ts'
import { problemSentence } from '../../../../src/shared/report/index.ts'
import { part } from '../../database/arbitrary-part.ts'
import { ids } from '../../database/arbitrary-values.ts'
import { fullBuild } from '../../database/full-build.ts'
import { must } from '../../database/stage.ts'

const none = () => false
const parts = ids(0, 4)
  .chain((known) => fc.tuple(...known.map(part)))
  .map((made) => JSON.parse(JSON.stringify(made)) as PartFile[])
const back = (text: string) => must(readCsv(text, none))
const cells = (text: string) => Papa.parse<string[]>(text.replace(/^\ufeff/, ''), { delimiter: ',', newline: '\r\n' }).data.slice(0, -1)

/** Signs that a spreadsheet takes for the beginning of a formula, or that a table, a list of ends or the guard lives by. */
const sign = fc.constantFrom('=', '+', '-', '@', '\t', '\r', '\n', '＝', "'", '"', ',', ';', '|', '\\', ':', ' ', '\ufeff', 'x', 'é')
const awkward = fc.array(sign, { maxLength: 6 }).map((signs) => signs.join(''))
const DANGEROUS = /^[=+\-@\t\r\n＝＋－＠]/

describe('a table of parts', () => {
  it('gives back every part that was written to it', () => {
    fc.assert(
      fc.property(parts, (some) => {
        const { parts: read, issues } = back(writeCsv(some))
        expect(issues).toEqual([])
        expect(read.map((r) => r.part)).toStrictEqual(some)
        expect(read.map((r) => r.row)).toEqual(some.map((_, i) => i + 2))
      }),
      { numRuns: 300 },
    )
  })

  it('gives back texts made of nothing but signs', () => {
    fc.assert(
      fc.property(awkward, awkward, awkward, fc.nat(2), fc.nat(2), (name, note, endNote, before, after) => {
        const one: PartFile = {
          kind: 'other',
          id: 'a',
          name: `${name}x`,
          maker: `x${name}`,
          supplier: name === '' ? 'x' : name,
          state: 'here',
          ends: [
            {
              name: 'end',
              connection: `${' '.repeat(before)}weld${' '.repeat(after)}`,
              note: endNote,
            },
          ],
          note,
        }
        const { parts: read, issues } = back(writeCsv([one]))
        expect(issues).toEqual([])
        expect(read[0]?.part).toStrictEqual(one)
      }),
      { numRuns: 500 },
    )
  })

  it('has a column for every key of a part, and gives back the part that has them all', () => {
    const own = fullBuild().parts
    const used = new Set(own.flatMap((p) => Object.keys(p)))
    expect(KEYS.filter((key) => !used.has(key))).toEqual([])
    expect(cells(writeCsv(own))[0]).toEqual(Object.values(COLUMNS))
    expect(back(writeCsv(own)).parts.map((r) => r.part)).toStrictEqual(own)
  })

  it('holds no cell that a spreadsheet takes for a formula', () => {
    fc.assert(
      fc.property(parts, fc.array(awkward), (some, notes) => {
        const own = some.map((one, i) => ({ ...one, note: notes[i] ?? '', name: `${notes[i] ?? ''}x` }))
        for (const cell of cells(writeCsv(own)).flat()) expect(cell).not.toMatch(DANGEROUS)
      }),
    )
  })

  it('leaves dash sizes alone where no cell begins with one', () => {
    const one = {
      kind: 'adapter',
      id: 'a',
      name: 'Elbow',
      state: 'here',
      ends: [{ name: 'out', connection: '-6 37° flare male' }],
    } as const
    const text = writeCsv([{ ...one, ends: [...one.ends] }])
    expect(text).toContain('"out: -6 37° flare male"')
    expect(text).not.toContain("'")
  })
})

describe('the guard of a cell', () => {
  it.each([
    ['=SUM(A1)', "'=SUM(A1)"],
    ['-6 elbow', "'-6 elbow"],
    ["'-6", "''-6"],
    ["''=", "'''="],
    ["'n Abend", "'n Abend"],
    ['', "'"],
    ["'", "''"],
    ['6-', '6-'],
  ])('writes %j as %j', (text, cell) => {
    expect(toCell(text)).toBe(cell)
    expect(fromCell(cell)).toBe(text)
  })

  it('is undone by reading, and tells no text from an empty one', () => {
    expect(fromCell(toCell(undefined))).toBeUndefined()
    fc.assert(
      fc.property(fc.oneof(awkward, fc.string()), (text) => {
        expect(fromCell(toCell(text))).toBe(text)
      }),
    )
  })

  it('takes what a person types as it is', () => {
    for (const typed of ['-6', '+5', '@', "don't"]) expect(fromCell(typed)).toBe(typed)
  })
})

describe('a table that a person or a spreadsheet wrote', () => {
  const elbow = {
    kind: 'adapter',
    id: 'elbow',
    name: 'Elbow',
    quantity: 2,
    state: 'here',
    ends: [
      { name: 'in', connection: '-6 37° flare male' },
      { name: 'out', connection: '3/8 NPT female', leftOpen: true, note: 'a; b' },
    ],
  }
  const row = ['elbow', ' adapter ', 'Elbow', 'here', '2', 'in:-6 37° flare male ;out:  3/8 NPT female| left open |note: a\\; b;']

  it.each([
    ['commas and Windows lines', ',', '\r\n'],
    ['semicolons', ';', '\n'],
    ['tabs and old lines', '\t', '\r'],
  ])('is read with %s', (_what, delimiter, newline) => {
    const text = Papa.unparse([['ID', 'Kind', ' name', 'State', 'QUANTITY', 'ends'], row, ['', '', '', '', '', '']], { delimiter, newline })
    for (const table of [text, `\ufeff${text}`, `${text}${newline}${newline}`]) {
      const { parts: read, issues } = back(table)
      expect(issues).toEqual([])
      expect(read).toStrictEqual([{ row: 2, part: elbow }])
    }
  })

  it('gets ids of its own where it has none, other than those that are taken', () => {
    const text = 'kind,name,state\nadapter,Élbow 90°,here\nadapter,Elbow 90,here\nadapter,肘,here'
    expect(must(readCsv(text, (id) => id === 'elbow-90')).parts.map((r) => r.part.id)).toEqual(['elbow-2', 'elbow-3', 'part'])
  })

  it('is told every fault of every row with its column', () => {
    const text = [
      'id,kind,name,state,quantity,length,bore,ends',
      'a,adaptor,A,here,,,,',
      'a,adapter,B,here,two,4 psi,1 in,"x: 7/8-19 male | oppen; y"',
      'c,adapter,C,here,,,,,spare',
      'd,adapter,,,,,,',
    ].join('\n')
    const { parts: read, issues } = back(text)
    expect(read.map((r) => r.part.id)).toEqual(['c'])
    expect(issues.map(({ row: at, issue }) => `${at} ${columnOf(issue)}: ${issue.code}`)).toEqual([
      '2 kind: file.not_allowed',
      '3 id: csv.id_twice',
      '3 quantity: file.wrong_type',
      '3 ends (no. 1), connection: end.unknown_thread',
      '3 ends (no. 1), | oppen: file.unknown_key',
      '3 ends (no. 2), name: file.wrong_form',
      '3 ends (no. 2), connection: end.not_understood',
      '3 length: quantity.wrong_dimension',
      '3 bore: file.unknown_key',
      '4 : csv.too_many_cells',
      '5 name: file.missing',
      '5 state: file.missing',
    ])
    for (const { issue } of issues) expect(problemSentence(issue).sentence).toMatch(/^\S.* .*[.?]$/s)
  })

  it.each([
    ['nothing', '', ['csv.no_heading']],
    ['a row where the headings should be', 'elbow,adapter\n', ['csv.no_heading']],
    ['a heading that is not ours', 'id,kind,colour\n', ['csv.unknown_column']],
    ['a heading twice', 'id,kind,ID\n', ['csv.column_twice']],
  ])('is refused with %s', (_what, text, codes) => {
    const read = readCsv(text, none)
    expect(read.ok ? [] : read.issues.map((i) => i.code)).toEqual(codes)
  })

  it('never throws', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
        for (const table of [text, `id,kind,name,state,ends\n${text}`]) readCsv(table, none)
      }),
    )
  })
})
