import { useMemo, useRef, useState } from 'react'
import { reachOfCurve } from '../../../shared/planner/linkage/drag.ts'
import type { LimitsPlan, LinkagePlan } from '../../../shared/planner/linkage/plan-types.ts'
import { ledgerSides } from '../../../shared/report/live/ledger.ts'
import { liveSteering } from '../../../shared/report/live/steering.ts'
import { travelTable } from '../../../shared/report/live/tables.ts'
import type { Units } from '../../app/queries.ts'
import { LiveLedger, ReadOuts } from './LiveLedger.tsx'
import { PlanView } from './PlanView.tsx'
import { TravelControls } from './TravelControls.tsx'
import { useFull } from './useFull.ts'

/** The steering to be moved by hand, with what it comes to beside it. Nothing else on the screen follows a step, so that a step is quick. */
export function SteeringBench(props: {
  readonly linkage: LinkagePlan
  readonly limits: LimitsPlan | null
  readonly units: Units
  readonly of: string
}) {
  const { linkage, limits, units } = props
  const [travel, setTravel] = useState(0)
  const bench = useRef<HTMLElement>(null)
  const [full, setFull] = useFull(bench)
  const reach = useMemo(() => reachOfCurve(linkage.curve), [linkage])
  const ledger = useMemo(() => (limits === null ? [] : ledgerSides(limits, units)), [limits, units])
  const table = useMemo(() => travelTable(linkage.curve, units), [linkage, units])
  const live = liveSteering(linkage.geometry, limits, reach, travel, units)
  return (
    <section ref={bench} className="steering" data-full={full} aria-label="The steering over its travel">
      <div className="steering-picture">
        <PlanView
          linkage={linkage}
          live={live}
          reach={reach}
          of={props.of}
          table={table}
          onTravel={setTravel}
          tools={
            <button type="button" className="button button-small" aria-pressed={full} onClick={() => setFull(!full)}>
              {full ? 'Back (Esc)' : 'Fill the window'}
            </button>
          }
        />
        <TravelControls geometry={linkage.geometry} reach={reach} live={live} ledger={ledger} units={units} onTravel={setTravel} />
      </div>
      <div className="steering-beside">
        <h2>Here</h2>
        <p className="steering-line" role="status">
          {live.line}
        </p>
        <ReadOuts live={live} />
        <h2>What stops the wheels</h2>
        {limits === null ? <p>Nothing is known yet that ends the travel.</p> : <LiveLedger live={live} sides={ledger} />}
      </div>
    </section>
  )
}
