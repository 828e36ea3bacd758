import { Axis, Between, Label, Plate } from './Plate.tsx'

/** A ball stud's cone with two diameters and the distance between them. */
export function TwoDiameters() {
  return (
    <Plate
      title="Two diameters, and how far apart"
      description="Two diameters of a cone, each measured square to the axis at a marked place, and the distance along the axis between the two places."
      height={62}
    >
      <circle className="line-visible fill-part" cx={18} cy={30} r={12} />
      <polygon className="line-visible fill-part" points="28,17 84,23 84,37 28,43" />
      <rect className="line-visible fill-part" x={84} y={26} width={20} height={8} />
      <Axis x1={2} x2={110} y={30} />
      <Between from={[38, 18.1]} to={[38, 41.9]} />
      <Between from={[76, 22.2]} to={[76, 37.8]} />
      <Label x={36} y={27} anchor="end">
        d1
      </Label>
      <Label x={73} y={28} anchor="end">
        d2
      </Label>
      <line className="line-thin fill-none" x1={38} y1={43} x2={38} y2={53} />
      <line className="line-thin fill-none" x1={76} y1={39} x2={76} y2={53} />
      <Between from={[38, 50]} to={[76, 50]} />
      <Label x={57} y={57}>
        distance, as long as can be
      </Label>
    </Plate>
  )
}

/** A tube's cut end with its diameters and its wall. */
export function TubeEnd() {
  return (
    <Plate
      title="Outside, inside, wall"
      description="The cut end of a tube: the diameter outside, the diameter inside, and the wall, measured where the cut is clean of burrs."
      height={62}
    >
      <circle className="line-visible fill-part" cx={60} cy={29} r={21} />
      <circle className="line-visible fill-paper" cx={60} cy={29} r={15} />
      <Axis x1={34} x2={86} y={29} />
      <Between from={[45.1, 27]} to={[74.9, 27]} />
      <Label x={60} y={24}>
        inside
      </Label>
      <line className="line-thin fill-none" x1={39} y1={29} x2={39} y2={57} />
      <line className="line-thin fill-none" x1={81} y1={29} x2={81} y2={57} />
      <Between from={[39, 54.5]} to={[81, 54.5]} />
      <Label x={30} y={57} anchor="end">
        outside
      </Label>
      <Between from={[73, 36.5]} to={[78.5, 39]} />
      <Label x={84} y={42} anchor="start">
        wall
      </Label>
    </Plate>
  )
}

const TEETH = 24

/** The end of a splined shaft: count all round, measure over the tips. */
export function SplineEnd() {
  const points = Array.from({ length: TEETH * 2 }, (_, at) => {
    const angle = (at * Math.PI) / TEETH
    const radius = at % 2 === 0 ? 21 : 18.4
    return `${60 + radius * Math.cos(angle)},${28 + radius * Math.sin(angle)}`
  }).join(' ')
  return (
    <Plate
      title="Count, and measure over the tips"
      description="The end of a splined shaft: count the splines all round, a blocked one as if it were there, and measure over the tips of two that lie opposite."
      height={62}
    >
      <polygon className="line-visible fill-part" points={points} />
      <Axis x1={32} x2={88} y={28} />
      <line className="line-thin fill-none" x1={39} y1={28} x2={39} y2={58} />
      <line className="line-thin fill-none" x1={81} y1={28} x2={81} y2={58} />
      <Between from={[39, 55]} to={[81, 55]} />
      <Label x={60} y={60.5}>
        over the tips
      </Label>
    </Plate>
  )
}
