import type { Angle, Dimension, Length, Quantity, Ratio } from '../../quantities/dimension.ts'
import { si } from '../../quantities/dimension.ts'
import { parseQuantity } from '../../quantities/parse.ts'
import { fail, type Issue, issue, ok, type Result } from '../../result/result.ts'
import { takePort } from './parse-port.ts'
import { type ReadThread, takeThread } from './parse-thread.ts'
import { Scan, unify } from './scan.ts'
import type { End, EndFacets, Hand, RoundEnd, Sex, TailEnd } from './types.ts'

const UNKNOWN = /^(?:\?+|not measured|unmeasured|unknown|not known)$/
const LENGTH_FACET = /^(large|small|engaged|through|length|long|thick|wide|width|cotter hole)(?:\s+end)?\s+(.+)$/

/**
 * Reads an end as the trade writes it, on one line: what it is, then facets after commas.
 *
 * Threads "7/8-18 LH female", "M18x1.5 male", "3/8 NPT female", "G 1/4 A male"; ports "-6 37° flare male", "-6 O-ring boss
 * female", "M16x1.5 ISO 6149 female"; tapers "taper 1.5 in/ft stud, large 0.70 in"; cylinders "clamp 1 1/4 in", "tube 1 1/2
 * in", "bore 1/2 in", "pin 1/2 in"; "36 splines 13/16 in male"; "hose 3/8 in", "barb 3/8 in"; "weld"; "not measured".
 * Facets: "large 0.70 in", "small …", "length …", "cotter hole …", "jam nut", "in aluminium".
 *
 * @returns the end, or issues: `end.not_understood`, `end.unknown_thread` (with `near`: what it may be instead),
 *   `end.unknown_size`, `end.no_size`, `end.contradicts`, `end.leftover`, `end.angle_ambiguous`, and `quantity.*`
 */
export function parseEnd(typed: string): Result<End> {
  if (typed.length > 160) return fail(issue('end.too_long', [], { typed: typed.slice(0, 40) }))
  const [head = '', ...tail] = unify(typed)
    .split(/,(?=\s|$)/)
    .map((t) => t.trim())
  if (head === '') return fail(issue('end.not_understood', [], { typed }))
  if (UNKNOWN.test(head)) return withFacets({ kind: 'unmeasured' }, tail, typed)
  const shape = readShape(head, typed)
  const read = shape ?? readThreaded(head, typed)
  return read.ok ? withFacets(read.value, tail, typed) : read
}

/** Tapers, cylinders, splines, hose tails, welds: everything that is not screwed. */
function readShape(head: string, typed: string): Result<End> | undefined {
  if (/^weld(?:ed)?(?: end| on)?$/.test(head)) return ok({ kind: 'weld' })
  const round = /^(clamp|tube(?! ?o-?\s?ring)|bore|hole|eye|pin|bolt|rod-end bore|rod end bore)(?:\s+for)?\s+(.+)$/.exec(head)
  if (round) {
    const word = round[1] as string
    const form: RoundEnd['form'] = word === 'clamp' || word === 'tube' ? word : word === 'pin' || word === 'bolt' ? 'pin' : 'bore'
    return readLength(round[2] as string, (diameter) => ({ kind: 'round', form, diameter }))
  }
  const tail = /^(?:hose\s+)?(barb|hose)\s+(.+)$/.exec(head) ?? /^(?:(?<size>.+?)\s+)(?:hose\s+)?(barb|hose)$/.exec(head)
  if (tail) {
    const word = (tail.groups?.size === undefined ? tail[1] : tail[2]) as string
    const form: TailEnd['form'] = word === 'barb' ? 'barb' : 'hose'
    return readLength((tail.groups?.size ?? tail[2]) as string, (bore) => ({ kind: 'tail', form, bore }))
  }
  const spline = /^(\d{1,3}|\?)\s*[- ]?\s*splines?(?:\s+(?!(?:male|female|shaft|hole)$)(.*?))?(?:\s+(male|female|shaft|hole))?$/.exec(head)
  if (spline) {
    const sex: Sex | null = spline[3] === undefined ? null : spline[3] === 'male' || spline[3] === 'shaft' ? 'male' : 'female'
    const teeth = spline[1] === '?' ? null : Number(spline[1])
    if (spline[2] === undefined || spline[2] === '') return ok({ kind: 'spline', count: teeth, diameter: null, sex })
    return readLength(spline[2].replace(/^x\s*/, ''), (diameter) => ({ kind: 'spline', count: teeth, diameter, sex }))
  }
  const taper = /^(?:taper(?:ed)?\s+)?(.*?)(?:\s*(?<!\w)taper(?:ed)?)?(?:\s*(?<!\w)(stud|hole|male|female))?$/.exec(head)
  const isRate = /^(?:[\d./ -]+in\/ft|\d+(?:\.\d+)?\s*:\s*\d+(?:\.\d+)?)(?:\s+(?:stud|hole|male|female))?$/.test(head)
  if (taper && (isRate || /(?<!\w)taper/.test(head))) return readTaper(taper[1] as string, sexOf(taper[2]), typed)
  return undefined
}

function sexOf(word: string | undefined): Sex | null {
  if (word === undefined) return null
  return word === 'stud' || word === 'male' ? 'male' : 'female'
}

/** A taper's rate: "1:8", "1.5 in/ft", "7.15° included", "3.58° half"; an angle alone does not say which. */
function readTaper(rate: string, sex: Sex | null, typed: string): Result<End> {
  const made = (ratio: Ratio | null): Result<End> => ok({ kind: 'taper', ratio, sex, large: null, small: null })
  const text = rate.trim()
  if (text === '' || UNKNOWN.test(text) || text === 'ratio ?' || text === 'ratio not measured') return made(null)
  const angle = /^(.+?)\s*(half|included)(?:\s*angle)?$/.exec(text)
  if (angle) {
    const read = parseQuantity(angle[1] as string, 'angle')
    if (!read.ok) return read
    const half = ((angle[2] === 'half' ? 1 : 0.5) * read.value.si) as Angle
    return made(si(2 * Math.tan(half), 'ratio'))
  }
  if (/(?:°|deg(?:rees?)?)$/.test(text)) return fail(issue('end.angle_ambiguous', [], { typed }))
  const read = parseQuantity(text, 'ratio')
  if (!read.ok) return read
  if (read.value.si <= 0 || read.value.si > 1)
    return fail(issue('quantity.out_of_range', [], { typed: text, dimension: 'ratio', min: 0, max: 1, excludesMin: true }))
  return made(read.value.si)
}

function readThreaded(head: string, typed: string): Result<End> {
  const scan = new Scan(head)
  const left = scan.take(/(?<!\w)(?:lh|l\.h\.|left[- ]hand(?:ed)?|left)(?!\w)/)
  const right = scan.take(/(?<!\w)(?:rh|r\.h\.|right[- ]hand(?:ed)?|right)(?!\w)/)
  if (left && right) return fail(issue('end.contradicts', [], { typed, said: 'LH', is: 'RH' }))
  const male = scan.take(/(?<!\w)(?:male|external|ext|stud|plug)(?!\w)/)
  const female = scan.take(/(?<!\w)(?:female|internal|int|port|swivel|hole|socket)(?!\w)/)
  if (male && female) return fail(issue('end.contradicts', [], { typed, said: 'male', is: 'female' }))
  const sex: Sex | null = male ? 'male' : female ? 'female' : null
  const hand: Hand = left ? 'left' : 'right'

  const port = takePort(scan, typed)
  if (port) {
    if (!port.ok) return port
    if (left) return fail(issue('end.contradicts', [], { typed, said: 'LH', is: port.value.family }))
    if (scan.left !== '') return fail(issue('end.leftover', [], { typed, left: scan.left }))
    return ok({ kind: 'port', family: port.value.family, size: port.value.size, thread: port.value.thread, sex })
  }
  const thread = takeThread(scan)
  if (!thread) return fail(issue(scan.has(/(?<![\w/])-\d{1,2}(?![\w/])/) ? 'end.dash_without_family' : 'end.not_understood', [], { typed }))
  if (!thread.ok) return thread
  if (scan.left !== '' && scan.left !== 'thread') return fail(issue('end.leftover', [], { typed, left: scan.left }))
  const family = thread.value.thread.family
  // ISO 7-1 names the outside thread R and the inside ones Rc and Rp, so the name says the sex
  const only: Sex | undefined = family === 'r' ? 'male' : family === 'rc' || family === 'rp' ? 'female' : undefined
  if (only !== undefined && sex !== null && sex !== only)
    return fail(issue('end.contradicts', [], { typed, said: sex, is: thread.value.thread.designation }))
  return ok({ kind: 'thread', hand, sex: only ?? sex, ...asTyped(thread.value, typed) })
}

/** A metric class tells inside from outside by capitals (6H, 6g), which the scan has put to lower case. */
function asTyped(read: ReadThread, typed: string): ReadThread {
  if (read.fitClass === undefined || read.thread.family !== 'metric') return read
  const found = new RegExp(read.fitClass, 'i').exec(typed)
  return found ? { ...read, fitClass: found[0] } : read
}

function withFacets(end: End, tail: readonly string[], typed: string): Result<End> {
  let facets: EndFacets & { large?: Length; small?: Length; cotterHole?: Length } = {}
  const issues: Issue[] = []
  const seen = new Set<string>()
  for (const facet of tail) {
    const read = readFacet(facet, end, typed)
    if (!read.ok) issues.push(...read.issues)
    else {
      for (const key of Object.keys(read.value)) {
        if (seen.has(key)) issues.push(issue('end.leftover', [], { typed, left: facet }))
        seen.add(key)
      }
      facets = { ...facets, ...read.value }
    }
  }
  if (issues.length > 0) return fail(...issues)
  if (end.kind === 'taper' && facets.large !== undefined && facets.small !== undefined && facets.large <= facets.small) {
    return fail(issue('end.contradicts', [], { typed, said: 'large', is: 'small' }))
  }
  return ok({ ...end, ...facets } as End)
}

function readFacet(facet: string, end: End, typed: string): Result<EndFacets> {
  if (facet === 'jam nut' || facet === 'with jam nut') return ok({ jamNut: true })
  const material = /^(?:in\s+)?(steel|cast iron|aluminium|aluminum)$/.exec(facet)
  if (material) return ok({ material: material[1] === 'aluminum' ? 'aluminium' : (material[1] as 'steel' | 'cast iron' | 'aluminium') })
  const m = LENGTH_FACET.exec(facet)
  const tapered = end.kind === 'taper'
  const word = m?.[1]
  if (!m || (!tapered && (word === 'large' || word === 'small' || word === 'cotter hole'))) {
    return fail(issue('end.leftover', [], { typed, left: facet }))
  }
  if (UNKNOWN.test(m[2] as string)) return ok({})
  const read = positive(m[2] as string, 'length')
  if (!read.ok) return read
  if (word === 'large' || word === 'small') return ok({ [word]: read.value })
  return ok(word === 'cotter hole' ? { cotterHole: read.value } : { length: read.value })
}

/** A fraction without a unit ("3/8 hose barb") is inches wherever the trade is spoken; any other bare number is not guessed at. */
function readLength(text: string, make: (length: Length | null) => End): Result<End> {
  if (UNKNOWN.test(text)) return ok(make(null))
  const read = positive(text, 'length', text.includes('/') ? 'in' : undefined)
  return read.ok ? ok(make(read.value)) : read
}

function positive<D extends Dimension>(text: string, dimension: D, bareUnit?: string): Result<Quantity<D>> {
  const read = parseQuantity(text, dimension, bareUnit)
  if (!read.ok) return read
  if (read.value.si <= 0) return fail(issue('quantity.out_of_range', [], { typed: text, dimension, min: 0, max: null, excludesMin: true }))
  return ok(read.value.si)
}
