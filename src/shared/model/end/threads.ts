import { inches, mm } from '../../quantities/make.ts'
import { METRIC_THREADS } from '../../standards/threads/metric.ts'
import { METRIC_SPECIAL_THREADS } from '../../standards/threads/metric-special.ts'
import { G_R_THREADS, NPT_THREADS } from '../../standards/threads/pipe.ts'
import { UNIFIED_THREADS } from '../../standards/threads/unified.ts'
import type { Thread, ThreadFamily } from './types.ts'

const MM_PER_INCH = 25.4

const unified = new Map<string, Thread>(
  UNIFIED_THREADS.rows.map((row) => [
    row.designation,
    {
      family: 'unified',
      designation: row.designation,
      major: inches(row.major_in),
      pitch: mm(MM_PER_INCH / row.tpi),
      flankAngle: 60,
      tapered: false,
    },
  ]),
)

const metric = new Map<string, Thread>(
  [...METRIC_THREADS.rows, ...METRIC_SPECIAL_THREADS.rows].map((row) => [
    row.designation,
    { family: 'metric', designation: row.designation, major: mm(row.major_mm), pitch: mm(row.pitch_mm), flankAngle: 60, tapered: false },
  ]),
)

const pipe = new Map<string, Thread>()
for (const family of ['npt', 'nptf'] as const) {
  for (const row of NPT_THREADS.rows) {
    const designation = `${row.size}-${row.tpi} ${family.toUpperCase()}`
    pipe.set(`${family} ${row.size}`, {
      family,
      designation,
      major: inches(row.od_in),
      pitch: mm(MM_PER_INCH / row.tpi),
      flankAngle: 60,
      tapered: true,
    })
  }
}
const BRITISH = { g: 'G', r: 'R', rc: 'Rc', rp: 'Rp' } as const
for (const family of ['g', 'r', 'rc', 'rp'] as const) {
  for (const row of G_R_THREADS.rows) {
    if (family !== 'g' && !row.r_exists) continue
    pipe.set(`${family} ${row.size}`, {
      family,
      designation: `${BRITISH[family]} ${row.size}`,
      major: mm(row.major_mm),
      pitch: mm(MM_PER_INCH / row.tpi),
      flankAngle: 55,
      tapered: family === 'r' || family === 'rc',
    })
  }
}

const all: readonly Thread[] = [...unified.values(), ...metric.values(), ...pipe.values()]

/** Unified thread by size ("7/8", "1-1/4", "#8") and whole threads per inch, if the table has it. */
export const unifiedThread = (size: string, tpi: number): Thread | undefined => unified.get(`${size}-${tpi}`)

const series = new Map<string, string>(UNIFIED_THREADS.rows.map((row) => [row.designation, row.series]))

/** The series a unified designation belongs to: UNC, UNF, UNEF, UN or UNS. */
export const unifiedSeries = (designation: string): string | undefined => series.get(designation)

/** Unified threads of one size, coarsest first. */
export const unifiedThreadsOf = (size: string): readonly Thread[] =>
  [...unified.values()].filter((t) => t.designation.startsWith(`${size}-`) && splitUnified(t) === size)

/** Metric thread by major diameter and pitch in millimetres, if ISO 261 or the table of specials has it. */
export const metricThread = (major: number, pitch: number): Thread | undefined => metric.get(`M${major}x${pitch}`)

/** The coarse metric thread of a size: what a designation without a pitch means (ISO 965-1). */
export function coarseMetricThread(major: number): Thread | undefined {
  const row = METRIC_THREADS.rows.find((r) => r.major_mm === major && r.series === 'coarse')
  return row && metric.get(row.designation)
}

/** Pipe thread by family and size ("3/8"). */
export const pipeThread = (family: ThreadFamily, size: string): Thread | undefined => pipe.get(`${family} ${size}`)

/** Any thread by its own designation ("7/8-18", "M18x1.5", "G 3/8"). */
export const threadByDesignation = (designation: string): Thread | undefined =>
  unified.get(designation) ?? metric.get(designation) ?? all.find((t) => t.designation === designation)

/**
 * Threads that a calliper and a pitch gauge could mistake for one of the given size: pitch within 5 %, major diameter
 * within 4.5 %; nearest first, at most six. For a useful answer to a designation that no table has.
 *
 * @param major m
 * @param pitch m
 */
export function threadsNear(major: number, pitch: number): readonly Thread[] {
  const distance = (t: Thread) => Math.abs(t.pitch / pitch - 1) * 4 + Math.abs(t.major / major - 1)
  return all
    .filter((t) => t.family !== 'nptf' && t.family !== 'rc' && t.family !== 'rp')
    .filter((t) => Math.abs(t.pitch / pitch - 1) <= 0.05 && Math.abs(t.major / major - 1) <= 0.045)
    .sort((a, b) => distance(a) - distance(b))
    .slice(0, 6)
}

/** Every thread of every table. */
export const allThreads = (): readonly Thread[] => all

function splitUnified(t: Thread): string {
  return t.designation.slice(0, t.designation.lastIndexOf('-'))
}
