import { Axis, Between, flanks, Label, Plate, Tool } from './Plate.tsx'

/** A male thread from the side between the jaws of a calliper. */
export function OutsideCrest() {
  return (
    <Plate
      title="Outside, over the crests"
      description="The jaws of a calliper lie flat on the crests of a male thread, square to its axis, near the middle of the thread."
      height={62}
    >
      <polygon
        className="line-visible fill-part"
        points={`14,20 30,20 ${flanks(30, 84, 6, 18, 21.5, 'root')} ${flanks(30, 84, 6, 44, 40.5, 'root').split(' ').reverse().join(' ')} 30,42 14,42`}
      />
      <Axis x1={8} x2={92} y={31} />
      <Tool points="42,10 100,10 100,52 42,52 42,44 66,44 90,46.5 90,15.5 66,18 42,18" />
      <Between from={[57, 18]} to={[57, 44]} />
      <Label x={60} y={36.5} anchor="start">
        Ø
      </Label>
      <Label x={57} y={59}>
        jaws flat on the crests
      </Label>
    </Plate>
  )
}

/** A female thread cut open with the inside jaws of a calliper in it. */
export function InsideCrest() {
  const upper = flanks(24, 78, 6, 19, 15.5, 'crest')
  const lower = flanks(24, 78, 6, 41, 44.5, 'crest')
  return (
    <Plate
      title="Inside, over the crests"
      description="The inside jaws of a calliper touch the crests of a female thread, which lie nearest to the axis; turn until the reading is largest."
      height={62}
    >
      <polygon className="line-visible fill-part" points={`24,6 78,6 ${upper.split(' ').reverse().join(' ')}`} />
      <polygon className="line-visible fill-part" points={`24,54 78,54 ${lower.split(' ').reverse().join(' ')}`} />
      <Axis x1={16} x2={112} y={30} />
      <Tool points="48,19 52,19 54,26 98,26 98,29 48,29" />
      <Tool points="48,41 52,41 54,34 98,34 98,31 48,31" />
      <Between from={[38, 19]} to={[38, 41]} />
      <Label x={35} y={35} anchor="end">
        Ø
      </Label>
      <Label x={60} y={60.5}>
        turn until it reads most
      </Label>
    </Plate>
  )
}

/** Ten turns between one crest and the eleventh, and the leaf of a pitch gauge lying in the thread. */
export function PitchOverTurns() {
  return (
    <Plate
      title="Pitch, over several turns"
      description="From one crest to the crest ten turns further, divided by ten; or the leaf of a pitch gauge that lies in the thread without light behind it."
      height={62}
    >
      <polygon className="line-visible fill-part" points={`8,22 ${flanks(12, 108, 8, 20, 25, 'root')} 112,22 112,46 8,46`} />
      <Axis x1={4} x2={116} y={46} />
      <line className="line-thin fill-none" x1={16} y1={19} x2={16} y2={6} />
      <line className="line-thin fill-none" x1={96} y1={19} x2={96} y2={6} />
      <Between from={[16, 8]} to={[96, 8]} />
      <Label x={56} y={6}>
        10 turns, divided by 10
      </Label>
      <Tool points={`20,13 ${flanks(20, 84, 8, 24, 19, 'crest')} 84,13`} />
      <Label x={60} y={57}>
        or a gauge leaf, no light behind it
      </Label>
    </Plate>
  )
}
