import { startTransition, useOptimistic } from 'react'
import { PART_STATES, type PartFile } from '../../../shared/model/part.ts'

type State = PartFile['state']

/** How far a part has come; shows the choice at once, and the old one again should it not be kept. */
export function StateSelect(props: {
  readonly label: string
  readonly state: State
  readonly onChoose: (state: State) => Promise<unknown>
}) {
  const [shown, show] = useOptimistic(props.state)
  return (
    <select
      aria-label={props.label}
      value={shown}
      onChange={(event) => {
        const state = PART_STATES.find((one) => one === event.target.value) ?? props.state
        startTransition(async () => {
          show(state)
          await props.onChoose(state)
        })
      }}
    >
      {PART_STATES.map((state) => (
        <option key={state}>{state}</option>
      ))}
    </select>
  )
}
