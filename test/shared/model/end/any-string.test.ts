import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseEnd } from '../../../../src/shared/model/end/parse.ts'
import { allPortSizes } from '../../../../src/shared/model/end/ports.ts'
import { allThreads } from '../../../../src/shared/model/end/threads.ts'
import type { End, PortFamily } from '../../../../src/shared/model/end/types.ts'

const PIECES = [
  ...['7/8', '1-1/4', '1 1/2', '#10', '.875', '3/8', '1/0', '0', '99', '½', '1½', '-6', '#6', '-06', '−8', '6', '10L', '8S', '47', '37'],
  ...[
    '-14',
    '-18',
    '-11.5',
    'M18',
    'M18x1.5',
    'm22×1.75',
    'x1.5',
    ' x ',
    '1,5',
    'G',
    'R',
    'Rc',
    'NPT',
    'NPTF',
    'BSPP',
    'UNF',
    'UNS',
    '-2A',
    '6g',
  ],
  ...['JIC', 'AN', 'ORB', 'O-ring boss', 'IF', '45° flare', '37° flare', '24° cone', 'face seal', 'banjo', 'ISO 6149', 'tube', 'O-ring'],
  ...[
    'taper',
    '1.5 in/ft',
    '1:8',
    '7° half',
    'stud',
    'hole',
    'clamp',
    'bore',
    'pin',
    'hose',
    'barb',
    '36 splines',
    'weld',
    '?',
    'not measured',
  ],
  ...[
    'male',
    'female',
    'LH',
    'RH',
    ',',
    ', ',
    ', large 0.7 in',
    ', jam nut',
    ', length',
    ', in steel',
    ' ',
    '"',
    '″',
    '°',
    'º',
    '\u0000',
    '(',
    '\\',
    '[',
    '$',
  ],
]
const designationLike = fc
  .array(fc.constantFrom(...PIECES), { maxLength: 9 })
  .chain((pieces) => fc.constantFrom(' ', '').map((glue) => pieces.join(glue)))
const codes = /^(?:end|quantity)\.[a-z_]+$/

describe('any string', () => {
  it('is an end or says what is wrong with it, and is always read the same; it never throws', () => {
    fc.assert(
      fc.property(fc.oneof({ weight: 4, arbitrary: designationLike }, fc.string({ unit: 'binary', maxLength: 170 })), (typed) => {
        const read = parseEnd(typed)
        if (!read.ok) {
          expect(read.issues.length).toBeGreaterThan(0)
          for (const { code } of read.issues) expect(code).toMatch(codes)
        }
        expect(parseEnd(typed)).toEqual(read)
        // spaces around it say nothing
        if (typed.length < 157) expect(meaning(parseEnd(`  ${typed} `))).toEqual(meaning(read))
      }),
      { numRuns: 10_000 },
    )
  })

  it('of the longest length is read in a moment', () => {
    // what makes regular expressions slow: long runs that match in many ways
    for (const run of ['1 ', '1/', '-', '1-', 'o-ring ', '37', 'taper ', '0.', '° ', 'm1x', ' ', 'g 1 ', '1 1/', 'in/ft ', 'splines ']) {
      for (const tail of ['', '!', ' stud', 'x', ' hose']) {
        const typed = run.repeat(160).slice(0, 160 - tail.length) + tail
        const start = performance.now()
        parseEnd(typed)
        expect(performance.now() - start, typed).toBeLessThan(100)
      }
    }
  })
})

const meaning = (read: ReturnType<typeof parseEnd>) => (read.ok ? read.value : read.issues.map((i) => i.code))

/** The name that the standard gives to what was read, every figure of it. */
function canonical(end: End): string {
  switch (end.kind) {
    case 'thread':
      return `${end.thread.designation} ${end.hand} ${end.sex}`
    case 'port':
      return `${end.family} ${end.size} ${end.thread.designation} ${end.sex}`
    default:
      return end.kind
  }
}

/** The figures of a designation as they were typed, each number by itself; "1-1/4" and "1 1/4" are three numbers. */
const numbers = (text: string): string[] => text.match(/\d+(?:\.\d+)?/g) ?? []

const FAMILY_NAME: Readonly<Record<PortFamily, string>> = {
  'flare 37': '37° flare',
  'o-ring boss': 'O-ring boss',
  'flare 45': '45° flare',
  'inverted flare': 'inverted flare',
  'face seal': 'face seal',
  'iso 6149': 'ISO 6149',
  'iso 9974': 'ISO 9974',
  'iso 1179': 'ISO 1179',
  'cone 24 light': '24° cone',
  'cone 24 heavy': '24° cone',
  'bsp cone 60': '60° cone',
  banjo: 'banjo',
  'tube o-ring': 'O-ring tube nut',
}
/** Figures that belong to the name of a family and not to a size. */
const OF_FAMILY = /37|45|24|60|6149|9974|1179/

const threadNames = allThreads().map((t) => t.designation)
const portNames = allPortSizes().map((s) => `${s.size} ${FAMILY_NAME[s.family]}`)

function mutants(designation: string): string[] {
  const all: string[] = []
  for (let i = 0; i < designation.length; i++) {
    if (!/\d/.test(designation[i] as string)) continue
    for (let d = 0; d <= 9; d++) if (String(d) !== designation[i]) all.push(`${designation.slice(0, i)}${d}${designation.slice(i + 1)}`)
    all.push(`${designation.slice(0, i)}${designation.slice(i + 1)}`)
    all.push(`${designation.slice(0, i)}1${designation.slice(i)}`)
  }
  return all
}

/** "04" is a way of writing 4, "2/4" of writing 1/2; "M4x0.70" of M4x0.7: what a text says is its value, not its letters. */
function says(text: string): string {
  return text
    .replace(/(?<!\d)\.(?=\d)/g, '0.')
    .replace(/(?<![\d.])0+(?=\d)/g, '')
    .replace(/(\.\d*?)0+(?!\d)/g, '$1')
    .replace(/\.(?!\d)/g, '')
    .replace(/(?:(\d+)[- ])?(\d+)\/(\d+)/g, (_, whole, top, bottom) => lowest(Number(whole ?? 0), Number(top), Number(bottom)))
}
function lowest(whole: number, top: number, bottom: number): string {
  if (bottom === 0) return 'nothing'
  const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b))
  const n = whole * bottom + top
  const g = gcd(n, bottom)
  const [t, b] = [n / g, bottom / g]
  const w = Math.floor(t / b)
  return t % b === 0 ? `${w}` : `${w === 0 ? '' : `${w}-`}${t - w * b}/${b}`
}

describe('one figure wrong', () => {
  it('in a thread: an issue, or the thread that the wrong text names; never some other right one', () => {
    let refused = 0
    for (const name of threadNames) {
      for (const mutant of mutants(name)) {
        const read = parseEnd(mutant)
        if (!read.ok) refused++
        else expect({ mutant, numbers: numbers(says(canonical(read.value))) }).toEqual({ mutant, numbers: numbers(says(mutant)) })
      }
    }
    expect(refused).toBeGreaterThan(1000)
  })

  it('in a port: an issue, or the port that the wrong text names', () => {
    let refused = 0
    for (const name of portNames) {
      for (const mutant of mutants(name)) {
        const read = parseEnd(mutant)
        if (!read.ok) {
          refused++
          continue
        }
        // every number typed must be in what was read, as size, thread or the name of the family
        const said = numbers(says(mutant).replace(OF_FAMILY, ''))
        const is = numbers(says(canonical(read.value)))
        expect({ mutant, missing: said.filter((n) => !is.includes(n)) }).toEqual({ mutant, missing: [] })
        expect({ mutant, kind: read.value.kind }).toEqual({ mutant, kind: 'port' })
      }
    }
    expect(refused).toBeGreaterThan(1000)
  })

  it('in a size said twice: an issue', () => {
    for (const { size, family, thread } of allPortSizes()) {
      if (!size.startsWith('-')) continue
      for (const mutant of mutants(thread.designation)) {
        const read = parseEnd(`${size} ${FAMILY_NAME[family]} ${mutant}`)
        if (!read.ok) continue
        if (says(mutant) !== says(thread.designation))
          expect({ typed: `${size} ${FAMILY_NAME[family]} ${mutant}`, read }).toEqual('an issue')
      }
    }
  })
})
