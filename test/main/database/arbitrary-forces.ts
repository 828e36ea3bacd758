import fc from 'fast-check'
import { BOLT_CONVENTIONS, BOLT_FINISHES, BOLT_PLACES, DEMAND_ROUTES } from '../../../src/shared/model/forces.ts'
import { id, name, typed, yes } from './arbitrary-values.ts'

const size = typed('length', { positive: true, max: 3 })
const small = typed('length', { positive: true, max: 0.5 })
const stress = typed('pressure', { positive: true, max: 3e9 })
const share = typed('ratio', { positive: true, max: 1 })
const turning = typed('angularSpeed', { positive: true, max: 2000 })
const viscosity = typed('kinematicViscosity', { min: 2e-6, max: 1 })
const temperature = typed('temperature', { min: 230, max: 420 })

/** An object of which every key may be missing, all of them at once too. */
const loose = <T>(keys: { [K in keyof T]: fc.Arbitrary<T[K]> }) => fc.record(keys, { requiredKeys: [] })

const link = loose({ material: name, weldMaterial: name, weldedEnds: yes, jog: typed('length', { min: 0, max: 0.5 }) })

// ids that occur twice and hoses that are not there: the model lets both stand
const bolts = fc.record(
  {
    id,
    what: name,
    place: fc.constantFrom(...BOLT_PLACES),
    thread: name,
    grade: fc.constantFrom('2', '5', '8', '8.8', '10.9', '12.9'),
    count: fc.integer({ min: 1, max: 50 }),
    finish: fc.constantFrom(...BOLT_FINISHES),
    convention: fc.constantFrom(...BOLT_CONVENTIONS),
    preload: share,
    planes: fc.integer({ min: 1, max: 4 }),
    height: size,
    rows: size,
    maker: typed('torque', { positive: true, max: 5000 }),
  },
  { requiredKeys: ['id', 'what', 'place', 'thread'] },
)
const run = fc.record({ hose: id, bend: size, longestWay: typed('length', { positive: true, max: 10 }) }, { requiredKeys: ['hose'] })

/** What the sums on force, strength and flow need, with any of it missing. */
export const forces = loose({
  ground: loose({
    friction: typed('ratio', { positive: true, max: 0.7 }),
    driven: yes,
    rockFactor: typed('ratio', { min: 1, max: 5 }),
    route: fc.constantFrom(...DEMAND_ROUTES),
  }),
  kingpinOffset: typed('length', { min: -0.5, max: 0.5 }),
  handWheel: size,
  handForce: typed('force', { positive: true, max: 2000 }),
  losses: loose({ ram: share, gear: share, hoseEnd: typed('ratio', { min: 0, max: 20 }) }),
  pump: loose({
    displacement: typed('volume', { positive: true, max: 1e-3 }),
    pulleyRatio: typed('ratio', { positive: true, max: 5 }),
    idleSpeed: turning,
    cruiseSpeed: turning,
    efficiency: share,
    flowControl: typed('flow', { positive: true, max: 0.01 }),
  }),
  box: loose({ pistonBore: small, sectorRadius: small, sectorRating: typed('torque', { positive: true, max: 20_000 }) }),
  oil: loose({
    grade: name,
    at40: viscosity,
    at100: viscosity,
    density: typed('density', { min: 500, max: 1500 }),
    cold: temperature,
    hot: temperature,
  }),
  tieRod: link,
  dragLink: link,
  rodEnd: loose({ yield: stress, studDiameter: small, studLever: small, studYield: stress }),
  steeringArm: loose({ thickness: small, width: small, lever: size, yield: stress }),
  ramRod: loose({ yield: stress }),
  clampFriction: share,
  bolts: fc.array(bolts, { maxLength: 3 }),
  hoses: fc.array(run, { maxLength: 3 }),
})
