import { si } from '../../quantities/dimension.ts'
/** Mean of repeated readings of one quantity; undefined for none. JCGM 100:2008, 4.2.1 (from memory). */
export function mean(readings, dimension) {
  if (readings.length === 0) return undefined
  // summed as differences from the first, so that equal readings give that reading and no rounding of it
  const first = readings[0]
  return si(first + readings.reduce((sum, r) => sum + (r - first), 0) / readings.length, dimension)
}
/** Experimental standard deviation (n - 1) of repeated readings; undefined for fewer than two. JCGM 100:2008, 4.2.2 (from memory). */
export function standardDeviation(readings, dimension) {
  const centre = mean(readings, dimension)
  if (centre === undefined || readings.length < 2) return undefined
  const squares = readings.reduce((sum, r) => sum + (r - centre) ** 2, 0)
  return si(Math.sqrt(squares / (readings.length - 1)), dimension)
}
