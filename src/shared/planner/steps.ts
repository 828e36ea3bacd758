import type { Build } from '../model/build.ts'
import type { PartKind } from '../model/part.ts'
import type { Ledger } from './ledger.ts'
import type { JointVerdict, Step } from './plan.ts'

/** A step of the usual order: when it is needed, what it deals with, and what must have been done before. */
interface Template {
  readonly code: string
  readonly after: readonly string[]
  readonly cautions?: readonly string[]
  /** ids it deals with; an empty list leaves the step out; absent: the step is always there */
  readonly about?: (build: Build, joints: readonly JointVerdict[]) => readonly string[]
}

const partsOf =
  (...kinds: readonly PartKind[]) =>
  (build: Build): readonly string[] =>
    build.parts.filter((p) => kinds.includes(p.kind)).map((p) => p.id)
const tubesFor = (serves: 'tie rod' | 'drag link') => (build: Build) =>
  build.parts.filter((p) => p.kind === 'tube' && p.serves === serves).map((p) => p.id)
const jointsBy =
  (...rules: readonly string[]) =>
  (_build: Build, joints: readonly JointVerdict[]): readonly string[] =>
    joints.filter((j) => rules.includes(j.verdict.rule)).map((j) => j.joint)
const jointsWith =
  (aid: string) =>
  (build: Build): readonly string[] =>
    build.joints.filter((j) => (j.with as readonly string[] | undefined)?.includes(aid)).map((j) => j.id)
const weldJoints = (build: Build, joints: readonly JointVerdict[]) => [
  ...new Set([...jointsWith('weld')(build), ...jointsBy('welds')(build, joints)]),
]

/**
 * The safe order of an installation: look first, lift and secure, dry-fit, weld, hang the parts, tighten, fill and purge,
 * set stops and toe, drive, tighten again. Each step waits for the ones it names, as far as they are in the build.
 */
const TEMPLATES: readonly Template[] = [
  { code: 'inspect', after: [] },
  { code: 'dry-fit', after: ['inspect'], about: (_b, joints) => joints.map((j) => j.joint) },
  { code: 'raise', after: ['inspect', 'dry-fit'], cautions: ['stands'] },
  { code: 'relieve-pressure', after: ['raise'], cautions: ['injection', 'hot oil'], about: partsOf('pump', 'steering box', 'hose', 'ram') },
  { code: 'weld', after: ['raise', 'dry-fit', 'relieve-pressure'], cautions: ['weld', 'fire'], about: weldJoints },
  { code: 'axle', after: ['raise', 'weld', 'relieve-pressure'], cautions: ['stands', 'brake'], about: partsOf('axle housing', 'knuckle') },
  { code: 'arms', after: ['axle', 'raise', 'weld'], cautions: ['maker first'], about: partsOf('steering arm', 'knuckle') },
  { code: 'clean-tapers', after: ['arms', 'dry-fit'], cautions: ['taper dry'], about: jointsBy('tapers') },
  { code: 'tie-rod', after: ['clean-tapers', 'arms', 'raise'], about: tubesFor('tie rod') },
  { code: 'box', after: ['raise', 'weld'], cautions: ['one link'], about: partsOf('steering box', 'pitman arm') },
  { code: 'drag-link', after: ['box', 'arms', 'clean-tapers', 'raise'], cautions: ['one link'], about: tubesFor('drag link') },
  { code: 'measure-travel', after: ['tie-rod', 'drag-link', 'raise'], cautions: ['pinch'] },
  { code: 'knuckle-stops', after: ['measure-travel'], cautions: ['pinch'] },
  { code: 'ram', after: ['knuckle-stops', 'tie-rod', 'weld', 'relieve-pressure'], cautions: ['pinch'], about: partsOf('ram') },
  { code: 'ram-through-travel', after: ['ram', 'knuckle-stops'], cautions: ['pinch'], about: partsOf('ram') },
  { code: 'hoses', after: ['ram-through-travel', 'box', 'relieve-pressure'], cautions: ['injection'], about: partsOf('hose', 'adapter') },
  {
    code: 'torque',
    after: ['tie-rod', 'drag-link', 'box', 'ram', 'hoses', 'arms', 'axle'],
    cautions: ['maker first'],
    about: (b) => (b.torqueSpecs ?? []).map((s) => s.id),
  },
  { code: 'cotters', after: ['torque', 'tie-rod', 'drag-link'], cautions: ['cotter'], about: jointsWith('castle nut and cotter') },
  { code: 'jam-nuts', after: ['torque'], about: jointsWith('jam nut') },
  { code: 'fill', after: ['hoses', 'torque'], cautions: ['injection'], about: partsOf('pump', 'reservoir', 'fluid') },
  {
    code: 'ram-direction',
    after: ['fill', 'cotters', 'ram-through-travel'],
    cautions: ['stands', 'pinch', 'injection'],
    about: partsOf('ram'),
  },
  { code: 'purge', after: ['fill', 'cotters', 'ram-direction'], cautions: ['injection', 'stands', 'pinch'], about: partsOf('pump', 'ram') },
  { code: 'leak-check', after: ['purge'], cautions: ['injection', 'hot oil'], about: partsOf('hose', 'ram') },
  { code: 'full-lock-check', after: ['purge', 'leak-check', 'knuckle-stops', 'cotters'], cautions: ['pinch'] },
  { code: 'lower', after: ['full-lock-check', 'cotters', 'torque', 'leak-check'], cautions: ['stands'] },
  { code: 'toe', after: ['lower', 'full-lock-check'], about: tubesFor('tie rod') },
  { code: 'jam-nuts-after-toe', after: ['toe', 'jam-nuts'], about: jointsWith('jam nut') },
  { code: 'first-drive', after: ['lower', 'toe', 'jam-nuts-after-toe'], cautions: ['road law', 'mechanic'] },
  { code: 're-torque', after: ['first-drive'], cautions: ['cotter'], about: (b) => (b.torqueSpecs ?? []).map((s) => s.id) },
]

/** The installation's steps in a safe order, and the user's own tasks in theirs. A circle among the tasks is a finding, and they keep the file's order. */
export function planSteps(build: Build, joints: readonly JointVerdict[], ledger: Ledger): readonly Step[] {
  return [...usualSteps(build, joints), ...ownTasks(build, ledger)]
}

function usualSteps(build: Build, joints: readonly JointVerdict[]): readonly Step[] {
  const present = TEMPLATES.flatMap((t) => {
    const about = t.about?.(build, joints) ?? []
    return t.about !== undefined && about.length === 0 ? [] : [{ ...t, about }]
  })
  const codes = new Set(present.map((t) => t.code))
  const steps = present.map(
    (t): Step => ({ code: t.code, about: t.about, cautions: t.cautions ?? [], after: t.after.filter((c) => codes.has(c)) }),
  )
  const ordered = inOrder(steps, (s) => s.code)
  if (!ordered) throw new Error('the usual steps wait for each other in a circle')
  return ordered
}

function ownTasks(build: Build, ledger: Ledger): readonly Step[] {
  const steps = (build.tasks ?? []).map(
    (task): Step => ({ code: 'own task', about: [task.id, ...(task.needs ?? [])], cautions: [], after: task.after, typed: task.name }),
  )
  const ordered = inOrder(steps, (s) => s.about[0] as string)
  if (!ordered) ledger.add({ code: 'tasks.circle', severity: 'stops', about: ['tasks'] })
  return ordered ?? steps
}

/** Orders by what comes before what; where that leaves a choice, the order given stands. Undefined when they wait for each other in a circle. */
function inOrder(steps: readonly Step[], key: (s: Step) => string): readonly Step[] | undefined {
  const waiting = [...steps]
  const done = new Set<string>()
  const out: Step[] = []
  while (waiting.length > 0) {
    const next = waiting.findIndex((step) => step.after.every((before) => done.has(before)))
    const [step] = next < 0 ? [] : waiting.splice(next, 1)
    if (!step) return undefined
    done.add(key(step))
    out.push(step)
  }
  return out
}
