import type { Connection, End, PortEnd } from '../../model/end/types.ts'
import { fitEnds } from '../fit/fit.ts'
import { carriesOil } from './end-class.ts'
import { otherSex, write } from './end-text.ts'
import type { Instead } from './types.ts'

/** The hose end that goes on an end without anything between; undefined where a hose has none. */
function counterpart(end: End): Connection | undefined {
  if (end.kind === 'port') {
    if (end.sex === null) return undefined
    const { family, size, thread } = end
    const other: PortEnd = { kind: 'port', family, size, thread, sex: otherSex(end.sex) }
    return write(other)
  }
  if (end.kind !== 'thread' || end.sex === null || end.hand === 'left') return undefined
  const { thread } = end
  const sex = otherSex(end.sex)
  if (thread.family === 'npt' || thread.family === 'nptf' || thread.family === 'g')
    return write({ kind: 'thread', thread, hand: 'right', sex })
  return undefined
}

/** For each of the two ends that may be a hose's: what it would have to be to go on the other directly. */
export function insteadOf(a: End, b: End, hoseEnds: readonly ('a' | 'b')[]): readonly Instead[] {
  if (!carriesOil(a) || !carriesOil(b)) return []
  return hoseEnds.flatMap((change): Instead[] => {
    const stays = change === 'a' ? b : a
    const to = counterpart(stays)
    if (!to) return []
    const verdict = fitEnds(to.end, stays)
    return verdict.kind === 'fits' || verdict.kind === 'fits if' ? [{ change, to, verdict }] : []
  })
}
