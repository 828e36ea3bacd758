import type { Sex, Thread } from '../../model/end/types.ts'
import { type Length, si } from '../../quantities/dimension.ts'
import { mm } from '../../quantities/make.ts'
import type { Source } from '../../standards/source.ts'
import { NPT_THREADS } from '../../standards/threads/pipe.ts'

/** Where a calliper finds the crests of a real thread, which never is at the basic diameter. */
export interface Crest {
  readonly least: Length
  readonly most: Length
  readonly source: Source
}

const ISO_965: Source = {
  id: 'iso-965-1',
  cites:
    'ISO 965-1, from memory: 6g es = 15 + 11 P µm, Td(6) = 180 P^(2/3) - 3.15 P^(-1/2) µm; 6H TD1(6) = 230 P^0.7 µm, below P 1 mm 433 P - 190 P^1.22 µm. An uncoated or h thread may reach the basic diameter',
  mark: 'memory',
}
const B1_1: Source = {
  id: 'b1.1-tolerances',
  cites:
    'ASME B1.1, from memory: class 2A allowance 0.3 of the pitch-diameter tolerance, major tolerance 0.060 p^(2/3) in; class 2B minor tolerance 0.25 p - 0.4 p² in (below 1/4 in 0.05 p^(2/3) + 0.03 p/D - 0.002). Class 3A may reach the basic diameter',
  mark: 'memory',
}
const ISO_228: Source = {
  id: 'iso-228-tolerances',
  cites: 'ISO 228-1, class A major and internal minor tolerances by threads per inch, from memory',
  mark: 'memory',
}
const PIPE_LENGTH: Source = {
  id: 'pipe-along-the-thread',
  cites:
    'Taper 1 in 16 between the small end (E0, or 5 pitches before the gauge plane) and the last full thread; crests cut by up to 0.1 P',
  mark: 'derived',
}

/** mm, by threads per inch: ISO 228-1 */
const G_TOLERANCE: Readonly<Record<string, { readonly major: number; readonly minor: number }>> = {
  '28': { major: 0.214, minor: 0.282 },
  '19': { major: 0.25, minor: 0.445 },
  '14': { major: 0.284, minor: 0.541 },
  '11': { major: 0.36, minor: 0.64 },
}
const npt = new Map(NPT_THREADS.rows.map((r) => [`${r.size}-${r.tpi}`, { e0: r.e0_in * 25.4, e1: r.e1_in * 25.4, od: r.od_in * 25.4 }]))

/** The least and the most that a calliper can find across the crests of a male thread or inside those of a female one, new and sound. */
export function crestOf(thread: Thread, sex: Sex): Crest {
  const d = thread.major * 1000
  const p = thread.pitch * 1000
  switch (thread.family) {
    case 'metric': {
      const tolerance = 0.18 * p ** (2 / 3) - 0.00315 / Math.sqrt(p)
      const minor = d - 1.082532 * p
      const inside = p < 1 ? 0.433 * p - 0.19 * p ** 1.22 : 0.23 * p ** 0.7
      return sex === 'male' ? between(d - 0.015 - 0.011 * p - tolerance, d, ISO_965) : between(minor, minor + inside, ISO_965)
    }
    case 'unified':
      return unified(d / 25.4, p / 25.4, sex)
    case 'g': {
      const t = G_TOLERANCE[String(Math.round(25.4 / p))] ?? { major: 0.3, minor: 0.5 }
      const minor = d - 1.280654 * p
      return sex === 'male' ? between(d - t.major, d, ISO_228) : between(minor, minor + t.minor, ISO_228)
    }
    case 'npt':
    case 'nptf': {
      const size = npt.get(thread.designation.replace(/ NPTF?$/, ''))
      if (!size) return between(d, d, PIPE_LENGTH)
      return sex === 'male' ? between(size.e0 + 0.6 * p, size.od, PIPE_LENGTH) : between(size.e0 - 0.8 * p, size.e1 - 0.6 * p, PIPE_LENGTH)
    }
    case 'r':
    case 'rc':
    case 'rp': {
      const minor = d - 1.280654 * p
      if (sex === 'male') return between(d - (5 * p) / 16 - 0.1 * p, d + (2.75 * p) / 16, PIPE_LENGTH)
      return between(thread.tapered ? minor - (5 * p) / 16 : minor - 0.1 * p, minor + 0.2 * p, PIPE_LENGTH)
    }
  }
}

function unified(d: number, p: number, sex: Sex): Crest {
  if (sex === 'male') {
    const pitchTolerance = 0.0015 * Math.cbrt(d) + 0.0015 * Math.sqrt(9 * p) + 0.015 * p ** (2 / 3)
    return between((d - 0.3 * pitchTolerance - 0.06 * p ** (2 / 3)) * 25.4, d * 25.4, B1_1)
  }
  const minor = d - 1.082532 * p
  const tolerance = d < 0.25 ? 0.05 * p ** (2 / 3) + (0.03 * p) / d - 0.002 : 0.25 * p - 0.4 * p ** 2
  return between(minor * 25.4, (minor + tolerance) * 25.4, B1_1)
}

const between = (least: number, most: number, source: Source): Crest => ({ least: mm(least), most: mm(most), source })

/** How far a reading lies outside a range; negative below it, 0 inside. */
export function outside(value: Length, { least, most }: Pick<Crest, 'least' | 'most'>): Length {
  return si(value < least ? value - least : value > most ? value - most : 0, 'length')
}
