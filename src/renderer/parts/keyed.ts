export interface Keyed<T> {
  readonly key: string
  readonly item: T
}

/** Gives each item a key made of its name; a name that comes again is counted, so that keys differ and stay as items move. */
export function keyed<T>(items: readonly T[], nameOf: (item: T) => string): readonly Keyed<T>[] {
  const seen = new Map<string, number>()
  return items.map((item) => {
    const name = nameOf(item)
    const count = (seen.get(name) ?? 0) + 1
    seen.set(name, count)
    return { key: `${name} ${count}`, item }
  })
}
