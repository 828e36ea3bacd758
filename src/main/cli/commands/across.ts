import { parseEnd } from '../../../shared/model/end/parse.ts'
import type { Part } from '../../../shared/model/part.ts'
import { readShelf } from '../../../shared/model/shelf.ts'
import { makeAcrossIndex, wayAcross } from '../../../shared/planner/across/across.ts'
import { adaptersAmong } from '../../../shared/planner/across/shelf.ts'
import { type AcrossWords, acrossWords, type ChainWords } from '../../../shared/report/text/across.ts'
import { showIn } from '../../../shared/report/units.ts'
import { ok, type Result } from '../../../shared/result/result.ts'
import { readArguments } from '../arguments.ts'
import { readText } from '../build-file.ts'
import { EXIT, type Exit } from '../exit.ts'
import { printJson, printLines, printProblems } from '../output.ts'

/** `across "END" "END" [--shelf FILE]`: what joins two ends. Exit 0 when something does or nothing is needed, 1 when nothing can. */
export async function acrossCommand(args: readonly string[]): Promise<Exit> {
  const read = readArguments(args, {
    flags: ['json'],
    values: { units: ['inch', 'metric'], shelf: undefined },
    least: 2,
    most: 2,
    usage: 'across "END" "END" [--shelf FILE] [--json] [--units inch|metric]',
  })
  if (!read.ok) return printProblems(read)
  const [typedA, typedB] = read.value.plain as [string, string]
  const file = read.value.value('shelf')
  const [a, b, shelf] = [parseEnd(typedA), parseEnd(typedB), await partsOf(file)]
  if (!a.ok || !b.ok || !shelf.ok) return printProblems({ issues: [a, b, shelf].flatMap((r) => (r.ok ? [] : r.issues)) })
  const result = wayAcross(a.value, b.value, makeAcrossIndex(adaptersAmong(shelf.value)))
  const words = acrossWords(result, showIn(read.value.value('units') === 'metric' ? 'metric' : 'inch'))
  if (read.value.flag('json')) {
    printJson({
      format: 'steerwright across',
      version: 1,
      a: { typed: typedA, end: a.value },
      b: { typed: typedB, end: b.value },
      ...result,
      words,
    })
  } else printLines([`${typedA}  to  ${typedB}`, ...lines(words, typedA, typedB)])
  return result.outcome === 'none' ? EXIT.stops : EXIT.clean
}

async function partsOf(file: string | undefined): Promise<Result<readonly Part[]>> {
  if (file === undefined) return ok([])
  const text = await readText(file)
  return text.ok ? readShelf(text.value) : text
}

function lines(words: AcrossWords, a: string, b: string): readonly string[] {
  return [
    `  ${words.answer}`,
    `  as they are: ${words.direct}`,
    ...words.measure.map((m) => `  measure: ${m}`),
    ...words.chains.flatMap((c, i) => ['', `${i === 0 ? 'best' : 'or'}: ${c.title}`, ...chainLines(c, a, b)]),
    ...words.buying.flatMap((c) => ['', `fewer leak points, with something to buy: ${c.title}`, ...chainLines(c, a, b)]),
    ...(words.instead.length > 0 ? [''] : []),
    ...words.instead,
  ]
}

function chainLines(chain: ChainWords, a: string, b: string): readonly string[] {
  const meeting = (i: number) => {
    const on = chain.meetings[i]?.conditions ?? []
    return on.length === 0 ? [] : [`      with ${on.join(' and ')}`]
  }
  return [
    `  ${a}`,
    ...chain.pieces.flatMap((p, i) => [
      ...meeting(i),
      `    ${p.name}${p.name === p.id ? '' : ` (${p.id})`}, ${p.from}: ${p.through}`,
      ...p.notes.map((n) => `      ${n}`),
    ]),
    ...meeting(chain.pieces.length),
    `  ${b}`,
  ]
}
