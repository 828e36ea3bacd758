import type { ProcedureInput, ProcedureOutput } from '../../shared/contract/contract.ts'
import { parseQuantity } from '../../shared/quantities/parse.ts'
import { problemSentence } from '../../shared/report/index.ts'
import { showIn } from '../../shared/report/units.ts'

const INCH = showIn('inch')
const METRIC = showIn('metric')

/** A typed quantity in the units of both systems, so that the window can show the other one beside it. */
export async function readQuantity({ typed, dimension }: ProcedureInput<'quantity.read'>): Promise<ProcedureOutput<'quantity.read'>> {
  const read = parseQuantity(typed, dimension)
  if (!read.ok) return { ok: false, problems: read.issues.map(problemSentence) }
  return { ok: true, value: { inch: INCH(read.value.si, dimension), metric: METRIC(read.value.si, dimension) } }
}
