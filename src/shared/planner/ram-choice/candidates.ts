import { inches, mm } from '../../quantities/make.ts'
import { RAM_BORES, RAM_PAIRS, RAM_RODS, RAM_STROKES } from '../../standards/ram/sizes.ts'

/** One standard ram: sizes in metres beside their designations. */
export interface StandardRam {
  readonly bore: string
  readonly rod: string
  readonly stroke: string
  readonly ended: 'single' | 'double'
  readonly D: number
  readonly d: number
  readonly s: number
}

/** Larger ones are not for steering a light axle. Chosen. */
const LARGEST_BORE = mm(102)
/** Rods that are made for a bore, as a part of it. Common practice, no published source. */
const [THINNEST, THICKEST] = [0.38, 0.72]

interface Size {
  readonly size: string
  readonly value: number
  readonly unit: 'mm' | 'in'
}

const metresOf = ({ value, unit }: Size): number => (unit === 'in' ? inches(value) : mm(value))

/** Every bore with every rod of its system that goes with it and every stroke, single- and double-ended. */
export const STANDARD_RAMS: readonly StandardRam[] = makeRams()

/**
 * Of each system of sizes the longest stroke that is too short, and so many that are long enough: longer ones never win.
 *
 * @param way that the ram goes, with the room wanted; null: every stroke
 */
export function worthHolding(rams: readonly StandardRam[], way: number | null, enough = 2): readonly StandardRam[] {
  if (way === null) return rams
  const systems = Map.groupBy(RAM_STROKES.rows, (r) => r.unit)
  const kept = new Set<string>()
  for (const rows of systems.values()) {
    const sorted = [...rows].sort((a, b) => metresOf(a) - metresOf(b))
    const first = sorted.findIndex((r) => metresOf(r) >= way)
    const from = first < 0 ? sorted.length - 1 : Math.max(first - 1, 0)
    for (const row of sorted.slice(from, first < 0 ? undefined : first + enough)) kept.add(row.size)
  }
  return rams.filter((ram) => kept.has(ram.stroke))
}

function makeRams(): readonly StandardRam[] {
  const traded = new Set(RAM_PAIRS.rows.map((p) => `${p.bore_in}x${p.rod_in}`))
  const goes = (bore: Size, rod: Size): boolean => {
    const share = rod.value / bore.value
    return rod.unit === bore.unit && ((share >= THINNEST && share <= THICKEST) || traded.has(`${bore.value}x${rod.value}`))
  }
  return RAM_BORES.rows
    .filter((b) => metresOf(b) <= LARGEST_BORE)
    .flatMap((bore) =>
      RAM_RODS.rows
        .filter((rod) => goes(bore, rod))
        .flatMap((rod) =>
          RAM_STROKES.rows
            .filter((stroke) => stroke.unit === bore.unit)
            .flatMap((stroke) =>
              (['single', 'double'] as const).map((ended) => ({
                bore: bore.size,
                rod: rod.size,
                stroke: stroke.size,
                ended,
                D: metresOf(bore),
                d: metresOf(rod),
                s: metresOf(stroke),
              })),
            ),
        ),
    )
}
