import { evaluate, type FormulaCard, type Inputs, type SymbolCards } from '../formulas/card.ts'
import type { Dimension, Quantity, Typed } from '../quantities/dimension.ts'
import type { Finding, KnownValue, Origin, PlanNumber, Subject } from './plan.ts'
import { SEARCH, SUM } from './plan.ts'

/** A value of known dimension with where it came from; base SI. */
export interface Known<D extends Dimension = Dimension> extends KnownValue {
  readonly dimension: D
  readonly si: Quantity<D>
}

/** A value somebody typed into the build file, at `path`. Undefined stays undefined: what nobody typed is not known. */
export function entered<D extends Dimension>(dimension: D, typed: Typed<D> | undefined, path: Subject): Known<D> | undefined {
  return typed && { dimension, si: typed.si, origin: { kind: 'entered', path, typed: typed.typed } }
}

/** A value that this program chose; `why` is a code whose words are in the report. */
export const chosen = <D extends Dimension>(dimension: D, si: Quantity<D>, why: string): Known<D> => ({
  dimension,
  si,
  origin: { kind: 'chosen', why },
})

export const fromOrigin = <D extends Dimension>(dimension: D, si: Quantity<D>, origin: Origin): Known<D> => ({ dimension, si, origin })

type KnownInputs<S extends SymbolCards> = { readonly [K in keyof S]: Known<S[K]['dimension']> }

/**
 * Where the plan's numbers are written down as they are computed, each with its card and its inputs; and where findings
 * are collected. A value outside a card's range becomes a finding, never a number.
 */
export class Ledger {
  readonly numbers: PlanNumber[] = []
  readonly findings: Finding[] = []

  /** Computes one number by its card and writes it down under `id`. Undefined when the card does not hold for the values. */
  compute<S extends SymbolCards, R extends Dimension>(id: string, card: FormulaCard<S, R>, inputs: KnownInputs<S>): Known<R> | undefined {
    const values = Object.fromEntries(Object.entries(inputs).map(([symbol, known]) => [symbol, (known as Known).si])) as Inputs<S>
    const result = evaluate(card, values)
    if (!result.ok) {
      for (const { code, facts } of result.issues) {
        this.add({ code: 'number.outside_range', severity: 'look', facts: { ...facts, number: id, trouble: code }, numbers: [] })
      }
      return undefined
    }
    const dimension = card.result.dimension
    this.numbers.push({ id, dimension, si: result.value, card: card.id, inputs })
    return { dimension, si: result.value, origin: { kind: 'number', id } }
  }

  /** Adds up values of one dimension, each under its own name, and writes the sum down under `id`. */
  sum<D extends Dimension>(id: string, dimension: D, terms: Readonly<Record<string, Known<D>>>): Known<D> {
    const total = Object.values(terms).reduce((sum, term) => sum + term.si, 0) as Quantity<D>
    this.numbers.push({ id, dimension, si: total, card: SUM, inputs: terms })
    return { dimension, si: total, origin: { kind: 'number', id } }
  }

  /** Writes down a value that was searched for along the travel: where something comes to the values in `inputs`. */
  searched<D extends Dimension>(id: string, dimension: D, si: Quantity<D>, inputs: Readonly<Record<string, Known>>): Known<D> {
    this.numbers.push({ id, dimension, si, card: SEARCH, inputs })
    return { dimension, si, origin: { kind: 'number', id } }
  }

  /** A number written down before. */
  known<D extends Dimension>(id: string, dimension: D): Known<D> | undefined {
    const number = this.numbers.find((n) => n.id === id)
    return number && { dimension, si: number.si as Quantity<D>, origin: { kind: 'number', id } }
  }

  /** Gives a number already written down its expanded uncertainty (k = 2), base SI. */
  setUncertainty(id: string, uncertainty: number): void {
    const i = this.numbers.findIndex((n) => n.id === id)
    const number = this.numbers[i]
    if (number) this.numbers[i] = { ...number, uncertainty }
  }

  add(finding: Partial<Finding> & Pick<Finding, 'code' | 'severity'>): void {
    this.findings.push({ about: [], facts: {}, evidence: [], numbers: [], ...finding })
  }

  /** Says that something must be measured or looked up before the plan can say more. */
  measure(what: string, about: Subject, facts: Finding['facts'] = {}): void {
    this.add({ code: 'measure', severity: 'look', about, facts: { ...facts, what } })
  }
}
