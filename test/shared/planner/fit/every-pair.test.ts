import { describe, expect, it } from 'vitest'
import { allPortSizes } from '../../../../src/shared/model/end/ports.ts'
import { allThreads } from '../../../../src/shared/model/end/threads.ts'
import type { PortEnd, Sex, ThreadEnd } from '../../../../src/shared/model/end/types.ts'
import { JOINT_AIDS } from '../../../../src/shared/model/joint.ts'
import { fitEnds } from '../../../../src/shared/planner/fit/fit.ts'
import type { Verdict } from '../../../../src/shared/planner/fit/verdict.ts'

type Screwed = ThreadEnd | PortEnd
const SIDES: readonly (Sex | null)[] = ['male', 'female', null]

/** R is outside, Rc and Rp inside, by their names; every other thread can be either, or not said. */
const sidesOf = (family: string): readonly (Sex | null)[] => (family === 'r' ? ['male'] : /^r[cp]$/.test(family) ? ['female'] : SIDES)

const threads: readonly ThreadEnd[] = allThreads().flatMap((thread) =>
  sidesOf(thread.family).map((sex): ThreadEnd => ({ kind: 'thread', thread, hand: 'right', sex })),
)
const ports: readonly PortEnd[] = allPortSizes().flatMap(({ family, size, thread }) =>
  SIDES.map((sex): PortEnd => ({ kind: 'port', family, size, thread, sex })),
)

const name = (end: Screwed): string =>
  end.kind === 'port' ? `${end.family} ${end.size} ${end.sex}` : `${end.thread.designation} ${end.sex} ${end.hand}`
const good = ({ kind }: Verdict): boolean => kind === 'fits' || kind === 'fits if'

const FLAT_PORTS = ['iso 9974', 'iso 1179']
const sizeOf = (end: ThreadEnd): string => end.thread.designation.replace(/^(?:G|Rc|Rp|R) | NPTF?$/g, '')
const isAmerican = ({ thread: { family } }: Screwed): boolean => family === 'npt' || family === 'nptf'

/** The short list of what may go together without being the same, written down apart from the engine; male first. */
function belongs(male: Screwed, female: Screwed): boolean {
  if (male.kind === 'thread' && female.kind === 'thread') {
    if (isAmerican(male) && isAmerican(female)) return sizeOf(male) === sizeOf(female)
    if (male.thread.family === 'r') return /^r[cp]$/.test(female.thread.family) && sizeOf(male) === sizeOf(female)
    return male.thread === female.thread
  }
  if (male.thread !== female.thread) return false
  // a washer under a shoulder, on a port with a flat face
  if (male.kind === 'thread') return female.kind === 'port' && [...FLAT_PORTS, 'banjo'].includes(female.family)
  // a G thread inside is a port, and its face the seal
  if (female.kind === 'thread') return female.thread.family === 'g' && ['iso 1179', 'banjo'].includes(male.family)
  if (male.family === female.family) return male.size === female.size
  return (male.family === 'banjo' && FLAT_PORTS.includes(female.family)) || (FLAT_PORTS.includes(male.family) && female.family === 'banjo')
}

/** What is wrong with the verdict on a pair; nothing when all is well. */
function wrongWith(a: Screwed, b: Screwed): string | undefined {
  const [one, other] = [fitEnds(a, b), fitEnds(b, a)]
  if (one.kind !== other.kind || one.rule !== other.rule || one.conditions.join() !== other.conditions.join()) return 'not symmetric'
  if (one.measure.join() !== other.measure.join() && one.measure.toSorted().join() !== other.measure.toSorted().join())
    return 'asks for other measures the other way round'
  if (one.kind !== 'not known' && one.reasons.length === 0) return 'no reason'
  if ((one.kind === 'fits if') !== one.conditions.length > 0) return 'conditions without "fits if", or the reverse'
  if ((one.kind === 'not known') !== one.measure.length > 0) return 'something to measure without "not known", or the reverse'
  if (a.sex === null || b.sex === null) return one.kind === 'not known' ? undefined : 'known without knowing the sides'
  if (a.sex === b.sex) return one.kind === 'does not fit' ? undefined : 'two of one side'
  const [male, female] = a.sex === 'male' ? [a, b] : [b, a]
  return good(one) === belongs(male, female) ? undefined : good(one) ? 'fits and should not' : 'should fit'
}

function sweep(as: readonly Screwed[], bs: readonly Screwed[]): { asked: number; faults: readonly string[] } {
  const faults: string[] = []
  let asked = 0
  for (const [i, a] of as.entries()) {
    // of one list against itself each pair once: wrongWith asks it both ways round
    for (let j = as === bs ? i : 0; j < bs.length; j++) {
      const b = bs[j] as Screwed
      asked++
      const fault = wrongWith(a, b)
      if (fault !== undefined) faults.push(`${name(a)} with ${name(b)}: ${fault}`)
    }
  }
  return { asked, faults }
}

describe('every family, size and side with every other', () => {
  it('has the ends of every table', () => {
    expect(allThreads().length).toBeGreaterThan(400)
    expect(allPortSizes().length).toBeGreaterThan(120)
  })

  it.each([
    ['threads with threads', threads, threads, 700_000],
    ['threads with ports', threads, ports, 450_000],
    ['ports with ports', ports, ports, 80_000],
  ] as const)('%s: a verdict, the same both ways round, that lets through what belongs together and nothing else', (_, as, bs, least) => {
    const { asked, faults } = sweep(as, bs)
    expect(asked).toBeGreaterThan(least)
    expect(faults.slice(0, 20)).toEqual([])
  })

  it('left-hand threads: as the right-hand ones among themselves, never with a right-hand one nor with a port', () => {
    const faults: string[] = []
    const males = threads.filter((t) => t.sex === 'male')
    const females: readonly Screwed[] = [...threads.filter((t) => t.sex === 'female'), ...ports.filter((p) => p.sex === 'female')]
    for (const male of males) {
      const left: ThreadEnd = { ...male, hand: 'left' }
      for (const female of females) {
        if (fitEnds(left, female).kind !== 'does not fit') faults.push(`${name(left)} with ${name(female)}`)
        if (female.kind === 'port') continue
        const both = fitEnds(left, { ...female, hand: 'left' })
        if (both.kind !== fitEnds(male, female).kind) faults.push(`${name(left)} with left ${name(female)}`)
      }
    }
    expect(faults.slice(0, 20)).toEqual([])
  })

  it('asks only for aids that a joint can name', () => {
    const asked = new Set<string>()
    for (const a of ports) for (const b of ports) for (const aid of fitEnds(a, b).conditions) asked.add(aid)
    for (const a of threads) for (const b of ports) for (const aid of fitEnds(a, b).conditions) asked.add(aid)
    expect([...asked].filter((aid) => !JOINT_AIDS.some((known) => known === aid))).toEqual([])
    expect([...asked].sort()).toEqual(['bonded washer', 'crush washers'])
  })

  it('lets American pipe go dry only where both are the dryseal form, and every other taper thread with sealant', () => {
    const tapered = threads.filter((t) => t.sex === 'male' && t.thread.tapered)
    for (const male of tapered) {
      for (const female of threads) {
        const verdict = fitEnds(male, female)
        if (!good(verdict)) continue
        const dry = male.thread.family === 'nptf' && female.thread.family === 'nptf'
        expect({ male: name(male), female: name(female), kind: verdict.kind, with: verdict.conditions }).toEqual({
          male: name(male),
          female: name(female),
          kind: dry ? 'fits' : 'fits if',
          with: dry ? [] : ['sealant'],
        })
      }
    }
  })

  it('never calls two straight threads deceiving both ways round: the larger one does not start in the smaller', () => {
    const straight = allThreads().filter((t) => t.family === 'unified' || t.family === 'metric' || t.family === 'g')
    const as = (thread: ThreadEnd['thread'], sex: Sex): ThreadEnd => ({ kind: 'thread', thread, hand: 'right', sex })
    const both: string[] = []
    let deceiving = 0
    for (const [i, one] of straight.entries()) {
      for (const other of straight.slice(i + 1)) {
        const ways = [fitEnds(as(one, 'male'), as(other, 'female')), fitEnds(as(other, 'male'), as(one, 'female'))]
        const wrong = ways.filter((v) => v.kind === 'goes together and is wrong').length
        deceiving += wrong
        if (wrong === 2) both.push(`${one.designation} and ${other.designation}`)
      }
    }
    expect(both).toEqual([])
    expect(deceiving).toBeGreaterThan(100)
  })
})
