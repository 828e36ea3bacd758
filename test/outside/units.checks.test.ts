import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { Dimension } from '../../src/shared/quantities/dimension.ts'
import { parseQuantity } from '../../src/shared/quantities/parse.ts'
import { inUnit } from '../../src/shared/quantities/print.ts'

/** The unit cases (U*) of `checks.json`, read as a person types them and given back in the unit that the source prints. */
interface Case {
  readonly id: string
  readonly topic: string
  readonly inputs: Readonly<Record<string, { readonly value: number; readonly unit: string }>>
  readonly expected: { readonly value: number; readonly unit: string }
  readonly tolerance: { readonly type: string; readonly value: number }
  readonly source: string
}
const all: readonly Case[] = JSON.parse(readFileSync(new URL('./checks.json', import.meta.url), 'utf8'))
const cases = all.filter((c) => /^U\d+$/.test(c.id))

const DIMENSION: Readonly<Record<string, Dimension>> = {
  m: 'length',
  N: 'force',
  Pa: 'pressure',
  psi: 'pressure',
  L: 'volume',
  mL: 'volume',
  rad: 'angle',
  deg: 'angle',
  'N.m': 'torque',
}

describe('units against checks.json', () => {
  it('has the cases', () => {
    expect(cases.length).toBeGreaterThanOrEqual(10)
    expect(new Set(cases.map((c) => c.topic))).toEqual(new Set(['units']))
  })

  it.each(cases.map((c) => [c.id, c] as const))('%s', (_id, { inputs, expected, tolerance, source }) => {
    const { value, unit } = inputs.x ?? { value: Number.NaN, unit: '' }
    const dimension = DIMENSION[expected.unit]
    expect(dimension, expected.unit).toBeDefined()
    const read = parseQuantity(`${value} ${unit}`, dimension as Dimension)
    expect(read.ok, source).toBe(true)
    if (!read.ok) return
    const got = inUnit(read.value.si, expected.unit, dimension as Dimension)
    const off = Math.abs(got - expected.value) / (tolerance.type === 'rel' ? Math.abs(expected.value) : 1)
    expect(off, source).toBeLessThanOrEqual(tolerance.value)
  })
})
