/**
 * A root of `f` between two places where it has different signs, to the last digit that doubles give: bisection with inverse
 * quadratic steps where they are safe (Chandrupatla, Advances in Engineering Software 28 (1997) 145; from memory).
 *
 * @returns undefined where `f` has the same sign at both, or a value that is not finite
 */
export function root(f: (x: number) => number, from: number, to: number): number | undefined {
  let [b, a] = [from, to]
  let [fb, fa] = [f(b), f(a)]
  if (fa === 0) return a
  if (fb === 0) return b
  if (!(fa * fb < 0)) return undefined
  let [c, fc] = [a, fa]
  let t = 0.5
  for (let i = 0; i < 100; i++) {
    const x = a + t * (b - a)
    const fx = f(x)
    if (!Number.isFinite(fx)) return undefined
    if (Math.sign(fx) === Math.sign(fa)) {
      ;[c, fc] = [a, fa]
    } else {
      ;[c, b, fc, fb] = [b, a, fb, fa]
    }
    ;[a, fa] = [x, fx]
    const [best, fBest] = Math.abs(fa) < Math.abs(fb) ? [a, fa] : [b, fb]
    const tolerance = 4e-16 * Math.abs(best) + 1e-17
    const limit = tolerance / Math.abs(b - a)
    if (fBest === 0 || limit > 0.5) return best
    const [xi, phi] = [(a - b) / (c - b), (fa - fb) / (fc - fb)]
    const quadratic = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi
    t = quadratic ? (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb)) : 0.5
    t = Math.min(1 - limit, Math.max(limit, t))
  }
  return Math.abs(fa) < Math.abs(fb) ? a : b
}

const GOLDEN = (Math.sqrt(5) - 1) / 2

/** Where `f` is least between two places, for an `f` with one valley there; to a ten-thousandth of the way between them. */
export function leastAt(f: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to]
  let [a, b] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)]
  let [fa, fb] = [f(a), f(b)]
  while (high - low > 1e-4 * (to - from)) {
    if (fa <= fb) {
      ;[high, b, fb] = [b, a, fa]
      a = high - GOLDEN * (high - low)
      fa = f(a)
    } else {
      ;[low, a, fa] = [a, b, fb]
      b = low + GOLDEN * (high - low)
      fb = f(b)
    }
  }
  return (low + high) / 2
}

/** The last good place between one that is good and one that is not, by halving. */
export function lastGood(good: (x: number) => boolean, sure: number, bad: number): number {
  let [low, high] = [sure, bad]
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2
    if (good(middle)) low = middle
    else high = middle
  }
  return low
}
