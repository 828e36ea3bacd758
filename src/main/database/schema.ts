import { SHELF_TABLES, TABLES } from './tables/index.ts'

/*
 * The tables once more, one export each: the form in which drizzle-kit looks for them. `.config/drizzle.config.ts` says how
 * the next migration is made. A test compares this list with what the migrations build.
 */
export const build = TABLES.build.drizzle
export const vehicle = TABLES.vehicle.drizzle
export const axle = TABLES.axle.drizzle
export const geometry = TABLES.geometry.drizzle
export const forces = TABLES.forces.drizzle
export const boltGroup = TABLES.boltGroup.drizzle
export const hoseRun = TABLES.hoseRun.drizzle
export const part = TABLES.part.drizzle
export const partEnd = TABLES.partEnd.drizzle
export const plain = TABLES.plain.drizzle
export const tube = TABLES.tube.drizzle
export const ram = TABLES.ram.drizzle
export const hose = TABLES.hose.drizzle
export const pump = TABLES.pump.drizzle
export const box = TABLES.box.drizzle
export const container = TABLES.container.drizzle
export const fluid = TABLES.fluid.drizzle
export const joint = TABLES.joint.drizzle
export const jointAid = TABLES.jointAid.drizzle
export const survey = TABLES.survey.drizzle
export const surveyMadeSure = TABLES.surveyMadeSure.drizzle
export const reading = TABLES.reading.drizzle
export const travelLimit = TABLES.travelLimit.drizzle
export const torqueSpec = TABLES.torqueSpec.drizzle
export const torqueSpecJoint = TABLES.torqueSpecJoint.drizzle
export const torqueRecord = TABLES.torqueRecord.drizzle
export const alignmentReading = TABLES.alignmentReading.drizzle
export const task = TABLES.task.drizzle
export const taskAfter = TABLES.taskAfter.drizzle
export const taskNeed = TABLES.taskNeed.drizzle
export const session = TABLES.session.drizzle
export const shelfPart = SHELF_TABLES.part.drizzle
export const shelfPartEnd = SHELF_TABLES.partEnd.drizzle
export const shelfPlain = SHELF_TABLES.plain.drizzle
export const shelfTube = SHELF_TABLES.tube.drizzle
export const shelfRam = SHELF_TABLES.ram.drizzle
export const shelfHose = SHELF_TABLES.hose.drizzle
export const shelfPump = SHELF_TABLES.pump.drizzle
export const shelfBox = SHELF_TABLES.box.drizzle
export const shelfContainer = SHELF_TABLES.container.drizzle
export const shelfFluid = SHELF_TABLES.fluid.drizzle
