import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { type Database, openDatabase } from '../../../src/main/database/index.ts'
import { makeDispatch } from '../../../src/main/hosts/dispatch.ts'
import { makeProcedures, type World } from '../../../src/main/procedures/index.ts'
import type { Procedures } from '../../../src/shared/contract/contract.ts'
import { fail, issue, type Result } from '../../../src/shared/result/result.ts'

const migrationsFolder = resolve(import.meta.dirname, '../../../migrations')

let folder: string
let database: Result<Database>
let ticks: number

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'steerwright-procedures-'))
  database = openDatabase(folder, { migrationsFolder, now: '2030-01-01T00:00:00.000Z' })
  ticks = 0
})
afterEach(() => {
  if (database.ok) database.value.close()
  rmSync(folder, { recursive: true })
})

/** The procedures behind the same check of the contract that both doors use, so that an output out of form fails a test. */
function procedures(own: Partial<World> = {}): Procedures {
  const made = makeProcedures({
    database,
    // local midday, so that the day is the same in every time zone
    clock: () => new Date(2030, 1, 3, 12, 0, ticks++),
    host: 'browser',
    dataFolder: folder,
    version: '1.2.3',
    ...own,
  })
  const dispatch = makeDispatch(made, (_where, error) => {
    throw error
  })
  const checked = Object.keys(made).map((name) => [name, async (input: unknown) => (await dispatch(name, input)).body])
  return Object.fromEntries(checked) as Procedures
}

const file = (id: string, more: object = {}) => ({
  format: 'steerwright build',
  version: 1,
  build: { id, name: 'Front axle', revision: 3, units: 'metric' },
  vehicle: { id: 'larch', name: 'Larch' },
  parts: [],
  joints: [],
  ...more,
})
const text = (id: string, more: object = {}) => JSON.stringify(file(id, more))
const decode = (base64: string) => Buffer.from(base64, 'base64')

/** The value of an answer that went well. */
function got<T>(answer: { ok: true; value: T } | { ok: false; problems: unknown }): T {
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems))
  return answer.value
}

describe('the procedures', () => {
  it('say what program this is', async () => {
    expect(await procedures()['program.about']({})).toEqual({
      version: '1.2.3',
      host: 'browser',
      dataFolder: folder,
      database: { ok: true, value: null },
    })
  })

  it('import a file, list it with the time of the change, and give it back to the letter', async () => {
    const own = procedures()
    expect(await own['builds.list']({})).toEqual({ ok: true, value: [] })
    expect(got(await own['builds.import']({ text: text('a'), replace: false }))).toEqual({ id: 'a', replaced: false })
    expect(got(await own['builds.list']({}))).toEqual([
      expect.objectContaining({
        id: 'a',
        name: 'Front axle',
        vehicle: 'Larch',
        revision: 3,
        changedAt: new Date(2030, 1, 3, 12).toISOString(),
      }),
    ])
    const saved = got(await own['builds.export']({ id: 'a' }))
    expect(saved).toMatchObject({ fileName: 'front-axle-r3.steerwright.json', mediaType: 'application/json' })
    expect(JSON.parse(decode(saved.base64).toString())).toEqual(file('a'))
  })

  it('refuse an id that exists, unless told to put the new one in its place', async () => {
    const own = procedures()
    await own['builds.import']({ text: text('a'), replace: false })
    const other = text('a', { vehicle: { id: 'fir', name: 'Fir' } })
    expect(await own['builds.import']({ text: other, replace: false })).toMatchObject({ ok: false, problems: [{ code: 'build.exists' }] })
    expect(got(await own['builds.list']({}))[0]?.vehicle).toBe('Larch')
    expect(got(await own['builds.import']({ text: other, replace: true }))).toEqual({ id: 'a', replaced: true })
    expect(got(await own['builds.list']({}))[0]?.vehicle).toBe('Fir')
  })

  it('tell every fault of a file at once, each with its place and a sentence, and store nothing of it', async () => {
    const own = procedures()
    const answer = await own['builds.import']({ text: text('a', { parts: [{ id: 'p' }], extra: 1, version: 9 }), replace: false })
    if (answer.ok) throw new Error('imported')
    expect(answer.problems.length).toBeGreaterThanOrEqual(3)
    for (const { sentence } of answer.problems) expect(sentence).toMatch(/^\S.+[.!?]$/s)
    expect(answer.problems.map(({ place }) => place).join(' ')).toContain('parts[0]')
    expect(await own['builds.import']({ text: 'not json', replace: false })).toMatchObject({ ok: false })
    expect(got(await own['builds.list']({}))).toEqual([])
  })

  it('open a build in its own units or in those asked for', async () => {
    const own = procedures()
    await own['builds.import']({ text: text('a'), replace: false })
    const opened = got(await own['builds.open']({ id: 'a' }))
    expect(opened.units).toBe('metric')
    expect(opened.document.printedOn).toBe('2030-02-03')
    expect(opened.summary).toEqual(got(await own['builds.list']({}))[0])
    expect(got(await own['builds.open']({ id: 'a', units: 'inch' })).units).toBe('inch')
  })

  it('count the findings of each build as its plan has them, anew after each change', async () => {
    const own = procedures()
    await own['demo.add']({ which: 'bought' })
    const [row] = got(await own['builds.list']({}))
    const { findings, summary } = got(await own['builds.open']({ id: row?.id ?? '' }))
    const count = (severity: string) => findings.filter((one) => one.severity === severity).length
    expect(summary).toMatchObject({ stops: count('stops'), looks: count('look') })
    expect(row).toEqual(summary)
    expect(summary.stops).toBeGreaterThan(0)
    // the same id with nothing in it
    await own['builds.import']({ text: text(summary.id), replace: true })
    expect(got(await own['builds.list']({}))[0]).toMatchObject({ stops: 0 })
  })

  it('add the demo build, put its other state in its place, and leave one alone that somebody has changed', async () => {
    const own = procedures()
    const { id } = got(await own['demo.add']({ which: 'bought' }))
    expect(got(await own['demo.add']({ which: 'corrected' })).id).toBe(id)
    const [corrected] = got(await own['builds.list']({}))
    expect(corrected).toMatchObject({ id, stops: 0 })
    await own['builds.import']({ text: text(id), replace: true })
    expect(await own['demo.add']({ which: 'bought' })).toMatchObject({ ok: false, problems: [{ code: 'build.exists' }] })
    expect(got(await own['builds.list']({}))).toHaveLength(1)
  })

  it('print the sheet on both papers', async () => {
    const own = procedures()
    await own['builds.import']({ text: text('a'), replace: false })
    for (const paper of ['a4', 'letter'] as const) {
      const sheet = got(await own['sheet.print']({ id: 'a', paper }))
      expect(sheet).toMatchObject({ fileName: `front-axle-r3-shop-sheet-${paper}.pdf`, mediaType: 'application/pdf' })
      expect(decode(sheet.base64).subarray(0, 5).toString()).toBe('%PDF-')
    }
  })

  it('say so where there is no such build', async () => {
    const own = procedures()
    for (const answer of [
      await own['builds.open']({ id: 'x' }),
      await own['builds.export']({ id: 'x' }),
      await own['sheet.print']({ id: 'x', paper: 'a4' }),
    ]) {
      expect(answer).toMatchObject({ ok: false, problems: [{ code: 'build.unknown' }] })
    }
  })

  it('start without a database, and give its reason for every command', async () => {
    const own = procedures({ database: fail(issue('database.newer', [], { found: 9, known: 1, path: 'x' })) })
    const refused = { ok: false, problems: [{ code: 'database.newer', sentence: expect.stringMatching(/\S+ \S+/) }] }
    expect(await own['program.about']({})).toMatchObject({ database: refused })
    expect(await own['builds.list']({})).toMatchObject(refused)
    expect(await own['builds.open']({ id: 'a' })).toMatchObject(refused)
    expect(await own['builds.import']({ text: text('a'), replace: false })).toMatchObject(refused)
    expect(await own['demo.add']({ which: 'bought' })).toMatchObject(refused)
  })

  it('answer in plain words when the disk fails under a running program', async () => {
    const broken = () => {
      throw Object.assign(new Error('disk I/O error'), { code: 'SQLITE_IOERR_READ' })
    }
    if (!database.ok) throw new Error('no database')
    const own = procedures({
      database: { ok: true, value: { ...database.value, listBuilds: broken, loadBuild: broken, findBuild: broken, saveBuild: broken } },
    })
    expect(await own['builds.list']({})).toMatchObject({ ok: false, problems: [{ code: 'database.disk_failed' }] })
    expect(await own['builds.open']({ id: 'a' })).toMatchObject({ ok: false, problems: [{ code: 'database.disk_failed' }] })
  })

  it('leave saving to the browser where there is one, and write a file whole where there is none', async () => {
    const sheet = { fileName: 'sheet.pdf', mediaType: 'application/pdf', base64: Buffer.from('new').toString('base64') }
    expect(await procedures()['files.save'](sheet)).toMatchObject({ ok: false, problems: [{ code: 'save.browser' }] })
    const path = join(folder, 'sheet.pdf')
    const asked: string[] = []
    const saveDialog = async (suggested: string) => {
      asked.push(suggested)
      return path
    }
    expect(await procedures({ saveDialog })['files.save'](sheet)).toEqual({ ok: true, value: { saved: true, path } })
    expect(asked).toEqual(['sheet.pdf'])
    expect(readFileSync(path, 'utf8')).toBe('new')
    expect(await procedures({ saveDialog: async () => null })['files.save'](sheet)).toEqual({
      ok: true,
      value: { saved: false, path: null },
    })
    expect(await procedures({ saveDialog: async () => folder })['files.save'](sheet)).toMatchObject({
      ok: false,
      problems: [{ code: 'save.failed' }],
    })
  })
})
