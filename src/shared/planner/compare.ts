import type { VerdictKind } from './fit/verdict.ts'
import type { Finding, Plan, PlanNumber } from './plan.ts'

export interface NumberChange {
  readonly id: string
  readonly dimension: PlanNumber['dimension']
  /** base SI; null: not there */
  readonly before: number | null
  readonly after: number | null
}

export interface PlanComparison {
  readonly numbers: readonly NumberChange[]
  readonly gone: readonly Finding[]
  readonly come: readonly Finding[]
  /** the same judgement with other severity or evidence */
  readonly changed: readonly { readonly before: Finding; readonly after: Finding }[]
  readonly verdicts: readonly { readonly joint: string; readonly before: VerdictKind | null; readonly after: VerdictKind | null }[]
  readonly cost: { readonly before: number; readonly after: number }
  /** what is worth saying about the change itself */
  readonly remarks: readonly Finding[]
}

/** Two doubles that came about by another order of adding up are the same number. */
const SAME = 1e-12
/** Steps on the way to another number are looked up in the workings, not listed. */
const isStep = (id: string): boolean => /\.(?:via|u)-|\.[uU]$/.test(id)

/**
 * What a change of the build changes in its plan.
 *
 * @param before @param after plans of the same build without and with the change
 * @returns numbers, findings and verdicts that are not the same, in the order of the plan; nothing where nothing changed
 */
export function comparePlans(before: Plan, after: Plan): PlanComparison {
  const { gone, come, changed } = findings(before, after)
  return {
    numbers: numbers(before, after),
    gone,
    come,
    changed,
    verdicts: verdicts(before, after),
    cost: { before: before.parts.totalMinor, after: after.parts.totalMinor },
    remarks: [...alloy(before, after, 'tieRod'), ...alloy(before, after, 'dragLink')],
  }
}

function numbers(before: Plan, after: Plan): readonly NumberChange[] {
  const was = new Map(before.numbers.map((n) => [n.id, n]))
  const is = new Map(after.numbers.map((n) => [n.id, n]))
  const same = (a: number, b: number) => Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b))
  const ids = [...is.keys(), ...[...was.keys()].filter((id) => !is.has(id))]
  return ids
    .filter((id) => !isStep(id))
    .flatMap((id): NumberChange[] => {
      const [a, b] = [was.get(id), is.get(id)]
      if (a && b && same(a.si, b.si)) return []
      const dimension = (b ?? a)?.dimension
      return dimension === undefined ? [] : [{ id, dimension, before: a?.si ?? null, after: b?.si ?? null }]
    })
}

const keyOf = ({ code, about, facts }: Finding): string => JSON.stringify([code, about, facts])

function findings(before: Plan, after: Plan): Pick<PlanComparison, 'gone' | 'come' | 'changed'> {
  const was = Map.groupBy(before.findings, keyOf)
  const come: Finding[] = []
  const changed: { before: Finding; after: Finding }[] = []
  for (const finding of after.findings) {
    const match = was.get(keyOf(finding))?.shift()
    if (!match) come.push(finding)
    else if (match.severity !== finding.severity || JSON.stringify(match.evidence) !== JSON.stringify(finding.evidence)) {
      changed.push({ before: match, after: finding })
    }
  }
  const left = new Set([...was.values()].flat())
  return { gone: before.findings.filter((f) => left.has(f)), come, changed }
}

function verdicts(before: Plan, after: Plan): PlanComparison['verdicts'] {
  const was = new Map(before.joints.map((j) => [j.joint, j.verdict.kind]))
  const is = new Map(after.joints.map((j) => [j.joint, j.verdict.kind]))
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((joint) => {
    const [a, b] = [was.get(joint) ?? null, is.get(joint) ?? null]
    return a === b ? [] : [{ joint, before: a, after: b }]
  })
}

/** A stronger alloy of the same modulus in a slender link: the load at which it buckles stays what it was. */
function alloy(before: Plan, after: Plan, key: 'tieRod' | 'dragLink'): readonly Finding[] {
  const id = `strength.${key === 'tieRod' ? 'tie-rod' : 'drag-link'}`
  const of = (plan: Plan, name: string) => plan.numbers.find((n) => n.id === `${id}.${name}`)
  const [a, b] = [of(before, 'critical'), of(after, 'critical')]
  const [yieldBefore, yieldAfter] = [a?.inputs.S_y?.si, b?.inputs.S_y?.si]
  const [eulerBefore, eulerAfter] = [of(before, 'euler')?.si, of(after, 'euler')?.si]
  if (!a || !b || yieldBefore === undefined || yieldAfter === undefined || yieldAfter <= yieldBefore) return []
  if (eulerBefore === undefined || eulerAfter === undefined || Math.abs(eulerAfter / eulerBefore - 1) > 1e-9) return []
  return [
    {
      code: 'strength.alloy_no_help',
      severity: 'noted',
      about: ['forces', key, 'material'],
      facts: { which: key === 'tieRod' ? 'tie rod' : 'drag link' },
      evidence: [
        { name: 'Euler load, before and after', dimension: 'force', si: eulerAfter },
        { name: 'gave way at', dimension: 'force', si: a.si },
        { name: 'gives way at', dimension: 'force', si: b.si },
        { name: 'yield before', dimension: 'pressure', si: yieldBefore },
        { name: 'yield now', dimension: 'pressure', si: yieldAfter },
      ],
      numbers: [`${id}.critical`, `${id}.euler`],
    },
  ]
}
