import { taperRatioFromDiameters } from '../../formulas/tapers/taper.ts'
import { type Length, type Ratio, si } from '../../quantities/dimension.ts'
import { inches, mm } from '../../quantities/make.ts'
import { TUBE_PRESSURES } from '../../standards/lines/tube-pressure.ts'
import { INPUT_SHAFT_SPLINES } from '../../standards/splines/input-shafts.ts'
import { SECTOR_SHAFT_SPLINES } from '../../standards/splines/sector-shafts.ts'
import { TAPERS } from '../../standards/tapers.ts'
import { DOM_SIZES } from '../../standards/tubes/dom-sizes.ts'
import { TIE_ROD_TUBES } from '../../standards/tubes/tie-rod-tubes.ts'
import { ranked } from './rank.ts'
import type { Further, Measured, RowCandidate, SplineReadings, TaperReadings, TubeReadings } from './types.ts'

type Unranked = Omit<RowCandidate, 'rank'>
/** Up to here a value is consistent with its reading, and up to the second nearly so, in uncertainties. */
const CONSISTENT = 1 + 1e-9
const NEARLY = 2

const matched = (found: readonly (Omit<Unranked, 'match'> | null)[]): readonly RowCandidate[] =>
  ranked(
    found.flatMap((c): Unranked[] =>
      c === null || c.off > NEARLY ? [] : [{ ...c, match: c.off <= CONSISTENT ? 'consistent' : 'nearly' }],
    ),
  )

/** Rate of a cone from two diameters, and its uncertainty from theirs (JCGM 100, 5.1.2). */
export function taperOf({ one, other, apart }: TaperReadings): { readonly value: Ratio; readonly u: Ratio } {
  const [large, small] = one.value >= other.value ? [one, other] : [other, one]
  const value =
    large.value === small.value ? si(0, 'ratio') : taperRatioFromDiameters.compute({ D_1: large.value, D_2: small.value, L: apart.value })
  return { value, u: si(Math.hypot(large.u, small.u, value * apart.u) / apart.value, 'ratio') }
}

/** Ball-stud tapers whose rate lies near the one measured. */
export function taperCandidates(ratio: { readonly value: Ratio; readonly u: Ratio }): readonly RowCandidate[] {
  return matched(
    TAPERS.rows.map((row) => ({
      what: 'taper',
      table: TAPERS.name,
      row: row.name,
      ratio: si(row.ratio, 'ratio'),
      off: Math.abs(ratio.value - row.ratio) / ratio.u,
    })),
  )
}

/** Over the same length, how much the two diameters differ on each: measured finely enough, that parts them. */
export function taperFurther(candidates: readonly RowCandidate[], { apart }: TaperReadings): Further | null {
  const rates = candidates.flatMap((c) => (c.ratio === undefined ? [] : [{ of: c.row, ratio: c.ratio }]))
  if (rates.length < 2) return null
  const sorted = rates.map((r) => r.ratio as number).sort((x, y) => x - y)
  const closest = Math.min(...sorted.slice(1).map((k, i) => k - (sorted[i] as number)))
  return {
    property: 'difference of diameters',
    over: apart.value,
    // two diameters, each so far off, must not bridge half the difference
    within: (apart.value * closest) / 2 / Math.SQRT2,
    expected: rates.map(({ of, ratio }) => ({ of, si: apart.value * ratio, dimension: 'length' })),
  }
}

/** Tubes are drawn to about this: outside diameter, and wall as a share of itself. From memory of mill tolerances. */
const TUBE = { outside: mm(0.13), wall: 0.075 }

interface TubeRow {
  readonly size: string
  readonly od_in: number
  readonly wall_in: number
}
const TUBES: readonly (readonly [string, readonly TubeRow[]])[] = [
  [TIE_ROD_TUBES.name, TIE_ROD_TUBES.rows],
  [DOM_SIZES.name, DOM_SIZES.rows],
  [TUBE_PRESSURES.name, TUBE_PRESSURES.rows],
]

/** Tubes of the tables near the sizes measured; a size that stands in two tables is named once. */
export function tubeCandidates(r: TubeReadings): readonly RowCandidate[] {
  const seen = new Set<string>()
  return matched(
    TUBES.flatMap(([table, rows]) =>
      rows.map((row) => {
        const [outside, wall] = [inches(row.od_in), inches(row.wall_in)]
        const key = `${row.od_in}x${row.wall_in}`
        if (seen.has(key)) return null
        seen.add(key)
        const inside = si(outside - 2 * wall, 'length')
        const slack = TUBE.wall * wall
        const offs = [
          offBy(r.outside, outside, TUBE.outside),
          offBy(r.wall, wall, slack),
          offBy(r.inside, inside, TUBE.outside + 2 * slack),
        ]
        return { what: 'tube', table, row: row.size, outside, wall, inside, off: Math.max(...offs) } as const
      }),
    ),
  )
}

/** How many uncertainties a reading is off a nominal size that may itself be off by `tolerance`. */
const offBy = (m: Measured | undefined, nominal: Length, tolerance: number): number =>
  m === undefined ? 0 : Math.max(0, Math.abs(m.value - nominal) - tolerance) / m.u

export function tubeFurther(candidates: readonly RowCandidate[], r: TubeReadings): Further | null {
  if (candidates.length < 2) return null
  const of = (c: RowCandidate, value: Length | undefined) => ({ of: c.row, si: value ?? 0, dimension: 'length' as const })
  const outsides = new Set(candidates.map((c) => c.outside))
  if (r.outside === undefined && outsides.size > 1)
    return { property: 'outside diameter', within: mm(0.05), expected: candidates.map((c) => of(c, c.outside)) }
  return { property: 'wall', within: mm(0.1), expected: candidates.map((c) => of(c, c.wall)) }
}

/** Splined shafts by count and by what is measured over the splines. */
export function splineCandidates(r: SplineReadings): readonly RowCandidate[] {
  const input = INPUT_SHAFT_SPLINES.rows.map((row) => {
    const nominal = fraction(row.diameter_in)
    // a chart that gives no measured range: the shaft is somewhat under its nominal size
    const least = inches(row.measured_min_in ?? nominal - 0.035)
    const most = inches(row.measured_max_in ?? nominal)
    const off = r.diameter === undefined ? 0 : Math.max(0, least - r.diameter.value, r.diameter.value - most) / r.diameter.u
    return { table: INPUT_SHAFT_SPLINES.name, row: row.size, count: row.splines, outside: inches(nominal), off }
  })
  const sector = SECTOR_SHAFT_SPLINES.rows.map((row) => {
    const outside = row.diameter_in === null ? undefined : inches(row.diameter_in)
    const off = r.diameter === undefined || outside === undefined ? 0 : Math.abs(r.diameter.value - outside) / r.diameter.u
    return { table: SECTOR_SHAFT_SPLINES.name, row: row.id, count: row.splines, ...(outside === undefined ? {} : { outside }), off }
  })
  return matched([...input, ...sector].filter((c) => r.count === undefined || c.count === r.count).map((c) => ({ what: 'spline', ...c })))
}

export function splineFurther(candidates: readonly RowCandidate[]): Further | null {
  if (candidates.length < 2) return null
  if (new Set(candidates.map((c) => c.count)).size > 1)
    return { property: 'number of splines', expected: candidates.map((c) => ({ of: c.row, si: c.count ?? 0, dimension: 'ratio' })) }
  const known = candidates.filter((c) => c.outside !== undefined)
  return {
    property: 'diameter over splines',
    within: mm(0.1),
    expected: known.map((c) => ({ of: c.row, si: c.outside ?? 0, dimension: 'length' })),
  }
}

function fraction(text: string): number {
  const [top, bottom = '1'] = text.split('/')
  return Number(top) / Number(bottom)
}
