import type { BuildFile } from '../../../shared/model/build.ts'
import { as, day, id, list, mark, name, nested, note, optional, optionalList, quantity, whole } from '../field.ts'
import { table } from '../table.ts'
import { BUILD_PARTS } from './build-part.ts'
import { listed, within } from './keys.ts'

export type TaskFile = NonNullable<BuildFile['tasks']>[number]
export type SessionFile = NonNullable<BuildFile['sessions']>[number]

const hours = quantity('time', { min: 0, max: 3_600_000 })
const helpers = optional(whole(0, 20))

export const task = table<TaskFile>('task', {
  ...listed,
  fields: {
    id,
    name,
    hours: nested({ low: hours, likely: hours, high: hours }),
    after: list(),
    needs: optionalList(),
    helpers,
    cures: optional(hours),
    finishInOneGo: mark,
    done: mark,
    note: optional(note),
  },
})

const ofTask = within('task', () => task)

/** A task that comes before another. */
export const taskAfter = table<{ before: string }>('task_after', {
  ...ofTask,
  references: [...ofTask.references, { columns: ['build_id', 'before_task'], table: () => task, to: ['build_id', 'id'] }],
  fields: { before: as('before_task', id) },
})

/** A part that must be here for a task. */
export const taskNeed = table<{ part: string }>('task_need', {
  ...ofTask,
  references: [...ofTask.references, { columns: ['build_id', 'part'], table: () => BUILD_PARTS.part, to: ['build_id', 'id'] }],
  fields: { part: id },
})

export const session = table<SessionFile>('session', {
  ...listed,
  fields: {
    id,
    on: as('worked_on', day),
    hours: quantity('time', { positive: true, max: 86_400 }),
    helpers,
    note: optional(note),
  },
})
