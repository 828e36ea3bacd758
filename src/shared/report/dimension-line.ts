import type { Ink, Item } from './drawing.ts'

export const VISIBLE: Ink = { line: 'visible' }
export const THIN: Ink = { line: 'thin' }
export const AXIS: Ink = { line: 'axis' }

/** Width of a text in mm, near enough to place it: a character is about 0.82 of the capital's height wide in the sheet's face. */
export const textWidth = (text: string, size: number): number => text.length * size * 0.82

const ARROWS_INSIDE = 12
const GAP = 1
const OVERSHOOT = 2

/**
 * A horizontal dimension after ISO 129-1: extension lines that start clear of the part and run past the dimension line,
 * filled arrows, the value above the line. On a span too short for them, arrows point in from outside and the value stands
 * beside the right one.
 *
 * @param from @param to where the measured edges stand, mm
 * @param edge where the extension lines begin, mm down
 * @param y where the dimension line runs, mm down
 */
export function horizontalDimension(from: number, to: number, edge: number, y: number, text: string): Item[] {
  const [left, right] = from <= to ? [from, to] : [to, from]
  const span = right - left
  const extension = (x: number): Item => ({ kind: 'line', from: { x, y: edge + GAP }, to: { x, y: y + OVERSHOOT }, ink: THIN })
  const inside = span >= Math.max(ARROWS_INSIDE, textWidth(text, 3.5))
  const reach = inside ? 0 : 8
  return [
    extension(left),
    extension(right),
    { kind: 'line', from: { x: left - reach, y }, to: { x: right + reach, y }, ink: THIN },
    { kind: 'arrow', at: { x: left, y }, angle: inside ? Math.PI : 0 },
    { kind: 'arrow', at: { x: right, y }, angle: inside ? 0 : Math.PI },
    inside
      ? { kind: 'text', at: { x: (left + right) / 2, y: y - 1.2 }, text, size: 3.5, anchor: 'middle' }
      : { kind: 'text', at: { x: right + reach + 1.5, y: y + 1.7 }, text, size: 3.5, anchor: 'start' },
  ]
}

/** Scales of ISO 5455, the largest picture first: paper millimetres for so many real ones. */
const SCALES = [
  [10, 1],
  [5, 1],
  [2, 1],
  [1, 1],
  [1, 2],
  [1, 5],
  [1, 10],
  [1, 20],
  [1, 50],
  [1, 100],
] as const

/** The largest standard scale at which `real` metres take no more than `paper` millimetres; the last one where none does. */
export function fittingScale(real: number, paper: number): { factor: number; text: string } {
  const fits = SCALES.find(([a, b]) => (real * 1000 * a) / b <= paper) ?? SCALES[SCALES.length - 1]
  const [a, b] = fits as readonly [number, number]
  return { factor: (a / b) * 1000, text: `${a}:${b}` }
}
