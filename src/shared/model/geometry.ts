import * as z from 'zod'
import { quantity } from './fields.ts'

/*
 * Where the steering's joints are, as one person finds them with a tape. Every place is given from the axle: `along` the axle,
 * from a kingpin towards the other one or from the middle to the right; `ahead` of the line between the kingpins (behind is
 * negative); `above` the axle's centre line (below is negative). Nothing is required: what is missing, the plan asks for.
 */
const size = quantity('length', { positive: true, max: 3 }).optional()
const signed = quantity('length', { min: -3, max: 3 }).optional()
const angle = quantity('angle', { min: -1.2, max: 1.2 }).optional()
const from = z.enum(['middle', 'left kingpin', 'right kingpin']).optional()
const points = z.enum(['ahead', 'behind']).optional()
const rodEnd = z.enum(['left', 'right']).optional()

export const geometry = z.strictObject({
  /** steering arms that differ from the axle's `armLength` and `armAngle`, or from each other */
  arms: z.strictObject({ leftLength: size, leftAngle: angle, rightLength: size, rightAngle: angle }).optional(),
  tieRod: z
    .strictObject({
      /** joint to joint; absent: it follows from the toe */
      length: size,
      /** total toe as a distance, toe-in positive, and the diameter it is measured at */
      toe: quantity('length', { min: -0.2, max: 0.2 }).optional(),
      toeAt: quantity('length', { positive: true, max: 2 }).optional(),
      above: signed,
    })
    .optional(),
  wheel: z
    .strictObject({
      /** from the kingpin axis out to the hub's mounting face, at axle height */
      hubFace: quantity('length', { min: 0, max: 1 }).optional(),
      /** from the mounting face out to the middle of the tyre; inward negative */
      offset: quantity('length', { min: -0.5, max: 0.5 }).optional(),
      loadedRadius: quantity('length', { positive: true, max: 1.5 }).optional(),
      diameter: size,
      width: quantity('length', { positive: true, max: 1 }).optional(),
    })
    .optional(),
  /** the vehicle's front corner, for the circle between walls: out from the middle, and ahead of the axle */
  corner: z.strictObject({ out: size, ahead: size }).optional(),
  /** sector shaft of the box, and the arm on it: `angle` is how far it points to the left of straight ahead or behind, wheels straight */
  pitman: z
    .strictObject({
      from,
      along: signed,
      ahead: signed,
      /** of the ball, not of the shaft */
      ballAbove: signed,
      length: quantity('length', { positive: true, max: 1 }).optional(),
      points,
      angle,
    })
    .optional(),
  dragLink: z
    .strictObject({
      to: z.enum(['left knuckle', 'right knuckle', 'tie rod']).optional(),
      /** to a knuckle: from the kingpin to the drag link's joint, its lean inward from straight ahead or behind */
      armLength: quantity('length', { positive: true, max: 1 }).optional(),
      armAngle: angle,
      armPoints: points,
      /** to the tie rod: so far along it from that joint of the rod, so far ahead of its line */
      rodEnd,
      along: size,
      ahead: signed,
      above: signed,
      /** joint to joint; absent: it is set so that the pitman arm stands as said */
      length: size,
    })
    .optional(),
  ram: z
    .strictObject({
      from,
      along: signed,
      ahead: signed,
      above: signed,
      /** the pin on the tie rod: so far along it from that joint of the rod, so far ahead of its line, so far above it */
      rodEnd,
      rodAlong: size,
      rodAhead: signed,
      rodAbove: signed,
      bodyLength: size,
      bodyDiameter: quantity('length', { positive: true, max: 0.5 }).optional(),
      /** plus and minus this, for where its ends come in terms of the tie rod's travel */
      uncertainty: quantity('length', { min: 0, max: 0.2 }).optional(),
      /** the user lets the ram end the travel, knowing what that asks of the driver */
      endsTravel: z.literal(true).optional(),
    })
    .optional(),
  suspension: z
    .strictObject({
      spring: z.enum(['coil', 'leaf']).optional(),
      bump: quantity('length', { positive: true, max: 1 }).optional(),
      droop: quantity('length', { positive: true, max: 1 }).optional(),
      /** between its joint centres, seen from the front */
      trackBarLength: size,
      /** its axle end above its frame end, at ride height */
      trackBarAbove: signed,
      trackBarFrameEnd: rodEnd,
      /** leaf springs: the fixed eye above the axle seat, and how far from it, fore and aft */
      eyeAbove: signed,
      eyeAway: size,
    })
    .optional(),
  /** camber read with each wheel turned out and in by `turn` from straight ahead, for caster */
  casterSweep: z
    .strictObject({
      turn: quantity('angle', { positive: true, max: 1 }).optional(),
      leftOut: angle,
      leftIn: angle,
      rightOut: angle,
      rightIn: angle,
    })
    .optional(),
})

export type Geometry = z.output<typeof geometry>
