import { type FormEvent, type KeyboardEvent, useId, useState } from 'react'
import { type Reach, writtenTravel } from '../../../shared/planner/linkage/drag.ts'
import type { Side, SteeringGeometry } from '../../../shared/planner/linkage/plan-types.ts'
import { problemSentence } from '../../../shared/report/index.ts'
import type { LedgerSide } from '../../../shared/report/live/ledger.ts'
import { type LiveSteering, placeOf, stepOf } from '../../../shared/report/live/steering.ts'
import type { Units } from '../../app/queries.ts'
import { FieldShell } from '../fields/FieldShell.tsx'

/** Presses of the arrow keys that Page Up and Page Down are worth. */
const PAGE = 8

/** The way through the travel without a mouse: a slider for the arrow keys, a field for a number, and a button for each limit. */
export function TravelControls(props: {
  readonly geometry: SteeringGeometry
  readonly reach: Reach
  readonly live: LiveSteering
  readonly ledger: readonly LedgerSide[]
  readonly units: Units
  readonly onTravel: (travel: number) => void
}) {
  const { live, reach, units, onTravel } = props
  const id = useId()
  const onKey = (event: KeyboardEvent<HTMLInputElement>) => {
    const step = stepOf(units) * (event.shiftKey ? PAGE : 1)
    const to: Readonly<Record<string, number>> = {
      ArrowLeft: live.travel + step,
      ArrowUp: live.travel + step,
      ArrowRight: live.travel - step,
      ArrowDown: live.travel - step,
      PageUp: live.travel + PAGE * step,
      PageDown: live.travel - PAGE * step,
      Home: reach.left,
      End: -reach.right,
    }
    const next = to[event.key]
    if (next === undefined || event.ctrlKey || event.altKey || event.metaKey) return
    event.preventDefault()
    onTravel(next)
  }
  return (
    <div className="travel">
      <div className="travel-slider">
        <label htmlFor={`${id}slider`}>Travel</label>
        <span aria-hidden="true">left</span>
        {/* the slider's left end is the left turn, as on the picture */}
        <input
          id={`${id}slider`}
          type="range"
          min={-reach.left}
          max={reach.right}
          step="any"
          value={-live.travel}
          aria-valuetext={placeOf(live.travel, units)}
          aria-describedby={`${id}keys`}
          onKeyDown={onKey}
          onChange={(event) => onTravel(-Number(event.target.value))}
        />
        <span aria-hidden="true">right</span>
      </div>
      <p id={`${id}keys`} className="quiet">
        Arrow keys go by {units === 'inch' ? '1/16 in' : '1 mm'}, with Shift or by Page Up and Down eight times as far; Home and End go to
        full left and full right.
      </p>
      <div className="travel-to">
        {props.ledger.flatMap((side) =>
          side.stops.map((stop) => (
            <button key={stop.key} type="button" className="button button-small" onClick={() => onTravel(stop.travel)}>
              {side.side}: {stop.what}
            </button>
          )),
        )}
        <button type="button" className="button button-small" onClick={() => onTravel(0)}>
          Straight ahead
        </button>
      </div>
      <Written {...props} />
    </div>
  )
}

/** A travel or a wheel angle in writing. */
function Written(props: {
  readonly geometry: SteeringGeometry
  readonly reach: Reach
  readonly units: Units
  readonly onTravel: (travel: number) => void
}) {
  const [typed, setTyped] = useState('')
  const [side, setSide] = useState<Side>('left')
  const [problem, setProblem] = useState<string | null>(null)
  const go = (event: FormEvent) => {
    event.preventDefault()
    const found = writtenTravel(props.geometry, props.reach, side, typed, props.units === 'inch' ? 'in' : 'mm')
    if (found.ok) props.onTravel(found.value)
    setProblem(found.ok ? null : found.issues.map((one) => problemSentence(one).sentence).join(' '))
  }
  return (
    <form className="travel-written" noValidate onSubmit={go}>
      <FieldShell label="Go to" hint="2 1/2 in or 60 mm of travel, or a wheel at 30°" problem={problem}>
        {({ id, describedBy, invalid }) => (
          <span className="field-row">
            <input
              id={id}
              type="text"
              autoComplete="off"
              spellCheck={false}
              aria-describedby={describedBy}
              aria-invalid={invalid}
              value={typed}
              onChange={(event) => setTyped(event.target.value)}
            />
            <select aria-label="To which side" value={side} onChange={(event) => setSide(event.target.value === 'left' ? 'left' : 'right')}>
              <option value="left">to the left</option>
              <option value="right">to the right</option>
            </select>
            <button type="submit" className="button">
              Go
            </button>
          </span>
        )}
      </FieldShell>
    </form>
  )
}
