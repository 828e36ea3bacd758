type Path = readonly (string | number)[]

/**
 * The first place at which `back` does not say what `given` says, or undefined where nothing is lost. A key that is there
 * without a value counts as absent, as it does in JSON.
 */
export function firstLost(given: unknown, back: unknown, path: Path = []): Path | undefined {
  if (typeof given !== 'object' || given === null) return given === back ? undefined : path
  if (typeof back !== 'object' || back === null || Array.isArray(given) !== Array.isArray(back)) return path
  const [ours, theirs] = [given as Record<string, unknown>, back as Record<string, unknown>]
  for (const key of new Set([...Object.keys(ours), ...Object.keys(theirs)])) {
    const lost = firstLost(ours[key], theirs[key], [...path, Array.isArray(given) ? Number(key) : key])
    if (lost) return lost
  }
  return undefined
}
