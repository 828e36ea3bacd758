import type { End, EndKind } from '../../model/end/types.ts'
import { doesNotFit, fitsIf, notKnown, reason } from './make.ts'
import { fitBoltThread, fitRounds, fitSplines, fitTails } from './plain.ts'
import { fitPorts, fitThreadWithPort } from './ports.ts'
import { FROM } from './sources.ts'
import { fitTapers } from './tapers.ts'
import { fitThreads } from './threads.ts'
import type { Verdict } from './verdict.ts'

const ORDER: readonly EndKind[] = ['unmeasured', 'weld', 'thread', 'port', 'taper', 'round', 'spline', 'tail']

/**
 * Does this end go on that one? The order in which the two are named does not matter.
 *
 * @returns a verdict with the rule that decided, its reasons with numbers and sources, the conditions to be met, or what
 *   to measure where something is missing; never "fits" on missing data
 */
export function fitEnds(one: End, other: End): Verdict {
  const [a, b] = ORDER.indexOf(one.kind) <= ORDER.indexOf(other.kind) ? [one, other] : [other, one]
  if (a.kind === 'unmeasured') return notKnown('measure first', ['what this end is'])
  if (a.kind === 'weld') return fitWeld(b)
  if (a.kind === 'thread' && b.kind === 'thread') return fitThreads(a, b)
  if (a.kind === 'thread' && b.kind === 'port') return fitThreadWithPort(a, b)
  if (a.kind === 'thread' && b.kind === 'round') return fitBoltThread(a, b)
  if (a.kind === 'port' && b.kind === 'port') return fitPorts(a, b)
  if (a.kind === 'taper' && b.kind === 'taper') return fitTapers(a, b)
  if (a.kind === 'round' && b.kind === 'round') return fitRounds(a, b)
  if (a.kind === 'spline' && b.kind === 'spline') return fitSplines(a, b)
  if (a.kind === 'tail' && b.kind === 'tail') return fitTails(a, b)
  return doesNotFit('kinds', [reason('kinds', FROM.kinds, { a: a.kind, b: b.kind })])
}

function fitWeld(b: End): Verdict {
  if (b.kind === 'weld' || (b.kind === 'round' && b.form === 'tube')) return fitsIf('welds', ['weld'], [reason('weld', FROM.weld)])
  return doesNotFit('kinds', [reason('kinds', FROM.kinds, { a: 'weld', b: b.kind })])
}
