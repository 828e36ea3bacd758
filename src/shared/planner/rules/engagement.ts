import type { Build } from '../../model/build.ts'
import { splitEndRef } from '../../model/joint.ts'
import { indexEnds } from '../ends.ts'
import type { Ledger } from '../ledger.ts'

/** A thread that sets the length of a steering link must say how far it is screwed in: the verdict "fits" says nothing of that. */
export function checkEngagement(build: Build, ledger: Ledger): void {
  const links = new Map(
    build.parts.flatMap((p) => (p.kind === 'tube' && (p.serves === 'tie rod' || p.serves === 'drag link') ? [[p.id, p]] : [])),
  )
  const ends = indexEnds(build)
  build.joints.forEach((joint, i) => {
    const link = links.get(splitEndRef(joint.a).part) ?? links.get(splitEndRef(joint.b).part)
    const [a, b] = [joint.a, joint.b].map((ref) => ends.get(ref)?.end.connection.end)
    if (!link || a?.kind !== 'thread' || b?.kind !== 'thread') return
    if (a.length === undefined && b.length === undefined) ledger.measure('engagement', ['joints', i], { part: link.name })
  })
}
