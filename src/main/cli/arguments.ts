import { parseArgs } from 'node:util'
import { fail, issue, ok, type Result } from '../../shared/result/result.ts'

interface Options {
  /** options that take a value, with the values allowed (undefined: any) */
  readonly values?: Readonly<Record<string, readonly string[] | undefined>>
  readonly flags?: readonly string[]
  readonly short?: Readonly<Record<string, string>>
  /** how many plain arguments at least and at most */
  readonly least: number
  readonly most: number
  readonly usage: string
}

export interface Arguments {
  readonly plain: readonly string[]
  readonly value: (name: string) => string | undefined
  readonly flag: (name: string) => boolean
}

/** Reads a command's arguments; anything not understood is `cli.usage` or `cli.not_allowed`. */
export function readArguments(args: readonly string[], options: Options): Result<Arguments> {
  const shorts = Object.fromEntries(Object.entries(options.short ?? {}).map(([short, long]) => [long, short]))
  const config = Object.fromEntries([
    ...Object.keys(options.values ?? {}).map((name) => [
      name,
      { type: 'string' as const, ...(shorts[name] ? { short: shorts[name] } : {}) },
    ]),
    ...(options.flags ?? []).map((name) => [name, { type: 'boolean' as const }]),
  ])
  let read: { values: Record<string, unknown>; positionals: string[] }
  try {
    read = parseArgs({ args: guardNegatives(args), options: config, allowPositionals: true, strict: true })
  } catch (error) {
    return fail(issue('cli.usage', [], { says: error instanceof Error ? (error.message.split('. ')[0] ?? '') : '', usage: options.usage }))
  }
  const plain = read.positionals.map(unguard)
  if (plain.length < options.least || plain.length > options.most) {
    return fail(
      issue('cli.usage', [], {
        says: plain.length < options.least ? 'Something is missing' : `"${plain[options.most]}" is one too many`,
        usage: options.usage,
      }),
    )
  }
  for (const [name, allowed] of Object.entries(options.values ?? {})) {
    const value = read.values[name]
    if (typeof value === 'string' && allowed && !allowed.includes(value)) {
      return fail(issue('cli.not_allowed', [], { option: `--${name}`, found: value, allowed: [...allowed] }))
    }
  }
  return ok({
    plain,
    value: (name) => (typeof read.values[name] === 'string' ? unguard(read.values[name] as string) : undefined),
    flag: (name) => read.values[name] === true,
  })
}

const GUARD = '\u0000'

/** "-6 37° flare male" is an end, not an option: what starts with a hyphen and a digit is kept from the option reader. */
const guardNegatives = (args: readonly string[]): string[] => args.map((a) => (/^-\d/.test(a) ? `${GUARD}${a}` : a))
const unguard = (text: string): string => (text.startsWith(GUARD) ? text.slice(1) : text)
