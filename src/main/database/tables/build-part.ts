import { column, listed } from './keys.ts'
import { partTables } from './part.ts'

/** The parts of builds. */
export const BUILD_PARTS = partTables({
  prefix: '',
  part: listed,
  owner: [column('build_id'), column('part')],
  to: ['build_id', 'id'],
})
