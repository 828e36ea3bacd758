import { JOINT_AIDS, type JointAid } from '../../../shared/model/joint.ts'

/** What goes between two ends or on them: each named aid meets the condition that asks for it. */
export function Aids(props: { readonly legend: string; readonly chosen: readonly JointAid[]; readonly onToggle: (aid: JointAid) => void }) {
  return (
    <fieldset className="aids">
      <legend>{props.legend}</legend>
      {JOINT_AIDS.map((aid) => (
        <label key={aid} className="tickable">
          <input type="checkbox" checked={props.chosen.includes(aid)} onChange={() => props.onToggle(aid)} />
          {aid}
        </label>
      ))}
    </fieldset>
  )
}
