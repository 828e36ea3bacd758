import type { Build } from '../../model/build.ts'
import { splitEndRef } from '../../model/joint.ts'
import type { JointVerdict, Plan } from '../../planner/plan.ts'
import { capital, column, sentence, state, text } from '../cells.ts'
import type { DocumentCell, Section } from '../document.ts'
import { verdictWords } from '../text/index.ts'
import type { Show } from '../units.ts'

/** Every joint with both ends as typed, its verdict, and why. */
export function fitSection(build: Build, plan: Plan, show: Show): Section {
  if (plan.joints.length === 0) {
    return {
      id: 'fit',
      heading: 'Fit check',
      blocks: [{ kind: 'paragraph', text: 'No joints are named in this build, so no fit was checked.' }],
    }
  }
  return {
    id: 'fit',
    heading: 'Fit check',
    blocks: [
      {
        kind: 'table',
        caption: 'Fit of every joint',
        columns: [
          column('Joint', 1.7),
          column('One end', 2.2),
          column('Other end', 2.2),
          column('Verdict', 1.7),
          column('Why, and what to do', 3.4),
        ],
        rows: plan.joints.map((j, i) => jointRow(build, j, i + 1, show)),
      },
    ],
  }
}

function jointRow(build: Build, joint: JointVerdict, number: number, show: Show): DocumentCell[] {
  const words = verdictWords(joint.verdict, show)
  const conditions = words.conditions.map((c, i) => {
    const code = joint.verdict.conditions[i]
    return code !== undefined && joint.unmet.includes(code) ? `Still needed: ${c}` : `Named on the joint: ${c}`
  })
  const todo = [...conditions, ...words.measure.map((m) => `Measure: ${m}`)]
  const named = build.joints.find((j) => j.id === joint.joint)?.name
  return [
    text(named === undefined ? String(number) : `${number} ${named}`),
    endCell(build, joint.a),
    endCell(build, joint.b),
    joint.verdict.kind === 'fits if' && joint.unmet.length === 0 ? state('good', 'fits, as joined') : state(words.state, words.word),
    text(words.reasons.map(capital).map(sentence).join(' ') || 'A dimension that decides is missing.', todo.map(sentence).join(' ')),
  ]
}

/** The part's name above, the end as it was typed below. */
function endCell(build: Build, ref: string): DocumentCell {
  const { part: partId, end: endName } = splitEndRef(ref)
  const part = build.parts.find((p) => p.id === partId)
  const end = part?.ends.find((e) => e.name === endName)
  return text(part ? `${part.name}, ${endName}` : ref, end?.connection.typed ?? null)
}
