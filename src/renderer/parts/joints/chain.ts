import { JOINT_AIDS, type JointAid } from '../../../shared/model/joint.ts'
import type { PartFile } from '../../../shared/model/part.ts'
import type { AcrossWords, ChainWords, InsteadWords, PieceWords } from '../../../shared/report/text/across.ts'
import type { Step } from '../../app/build-file.ts'
import { freeId, idFrom } from '../editor/form.ts'
import { addJoint, changePart, endAt, type JointFile, removeJoint } from './steps.ts'

const onShelf = (piece: PieceWords): boolean => piece.from === 'on the shelf'

/** The name of a piece's end in the build: a piece to buy has none in a file yet, so one is made of what the end is called. */
const endName = (piece: PieceWords, side: 'in' | 'out'): string => (onShelf(piece) ? piece[side].name : idFrom(piece[side].name))

/** Ids of the pieces that lie on the shelf. */
export const shelfIds = (chain: ChainWords): readonly string[] => chain.pieces.filter(onShelf).map((piece) => piece.id)

/** A piece as a part of the build: the shelf's own with all it says, or one to buy with what is known of it. */
function partFor(piece: PieceWords, shelf: ReadonlyMap<string, PartFile>): PartFile {
  const kept = onShelf(piece) ? shelf.get(piece.id) : undefined
  if (kept !== undefined) return kept
  return {
    kind: 'adapter',
    id: idFrom(piece.id),
    name: piece.name,
    ...(piece.price === null ? {} : { price: piece.price }),
    state: 'to order',
    ends: (['in', 'out'] as const).map((side) => ({ name: endName(piece, side), connection: piece[side].connection })),
  }
}

const aidsOf = (codes: readonly string[]): readonly JointAid[] => JOINT_AIDS.filter((aid) => codes.includes(aid))

/** Puts a chain in the place of a joint: its pieces become parts, its meetings joints with what they need named. */
export const putChain =
  (joint: JointFile, chain: ChainWords, shelf: ReadonlyMap<string, PartFile>): Step =>
  (file) => {
    if (!file.joints.some((one) => one.id === joint.id)) return null
    const taken = new Set(file.parts.map((part) => part.id))
    const placed = chain.pieces.map((piece) => {
      const part = partFor(piece, shelf)
      const id = freeId(part.id, taken)
      taken.add(id)
      return { part: { ...part, id }, in: `${id}/${endName(piece, 'in')}`, out: `${id}/${endName(piece, 'out')}` }
    })
    const along = [joint.a, ...placed.flatMap((piece) => [piece.in, piece.out]), joint.b]
    const cleared = removeJoint(joint.id)(file) ?? file
    const withParts = { ...cleared, parts: [...cleared.parts, ...placed.map(({ part }) => part)] }
    return chain.meetings.reduce((now, meeting, at) => {
      const [a, b] = [along[2 * at], along[2 * at + 1]]
      return a === undefined || b === undefined ? now : (addJoint(a, b, aidsOf(meeting.with))(now) ?? now)
    }, withParts)
  }

/** Has the hose made with another end, so that it goes on directly. */
export const changeHoseEnd =
  (joint: JointFile, change: InsteadWords): Step =>
  (file) => {
    const hose = endAt(file, joint[change.change])
    if (hose === undefined) return null
    const changed = changePart(hose.part.id, (part) => ({
      ...part,
      ends: part.ends.map((end) => (end.name === hose.end.name ? { ...end, connection: change.to } : end)),
    }))(file)
    const aids = aidsOf(change.with)
    if (changed === null || aids.length === 0) return changed
    return { ...changed, joints: changed.joints.map((one) => (one.id === joint.id ? { ...one, with: [...aids] } : one)) }
  }

/** Every chain of an answer, the best first. */
export const chainsOf = (words: AcrossWords): readonly { readonly chain: ChainWords; readonly buying: boolean }[] => [
  ...words.chains.map((chain) => ({ chain, buying: false })),
  ...words.buying.map((chain) => ({ chain, buying: true })),
]
