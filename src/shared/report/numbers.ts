import type { Build } from '../model/build.ts'
import type { Plan, PlanNumber } from '../planner/plan.ts'
import type { NumberText } from './document.ts'
import { labelIn } from './text/labels.ts'
import { otherSystem, showIn, showTape, showWithUncertainty, type UnitSystem } from './units.ts'

/** Every number of the plan as the reader sees it: label, value, the same in the other units, and how sure it is (k = 2). */
export function numberTexts(build: Build, plan: Plan, units: UnitSystem): NumberText[] {
  return plan.numbers.map((n) => numberText(build, n, units))
}

function numberText(build: Build, n: PlanNumber, units: UnitSystem): NumberText {
  const own = shownValue(n, units)
  const other = shownValue(n, otherSystem(units))
  return {
    id: n.id,
    label: labelIn(build, n.id),
    value: own.value,
    second: other.value === own.value ? null : other.value,
    uncertainty: own.uncertainty,
  }
}

/** Lengths that were read from a tape are given back as the tape shows them. */
const readFromTape = (n: PlanNumber): boolean => n.dimension === 'length' && n.id.startsWith('survey.') && !isHelper(n.id)

/** A number that only serves another: the parts of an uncertainty, the steps on the way to a place. It has its working, but no line of its own in a section. */
export const isHelper = (id: string): boolean => /\.(?:u|via)-|\.[uU]$/.test(id)

/** A chance smaller than this is no more than "hardly ever"; its digits would look like knowledge. */
const HARDLY_EVER = 0.001

function shownValue(n: PlanNumber, units: UnitSystem): { value: string; uncertainty: string | null } {
  if (n.id.includes('wrong-order') && n.si < HARDLY_EVER) return { value: 'below 0.1 %', uncertainty: null }
  const tape = readFromTape(n) ? showTape(n.si, units) : null
  if (n.uncertainty === undefined) return { value: tape ?? showIn(units)(n.si, n.dimension), uncertainty: null }
  const sure = showWithUncertainty(n.si, n.uncertainty, n.dimension, units)
  const value = tape !== null && units === 'inch' ? tape : sure.value
  return { value, uncertainty: `± ${sure.uncertainty}` }
}
