import type { Build } from '../model/build.ts'
import type { PlanComparison } from '../planner/compare.ts'
import type { Finding, Severity } from '../planner/plan.ts'
import { column, money, state, text } from './cells.ts'
import type { Block, DocumentCell, State } from './document.ts'
import { findingWords, labelOf } from './text/index.ts'
import { showIn, type UnitSystem } from './units.ts'
import { SEVERITY_WORDS } from './words.ts'

const STATES: Readonly<Record<Severity, State>> = { stops: 'stops', look: 'look', noted: 'noted' }

/**
 * What a change of the build would change, as tables and words: before and after side by side, so that it can be judged before it
 * is kept.
 *
 * @param build the build with the change, for its currency
 */
export function comparisonBlocks(build: Build, comparison: PlanComparison, units: UnitSystem): readonly Block[] {
  const { numbers, gone, come, changed, verdicts, cost, remarks } = comparison
  const show = showIn(units)
  const blocks: Block[] = remarks.map((r) => {
    const { title, why } = findingWords(r, show)
    return { kind: 'paragraph', text: `${title}. ${why}`, tone: 'caution' }
  })
  const judgement = (f: Finding, what: string): DocumentCell[] => [
    text(what),
    state(STATES[f.severity], SEVERITY_WORDS[f.severity]),
    text(findingWords(f, show).title),
  ]
  // a judgement on the same thing that reads as it did before, on other facts: what changed stands among the numbers
  const reads = (f: Finding): string => JSON.stringify([f.severity, f.about, findingWords(f, show).title])
  const [readBefore, readAfter] = [new Set(gone.map(reads)), new Set(come.map(reads))]
  const judgements = [
    ...come.filter((f) => !readBefore.has(reads(f))).map((f) => judgement(f, 'new')),
    ...gone.filter((f) => !readAfter.has(reads(f))).map((f) => judgement(f, 'gone')),
    ...changed
      .filter(({ before, after }) => reads(before) !== reads(after))
      .flatMap(({ before, after }) => [judgement(before, 'before'), judgement(after, 'after')]),
  ]
  if (judgements.length > 0)
    blocks.push({ kind: 'table', caption: 'Judgements', columns: [column('', 0.8), column('', 1.4), column('What', 5)], rows: judgements })
  if (verdicts.length > 0) {
    const name = (id: string) => build.joints.find((j) => j.id === id)?.name ?? id
    blocks.push({
      kind: 'table',
      caption: 'Joints',
      columns: [column('Joint', 3), column('Before', 2), column('After', 2)],
      rows: verdicts.map((v) => [text(name(v.joint)), text(v.before ?? 'not there'), text(v.after ?? 'not there')]),
    })
  }
  if (numbers.length > 0) {
    const shown = (value: number | null, dimension: Parameters<typeof show>[1]) =>
      text(value === null ? 'not there' : show(value, dimension))
    blocks.push({
      kind: 'table',
      caption: 'Numbers',
      columns: [column('Number', 3.4), column('Before', 1.4, 'right'), column('After', 1.4, 'right')],
      rows: numbers.map((n) => [text(labelOf(n.id)), shown(n.before, n.dimension), shown(n.after, n.dimension)]),
    })
  }
  if (cost.before !== cost.after) {
    const currency = build.build.currency ?? null
    blocks.push({ kind: 'paragraph', text: `All parts: ${money(cost.before, currency)} before, ${money(cost.after, currency)} after.` })
  }
  return blocks.length > 0 ? blocks : [{ kind: 'paragraph', text: 'The plan stays as it is.' }]
}
