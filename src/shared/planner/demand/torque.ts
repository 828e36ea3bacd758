import { demandDriven, demandPerWheel, demandPrintDiameter, demandPrintWidth, demandWheelLoad } from '../../formulas/forces/demand.ts'
import { demandEffectiveArm, demandParkingLaw, demandScrubMoment, demandSizingSheet } from '../../formulas/linkage/demand.ts'
import { kingpinGroundOffset } from '../../formulas/linkage/steering.ts'
import type { Build } from '../../model/build.ts'
import { DEMAND_ROUTES, type DemandRoute } from '../../model/forces.ts'
import { ratio } from '../../quantities/make.ts'
import type { RouteTorque } from '../forces-types.ts'
import { chosen, entered, fromOrigin, type Known, type Ledger } from '../ledger.ts'
import { missingOf, typed } from '../linkage/gather.ts'
import { parseTyreSize } from './tyre-size.ts'

/** The sheets' upper bound. */
const FRICTION = ratio(0.7)
/** Middle of what is met, 75 to 80 %. Common practice, no published source. */
const PRINT_SHARE = ratio(0.775)

/** What one standing wheel asks for about its kingpin. */
export interface WheelTorque {
  readonly route: DemandRoute
  readonly chosenByUser: boolean
  /** without lifting the vehicle */
  readonly scrub: Known<'torque'>
  /** what lifting needs, for the route that counts it */
  readonly lift: { readonly W: Known<'force'>; readonly d: Known<'length'>; readonly lambda: Known<'angle'> } | null
  readonly routes: readonly RouteTorque[]
}

/**
 * Kingpin torque of one standing wheel by the three published routes, as far as their inputs are known, and the one that is used.
 * The sizing sheets take the load of the axle and give both wheels; the other two take one wheel and its own load.
 */
export function planTorque(build: Build, ledger: Ledger): WheelTorque | null {
  const W = entered('force', build.vehicle.frontAxleLoad, ['vehicle', 'frontAxleLoad'])
  const ground = build.forces?.ground
  const f = entered('ratio', ground?.friction, ['forces', 'ground', 'friction']) ?? chosen('ratio', FRICTION, 'friction bound')
  const p = entered('pressure', build.vehicle.tyre?.pressure, ['vehicle', 'tyre', 'pressure'])
  const B = printWidth(build, ledger)
  const E = groundOffset(build, ledger)
  const lambda = entered('angle', build.axle?.kingpinInclination, ['axle', 'kingpinInclination'])
  const missing = missingOf({
    'load on the front axle': W,
    'tyre pressure': p,
    'width of the tyre print': B,
    'kingpin offset at the ground': E,
    'kingpin inclination': lambda,
  })
  if (missing.length > 0) ledger.measure('demand inputs', ['forces'], { missing })
  const W_w = W && ledger.compute('demand.via-wheel-load', demandWheelLoad, { W })
  if (!W || !W_w) return null

  const found = new Map<DemandRoute, Known<'torque'>>()
  const keep = (route: DemandRoute, M: Known<'torque'> | undefined) => M && found.set(route, M)
  const sheet = B && E && ledger.compute('demand.both-sizing-sheet', demandSizingSheet, { W, f, B, E })
  const both = sheet && ground?.driven ? ledger.compute('demand.both-driven', demandDriven, { T: sheet }) : sheet
  keep('sizing sheet', both && ledger.compute('demand.wheel-sizing-sheet', demandPerWheel, { T: both }))
  const a = p && ledger.compute('demand.via-print', demandPrintDiameter, { W_w, p })
  const h = a && E && ledger.compute('demand.via-arm', demandEffectiveArm, { d: E, a })
  const lifts = lambda && lambda.si >= 0 && E ? { W: W_w, d: { ...E, si: Math.abs(E.si) } as Known<'length'>, lambda } : null
  keep('print and jacking', h && lifts ? ledger.compute('demand.wheel-print', demandScrubMoment, { mu: f, W: W_w, h }) : undefined)
  keep('pressure law', p && ledger.compute('demand.wheel-pressure', demandParkingLaw, { mu: f, W: W_w, p }))

  const wanted = ground?.route
  const route = (wanted && found.has(wanted) ? wanted : undefined) ?? DEMAND_ROUTES.find((r) => found.has(r))
  const scrub = route && found.get(route)
  if (!route || !scrub) return null
  if (wanted && wanted !== route)
    ledger.add({ code: 'demand.other_route', severity: 'look', about: ['forces', 'ground', 'route'], facts: { wanted, route } })
  const routes = DEMAND_ROUTES.flatMap((r): RouteTorque[] => {
    const M = found.get(r)
    return M?.origin.kind === 'number' ? [{ route: r, perWheel: M.si, bothWheels: 2 * M.si, number: M.origin.id }] : []
  })
  tellSpread(routes, route, ledger)
  return { route, chosenByUser: wanted === route, scrub, lift: route === 'print and jacking' ? lifts : null, routes }
}

function tellSpread(routes: readonly RouteTorque[], used: DemandRoute, ledger: Ledger): void {
  if (routes.length < 2) return
  const all = routes.map((r) => r.perWheel)
  ledger.add({
    code: 'demand.spread',
    severity: 'noted',
    about: ['forces', 'ground', 'route'],
    facts: { used },
    evidence: [
      ...routes.map((r) => ({ name: `one wheel by ${r.route}`, dimension: 'torque' as const, si: r.perWheel })),
      { name: 'greatest over least', dimension: 'ratio', si: Math.max(...all) / Math.min(...all) },
    ],
    numbers: routes.map((r) => r.number),
  })
}

/** Measured, or from the tyre's section width, and then said to be an estimate. */
function printWidth(build: Build, ledger: Ledger): Known<'length'> | undefined {
  const tyre = build.vehicle.tyre
  const measured = entered('length', tyre?.printWidth, ['vehicle', 'tyre', 'printWidth'])
  if (measured || tyre?.size === undefined) return measured
  const size = parseTyreSize(tyre.size)
  if (!size) {
    ledger.measure('tyre size', ['vehicle', 'tyre', 'size'], { typed: tyre.size })
    return undefined
  }
  ledger.measure('print width', ['vehicle', 'tyre', 'printWidth'])
  const w = fromOrigin('length', size.section, { kind: 'entered', path: ['vehicle', 'tyre', 'size'], typed: tyre.size })
  return ledger.compute('demand.via-print-width', demandPrintWidth, { x: chosen('ratio', PRINT_SHARE, 'print share'), w })
}

/** Measured on the ground, or from hub face, wheel and kingpin. */
function groundOffset(build: Build, ledger: Ledger): Known<'length'> | undefined {
  const measured = entered('length', build.forces?.kingpinOffset, ['forces', 'kingpinOffset'])
  if (measured) return measured
  const b = typed(build, 'wheel', 'hubFace', 'length')
  const o = typed(build, 'wheel', 'offset', 'length')
  const R = typed(build, 'wheel', 'loadedRadius', 'length')
  const sigma = entered('angle', build.axle?.kingpinInclination, ['axle', 'kingpinInclination'])
  return b && o && R && sigma && ledger.compute('demand.via-offset', kingpinGroundOffset, { b, o, R, sigma })
}
