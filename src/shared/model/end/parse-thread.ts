import { fail, type Issue, issue, ok, type Result } from '../../result/result.ts'
import type { Scan } from './scan.ts'
import { coarseMetricThread, metricThread, pipeThread, threadsNear, unifiedSeries, unifiedThread, unifiedThreadsOf } from './threads.ts'
import type { Sex, Thread, ThreadFamily } from './types.ts'

const FRACTION = String.raw`\d+\s*/\s*\d+`
const INCH_SIZE = String.raw`(?:(?:#|no\.?\s*)\d+|\d+(?:\s+|-)${FRACTION}|${FRACTION}|\d*\.\d+|\d+)`

const PER_INCH = String.raw`(?:tpi|threads?\s*per\s*inch)`
/** "7/8-14 UNF-2A", "7/8 x 14", "7/8 14 tpi": size, threads per inch, series, class */
const UNIFIED = new RegExp(
  String.raw`(?<![\w/.-])(${INCH_SIZE})(?:\s*in|")?(?:\s*[-x]\s*|\s+(?=\d+\s*${PER_INCH}))(\d+(?:\.\d+)?)\s*${PER_INCH}?\s*(unc|unf|unef|uns|un)?(?:\s*-?\s*([123][ab]))?(?![\w/.])`,
)
/** "5/8 UNF", "1/2 UNC-2A": the series names the pitch */
const UNIFIED_BY_SERIES = new RegExp(
  String.raw`(?<![\w/.-])(${INCH_SIZE})(?:\s*in|")?\s*-?\s*(unc|unf|unef)(?:\s*-?\s*([123][ab]))?(?![\w/.-])`,
)
/** "M18x1.5-6g", "m18 x 1,5", "M18-1.5", "M12" */
const METRIC = /(?<![\w/.])m\s*(\d+(?:[.,]\d+)?)(?:\s*(?:x|-|pitch)\s*(\d*[.,]?\d+)(?![gh\d]))?(?:\s*-?\s*(\d[gh](?:\d[gh])?))?(?![\w/])/
const PIPE_SIZE = String.raw`(?:\d+(?:\s+|-)${FRACTION}|${FRACTION}|\d+)`
/** "3/8 NPT", "3/8-18 NPTF" */
const AMERICAN_PIPE = new RegExp(String.raw`(?<![\w/.-])(${PIPE_SIZE})(?:\s*in|")?\s*(?:-\s*(\d+(?:\.\d+)?))?\s*(nptf|npt)(?!\w)`)
const AMERICAN_PIPE_TURNED = new RegExp(String.raw`(?<!\w)(nptf|npt)\s*(${PIPE_SIZE})(?:\s*in|")?(?:-\s*(\d+(?:\.\d+)?))?(?![\w/.-])`)
/** "G 3/8 A", "R 1/4", "Rc1/2" */
const BRITISH_PIPE = new RegExp(String.raw`(?<!\w)(g|rc|rp|r)\s*(${PIPE_SIZE})(?:\s*in|")?(?:\s*-\s*(\d+))?(?:\s*([ab])(?!\w))?(?![\w/.-])`)
const BRITISH_WORDS = new RegExp(
  String.raw`(?<![\w/.-])(${PIPE_SIZE})(?:\s*in|")?\s*(?:-\s*(\d+))?\s*(bspp|bspt)(?!\w)|(?<!\w)(bspp|bspt)\s*(${PIPE_SIZE})(?:\s*in|")?(?![\w/.-])`,
)

export interface ReadThread {
  readonly thread: Thread
  readonly fitClass?: string
}

/** Takes one thread designation out of the scan; undefined when none is there; issues when one is there that no table has. */
export function takeThread(scan: Scan, sex: Sex | null): Result<ReadThread> | undefined {
  return takePipe(scan, sex) ?? takeMetric(scan) ?? takeUnified(scan) ?? takeBySeries(scan)
}

export function takeMetric(scan: Scan): Result<ReadThread> | undefined {
  const m = scan.take(METRIC)
  if (!m) return undefined
  const major = Number((m[1] as string).replace(',', '.'))
  const typed = m[0].trim()
  if (m[2] === undefined) {
    const coarse = coarseMetricThread(major)
    return coarse ? ok(withClass(coarse, m[3])) : fail(unknownThread(typed, 'metric', major / 1000, undefined))
  }
  const pitch = Number(m[2].replace(',', '.'))
  const thread = metricThread(major, pitch)
  return thread ? ok(withClass(thread, m[3])) : fail(unknownThread(typed, 'metric', major / 1000, pitch / 1000))
}

export function takeUnified(scan: Scan): Result<ReadThread> | undefined {
  const m = scan.take(UNIFIED)
  if (!m) return undefined
  const size = inchSize(m[1] as string)
  const tpi = Number(m[2])
  const typed = m[0].trim()
  if (size === undefined) return fail(issue('end.not_understood', [], { typed }))
  const thread = unifiedThread(size.name, tpi) ?? (/^\d+$/.test(size.name) ? unifiedThread(`#${size.name}`, tpi) : undefined)
  if (!thread) {
    const others = unifiedThreadsOf(size.name).map((t) => t.designation)
    return fail(unknownThread(typed, 'unified', size.inches * 0.0254, 0.0254 / tpi, others))
  }
  const series = unifiedSeries(thread.designation)
  const said = m[3]?.toUpperCase()
  // a special (UNS) size goes by many names in the trade and "UN" says nothing; any other series must be the one of the size
  if (said !== undefined && said !== 'UN' && series !== 'UNS' && said !== series) {
    return fail(issue('end.contradicts', [], { typed, said, is: `${thread.designation} ${series}` }))
  }
  return ok(withClass(thread, m[4]?.toUpperCase()))
}

/** The coarse, fine and extra-fine series have one pitch a size (ASME B1.1); the constant-pitch and special ones do not. */
function takeBySeries(scan: Scan): Result<ReadThread> | undefined {
  const m = scan.take(UNIFIED_BY_SERIES)
  if (!m) return undefined
  const size = inchSize(m[1] as string)
  if (size === undefined) return fail(issue('end.not_understood', [], { typed: m[0].trim() }))
  const name = unifiedThreadsOf(size.name).length > 0 ? size.name : `#${size.name}`
  const sized = unifiedThreadsOf(name)
  const thread = sized.find((t) => unifiedSeries(t.designation) === m[2]?.toUpperCase())
  if (thread) return ok(withClass(thread, m[3]?.toUpperCase()))
  const others = sized.map((t) => t.designation)
  return fail(unknownThread(m[0].trim(), 'unified', size.inches * 0.0254, undefined, others))
}

/** @param sex as said: "BSPT female" is the inside thread Rc */
export function takePipe(scan: Scan, sex: Sex | null = null): Result<ReadThread> | undefined {
  const american = scan.take(AMERICAN_PIPE)
  if (american) return pipe(american[3] as ThreadFamily, american[1] as string, american[2], american[0])
  const turned = scan.take(AMERICAN_PIPE_TURNED)
  if (turned) return pipe(turned[1] as ThreadFamily, turned[2] as string, turned[3], turned[0])
  const words = scan.take(BRITISH_WORDS)
  if (words) {
    const family = (words[3] ?? words[4]) === 'bspp' ? 'g' : sex === 'female' ? 'rc' : 'r'
    return pipe(family, (words[1] ?? words[5]) as string, words[2], words[0])
  }
  const british = scan.take(BRITISH_PIPE)
  if (british) return pipe(british[1] as ThreadFamily, british[2] as string, british[3], british[0], british[4]?.toUpperCase())
  return undefined
}

function pipe(family: ThreadFamily, size: string, tpi: string | undefined, typed: string, fitClass?: string): Result<ReadThread> {
  const named = inchSize(size)
  const thread = named && pipeThread(family, named.name)
  if (!thread) return fail(issue('end.unknown_thread', [], { typed: typed.trim(), family, near: [], others: [] }))
  if (tpi !== undefined && Math.abs(25.4e-3 / Number(tpi) / thread.pitch - 1) > 1e-6) {
    return fail(issue('end.contradicts', [], { typed: typed.trim(), said: `${tpi} per inch`, is: thread.designation }))
  }
  return ok(withClass(thread, fitClass))
}

function withClass(thread: Thread, fitClass: string | undefined): ReadThread {
  return fitClass === undefined ? { thread } : { thread, fitClass }
}

/** A designation that no table has, with what a person may have measured instead. */
function unknownThread(
  typed: string,
  family: ThreadFamily,
  major: number,
  pitch: number | undefined,
  others: readonly string[] = [],
): Issue {
  const near = pitch === undefined ? [] : threadsNear(major, pitch).map((t) => t.designation)
  return issue('end.unknown_thread', [], {
    typed,
    family,
    near,
    others,
    pitch: pitch ?? null,
    perInch: pitch === undefined ? null : 0.0254 / pitch,
  })
}

/** "1 1/4", "1.25" and "1-1/4" are one size; so are "7/8" and ".875". Decimal sizes count only when they are a 64th of an inch exactly. */
export function inchSize(typed: string): { name: string; inches: number } | undefined {
  const number = /^(?:#|no\.?\s*)(\d+)$/.exec(typed)
  if (number) return { name: `#${Number(number[1])}`, inches: 0.06 + 0.013 * Number(number[1]) }
  const m = /^(?:(\d+)(?:\s+|-))?(\d+)\s*\/\s*(\d+)$/.exec(typed.trim())
  if (m) {
    const [top, bottom] = [Number(m[2]), Number(m[3])]
    return bottom === 0 ? undefined : nameOf(Number(m[1] ?? 0) + top / bottom)
  }
  return nameOf(Number(typed))
}

function nameOf(inches: number): { name: string; inches: number } | undefined {
  const sixtyFourths = inches * 64
  if (!Number.isFinite(inches) || inches <= 0 || Math.abs(sixtyFourths - Math.round(sixtyFourths)) > 1e-9) return undefined
  let top = Math.round(sixtyFourths) % 64
  let bottom = 64
  while (top > 0 && top % 2 === 0) {
    top /= 2
    bottom /= 2
  }
  const whole = Math.floor(inches + 1e-9)
  const fraction = top === 0 ? '' : `${top}/${bottom}`
  const name = whole === 0 ? fraction : fraction === '' ? `${whole}` : `${whole}-${fraction}`
  return { name, inches }
}
