import type { Pressure } from '../../quantities/dimension.ts'
import { inches, ksi, megapascals } from '../../quantities/make.ts'
import { BOLT_GRADES } from '../../standards/bolts/grades.ts'
import { PROPERTY_CLASSES } from '../../standards/bolts/property-classes.ts'
import { TUBE_MATERIALS, type TubeMaterialRow } from '../../standards/materials/tubes.ts'
import { fromOrigin, type Known } from '../ledger.ts'

const ROUNDING = 1 + 1e-9

export interface TubeMaterial {
  readonly row: TubeMaterialRow
  readonly S_y: Known<'pressure'>
  readonly E: Known<'pressure'>
}

const cell = (table: string, row: string, column: string, si: Pressure): Known<'pressure'> =>
  fromOrigin('pressure', si, { kind: 'table', table, row, column })

/** A row of the table of tube materials by its id; undefined for a name that is not in it. */
export function tubeMaterial(id: string | undefined): TubeMaterial | undefined {
  const row = TUBE_MATERIALS.rows.find((r) => r.id === id)
  return (
    row && {
      row,
      S_y: cell('tube-materials', row.id, 'yield_ksi', ksi(row.yield_ksi)),
      E: cell('tube-materials', row.id, 'modulus_ksi', ksi(row.modulus_ksi)),
    }
  )
}

/** Rows of the same grade and condition that print another yield strength. */
export const disagreeing = ({ id, grade, condition, yield_ksi }: TubeMaterialRow): readonly TubeMaterialRow[] =>
  TUBE_MATERIALS.rows.filter((r) => r.id !== id && r.grade === grade && r.condition === condition && r.yield_ksi !== yield_ksi)

export interface BoltStrength {
  readonly proof: Known<'pressure'>
  readonly yield: Known<'pressure'>
}

/**
 * Proof and yield strength of a bolt by its grade and diameter in metres; undefined beyond the tables.
 *
 * @param system inch threads have grades, metric ones classes: a class on an inch bolt is not known
 */
export function boltStrength(grade: string, diameter: number, system: 'inch' | 'metric'): BoltStrength | undefined {
  const inch = BOLT_GRADES.rows.find(
    (r, i, all) =>
      system === 'inch' &&
      r.grade === grade &&
      diameter <= inches(r.to_in) * ROUNDING &&
      (diameter > inches(r.over_in) * ROUNDING || (all[i - 1]?.grade !== grade && diameter * ROUNDING >= inches(r.over_in))),
  )
  if (inch) {
    return {
      proof: cell('bolt-grades', inch.id, 'proof_ksi', ksi(inch.proof_ksi)),
      yield: cell('bolt-grades', inch.id, 'yield_ksi', ksi(inch.yield_ksi)),
    }
  }
  const metric = PROPERTY_CLASSES.rows.find(
    (r) =>
      system === 'metric' && r.property_class === grade && diameter * 1000 > r.over_mm * ROUNDING && diameter * 1000 <= r.to_mm * ROUNDING,
  )
  return (
    metric && {
      proof: cell('property-classes', metric.id, 'proof_mpa', megapascals(metric.proof_mpa)),
      yield: cell('property-classes', metric.id, 'yield_mpa', megapascals(metric.yield_mpa)),
    }
  )
}
