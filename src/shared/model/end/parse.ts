import type { Angle, Dimension, Length, Quantity, Ratio } from '../../quantities/dimension.ts'
import { si } from '../../quantities/dimension.ts'
import { parseQuantity } from '../../quantities/parse.ts'
import { fail, type Issue, issue, ok, type Result } from '../../result/result.ts'
import { takePort } from './parse-port.ts'
import { type ReadThread, takeThread } from './parse-thread.ts'
import { portSizes } from './ports.ts'
import { Scan, unify } from './scan.ts'
import type { End, EndFacets, Hand, PortFamily, RoundEnd, Sex, TailEnd, Thread } from './types.ts'

const UNKNOWN = /^(?:\?+|not measured|unmeasured|unknown|not known)$/
const LENGTH_FACET = /^(large|small|engaged|through|length|long|thick|wide|width|cotter hole|wall)(?:\s+end)?\s+(.+)$/
/** Facets that belong to one kind of end only. */
const OF_TAPER: readonly string[] = ['large', 'small', 'cotter hole']

/**
 * Reads an end as the trade writes it, on one line: what it is, then facets after commas.
 *
 * Threads "7/8-18 LH female", "M18x1.5 male", "3/8 NPT female", "G 1/4 A male"; ports "-6 37° flare male", "-6 O-ring boss
 * female", "M16x1.5 ISO 6149 female"; tapers "taper 1.5 in/ft stud, large 0.70 in"; cylinders "clamp 1 1/4 in", "tube 1 1/2
 * in", "bore 1/2 in", "pin 1/2 in"; "36 splines 13/16 in male"; "hose 3/8 in", "barb 3/8 in"; "weld"; "not measured".
 * Facets: "large 0.70 in", "small …", "length …", "cotter hole …", "nut 5/8-18", "wall …", "tilts 16°", "jam nut", "in aluminium".
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
  if (/^weld(?:ed)?(?:[- ](?:end|on|in))?$/.test(head)) return ok({ kind: 'weld' })
  const round = /^(clamp|tube(?! ?o-?\s?ring)|bore|hole|eye|pin|bolt|rod-end bore|rod end bore)(?:\s+for)?\s+(.+)$/.exec(head)
  if (round) {
    const read = readRound(round[1] as string, round[2] as string)
    // "bolt M12x1.75": a bolt by its thread
    const threaded = read.ok || round[1] !== 'bolt' ? read : readThreaded(head, typed)
    return threaded.ok ? threaded : read
  }
  const turned = /^(.+?)\s+(clamp|tube|bore|hole|eye|pin|bolt|rod[- ]end bore)$/.exec(head)
  if (turned) {
    const read = readRound(turned[2] as string, turned[1] as string)
    if (read.ok) return read
  }
  const tail = /^(?:hose\s+)?(barb|hose)\s+(.+)$/.exec(head) ?? /^(?:(?<size>.+?)\s+)(?:hose\s+)?(barb|hose)$/.exec(head)
  if (tail) {
    const word = (tail.groups?.size === undefined ? tail[1] : tail[2]) as string
    const form: TailEnd['form'] = word === 'barb' ? 'barb' : 'hose'
    return readLength((tail.groups?.size ?? tail[2]) as string, (bore) => ({ kind: 'tail', form, bore }))
  }
  const bySize =
    /^(\d+(?:[ -]\d+)?\s*\/\s*\d+)(?:\s*in|")?\s*-\s*(\d{1,3})\s*[- ]?\s*spline[sd]?(?:\s+(male|female|shaft|hole|hub))?$/.exec(head)
  if (bySize) {
    return readLength(bySize[1] as string, (diameter) => ({ kind: 'spline', count: Number(bySize[2]), diameter, sex: sexOf(bySize[3]) }))
  }
  const spline =
    /^(\d{1,3}|\?)\s*[- ]?\s*splines?(?:\s+(?!(?:male|female|shaft|hole|hub)$)(.*?))?(?:\s+(male|female|shaft|hole|hub))?$/.exec(head)
  if (spline) {
    const sex = sexOf(spline[3])
    const teeth = spline[1] === '?' ? null : Number(spline[1])
    if (spline[2] === undefined || spline[2] === '') return ok({ kind: 'spline', count: teeth, diameter: null, sex })
    return readLength(spline[2].replace(/^x\s*/, ''), (diameter) => ({ kind: 'spline', count: teeth, diameter, sex }))
  }
  const taper = /^(?:taper(?:ed)?\s+)?(.*?)(?:\s*(?<!\w)taper(?:ed)?)?(?:\s*(?<!\w)(stud|hole|male|female))?$/.exec(head)
  const isRate = /^(?:[\d./ -]+in\/ft|\d+(?:\.\d+)?\s*:\s*\d+(?:\.\d+)?)(?:\s+(?:stud|hole|male|female))?$/.test(head)
  if (taper && (isRate || /(?<!\w)taper/.test(head))) return readTaper(taper[1] as string, sexOf(taper[2]), typed)
  return undefined
}

function readRound(word: string, size: string): Result<End> {
  const form: RoundEnd['form'] = word === 'clamp' || word === 'tube' ? word : word === 'pin' || word === 'bolt' ? 'pin' : 'bore'
  return readLength(size, (diameter) => ({ kind: 'round', form, diameter }))
}

function sexOf(word: string | undefined): Sex | null {
  if (word === undefined) return null
  return word === 'stud' || word === 'male' || word === 'shaft' ? 'male' : 'female'
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
  const sides = takeSides(scan)
  const hand: Hand = left ? 'left' : 'right'

  const port = takePort(scan, typed)
  if (port) {
    if (!port.ok) return port
    const { family, size, thread } = port.value
    if (left) return fail(issue('end.contradicts', [], { typed, said: 'LH', is: family }))
    return finish(scan, typed, thread, sides(family), (sex) => ({ kind: 'port', family, size, thread, sex }))
  }
  const said = sides(undefined)
  if (said === 'both') return fail(issue('end.contradicts', [], { typed, said: 'male', is: 'female' }))
  const thread = takeThread(scan, said)
  if (!thread) return fail(issue(scan.has(/(?<![\w/])-\d{1,2}(?![\w/])/) ? 'end.dash_without_family' : 'end.not_understood', [], { typed }))
  if (!thread.ok) return thread
  const read = asTyped(thread.value, typed)
  const only = sideOf(read, typed)
  if (only !== undefined && said !== null && said !== only)
    return fail(issue('end.contradicts', [], { typed, said, is: [read.thread.designation, read.fitClass].filter(Boolean).join(' ') }))
  // a swivel nut pulls a cone into a seat; of the nuts with a G thread that is the 60° cone, unless a flat seat is said (practice)
  const cone = sides.words.includes('swivel') && !left && portSizes('bsp cone 60').find((s) => s.thread === read.thread)
  return finish(scan, typed, read.thread, only ?? said, (sex) =>
    cone ? { kind: 'port', family: cone.family, size: cone.size, thread: cone.thread, sex } : { kind: 'thread', hand, sex, ...read },
  )
}

/** Checks that both sides were not said and that every word was understood. */
function finish(scan: Scan, typed: string, thread: Thread, side: Sex | null | 'both', make: (sex: Sex | null) => End): Result<End> {
  if (side === 'both') return fail(issue('end.contradicts', [], { typed, said: 'male', is: 'female' }))
  scan.takeAll(/(?<!\w)(?:thread(?:s|ed)?|fitting)(?!\w)/)
  if (thread.family === 'metric') scan.take(/(?<!\w)metric(?!\w)/)
  return scan.left === '' ? ok(make(side)) : fail(issue('end.leftover', [], { typed, left: scan.left }))
}

/** Families whose nut is the male: it goes into its port over the tube. */
const MALE_NUTS: readonly PortFamily[] = ['inverted flare', 'tube o-ring']

/** Takes the words that say male or female, "MNPT" and "FJIC" among them; what they say of a nut depends on the family. */
function takeSides(scan: Scan): ((family: PortFamily | undefined) => Sex | null | 'both') & { readonly words: readonly string[] } {
  const female = scan.takeAll(/(?<!\w)(?:female|internal|int|port|swivel|hole|socket|cap|bung)(?!\w)/)
  const male = scan.takeAll(/(?<!\w)(?:male|external|ext|stud|plug|bolt)(?!\w)/)
  const nut = scan.takeAll(/(?<!\w|o-ring tube |o-ring |tube )nut(?!\w)/).length > 0
  const letter = scan.take(/(?<!\w)[mf](?=(?:nptf?|jic|orfs|orb|bspp|bspt)(?!\w))|(?<!\w)[mf](?= $)/)?.[0]
  const of = (family: PortFamily | undefined): Sex | null | 'both' => {
    const maleNut = family !== undefined && MALE_NUTS.includes(family)
    const isMale = male.length > 0 || letter === 'm' || (nut && maleNut)
    const isFemale = female.length > 0 || letter === 'f' || (nut && !maleNut)
    return isMale && isFemale ? 'both' : isMale ? 'male' : isFemale ? 'female' : null
  }
  return Object.assign(of, { words: [...female, ...male] })
}

/**
 * The side that a designation says by itself: R is outside and Rc and Rp inside (ISO 7-1); class A is outside and B inside
 * (ASME B1.1); the classes of G are of the outside thread (ISO 228-1); metric classes have a small letter outside, a capital
 * inside (ISO 965-1), which holds where the M was typed as a capital.
 */
function sideOf({ thread, fitClass }: ReadThread, typed: string): Sex | undefined {
  switch (thread.family) {
    case 'r':
      return 'male'
    case 'rc':
    case 'rp':
      return 'female'
    case 'g':
      return fitClass === undefined ? undefined : 'male'
    case 'unified':
      return fitClass === undefined ? undefined : fitClass.endsWith('A') ? 'male' : 'female'
    case 'metric':
      return fitClass === undefined || !typed.includes('M') ? undefined : /[gh]/.test(fitClass) ? 'male' : 'female'
    default:
      return undefined
  }
}

/** A metric class tells inside from outside by capitals (6H, 6g), which the scan has put to lower case. */
function asTyped(read: ReadThread, typed: string): ReadThread {
  if (read.fitClass === undefined || read.thread.family !== 'metric') return read
  const found = new RegExp(read.fitClass, 'i').exec(typed)
  return found ? { ...read, fitClass: found[0] } : read
}

function withFacets(end: End, tail: readonly string[], typed: string): Result<End> {
  let facets: Facets = {}
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

type Facets = EndFacets & { large?: Length; small?: Length; cotterHole?: Length; wall?: Length; nut?: Thread; tilt?: Angle }

function readFacet(facet: string, end: End, typed: string): Result<Facets> {
  const leftover = fail(issue('end.leftover', [], { typed, left: facet }))
  if (facet === 'jam nut' || facet === 'with jam nut') return ok({ jamNut: true })
  const material = /^(?:in\s+)?(steel|cast iron|aluminium|aluminum)$/.exec(facet)
  if (material) return ok({ material: material[1] === 'aluminum' ? 'aluminium' : (material[1] as 'steel' | 'cast iron' | 'aluminium') })
  const nut = /^nut (.+)$/.exec(facet)
  if (nut) {
    const scan = new Scan(nut[1] as string)
    const thread = takeThread(scan, 'male')
    if (end.kind !== 'taper' || !thread || scan.left !== '') return leftover
    return thread.ok ? ok({ nut: thread.value.thread }) : thread
  }
  const tilt = /^tilts? (.+)$/.exec(facet)
  if (tilt) {
    if (end.kind !== 'round' || (end.form !== 'bore' && end.form !== 'pin')) return leftover
    if (UNKNOWN.test(tilt[1] as string)) return ok({})
    const read = positive(tilt[1] as string, 'angle')
    return read.ok ? ok({ tilt: read.value }) : read
  }
  const m = LENGTH_FACET.exec(facet)
  const word = m?.[1] as string
  if (!m || (OF_TAPER.includes(word) && end.kind !== 'taper') || (word === 'wall' && (end.kind !== 'round' || end.form !== 'tube')))
    return leftover
  if (UNKNOWN.test(m[2] as string)) return ok({})
  const read = positive(m[2] as string, 'length')
  if (!read.ok) return read
  if (word === 'large' || word === 'small' || word === 'wall') return ok({ [word]: read.value })
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
