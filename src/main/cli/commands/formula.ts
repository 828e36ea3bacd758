import { evaluate, type FormulaCard } from '../../../shared/formulas/card.ts'
import { FORMULAS, findFormula } from '../../../shared/formulas/index.ts'
import { DIMENSIONS, type Quantity } from '../../../shared/quantities/dimension.ts'
import { parseQuantity } from '../../../shared/quantities/parse.ts'
import { setEquation, setSymbol } from '../../../shared/report/equation.ts'
import { showIn } from '../../../shared/report/units.ts'
import { fail, type Issue, issue, ok, type Result } from '../../../shared/result/result.ts'
import { readArguments } from '../arguments.ts'
import { EXIT, type Exit } from '../exit.ts'
import { namesLike } from '../names-like.ts'
import { printJson, printLines, printProblems } from '../output.ts'

/** `formula [ID] [name=quantity ...]`: lists the cards, shows one, or evaluates one within its range. */
export async function formulaCommand(args: readonly string[]): Promise<Exit> {
  const read = readArguments(args, { flags: ['json'], least: 0, most: 40, usage: 'formula [ID] [name=quantity ...] [--json]' })
  if (!read.ok) return printProblems(read)
  const [id, ...given] = read.value.plain
  const json = read.value.flag('json')
  if (id === undefined) return list(json)
  const card = findFormula(id)
  if (!card)
    return printProblems(
      fail(
        issue('formula.unknown', [], {
          id,
          near: namesLike(
            id,
            FORMULAS.map((f) => f.id),
          ),
        }),
      ),
    )
  if (given.length === 0 && Object.keys(card.symbols).length > 0) return show(card, json)
  const values = readValues(card, given)
  if (!values.ok) return printProblems(values)
  return answer(card, values.value, json)
}

function list(json: boolean): Exit {
  if (json) printJson({ format: 'steerwright formulas', version: 1, formulas: FORMULAS.map(cardJson) })
  else {
    const width = Math.max(...FORMULAS.map((f) => f.id.length)) + 2
    printLines(FORMULAS.map((f) => `${f.id.padEnd(width)}${f.title}`))
  }
  return EXIT.clean
}

function cardJson({ compute: _compute, requires, ...card }: FormulaCard): object {
  return { ...card, requires: (requires ?? []).map((r) => r.says) }
}

function show(card: FormulaCard, json: boolean): Exit {
  if (json) printJson({ format: 'steerwright formula', version: 1, card: cardJson(card) })
  else {
    printLines([
      card.title,
      `  ${setEquation(card.equation)}`,
      ...Object.entries(card.symbols).map(
        ([s, c]) => `  ${setSymbol(s)}${s === setSymbol(s) ? '' : ` (${s})`}: ${c.meaning} [${DIMENSIONS[c.dimension].unit}]`,
      ),
      `  ${setSymbol(card.result.symbol)}: ${card.result.meaning} [${DIMENSIONS[card.result.dimension].unit}]`,
      ...(card.requires ?? []).map((r) => `  holds where ${r.says}`),
      `  source: ${card.source.cites} (${card.source.mark})`,
      ...(card.remark === undefined ? [] : [`  note: ${card.remark}`]),
      ...card.examples.map(
        (e) =>
          `  example: ${Object.entries(e.given)
            .map(([s, v]) => `${s} = ${v}`)
            .join(', ')} gives ${e.gives} (${e.source.cites})`,
      ),
    ])
  }
  return EXIT.clean
}

interface Given {
  readonly typed: Readonly<Record<string, string>>
  readonly si: Readonly<Record<string, Quantity>>
}

/** "D=1.75 in" for every symbol; every fault at once. */
function readValues(card: FormulaCard, given: readonly string[]): Result<Given> {
  const issues: Issue[] = []
  const typed: Record<string, string> = {}
  const si: Record<string, Quantity> = {}
  for (const item of given) {
    const at = item.indexOf('=')
    const symbol = item.slice(0, Math.max(at, 0)).trim()
    const spec = Object.hasOwn(card.symbols, symbol) ? card.symbols[symbol] : undefined
    if (!spec || Object.hasOwn(typed, symbol)) {
      issues.push(issue('formula.unknown_symbol', [], { symbol: symbol || item, symbols: Object.keys(card.symbols) }))
      continue
    }
    typed[symbol] = item.slice(at + 1).trim()
    const quantity = parseQuantity(typed[symbol], spec.dimension)
    if (quantity.ok) si[symbol] = quantity.value.si
    else issues.push(...quantity.issues.map((i) => ({ ...i, path: [symbol] })))
  }
  for (const [symbol, { meaning }] of Object.entries(card.symbols)) {
    if (!Object.hasOwn(typed, symbol)) issues.push(issue('formula.missing_symbol', [], { symbol, meaning }))
  }
  return issues.length > 0 ? fail(...issues) : ok({ typed, si })
}

function answer(card: FormulaCard, { typed, si }: Given, json: boolean): Exit {
  const result = evaluate(card, si)
  if (!result.ok) return printProblems(result)
  const { symbol, dimension } = card.result
  const printed = { metric: showIn('metric')(result.value, dimension), inch: showIn('inch')(result.value, dimension) }
  if (json) {
    const inputs = Object.fromEntries(
      Object.entries(card.symbols).map(([s, c]) => [
        s,
        { typed: typed[s], si: si[s], dimension: c.dimension, unit: DIMENSIONS[c.dimension].unit },
      ]),
    )
    printJson({
      format: 'steerwright formula',
      version: 1,
      id: card.id,
      equation: card.equation,
      inputs,
      result: { symbol, dimension, si: result.value, unit: DIMENSIONS[dimension].unit, printed },
    })
  } else {
    const name = setSymbol(symbol)
    const both = printed.metric === printed.inch ? printed.metric : `${printed.metric} = ${printed.inch}`
    printLines([
      setEquation(card.equation),
      setEquation(card.equation, typed),
      `${name} = ${both}`,
      `source: ${card.source.cites} (${card.source.mark})`,
    ])
  }
  return EXIT.clean
}
