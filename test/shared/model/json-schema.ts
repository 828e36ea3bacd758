/**
 * As much of a JSON Schema validator (draft 2020-12) as the exchange file's schema needs. A keyword that it does not know
 * throws, so that no part of the schema is passed over.
 */
interface Schema {
  readonly [keyword: string]: unknown
}
const SAYS_NOTHING = ['$schema', '$id', 'title', 'description', 'examples', 'format', '$defs']

/** Where the value breaks the schema; empty when it does not. */
export function faults(schema: Schema, value: unknown, path = ''): string[] {
  return Object.entries(schema).flatMap(([keyword, want]) => broken(schema, keyword, want, value, path))
}

function broken(schema: Schema, keyword: string, want: unknown, value: unknown, path: string): string[] {
  const unless = (good: boolean): string[] => (good ? [] : [`${path || '/'} ${keyword} ${JSON.stringify(want)?.slice(0, 80)}`])
  const object = typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Record<string, unknown>) : undefined
  switch (keyword) {
    case 'type':
      return unless(typeOf(value) === want || (want === 'number' && typeof value === 'number'))
    case 'const':
      return unless(value === want)
    case 'enum':
      return unless((want as unknown[]).includes(value))
    case 'pattern':
      return unless(typeof value !== 'string' || new RegExp(want as string, 'u').test(value))
    case 'minLength':
      return unless(typeof value !== 'string' || [...value].length >= (want as number))
    case 'maxLength':
      return unless(typeof value !== 'string' || [...value].length <= (want as number))
    case 'minimum':
      return unless(typeof value !== 'number' || value >= (want as number))
    case 'maximum':
      return unless(typeof value !== 'number' || value <= (want as number))
    case 'minItems':
      return unless(!Array.isArray(value) || value.length >= (want as number))
    case 'maxItems':
      return unless(!Array.isArray(value) || value.length <= (want as number))
    case 'required':
      return unless(!object || (want as string[]).every((key) => Object.hasOwn(object, key)))
    case 'additionalProperties':
      if (want !== false) throw new Error('only "additionalProperties: false" is known')
      return unless(!object || Object.keys(object).every((key) => Object.hasOwn(schema.properties as object, key)))
    case 'properties':
      return Object.entries(want as Record<string, Schema>).flatMap(([key, inner]) =>
        object && Object.hasOwn(object, key) ? faults(inner, object[key], `${path}/${key}`) : [],
      )
    case 'items':
      return Array.isArray(value) ? value.flatMap((item, i) => faults(want as Schema, item, `${path}/${i}`)) : []
    case 'anyOf':
      return unless((want as Schema[]).some((inner) => faults(inner, value, path).length === 0))
    case 'oneOf':
      return unless((want as Schema[]).filter((inner) => faults(inner, value, path).length === 0).length === 1)
    default:
      if (SAYS_NOTHING.includes(keyword)) return []
      throw new Error(`unknown keyword ${keyword} at ${path}`)
  }
}

function typeOf(value: unknown): string {
  if (value === null) return 'null'
  if (Array.isArray(value)) return 'array'
  return Number.isInteger(value) ? 'integer' : typeof value
}
