import { axle, build, vehicle } from './build.ts'
import { joint, jointAid } from './joint.ts'
import { box, container, fluid, hose, part, partEnd, plain, pump, ram, tube } from './part.ts'
import { alignmentReading, torqueRecord, torqueSpec, torqueSpecJoint } from './records.ts'
import { session, task, taskAfter, taskNeed } from './schedule.ts'
import { reading, survey, surveyMadeSure, travelLimit } from './survey.ts'

/** Every table, each after those it points at. */
export const TABLES = {
  build,
  vehicle,
  axle,
  part,
  partEnd,
  plain,
  tube,
  ram,
  hose,
  pump,
  box,
  container,
  fluid,
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
