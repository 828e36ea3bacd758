import { describe, expect, it } from 'vitest'
import { DEMO_FILES } from '../../../src/main/procedures/demo.ts'
import type { BuildFile } from '../../../src/shared/model/build.ts'
import type { PartFile } from '../../../src/shared/model/part.ts'
import type { Block } from '../../../src/shared/report/document.ts'
import { got, openedDatabase, problems, proceduresOn } from './made.ts'

const demo = DEMO_FILES.corrected
const { id } = demo.build
const withRam = (more: object): BuildFile => ({
  ...demo,
  parts: demo.parts.map((part) => (part.id === 'ram' ? ({ ...part, ...more } as PartFile) : part)),
})

async function stored() {
  const procedures = proceduresOn(openedDatabase())
  got(await procedures['demo.add']({ which: 'corrected' }))
  return procedures
}
const table = (blocks: readonly Block[], caption: string) =>
  blocks.find((b): b is Extract<Block, { kind: 'table' }> => b.kind === 'table' && b.caption === caption)

describe('a what-if', () => {
  it('tells what a changed file changes, before and after side by side, and stores nothing', async () => {
    const procedures = await stored()
    const answer = got(await procedures['plan.compare']({ id, file: withRam({ bore: '1 1/4 in' }), units: 'inch' }))
    const numbers = table(answer.blocks, 'Numbers')
    expect(numbers?.columns.map((c) => c.title)).toEqual(['Number', 'Before', 'After'])
    const row = numbers?.rows.find((r) => r[0]?.kind === 'text' && r[0].text.startsWith('Area of the bore'))
    // π/4·(1.75 in)² and π/4·(1.25 in)²
    expect(row?.slice(1).map((cell) => (cell.kind === 'text' ? cell.text : ''))).toEqual(['2.405 in²', '1.227 in²'])
    expect(got(await procedures['builds.read']({ id })).file).toEqual(demo)
  })

  it('counts what stops the build without and with the change', async () => {
    const procedures = await stored()
    const short = got(await procedures['plan.compare']({ id, file: withRam({ stroke: '4 in' }), units: 'inch' }))
    expect(short.stopsBefore).toBe(0)
    expect(short.stopsAfter).toBeGreaterThan(0)
    expect(table(short.blocks, 'Judgements')?.rows.some((r) => r[1]?.kind === 'state' && r[1].state === 'stops')).toBe(true)
  })

  it('speaks in the units asked for, and says so where nothing changes', async () => {
    const procedures = await stored()
    const metric = got(await procedures['plan.compare']({ id, file: withRam({ bore: '50 mm' }), units: 'metric' }))
    expect(JSON.stringify(table(metric.blocks, 'Numbers'))).toMatch(/cm²|mm²/)
    const same = got(await procedures['plan.compare']({ id, file: demo, units: 'metric' }))
    expect(same).toMatchObject({ blocks: [{ kind: 'paragraph', text: 'The plan stays as it is.' }], stopsBefore: 0, stopsAfter: 0 })
  })

  it('refuses a faulty file with each fault at its place, and a build that is not there', async () => {
    const procedures = await stored()
    const at = demo.parts.findIndex((part) => part.id === 'ram')
    const faulty = await procedures['plan.compare']({ id, file: withRam({ bore: '1 3/4', rod: 'thin' }), units: 'inch' })
    expect(problems(faulty).map((p) => p.split(':')[0])).toEqual([`parts[${at}].bore`, `parts[${at}].rod`])
    expect(problems(await procedures['plan.compare']({ id: 'none', file: demo, units: 'inch' }))).toEqual(['build.unknown'])
  })
})
