import type { Problem, ProcedureOutput } from '../../../shared/contract/contract.ts'
import type { BuildFile } from '../../../shared/model/build.ts'
import { call, messageOf } from '../../app/client.ts'
import type { Units } from '../../app/queries.ts'

type Answer = ProcedureOutput<'plan.compare'>
export type Comparison = Extract<Answer, { ok: true }>['value']

/** What a changed file would change in the plan of the stored build, or the problems met; nothing is saved. */
export async function compare(
  id: string,
  file: BuildFile,
  units: Units,
): Promise<{ readonly ok: true; readonly value: Comparison } | { readonly ok: false; readonly problems: readonly Problem[] }> {
  try {
    return await call('plan.compare', { id, file, units })
  } catch (error) {
    return { ok: false, problems: [{ code: 'window', place: '', sentence: messageOf(error) }] }
  }
}
