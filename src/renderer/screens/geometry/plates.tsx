import type { ReactNode } from 'react'
import { Between, Label, Plate } from '../../drawings/measuring/Plate.tsx'

/*
 * How each group is measured. Seen from above the front is at the top; seen from the front or behind it says so. What is
 * measured is dimensioned, parts are filled.
 */

const Thin = (props: { readonly d: string }) => <path className="line-thin fill-none" d={props.d} />
const Chain = (props: { readonly d: string }) => <path className="line-axis fill-none" d={props.d} />
const Bar = (props: { readonly points: string }) => <polygon className="line-visible fill-part" points={props.points} />
const Pin = (props: { readonly x: number; readonly y: number }) => (
  <circle className="line-visible fill-paper" cx={props.x} cy={props.y} r={1.8} />
)

/** Axle with kingpins, arms and tie rod from above. */
function AxleFromAbove({ children }: { readonly children?: ReactNode }) {
  return (
    <>
      <Bar points="20,22 100,22 100,27 20,27" />
      <Bar points="18.6,25 21.4,24 28.4,46 25.6,47" />
      <Bar points="98.6,24 101.4,25 94.4,47 91.6,46" />
      <Bar points="27,45 93,45 93,48 27,48" />
      <Pin x={20} y={24.5} />
      <Pin x={100} y={24.5} />
      <Pin x={27} y={46.5} />
      <Pin x={93} y={46.5} />
      {children}
    </>
  )
}

function Axle() {
  return (
    <Plate
      title="Axle and arms, from above"
      description="From above, front at the top: the distance from kingpin to kingpin; from a kingpin to the tie-rod joint on its arm; and the angle by which that arm leans in from straight back."
      height={62}
    >
      <AxleFromAbove>
        <Thin d="M20 21V8M100 21V8" />
        <Between from={[20, 11]} to={[100, 11]} />
        <Label x={60} y={8.5}>
          kingpin to kingpin
        </Label>
        <Chain d="M20 18V60" />
        <Thin d="M20 42A18 18 0 0 0 25.5 41.4" />
        <Between from={[13.6, 26.6]} to={[20.4, 48.6]} />
        <Label x={12} y={42} anchor="end">
          arm
        </Label>
        <Label x={30} y={56} anchor="start">
          leans in by the angle between
        </Label>
      </AxleFromAbove>
    </Plate>
  )
}

function TieRod() {
  return (
    <Plate
      title="Tie rod and toe, from above"
      description="From above, front at the top: the tie rod from joint centre to joint centre; and toe as the difference between the distance across the wheels behind and in front, at one height and diameter."
      height={62}
    >
      <Bar points="14,16 22,15 20,47 12,48" />
      <Bar points="98,15 106,16 108,48 100,47" />
      <Bar points="28,42 92,42 92,45 28,45" />
      <Pin x={28} y={43.5} />
      <Pin x={92} y={43.5} />
      <Thin d="M28 45V57M92 45V57" />
      <Between from={[28, 54]} to={[92, 54]} />
      <Label x={60} y={60.5}>
        joint to joint
      </Label>
      <Between from={[22, 17]} to={[98, 17]} />
      <Label x={60} y={14.5}>
        across, in front
      </Label>
      <Between from={[20.4, 35]} to={[99.6, 35]} />
      <Label x={60} y={32.5}>
        across, behind: less in front is the toe
      </Label>
    </Plate>
  )
}

function Wheel() {
  return (
    <Plate
      title="Wheel, from the front"
      description="From the front: out from the kingpin's axis to the hub's face at axle height; from the face to the middle of the tyre; and from the axle's centre down to the ground."
      height={62}
    >
      <rect className="line-visible fill-part" x={76} y={6} width={22} height={46} rx={4} />
      <Bar points="14,26 56,26 56,32 14,32" />
      <Bar points="56,21 80,21 80,37 56,37" />
      <Chain d="M50 8 58 56" />
      <Chain d="M87 3V56" />
      <Chain d="M8 29H110" />
      <Thin d="M53.5 29V16M80 21V14M4 52H116" />
      <Between from={[53.5, 18]} to={[80, 18]} />
      <Label x={52} y={13} anchor="end">
        to hub face
      </Label>
      <Between from={[80, 11]} to={[87, 11]} />
      <Label x={100} y={12} anchor="start">
        offset
      </Label>
      <Between from={[108, 29]} to={[108, 52]} />
      <Label x={60} y={59}>
        loaded radius: axle centre to ground
      </Label>
    </Plate>
  )
}

function Pitman() {
  return (
    <Plate
      title="Steering box, from above"
      description="From above, front at the top: the sector shaft along the axle from a kingpin; how far ahead of the line between the kingpins it is; and the pitman arm from the shaft to its ball."
      height={62}
    >
      <Bar points="14,38 112,38 112,43 14,43" />
      <Pin x={20} y={40.5} />
      <Chain d="M6 40.5H116" />
      <rect className="line-visible fill-paper" x={45} y={10} width={14} height={16} />
      <Bar points="50.4,18 53.6,18 53.2,33 50.8,33" />
      <Pin x={52} y={18} />
      <Pin x={52} y={33} />
      <Thin d="M20 42V56M52 34V56M54 18H80" />
      <Between from={[20, 53]} to={[52, 53]} />
      <Label x={36} y={60}>
        along
      </Label>
      <Between from={[76, 18]} to={[76, 40.5]} />
      <Label x={79} y={30} anchor="start">
        ahead
      </Label>
      <Thin d="M50 18H36M50 33H36" />
      <Between from={[39, 18]} to={[39, 33]} />
      <Label x={36} y={27} anchor="end">
        arm
      </Label>
    </Plate>
  )
}

function DragLink() {
  return (
    <Plate
      title="Drag link, from above"
      description="From above, front at the top: the arm on the knuckle from the kingpin to the drag link's joint, and its lean inward; or, on the tie rod, the joint's distance along the rod from one of its own joints."
      height={62}
    >
      <AxleFromAbove>
        <Bar points="98.8,25.4 101.2,23.6 91,10.6 89,12.4" />
        <Bar points="40,12 90,10 90,13 40,15" />
        <Pin x={90} y={11.5} />
        <Pin x={40} y={13.5} />
        <Between from={[105.5, 22.5]} to={[95, 8]} />
        <Label x={104} y={11} anchor="start">
          arm
        </Label>
        <Chain d="M100 30V4" />
        <Pin x={48} y={46.5} />
        <Thin d="M27 48V58M48 48V58" />
        <Between from={[27, 55]} to={[48, 55]} />
        <Label x={52} y={57} anchor="start">
          or: along the tie rod
        </Label>
      </AxleFromAbove>
    </Plate>
  )
}

function Ram() {
  return (
    <Plate
      title="Ram’s pins, from above and from behind"
      description="From above: the pin on the axle along it from a kingpin, and how far behind the kingpins; the pin on the tie rod along the rod from its joint. From behind: both heights, of the axle's pin from the axle's centre line and of the rod's pin above the rod."
      height={84}
    >
      <AxleFromAbove>
        <Bar points="38,33 66,39 65.4,42 37.4,36" />
        <Bar points="66,39.4 80,42.4 79.7,44 65.7,41" />
        <Pin x={38} y={34.5} />
        <Pin x={80} y={44} />
        <Thin d="M20 22V10M38 32V10" />
        <Between from={[20, 13]} to={[38, 13]} />
        <Label x={41} y={14} anchor="start">
          along the axle
        </Label>
        <Between from={[47, 24.5]} to={[47, 34.5]} />
        <Label x={50} y={33} anchor="start">
          behind
        </Label>
        <Thin d="M27 48V58M80 46V58" />
        <Between from={[27, 55]} to={[80, 55]} />
        <Label x={53} y={53}>
          along the rod
        </Label>
        <Chain d="M6 74H114" />
        <Label x={7} y={72} anchor="start">
          axle’s centre line
        </Label>
        <Pin x={60} y={66} />
        <Between from={[66, 66]} to={[66, 74]} />
        <Label x={69} y={71.5} anchor="start">
          above
        </Label>
        <circle className="line-visible fill-part" cx={84} cy={78} r={2.5} />
        <Pin x={84} y={67} />
        <Between from={[90, 67]} to={[90, 78]} />
        <Label x={93} y={72} anchor="start">
          above rod
        </Label>
      </AxleFromAbove>
    </Plate>
  )
}

function Suspension() {
  return (
    <Plate
      title="Track bar from behind, leaf spring from the side"
      description="From behind, at ride height: the track bar from joint to joint, and how far its axle end stands above (or, negative, below) its frame end. From the side: from the axle's seat to the spring's fixed eye, level and in height."
      height={62}
    >
      <Bar points="12,36 62,36 62,40 12,40" />
      <Bar points="16,13 58,30 57,33 15,16" />
      <Pin x={16} y={14.5} />
      <Pin x={57} y={31.5} />
      <Between from={[19, 8]} to={[60, 25]} />
      <Label x={44} y={13} anchor="start">
        length
      </Label>
      <Thin d="M16 14.5H8M57 31.5H8" />
      <Between from={[9, 14.5]} to={[9, 31.5]} />
      <Label x={6} y={47} anchor="start">
        axle end below: negative
      </Label>
      <path className="line-visible fill-none" d="M78 24Q96 38 114 24" />
      <Pin x={78} y={24} />
      <circle className="line-visible fill-part" cx={96} cy={37} r={4} />
      <Thin d="M78 26V52M96 41V52M98 33H112" />
      <Between from={[78, 49]} to={[96, 49]} />
      <Label x={87} y={56}>
        away
      </Label>
      <Chain d="M70 24H118" />
      <Between from={[106, 24]} to={[106, 33]} />
      <Label x={109} y={40}>
        above
      </Label>
    </Plate>
  )
}

function Caster() {
  return (
    <Plate
      title="Camber at two turns"
      description="From above: the wheel on a turn plate, turned out by an angle and in by the same; camber is read with a level on the hub at both."
      height={62}
    >
      <Chain d="M60 4V58" />
      <Bar points="55,12 65,12 65,50 55,50" />
      <polygon className="line-hidden fill-none" points="40,17 48,11.5 68,46 59,51" />
      <polygon className="line-hidden fill-none" points="80,17 72,11.5 52,46 61,51" />
      <Label x={36} y={13} anchor="end">
        turned left
      </Label>
      <Label x={84} y={13} anchor="start">
        turned right
      </Label>
      <Label x={84} y={34} anchor="start">
        by one angle
      </Label>
    </Plate>
  )
}

/** A stop bolt and its pad, with what is measured at them. */
export function Stop() {
  return (
    <Plate
      title="Knuckle stop, from above"
      description="From above, wheels straight: the gap between stop bolt and pad, straight across, and the distance from the kingpin to where they meet. Or turn to the stop and measure how far the tie rod has gone."
      height={62}
    >
      <Bar points="12,24 60,24 60,34 12,34" />
      <Bar points="52,12 66,12 66,24 52,24" />
      <Bar points="74,15 96,15 96,21 74,21" />
      <rect className="line-visible fill-part" x={90} y={12} width={16} height={38} />
      <Pin x={98} y={46} />
      <Thin d="M66 11V5M74 14V5" />
      <Between from={[66, 7]} to={[74, 7]} />
      <Label x={78} y={8.5} anchor="start">
        gap
      </Label>
      <Between from={[70, 18]} to={[97, 45]} />
      <Label x={72} y={40} anchor="end">
        kingpin to stop
      </Label>
      <Label x={60} y={59}>
        or the travel of the tie rod to here
      </Label>
    </Plate>
  )
}

/** The picture of a group of fields, by its id. */
export const PLATES: Readonly<Record<string, () => ReactNode>> = {
  axle: Axle,
  tieRod: TieRod,
  wheel: Wheel,
  pitman: Pitman,
  dragLink: DragLink,
  ram: Ram,
  suspension: Suspension,
  casterSweep: Caster,
}
