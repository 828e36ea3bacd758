/** Milliseconds of one call, the middle of `runs` warm ones; what is called first is not counted. */
export async function middleOf(runs: number, call: () => unknown, warmUp = 3): Promise<number> {
  for (let i = 0; i < warmUp; i++) await call()
  return percentile(await timesOf(runs, call), 0.5)
}

/** Milliseconds of each of `runs` calls. */
export async function timesOf(runs: number, call: () => unknown): Promise<readonly number[]> {
  const times: number[] = []
  for (let i = 0; i < runs; i++) {
    const start = performance.now()
    await call()
    times.push(performance.now() - start)
  }
  return times
}

export function percentile(times: readonly number[], share: number): number {
  const sorted = [...times].sort((a, b) => a - b)
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN
}

export const ms = (time: number): string => `${time < 10 ? time.toFixed(2) : time.toFixed(0)} ms`
export const times = (ratio: number): string => `${ratio.toPrecision(3)} ×`
