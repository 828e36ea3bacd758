import type { Candidate, EndText, Procedures, VerdictText } from '../../shared/contract/contract.ts'
import type { Build } from '../../shared/model/build.ts'
import { checkPart } from '../../shared/model/check-part.ts'
import { parseEnd } from '../../shared/model/end/parse.ts'
import type { End } from '../../shared/model/end/types.ts'
import { checkBuild } from '../../shared/model/exchange.ts'
import { splitEndRef } from '../../shared/model/joint.ts'
import type { Part, PartEnd } from '../../shared/model/part.ts'
import { fitEnds } from '../../shared/planner/fit/fit.ts'
import type { Verdict, VerdictKind } from '../../shared/planner/fit/verdict.ts'
import { identify } from '../../shared/planner/identify/identify.ts'
import { readReadings } from '../../shared/planner/identify/read.ts'
import { endWords } from '../../shared/report/text/ends.ts'
import { identifyWords } from '../../shared/report/text/identify.ts'
import { verdictWords } from '../../shared/report/text/verdicts.ts'
import { type Show, showIn } from '../../shared/report/units.ts'
import { type Issue, issue, ok, type Result } from '../../shared/result/result.ts'
import { type Answer, done, refuse } from './answer.ts'
import type { Store } from './store.ts'

type FitProcedures = Pick<Procedures, 'end.read' | 'part.check' | 'fit.ends' | 'fit.candidates' | 'identify'>

/** What fits comes first, what is wrong last; what must be measured stands between. */
const ORDER: readonly VerdictKind[] = ['fits', 'fits if', 'not known', 'goes together and is wrong', 'does not fit']

/** One end, two ends, and the ends of a build. */
export function fitProcedures(store: Store): FitProcedures {
  return {
    'end.read': async ({ typed, units = 'inch' }) => {
      const read = parseEnd(typed)
      return read.ok ? done(endText(read.value, showIn(units))) : refuse(read.issues)
    },

    'part.check': async ({ part, units = 'inch' }) => {
      const checked = checkPart(part)
      if (!checked.ok) return refuse(checked.issues)
      const { ends } = checked.value.part
      return done({ ends: ends.map(({ name, connection }) => ({ name, understood: endText(connection.end, showIn(units)) })) })
    },

    'fit.ends': async ({ a, b, units }) => {
      const read = readTwo(a, b)
      return read.ok ? done(verdictText(fitEnds(...read.value), showIn(units))) : refuse(read.issues)
    },

    identify: async ({ readings, units }) => {
      const read = readReadings(readings)
      return read.ok ? done(identifyWords(identify(read.value), showIn(units))) : refuse(read.issues)
    },

    'fit.candidates': async ({ build, end, units }) => {
      if ('id' in build) return store.build(build.id, (checked) => candidatesFor(checked.build, end, showIn(units)))
      const checked = checkBuild(build.file)
      return checked.ok ? candidatesFor(checked.value.build, end, showIn(units)) : refuse(checked.issues)
    },
  }
}

/** Two ends as typed, or every fault of both, each at "a" or "b". */
export function readTwo(typedA: string, typedB: string): Result<[End, End]> {
  const [a, b] = [parseEnd(typedA), parseEnd(typedB)]
  if (a.ok && b.ok) return ok([a.value, b.value])
  const at = (place: string, read: Result<End>): readonly Issue[] => (read.ok ? [] : read.issues.map((i) => ({ ...i, path: [place] })))
  return { ok: false, issues: [...at('a', a), ...at('b', b)] }
}

const endText = (end: End, show: Show): EndText => {
  const { kind, line, facts } = endWords(end, show)
  return { kind, line, facts: [...facts] }
}

function verdictText(verdict: Verdict, show: Show): VerdictText {
  const { word, state, reasons, conditions, measure } = verdictWords(verdict, show)
  const sources = new Map(verdict.reasons.map(({ source: { cites, mark } }) => [cites, { cites, mark }]))
  return {
    kind: verdict.kind,
    rule: verdict.rule,
    word,
    state,
    reasons: [...reasons],
    conditions: [...conditions],
    measure: [...measure],
    sources: [...sources.values()],
  }
}

function candidatesFor(build: Build, ref: string, show: Show): Answer<{ candidates: Candidate[] }> {
  const own = splitEndRef(ref)
  const asked = build.parts.find((p) => p.id === own.part)?.ends.find((e) => e.name === own.end)
  if (!asked) return refuse([issue('reference.no_such_end', ['end'], { part: own.part, end: own.end ?? '' })])
  const joined = new Set(build.joints.flatMap((j) => [j.a, j.b]))
  const free = build.parts.flatMap((part) =>
    part.id === own.part ? [] : part.ends.filter((end) => !joined.has(`${part.id}/${end.name}`)).map((end) => ({ part, end })),
  )
  const candidates = free.map(({ part, end }) => candidate(part, end, fitEnds(asked.connection.end, end.connection.end), show))
  // what is left open on purpose after what is not; otherwise the order of the build stays
  return done({ candidates: candidates.sort((x, y) => rank(x) - rank(y)) })
}

const rank = ({ kind, leftOpen }: Candidate): number => 2 * ORDER.indexOf(kind) + (leftOpen ? 1 : 0)

function candidate(part: Part, end: PartEnd, verdict: Verdict, show: Show): Candidate {
  const { word, state, reasons, measure } = verdictWords(verdict, show)
  return {
    end: `${part.id}/${end.name}`,
    part: part.name,
    name: end.name,
    connection: end.connection.typed,
    leftOpen: end.leftOpen ?? false,
    kind: verdict.kind,
    word,
    state,
    because: reasons[0] ?? measure[0] ?? null,
  }
}
