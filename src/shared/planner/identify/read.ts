import type { Length } from '../../quantities/dimension.ts'
import { mm } from '../../quantities/make.ts'
import { parseQuantity } from '../../quantities/parse.ts'
import { fail, type Issue, issue, ok, type Result } from '../../result/result.ts'
import type { Measured, Readings, SealSeen, ThreadReadings } from './types.ts'

/** What is assumed of a reading that comes without its uncertainty. Chosen: a calliper, a pitch gauge and a steady hand. */
export const ASSUMED = { diameter: mm(0.05), pitch: mm(0.03), distance: mm(0.2) } as const

/** The names that each kind of question knows. */
const NAMES = {
  thread: ['od', 'id', 'pitch', 'tpi', 'u', 'upitch', 'taper', 'seal', 'sex', 'hand', 'angle'],
  taper: ['d1', 'd2', 'length', 'u', 'ulength'],
  tube: ['od', 'id', 'wall', 'u'],
  spline: ['splines', 'od', 'u'],
} as const satisfies Record<Readings['what'], readonly string[]>
type What = keyof typeof NAMES

const SEALS: readonly (readonly [SealSeen, RegExp])[] = [
  ['none', /^(?:none|none seen|no|plain)$/],
  ['cone 37', /^(?:37|37 ?°?(?: deg)?(?: cone| flare)?|cone 37)$/],
  ['cone 45', /^(?:45|45 ?°?(?: deg)?(?: cone| flare)?|cone 45)$/],
  ['cone 24', /^(?:24|24 ?°?(?: deg)?(?: cone)?|cone 24)$/],
  ['cone 60', /^(?:60|60 ?°?(?: deg)?(?: cone)?|cone 60)$/],
  ['o-ring in chamfer', /^(?:chamfer|o-?ring in chamfer|o-?ring|boss)$/],
  ['o-ring in face', /^(?:face|face seal|o-?ring in face|flat face with o-?ring)$/],
  ['flat face', /^(?:flat|flat face|washer)$/],
  ['inverted seat', /^(?:inverted|inverted seat|inverted flare)$/],
  ['o-ring on nose', /^(?:nose|o-?ring on nose|o-?ring on the nose)$/],
]

/**
 * Reads "od=22.1mm ± 0.05mm", "pitch=1.81mm", "taper=no", … : what was measured, as name=value. A first word "thread", "taper",
 * "tube" or "spline" says what it is; without it the names do.
 *
 * @returns the readings, or every fault at once: `identify.unknown_name`, `.twice`, `.not_allowed`, `.missing`, `.contradicts`,
 *   and `quantity.*` with the name as path
 */
export function readReadings(words: readonly string[]): Result<Readings> {
  const [first, ...rest] = words
  const named = first !== undefined && Object.hasOwn(NAMES, first) ? (first as What) : undefined
  const given = new Given(named === undefined ? words : rest)
  const what = named ?? guess(given)
  given.allow(NAMES[what])
  const readings = READ[what](given)
  return given.issues.length > 0 || readings === undefined ? fail(...given.issues) : ok(readings)
}

function guess(given: Given): What {
  if (given.has('d1') || given.has('d2')) return 'taper'
  if (given.has('splines')) return 'spline'
  return given.has('wall') ? 'tube' : 'thread'
}

/** The name=value words, taken one by one; what is wrong with them gathers in `issues`. */
class Given {
  readonly issues: Issue[] = []
  private readonly values = new Map<string, string>()

  constructor(words: readonly string[]) {
    for (const word of words) {
      const at = word.indexOf('=')
      const name = (at < 0 ? word : word.slice(0, at)).trim().toLowerCase()
      if (this.values.has(name)) this.issues.push(issue('identify.twice', [], { name }))
      else this.values.set(name, at < 0 ? '' : word.slice(at + 1).trim())
    }
  }

  has(name: string): boolean {
    return this.values.has(name)
  }

  allow(names: readonly string[]): void {
    for (const name of this.values.keys()) {
      if (!names.includes(name)) this.issues.push(issue('identify.unknown_name', [], { name, names: [...names] }))
    }
  }

  missing(needs: readonly string[]): undefined {
    this.issues.push(issue('identify.missing', [], { needs: [...needs] }))
    return undefined
  }

  contradicts(one: string, other: string): undefined {
    this.issues.push(issue('identify.contradicts', [], { one, other }))
    return undefined
  }

  length(name: string): Length | undefined {
    const typed = this.values.get(name)
    return typed === undefined ? undefined : this.positive(name, typed)
  }

  /** A reading with its own ± behind it, or with the uncertainty that stands under another name, or with one assumed. */
  measured(name: string, uName: string, assumed: Length): Measured | undefined {
    const typed = this.values.get(name)
    if (typed === undefined) return undefined
    const [reading = '', spread, ...more] = typed.split(/\s*(?:±|\+\/-|\+-)\s*/)
    if (more.length > 0) {
      this.issues.push(issue('quantity.not_a_number', [name], { typed, dimension: 'length' }))
      return undefined
    }
    // "22.1 ± 0.05 mm": the unit behind the ± is the unit of both
    const unit = spread === undefined ? undefined : /[^\d.,\s/][^\d]*$/.exec(spread)?.[0]
    const value = this.positive(name, /\d$/.test(reading) && unit !== undefined ? `${reading} ${unit}` : reading)
    const own = spread === undefined ? undefined : this.positive(name, spread)
    const u = own ?? (spread === undefined ? this.length(uName) : undefined)
    if (value === undefined || (spread !== undefined && own === undefined)) return undefined
    return { value, u: u ?? assumed, assumed: u === undefined }
  }

  private positive(name: string, typed: string): Length | undefined {
    const read = parseQuantity(typed, 'length')
    if (!read.ok) {
      this.once(read.issues.map((i) => ({ ...i, path: [name] })))
      return undefined
    }
    if (read.value.si > 0 && read.value.si <= 10) return read.value.si
    this.once([issue('quantity.out_of_range', [name], { typed, dimension: 'length', min: 0, max: null, excludesMin: true })])
    return undefined
  }

  /** One uncertainty serves several readings, and is wrong only once. */
  private once(found: readonly Issue[]): void {
    for (const one of found) if (!this.issues.some((i) => JSON.stringify(i) === JSON.stringify(one))) this.issues.push(one)
  }

  number(name: string, unit: string): number | undefined {
    const typed = this.values.get(name)
    if (typed === undefined) return undefined
    const n = Number(typed.replace(new RegExp(`\\s*${unit}$`, 'i'), ''))
    if (Number.isFinite(n) && n > 0 && n <= 200) return n
    this.issues.push(issue('identify.not_allowed', [name], { name, found: typed, allowed: [] }))
    return undefined
  }

  choice<T>(name: string, allowed: readonly (readonly [T, RegExp])[]): T | undefined {
    const typed = this.values.get(name)
    if (typed === undefined || /^(?:\?|unknown|not known)$/i.test(typed)) return undefined
    const said = typed
      .toLowerCase()
      .replace(/º|˚/g, '°')
      .replace(/[‐‑–—]/g, '-')
    const found = allowed.find(([, pattern]) => pattern.test(said))
    if (!found) this.issues.push(issue('identify.not_allowed', [name], { name, found: typed, allowed: allowed.map(([v]) => String(v)) }))
    return found?.[0]
  }
}

const READ: { readonly [K in What]: (given: Given) => Readings | undefined } = {
  thread: readThread,
  taper: (g) => {
    const one = g.measured('d1', 'u', ASSUMED.diameter)
    const other = g.measured('d2', 'u', ASSUMED.diameter)
    const apart = g.measured('length', 'ulength', ASSUMED.distance)
    const needs = ['d1', 'd2', 'length'].filter((name) => !g.has(name))
    if (needs.length > 0) return g.missing(needs)
    return one && other && apart && { what: 'taper', one, other, apart }
  },
  tube: (g) => {
    const outside = g.measured('od', 'u', ASSUMED.diameter)
    const inside = g.measured('id', 'u', ASSUMED.diameter)
    const wall = g.measured('wall', 'u', ASSUMED.diameter)
    if (!g.has('od') && !g.has('id') && !g.has('wall')) return g.missing(['od', 'id', 'wall'])
    if (outside && inside && inside.value >= outside.value) return g.contradicts('od', 'id')
    return { what: 'tube', ...(outside && { outside }), ...(inside && { inside }), ...(wall && { wall }) }
  },
  spline: (g) => {
    const count = g.number('splines', 'splines?')
    const diameter = g.measured('od', 'u', ASSUMED.diameter)
    if (!g.has('splines') && !g.has('od')) return g.missing(['splines', 'od'])
    return { what: 'spline', ...(count === undefined ? {} : { count }), ...(diameter && { diameter }) }
  },
}

function readThread(g: Given): ThreadReadings | undefined {
  const od = g.measured('od', 'u', ASSUMED.diameter)
  const id = g.measured('id', 'u', ASSUMED.diameter)
  const pitch = readPitch(g)
  const tapered = g.choice('taper', [
    [true, /^(?:yes|y|true|tapered?)$/],
    [false, /^(?:no|n|false|straight|parallel)$/],
  ])
  const seal = g.choice('seal', SEALS)
  const sex = g.choice('sex', [
    ['male', /^(?:male|m)$/],
    ['female', /^(?:female|f)$/],
  ] as const)
  const hand = g.choice('hand', [
    ['right', /^(?:right|rh|r)$/],
    ['left', /^(?:left|lh|l)$/],
  ] as const)
  const flank = g.choice('angle', [
    [60, /^60 ?°?$/],
    [55, /^55 ?°?$/],
  ] as const)
  if (!g.has('od') && !g.has('id')) return g.missing(['od', 'id'])
  if (g.has('od') && g.has('id')) return g.contradicts('od', 'id')
  if (g.has('pitch') && g.has('tpi')) return g.contradicts('pitch', 'tpi')
  const is = g.has('od') ? 'male' : 'female'
  if (sex !== undefined && sex !== is) return g.contradicts(g.has('od') ? 'od' : 'id', `sex=${sex}`)
  const diameter = od ?? id
  if (!diameter) return undefined
  return {
    what: 'thread',
    diameter,
    sex: is,
    ...(pitch && { pitch }),
    ...(tapered === undefined ? {} : { tapered }),
    ...(seal && { seal }),
    ...(hand && { hand }),
    ...(flank && { flank }),
  }
}

function readPitch(g: Given): Measured | undefined {
  if (!g.has('tpi')) return g.measured('pitch', 'upitch', ASSUMED.pitch)
  const perInch = g.number('tpi', '(?:tpi|per in(?:ch)?|threads per in(?:ch)?)')
  const u = g.length('upitch')
  return perInch === undefined ? undefined : { value: mm(25.4 / perInch), u: u ?? ASSUMED.pitch, assumed: u === undefined }
}
