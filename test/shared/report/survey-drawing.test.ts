import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fittingScale, horizontalDimension } from '../../../src/shared/report/dimension-line.ts'
import type { Drawing } from '../../../src/shared/report/drawing.ts'
import { surveyDrawing } from '../../../src/shared/report/survey-drawing.ts'

const letterAt = (d: Drawing, letter: string): number => {
  const found = d.items.find((i) => i.kind === 'text' && i.text === letter)
  if (found?.kind !== 'text') throw new Error(`no ${letter}`)
  return found.at.x
}

describe('surveyDrawing', () => {
  const drawing = surveyDrawing(
    {
      left: -0.1,
      right: 0.11,
      readings: [
        { mark: 'left', at: -0.1 },
        { mark: 'right', at: 0.11 },
      ],
    },
    'metric',
  )

  it('stands the marks apart by the travel at the scale it states', () => {
    expect(drawing.items).toContainEqual(expect.objectContaining({ text: 'Scale 1:2' }))
    expect(letterAt(drawing, 'C') - letterAt(drawing, 'L')).toBeCloseTo(50, 9)
    expect(letterAt(drawing, 'R') - letterAt(drawing, 'C')).toBeCloseTo(55, 9)
  })

  it('dimensions each side and the whole, and says the same in words', () => {
    const texts = drawing.items.flatMap((i) => (i.kind === 'text' ? [i.text] : []))
    expect(texts).toEqual(expect.arrayContaining(['100 mm', '110 mm', '210 mm']))
    expect(drawing.items.filter((i) => i.kind === 'arrow')).toHaveLength(6)
    for (const words of ['scale 1:2', '100 mm', '110 mm', '210 mm', '2 readings']) expect(drawing.description).toContain(words)
  })

  it('stays on its paper whatever was measured', () => {
    const at = fc.double({ min: -2, max: 2, noNaN: true })
    fc.assert(
      fc.property(
        fc.double({ min: -2, max: 0, noNaN: true }),
        fc.double({ min: 0, max: 2, noNaN: true }),
        fc.array(at, { maxLength: 20 }),
        (left, right, ats) => {
          const d = surveyDrawing({ left, right, readings: ats.map((a) => ({ mark: 'centre', at: a })) }, 'inch')
          for (const item of d.items) {
            const points = item.kind === 'line' ? [item.from, item.to] : item.kind === 'text' || item.kind === 'arrow' ? [item.at] : []
            for (const p of points) {
              expect(p.x).toBeGreaterThanOrEqual(0)
              expect(p.x).toBeLessThanOrEqual(d.width)
              expect(p.y).toBeGreaterThanOrEqual(0)
              expect(p.y).toBeLessThanOrEqual(d.height)
            }
          }
        },
      ),
    )
  })
})

describe('fittingScale', () => {
  // the recommended scales of ISO 5455: 1, 2, 5 and their tens
  it.each([
    [0.2, 132, '1:2'],
    [0.13, 132, '1:1'],
    [0.7, 132, '1:10'],
    [0.012, 132, '10:1'],
    [0.001, 132, '10:1'],
    [1000, 132, '1:100'],
  ])('draws %d m on %d mm at %s', (real, paper, text) => {
    expect(fittingScale(real, paper).text).toBe(text)
  })
})

describe('horizontalDimension', () => {
  it('turns the arrows round and stands the value beside a span too short for it', () => {
    const short = horizontalDimension(50, 54, 10, 20, '4 mm')
    expect(short.flatMap((i) => (i.kind === 'arrow' ? [i.angle] : []))).toEqual([0, Math.PI])
    expect(short.find((i) => i.kind === 'text')).toMatchObject({ anchor: 'start' })
    const long = horizontalDimension(50, 150, 10, 20, '100 mm')
    expect(long.flatMap((i) => (i.kind === 'arrow' ? [i.angle] : []))).toEqual([Math.PI, 0])
    expect(long.find((i) => i.kind === 'text')).toMatchObject({ anchor: 'middle', at: { x: 100 } })
  })
})
