/** A name for a file made from a title: letters, digits and hyphens, so that it is a good name on every system. */
export function fileName(title: string, ending: string): string {
  const plain = title
    .normalize('NFKD')
    // the accents that NFKD has split off
    .replace(/\p{M}+/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
    .replaceAll(' ', '-')
    .slice(0, 80)
    .toLowerCase()
  return `${plain === '' ? 'build' : plain}.${ending}`
}
