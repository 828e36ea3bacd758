import { type PointerEvent, type ReactNode, useRef, useState } from 'react'
import { draggedTravel, GRIPS, type Grip, type Reach } from '../../../shared/planner/linkage/drag.ts'
import type { LinkagePlan } from '../../../shared/planner/linkage/plan-types.ts'
import type { Block } from '../../../shared/report/document.ts'
import { planFrame } from '../../../shared/report/drawings/plan-view.ts'
import type { LiveSteering } from '../../../shared/report/live/steering.ts'
import { Picture } from './Picture.tsx'

interface Held {
  readonly grip: Grip
  readonly pointer: number
  readonly begun: number
  readonly from: { readonly x: number; readonly y: number }
}

/** The steering from above, with wheels and tie rod that a mouse, a finger or a pen takes along. */
export function PlanView(props: {
  readonly linkage: LinkagePlan
  readonly live: LiveSteering
  readonly reach: Reach
  readonly of: string
  readonly table: Extract<Block, { kind: 'table' }>
  readonly tools?: ReactNode
  readonly onTravel: (travel: number) => void
}) {
  const { linkage, live, reach, onTravel } = props
  const svg = useRef<SVGSVGElement>(null)
  const [held, setHeld] = useState<Held | null>(null)

  /** the place of the vehicle under a pointer */
  const placeOf = (event: PointerEvent) => {
    const matrix = svg.current?.getScreenCTM()?.inverse()
    if (matrix === undefined) return null
    const on = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix)
    return planFrame(linkage.geometry).vehicle(on)
  }
  const take = (grip: Grip) => (event: PointerEvent<SVGPolygonElement>) => {
    const from = placeOf(event)
    if (from === null || event.button !== 0) return
    event.currentTarget.setPointerCapture(event.pointerId)
    setHeld({ grip, pointer: event.pointerId, begun: live.travel, from })
  }
  const move = (event: PointerEvent) => {
    if (held === null || event.pointerId !== held.pointer) return
    const to = placeOf(event)
    if (to !== null) onTravel(draggedTravel(linkage.geometry, reach, held.grip, held.begun, held.from, to))
  }
  const drop = () => setHeld(null)

  return (
    <Picture
      drawing={live.drawing}
      caption="Drag a wheel or the tie rod; or use the slider and the field below."
      of={props.of}
      table={props.table}
      painted={svg}
      tools={props.tools}
      overlay={
        live.grips !== null && (
          <g className="overlay">
            {GRIPS.map((grip) => (
              <polygon
                key={grip}
                className="grip"
                data-grip={grip}
                data-held={held?.grip === grip}
                points={live.grips?.[grip].map((p) => `${p.x},${p.y}`).join(' ')}
                onPointerDown={take(grip)}
                onPointerMove={move}
                onPointerUp={drop}
                onPointerCancel={drop}
              />
            ))}
          </g>
        )
      }
    />
  )
}
