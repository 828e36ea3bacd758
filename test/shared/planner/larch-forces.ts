import type { BuildFile } from '../../../src/shared/model/build.ts'
import { DEMO } from './builds.ts'

type Json = { readonly [key: string]: unknown }
const isObject = (value: unknown): value is Json => typeof value === 'object' && value !== null && !Array.isArray(value)

/** Keys that are objects in both are put together; undefined takes a key away; anything else is put in its place. */
function merged(base: Json, more: Json): Json {
  const out: Record<string, unknown> = { ...base }
  for (const [key, value] of Object.entries(more)) {
    const before = base[key]
    if (value === undefined) delete out[key]
    else out[key] = isObject(before) && isObject(value) ? merged(before, value) : value
  }
  return out
}

/** The corrected demo with some of it changed: "vehicle: { frontAxleLoad }", "forces: { tieRod: { jog } }". */
export const larch = (more: Json = {}): BuildFile => merged(DEMO.corrected as unknown as Json, more) as unknown as BuildFile

/** The same with keys of one part changed. */
export const larchPart = (id: string, more: Json, other: Json = {}): BuildFile => ({
  ...larch(other),
  parts: DEMO.corrected.parts.map((part) => (part.id === id ? (merged(part as unknown as Json, more) as unknown as typeof part) : part)),
})

export const LARCH = larch()
