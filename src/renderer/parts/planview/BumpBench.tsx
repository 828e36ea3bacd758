import { useId, useMemo, useState } from 'react'
import type { BumpSteerPlan, LinkagePlan } from '../../../shared/planner/linkage/plan-types.ts'
import { bumpSteerDrawing } from '../../../shared/report/drawings/bump-steer.ts'
import { frontView } from '../../../shared/report/drawings/front-view.ts'
import { bumpReadOuts, bumpTable, riseOf } from '../../../shared/report/live/tables.ts'
import type { Units } from '../../app/queries.ts'
import { Picture } from './Picture.tsx'

/** Drag link and track bar over bump and droop, moved by a slider, with the curve of the steer they put in. */
export function BumpBench(props: {
  readonly linkage: LinkagePlan
  readonly plan: BumpSteerPlan
  readonly units: Units
  readonly of: string
}) {
  const { linkage, plan, units } = props
  const id = useId()
  const ride = plan.rise.findIndex((rise) => Math.abs(rise) < 1e-9)
  const [at, setAt] = useState(plan.rise.length - 1)
  const rise = plan.rise[at] ?? 0
  const front = frontView(linkage.geometry, rise, units)
  const table = useMemo(() => bumpTable(plan, units), [plan, units])
  return (
    <section className="bump" aria-labelledby={`${id}bump`}>
      <h2 id={`${id}bump`}>Bump steer</h2>
      <div className="travel-slider">
        <label htmlFor={`${id}rise`}>Axle</label>
        <span aria-hidden="true">droop</span>
        <input
          id={`${id}rise`}
          type="range"
          min={0}
          max={plan.rise.length - 1}
          step={1}
          value={at}
          aria-valuetext={riseOf(rise, units)}
          onChange={(event) => setAt(Number(event.target.value))}
        />
        <span aria-hidden="true">bump</span>
        {ride >= 0 && (
          <button type="button" className="button button-small" onClick={() => setAt(ride)}>
            Ride height
          </button>
        )}
      </div>
      <dl className="read-outs read-outs-wide">
        <div>
          <dt>Axle</dt>
          <dd>{riseOf(rise, units)}</dd>
        </div>
        {bumpReadOuts(plan, at, units).map(({ label, value }) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <div className="pictures">
        {front === null ? (
          <p>A link does not reach here.</p>
        ) : (
          <Picture drawing={front} caption="At ride height in thin lines, where the slider stands in wide ones." of={props.of} />
        )}
        <Picture
          drawing={bumpSteerDrawing(plan, units, rise)}
          caption="Steer with the hand wheel held, over bump and droop."
          of={props.of}
          table={table}
        />
      </div>
    </section>
  )
}
