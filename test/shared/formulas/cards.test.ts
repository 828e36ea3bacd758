import fc from 'fast-check'
import { type MathNode, parse } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { evaluate, type FormulaCard } from '../../../src/shared/formulas/card.ts'
import { FORMULAS, findFormula } from '../../../src/shared/formulas/index.ts'
import { DIMENSIONS } from '../../../src/shared/quantities/dimension.ts'
import { parseQuantity } from '../../../src/shared/quantities/parse.ts'
import { close, exampleValues, inputsOf, type Values } from './random.ts'

/** What an equation may use beside its own symbols. */
const FUNCTIONS = new Set([
  'sqrt',
  'sin',
  'cos',
  'tan',
  'asin',
  'acos',
  'atan',
  'atan2',
  'erf',
  'abs',
  'ceil',
  'log',
  'log10',
  'min',
  'max',
  'pi',
])

/** Formulas with a constant that carries a unit of its own, so that the result does not scale as the symbols' units do. */
const NOT_HOMOGENEOUS: Readonly<Record<string, string>> = {
  'thread.npt-e0': 'the standard takes 0.05 D with D in inches',
  'tyre.load-from-index': 'a bare index gives kilograms',
  'viscosity.at-temperature': 'the 0.7 is in mm²/s',
}

function sides(card: FormulaCard): { left: MathNode; right: MathNode } {
  const [left, right] = card.equation.split(/(?<![<>=!])=(?!=)/)
  if (left === undefined || right === undefined) throw new Error(`${card.id}: no equation`)
  return { left: parse(left), right: parse(right) }
}

function symbolsIn(node: MathNode): Set<string> {
  const found = new Set<string>()
  node.traverse((n) => {
    if (n.type === 'SymbolNode' && 'name' in n) found.add(String(n.name))
  })
  return found
}

/** Both sides of the equation, worked out by mathjs with the card's own result put in for the result's symbol. */
function bySides(card: FormulaCard, values: Values): { left: number; right: number } {
  const scope = { ...values, [card.result.symbol]: card.compute(values as never) as number }
  const { left, right } = sides(card)
  return { left: left.compile().evaluate({ ...scope }), right: right.compile().evaluate({ ...scope }) }
}

describe('the list of formulas', () => {
  it('is in the order of ids, each once, and each is found by its id', () => {
    const ids = FORMULAS.map((card) => card.id)
    expect(ids).toEqual([...new Set(ids)].sort())
    for (const card of FORMULAS) expect(findFormula(card.id)).toBe(card)
    expect(findFormula('no.such')).toBeUndefined()
  })

  it('lists as not homogeneous only formulas that exist', () => {
    for (const id of Object.keys(NOT_HOMOGENEOUS)) expect(findFormula(id), id).toBeDefined()
  })
})

describe.each(FORMULAS.map((card) => [card.id, card] as const))('%s', (id, card) => {
  it('is named in small letters, dots and hyphens, and says what it is', () => {
    expect(id).toMatch(/^[a-z0-9]+(?:[.-][a-z0-9]+)+$/)
    expect(card.title.length).toBeGreaterThan(5)
    expect(card.source.cites.length).toBeGreaterThan(5)
    for (const symbol of Object.values(card.symbols)) expect(symbol.meaning.length).toBeGreaterThan(2)
  })

  it('has in its equation exactly the symbols of the card', () => {
    const { left, right } = sides(card)
    const used = new Set([...symbolsIn(left), ...symbolsIn(right)])
    for (const name of FUNCTIONS) if (!(name in card.symbols)) used.delete(name)
    expect([...used].sort()).toEqual([card.result.symbol, ...Object.keys(card.symbols)].sort())
    if (!card.procedure) expect([...symbolsIn(left)]).toEqual([card.result.symbol])
  })

  it.each(
    card.examples.map(
      (e) =>
        [
          Object.entries(e.given)
            .map(([k, v]) => `${k} = ${v}`)
            .join(', '),
          e,
        ] as const,
    ),
  )('gives the example %s', (_, e) => {
    const values = exampleValues(card, e.given)
    expect(Object.keys(values).sort()).toEqual(Object.keys(card.symbols).sort())
    const result = evaluate(card, values as never)
    const wanted = parseQuantity(e.gives, card.result.dimension)
    if (!wanted.ok || !result.ok) throw new Error(JSON.stringify([wanted, result]))
    expect(Math.abs(result.value - wanted.value.si), `${result.value} against ${wanted.value.si}`).toBeLessThanOrEqual(
      e.tolerance * Math.abs(wanted.value.si) + Number.MIN_VALUE,
    )
    expect(e.because.length).toBeGreaterThan(2)
  })

  it('has an example', () => expect(card.examples.length).toBeGreaterThan(0))

  it('agrees with its equation, worked out by an independent library', () => {
    const tolerance = card.procedure ? 1e-7 : 1e-9 // a root search stops at its own step
    const check = (values: Values) => {
      const { left, right } = bySides(card, values)
      fc.pre(Number.isFinite(card.compute(values as never)))
      if (!close(left, right, tolerance)) throw new Error(`${left} against ${right} for ${JSON.stringify(values)}`)
    }
    for (const e of card.examples) check(exampleValues(card, e.given))
    fc.assert(fc.property(inputsOf(card), check), { numRuns: 100 })
  })

  if (!(id in NOT_HOMOGENEOUS)) {
    it('scales as its units demand', () => {
      const factor = fc.integer({ min: -20, max: 20 }).map((k) => 2 ** (k / 4))
      fc.assert(
        fc.property(inputsOf(card), fc.tuple(factor, factor, factor, factor), (values, units) => {
          const scale = (dimension: keyof typeof DIMENSIONS) =>
            DIMENSIONS[dimension].base.reduce<number>((s, power, i) => s * (units[i] as number) ** power, 1)
          const scaled = Object.fromEntries(Object.entries(values).map(([s, v]) => [s, v * scale(card.symbols[s]?.dimension ?? 'ratio')]))
          const before = card.compute(values as never) as number
          fc.pre(Number.isFinite(before))
          const after = card.compute(scaled as never) as number
          if (!close(after, before * scale(card.result.dimension), 1e-9)) throw new Error(`${before} became ${after} by ${units}`)
        }),
        { numRuns: 100 },
      )
    })
  }

  it('answers outside its range with issues, not with a number', () => {
    const inside = exampleValues(card, card.examples[0]?.given ?? {})
    for (const [symbol, spec] of Object.entries(card.symbols)) {
      const step = (at: number) => Math.max(Math.abs(at), 1) * 1e-6
      const outside: number[] = [Number.NaN, Number.POSITIVE_INFINITY]
      if (spec.above !== undefined) outside.push(spec.above)
      if (spec.below !== undefined) outside.push(spec.below)
      if (spec.min !== undefined) outside.push(spec.min - step(spec.min))
      if (spec.max !== undefined) outside.push(spec.max + step(spec.max))
      for (const value of outside) {
        const result = evaluate(card, { ...inside, [symbol]: value } as never)
        if (result.ok) throw new Error(`${symbol} = ${value} gave ${result.value}`)
        expect(result.issues[0]).toMatchObject({ code: 'formula.out_of_range', path: [symbol] })
      }
    }
  })

  it('gives a finite number or an issue anywhere in its range', () => {
    fc.assert(
      fc.property(fc.record(Object.fromEntries(Object.keys(card.symbols).map((s) => [s, fc.double()]))), (values) => {
        const result = evaluate(card, values as never)
        return result.ok ? Number.isFinite(result.value) : result.issues.length > 0
      }),
      { numRuns: 100 },
    )
  })
})
