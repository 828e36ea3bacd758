import type { End, Thread, ThreadFamily } from '../../model/end/types.ts'
import { significant } from '../../quantities/print.ts'
import { exhaustive } from '../../result/result.ts'
import type { Show } from '../units.ts'
import { FAMILY_WORDS, taperRate } from './verdicts.ts'

export interface EndFact {
  readonly label: string
  readonly value: string
}

export interface EndWords {
  readonly kind: End['kind']
  /** all of it on one line */
  readonly line: string
  readonly facts: readonly EndFact[]
}

const THREAD_WORDS: Readonly<Record<ThreadFamily, string>> = {
  unified: 'Unified thread',
  metric: 'metric thread',
  npt: 'NPT taper pipe thread',
  nptf: 'NPTF dryseal taper pipe thread',
  g: 'G parallel pipe thread',
  r: 'R taper pipe thread',
  rc: 'Rc taper pipe thread',
  rp: 'Rp parallel pipe thread',
}
const FORM_WORDS = { clamp: 'clamp', tube: 'tube', bore: 'bore', pin: 'pin or bolt', hose: 'hose', barb: 'barb' } as const
const NOT_SAID = 'not said'

/** An end as it was understood: what it is, then fact by fact, the missing ones included. */
export function endWords(end: End, show: Show): EndWords {
  const { what, facts } = describe(end, show)
  const all = [...facts, ...facets(end, show)]
  return { kind: end.kind, line: [what, ...all.map(onLine)].join(', '), facts: [{ label: 'what it is', value: what }, ...all] }
}

/** A size or a sex says by itself what it is; a length does not. */
const onLine = ({ label, value }: EndFact): string =>
  SPEAKS_FOR_ITSELF.includes(label) && value !== NOT_SAID ? value : `${label} ${value}`
const SPEAKS_FOR_ITSELF: readonly string[] = ['size', 'hand', 'sex', 'taper', 'jam nut']

function describe(end: End, show: Show): { readonly what: string; readonly facts: readonly EndFact[] } {
  const length = (si: number | null): string => (si === null ? 'not measured' : show(si, 'length'))
  switch (end.kind) {
    case 'thread':
      return {
        what: THREAD_WORDS[end.thread.family],
        facts: [
          { label: 'size', value: end.thread.designation },
          { label: 'hand', value: end.hand === 'left' ? 'left-hand' : 'right-hand' },
          { label: 'sex', value: end.sex ?? NOT_SAID },
          { label: 'major diameter', value: length(end.thread.major) },
          { label: 'pitch', value: pitch(end.thread, show) },
          ...(end.fitClass === undefined ? [] : [{ label: 'class', value: end.fitClass }]),
        ],
      }
    case 'port':
      return {
        what: FAMILY_WORDS[end.family],
        facts: [
          { label: 'size', value: end.size },
          { label: 'sex', value: end.sex ?? NOT_SAID },
          { label: 'thread', value: end.thread.designation },
          { label: 'pitch', value: pitch(end.thread, show) },
        ],
      }
    case 'taper':
      return {
        what: end.sex === 'male' ? "ball stud's cone" : end.sex === 'female' ? 'tapered hole' : 'taper',
        facts: [
          { label: 'taper', value: end.ratio === null ? 'taper not measured' : taperRate(end.ratio) },
          ...(end.sex === null ? [{ label: 'stud or hole', value: NOT_SAID }] : []),
          { label: 'large diameter', value: length(end.large) },
          ...(end.small === null ? [] : [{ label: 'small diameter', value: length(end.small) }]),
          ...(end.cotterHole === undefined ? [] : [{ label: 'shoulder to cotter hole', value: length(end.cotterHole) }]),
        ],
      }
    case 'round':
      return { what: FORM_WORDS[end.form], facts: [{ label: 'diameter', value: length(end.diameter) }] }
    case 'spline':
      return {
        what: end.sex === 'male' ? 'splined shaft' : end.sex === 'female' ? 'splined hub' : 'splines',
        facts: [
          { label: 'splines', value: end.count === null ? 'not counted' : String(end.count) },
          { label: 'diameter', value: length(end.diameter) },
          ...(end.sex === null ? [{ label: 'shaft or hub', value: NOT_SAID }] : []),
        ],
      }
    case 'tail':
      return { what: FORM_WORDS[end.form], facts: [{ label: 'bore', value: length(end.bore) }] }
    case 'weld':
      return { what: 'place to be welded', facts: [] }
    case 'unmeasured':
      return { what: 'not measured yet', facts: [] }
    default:
      return exhaustive(end, 'kind of end')
  }
}

/** Metric threads are known by their pitch, all others by their threads an inch; the other way of saying it stands behind. */
function pitch({ family, pitch: si }: Thread, show: Show): string {
  const perInch = `${significant(0.0254 / si, 4)} per inch`
  return family === 'metric' ? `${significant(si * 1000, 4)} mm (${perInch})` : `${perInch} (${show(si, 'length')})`
}

function facets(end: End, show: Show): readonly EndFact[] {
  return [
    ...(end.length === undefined ? [] : [{ label: 'length', value: show(end.length, 'length') }]),
    ...(end.material === undefined ? [] : [{ label: 'material', value: end.material }]),
    ...(end.jamNut === undefined ? [] : [{ label: 'jam nut', value: 'adjusts and is locked by a jam nut' }]),
  ]
}
