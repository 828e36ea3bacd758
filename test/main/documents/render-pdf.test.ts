import { describe, expect, it } from 'vitest'
import { renderPdf } from '../../../src/main/documents/index.ts'
import type { Section } from '../../../src/shared/report/document.ts'
import { readPdf } from './read-pdf.ts'
import { longTable, SAMPLE_SECTIONS, sample } from './sample.ts'

const MM = 72 / 25.4
const read = async (sections?: readonly Section[], more = {}) => readPdf(await renderPdf(sample(sections, more), { paper: 'a4' }))

describe('renderPdf', () => {
  it('makes pages of the paper asked for', async () => {
    const a4 = readPdf(await renderPdf(sample(), { paper: 'a4' })).pages
    const letter = readPdf(await renderPdf(sample(), { paper: 'letter' })).pages
    for (const page of a4) {
      expect(page.width / MM).toBeCloseTo(210, 2)
      expect(page.height / MM).toBeCloseTo(297, 2)
    }
    for (const page of letter) expect([page.width, page.height]).toEqual([612, 792])
  })

  it('sets title, language, tags, bookmarks and embeds its fonts', async () => {
    const pdf = await read()
    expect(pdf.title).toBe('Shop sheet: Larch, front axle and assist steering')
    expect(pdf.language).toBe('en')
    expect(pdf.displaysTitle).toBe(true)
    expect(pdf.tagged).toBe(true)
    expect(pdf.bookmarks).toEqual(sample().sections.map((s) => s.heading))
    expect(pdf.fontsEmbedded).toBe(4)
    expect(pdf.structure).toMatchObject({ Document: 1, H1: 1, H2: 9, Figure: 1, L: 2 })
    expect(pdf.structure.LI).toBe(14 + 2)
    expect(pdf.structure.TH).toBeGreaterThan(20)
    expect(pdf.alternatives).toEqual([expect.stringContaining('scale 1:2')])
  })

  it('writes everything the report says, signs of the trade included', async () => {
    const pdf = await read()
    const all = pdf.pages.map((p) => p.text).join(' ')
    for (const words of [
      'What stops the build',
      'Stud 1:8 in an arm reamed 1:10',
      'Seen: stud taper 1:8 (1.5 in/ft); arm taper 1:10 (1.2 in/ft)',
      'goes together and is wrong',
      '85 lbf·ft',
      '± 5 lbf·ft',
      'A = π·(1.75 in)² / 4',
      '8 3/16 in',
      'typed: 1 3/4 in (ram › bore)',
      'Never re-use a cotter pin.',
      'Scale 1:2',
    ])
      expect(all).toContain(words)
    expect(all).not.toContain('�')
  })

  it("is large enough to read at arm's length and to write in with a pencil", async () => {
    const part = async (id: string) => (await read(SAMPLE_SECTIONS.filter((s) => s.id === id))).pages
    for (const id of ['stops', 'parts', 'fit', 'torque', 'workings']) {
      for (const page of await part(id)) expect(Math.min(...page.sizes)).toBeGreaterThanOrEqual(10.5)
    }
    const near = (a: number, b: number) => Math.abs(a - b) < 0.01
    const torque = (await part('torque')).flatMap((p) => p.boxes)
    const ticks = torque.filter(([w, h]) => near(w, h) && w >= 6 * MM)
    const toWriteIn = torque.filter(([w, h]) => h >= 9 * MM && h < 12 * MM && w >= 14 * MM)
    expect([ticks.length, toWriteIn.length]).toEqual([6, 18])
    const checklist = await part('checklist')
    const steps = new Set(checklist.flatMap((p) => p.sizes).filter((size) => size < 14))
    expect([...steps]).toEqual([12])
    expect(checklist.flatMap((p) => p.boxes).filter(([w, h]) => near(w, h) && w >= 6 * MM).length).toBeGreaterThan(8)
  })

  it('numbers every page and names the sheet on it', async () => {
    const { pages } = await read()
    expect(pages.length).toBeGreaterThan(5)
    pages.forEach((page, i) => {
      expect(page.artifacts).toContain(`Page ${i + 1} of ${pages.length}`)
      expect(page.artifacts).toContain('revision 7 · printed 2026-03-02')
      expect(page.text).not.toContain(`Page ${i + 1} of`)
    })
  })

  it('repeats the head of a long table on each page, once for those who listen', async () => {
    const pdf = await read([longTable(120)])
    const head = 'State Qty Part Supplier Each, EUR'
    expect(pdf.pages.length).toBeGreaterThan(5)
    expect(pdf.pages.filter((p) => p.text.includes(head))).toHaveLength(1)
    expect(pdf.pages.filter((p) => p.artifacts.includes(head))).toHaveLength(pdf.pages.length - 1)
    const rows = pdf.pages.flatMap((p) => [...p.text.matchAll(/Rod end number (\d+)/g)].map((m) => Number(m[1])))
    expect(rows).toEqual(Array.from({ length: 120 }, (_, i) => i + 1))
  })

  it('never leaves a heading at the foot of a page', async () => {
    const short = (n: number): Section => ({
      id: `s${n}`,
      heading: `Heading number ${n} end`,
      blocks: [{ kind: 'paragraph', text: 'A single line of text. '.repeat((n % 7) * 9 + 1) }],
    })
    const pdf = await read(Array.from({ length: 40 }, (_, i) => short(i)))
    expect(pdf.pages.length).toBeGreaterThan(3)
    for (const page of pdf.pages) expect(page.text).not.toMatch(/Heading number \d+ end$/)
  })

  it('gives the same bytes for the same report', async () => {
    const [a, b] = await Promise.all([renderPdf(sample(), { paper: 'a4' }), renderPdf(sample(), { paper: 'a4' })])
    expect(Buffer.compare(a, b)).toBe(0)
    const later = await renderPdf(sample(undefined, { printedOn: '2026-03-03' }), { paper: 'a4' })
    expect(Buffer.compare(a, later)).not.toBe(0)
  })

  it('prints a report without sections as one page', async () => {
    const pdf = await read([])
    expect(pdf.pages).toHaveLength(1)
    expect(pdf.pages[0]?.text).toContain('Shop sheet: Larch')
  })

  it('prints sections without blocks and tables without rows', async () => {
    const pdf = await read([
      { id: 'a', heading: 'Empty', blocks: [] },
      {
        id: 'b',
        heading: 'No rows',
        blocks: [{ kind: 'table', caption: 'none', columns: [{ title: 'What', align: 'left', weight: 1 }], rows: [] }],
      },
      {
        id: 'c',
        heading: 'Nothing',
        blocks: [
          { kind: 'findings', items: [] },
          { kind: 'numbers', items: [] },
          { kind: 'checklist', items: [] },
          { kind: 'list', items: [] },
        ],
      },
    ])
    expect(pdf.pages[0]?.text).toContain('Empty No rows What Nothing')
  })

  it('breaks names that are longer than a line, in text and in cells, and loses no letter', async () => {
    const long = `start${'x'.repeat(200)}finish`
    const pdf = await read(
      [
        {
          id: 'a',
          heading: long,
          blocks: [
            { kind: 'paragraph', text: long },
            {
              kind: 'table',
              caption: 't',
              columns: ['One', 'Two', 'Three'].map((title) => ({ title, align: 'left', weight: 1 })),
              rows: [
                [
                  { kind: 'text', text: long },
                  { kind: 'state', state: 'good', text: long },
                  { kind: 'text', text: '', second: long },
                ],
              ],
            },
          ],
        },
      ],
      { title: long, subject: long, footer: long },
    )
    const squeezed = pdf.pages
      .map((p) => p.text)
      .join('')
      .replace(/ /g, '')
    expect(squeezed.split(long).length - 1).toBe(7)
  })

  it('cuts a row that is taller than a page, and only such a row', async () => {
    const words = Array.from({ length: 1500 }, (_, i) => `word${i}`)
    const pdf = await read([
      {
        id: 'a',
        heading: 'Tall',
        blocks: [
          {
            kind: 'table',
            caption: 't',
            columns: ['Name', 'Note'].map((title) => ({ title, align: 'left', weight: 1 })),
            rows: [
              [
                { kind: 'text', text: 'part' },
                { kind: 'text', text: words.join(' ') },
              ],
            ],
          },
        ],
      },
    ])
    expect(pdf.pages.length).toBeGreaterThan(2)
    const all = pdf.pages.map((p) => p.text).join(' ')
    expect(all.match(/word\d+/g)).toEqual(words)
  })

  it('keeps on paper whatever a person typed: line breaks, control characters, other scripts', async () => {
    const pdf = await read([
      { id: 'a', heading: 'Typed', blocks: [{ kind: 'paragraph', text: 'one\ntwo\u0000three\u0007 (four) \\five ½ Ø → ≥ Ж' }] },
    ])
    expect(pdf.pages[0]?.text).toContain('one two three (four) \\five ½ Ø → ≥ Ж')
  })
})
