import type { Build } from '../../model/build.ts'
import type { Part } from '../../model/part.ts'
import type { Ledger } from '../ledger.ts'

/** Parts that see the pump's full pressure. A return or suction hose does not. */
const seesPressure = (part: Part): boolean =>
  part.kind === 'ram' || (part.kind === 'hose' && (part.line === undefined || part.line === 'pressure' || part.line === 'ram'))

/** The weakest piece on the pressure side against the relief valve: what is rated below it bursts before the valve opens. */
export function checkPressure(build: Build, relief: number | undefined, ledger: Ledger): void {
  build.parts.forEach((part, i) => {
    const rated = part.workingPressure
    if (rated === undefined) {
      if (seesPressure(part)) ledger.measure('working pressure', ['parts', i, 'workingPressure'], { part: part.name })
      return
    }
    if (relief === undefined || (!seesPressure(part) && part.kind === 'hose') || rated.si >= relief) return
    ledger.add({
      code: 'pressure.below_relief',
      severity: 'stops',
      about: ['parts', i, 'workingPressure'],
      facts: { part: part.name },
      evidence: [
        { name: 'working pressure', dimension: 'pressure', si: rated.si },
        { name: 'relief pressure', dimension: 'pressure', si: relief },
      ],
    })
  })
}
