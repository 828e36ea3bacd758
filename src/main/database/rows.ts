import type { SQLiteTable } from 'drizzle-orm/sqlite-core'
import type { BuildFile } from '../../shared/model/build.ts'
import { exhaustive, fail, type Issue, ok, type Result } from '../../shared/result/result.ts'
import type { Row } from './field.ts'
import type { Table } from './table.ts'
import { TABLES } from './tables/index.ts'
import type { PartFile } from './tables/part.ts'

export interface TableRow {
  readonly table: SQLiteTable
  readonly row: Row
}

type Path = readonly (string | number)[]

/**
 * A file as rows, each after those it points at.
 *
 * @returns the rows, or an issue for each value that cannot be kept: `quantity.*` and `end.*` where it is not understood,
 *   `database.text_not_kept` where SQLite would not give back the text that it was given
 */
export function rowsOf(file: BuildFile, changedAt: string): Result<readonly TableRow[]> {
  const rows: TableRow[] = []
  const issues: Issue[] = []
  const put = <T>(table: Table<T>, value: T, keys: Row, path: Path) => {
    const row = table.toRow(value, keys, (i) => issues.push({ ...i, path: [...path, ...i.path] }))
    rows.push({ table: table.drizzle, row })
  }

  const build_id = file.build.id
  const header = { ...file.build, ...file }
  put(TABLES.build, header, { changed_at: changedAt }, ['build'])
  put(TABLES.vehicle, file.vehicle, { build_id }, ['vehicle'])
  if (file.axle) put(TABLES.axle, file.axle, { build_id }, ['axle'])

  file.parts.forEach((part, position) => {
    const path = ['parts', position]
    put(TABLES.part, part, { build_id, position }, path)
    putOwn(put, part, { build_id, part: part.id, kind: part.kind }, path)
    part.ends.forEach((end, i) => put(TABLES.partEnd, end, { build_id, part: part.id, position: i }, [...path, 'ends', i]))
  })
  file.joints.forEach((joint, position) => {
    put(TABLES.joint, joint, { build_id, position }, ['joints', position])
    joint.with?.forEach((aid, i) => put(TABLES.jointAid, { aid }, { build_id, joint: joint.id, position: i }, ['joints', position, 'with', i]))
  })
  if (file.survey) {
    put(TABLES.survey, file.survey, { build_id }, ['survey'])
    file.survey.madeSure.forEach((what, position) => put(TABLES.surveyMadeSure, { what }, { build_id, position }, ['survey', 'madeSure', position]))
    file.survey.readings.forEach((reading, position) => put(TABLES.reading, reading, { build_id, position }, ['survey', 'readings', position]))
  }
  const each = <T>(table: Table<T>, key: keyof BuildFile, list: readonly T[] | undefined) => {
    list?.forEach((item, position) => put(table, item, { build_id, position }, [key, position]))
  }
  each(TABLES.travelLimit, 'limits', file.limits)
  each(TABLES.torqueSpec, 'torqueSpecs', file.torqueSpecs)
  each(TABLES.torqueRecord, 'torqueRecords', file.torqueRecords)
  each(TABLES.alignmentReading, 'alignment', file.alignment)
  each(TABLES.task, 'tasks', file.tasks)
  // a task may name one that stands further down
  file.tasks?.forEach((task, t) => {
    task.after.forEach((before, i) => put(TABLES.taskAfter, { before }, { build_id, task: task.id, position: i }, ['tasks', t, 'after', i]))
    task.needs?.forEach((part, i) => put(TABLES.taskNeed, { part }, { build_id, task: task.id, position: i }, ['tasks', t, 'needs', i]))
  })
  each(TABLES.session, 'sessions', file.sessions)
  return issues.length > 0 ? fail(...issues) : ok(rows)
}

/** The row of what only this kind of part has. */
function putOwn(put: <T>(table: Table<T>, value: T, keys: Row, path: Path) => void, part: PartFile, keys: Row, path: Path): void {
  switch (part.kind) {
    case 'tube':
      return put(TABLES.tube, part, keys, path)
    case 'ram':
      return put(TABLES.ram, part, keys, path)
    case 'hose':
      return put(TABLES.hose, part, keys, path)
    case 'pump':
      return put(TABLES.pump, part, keys, path)
    case 'steering box':
      return put(TABLES.box, part, keys, path)
    case 'reservoir':
    case 'cooler':
    case 'filter':
      return put(TABLES.container, part, keys, path)
    case 'fluid':
      return put(TABLES.fluid, part, keys, path)
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
      return
    default:
      return exhaustive(part, 'kind of part')
  }
}
