/**
 * The text of an end while it is being understood: every word that is understood is taken out, and what is left over at
 * the end was not understood. So nothing is passed over in silence.
 */
export class Scan {
  private rest: string

  constructor(typed: string) {
    this.rest = ` ${unify(typed)} `
  }

  /** Takes the first match out and gives its groups, or undefined when it is not there. */
  take(pattern: RegExp): RegExpExecArray | undefined {
    const m = pattern.exec(this.rest)
    if (!m) return undefined
    this.rest = `${this.rest.slice(0, m.index)} ${this.rest.slice(m.index + m[0].length)}`
    return m
  }

  /** Takes every match out and gives the words found. */
  takeAll(pattern: RegExp): readonly string[] {
    const found: string[] = []
    for (let m = this.take(pattern); m; m = this.take(pattern)) found.push(m[0])
    return found
  }

  /** Puts one word in the place of another that means the same here. */
  read(pattern: RegExp, as: string): void {
    this.rest = this.rest.replace(pattern, as)
  }

  has(pattern: RegExp): boolean {
    return pattern.test(this.rest)
  }

  get left(): string {
    return this.rest.trim().replace(/\s+/g, ' ')
  }
}

const FRACTION_SIGNS = /[¼½¾⅐-⅞]/g

/**
 * One spelling for what people type in many: lower case, plain quotes, x for ×, one kind of degree sign, single spaces. The
 * signs are put right before NFKC, which makes "″" two marks, "º" the letter o, and runs "1½" together into 11/2.
 */
export function unify(typed: string): string {
  return typed
    .replace(FRACTION_SIGNS, (sign) => ` ${sign.normalize('NFKC')}`)
    .replace(/[º˚]/g, '°')
    .replace(/[″”“]/g, '"')
    .replace(/[′’‘]/g, "'")
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[×✕*]/g, 'x')
    .replace(/[‐‑‒–—−]/g, '-')
    .replace(/⁄/g, '/')
    .replace(/\s+/g, ' ')
    .trim()
}
