/** An id made from a name: "Tie rod, left" becomes "tie-rod-left". Empty where the name has neither letters of ours nor figures. */
const idOf = (name: string): string =>
  name
    .normalize('NFKD')
    // the accents that NFKD has split off
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')

/**
 * An id that is not taken: made from `name`, or `otherwise` where nothing can be made of it, with a number behind it where
 * there is one like it already ("elbow", "elbow-2", "elbow-3"; a copy of "elbow-2" becomes "elbow-3").
 */
export function freeId(name: string, otherwise: string, taken: (id: string) => boolean): string {
  const whole = idOf(name).slice(0, 64).replace(/-+$/, '') || otherwise
  if (!taken(whole)) return whole
  const stem = whole.replace(/-\d+$/, '') || otherwise
  for (let n = 2; ; n++) {
    const id = `${stem.slice(0, 63 - String(n).length).replace(/-+$/, '')}-${n}`
    if (!taken(id)) return id
  }
}
