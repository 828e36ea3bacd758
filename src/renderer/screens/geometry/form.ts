import type { BuildFile } from '../../../shared/model/build.ts'
import { freeId, idFrom } from '../../parts/editor/form.ts'
import { GROUPS, LIMIT_FIELDS, LIMIT_KINDS, LIMIT_SIDES, type LimitKey } from './fields.ts'

type LimitFile = NonNullable<BuildFile['limits']>[number]

/** One thing that can end the travel, in its fields. */
export interface LimitForm {
  readonly id: string
  readonly what: LimitFile['what']
  readonly side: LimitFile['side']
  readonly values: Readonly<Partial<Record<LimitKey, string>>>
  readonly note: string
}

export interface GeometryForm {
  /** what stands in each field, by its place in the file; "yes" for a tick */
  readonly values: Readonly<Record<string, string>>
  readonly limits: readonly LimitForm[]
}

const PLACES = GROUPS.flatMap((group) => group.fields.map((field) => field.place))

const at = (file: unknown, place: string): unknown =>
  place.split('.').reduce<unknown>((here, step) => (here as Readonly<Record<string, unknown>> | undefined)?.[step], file)

/** The file laid out in fields. */
export function formOf(file: BuildFile): GeometryForm {
  const values = PLACES.flatMap((place) => {
    const value = at(file, place)
    return value === undefined ? [] : [[place, value === true ? 'yes' : String(value)] as const]
  })
  return { values: Object.fromEntries(values), limits: (file.limits ?? []).map(limitForm) }
}

const limitForm = (limit: LimitFile): LimitForm => ({
  id: limit.id,
  what: limit.what,
  side: limit.side,
  values: Object.fromEntries(LIMIT_FIELDS.flatMap(({ key }) => (limit[key] === undefined ? [] : [[key, limit[key]]]))),
  note: limit.note ?? '',
})

/** A new line of the limits. */
export function newLimit(limits: readonly LimitForm[], what: LimitForm['what'], side: LimitForm['side']): LimitForm {
  return { id: freeId(idFrom(`${what} ${side}`), new Set(limits.map((limit) => limit.id))), what, side, values: {}, note: '' }
}

export const kindOf = (text: string): LimitForm['what'] => LIMIT_KINDS.find((kind) => kind === text) ?? 'knuckle stop'
export const sideOf = (text: string): LimitForm['side'] => LIMIT_SIDES.find((side) => side === text) ?? 'both'

const filled = (form: GeometryForm): string => {
  const values = Object.entries(form.values).filter(([, value]) => value.trim() !== '')
  const limits = form.limits.map((limit) => ({ ...limit, values: LIMIT_FIELDS.map(({ key }) => limit.values[key] ?? '') }))
  return JSON.stringify([values.sort(([a], [b]) => (a < b ? -1 : 1)), limits])
}
/** Whether two forms say something else. */
export const differs = (a: GeometryForm, b: GeometryForm): boolean => filled(a) !== filled(b)
export const limitsDiffer = (a: GeometryForm, b: GeometryForm): boolean =>
  differs({ values: {}, limits: a.limits }, { values: {}, limits: b.limits })

/** A file with a value put at a place, or taken away from it; a group that holds nothing any more goes. */
function put(
  file: Readonly<Record<string, unknown>>,
  [step, ...rest]: readonly string[],
  value: unknown,
): Readonly<Record<string, unknown>> {
  if (step === undefined) return file
  const { [step]: old, ...others } = file
  if (rest.length === 0) return value === undefined ? others : { ...file, [step]: value }
  const inner = put((old as Readonly<Record<string, unknown>> | undefined) ?? {}, rest, value)
  return Object.keys(inner).length === 0 ? others : { ...file, [step]: inner }
}

const limitFile = ({ id, what, side, values, note }: LimitForm): LimitFile => ({
  id,
  what,
  side,
  ...Object.fromEntries(LIMIT_FIELDS.flatMap(({ key }) => ((values[key] ?? '').trim() === '' ? [] : [[key, (values[key] ?? '').trim()]]))),
  ...(note.trim() === '' ? {} : { note: note.trim() }),
})

/**
 * The file with what was changed in the fields, and nothing else of it touched.
 *
 * @param from what the fields said when they were laid out
 */
export function withForm(file: BuildFile, form: GeometryForm, from: GeometryForm): BuildFile {
  const changed = PLACES.filter((place) => (form.values[place] ?? '').trim() !== (from.values[place] ?? '').trim())
  const named = changed.some((place) => place.startsWith('axle.')) && file.axle === undefined
  const start = named ? { ...file, axle: { id: 'axle', name: 'Front axle' } } : file
  const next = changed.reduce<Readonly<Record<string, unknown>>>((here, place) => {
    const typed = (form.values[place] ?? '').trim()
    return put(here, place.split('.'), typed === '' ? undefined : typed === 'yes' ? true : typed)
  }, start)
  const { limits: _, ...others } = next as unknown as BuildFile
  if (!limitsDiffer(form, from)) return next as unknown as BuildFile
  return form.limits.length === 0 ? others : { ...others, limits: form.limits.map(limitFile) }
}
