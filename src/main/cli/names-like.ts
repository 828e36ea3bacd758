/** Names that hold a word of what was asked for, for a hint: at most five. */
export function namesLike(asked: string, names: readonly string[]): readonly string[] {
  const words = asked
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter((w) => w.length > 1)
  return names.filter((name) => words.some((word) => name.includes(word))).slice(0, 5)
}
