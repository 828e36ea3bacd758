import { exhaustive } from '../../result/result.ts'
import { furtherOf } from './further.ts'
import { splineCandidates, splineFurther, taperCandidates, taperFurther, taperOf, tubeCandidates, tubeFurther } from './rows.ts'
import { threadCandidates } from './thread.ts'
import type { IdentifyResult, Readings } from './types.ts'

/**
 * What can this be? All threads, hydraulic ends, tapers, tubes or splines of the tables that explain the readings within their
 * uncertainty, the best first, and the one further measurement that tells the leading ones apart. Never a single answer where
 * the readings allow several; an empty list where nothing in the tables explains them.
 */
export function identify(readings: Readings): IdentifyResult {
  switch (readings.what) {
    case 'thread': {
      const candidates = threadCandidates(readings)
      return { what: 'thread', readings, candidates, further: furtherOf(candidates, readings) }
    }
    case 'taper': {
      const ratio = taperOf(readings)
      const candidates = taperCandidates(ratio)
      return { what: 'taper', readings, ratio, candidates, further: taperFurther(candidates, readings) }
    }
    case 'tube': {
      const candidates = tubeCandidates(readings)
      return { what: 'tube', readings, candidates, further: tubeFurther(candidates, readings) }
    }
    case 'spline': {
      const candidates = splineCandidates(readings)
      return { what: 'spline', readings, candidates, further: splineFurther(candidates) }
    }
    default:
      return exhaustive(readings, 'kind of reading')
  }
}
