import { viscosityAtTemperature } from '../../formulas/hydraulics/viscosity.ts'
import type { Build } from '../../model/build.ts'
import { si } from '../../quantities/dimension.ts'
import { centistokes } from '../../quantities/make.ts'
import { VISCOSITY_GRADES } from '../../standards/fluids/viscosity.ts'
import { chosen, entered, fromOrigin, type Known, type Ledger } from '../ledger.ts'
import { missingOf } from '../linkage/gather.ts'

/** Steering fluids are 850 to 875 kg/m³ at 15 °C. From memory. */
const DENSITY = si(860, 'density')
const ZERO_C = 273.15
/** Working temperature of a steering system with a cooler. Common practice, no published source. */
const HOT = si(80 + ZERO_C, 'temperature')

export interface Oil {
  readonly rho: Known<'density'>
  readonly cold: Known<'kinematicViscosity'> | undefined
  readonly hot: Known<'kinematicViscosity'> | undefined
}

/** The oil cold and hot, by ASTM D341 from its viscosity at 40 and 100 °C; asks for what is missing. */
export function planOil(build: Build, ledger: Ledger): Oil | undefined {
  const oil = build.forces?.oil
  const row = VISCOSITY_GRADES.rows.find((r) => r.grade === oil?.grade)
  const ofGrade = (column: 'mid_cst' | 'typical_100_min_cst') => {
    const value = row?.[column]
    return row && typeof value === 'number'
      ? fromOrigin('kinematicViscosity', centistokes(value), { kind: 'table', table: 'viscosity-grades', row: row.grade, column })
      : undefined
  }
  const nu_1 = entered('kinematicViscosity', oil?.at40, ['forces', 'oil', 'at40']) ?? ofGrade('mid_cst')
  const nu_2 = entered('kinematicViscosity', oil?.at100, ['forces', 'oil', 'at100']) ?? ofGrade('typical_100_min_cst')
  const cold = entered('temperature', oil?.cold, ['forces', 'oil', 'cold'])
  const missing = missingOf({ 'viscosity at 40 °C': nu_1, 'viscosity at 100 °C': nu_2, 'temperature of the coldest start': cold })
  if (missing.length > 0) ledger.measure('oil', ['forces', 'oil'], { missing })
  if (!nu_1 || !nu_2) return undefined
  const rho = entered('density', oil?.density, ['forces', 'oil', 'density']) ?? chosen('density', DENSITY, 'oil density')
  const hot = entered('temperature', oil?.hot, ['forces', 'oil', 'hot']) ?? chosen('temperature', HOT, 'hot oil')
  const at = (name: 'cold' | 'hot', T: Known<'temperature'>) =>
    ledger.compute(`flow.viscosity-${name}`, viscosityAtTemperature, {
      nu_1,
      T_1: chosen('temperature', si(40 + ZERO_C, 'temperature'), 'of the data sheet'),
      nu_2,
      T_2: chosen('temperature', si(100 + ZERO_C, 'temperature'), 'of the data sheet'),
      T,
    })
  return { rho, cold: cold && at('cold', cold), hot: at('hot', hot) }
}
