import type { Build } from '../model/build.ts'
import { planAlignment } from './alignment.ts'
import { planBumpSteer } from './bump-steer.ts'
import { planFluid } from './fluid.ts'
import { planForces } from './forces.ts'
import { planJoints } from './joints.ts'
import { Ledger } from './ledger.ts'
import { planLimits } from './limits.ts'
import { gatherLinkage } from './linkage/gather.ts'
import { gatherSteering } from './linkage/gather-rest.ts'
import { planLinkage } from './linkage/linkage.ts'
import { planParts } from './parts-list.ts'
import type { Finding, Plan, Severity } from './plan.ts'
import { planRams, reliefPressure } from './ram.ts'
import { planRamInSpace } from './ram-space.ts'
import { checkAdjusters } from './rules/adjusters.ts'
import { checkBarbs, checkHoseEnds } from './rules/hoses.ts'
import { checkPressure } from './rules/pressure.ts'
import { checkTubes } from './rules/tubes.ts'
import { planSteps } from './steps.ts'
import { planStrokes } from './strokes.ts'
import { planSurvey } from './survey.ts'
import { planTorques } from './torques.ts'

const RANK: Readonly<Record<Severity, number>> = { stops: 0, look: 1, noted: 2 }

/**
 * Everything that can be said of a build: one pure function from one plain value to one plain value.
 *
 * @param build a build that the file check has passed
 * @returns findings (those that stop the build first), numbers with their workings, verdicts, parts list, torques and
 *   steps. Missing data never throws: it becomes a finding that says what to measure.
 */
export function plan(build: Build): Plan {
  const ledger = new Ledger()
  const joints = planJoints(build, ledger)
  checkAdjusters(build, ledger)
  checkHoseEnds(build, ledger)
  checkBarbs(build, ledger)
  checkTubes(build, ledger)
  const { result: survey, picture } = planSurvey(build, ledger)
  const rams = planRams(build, survey, ledger)
  const known = gatherLinkage(build, ledger)
  const steering = known && gatherSteering(build, known, ledger)
  const limits = planLimits(build, steering, ledger)
  const linkage = steering && planLinkage(build, steering, limits, ledger)
  if (steering) planRamInSpace(steering, limits, ledger)
  const strokes = steering && planStrokes(steering, limits)
  const bumpSteer = steering && planBumpSteer(build, steering, limits, ledger)
  planAlignment(build, known, ledger)
  const relief = reliefPressure(build, false, ledger)
  checkPressure(build, relief?.si, ledger)
  planFluid(build, rams, ledger)
  const forces = planForces(build, steering, limits, relief, ledger)
  const torques = planTorques(build, joints, ledger)
  const steps = planSteps(build, joints, ledger)
  return {
    build: { id: build.build.id, name: build.build.name, revision: build.build.revision, vehicle: build.vehicle.name },
    findings: bySeverity(ledger.findings),
    numbers: ledger.numbers,
    joints,
    parts: planParts(build),
    torques,
    steps,
    survey: picture,
    linkage,
    limits,
    strokes,
    bumpSteer,
    forces,
  }
}

/** What stops the build first; within one severity the order in which the rules found it. */
function bySeverity(findings: readonly Finding[]): readonly Finding[] {
  return [...findings].sort((a, b) => RANK[a.severity] - RANK[b.severity])
}
