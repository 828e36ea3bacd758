import { parseEnd } from '../../../shared/model/end/parse.ts'
import { fitEnds } from '../../../shared/planner/fit/fit.ts'
import { verdictWords } from '../../../shared/report/text/verdicts.ts'
import { showIn } from '../../../shared/report/units.ts'
import { readArguments } from '../arguments.ts'
import { EXIT, type Exit } from '../exit.ts'
import { printJson, printLines, printProblems } from '../output.ts'

/** `fit "END" "END"`: the verdict on two ends. Exit 0 when they fit (on a condition too), 1 when not or not known. */
export async function fitCommand(args: readonly string[]): Promise<Exit> {
  const read = readArguments(args, {
    flags: ['json'],
    values: { units: ['inch', 'metric'] },
    least: 2,
    most: 2,
    usage: 'fit "END" "END" [--json] [--units inch|metric]',
  })
  if (!read.ok) return printProblems(read)
  const [typedA, typedB] = read.value.plain as [string, string]
  const [a, b] = [parseEnd(typedA), parseEnd(typedB)]
  if (!a.ok || !b.ok) return printProblems({ issues: [...(a.ok ? [] : a.issues), ...(b.ok ? [] : b.issues)] })
  const verdict = fitEnds(a.value, b.value)
  const words = verdictWords(verdict, showIn(read.value.value('units') === 'metric' ? 'metric' : 'inch'))
  if (read.value.flag('json'))
    printJson({
      format: 'steerwright fit',
      version: 1,
      a: { typed: typedA, end: a.value },
      b: { typed: typedB, end: b.value },
      verdict,
      words,
    })
  else {
    printLines([
      `${typedA}  with  ${typedB}`,
      `  ${words.word}`,
      ...words.reasons.map((r) => `  because ${r}`),
      ...words.conditions.map((c) => `  on condition: ${c}`),
      ...words.measure.map((m) => `  measure: ${m}`),
      ...[...new Set(verdict.reasons.map((r) => r.source.cites))].map((s) => `  rule: ${s}`),
    ])
  }
  return verdict.kind === 'fits' || verdict.kind === 'fits if' ? EXIT.clean : EXIT.stops
}
