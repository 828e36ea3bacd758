import { type End, PORT_FAMILIES, type ThreadFamily } from './types.ts'

const THREAD_FAMILIES = ['unified', 'metric', 'npt', 'nptf', 'g', 'r', 'rc', 'rp'] as const satisfies readonly ThreadFamily[]

/** What a shelf of ends is sorted by: how a port seals, what thread a screw has, and for all others what they are. */
export const END_FAMILIES = [...THREAD_FAMILIES, ...PORT_FAMILIES, 'taper', 'round', 'spline', 'tail', 'weld', 'unmeasured'] as const
export type EndFamily = (typeof END_FAMILIES)[number]

/** The family an end belongs to. */
export function familyOf(end: End): EndFamily {
  switch (end.kind) {
    case 'thread':
      return end.thread.family
    case 'port':
      return end.family
    default:
      return end.kind
  }
}
