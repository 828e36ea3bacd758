import type { Build } from '../../model/build.ts'
import type { ThreadEnd } from '../../model/end/types.ts'
import { splitEndRef } from '../../model/joint.ts'
import type { Ledger } from '../ledger.ts'

/**
 * A tie rod or drag link is set for length by turning its tube, which needs a right-hand thread at one end and a left-hand
 * thread at the other. The same hand and pitch at both ends sets nothing; the same hand and another pitch sets slowly.
 */
export function checkAdjusters(build: Build, ledger: Ledger): void {
  checkLocks(build, ledger)
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

/** Every thread that sets the length of a tie rod or drag link is locked, by a jam nut or by the clamp of a sleeve. */
function checkLocks(build: Build, ledger: Ledger): void {
  const links = new Map(
    build.parts.flatMap((p) => (p.kind === 'tube' && (p.serves === 'tie rod' || p.serves === 'drag link') ? [[p.id, p]] : [])),
  )
  build.joints.forEach((joint, i) => {
    const link = [joint.a, joint.b].map((ref) => ({ ref, part: links.get(splitEndRef(ref).part) })).find(({ part }) => part !== undefined)
    const end = link?.part?.ends.find((e) => `${link.part?.id}/${e.name}` === link.ref)
    if (!link?.part || end?.connection.end.kind !== 'thread') return
    if (joint.with?.includes('jam nut') || joint.with?.includes('pinch bolt')) return
    ledger.add({
      code: 'adjuster.not_locked',
      severity: 'stops',
      about: ['joints', i, 'with'],
      facts: { part: link.part.name, end: end.name },
    })
  })
}
