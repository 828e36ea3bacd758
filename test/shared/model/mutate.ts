import fc from 'fast-check'

type Json = unknown
type Path = readonly (string | number)[]

/** Every place inside a JSON value. */
function places(value: Json, here: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [here]
  return [
    here,
    ...Object.keys(value).flatMap((key) =>
      places((value as Record<string, Json>)[key], [...here, Array.isArray(value) ? Number(key) : key]),
    ),
  ]
}

const deep = (depth: number): Json => JSON.parse(`${'['.repeat(depth)}${']'.repeat(depth)}`)

/** Values that a file might hold in the place of a good one: wrong kinds, wrong units, far too much, and names of the language's own. */
const HOSTILE: readonly Json[] = [
  ...[null, true, false, 0, -1, 1.5, 1e308, '', ' ', 'x', '\u0000', '\ud800', '💥', '../../etc', '<script>', "'; DROP TABLE build; --"],
  ...['NaN', 'NaN mm', 'Infinity mm', '-1 mm', '0 in', '1e99 m', '1/0 in', '1,500 psi', '12 psi', '30°', '1 1/4 in', '1:8', '25 %', 'male'],
  ...[
    '7/8-18 LH female',
    '-6 37° flare male',
    'taper hole',
    'not measured',
    'M22x1.75',
    'tie-rod',
    'tie-rod/left',
    'tie-rod/nowhere',
    'a/b/c',
  ],
  ...['__proto__', 'constructor', 'toString', '2026-02-30', '2026-02-28', '42.50', 'USD', 'x'.repeat(100_000), '1'.repeat(5_000)],
  ...[[], {}, [[]], [null], [{}], { id: 'tie-rod' }, { __proto__: null, toString: 1 }, deep(300), Array.from({ length: 300 }, () => ({}))],
  JSON.parse('{"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}}}'),
]
const KEYS = [
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'hasOwnProperty',
  'id',
  'name',
  'kind',
  'ends',
  'note',
  '',
  '0',
  'length',
  'with',
  'x'.repeat(9_999),
]

interface Mutation {
  readonly what: 'delete' | 'duplicate' | 'replace' | 'insert' | 'swap'
  /** share of the way through all places, so that a mutation means something in any value */
  readonly where: number
  readonly other: number
  /** which of the hostile values: by number, so that a failing case can be printed */
  readonly value: number
  readonly key: string
}

export const mutation: fc.Arbitrary<Mutation> = fc.record({
  what: fc.constantFrom('delete', 'duplicate', 'replace', 'insert', 'swap'),
  where: fc.double({ min: 0, max: 0.999999, noNaN: true }),
  other: fc.double({ min: 0, max: 0.999999, noNaN: true }),
  value: fc.nat(HOSTILE.length - 1),
  key: fc.constantFrom(...KEYS),
})

const at = (value: Json, path: Path): Json => path.reduce<Json>((v, step) => (v as Record<string | number, Json>)[step], value)

/** As JSON.parse does it: "__proto__" becomes a key like any other. */
const set = (holder: object, key: string | number, value: Json): void => {
  Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true })
}

/** The value with one thing wrong in it; the value given is left alone. */
export function mutate(value: Json, { what, where, other, value: number, key }: Mutation): Json {
  const hostile = HOSTILE[number]
  const copy = structuredClone(value)
  const all = places(copy).slice(1)
  const path = all[Math.floor(where * all.length)]
  if (path === undefined) return copy
  const last = path.at(-1) as string | number
  const holder = at(copy, path.slice(0, -1)) as Record<string | number, Json> | Json[]
  const here = at(copy, path)
  switch (what) {
    case 'delete':
      if (Array.isArray(holder)) holder.splice(last as number, 1)
      else delete holder[last]
      break
    case 'duplicate':
      if (Array.isArray(holder)) holder.push(structuredClone(here))
      else set(holder, `${last}2`, structuredClone(here))
      break
    case 'replace':
      set(holder, last, structuredClone(hostile))
      break
    case 'insert':
      if (Array.isArray(holder)) holder.splice(last as number, 0, structuredClone(hostile))
      else set(holder, key, structuredClone(hostile))
      break
    case 'swap':
      set(holder, last, structuredClone(at(copy, all[Math.floor(other * all.length)] as Path)))
      break
  }
  return copy
}

/** Whether a path leads to something in the value, or to a key that is missing from something in it. */
export function leadsSomewhere(value: Json, path: Path): boolean {
  let here = value
  for (const [i, step] of path.entries()) {
    if (typeof here !== 'object' || here === null) return false
    if (!Object.hasOwn(here, step)) return i === path.length - 1
    here = (here as Record<string | number, Json>)[step]
  }
  return true
}
