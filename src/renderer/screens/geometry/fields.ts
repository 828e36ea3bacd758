import type { Dimension } from '../../../shared/quantities/dimension.ts'

/** One field of the steering's geometry, by its place in the build file. */
export type GeometryField = { readonly place: string; readonly label: string } & (
  | { readonly takes: 'quantity'; readonly dimension: Dimension; readonly hint: string }
  | { readonly takes: 'choice'; readonly choices: readonly string[] }
  | { readonly takes: 'yes' }
)

export interface GeometryGroup {
  readonly id: string
  readonly title: string
  /** how it is measured, in a sentence */
  readonly how: string
  readonly fields: readonly GeometryField[]
}

const length = (place: string, label: string, hint = '12 1/2 in or 318 mm'): GeometryField => ({
  place,
  label,
  takes: 'quantity',
  dimension: 'length',
  hint,
})
const angle = (place: string, label: string, hint = '12°'): GeometryField => ({ place, label, takes: 'quantity', dimension: 'angle', hint })
const choice = (place: string, label: string, choices: readonly string[]): GeometryField => ({ place, label, takes: 'choice', choices })

const FROM = ['middle', 'left kingpin', 'right kingpin'] as const

/** All groups, in the order in which a person goes round the axle with a tape. */
export const GROUPS: readonly GeometryGroup[] = [
  {
    id: 'axle',
    title: 'Axle and steering arms',
    how: 'From kingpin to kingpin at the height of the tie rod; from kingpin to tie-rod joint seen from above; how far the joint leans in from straight back.',
    fields: [
      length('axle.kingpinSpacing', 'Kingpin to kingpin', '58 in or 1473 mm'),
      choice('axle.tieRod', 'Tie rod', ['behind', 'ahead']),
      length('axle.armLength', 'Arm, kingpin to joint', '7 1/4 in or 184 mm'),
      angle('axle.armAngle', 'Arm leans in by'),
      angle('axle.kingpinInclination', 'Kingpin inclination', '8.5°'),
      angle('axle.caster', 'Caster', '5°'),
      length('axle.track', 'Track', '68 in or 1727 mm'),
      length('vehicle.wheelbase', 'Wheelbase', '112 in or 2845 mm'),
      length('geometry.arms.leftLength', 'Left arm, where it differs', '7 in'),
      angle('geometry.arms.leftAngle', 'Left arm leans in by'),
      length('geometry.arms.rightLength', 'Right arm, where it differs', '7 in'),
      angle('geometry.arms.rightAngle', 'Right arm leans in by'),
    ],
  },
  {
    id: 'tieRod',
    title: 'Tie rod and toe',
    how: 'Joint centre to joint centre; or the toe, as the difference of two distances across the wheels, and the diameter they are taken at.',
    fields: [
      length('geometry.tieRod.length', 'Joint to joint', '55 in or 1397 mm'),
      length('geometry.tieRod.toe', 'Toe, toe-in positive', '1/16 in or 2 mm'),
      length('geometry.tieRod.toeAt', 'measured at a diameter of', '36 in or 914 mm'),
      length('geometry.tieRod.above', 'Above the axle’s centre line', '-1 in where below'),
    ],
  },
  {
    id: 'wheel',
    title: 'Wheels and front corner',
    how: 'From the kingpin’s axis out to the hub’s face at axle height; from the face out to the middle of the tyre (inward negative).',
    fields: [
      length('geometry.wheel.hubFace', 'Kingpin to hub face', '6 in or 152 mm'),
      length('geometry.wheel.offset', 'Face to middle of tyre', '-1 in or -25 mm'),
      length('geometry.wheel.loadedRadius', 'Axle centre to ground', '17 1/4 in'),
      length('geometry.wheel.diameter', 'Tyre, across', '35.8 in'),
      length('geometry.wheel.width', 'Tyre, wide', '12 1/2 in'),
      length('geometry.corner.out', 'Front corner, out from the middle', '36 in'),
      length('geometry.corner.ahead', 'Front corner, ahead of the axle', '34 in'),
    ],
  },
  {
    id: 'pitman',
    title: 'Steering box and pitman arm',
    how: 'Sector shaft along the axle from a kingpin or the middle, and ahead of the line between the kingpins; the arm from shaft to ball.',
    fields: [
      choice('geometry.pitman.from', 'Along the axle from', FROM),
      length('geometry.pitman.along', 'Along the axle', '14 1/2 in'),
      length('geometry.pitman.ahead', 'Ahead of the kingpins, behind negative', '-3/8 in'),
      length('geometry.pitman.ballAbove', 'Ball above the axle’s centre line', '9 in'),
      length('geometry.pitman.length', 'Arm, shaft to ball', '6 in'),
      choice('geometry.pitman.points', 'Arm points', ['ahead', 'behind']),
      angle('geometry.pitman.angle', 'and to the left by', '0°'),
    ],
  },
  {
    id: 'dragLink',
    title: 'Drag link',
    how: 'Where its far joint is: on an arm of a knuckle, from the kingpin; or on the tie rod, along it from a joint.',
    fields: [
      choice('geometry.dragLink.to', 'Goes to', ['left knuckle', 'right knuckle', 'tie rod']),
      length('geometry.dragLink.armLength', 'Knuckle’s arm, kingpin to joint', '6 1/2 in'),
      angle('geometry.dragLink.armAngle', 'Arm leans in by', '10°'),
      choice('geometry.dragLink.armPoints', 'Arm points', ['ahead', 'behind']),
      choice('geometry.dragLink.rodEnd', 'On the tie rod: from its joint', ['left', 'right']),
      length('geometry.dragLink.along', 'On the tie rod: along it', '4 in'),
      length('geometry.dragLink.ahead', 'On the tie rod: ahead of it', '1 in'),
      length('geometry.dragLink.above', 'Joint above the axle’s centre line', '4 in'),
      length('geometry.dragLink.length', 'Drag link, joint to joint', '38 in'),
    ],
  },
  {
    id: 'ram',
    title: 'Ram’s pins',
    how: 'Wheels straight. The pin on the axle along it, ahead of the kingpins and in height; the pin on the tie rod along the rod from a joint, ahead of it and above it.',
    fields: [
      choice('geometry.ram.from', 'On the axle: along it from', FROM),
      length('geometry.ram.along', 'On the axle: along it', '9 in'),
      length('geometry.ram.ahead', 'On the axle: ahead, behind negative', '-6 in'),
      length('geometry.ram.above', 'On the axle: above its centre line', '1 1/2 in'),
      choice('geometry.ram.rodEnd', 'On the rod: from its joint', ['left', 'right']),
      length('geometry.ram.rodAlong', 'On the rod: along it', '27 3/16 in'),
      length('geometry.ram.rodAhead', 'On the rod: ahead of it', '0 in'),
      length('geometry.ram.rodAbove', 'On the rod: above it', '2 1/4 in'),
      length('geometry.ram.bodyLength', 'Body, from the pin', '13 in'),
      length('geometry.ram.bodyDiameter', 'Body, across', '2 1/4 in'),
      length('geometry.ram.uncertainty', 'Sure to plus and minus', '1/8 in or 3 mm'),
      { place: 'geometry.ram.endsTravel', label: 'The ram may end the travel: the driver backs off from full lock', takes: 'yes' },
    ],
  },
  {
    id: 'suspension',
    title: 'Suspension',
    how: 'At ride height, seen from the front: the track bar from joint to joint and how much higher its axle end is; leaf springs: the fixed eye from the axle’s seat.',
    fields: [
      choice('geometry.suspension.spring', 'Springs', ['coil', 'leaf']),
      length('geometry.suspension.bump', 'Up to full bump', '4 in'),
      length('geometry.suspension.droop', 'Down to full droop', '5 in'),
      length('geometry.suspension.trackBarLength', 'Track bar, joint to joint', '34 in'),
      length('geometry.suspension.trackBarAbove', 'Axle end above the frame end', '-4 5/8 in'),
      choice('geometry.suspension.trackBarFrameEnd', 'Its frame end is', ['left', 'right']),
      length('geometry.suspension.eyeAbove', 'Leaf: fixed eye above the seat', '1 3/4 in'),
      length('geometry.suspension.eyeAway', 'Leaf: eye from the seat, fore and aft', '22 in'),
    ],
  },
  {
    id: 'casterSweep',
    title: 'Camber read for caster',
    how: 'Each wheel turned out and in by the same angle on turn plates, camber read at both.',
    fields: [
      angle('geometry.casterSweep.turn', 'Turned by', '20°'),
      angle('geometry.casterSweep.leftOut', 'Left wheel, turned out', '1.2°'),
      angle('geometry.casterSweep.leftIn', 'Left wheel, turned in', '-1.6°'),
      angle('geometry.casterSweep.rightOut', 'Right wheel, turned out', '1.3°'),
      angle('geometry.casterSweep.rightIn', 'Right wheel, turned in', '-1.6°'),
    ],
  },
]

/** What can end the travel: the fields of one line. */
export const LIMIT_FIELDS = [
  { key: 'travel', label: 'Travel along the tie rod', dimension: 'length', hint: '4 3/32 in' },
  { key: 'angle', label: 'Angle of that wheel, or of the pitman arm', dimension: 'angle', hint: '38°' },
  { key: 'gap', label: 'Gap at the stop, wheels straight', dimension: 'length', hint: '3/4 in' },
  { key: 'radius', label: 'Kingpin to where it touches', dimension: 'length', hint: '5 in' },
  { key: 'clearance', label: 'Room wanted at a tyre', dimension: 'length', hint: '1/2 in' },
  { key: 'uncertainty', label: 'Sure to plus and minus', dimension: 'length', hint: '1/32 in' },
] as const
export type LimitKey = (typeof LIMIT_FIELDS)[number]['key']

export const LIMIT_KINDS = ['knuckle stop', 'steering box', 'tyre contact', 'ram'] as const
export const LIMIT_SIDES = ['left', 'right', 'both'] as const
