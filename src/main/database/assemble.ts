import { type BuildFile, FORMAT, FORMAT_VERSION } from '../../shared/model/build.ts'
import type { PartFile } from '../../shared/model/part.ts'
import type { Row } from './field.ts'
import type { Table } from './table.ts'
import { TABLES } from './tables/index.ts'
import type { CommonFile, PartTables } from './tables/part.ts'

/** The rows of one build in one table, in the file's order. */
export type RowsIn = (table: Pick<Table<never>, 'drizzle' | 'column' | 'columns'>) => readonly Row[]

/** Puts a build's rows together again as the file they came from, or undefined where there is no such build. */
export function fileOf(rowsIn: RowsIn): BuildFile | undefined {
  const all = <T>(table: Table<T>): T[] => rowsIn(table).map(table.fromRow)
  const first = <T>(table: Table<T>): T | undefined => all(table)[0]
  const handOut = <T, O>(table: Table<T>, column: string, owners: ReadonlyMap<unknown, O>, give: (owner: O, value: T) => void) =>
    handOutRows(rowsIn, table, column, owners, give)

  const stored = first(TABLES.build)
  const vehicle = first(TABLES.vehicle)
  if (!stored || !vehicle) return undefined
  const { parts: _, joints, limits, torqueSpecs, torqueRecords, alignment, tasks, sessions, ...build } = stored

  const parts = partsOf(rowsIn, TABLES, 'id')

  joints.push(...all(TABLES.joint))
  handOut(TABLES.jointAid, 'joint', byId(joints), (joint, { aid }) => joint.with?.push(aid))

  const axle = first(TABLES.axle)
  const geometry = first(TABLES.geometry)
  const forces = first(TABLES.forces)
  forces?.bolts?.push(...all(TABLES.boltGroup))
  forces?.hoses?.push(...all(TABLES.hoseRun))
  const survey = first(TABLES.survey)
  survey?.madeSure.push(...all(TABLES.surveyMadeSure).map((row) => row.what))
  survey?.readings.push(...all(TABLES.reading))

  tasks?.push(...all(TABLES.task))
  const taskById = byId(tasks ?? [])
  handOut(TABLES.taskAfter, 'task', taskById, (task, { before }) => task.after.push(before))
  handOut(TABLES.taskNeed, 'task', taskById, (task, { part }) => task.needs?.push(part))

  limits?.push(...all(TABLES.travelLimit))
  torqueSpecs?.push(...all(TABLES.torqueSpec))
  handOut(TABLES.torqueSpecJoint, 'spec', byId(torqueSpecs ?? []), (spec, { joint }) => spec.joints?.push(joint))
  torqueRecords?.push(...all(TABLES.torqueRecord))
  alignment?.push(...all(TABLES.alignmentReading))
  sessions?.push(...all(TABLES.session))

  return {
    format: FORMAT,
    version: FORMAT_VERSION,
    build,
    vehicle,
    ...(axle && { axle }),
    ...(geometry && { geometry }),
    ...(forces && { forces }),
    parts,
    joints,
    ...(survey && { survey }),
    ...(limits && { limits }),
    ...(torqueSpecs && { torqueSpecs }),
    ...(torqueRecords && { torqueRecords }),
    ...(alignment && { alignment }),
    ...(tasks && { tasks }),
    ...(sessions && { sessions }),
  }
}

/** The parts of a build or of the shelf, put together from the tables that keep them. `key` is the column that the others name a part by. */
export function partsOf(rowsIn: RowsIn, tables: PartTables, key: 'id' | 'number'): PartFile[] {
  const parts = new Map<unknown, CommonFile>(rowsIn(tables.part).map((row) => [row[key], tables.part.fromRow(row)]))
  handOutRows(rowsIn, tables.partEnd, 'part', parts, (part, end) => part.ends.push(end))
  const own = <T extends object>(table: Table<T>) => handOutRows<T, CommonFile>(rowsIn, table, 'part', parts, Object.assign)
  own(tables.plain)
  own(tables.tube)
  own(tables.ram)
  own(tables.hose)
  own(tables.pump)
  own(tables.box)
  own(tables.container)
  own(tables.fluid)
  // the foreign key on (part, kind) is what makes each of them whole
  return [...parts.values()] as PartFile[]
}

/** Hands each row of a table to what it belongs to, which `column` names. */
function handOutRows<T, O>(
  rowsIn: RowsIn,
  table: Table<T>,
  column: string,
  owners: ReadonlyMap<unknown, O>,
  give: (owner: O, value: T) => void,
): void {
  for (const row of rowsIn(table)) give(found(owners, row[column]), table.fromRow(row))
}

const byId = <T extends { id: string }>(items: readonly T[]): ReadonlyMap<string, T> => new Map(items.map((item) => [item.id, item]))

function found<O>(owners: ReadonlyMap<unknown, O>, id: unknown): O {
  const owner = owners.get(id)
  if (owner === undefined) throw new Error(`a row belongs to ${String(id)}, which is not there`)
  return owner
}
