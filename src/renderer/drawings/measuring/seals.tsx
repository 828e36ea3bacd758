import { Axis, Label, Plate } from './Plate.tsx'

/** A nose with its cone: how steep it is against the axis. */
function Nose({ x, half, label }: { readonly x: number; readonly half: number; readonly label: string }) {
  const rise = 9
  const run = rise / Math.tan((half * Math.PI) / 180)
  const tip = x + 8 + Math.min(run, 20)
  const end = run > 20 ? rise - 20 * Math.tan((half * Math.PI) / 180) : 0
  const bore = Math.max(end, 2.5)
  const reach = x + 8 + (rise - bore) / Math.tan((half * Math.PI) / 180)
  return (
    <g>
      <polygon
        className="line-visible fill-part"
        points={`${x},18 ${x + 8},18 ${reach},${27 - bore} ${reach},${27 + bore} ${x + 8},36 ${x},36`}
      />
      <Axis x1={x - 3} x2={Math.max(tip, reach) + 4} y={27} />
      <line className="line-thin fill-none" x1={x + 8} y1={18} x2={x + 20} y2={18} />
      <path
        className="line-thin fill-none"
        d={`M ${x + 16} 18 A 8 8 0 0 1 ${x + 8 + 8 * Math.cos((half * Math.PI) / 180)} ${18 + 8 * Math.sin((half * Math.PI) / 180)}`}
      />
      <Label x={x + 12} y={46}>
        {label}
      </Label>
    </g>
  )
}

/** Cones as they are told apart: by their angle to the axis. */
export function FlareAngle() {
  return (
    <Plate
      title="Angle of the cone, one side"
      description="A flare gauge laid along the axis: a 37 degree cone is slimmer than a 45 degree one; a cone of the 24 degree family is slim, 12 degrees a side."
      height={58}
    >
      <Nose x={6} half={37} label="37°" />
      <Nose x={42} half={45} label="45°" />
      <Nose x={78} half={12} label="24° (12° a side)" />
      <Label x={60} y={55.5}>
        lay the gauge along the axis
      </Label>
    </Plate>
  )
}

const PLACES = [
  { x: 4, label: 'chamfer' },
  { x: 34, label: 'face' },
  { x: 64, label: 'washer' },
  { x: 94, label: 'nose' },
] as const

/** Half sections of where the seal sits. */
export function SealPlaces() {
  return (
    <Plate
      title="Where it seals"
      description="An O-ring behind the thread that goes into a chamfered mouth; an O-ring in a groove of a flat face; a washer under a shoulder on a flat face; an O-ring on the nose of a tube, below the thread of its nut."
      height={52}
    >
      <polygon className="line-visible fill-part" points="4,10 12,10 12,16 26,16 26,30 4,30" />
      <circle className="seal" cx={14.6} cy={13.6} r={2.4} />
      <polygon className="line-visible fill-part" points="34,12 54,12 54,30 34,30" />
      <circle className="seal" cx={53.2} cy={19} r={2.2} />
      <polygon className="line-visible fill-part" points="64,8 72,8 72,18 88,18 88,30 64,30" />
      <rect className="seal" x={72} y={10} width={2.4} height={8} />
      <polygon className="line-visible fill-part" points="94,12 104,12 104,20 116,20 116,30 94,30" />
      <circle className="seal" cx={110} cy={18.4} r={2} />
      {PLACES.map(({ x, label }) => (
        <g key={label}>
          <Axis x1={x - 2} x2={x + 24} y={30} />
          <Label x={x + 11} y={38}>
            {label}
          </Label>
        </g>
      ))}
      <Label x={60} y={48}>
        half sections, the seal filled
      </Label>
    </Plate>
  )
}
