import { useRef, useState } from 'react'
import { JOINT_AIDS, type JointAid } from '../../../shared/model/joint.ts'

/**
 * What goes between two ends or on them: each named aid meets the condition that asks for it. A choice shows at once and stays
 * as chosen until the last write has come back; then what is stored is shown.
 */
export function Aids(props: {
  readonly legend: string
  readonly chosen: readonly JointAid[]
  readonly onToggle: (aid: JointAid) => unknown
}) {
  const [asked, setAsked] = useState<readonly JointAid[] | null>(null)
  const underWay = useRef(0)
  const chosen = asked ?? props.chosen
  const toggle = async (aid: JointAid) => {
    setAsked(chosen.includes(aid) ? chosen.filter((one) => one !== aid) : [...chosen, aid])
    underWay.current += 1
    try {
      await props.onToggle(aid)
    } finally {
      underWay.current -= 1
      if (underWay.current === 0) setAsked(null)
    }
  }
  return (
    <fieldset className="aids">
      <legend>{props.legend}</legend>
      {JOINT_AIDS.map((aid) => (
        <label key={aid} className="tickable">
          <input type="checkbox" checked={chosen.includes(aid)} onChange={() => void toggle(aid)} />
          {aid}
        </label>
      ))}
    </fieldset>
  )
}
