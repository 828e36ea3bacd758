import { type Chain, chainAt } from '../formulas/linkage/chain.ts'
import { type LinkageState, stateAtTravel } from '../formulas/linkage/linkage.ts'
import { leastAt } from '../formulas/linkage/solve.ts'
import { pitmanToHoldStraight, type Suspension, stateWithRise } from '../formulas/linkage/suspension.ts'
import { rollSteerLeaf } from '../formulas/linkage/turning.ts'
import type { Build } from '../model/build.ts'
import { degrees } from '../quantities/make.ts'
import type { Ledger } from './ledger.ts'
import { missingOf, typed } from './linkage/gather.ts'
import type { KnownSteering } from './linkage/gather-rest.ts'
import type { BumpSteerPlan, LimitsPlan, SteeringGeometry } from './linkage/plan-types.ts'

/** More steer than this over the suspension's travel is told: it is felt at the hand wheel. Common practice, no published source. */
const FELT = degrees(0.5)
const STEPS = 10
/** how far the drag link's joint at the axle is looked for, up and down */
const REACH = 0.3

/** Steer that bump and droop put in with the hand wheel held, straight ahead and half way to each stop; the height that puts in least. */
export function planBumpSteer(build: Build, steering: KnownSteering, limits: LimitsPlan | null, ledger: Ledger): BumpSteerPlan | null {
  const { suspension: given } = build.geometry ?? {}
  if (!given) return null
  if (given.spring === 'leaf') rollSteer(build, ledger)
  const g = steering.geometry
  const { bump, droop } = given
  if (!g.chain || !g.suspension || !bump || !droop) {
    const { ballAbove } = build.geometry?.pitman ?? {}
    const missing = missingOf({
      'track bar length, height and side, or leaf springs': g.suspension ?? undefined,
      'height of the pitman ball': ballAbove,
      "height of the drag link's joint": build.geometry?.dragLink?.above,
      'bump travel': bump,
      'droop travel': droop,
    })
    if (missing.length > 0) ledger.measure('suspension', ['geometry', 'suspension'], { missing })
    return null
  }
  const rise = Array.from({ length: 2 * STEPS + 1 }, (_, i) =>
    i < STEPS ? (droop.si * (i - STEPS)) / STEPS : (bump.si * (i - STEPS)) / STEPS,
  )
  const travels = [0, ...(limits ? [(limits.left.lines[0]?.travel ?? 0) / 2, -(limits.right.lines[0]?.travel ?? 0) / 2] : [])]
  const curves = [...new Set(travels)].flatMap((travel) => {
    const held = stateAtTravel(g.linkage, travel, g.range)
    return held.ok ? [{ travel, error: errors(g, g.chain as Chain, g.suspension as Suspension, held.value, rise) }] : []
  })
  const best = bestHeight(g, g.chain, g.suspension, rise)
  judge(g, g.chain, g.suspension, curves[0]?.error ?? [], best, [bump.si, -droop.si], steering, ledger)
  return { rise, curves, best }
}

/** Steer of both wheels' mean at each rise, against where it was held. */
function errors(g: SteeringGeometry, chain: Chain, s: Suspension, held: LinkageState, rise: readonly number[]): readonly (number | null)[] {
  return rise.map((z) => {
    const moved = stateWithRise(g.linkage, chain, s, g.range, held, z)
    return moved ? (moved.left + moved.right - held.left - held.right) / 2 : null
  })
}

const worstOf = (of: readonly (number | null)[]): number =>
  Math.max(...of.map((e) => (e === null ? Number.POSITIVE_INFINITY : Math.abs(e))))

/**
 * Height of the drag link's joint at the axle that leaves the least steer over the whole of the suspension's travel; the link's
 * length in plan stays, as it is set anew.
 */
function bestHeight(g: SteeringGeometry, chain: Chain, s: Suspension, rise: readonly number[]): BumpSteerPlan['best'] {
  const held = stateAtTravel(g.linkage, 0, g.range)
  if (!held.ok || !chainAt(g.linkage, chain, held.value)) return null
  const few = rise.filter((_, i) => i % 4 === 0)
  const worst = (height: number) => worstOf(errors(g, chain, { ...s, jointHeight: height }, held.value, few))
  const height = leastAt(worst, s.jointHeight - REACH, s.jointHeight + REACH)
  const left = worst(height)
  return Number.isFinite(left) ? { height, worst: left } : null
}

function judge(
  g: SteeringGeometry,
  chain: Chain,
  s: Suspension,
  straight: readonly (number | null)[],
  best: BumpSteerPlan['best'],
  ends: readonly [number, number],
  { turns, sweep }: KnownSteering,
  ledger: Ledger,
): void {
  if (straight.some((e) => e === null)) {
    ledger.add({ code: 'bump.does_not_reach', severity: 'stops', about: ['geometry', 'suspension'] })
    return
  }
  const worst = worstOf(straight)
  const [up, down] = ends.map((z) => pitmanToHoldStraight(g.linkage, chain, s, z))
  const hand = (pitman: number | undefined) =>
    pitman !== undefined && turns && sweep
      ? [{ dimension: 'angle' as const, si: (Math.abs(pitman) * turns.si * 2 * Math.PI) / sweep.si }]
      : []
  ledger.add({
    code: worst > FELT ? 'bump.steers' : 'bump.little',
    severity: worst > FELT ? 'look' : 'noted',
    about: ['geometry', 'dragLink', 'above'],
    evidence: [
      { name: 'steer at full bump', dimension: 'angle', si: straight.at(-1) ?? 0 },
      { name: 'steer at full droop', dimension: 'angle', si: straight[0] ?? 0 },
      ...hand(up).map((e) => ({ name: 'hand wheel off centre at full bump', ...e })),
      ...hand(down).map((e) => ({ name: 'hand wheel off centre at full droop', ...e })),
      ...(best
        ? [
            { name: "best height of the drag link's joint", dimension: 'length' as const, si: best.height },
            { name: 'most steer then', dimension: 'angle' as const, si: best.worst },
          ]
        : []),
    ],
  })
}

function rollSteer(build: Build, ledger: Ledger): void {
  const [h, a] = [typed(build, 'suspension', 'eyeAbove', 'length'), typed(build, 'suspension', 'eyeAway', 'length')]
  if (h && a) ledger.compute('bump.roll-steer', rollSteerLeaf, { h, a })
  else ledger.measure('leaf spring eye', ['geometry', 'suspension'])
}
