import { basename } from 'node:path'
import { isDeepStrictEqual } from 'node:util'
import type { Problem, Procedures, SavedFile } from '../../shared/contract/contract.ts'
import type { BuildFile } from '../../shared/model/build.ts'
import { type CheckedBuild, checkBuild, readBuild, writeBuild } from '../../shared/model/exchange.ts'
import { plan } from '../../shared/planner/index.ts'
import { findingTexts, makeDocument, numberTexts, problemSentence, workingTexts } from '../../shared/report/index.ts'
import type { Issue, Result } from '../../shared/result/result.ts'
import { troubleOf, type WritableDatabase } from '../database/index.ts'
import { DEMO_FILES } from './demo.ts'
import { fileName } from './file-name.ts'
import { readQuantity } from './read-quantity.ts'
import { makeSummaries } from './summaries.ts'
import { writeWhole } from './write-whole.ts'

export interface World {
  /** the opened database, or why there is none: the program starts all the same and says so */
  readonly database: Result<WritableDatabase>
  readonly clock: () => Date
  /** which of the two doors is asking */
  readonly host: 'window' | 'browser'
  readonly dataFolder: string
  readonly version: string
  /** asks the user where to save; gives null when the user would rather not. Absent where the page saves by itself */
  readonly saveDialog?: (suggested: string) => Promise<string | null>
}

type Refused = { readonly ok: false; readonly problems: Problem[] }
type Answer<T> = { readonly ok: true; readonly value: T } | Refused

/** The contract, carried out: gathers from the database, hands to the shared rooms, and gives back what they made. */
export function makeProcedures({ database, clock, host, dataFolder, version, saveDialog }: World): Procedures {
  const summaries = makeSummaries()
  const withStore = async <T>(use: (store: WritableDatabase) => Answer<T> | Promise<Answer<T>>): Promise<Answer<T>> => {
    if (!database.ok) return refuse(database.issues)
    try {
      return await use(database.value)
    } catch (error) {
      const trouble = troubleOf(error)
      if (trouble === undefined) throw error
      return refuse([trouble])
    }
  }
  const withBuild = <T>(
    id: string,
    use: (checked: CheckedBuild, store: WritableDatabase) => Answer<T> | Promise<Answer<T>>,
  ): Promise<Answer<T>> =>
    withStore((store) => {
      const file = store.loadBuild(id)
      if (file === undefined) return noBuild(id)
      const checked = checkBuild(file)
      return checked.ok ? use(checked.value, store) : refuse(checked.issues)
    })
  const save = (store: WritableDatabase, file: BuildFile, replace: boolean): Answer<{ id: string; replaced: boolean }> => {
    const saved = store.saveBuild(file, { replace, changedAt: clock().toISOString() })
    return saved.ok ? done({ id: file.build.id, replaced: saved.value.replaced }) : refuse(saved.issues)
  }

  return {
    'program.about': async () => ({ version, host, dataFolder, database: database.ok ? done(null) : refuse(database.issues) }),

    'builds.list': () => withStore((store) => done(store.listBuilds().map((row) => summaries.of(row, () => store.loadBuild(row.id))))),

    'builds.open': ({ id, units: asked }) =>
      withBuild(id, ({ build }, store) => {
        const row = store.listBuilds().find((one) => one.id === id)
        if (row === undefined) return noBuild(id)
        const units = asked ?? build.build.units
        const planned = plan(build)
        return done({
          summary: summaries.from(row, planned),
          units,
          document: makeDocument(build, planned, { units, printedOn: dayOf(clock()) }),
          findings: findingTexts(build, planned, units),
          numbers: numberTexts(build, planned, units),
          workings: workingTexts(build, planned, units),
        })
      }),

    'builds.import': ({ text, replace }) =>
      withStore((store) => {
        const read = readBuild(text)
        return read.ok ? save(store, read.value.file, replace) : refuse(read.issues)
      }),

    'builds.export': ({ id }) =>
      withBuild(id, ({ file }) =>
        done(savedFile(fileName(file.build.name, 'steerwright.json'), 'application/json', Buffer.from(writeBuild(file), 'utf8'))),
      ),

    'demo.add': ({ which }) =>
      withStore((store) => {
        const file = DEMO_FILES[which]
        const saved = save(store, file, isDemo(store.loadBuild(file.build.id)))
        return saved.ok ? done({ id: saved.value.id }) : saved
      }),

    'sheet.print': ({ id, paper, units }) =>
      withBuild(id, async ({ build }) => {
        // the PDF library is large; the program starts without it
        const { renderPdf } = await import('../documents/index.ts')
        const document = makeDocument(build, plan(build), { units: units ?? build.build.units, printedOn: dayOf(clock()) })
        const pdf = await renderPdf(document, { paper })
        return done(savedFile(fileName(`${build.build.name} shop sheet ${paper}`, 'pdf'), 'application/pdf', pdf))
      }),

    'builds.read': unfinished,
    'builds.write': unfinished,
    'builds.create': unfinished,
    'builds.remove': unfinished,
    'end.read': unfinished,
    'part.check': unfinished,
    'fit.ends': unfinished,
    'fit.candidates': unfinished,
    'shelf.search': unfinished,
    'shelf.read': unfinished,
    'shelf.save': unfinished,
    'shelf.duplicate': unfinished,
    'shelf.remove': unfinished,
    'shelf.toBuild': unfinished,
    'shelf.fromBuild': unfinished,
    'shelf.importCsv': unfinished,
    'shelf.exportCsv': unfinished,

    'quantity.read': readQuantity,

    'files.save': async ({ fileName: suggested, base64 }) => {
      if (saveDialog === undefined) return refused('save.browser', 'A browser saves files by itself; the program does not do it for it.')
      const path = await saveDialog(basename(suggested))
      if (path === null) return done({ saved: false, path: null })
      const trouble = await writeWhole(path, Buffer.from(base64, 'base64'))
      return trouble === undefined ? done({ saved: true, path }) : refused('save.failed', `The file could not be saved: ${trouble}.`)
    },
  }
}

/** Whether a stored build is one of the two demo files, untouched: the other may take its place, since nothing of the user's is lost. */
const isDemo = (stored: BuildFile | undefined): boolean => Object.values(DEMO_FILES).some((file) => isDeepStrictEqual(file, stored))

const done = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value })

const refuse = (issues: readonly Issue[]): Refused => ({ ok: false, problems: issues.map(problemSentence) })

const refused = (code: string, sentence: string): Refused => ({ ok: false, problems: [{ code, place: '', sentence }] })

const unfinished = async (): Promise<Refused> => refused('unfinished', 'This is not ready yet.')

const noBuild = (id: string): Refused => refused('build.unknown', `There is no build “${id}” in the database any more.`)

const savedFile = (name: string, mediaType: string, bytes: Uint8Array): SavedFile => ({
  fileName: name,
  mediaType,
  base64: Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('base64'),
})

/** The day on the wall calendar where the program runs, ISO. */
function dayOf(now: Date): string {
  const two = (n: number): string => String(n).padStart(2, '0')
  return `${String(now.getFullYear()).padStart(4, '0')}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}
