/** A fact that goes with an issue or a piece of evidence: plain, so that it survives IPC and JSON. */
export type Fact = string | number | boolean | null | readonly string[]

/**
 * One thing wrong with an input: what kind (`code`), where (`path`) and the facts a sentence about it needs.
 * The sentence itself is written in `report/text`, so that screen, paper and terminal say the same.
 */
export interface Issue {
  readonly code: string
  readonly path: readonly (string | number)[]
  readonly facts: Readonly<Record<string, Fact>>
}

export type Result<T, E = readonly Issue[]> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly issues: E }

export const ok = <T>(value: T): Result<T, never> => ({ ok: true, value })

export const fail = (...issues: readonly Issue[]): { readonly ok: false; readonly issues: readonly Issue[] } => ({ ok: false, issues })

export const issue = (code: string, path: readonly (string | number)[] = [], facts: Readonly<Record<string, Fact>> = {}): Issue => ({
  code,
  path,
  facts,
})

/** Closes a switch: a new member of a union does not compile until every switch on it knows it. */
export function exhaustive(never: never, what = 'value'): never {
  throw new Error(`unhandled ${what}: ${JSON.stringify(never)}`)
}
