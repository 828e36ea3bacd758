import { changedAt } from './build.ts'
import { column } from './keys.ts'
import { partTables } from './part.ts'

/**
 * The parts of the shelf. Each has a number beside its id: what belongs to it is found by that, and so are its words in
 * `shelf_words`, the table for searching, which SQL alone describes (migrations/0001_shelf.sql).
 */
export const SHELF_TABLES = partTables({
  prefix: 'shelf_',
  part: {
    keys: [column('number', 'integer'), column('changed_at')],
    primary: ['number'],
    unique: [['id']],
    checks: [{ about: 'number', sql: '"number" > 0' }, changedAt],
  },
  owner: [column('part', 'integer')],
  to: ['number'],
})
