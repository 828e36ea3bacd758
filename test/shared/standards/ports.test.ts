import { describe, expect, it } from 'vitest'
import { PORT_FAMILIES } from '../../../src/shared/model/end/types.ts'
import { BANJO_BOLTS } from '../../../src/shared/standards/ports/banjo.ts'
import { BSP_CONES, ISO_1179_PORTS } from '../../../src/shared/standards/ports/bsp-ports.ts'
import { DASH_PORTS } from '../../../src/shared/standards/ports/dash.ts'
import { PORT_FAMILY_FACTS } from '../../../src/shared/standards/ports/families.ts'
import { CONE_24, ISO_6149_PORTS, ISO_9974_PORTS } from '../../../src/shared/standards/ports/metric-ports.ts'
import { TUBE_O_RING_NUTS } from '../../../src/shared/standards/ports/tube-o-ring.ts'
import { METRIC_THREADS } from '../../../src/shared/standards/threads/metric.ts'
import { G_R_THREADS } from '../../../src/shared/standards/threads/pipe.ts'
import { UNIFIED_THREADS } from '../../../src/shared/standards/threads/unified.ts'
import { inches, rising, row } from './rows.ts'

const UNIFIED = new Set(UNIFIED_THREADS.rows.map((each) => each.designation))
const METRIC = new Set(METRIC_THREADS.rows.map((each) => each.designation))
const G = new Set(G_R_THREADS.rows.map((each) => `G ${each.size}`))
const majorOf = (designation: string): number => row(METRIC_THREADS, designation).major_mm
const FAMILIES = ['flare_37', 'o_ring_boss', 'face_seal', 'flare_45', 'inverted_flare'] as const

describe('dash ports', () => {
  it.each(DASH_PORTS.rows.map((each) => [each.dash, each] as const))(
    '%s is its tube in sixteenths, and its threads exist',
    (dash, each) => {
      expect(dash).toBe(`-${inches(each.tube_in) * 16}`)
      for (const family of FAMILIES) {
        const thread = each[family]
        if (thread !== null) expect(UNIFIED).toContain(thread)
      }
    },
  )

  it('grows with the dash in every family', () => {
    expect(rising(DASH_PORTS.rows.map((each) => inches(each.tube_in)))).toBe(true)
    for (const family of FAMILIES) {
      const majors = DASH_PORTS.rows.flatMap((each) => (each[family] === null ? [] : [row(UNIFIED_THREADS, each[family]).major_in]))
      expect(rising(majors), family).toBe(true)
    }
  })

  it('has the same thread for the 37° flare and the O-ring boss in every size', () => {
    for (const each of DASH_PORTS.rows) expect(each.o_ring_boss).toBe(each.flare_37)
  })

  it('shares the 45° flare thread with the 37° flare in -2, -3, -4, -5, -8 and -10 only', () => {
    const shared = DASH_PORTS.rows.filter((each) => each.flare_45 !== null && each.flare_45 === each.flare_37).map((each) => each.dash)
    expect(shared).toEqual(['-2', '-3', '-4', '-5', '-8', '-10'])
  })

  it('keeps the traps: face seal -4 is the thread of flare -6, face seal -12 of flare -14', () => {
    expect(row(DASH_PORTS, '-4').face_seal).toBe(row(DASH_PORTS, '-6').flare_37)
    expect(row(DASH_PORTS, '-12').face_seal).toBe(row(DASH_PORTS, '-14').flare_37)
  })
})

describe('metric ports', () => {
  it.each([
    ['ISO 6149', ISO_6149_PORTS.rows],
    ['ISO 9974', ISO_9974_PORTS.rows],
    ['O-ring tube nuts', TUBE_O_RING_NUTS.rows],
  ] as const)('%s uses ISO 261 threads, from small to large', (_name, rows) => {
    for (const each of rows) expect(METRIC).toContain(each.designation)
    expect(rising(rows.map((each) => majorOf(each.designation)))).toBe(true)
  })

  it('has the twelve threads of the ISO 6149 size list', () => {
    const list = 'M8x1 M10x1 M12x1.5 M14x1.5 M16x1.5 M18x1.5 M22x1.5 M27x2 M33x2 M42x2 M48x2 M60x2'
    expect(ISO_6149_PORTS.rows.map((each) => each.designation).join(' ')).toBe(list)
  })

  it('sits each O-ring over the thread relief: its middle between the minor and the major diameter, its rim outside', () => {
    for (const each of ISO_6149_PORTS.rows) {
      const { major_mm, pitch_mm } = row(METRIC_THREADS, each.designation)
      expect(each.o_ring_inside_mm).toBeLessThan(major_mm - pitch_mm)
      expect(each.o_ring_inside_mm + 2 * each.o_ring_section_mm).toBeGreaterThan(major_mm)
    }
  })

  it('passes each washer over its thread and keeps it on the spot face', () => {
    for (const each of ISO_9974_PORTS.rows) {
      expect(rising([majorOf(each.designation) - 0.001, each.washer_inside_mm, each.washer_outside_mm, each.spot_face_mm])).toBe(true)
    }
  })

  it.each(CONE_24.rows.map((each) => [each.designation, each] as const))('24° cone %s names tube and series', (designation, each) => {
    expect(designation).toBe(`${each.tube_mm}${each.series === 'light' ? 'L' : 'S'}`)
    expect(METRIC).toContain(each.thread)
    expect(majorOf(each.thread)).toBeGreaterThan(each.tube_mm)
  })

  it('gives a tube a larger thread in the heavy series than in the light', () => {
    for (const heavy of CONE_24.rows.filter((each) => each.series === 'heavy')) {
      const light = CONE_24.rows.find((each) => each.series === 'light' && each.tube_mm === heavy.tube_mm)
      if (light !== undefined) expect(majorOf(heavy.thread)).toBeGreaterThan(majorOf(light.thread))
    }
    for (const series of ['light', 'heavy']) {
      expect(rising(CONE_24.rows.filter((each) => each.series === series).map((each) => majorOf(each.thread)))).toBe(true)
    }
  })

  it('agrees with the DIN 3902 list: light and heavy tube of each thread', () => {
    const other = `6 - M12x1.5, 8 6 M14x1.5, 10 8 M16x1.5, 12 10 M18x1.5, - 12 M20x1.5, 15 14 M22x1.5, - 16 M24x1.5, 18 - M26x1.5, 22 20 M30x2,
      28 25 M36x2, - 30 M42x2, 35 - M45x2, 42 38 M52x2`
    const theirs = other.split(',').flatMap((line) => {
      const [light, heavy, thread] = line.trim().split(/\s+/)
      return [...(light === '-' ? [] : [`${light}L ${thread}`]), ...(heavy === '-' ? [] : [`${heavy}S ${thread}`])]
    })
    expect(CONE_24.rows.map((each) => `${each.designation} ${each.thread}`).toSorted()).toEqual(theirs.toSorted())
  })
})

describe('G ports and cones', () => {
  it('uses threads of ISO 228-1', () => {
    for (const each of [...ISO_1179_PORTS.rows, ...BSP_CONES.rows]) expect(G).toContain(each.designation)
  })

  it('keeps a flat round the mouth outside the thread', () => {
    for (const each of ISO_1179_PORTS.rows) {
      expect(each.spot_face_mm).toBeGreaterThan(row(G_R_THREADS, each.designation.slice(2)).major_mm + 3)
    }
    expect(rising(ISO_1179_PORTS.rows.map((each) => each.spot_face_mm))).toBe(true)
  })
})

describe('banjo bolts', () => {
  it.each(BANJO_BOLTS.rows.map((each) => [each.designation, each.family] as const))(
    '%s is a thread of the %s table',
    (designation, family) => {
      expect({ metric: METRIC, unified: UNIFIED, g: G }[family]).toContain(designation)
    },
  )
})

describe('families', () => {
  it('are those of the model, in its order', () => {
    expect(PORT_FAMILY_FACTS.rows.map((each) => each.family)).toEqual([...PORT_FAMILIES])
  })

  it('give a cone or a seat its half angle, and nothing else one', () => {
    for (const each of PORT_FAMILY_FACTS.rows) {
      const named = /^(cone|seat) (\d+)/.exec(each.seal)
      // the flare families are named by the half angle, the 24° and 60° cones by the included one
      const half = named === null ? null : Number(named[2]) / (each.seal === 'cone 24' || each.seal === 'cone 60' ? 2 : 1)
      expect(each.half_angle_deg).toBe(half)
    }
  })
})
