import type { PartFile, PartKind } from '../../../shared/model/part.ts'
import { keysOf } from '../fields/kinds.ts'

/** An end while it is being typed. */
export interface EndForm {
  /** keeps its place on the screen while ends are moved */
  readonly key: number
  /** the name it had in the part that the fields were laid out from; null for an end that is new */
  readonly was: string | null
  readonly name: string
  readonly connection: string
  readonly leftOpen: boolean
  readonly note: string
}

/** A part while it is being typed: every field the text that stands in it. Fields of other kinds are kept, should the kind change back. */
export interface PartForm {
  readonly kind: PartKind
  readonly id: string
  /** the id still follows the name, since nobody has written it */
  readonly idFollows: boolean
  readonly values: Readonly<Record<string, string>>
  readonly ends: readonly EndForm[]
}

let lastKey = 0
/** A key for an end that is new on the screen. */
export const newKey = (): number => ++lastKey

/** A name as an id: small letters, figures and hyphens. */
export const idFrom = (name: string): string =>
  name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 56)
    .replace(/-+$/, '')

/** The id itself, or with the next number behind it where it is taken. */
export function freeId(wanted: string, taken: ReadonlySet<string>): string {
  const base = wanted === '' ? 'part' : wanted
  if (!taken.has(base)) return base
  for (let count = 2; ; count += 1) if (!taken.has(`${base}-${count}`)) return `${base}-${count}`
}

export const blankForm = (kind: PartKind): PartForm => ({ kind, id: '', idFollows: true, values: { state: 'to order' }, ends: [] })

export const endForm = (end: Partial<EndForm> = {}): EndForm => ({
  was: null,
  name: '',
  connection: '',
  leftOpen: false,
  note: '',
  ...end,
  // whatever end it is made like, it is another
  key: newKey(),
})

/** A part laid out in fields. */
export function formOf(part: PartFile): PartForm {
  const known: Readonly<Record<string, unknown>> = part
  const values = Object.fromEntries(keysOf(part.kind).flatMap((key) => (known[key] === undefined ? [] : [[key, String(known[key])]])))
  const ends = part.ends.map((end) =>
    endForm({ was: end.name, name: end.name, connection: end.connection, leftOpen: end.leftOpen === true, note: end.note ?? '' }),
  )
  return { kind: part.kind, id: part.id, idFollows: false, values, ends }
}

/**
 * The part that the fields say, as a file would hold it. Nothing is checked here: the program does that, and says what is
 * wrong field by field.
 */
export function partOf(form: PartForm): PartFile {
  const values = keysOf(form.kind).flatMap((key): (readonly [string, unknown])[] => {
    const typed = (form.values[key] ?? '').trim()
    if (typed === '') return []
    return [[key, key === 'quantity' && /^\d+$/.test(typed) ? Number(typed) : typed]]
  })
  const ends = form.ends.map((end) => ({
    name: end.name.trim(),
    connection: end.connection.trim(),
    ...(end.leftOpen ? { leftOpen: true } : {}),
    ...(end.note.trim() === '' ? {} : { note: end.note.trim() }),
  }))
  return {
    kind: form.kind,
    id: form.idFollows ? idFrom(form.values.name ?? '') : form.id,
    ...Object.fromEntries(values),
    ends,
  } as unknown as PartFile
}

/** All that stands in the fields, to the letter, save what is empty. */
const saying = ({ kind, id, idFollows, values, ends }: PartForm): string => {
  const filled = Object.entries(values).filter(([, value]) => value !== '')
  const sorted = filled.sort(([a], [b]) => (a < b ? -1 : 1))
  return JSON.stringify([kind, idFollows ? '' : id, sorted, ends.map(({ key: _, ...end }) => end)])
}

/** What a new part is taken to be until somebody says otherwise. */
export const NEW_KIND: PartKind = 'adapter'

/** Whether the fields say something else than the part they were laid out from, or than a new part's at first. */
export const differs = (form: PartForm, from: PartFile | null): boolean =>
  saying(form) !== saying(from === null ? blankForm(NEW_KIND) : formOf(from))

/** The end names that changed: what each was called, and what it is called now (null: it is gone). */
export function renamedEnds(form: PartForm, from: PartFile): ReadonlyMap<string, string | null> {
  const now = new Map(form.ends.flatMap((end) => (end.was === null ? [] : [[end.was, end.name.trim()] as const])))
  return new Map(from.ends.flatMap(({ name }) => (now.get(name) === name ? [] : [[name, now.get(name) ?? null] as const])))
}
