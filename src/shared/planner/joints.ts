import type { Build } from '../model/build.ts'
import { type Joint, splitEndRef } from '../model/joint.ts'
import { indexEnds, type PlacedEnd } from './ends.ts'
import { fitEnds } from './fit/fit.ts'
import type { VerdictKind } from './fit/verdict.ts'
import type { Ledger } from './ledger.ts'
import type { JointVerdict, Severity } from './plan.ts'

/** What a verdict means for the build. Not known stops it too: a steering joint is not put together on a guess. */
const SEVERITY: Readonly<Record<VerdictKind, Severity | null>> = {
  fits: null,
  'fits if': null,
  'does not fit': 'stops',
  'goes together and is wrong': 'stops',
  'not known': 'stops',
}

/** A ball stud that nothing holds in its taper falls out on the road. */
const NEVER_WITHOUT: readonly string[] = ['castle nut and cotter']

const CODE: Readonly<Record<VerdictKind, string>> = {
  fits: '',
  'fits if': '',
  'does not fit': 'fit.does_not_fit',
  'goes together and is wrong': 'fit.wrong',
  'not known': 'fit.not_known',
}

/** The verdict on every joint; findings for those that fail, for conditions not met, and for ends joined twice or not at all. */
export function planJoints(build: Build, ledger: Ledger): readonly JointVerdict[] {
  const ends = indexEnds(build)
  const joined = new Map<string, number>()
  const verdicts = build.joints.map((joint, i) => {
    for (const ref of [joint.a, joint.b]) joined.set(ref, (joined.get(ref) ?? 0) + 1)
    return judge(joint, i, ends, ledger)
  })
  checkEnds(ends, joined, ledger)
  return verdicts
}

function judge(joint: Joint, i: number, ends: ReadonlyMap<string, PlacedEnd>, ledger: Ledger): JointVerdict {
  const [a, b] = [placed(ends, joint.a), placed(ends, joint.b)]
  const verdict = fitEnds(a.end.connection.end, b.end.connection.end)
  const unmet = verdict.conditions.filter((c) => !isMet(c, joint))
  const facts = {
    joint: joint.id,
    partA: a.part.name,
    partB: b.part.name,
    endA: a.end.name,
    endB: b.end.name,
    typedA: a.end.connection.typed,
    typedB: b.end.connection.typed,
  }
  const severity = SEVERITY[verdict.kind]
  if (severity) {
    ledger.add({
      code: CODE[verdict.kind],
      severity,
      about: ['joints', i],
      facts,
      verdict,
      evidence: verdict.reasons.flatMap((r) => r.evidence),
    })
  } else if (unmet.length > 0) {
    ledger.add({
      code: 'fit.condition',
      severity: unmet.some((c) => NEVER_WITHOUT.includes(c)) ? 'stops' : 'look',
      about: ['joints', i, 'with'],
      facts: { ...facts, unmet },
    })
  }
  return { joint: joint.id, a: joint.a, b: joint.b, verdict, unmet }
}

/** A taper may be drawn up by a castle nut with its pin or by a prevailing-torque nut; the other conditions are met by themselves alone. */
function isMet(condition: string, joint: Joint): boolean {
  const named: readonly string[] = joint.with ?? []
  return named.includes(condition) || (condition === 'castle nut and cotter' && named.includes('lock nut'))
}

function placed(ends: ReadonlyMap<string, PlacedEnd>, ref: string): PlacedEnd {
  const found = ends.get(ref)
  if (!found) throw new Error(`joint names ${ref}, which the file check should have refused`)
  return found
}

/** Every end is joined, left open on purpose, or reported; nothing is joined more often than there are parts of it. */
function checkEnds(ends: ReadonlyMap<string, PlacedEnd>, joined: ReadonlyMap<string, number>, ledger: Ledger): void {
  for (const [ref, { part, end, partIndex, endIndex }] of ends) {
    const times = joined.get(ref) ?? 0
    const about = ['parts', partIndex, 'ends', endIndex]
    const { part: id } = splitEndRef(ref)
    const facts = { part: part.name, id, end: end.name, typed: end.connection.typed }
    if (times > (part.quantity ?? 1)) ledger.add({ code: 'end.joined_twice', severity: 'stops', about, facts: { ...facts, times } })
    else if (times === 0 && !end.leftOpen) ledger.add({ code: 'end.not_joined', severity: 'look', about, facts })
    else if (times > 0 && end.leftOpen) ledger.add({ code: 'end.joined_though_open', severity: 'look', about, facts })
  }
}
