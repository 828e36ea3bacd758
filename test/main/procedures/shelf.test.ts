import { describe, expect, it } from 'vitest'
import type { PartFile } from '../../../src/shared/model/part.ts'
import { fullBuild } from '../database/full-build.ts'
import { got, openedDatabase, problems, proceduresOn } from './made.ts'

const own = () => proceduresOn(openedDatabase())
const elbow: PartFile = {
  kind: 'adapter',
  id: 'elbow',
  name: 'Elbow',
  maker: 'Fernhill',
  price: '9.50',
  state: 'here',
  ends: [
    { name: 'in', connection: '-6 JIC male' },
    { name: 'out', connection: '3/8 NPT female', leftOpen: true },
  ],
  note: '',
}
const everything = { query: '', offset: 0, limit: 200, sort: 'name' } as const

async function stocked() {
  const procedures = own()
  for (const part of [elbow, ...fullBuild().parts]) got(await procedures['shelf.save']({ part, replace: false }))
  return procedures
}

describe('the shelf', () => {
  it('keeps a part, gives it back, finds it, and hands over what it replaces', async () => {
    const procedures = own()
    expect(got(await procedures['shelf.save']({ part: elbow, replace: false }))).toEqual({ id: 'elbow', before: null })
    expect(got(await procedures['shelf.read']({ id: 'elbow' })).part).toEqual(elbow)
    expect(problems(await procedures['shelf.save']({ part: { ...elbow, name: 'B' }, replace: false }))).toEqual(['id: shelf.exists'])
    expect(got(await procedures['shelf.save']({ part: { ...elbow, name: 'Bend' }, replace: true })).before).toEqual(elbow)
    expect(got(await procedures['shelf.search']({ ...everything, query: 'bend jic', families: ['flare 37'] }))).toEqual({
      total: 1,
      parts: [
        {
          id: 'elbow',
          kind: 'adapter',
          name: 'Bend',
          maker: 'Fernhill',
          partNumber: null,
          supplier: null,
          price: '9.50',
          quantity: null,
          state: 'here',
          ends: [
            { name: 'in', connection: '-6 JIC male' },
            { name: 'out', connection: '3/8 NPT female' },
          ],
        },
      ],
    })
  })

  it('refuses a faulty part with every place', async () => {
    const procedures = own()
    const faulty = { ...elbow, id: 'Elbow', ends: [{ name: 'in', connection: 'what' }] }
    expect(problems(await procedures['shelf.save']({ part: faulty, replace: true }))).toEqual([
      'id: file.wrong_form',
      'ends[0].connection: end.not_understood',
    ])
    expect(got(await procedures['shelf.search'](everything)).total).toBe(0)
  })

  it('copies a part under an id of its own, and hands over what is taken off', async () => {
    const procedures = await stocked()
    expect(got(await procedures['shelf.duplicate']({ id: 'elbow' })).part).toEqual({ ...elbow, id: 'elbow-2' })
    expect(got(await procedures['shelf.duplicate']({ id: 'elbow-2' })).part.id).toBe('elbow-3')
    const { part } = got(await procedures['shelf.remove']({ id: 'elbow-2' }))
    expect(part).toEqual({ ...elbow, id: 'elbow-2' })
    expect(problems(await procedures['shelf.read']({ id: 'elbow-2' }))).toEqual(['shelf.unknown'])
    for (const name of ['shelf.read', 'shelf.remove', 'shelf.duplicate'] as const) {
      expect(problems(await procedures[name]({ id: 'x' }))).toEqual(['shelf.unknown'])
    }
  })

  it('gives parts to a build and takes parts of one, under ids that are free', async () => {
    const procedures = await stocked()
    got(await procedures['builds.import']({ text: JSON.stringify(fullBuild()), replace: false }))
    const given = got(await procedures['shelf.toBuild']({ ids: ['ram', 'elbow', 'ram'], build: 'larch', basedOn: 3 }))
    expect(given).toMatchObject({
      revision: 4,
      copies: [
        { from: 'ram', to: 'ram-2' },
        { from: 'elbow', to: 'elbow' },
        { from: 'ram', to: 'ram-3' },
      ],
    })
    const { file } = got(await procedures['builds.read']({ id: 'larch' }))
    const ram = fullBuild().parts.find((p) => p.id === 'ram')
    expect(file.parts).toEqual([...fullBuild().parts, { ...ram, id: 'ram-2' }, elbow, { ...ram, id: 'ram-3' }])

    const taken = got(await procedures['shelf.fromBuild']({ build: 'larch', ids: ['ram-2', 'elbow'] }))
    expect(taken.copies).toEqual([
      { from: 'ram-2', to: 'ram-2' },
      { from: 'elbow', to: 'elbow-2' },
    ])
    expect(got(await procedures['shelf.read']({ id: 'elbow-2' })).part).toEqual({ ...elbow, id: 'elbow-2' })

    expect(problems(await procedures['shelf.toBuild']({ ids: ['ram'], build: 'larch', basedOn: 3 }))).toEqual(['build.changed_meanwhile'])
    expect(problems(await procedures['shelf.toBuild']({ ids: ['ram', 'x'], build: 'larch', basedOn: 4 }))).toEqual([
      'ids[1]: shelf.unknown',
    ])
    expect(problems(await procedures['shelf.toBuild']({ ids: ['ram'], build: 'x', basedOn: 4 }))).toEqual(['build.unknown'])
    expect(problems(await procedures['shelf.fromBuild']({ build: 'larch', ids: ['x'] }))).toEqual(['ids[0]: reference.nothing_there'])
    expect(got(await procedures['builds.read']({ id: 'larch' })).revision).toBe(4)
  })
})

describe('the shelf as a table', () => {
  const csvOf = async (procedures: ReturnType<typeof own>) => {
    const saved = got(await procedures['shelf.exportCsv']({}))
    expect(saved).toMatchObject({ fileName: 'shelf.csv', mediaType: 'text/csv' })
    return Buffer.from(saved.base64, 'base64').toString('utf8')
  }

  it('goes out of one shelf and into another as it is, after a look that changes nothing', async () => {
    const text = await csvOf(await stocked())
    const other = own()
    const count = fullBuild().parts.length + 1
    const look = got(await other['shelf.importCsv']({ text, dryRun: true }))
    expect(look).toMatchObject({ imported: false, added: count, changed: 0, unchanged: 0, problems: [], problemCount: 0 })
    expect(look.changes[0]).toEqual({ row: 2, id: 'elbow', name: 'Elbow', what: 'added' })
    expect(got(await other['shelf.search'](everything)).total).toBe(0)
    expect(got(await other['shelf.importCsv']({ text, dryRun: false }))).toMatchObject({ imported: true, added: count })
    expect(await csvOf(other)).toBe(text)
    for (const part of [elbow, ...fullBuild().parts]) expect(got(await other['shelf.read']({ id: part.id })).part).toEqual(part)
  })

  it('changes what differs and leaves the rest alone', async () => {
    const procedures = await stocked()
    const text = (await csvOf(procedures)).replace('"9.50"', '"10"')
    const answer = got(await procedures['shelf.importCsv']({ text, dryRun: false }))
    expect(answer).toMatchObject({ imported: true, added: 0, changed: 1, unchanged: fullBuild().parts.length })
    expect(answer.changes).toEqual([{ row: 2, id: 'elbow', name: 'Elbow', what: 'changed' }])
    expect(got(await procedures['shelf.read']({ id: 'elbow' })).part).toEqual({ ...elbow, price: '10' })
  })

  it('is taken whole or not at all, with every row that is wrong', async () => {
    const procedures = own()
    const text = 'kind,name,state,price\nadapter,Good,here,1\nadapter,Bad,here,one\nadapter,Worse,gone,1'
    const answer = got(await procedures['shelf.importCsv']({ text, dryRun: false }))
    expect(answer).toMatchObject({ imported: false, added: 1, problemCount: 2 })
    expect(answer.problems.map(({ row, place, code }) => [row, place, code])).toEqual([
      [3, 'price', 'file.wrong_form'],
      [4, 'state', 'file.not_allowed'],
    ])
    expect(got(await procedures['shelf.search'](everything)).total).toBe(0)
    expect(problems(await procedures['shelf.importCsv']({ text: 'hello', dryRun: true }))).toEqual(['csv.no_heading'])
  })

  it('compares many rows as it compares few', async () => {
    const procedures = own()
    const rows = Array.from({ length: 300 }, (_, i) => `part-${i},adapter,Part ${i},here`)
    const text = ['id,kind,name,state', ...rows].join('\n')
    expect(got(await procedures['shelf.importCsv']({ text, dryRun: false }))).toMatchObject({ imported: true, added: 300 })
    const again = text.replace('Part 7,', 'Part seven,')
    expect(got(await procedures['shelf.importCsv']({ text: again, dryRun: false }))).toMatchObject({ added: 0, changed: 1, unchanged: 299 })
  })
})
