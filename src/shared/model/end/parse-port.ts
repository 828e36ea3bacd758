import { fail, issue, ok, type Result } from '../../result/result.ts'
import { inchSize, takeMetric, takePipe, takeUnified } from './parse-thread.ts'
import { DASH_FAMILIES, type PortSize, portSizes } from './ports.ts'
import type { Scan } from './scan.ts'
import type { PortFamily } from './types.ts'

/** A flat face with a washer; the thread says which standard. */
const WASHER = 'washer'

/**
 * How the trade says each family. The first that matches wins, so the longer names stand first. Short names may stand against
 * the size: "AN6", "8JIC", "orb-6".
 */
const NAMES: readonly (readonly [PortFamily | typeof WASHER, RegExp])[] = [
  ['inverted flare', /(?<!\w)(?:inverted(?:\s*flare)?|inv\.?\s*flare|if|i\.f\.)(?!\w)/],
  [
    'bsp cone 60',
    /(?<!\w)(?:bsp\s*)?60\s*(?:°|deg(?:rees?)?)\s*cone(?!\w)|(?<!\w)30\s*(?:°|deg(?:rees?)?)\s*(?:cone\s*)?seat(?!\w)|(?<!\w)iso\s*8434-6(?!\w)/,
  ],
  [
    'flare 37',
    /(?<!\w)(?:37\s*(?:°|deg(?:rees?)?)?\s*(?:(?:jic|an)(?:\s*flare)?|flare|cone)|flare\s*37\s*(?:°|deg)?|iso\s*8434-2|sae\s*j514)(?!\w)|(?<![a-z])(?:jic\s*37\s*(?:(?:°|deg(?:rees?)?)(?:\s*flare)?)?(?!\w)|(?:jic|an)(?:\s*flare)?(?![a-z]))/,
  ],
  [
    'flare 45',
    /(?<!\w)(?:45\s*(?:°|deg(?:rees?)?)?\s*flare|flare\s*45\s*(?:°|deg)?|sae\s*j512|sae\s*45\s*(?:°|deg(?:rees?)?)?(?:\s*flare)?|sae\s*flare)(?!\w)/,
  ],
  [
    'o-ring boss',
    /(?<!\w)(?:o-?\s?ring\s*boss|stor|sae\s*j1926(?:-\d)?|iso\s*11926(?:-\d)?|straight[- ]thread\s*o-?ring)(?!\w)|(?<![a-z])orb(?![a-z])/,
  ],
  ['face seal', /(?<!\w)(?:o-?\s?ring\s*)?face[- ]?seal(?!\w)|(?<!\w)(?:sae\s*j1453(?:-\d)?|iso\s*8434-3)(?!\w)|(?<![a-z])orfs(?![a-z])/],
  ['iso 6149', /(?<!\w)iso\s*6149(?:-\d)?(?!\w)/],
  ['iso 9974', /(?<!\w)(?:iso\s*9974(?:-\d)?|din\s*3852(?:-\d)?)(?!\w)/],
  ['iso 1179', /(?<!\w)iso\s*1179(?:-\d)?(?!\w)/],
  ['cone 24 light', /(?<!\w)(?:24\s*(?:°|deg(?:rees?)?)?\s*cone|iso\s*8434-1|din\s*2353|din(?=\s*\d{1,2}\s*[ls](?!\w)))(?!\w)/],
  ['banjo', /(?<!\w)banjo(?!\w)/],
  [WASHER, /(?<!\w)(?:with\s*)?bonded\s*(?:washer|seal)(?!\w)/],
  ['tube o-ring', /(?<!\w)(?:o-?\s?ring\s*tube(?:\s*nut)?|tube\s*o-?\s?ring(?:\s*nut)?)(?!\w)/],
]

/** Takes a hydraulic port's family and size out of the scan; undefined when no family is named. */
export function takePort(scan: Scan, typed: string): Result<PortSize> | undefined {
  for (const [family, pattern] of NAMES) {
    const named = scan.take(pattern)
    if (!named) continue
    if (family === 'cone 24 light') return takeCone(scan, typed)
    if (family === WASHER) return takeThreadSize(scan, scan.has(METRIC_SIZE) ? 'iso 9974' : 'iso 1179', typed)
    if (!DASH_FAMILIES.some((f) => f === family)) return takeThreadSize(scan, family, typed)
    // the O-ring boss with a metric thread is ISO 6149; the inch standards have no such size
    if (/boss|orb/.test(named[0]) && scan.has(METRIC_SIZE)) return takeThreadSize(scan, 'iso 6149', typed)
    scan.take(/(?<!\w)sae(?!\w)/)
    return takeDashSize(scan, family, typed)
  }
  return undefined
}

const METRIC_SIZE = /(?<!\w)m\s*\d/

/** A dash family is named by dash ("-6", "#6", "6"), by thread ("9/16-18") or by tube ("3/8"); two names must agree. */
function takeDashSize(scan: Scan, family: PortFamily, typed: string): Result<PortSize> {
  const sizes = portSizes(family)
  const unknown = (said: string) =>
    fail(issue('end.unknown_size', [], { typed, family, said, sizes: sizes.map((s) => `${s.size} (${s.thread.designation})`) }))
  const thread = takeUnified(scan)
  if (thread && !thread.ok) return thread
  const dash = scan.take(/(?<![\w/.])(?:-|#|size\s*)0?(\d{1,2})(?![\w/.])/)
  const byThread = thread && sizes.find((s) => s.thread.designation === thread.value.thread.designation)
  if (thread && !byThread) return unknown(thread.value.thread.designation)
  const byDash = dash && sizes.find((s) => s.size === `-${Number(dash[1])}`)
  if (dash && !byDash) return unknown(`-${Number(dash[1])}`)
  if (byThread && byDash && byThread !== byDash) {
    return fail(issue('end.contradicts', [], { typed, said: byDash.size, is: `${byThread.size} (${byThread.thread.designation})` }))
  }
  const named = byThread ?? byDash
  if (named) return ok(named)
  const tube = scan.take(/(?<![\w/.-])((?:\d+(?:\s+|-))?\d+\s*\/\s*\d+)(?:\s*in|")?(?:\s*tube)?(?![\w/.])/)
  if (tube) {
    const size = inchSize(tube[1] as string)
    return valueOr(
      sizes.find((s) => s.tube === size?.name),
      () => unknown(`${tube[1]} in tube`),
    )
  }
  const bare = scan.take(/(?<![\w/.-])(\d{1,2})(?![\w/.°])/)
  if (bare)
    return valueOr(
      sizes.find((s) => s.size === `-${Number(bare[1])}`),
      () => unknown(bare[1] as string),
    )
  return fail(issue('end.no_size', [], { typed, family }))
}

function takeThreadSize(scan: Scan, family: PortFamily, typed: string): Result<PortSize> {
  if (family === 'iso 1179' || family === 'bsp cone 60') {
    // these two have G threads and no other, so "1/4 BSP" and a bare "1/4" name one
    scan.read(/(?<!\w)bsp(?!\w)/, 'bspp')
    if (!scan.has(/(?<!\w)(?:bspp|bspt|g|r|rc|rp|nptf?|m)(?![a-z])/)) scan.read(BARE_PIPE_SIZE, ' g $1 ')
  }
  const read = takePipe(scan) ?? takeMetric(scan) ?? takeUnified(scan)
  if (!read) return fail(issue('end.no_size', [], { typed, family }))
  if (!read.ok) return read
  const sizes = portSizes(family)
  const designation = read.value.thread.designation
  return valueOr(
    sizes.find((s) => s.thread.designation === designation),
    () => fail(issue('end.unknown_size', [], { typed, family, said: designation, sizes: sizes.map((s) => s.size) })),
  )
}

/** "1 1/4" or "3/8", and nothing about it that would make it a thread per inch or a decimal */
const BARE_PIPE_SIZE = /(?<![\w/.-])((?:\d+(?:\s+|-))?\d+\s*\/\s*\d+)(?:\s*in|")?(?![\w/.-])/

/** 24° cones: "M16x1.5 24° cone 10L"; the tube and series name the size, the thread may be said as well. */
function takeCone(scan: Scan, typed: string): Result<PortSize> {
  const said = scan.take(/(?<!\w)(\d{1,2})\s*(l|s|light|heavy)(?!\w)/)
  const read = takeMetric(scan)
  if (read && !read.ok) return read
  const heavy = said ? said[2] === 's' || said[2] === 'heavy' : undefined
  const both = [...portSizes('cone 24 light'), ...portSizes('cone 24 heavy')]
  if (said) {
    const size = both.find((s) => s.size === `${Number(said[1])}${heavy ? 'S' : 'L'}`)
    if (!size)
      return fail(
        issue('end.unknown_size', [], { typed, family: 'cone 24', said: `${said[1]}${heavy ? 'S' : 'L'}`, sizes: both.map((s) => s.size) }),
      )
    if (read && read.value.thread.designation !== size.thread.designation) {
      return fail(
        issue('end.contradicts', [], { typed, said: read.value.thread.designation, is: `${size.size} (${size.thread.designation})` }),
      )
    }
    return ok(size)
  }
  if (!read) return fail(issue('end.no_size', [], { typed, family: 'cone 24' }))
  const fitting = both.filter((s) => s.thread.designation === read.value.thread.designation)
  if (fitting.length === 1) return ok(fitting[0] as PortSize)
  return fail(
    issue('end.unknown_size', [], { typed, family: 'cone 24', said: read.value.thread.designation, sizes: fitting.map((s) => s.size) }),
  )
}

function valueOr(found: PortSize | undefined, otherwise: () => Result<never>): Result<PortSize> {
  return found ? ok(found) : otherwise()
}
