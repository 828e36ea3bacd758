import type { Check, Column } from '../field.ts'
import type { Reference, Table } from '../table.ts'
import { build } from './build.ts'

const column = (name: string, type: Column['type'] = 'text'): Column => ({ name, type, required: true })
const position: Check = { about: 'position', sql: '"position" >= 0' }
const ofBuild: Reference = { columns: ['build_id'], table: () => build, to: ['id'], owned: true }

/** At most one of it in a build. */
export const single = { keys: [column('build_id')], primary: ['build_id'], references: [ofBuild] }

/** Many in a build, in the file's order, each with an id of its own. */
export const listed = {
  keys: [column('build_id'), column('position', 'integer')],
  primary: ['build_id', 'id'],
  unique: [['build_id', 'position']],
  references: [ofBuild],
  checks: [position],
}

/** Many in another row, in the file's order, known by their place only. `owner` names the column that holds the owner's id. */
export const within = (owner: string, table: () => Pick<Table<never>, 'column'>) => ({
  keys: [column('build_id'), column(owner), column('position', 'integer')],
  primary: ['build_id', owner, 'position'],
  references: [{ columns: ['build_id', owner], table, to: ['build_id', 'id'], owned: true }] satisfies Reference[],
  checks: [position],
})

/** Many in a row of which a build has one. */
export const withinSingle = (table: () => Pick<Table<never>, 'column'>) => ({
  keys: [column('build_id'), column('position', 'integer')],
  primary: ['build_id', 'position'],
  references: [{ columns: ['build_id'], table, to: ['build_id'], owned: true }] satisfies Reference[],
  checks: [position],
})

export { column, position }
