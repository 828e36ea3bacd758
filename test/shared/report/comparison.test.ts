import { describe, expect, it } from 'vitest'
import { comparePlans } from '../../../src/shared/planner/compare.ts'
import { comparisonBlocks } from '../../../src/shared/report/comparison.ts'
import { built, planOf } from '../planner/builds.ts'
import { LARCH, larch, larchPart } from '../planner/larch-forces.ts'

const told = (file: unknown) => comparisonBlocks(built(file), comparePlans(planOf(LARCH), planOf(file)), 'inch')
const captions = (blocks: ReturnType<typeof told>) => blocks.map((b) => (b.kind === 'table' ? b.caption : b.kind))

describe('a what-if in words', () => {
  it('says so where nothing changes', () => {
    expect(told(LARCH)).toEqual([{ kind: 'paragraph', text: 'The plan stays as it is.' }])
  })
  it('puts judgements and numbers before and after side by side', () => {
    const blocks = told(larchPart('pump', { reliefPressure: '300 psi' }))
    expect(captions(blocks)).toEqual(['Judgements', 'Numbers'])
    const numbers = blocks.find((b) => b.kind === 'table' && b.caption === 'Numbers')
    expect(JSON.stringify(numbers)).toMatch(/Turning left: there is over asked for/)
    expect(JSON.stringify(blocks)).not.toMatch(/undefined|NaN/)
  })
  it('leaves out a judgement that reads as before', () => {
    const blocks = told(larchPart('ram', { stroke: '4 in' }))
    const rows = blocks.flatMap((b) => (b.kind === 'table' && b.caption === 'Judgements' ? b.rows : []))
    const read = rows.map((r) => JSON.stringify(r.slice(1)))
    expect(rows.length).toBeGreaterThan(0)
    expect(new Set(read).size).toBe(read.length)
  })
  it('says first that a stronger alloy does not raise the Euler load', () => {
    const [first] = told(larch({ forces: { tieRod: { material: '4130 DOM' } } }))
    expect(first).toMatchObject({ kind: 'paragraph', tone: 'caution', text: expect.stringMatching(/does not raise the Euler load/) })
  })
  it('tells what it costs', () => {
    expect(JSON.stringify(told(larchPart('ram', { price: '300.00' })))).toMatch(/All parts: [\d.]+ USD before, [\d.]+ USD after/)
  })
})
