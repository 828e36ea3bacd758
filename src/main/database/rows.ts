import type { SQLiteTable } from 'drizzle-orm/sqlite-core'
import type { BuildFile } from '../../shared/model/build.ts'
import type { PartFile } from '../../shared/model/part.ts'
import { exhaustive, fail, type Issue, issue, ok, type Result } from '../../shared/result/result.ts'
import { fileOf } from './assemble.ts'
import type { Row } from './field.ts'
import { firstLost } from './lost.ts'
import type { Table } from './table.ts'
import { TABLES } from './tables/index.ts'
import type { PartTables } from './tables/part.ts'

export interface TableRow {
  readonly table: SQLiteTable
  readonly row: Row
}

export type Path = readonly (string | number)[]
export type Put = <T>(table: Table<T>, value: T, keys: Row, path: Path) => void

/**
 * A file as rows, each after those it points at.
 *
 * @returns the rows, or an issue for each value that cannot be kept: `quantity.*` and `end.*` where it is not understood,
 *   `database.text_not_kept` where SQLite would not give back the text that it was given, `database.no_place` where the tables
 *   have no column for something that the model knows: better not saved than saved in part
 */
export function rowsOf(file: BuildFile, changedAt: string): Result<readonly TableRow[]> {
  const rows: TableRow[] = []
  const issues: Issue[] = []
  const put: Put = (table, value, keys, path) => {
    const row = table.toRow(value, keys, (i) => issues.push({ ...i, path: [...path, ...i.path] }))
    rows.push({ table: table.drizzle, row })
  }

  const lines = <T>(table: Table<T>, items: readonly T[] | undefined, keys: Row, path: Path) => {
    for (const [position, item] of items?.entries() ?? []) put(table, item, { ...keys, position }, [...path, position])
  }

  const build_id = file.build.id
  put(TABLES.build, { ...file.build, ...file }, { changed_at: changedAt }, ['build'])
  put(TABLES.vehicle, file.vehicle, { build_id }, ['vehicle'])
  if (file.axle) put(TABLES.axle, file.axle, { build_id }, ['axle'])
  if (file.geometry) put(TABLES.geometry, file.geometry, { build_id }, ['geometry'])
  if (file.forces) {
    put(TABLES.forces, file.forces, { build_id }, ['forces'])
    lines(TABLES.boltGroup, file.forces.bolts, { build_id }, ['forces', 'bolts'])
    lines(TABLES.hoseRun, file.forces.hoses, { build_id }, ['forces', 'hoses'])
  }

  lines(TABLES.part, file.parts, { build_id }, ['parts'])
  for (const [i, part] of file.parts.entries()) {
    putOwn(TABLES, put, part, { build_id, part: part.id, kind: part.kind }, ['parts', i])
    lines(TABLES.partEnd, part.ends, { build_id, part: part.id }, ['parts', i, 'ends'])
  }
  lines(TABLES.joint, file.joints, { build_id }, ['joints'])
  for (const [i, joint] of file.joints.entries()) {
    const aids = joint.with?.map((aid) => ({ aid }))
    lines(TABLES.jointAid, aids, { build_id, joint: joint.id }, ['joints', i, 'with'])
  }
  if (file.survey) {
    const sure = file.survey.madeSure.map((what) => ({ what }))
    put(TABLES.survey, file.survey, { build_id }, ['survey'])
    lines(TABLES.surveyMadeSure, sure, { build_id }, ['survey', 'madeSure'])
    lines(TABLES.reading, file.survey.readings, { build_id }, ['survey', 'readings'])
  }
  lines(TABLES.travelLimit, file.limits, { build_id }, ['limits'])
  lines(TABLES.torqueSpec, file.torqueSpecs, { build_id }, ['torqueSpecs'])
  for (const [i, spec] of file.torqueSpecs?.entries() ?? []) {
    const joints = spec.joints?.map((joint) => ({ joint }))
    lines(TABLES.torqueSpecJoint, joints, { build_id, spec: spec.id }, ['torqueSpecs', i, 'joints'])
  }
  lines(TABLES.torqueRecord, file.torqueRecords, { build_id }, ['torqueRecords'])
  lines(TABLES.alignmentReading, file.alignment, { build_id }, ['alignment'])
  lines(TABLES.task, file.tasks, { build_id }, ['tasks'])
  // after all tasks, since one may name another that stands further down
  for (const [i, task] of file.tasks?.entries() ?? []) {
    const after = task.after.map((before) => ({ before }))
    const needs = task.needs?.map((part) => ({ part }))
    lines(TABLES.taskAfter, after, { build_id, task: task.id }, ['tasks', i, 'after'])
    lines(TABLES.taskNeed, needs, { build_id, task: task.id }, ['tasks', i, 'needs'])
  }
  lines(TABLES.session, file.sessions, { build_id }, ['sessions'])
  if (issues.length > 0) return fail(...issues)
  const inTable = Map.groupBy(rows, (r) => r.table)
  const back = fileOf((table) => inTable.get(table.drizzle)?.map((r) => r.row) ?? [])
  const lost = firstLost(file, back)
  return lost ? fail(issue('database.no_place', lost)) : ok(rows)
}

/** Puts the row of what only this kind of part has into its table among those that keep parts. */
export function putOwn(tables: PartTables, put: Put, part: PartFile, keys: Row, path: Path) {
  switch (part.kind) {
    case 'tube':
      return put(tables.tube, part, keys, path)
    case 'ram':
      return put(tables.ram, part, keys, path)
    case 'hose':
      return put(tables.hose, part, keys, path)
    case 'pump':
      return put(tables.pump, part, keys, path)
    case 'steering box':
      return put(tables.box, part, keys, path)
    case 'reservoir':
    case 'cooler':
    case 'filter':
      return put(tables.container, part, keys, path)
    case 'fluid':
      return put(tables.fluid, part, keys, path)
    case 'knuckle':
    case 'steering arm':
    case 'pitman arm':
    case 'rod end':
    case 'bung':
    case 'clamp':
    case 'bracket':
    case 'adapter':
    case 'fastener':
    case 'damper':
    case 'axle housing':
    case 'other':
      return put(tables.plain, part, keys, path)
    default:
      return exhaustive(part, 'kind of part')
  }
}
