import { axle, build, vehicle } from './build.ts'
import { BUILD_PARTS } from './build-part.ts'
import { boltGroup, forces, hoseRun } from './forces.ts'
import { geometry } from './geometry.ts'
import { joint, jointAid } from './joint.ts'
import { alignmentReading, torqueRecord, torqueSpec, torqueSpecJoint } from './records.ts'
import { session, task, taskAfter, taskNeed } from './schedule.ts'
import { reading, survey, surveyMadeSure, travelLimit } from './survey.ts'

export { SHELF_TABLES } from './shelf.ts'

/** Every table of builds, each after those it points at. */
export const TABLES = {
  build,
  vehicle,
  axle,
  geometry,
  forces,
  boltGroup,
  hoseRun,
  ...BUILD_PARTS,
  joint,
  jointAid,
  survey,
  surveyMadeSure,
  reading,
  travelLimit,
  torqueSpec,
  torqueSpecJoint,
  torqueRecord,
  alignmentReading,
  task,
  taskAfter,
  taskNeed,
  session,
} as const
