import { describe, expect, it } from 'vitest'
import { DEMO_FILES } from '../../../../src/main/procedures/demo.ts'
import { changeHoseEnd, putChain, shelfIds } from '../../../../src/renderer/parts/joints/chain.ts'
import {
  addJoint,
  jointsOf,
  leaveOpen,
  removeJoint,
  removePart,
  replacePart,
  toggleAid,
  unjoinedEnds,
} from '../../../../src/renderer/parts/joints/steps.ts'
import type { BuildFile } from '../../../../src/shared/model/build.ts'
import { parseEnd } from '../../../../src/shared/model/end/parse.ts'
import { checkBuild } from '../../../../src/shared/model/exchange.ts'
import { makeAcrossIndex, wayAcross } from '../../../../src/shared/planner/across/across.ts'
import { plan } from '../../../../src/shared/planner/index.ts'
import { acrossWords } from '../../../../src/shared/report/text/across.ts'
import { showIn } from '../../../../src/shared/report/units.ts'

const bought = DEMO_FILES.bought

/** The file after a step, which the program must still take. */
function checked(file: BuildFile | null): BuildFile {
  if (file === null) throw new Error('the step found nothing to do')
  const answer = checkBuild(file)
  if (!answer.ok) throw new Error(JSON.stringify(answer.issues))
  return file
}

const end = (typed: string) => {
  const read = parseEnd(typed)
  if (!read.ok) throw new Error(typed)
  return read.value
}

describe('a step on a build', () => {
  it('takes any part out with its joints, and the file stays whole', () => {
    for (const part of bought.parts) {
      const file = checked(removePart(part.id)(bought))
      expect(file.parts).toHaveLength(bought.parts.length - 1)
      expect(file.joints).toHaveLength(bought.joints.length - jointsOf(bought, part.id).length)
    }
  })

  it('takes the joints along when an end is renamed, and lets those go whose end is gone', () => {
    const [part] = bought.parts.filter(({ id, ends }) => ends.length > 1 && jointsOf(bought, id).length > 1)
    if (part === undefined) throw new Error('no such part')
    const [first, ...others] = part.ends
    if (first === undefined) throw new Error('no end')
    const renamed = checked(
      replacePart({ ...part, ends: [{ ...first, name: 'elsewhere' }, ...others] }, new Map([[first.name, 'elsewhere']]))(bought),
    )
    expect(renamed.joints).toHaveLength(bought.joints.length)
    expect(jointsOf(renamed, part.id, 'elsewhere')).toHaveLength(jointsOf(bought, part.id, first.name).length)
    const gone = checked(replacePart({ ...part, ends: others }, new Map([[first.name, null]]))(bought))
    expect(gone.joints).toHaveLength(bought.joints.length - jointsOf(bought, part.id, first.name).length)
  })

  it('names an aid and takes it off again', () => {
    const [joint] = bought.joints
    if (joint === undefined) throw new Error('no joint')
    const { with: had = [] } = joint
    const once = checked(toggleAid(joint.id, 'sealant')(bought))
    expect(once.joints[0]?.with).toEqual([...had, 'sealant'])
    expect(checked(toggleAid(joint.id, 'sealant')(once))).toEqual(bought)
  })

  it('leaves an end open and waits again', () => {
    const [joint] = bought.joints
    if (joint === undefined) throw new Error('no joint')
    const loose = checked(removeJoint(joint.id)(bought))
    const waiting = unjoinedEnds(loose).filter((one) => one.end.leftOpen !== true)
    expect(waiting.map((one) => one.ref)).toEqual(expect.arrayContaining([joint.a, joint.b]))
    const [one] = waiting
    if (one === undefined) throw new Error('nothing waits')
    const open = checked(leaveOpen(one.part.id, one.end.name, true)(loose))
    expect(unjoinedEnds(open).filter(({ end: it }) => it.leftOpen !== true)).toHaveLength(waiting.length - 1)
    expect(checked(leaveOpen(one.part.id, one.end.name, false)(open))).toEqual(loose)
  })
})

describe('a chain put in the place of a joint', () => {
  const build = (): BuildFile => ({
    ...bought,
    parts: [
      { kind: 'steering box', id: 'box', name: 'Box', state: 'here', ends: [{ name: 'port', connection: '-6 O-ring boss female' }] },
      {
        kind: 'hose',
        id: 'hose',
        name: 'Hose',
        state: 'here',
        ends: [
          { name: 'a', connection: '-6 37° flare female' },
          { name: 'b', connection: '-6 37° flare female', leftOpen: true },
        ],
      },
    ],
    joints: [{ id: 'bad', a: 'box/port', b: 'hose/a' }],
    torqueSpecs: [],
    torqueRecords: [],
    tasks: [],
  })
  const ways = () => acrossWords(wayAcross(end('-6 O-ring boss female'), end('-6 37° flare female'), makeAcrossIndex([])), showIn('inch'))
  const verdicts = (file: BuildFile) => {
    const answer = checkBuild(file)
    if (!answer.ok) throw new Error(JSON.stringify(answer.issues))
    return plan(answer.value.build).joints
  }

  it('leaves joints that all hold, and no other trouble', () => {
    const [chain] = ways().chains
    const file = build()
    const [joint] = file.joints
    if (chain === undefined || joint === undefined) throw new Error('no chain')
    expect(verdicts(file).map(({ verdict }) => verdict.kind)).toEqual(['does not fit'])
    const after = checked(putChain(joint, chain, new Map())(file))
    expect(after.joints).toHaveLength(chain.pieces.length + 1)
    expect(verdicts(after).every(({ verdict, unmet }) => verdict.kind.startsWith('fits') && unmet.length === 0)).toBe(true)
    expect(after.parts.filter(({ state }) => state === 'to order')).toHaveLength(chain.pieces.length)
    expect(shelfIds(chain)).toEqual([])
    // the joint it was made for is gone: a second press does nothing
    expect(putChain(joint, chain, new Map())(after)).toBeNull()
  })

  it('can have the hose made with another end instead', () => {
    const file = build()
    const [joint] = file.joints
    const change = ways().changes.find((one) => one.change === 'b')
    if (joint === undefined || change === undefined) throw new Error('no change')
    const after = checked(changeHoseEnd(joint, change)(file))
    expect(verdicts(after).map(({ verdict }) => verdict.kind)).toEqual(['fits'])
    expect(after.parts).toHaveLength(2)
  })

  it('joins two ends under a name of its own', () => {
    const file = build()
    const again = checked(addJoint('box/port', 'hose/b', ['sealant'])(checked(addJoint('box/port', 'hose/b', [])(file))))
    expect(again.joints.map((joint) => joint.id)).toEqual(['bad', 'box-hose', 'box-hose-2'])
  })
})
