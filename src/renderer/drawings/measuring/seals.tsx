import { Axis, flanks, Label, Plate } from './Plate.tsx'

/** Height of the axes. */
const MID = 17

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
        points={`${x},${MID - 9} ${x + 8},${MID - 9} ${reach},${MID - bore} ${reach},${MID + bore} ${x + 8},${MID + 9} ${x},${MID + 9}`}
      />
      <Axis x1={x - 3} x2={Math.max(tip, reach) + 4} y={MID} />
      <line className="line-thin fill-none" x1={x + 8} y1={MID - 9} x2={x + 20} y2={MID - 9} />
      <path
        className="line-thin fill-none"
        d={`M ${x + 16} ${MID - 9} A 8 8 0 0 1 ${x + 8 + 8 * Math.cos((half * Math.PI) / 180)} ${MID - 9 + 8 * Math.sin((half * Math.PI) / 180)}`}
      />
      <Label x={x + 12} y={MID + 18}>
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
      height={48}
    >
      <Nose x={6} half={37} label="37°" />
      <Nose x={42} half={45} label="45°" />
      <Nose x={78} half={12} label="24° (12° a side)" />
      <Label x={60} y={44}>
        lay the gauge along the axis
      </Label>
    </Plate>
  )
}

const PLACES = ['chamfer', 'face', 'washer', 'nose', 'inside seat'] as const

/** Half sections of where the seal sits: above the axis, the end coming from the left. */
export function SealPlaces() {
  return (
    <Plate
      title="Where it seals"
      description="From left to right: an O-ring behind the thread that goes into a chamfered mouth; an O-ring in a groove of a flat face; a washer under a shoulder on a flat face; an O-ring on the nose of a tube, beyond the thread of its nut; a raised seat at the bottom of a threaded hole."
      height={46}
    >
      <polygon className="line-visible fill-part" points={`2,8 8,8 8,17.5 ${flanks(10, 20, 2.5, 15, 17.5, 'root')} 20,32 2,32`} />
      <circle className="seal" cx={9.9} cy={15.2} r={2.1} />
      <polygon className="line-visible fill-part" points="26,12 40,12 40,18 37.4,18 37.4,22.4 40,22.4 40,32 26,32" />
      <circle className="seal" cx={38.8} cy={20.2} r={2.2} />
      <polygon className="line-visible fill-part" points={`50,8 56,8 56,17.5 ${flanks(58.5, 68.5, 2.5, 15, 17.5, 'root')} 68.5,32 50,32`} />
      <rect className="seal" x={56} y={10} width={2.2} height={6.4} />
      <polygon className="line-visible fill-part" points={`74,12 76,12 ${flanks(76, 86, 2.5, 12, 14.5, 'root')} 86,19 74,19`} />
      <polygon className="line-visible fill-part" points="74,20 92,20 92,32 74,32" />
      <circle className="seal" cx={88.6} cy={18.6} r={2} />
      <polygon
        className="line-visible fill-part"
        points={`98,8 118,8 118,32 114,32 107,26 ${flanks(98, 108, 2.5, 18, 15.5, 'crest').split(' ').reverse().join(' ')}`}
      />
      {PLACES.map((place, at) => (
        <g key={place}>
          <Axis x1={at * 24} x2={at * 24 + 22} y={32} />
          <Label x={at * 24 + 11} y={40}>
            {place}
          </Label>
        </g>
      ))}
    </Plate>
  )
}
