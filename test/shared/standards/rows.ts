import type { StandardTable } from '../../../src/shared/standards/table.ts'

/** The row of a key; throws where the table has none, so that a test about a row cannot pass on nothing. */
export function row<Row extends object>(table: StandardTable<Row>, key: string | number): Row {
  const found = table.rows.find((each) => Reflect.get(each, table.key) === key)
  if (found === undefined) throw new Error(`${table.name} has no row ${key}`)
  return found
}

/** "1-5/16" -> 1.3125, "3/8" -> 0.375, "2" -> 2 */
export function inches(size: string): number {
  const parts = size.split('-').map((part) => {
    const [over, under] = part.split('/').map(Number)
    return under === undefined ? (over ?? Number.NaN) : (over ?? Number.NaN) / under
  })
  return parts.reduce((sum, part) => sum + part, 0)
}

/** true where each value is greater than the one before */
export const rising = (values: readonly number[]): boolean => values.every((value, i) => i === 0 || value > (values[i - 1] ?? Number.NaN))

/** tensile stress area, ISO 898-1: (pi/4)(d - 0.938194 P)^2, mm2 */
export const metricStressArea = (d: number, p: number): number => (Math.PI / 4) * (d - 0.938194 * p) ** 2

/** tensile stress area, ASME B1.1 appendix B: (pi/4)(D - 0.9743/n)^2, in2 */
export const inchStressArea = (d: number, n: number): number => (Math.PI / 4) * (d - 0.9743 / n) ** 2

/** exact: foot, pound and standard gravity by definition */
export const NM_PER_LBF_FT = 0.3048 * 0.45359237 * 9.80665
