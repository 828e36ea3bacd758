import { write as writeEnd } from '../../planner/across/end-text.ts'
import { ASSUMED } from '../../planner/identify/read.ts'
import type {
  Candidate,
  Expected,
  Further,
  IdentifyResult,
  Match,
  Measured,
  Readings,
  RowCandidate,
  SealSeen,
  ThreadCandidate,
} from '../../planner/identify/types.ts'
import { significant } from '../../quantities/print.ts'
import type { Fact, Issue } from '../../result/result.ts'
import type { State } from '../document.ts'
import type { Show } from '../units.ts'
import { FAMILY_WORDS, taperRate } from './verdicts.ts'

export interface CandidateWords {
  readonly name: string
  /** candidates of one rank explain the readings equally well */
  readonly rank: number
  readonly word: string
  readonly state: State
  /** what a real one measures, and what it belongs to */
  readonly says: readonly string[]
  /** how it can be written as an end of a part: bare, and as each hydraulic end it may belong to */
  readonly ends: readonly string[]
}

export interface IdentifyWords {
  /** the readings as they were taken, with what was assumed of them */
  readonly readings: readonly string[]
  readonly answer: string
  readonly candidates: readonly CandidateWords[]
  /** the one further measurement, and what it would read on each */
  readonly further: { readonly measure: string; readonly expected: readonly string[] } | null
}

/** What this can be, in words, as plain JSON. */
export function identifyWords(result: IdentifyResult, show: Show): IdentifyWords {
  return {
    readings: [
      ...readingWords(result.readings, show),
      ...(result.ratio === undefined ? [] : [`taper ${rate(result.ratio.value)} ± ${significant(result.ratio.u * 12, 2)} in/ft`]),
    ],
    answer: answer(result),
    candidates: result.candidates.map((c) => candidateWords(c, show)),
    further: result.further && furtherWords(result.further, show),
  }
}

const rate = (k: number): string => (k > 0 ? taperRate(k) : 'none')

function measured(name: string, m: Measured | undefined, show: Show, by: string): string[] {
  if (m === undefined) return []
  return [
    `${name} ${show(m.value, 'length')} ± ${show(m.u, 'length')}${m.assumed ? ` (assumed, ${by} ±${significant(m.u * 1000, 2)} mm)` : ''}`,
  ]
}

function readingWords(r: Readings, show: Show): string[] {
  switch (r.what) {
    case 'thread':
      return [
        ...measured(r.sex === 'male' ? 'outside diameter at the crests' : 'inside diameter at the crests', r.diameter, show, 'calliper'),
        ...measured('pitch', r.pitch, show, 'pitch gauge').map((t) => `${t}, ${significant(0.0254 / (r.pitch?.value ?? 1), 4)} per inch`),
        ...(r.tapered === undefined ? [] : [r.tapered ? 'tapered' : 'straight']),
        ...(r.seal === undefined ? [] : [`seal seen: ${SEAL_WORDS[r.seal]}`]),
        ...(r.hand === undefined ? [] : [`${r.hand}-hand`]),
        ...(r.flank === undefined ? [] : [`flank angle ${r.flank}°`]),
      ]
    case 'taper':
      return [
        ...measured('one diameter', r.one, show, 'calliper'),
        ...measured('other diameter', r.other, show, 'calliper'),
        ...measured('distance between them', r.apart, show, 'rule and calliper'),
      ]
    case 'tube':
      return [
        ...measured('outside diameter', r.outside, show, 'calliper'),
        ...measured('inside diameter', r.inside, show, 'calliper'),
        ...measured('wall', r.wall, show, 'calliper'),
      ]
    case 'spline':
      return [
        ...(r.count === undefined ? [] : [`${r.count} splines`]),
        ...measured('diameter over the splines', r.diameter, show, 'calliper'),
      ]
  }
}

const SEAL_WORDS: Readonly<Record<SealSeen, string>> = {
  none: 'none',
  'cone 37': 'a 37° cone (74° across)',
  'cone 45': 'a 45° cone (90° across)',
  'cone 24': 'a slim 24° cone (12° a side)',
  'cone 60': 'a 60° cone (30° a side)',
  'o-ring in chamfer': 'an O-ring that goes into a chamfered mouth',
  'o-ring in face': 'an O-ring in a flat face',
  'flat face': 'a flat face for a washer',
  'inverted seat': 'a raised seat inside the port, a double-flared tube on it',
  'o-ring on nose': "an O-ring on the tube's nose, below the thread",
}

const WORD: Readonly<Record<Match, string>> = { consistent: 'consistent', nearly: 'nearly' }

function answer({ candidates, what }: IdentifyResult): string {
  const consistent = candidates.filter((c) => c.match === 'consistent').length
  if (candidates.length === 0)
    return `No ${what === 'taper' ? 'ball-stud taper' : what} in the tables explains these readings. Measure again, or look in the maker's papers.`
  if (consistent === 0)
    return `Nothing fits the readings exactly; ${candidates.length === 1 ? 'one comes' : `${candidates.length} come`} near: a worn or painted one, or a reading that is off.`
  return consistent === 1 ? 'One fits the readings.' : `${consistent} fit the readings: they cannot be told apart by what was measured.`
}

function candidateWords(c: Candidate, show: Show): CandidateWords {
  const { name, says } = c.what === 'thread' ? threadWords(c, show) : rowWords(c, show)
  return { name, rank: c.rank, word: WORD[c.match], state: c.match === 'consistent' ? 'good' : 'unknown', says, ends: endsOf(c, show) }
}

/** The end as the trade writes it and `parseEnd` reads it. */
function endsOf(c: Candidate, show: Show): readonly string[] {
  switch (c.what) {
    case 'thread': {
      const bare = `${c.thread.designation}${c.hand === 'left' ? ' LH' : ''} ${c.sex}`
      if (c.hand === 'left') return [bare]
      const port = ({ family, size }: (typeof c.ports)[number]) =>
        writeEnd({ kind: 'port', family, size, thread: c.thread, sex: c.sex }).typed
      return [bare, ...c.ports.map(port)]
    }
    case 'taper':
      return [`${c.row} taper stud`, `${c.row} taper hole`]
    case 'tube':
      return c.outside === undefined ? [] : [`tube ${show(c.outside, 'length')}`]
    case 'spline':
      return c.count === undefined ? [] : [`${c.count} splines male`, `${c.count} splines female`]
  }
}

function threadWords(c: ThreadCandidate, show: Show): { name: string; says: string[] } {
  const { thread, crest } = c
  const across = c.sex === 'male' ? 'measures' : 'measures inside'
  return {
    name: `${thread.designation}${c.hand === 'left' ? ' LH' : ''} ${c.sex}`,
    says: [
      `a sound one ${across} ${show(crest.least, 'length')} to ${show(crest.most, 'length')} (${crest.source.mark}), pitch ${show(thread.pitch, 'length')} = ${significant(0.0254 / thread.pitch, 4)} per inch, ${thread.flankAngle}°, ${thread.tapered ? 'tapered' : 'straight'}`,
      ...(c.ports.length === 0 ? [] : [`the thread of: ${c.ports.map((p) => `${FAMILY_WORDS[p.family]} ${p.size}`).join(', ')}`]),
      ...(c.sealUnexplained ? ['no hydraulic end known here has this thread and the seal that was seen'] : []),
    ],
  }
}

function rowWords(c: RowCandidate, show: Show): { name: string; says: string[] } {
  return {
    name: c.what === 'spline' ? `${c.row} (${c.count} splines)` : c.what === 'tube' ? `${c.row} in` : c.row,
    says: [
      ...(c.ratio === undefined ? [] : [rate(c.ratio)]),
      ...(c.what === 'tube' && c.outside && c.wall && c.inside
        ? [`outside ${show(c.outside, 'length')}, wall ${show(c.wall, 'length')}, inside ${show(c.inside, 'length')}`]
        : []),
      `table ${c.table}`,
    ],
  }
}

function furtherWords(f: Further, show: Show): { measure: string; expected: readonly string[] } {
  const within = f.within === undefined ? '' : ` to ±${show(f.within, 'length')}`
  return { measure: MEASURE[f.property](f, show, within), expected: f.expected.map((e) => expectedWords(e, f, show)) }
}

const MEASURE: Readonly<Record<Further['property'], (f: Further, show: Show, within: string) => string>> = {
  'pitch over ten turns': (_f, _show, within) => `Measure over ten turns of the thread${within}.`,
  'flank angle': () => 'Hold a 55° and a 60° thread gauge in the thread against the light.',
  taper: (f, show) => `Measure the crests at two places ${show(f.over ?? 0.01, 'length')} apart: do they differ?`,
  seal: () => 'Look how it seals.',
  'crest diameter': (_f, _show, within) => `Measure the crests again with a micrometer${within}, where they are least worn.`,
  papers: () => 'No measurement tells these apart: look for a marking, or in the papers.',
  'difference of diameters': (f, show, within) =>
    `Measure both diameters${within} each, ${show(f.over ?? 0.01, 'length')} apart, or further apart.`,
  wall: (_f, _show, within) => `Measure the wall at a cut end${within}.`,
  'outside diameter': (_f, _show, within) => `Measure the outside diameter${within}.`,
  'number of splines': () => 'Count the splines, as if they went all round.',
  'diameter over splines': (_f, _show, within) => `Measure across the splines${within}.`,
}

function expectedWords(e: Expected, f: Further, show: Show): string {
  if ('looks' in e) {
    if (f.property === 'papers') return `${e.of}: as it is marked`
    const [seal = 'none'] = e.looks
    return `${portName(e.of)}: ${SEAL_WORDS[seal as SealSeen] ?? seal}`
  }
  if (f.property === 'taper') return `${e.of}: ${e.si === 0 ? 'no difference' : `${show(e.si, 'length')} of difference`}`
  if (e.dimension === 'ratio') return `${e.of}: ${e.si}`
  const about = f.property === 'crest diameter' ? 'about ' : ''
  return `${e.of}: ${about}${show(e.si, e.dimension)}${f.property === 'difference of diameters' ? ' of difference' : ''}`
}

/** "flare 37 -6" as it is called: "37° flare -6". */
function portName(of: string): string {
  const family = Object.keys(FAMILY_WORDS).find((name) => of.startsWith(`${name} `)) as keyof typeof FAMILY_WORDS | undefined
  return family === undefined ? of : `${FAMILY_WORDS[family]} ${of.slice(family.length + 1)}`
}

const NAME_WORDS: Readonly<Record<string, string>> = {
  od: 'outside diameter at the crests, such as od=22.1mm',
  id: 'inside diameter at the crests, such as id=20.4mm',
  d1: 'one diameter, such as d1=17.8mm',
  d2: 'the other diameter, such as d2=15.3mm',
  length: 'the distance between the two, such as length=20mm',
  wall: 'wall, such as wall=0.25in',
  splines: 'number of splines, such as splines=36',
}
const list = (f: Fact | undefined): readonly string[] => (Array.isArray(f) ? (f as readonly string[]) : [])

/** What is wrong with readings, as a sentence; undefined for an issue of another room. */
export function readingProblem({ code, facts: f }: Issue): string | undefined {
  switch (code) {
    case 'identify.unknown_name':
      return `"${f.name}" is no name of a reading here. There are: ${list(f.names).join(', ')}.`
    case 'identify.twice':
      return `"${f.name}" is given twice.`
    case 'identify.not_allowed': {
      const allowed = list(f.allowed)
      return `"${f.found}" is not a ${f.name}${allowed.length === 0 ? '' : `; it is one of: ${allowed.join(', ')}`}.`
    }
    case 'identify.missing': {
      const needs = list(f.needs)
      const any = needs.includes('od') ? 'One of these readings is needed' : 'This reading is needed'
      return `${any}: ${needs.map((n) => NAME_WORDS[n] ?? n).join('; ')}.`
    }
    case 'identify.contradicts':
      return `${f.one} and ${f.other} do not go together here.`
    default:
      return undefined
  }
}

/** What is assumed where no uncertainty is said. */
export const ASSUMPTIONS = `Where no uncertainty is given: calliper ±${significant(ASSUMED.diameter * 1000, 2)} mm, pitch ±${significant(ASSUMED.pitch * 1000, 2)} mm.`
