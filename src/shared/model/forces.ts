import * as z from 'zod'
import { id, name, quantity } from './fields.ts'

/*
 * What the sums on force, strength and flow need beside axle, geometry and parts. Nothing is required: what is missing, the plan
 * asks for, and a value that it takes in its place is shown as chosen, never as measured.
 */
const size = quantity('length', { positive: true, max: 3 }).optional()
const small = quantity('length', { positive: true, max: 0.5 }).optional()
const stress = quantity('pressure', { positive: true, max: 3e9 }).optional()
const share = quantity('ratio', { positive: true, max: 1 }).optional()
const flow = quantity('flow', { positive: true, max: 0.01 }).optional()
const turning = quantity('angularSpeed', { positive: true, max: 2000 }).optional()
const viscosity = quantity('kinematicViscosity', { min: 2e-6, max: 1 }).optional()
const temperature = quantity('temperature', { min: 230, max: 420 }).optional()
const few = z.int().min(1).max(50).optional()

export const DEMAND_ROUTES = ['sizing sheet', 'print and jacking', 'pressure law'] as const
export const BOLT_FINISHES = ['plain', 'zinc', 'lubricated', 'cadmium'] as const
export const BOLT_CONVENTIONS = ['textbook', 'industry'] as const
export const BOLT_PLACES = ['ram bracket', 'ram clamp', 'pinch', 'other'] as const

/** A straight link made of tube. */
const link = z
  .strictObject({
    /** a row of the table of tube materials: "1026 DOM" */
    material: name.optional(),
    /** the same near a weld, where the cold work is gone: "1026 normalised" */
    weldMaterial: name.optional(),
    /** bungs welded in: near them the strength of the weld zone counts */
    weldedEnds: z.literal(true).optional(),
    /** how far a bent link's middle stands off the line between its joints */
    jog: quantity('length', { min: 0, max: 0.5 }).optional(),
  })
  .optional()

/** Bolts of one kind that do one thing. The thread is the trade's: "1/2-13", "M12x1.75". */
export const boltGroup = z.strictObject({
  id,
  what: name,
  place: z.enum(BOLT_PLACES),
  thread: name,
  /** "grade 8", "10.9" */
  grade: z.enum(['2', '5', '8', '8.8', '10.9', '12.9']).optional(),
  count: few,
  finish: z.enum(BOLT_FINISHES).optional(),
  convention: z.enum(BOLT_CONVENTIONS).optional(),
  /** of the proof load: "75 %" */
  preload: share,
  /** planes in which each is sheared */
  planes: z.int().min(1).max(4).optional(),
  /** in a bracket: from the bolted face to the ram's pin, and between the rows of bolts along the pull */
  height: size,
  rows: size,
  /** what the maker of the part asks for */
  maker: quantity('torque', { positive: true, max: 5000 }).optional(),
})

export const forces = z.strictObject({
  ground: z
    .strictObject({
      /** rubber on what the vehicle stands on; the published sheets go up to 0.7 */
      friction: quantity('ratio', { positive: true, max: 0.7 }).optional(),
      /** one sizing sheet doubles the torque where the steered wheels are driven */
      driven: z.literal(true).optional(),
      /** a tyre wedged in rock asks for so many times the standing torque */
      rockFactor: quantity('ratio', { min: 1, max: 5 }).optional(),
      route: z.enum(DEMAND_ROUTES).optional(),
    })
    .optional(),
  /** from the kingpin axis to the middle of the tyre print, on the ground, where it was measured there; outward positive */
  kingpinOffset: quantity('length', { min: -0.5, max: 0.5 }).optional(),
  handWheel: size,
  /** most that the driver can pull at the rim */
  handForce: quantity('force', { positive: true, max: 2000 }).optional(),
  losses: z
    .strictObject({
      /** share of the ram's force left after seals and back pressure: "90 %" */
      ram: share,
      /** share of the hand wheel's torque that reaches the sector shaft */
      gear: share,
      /** minor losses of one hose end, in velocity heads */
      hoseEnd: quantity('ratio', { min: 0, max: 20 }).optional(),
    })
    .optional(),
  pump: z
    .strictObject({
      /** a turn of its own shaft */
      displacement: quantity('volume', { positive: true, max: 1e-3 }).optional(),
      /** turns of the pump for one of the engine */
      pulleyRatio: quantity('ratio', { positive: true, max: 5 }).optional(),
      idleSpeed: turning,
      cruiseSpeed: turning,
      efficiency: share,
      flowControl: flow,
    })
    .optional(),
  box: z
    .strictObject({
      pistonBore: small,
      /** of the sector's teeth, from the shaft's middle to the rack's pitch line */
      sectorRadius: small,
      /** most that the maker allows on the sector shaft */
      sectorRating: quantity('torque', { positive: true, max: 20_000 }).optional(),
    })
    .optional(),
  oil: z
    .strictObject({
      /** a row of the table of viscosity grades: "VG 32" */
      grade: name.optional(),
      at40: viscosity,
      at100: viscosity,
      density: quantity('density', { min: 500, max: 1500 }).optional(),
      /** the coldest start, and the working temperature */
      cold: temperature,
      hot: temperature,
    })
    .optional(),
  tieRod: link,
  dragLink: link,
  rodEnd: z
    .strictObject({
      yield: stress,
      /** the stud at the root of its cone, and from there to the middle of the ball */
      studDiameter: small,
      studLever: small,
      studYield: stress,
    })
    .optional(),
  steeringArm: z
    .strictObject({
      /** at its root: across the pull and along it */
      thickness: small,
      width: small,
      /** from the root to the joint */
      lever: size,
      yield: stress,
    })
    .optional(),
  ramRod: z.strictObject({ yield: stress }).optional(),
  clampFriction: share,
  bolts: z.array(boltGroup).max(200).optional(),
  hoses: z
    .array(
      z.strictObject({
        /** id of the hose */
        hose: id,
        /** the tightest bend it makes, to the inside */
        bend: size,
        /** the way it has to go where that is longest, end to end */
        longestWay: quantity('length', { positive: true, max: 10 }).optional(),
      }),
    )
    .max(200)
    .optional(),
})

export type Forces = z.output<typeof forces>
export type BoltGroup = z.output<typeof boltGroup>
export type DemandRoute = (typeof DEMAND_ROUTES)[number]
