import { isDeepStrictEqual } from 'node:util'
import type { CsvAnswer, Procedures } from '../../shared/contract/contract.ts'
import { checkPart } from '../../shared/model/check-part.ts'
import type { PartFile } from '../../shared/model/part.ts'
import { problemSentence } from '../../shared/report/index.ts'
import { issue } from '../../shared/result/result.ts'
import type { ReadableShelf } from '../database/index.ts'
import { done, refuse, savedFile } from './answer.ts'
import { columnOf, readCsv } from './csv/read.ts'
import { writeCsv } from './csv/write.ts'
import { freeId } from './free-id.ts'
import { noBuild, type Store, writeNext } from './store.ts'

type ShelfProcedures = Pick<Procedures, Extract<keyof Procedures, `shelf.${string}`>>
type Copy = { readonly from: string; readonly to: string }

const noPart = (id: string, ...path: (string | number)[]) => refuse([issue('shelf.unknown', path, { id })])

/** Parts that the user has or knows: looked for, changed, copied from and into builds, and carried by tables. */
export function shelfProcedures(store: Store): ShelfProcedures {
  return {
    'shelf.search': (ask) =>
      store.use(({ shelf }) => {
        const { total, parts } = shelf.search(ask)
        return done({ total, parts: [...parts] })
      }),

    'shelf.read': ({ id }) =>
      store.use(({ shelf }) => {
        const part = shelf.load(id)
        return part ? done({ part }) : noPart(id)
      }),

    'shelf.save': ({ part, replace }) =>
      store.use(({ shelf }) => {
        const checked = checkPart(part)
        if (!checked.ok) return refuse(checked.issues)
        const { file } = checked.value
        const before = shelf.load(file.id) ?? null
        const saved = shelf.save([file], { replace, changedAt: store.now() })
        return saved.ok ? done({ id: file.id, before }) : refuse(saved.issues.map((i) => ({ ...i, path: i.path.slice(1) })))
      }),

    'shelf.duplicate': ({ id }) =>
      store.use(({ shelf }) => {
        const part = shelf.load(id)
        if (!part) return noPart(id)
        const copy = { ...part, id: freeId(id, 'part', shelf.has) }
        const saved = shelf.save([copy], { replace: false, changedAt: store.now() })
        return saved.ok ? done({ part: copy }) : refuse(saved.issues)
      }),

    'shelf.remove': ({ id }) =>
      store.use(({ shelf }) => {
        const part = shelf.load(id)
        if (!part) return noPart(id)
        const removed = shelf.remove(id)
        return removed.ok ? done({ part }) : refuse(removed.issues)
      }),

    'shelf.toBuild': ({ ids, build, basedOn }) =>
      store.use((database) => {
        const file = database.loadBuild(build)
        if (!file) return noBuild(build)
        const parts: PartFile[] = []
        for (const [i, id] of ids.entries()) {
          const part = database.shelf.load(id)
          if (!part) return noPart(id, 'ids', i)
          parts.push(part)
        }
        const { copies, parts: added } = copied(parts, new Set(file.parts.map((p) => p.id)))
        const written = writeNext(database, { ...file, parts: [...file.parts, ...added] }, { revision: basedOn }, store.now())
        return written.ok ? done({ revision: written.value.revision, changedAt: written.value.changedAt, copies }) : written
      }),

    'shelf.fromBuild': ({ build, ids }) =>
      store.use((database) => {
        const file = database.loadBuild(build)
        if (!file) return noBuild(build)
        const parts: PartFile[] = []
        for (const [i, id] of ids.entries()) {
          const part = file.parts.find((p) => p.id === id)
          if (!part) return refuse([issue('reference.nothing_there', ['ids', i], { kind: 'part', id })])
          parts.push(part)
        }
        const { copies, parts: added } = copied(parts, new Set(), database.shelf.has)
        const saved = database.shelf.save(added, { replace: false, changedAt: store.now() })
        return saved.ok ? done({ copies }) : refuse(saved.issues)
      }),

    'shelf.importCsv': ({ text, dryRun }) =>
      store.use(({ shelf }) => {
        const read = readCsv(text, shelf.has)
        if (!read.ok) return refuse(read.issues)
        const { parts, issues } = read.value
        const differences = compare(parts, shelf)
        const answer: CsvAnswer = {
          imported: false,
          added: differences.filter((d) => d.what === 'added').length,
          changed: differences.filter((d) => d.what === 'changed').length,
          unchanged: parts.length - differences.length,
          changes: differences.slice(0, SHOWN).map(({ row, what, part: { id, name } }) => ({ row, id, name, what })),
          problems: issues.slice(0, SHOWN).map(({ row, issue: one }) => ({ ...problemSentence(one), row, place: columnOf(one) })),
          problemCount: issues.length,
        }
        if (dryRun || issues.length > 0) return done(answer)
        const saved = shelf.save(
          differences.map((d) => d.part),
          { replace: true, changedAt: store.now() },
        )
        return saved.ok ? done({ ...answer, imported: true }) : refuse(saved.issues)
      }),

    'shelf.exportCsv': () => store.use(({ shelf }) => done(savedFile('shelf.csv', 'text/csv', Buffer.from(writeCsv(shelf.all()), 'utf8')))),
  }
}

/** As many changes and problems as a person reads before giving up. */
const SHOWN = 200

interface Difference {
  readonly row: number
  readonly part: PartFile
  readonly what: 'added' | 'changed'
}

/** What a table would change on the shelf. */
function compare(parts: readonly { readonly row: number; readonly part: PartFile }[], shelf: ReadableShelf): readonly Difference[] {
  // one by one where they are few, since the shelf may hold very many
  const all = parts.length > SHOWN ? new Map(shelf.all().map((part) => [part.id, part])) : undefined
  return parts.flatMap(({ row, part }): readonly Difference[] => {
    const old = all ? all.get(part.id) : shelf.load(part.id)
    if (old === undefined) return [{ row, part, what: 'added' }]
    return isDeepStrictEqual(old, part) ? [] : [{ row, part, what: 'changed' }]
  })
}

/** The same parts under ids that are free, each with the id it had. */
function copied(
  parts: readonly PartFile[],
  own: Set<string>,
  taken: (id: string) => boolean = () => false,
): { readonly copies: Copy[]; readonly parts: readonly PartFile[] } {
  const copies: Copy[] = []
  const made = parts.map((part) => {
    const to = freeId(part.id, 'part', (id) => own.has(id) || taken(id))
    own.add(to)
    copies.push({ from: part.id, to })
    return { ...part, id: to }
  })
  return { copies, parts: made }
}
