import { isDeepStrictEqual } from 'node:util'
import type { Procedures } from '../../shared/contract/contract.ts'
import type { BuildFile } from '../../shared/model/build.ts'
import { FORMAT, FORMAT_VERSION } from '../../shared/model/build.ts'
import { checkBuild, readBuild, writeBuild } from '../../shared/model/exchange.ts'
import { plan } from '../../shared/planner/index.ts'
import { findingTexts, makeDocument, numberTexts, workingTexts } from '../../shared/report/index.ts'
import type { WritableDatabase } from '../database/index.ts'
import { type Answer, done, refuse, savedFile } from './answer.ts'
import { DEMO_FILES } from './demo.ts'
import { fileName } from './file-name.ts'
import { freeId } from './free-id.ts'
import { noBuild, type Store, writeNext } from './store.ts'
import { makeSummaries } from './summaries.ts'

type BuildProcedures = Pick<Procedures, Extract<keyof Procedures, `builds.${string}` | 'demo.add' | 'sheet.print'>>

/** Builds as a whole: listed, opened as a report, read and written, imported and exported, printed. */
export function buildProcedures(store: Store, today: () => string): BuildProcedures {
  const summaries = makeSummaries()
  const save = (database: WritableDatabase, file: BuildFile, replace: boolean): Answer<{ id: string; replaced: boolean }> => {
    const saved = database.saveBuild(file, { replace, changedAt: store.now() })
    return saved.ok ? done({ id: file.build.id, replaced: saved.value.replaced }) : refuse(saved.issues)
  }

  return {
    'builds.list': () =>
      store.use((database) => done(database.listBuilds().map((row) => summaries.of(row, () => database.loadBuild(row.id))))),

    'builds.open': ({ id, units: asked }) =>
      store.build(id, ({ build }, database) => {
        const row = database.findBuild(id)
        if (row === undefined) return noBuild(id)
        const units = asked ?? build.build.units
        const planned = plan(build)
        return done({
          summary: summaries.from(row, planned),
          units,
          document: makeDocument(build, planned, { units, printedOn: today() }),
          findings: findingTexts(build, planned, units),
          numbers: numberTexts(build, planned, units),
          workings: workingTexts(build, planned, units),
        })
      }),

    'builds.read': ({ id }) =>
      store.use((database) => {
        // the row first: where another program comes between the two, the file is the newer one and a write from it is refused
        const row = database.findBuild(id)
        const file = database.loadBuild(id)
        return row && file ? done({ file, revision: row.revision, changedAt: row.changedAt }) : noBuild(id)
      }),

    'builds.write': ({ file, basedOn, changedAt }) =>
      store.use((database) => writeNext(database, file, { revision: basedOn, changedAt }, store.now())),

    'builds.create': ({ name, vehicle, units }) =>
      store.use((database) => {
        const id = freeId(name, 'build', (taken) => database.findBuild(taken) !== undefined)
        const checked = checkBuild({
          format: FORMAT,
          version: FORMAT_VERSION,
          build: { id, name, revision: 1, units },
          vehicle: { id: freeId(vehicle, 'vehicle', () => false), name: vehicle },
          parts: [],
          joints: [],
        } satisfies BuildFile)
        if (!checked.ok) return refuse(checked.issues)
        const changedAt = store.now()
        const saved = database.saveBuild(checked.value.file, { replace: false, changedAt })
        return saved.ok ? done({ id, revision: 1, changedAt }) : refuse(saved.issues)
      }),

    'builds.remove': ({ id, revision }) =>
      store.use((database) => {
        const removed = database.removeBuild(id, { revision })
        return removed.ok ? done({ file: removed.value }) : refuse(removed.issues)
      }),

    'builds.import': ({ text, replace }) =>
      store.use((database) => {
        const read = readBuild(text)
        return read.ok ? save(database, read.value.file, replace) : refuse(read.issues)
      }),

    'builds.export': ({ id }) =>
      store.build(id, ({ file }) =>
        done(
          savedFile(
            fileName(`${file.build.name} r${file.build.revision}`, 'steerwright.json'),
            'application/json',
            Buffer.from(writeBuild(file), 'utf8'),
          ),
        ),
      ),

    'demo.add': ({ which }) =>
      store.use((database) => {
        const file = DEMO_FILES[which]
        const saved = save(database, file, isDemo(database.loadBuild(file.build.id)))
        return saved.ok ? done({ id: saved.value.id }) : saved
      }),

    'sheet.print': ({ id, paper, units, workings }) =>
      store.build(id, async ({ build }) => {
        // the PDF library is large; the program starts without it
        const { renderPdf } = await import('../documents/index.ts')
        const document = makeDocument(build, plan(build), {
          units: units ?? build.build.units,
          printedOn: today(),
          withoutWorkings: !workings,
        })
        const pdf = await renderPdf(document, { paper })
        return done(savedFile(fileName(`${build.build.name} r${build.build.revision} shop sheet ${paper}`, 'pdf'), 'application/pdf', pdf))
      }),
  }
}

/** Whether a stored build is one of the two demo files, untouched: the other may take its place, since nothing of the user's is lost. */
const isDemo = (stored: BuildFile | undefined): boolean => Object.values(DEMO_FILES).some((file) => isDeepStrictEqual(file, stored))
