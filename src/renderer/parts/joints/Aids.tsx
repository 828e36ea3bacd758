import { startTransition, useOptimistic } from 'react'
import { JOINT_AIDS, type JointAid } from '../../../shared/model/joint.ts'

/** What goes between two ends or on them: each named aid meets the condition that asks for it. */
export function Aids(props: {
  readonly legend: string
  readonly chosen: readonly JointAid[]
  readonly onToggle: (aid: JointAid) => unknown
}) {
  const [chosen, choose] = useOptimistic(props.chosen)
  const toggle = (aid: JointAid) =>
    startTransition(async () => {
      choose((now) => (now.includes(aid) ? now.filter((one) => one !== aid) : [...now, aid]))
      await props.onToggle(aid)
    })
  return (
    <fieldset className="aids">
      <legend>{props.legend}</legend>
      {JOINT_AIDS.map((aid) => (
        <label key={aid} className="tickable">
          <input type="checkbox" checked={chosen.includes(aid)} onChange={() => toggle(aid)} />
          {aid}
        </label>
      ))}
    </fieldset>
  )
}
