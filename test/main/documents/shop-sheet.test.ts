import { describe, expect, it } from 'vitest'
import { renderPdf } from '../../../src/main/documents/index.ts'
import { plan } from '../../../src/shared/planner/index.ts'
import { findingTexts, makeDocument } from '../../../src/shared/report/index.ts'
import { buildOf, FILE } from '../../shared/report/fixture.ts'
import { readPdf } from './read-pdf.ts'

const squeeze = (text: string) => text.replace(/\s/g, '')

describe('the shop sheet of a build', () => {
  it.each(['a4', 'letter'] as const)('carries every finding, part, torque, step and working on %s', async (paper) => {
    const build = buildOf(FILE)
    const planned = plan(build)
    const document = makeDocument(build, planned, { units: 'inch', printedOn: '2026-03-02' })
    const pdf = readPdf(await renderPdf(document, { paper }))
    const all = squeeze(pdf.pages.map((p) => p.text).join(' '))
    for (const f of findingTexts(build, planned, 'inch'))
      for (const words of [f.title, f.why, f.todo]) expect(all).toContain(squeeze(words))
    for (const part of build.parts) expect(all).toContain(squeeze(part.name))
    for (const spec of build.torqueSpecs ?? []) expect(all).toContain(squeeze(spec.what))
    const checklist = document.sections.find((s) => s.id === 'checklist')?.blocks[0]
    for (const step of checklist?.kind === 'checklist' ? checklist.items : []) expect(all).toContain(squeeze(step.text))
    expect(all).toContain(squeeze('A = π·(1.75 in)² / 4'))
    expect(all).not.toContain('�')
    expect(pdf.structure.LI).toBeGreaterThanOrEqual(planned.steps.length)
  })
})
