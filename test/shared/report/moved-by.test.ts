import { describe, expect, it } from 'vitest'
import { renderPdf } from '../../../src/main/documents/index.ts'
import type { Document } from '../../../src/shared/report/document.ts'
import { summaryText, workingTexts } from '../../../src/shared/report/index.ts'
import { readPdf } from '../../main/documents/read-pdf.ts'
import { built, planOf } from '../planner/builds.ts'
import { LARCH } from '../planner/larch-forces.ts'

const plan = planOf(LARCH)
const workings = workingTexts(built(LARCH), plan, 'inch')
const left = workings.find((w) => w.id === 'margin.left') ?? expect.fail('no margin')
const sheet: Document = {
  title: 'Sheet',
  subject: 'Larch',
  language: 'en',
  footer: 'Sheet',
  printedOn: '2026-12-01',
  sections: [{ id: 'workings', heading: 'Workings', blocks: [{ kind: 'workings', items: [left] }] }],
}
const squeeze = (text: string) => text.replace(/\s/g, '')

describe('what moves a margin, in its working', () => {
  it('stands with every margin and with nothing else, the greatest first, as the plan has it', () => {
    expect(workings.filter((w) => w.movedBy).map((w) => w.id)).toEqual(plan.forces.sensitivities.map((s) => s.margin))
    const told = plan.forces.sensitivities.find((s) => s.margin === 'margin.left')?.inputs ?? []
    expect(left.movedBy).toHaveLength(told.length)
    for (const [i, { greater, smaller }] of told.entries()) {
      const [more, less] = [left.movedBy?.[i]?.greater ?? '', left.movedBy?.[i]?.smaller ?? '']
      // printed to a tenth of a per cent
      expect(Number.parseFloat(more.replace('−', '-')) / 100).toBeCloseTo(greater, 3)
      expect(Number.parseFloat(less.replace('−', '-')) / 100).toBeCloseTo(smaller, 3)
    }
  })

  it('is in the text and on paper word for word', async () => {
    const pdf = await renderPdf(sheet, { paper: 'a4' })
    const [text, paper] = [
      squeeze(summaryText(sheet)),
      squeeze(
        readPdf(pdf)
          .pages.map((p) => p.text)
          .join(' '),
      ),
    ]
    expect(left.movedBy?.length).toBe(5)
    for (const painted of [text, paper]) {
      expect(painted).toContain(squeeze('What moves it most'))
      for (const m of left.movedBy ?? []) for (const words of Object.values(m)) expect(painted).toContain(squeeze(words))
    }
  })
})
