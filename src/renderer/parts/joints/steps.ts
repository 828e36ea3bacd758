import type { BuildFile } from '../../../shared/model/build.ts'
import { type JointAid, splitEndRef } from '../../../shared/model/joint.ts'
import type { PartFile } from '../../../shared/model/part.ts'
import type { Step } from '../../app/build-file.ts'
import { freeId } from '../editor/form.ts'

/*
 * What can be done to a build's parts and joints. Each step works on the file as it is when its turn comes.
 */

export type JointFile = BuildFile['joints'][number]

/** Joints that an end, or any end of a part, takes part in. */
export const jointsOf = (file: BuildFile, part: string, end?: string): readonly JointFile[] =>
  file.joints.filter((joint) =>
    [joint.a, joint.b].some((ref) => (end === undefined ? splitEndRef(ref).part === part : ref === `${part}/${end}`)),
  )

/** The file without some joints, and out of the torques that name them; such a torque stays, with what was recorded of it. */
function withoutJoints(file: BuildFile, gone: ReadonlySet<string>): BuildFile {
  const joints = file.joints.filter((joint) => !gone.has(joint.id))
  if (file.torqueSpecs === undefined) return { ...file, joints }
  const torqueSpecs = file.torqueSpecs.map((spec) => {
    if (spec.joints === undefined) return spec
    const { joints: named, ...rest } = spec
    const left = named.filter((joint) => !gone.has(joint))
    return left.length === 0 ? rest : { ...rest, joints: left }
  })
  return { ...file, joints, torqueSpecs }
}

/** Takes a part out, with its joints, and out of the tasks that wait for it. */
export const removePart =
  (id: string): Step =>
  (file) => {
    const gone = new Set(jointsOf(file, id).map((joint) => joint.id))
    const rest = withoutJoints(file, gone)
    const tasks = rest.tasks?.map((task) =>
      task.needs === undefined ? task : { ...task, needs: task.needs.filter((need) => need !== id) },
    )
    return { ...rest, parts: rest.parts.filter((part) => part.id !== id), ...(tasks === undefined ? {} : { tasks }) }
  }

/** Puts a part in the place of the one with its id; its joints follow the new names of its ends, and go with ends that are gone. */
export const replacePart =
  (part: PartFile, renamed: ReadonlyMap<string, string | null>): Step =>
  (file) => {
    const named = (ref: string): string | null => {
      const { part: of, end } = splitEndRef(ref)
      if (of !== part.id || !renamed.has(end)) return ref
      const now = renamed.get(end)
      return now === null || now === undefined ? null : `${of}/${now}`
    }
    const gone = new Set(file.joints.filter((joint) => named(joint.a) === null || named(joint.b) === null).map((joint) => joint.id))
    const rest = withoutJoints(file, gone)
    const joints = rest.joints.map((joint) => ({ ...joint, a: named(joint.a) ?? joint.a, b: named(joint.b) ?? joint.b }))
    return { ...rest, joints, parts: rest.parts.map((one) => (one.id === part.id ? part : one)) }
  }

export const addPart =
  (part: PartFile): Step =>
  (file) => ({ ...file, parts: [...file.parts, part] })

/** Sets one thing of a part, leaving the rest to the letter. */
export const changePart =
  (id: string, change: (part: PartFile) => PartFile): Step =>
  (file) => ({ ...file, parts: file.parts.map((part) => (part.id === id ? change(part) : part)) })

export const removeJoint =
  (id: string): Step =>
  (file) =>
    withoutJoints(file, new Set([id]))

/** A new joint named after the parts it joins. */
export function jointBetween(file: BuildFile, a: string, b: string, aids: readonly JointAid[]): JointFile {
  const taken = new Set(file.joints.map((joint) => joint.id))
  const id = freeId(`${splitEndRef(a).part}-${splitEndRef(b).part}`.slice(0, 56), taken)
  return { id, a, b, ...(aids.length === 0 ? {} : { with: [...aids] }) }
}

export const addJoint =
  (a: string, b: string, aids: readonly JointAid[]): Step =>
  (file) => ({ ...file, joints: [...file.joints, jointBetween(file, a, b, aids)] })

/** Names an aid on a joint, or takes it off. */
export const toggleAid =
  (id: string, aid: JointAid): Step =>
  (file) => ({
    ...file,
    joints: file.joints.map((joint) => {
      if (joint.id !== id) return joint
      const { with: had = [], ...rest } = joint
      const now = had.includes(aid) ? had.filter((one) => one !== aid) : [...had, aid]
      return now.length === 0 ? rest : { ...rest, with: now }
    }),
  })

/** Marks an end as left open on purpose, or not. */
export const leaveOpen = (part: string, end: string, open: boolean): Step =>
  changePart(part, (one) => ({
    ...one,
    ends: one.ends.map((each) => {
      if (each.name !== end) return each
      const { leftOpen: _, ...rest } = each
      return open ? { ...rest, leftOpen: true } : rest
    }),
  }))

/** Every end of every part that no joint holds. */
export function unjoinedEnds(file: BuildFile) {
  const held = new Set(file.joints.flatMap((joint) => [joint.a, joint.b]))
  return file.parts.flatMap((part) =>
    part.ends.flatMap((end) => (held.has(`${part.id}/${end.name}`) ? [] : [{ part, end, ref: `${part.id}/${end.name}` }])),
  )
}

/** The part and end that a reference names. */
export function endAt(file: BuildFile, ref: string) {
  const { part: id, end: name } = splitEndRef(ref)
  const part = file.parts.find((one) => one.id === id)
  const end = part?.ends.find((one) => one.name === name)
  return part === undefined || end === undefined ? undefined : { part, end }
}
