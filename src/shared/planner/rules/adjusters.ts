import type { Build } from '../../model/build.ts'
import type { ThreadEnd } from '../../model/end/types.ts'
import type { Ledger } from '../ledger.ts'

/**
 * A tie rod or drag link is set for length by turning its tube, which needs a right-hand thread at one end and a left-hand
 * thread at the other. The same hand and pitch at both ends sets nothing; the same hand and another pitch sets slowly.
 */
export function checkAdjusters(build: Build, ledger: Ledger): void {
  build.parts.forEach((part, i) => {
    if (part.kind !== 'tube' || (part.serves !== 'tie rod' && part.serves !== 'drag link')) return
    const threads = part.ends.map((e) => e.connection.end).filter((e): e is ThreadEnd => e.kind === 'thread')
    const [a, b] = threads
    if (threads.length !== 2 || !a || !b || a.hand !== b.hand) return
    const samePitch = a.thread.pitch === b.thread.pitch
    ledger.add({
      code: samePitch ? 'adjuster.none' : 'adjuster.slow',
      severity: 'look',
      about: ['parts', i, 'ends'],
      facts: { part: part.name, serves: part.serves, hand: a.hand },
    })
  })
}
