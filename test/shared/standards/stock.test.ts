import { describe, expect, it } from 'vitest'
import { CASTLE_NUTS_INCH, CASTLE_NUTS_METRIC } from '../../../src/shared/standards/fasteners/castle-nuts.ts'
import { COTTER_HOLES_INCH, COTTER_HOLES_METRIC } from '../../../src/shared/standards/fasteners/cotter-holes.ts'
import { JAM_NUTS_INCH, JAM_NUTS_METRIC } from '../../../src/shared/standards/fasteners/jam-nuts.ts'
import { STEERING_FLUIDS, VISCOSITY_GRADES } from '../../../src/shared/standards/fluids/viscosity.ts'
import { HOSE_BEND_RADII } from '../../../src/shared/standards/hoses/bend-radius.ts'
import { HOSE_DASH_SIZES } from '../../../src/shared/standards/hoses/j517-dash.ts'
import { HOSE_RATINGS } from '../../../src/shared/standards/hoses/ratings.ts'
import { TUBE_PRESSURES } from '../../../src/shared/standards/lines/tube-pressure.ts'
import { LINE_VELOCITIES } from '../../../src/shared/standards/lines/velocity.ts'
import { TUBE_MATERIALS } from '../../../src/shared/standards/materials/tubes.ts'
import { RAM_BORES, RAM_PAIRS, RAM_RODS, RAM_STROKES } from '../../../src/shared/standards/ram/sizes.ts'
import { CLEVIS_BORES, ROD_ENDS } from '../../../src/shared/standards/rod-ends/bores.ts'
import { INPUT_SHAFT_SPLINES } from '../../../src/shared/standards/splines/input-shafts.ts'
import { FREE_PLAY_LIMITS, LINKAGE_PLAY_LIMITS } from '../../../src/shared/standards/steering/free-play.ts'
import { STAND_OFF_BAND, TAPERS } from '../../../src/shared/standards/tapers.ts'
import { UNIFIED_THREADS } from '../../../src/shared/standards/threads/unified.ts'
import { DOM_SIZES } from '../../../src/shared/standards/tubes/dom-sizes.ts'
import { TIE_ROD_TUBES } from '../../../src/shared/standards/tubes/tie-rod-tubes.ts'
import { LOAD_INDICES } from '../../../src/shared/standards/tyres/load-index.ts'
import { inches, rising, row } from './rows.ts'

const degrees = (radians: number): number => (radians * 180) / Math.PI

describe('ball-stud tapers', () => {
  it.each(TAPERS.rows.map((each) => [each.name, each] as const))(
    '%s: ratio, taper per foot and both angles say the same',
    (_name, each) => {
      // ratio and taper per foot are printed to four figures, angles to 1e-4 degree
      expect(Math.abs(12 * each.ratio - each.in_per_ft)).toBeLessThan(0.0006)
      expect(Math.abs(degrees(Math.atan(each.ratio / 2)) - each.half_angle_deg)).toBeLessThan(2e-4)
      expect(Math.abs(2 * each.half_angle_deg - each.included_angle_deg)).toBeLessThan(2e-4)
    },
  )

  it('runs from slow to steep, and keeps "7°" apart from 1.5 in/ft', () => {
    expect(rising(TAPERS.rows.map((each) => each.ratio))).toBe(true)
    expect(row(TAPERS, '1:8').included_angle_deg - row(TAPERS, '7° included').included_angle_deg).toBeCloseTo(0.15, 2)
  })

  it('wants 3/32 to 1/4 in between arm and shoulder', () => {
    expect(STAND_OFF_BAND).toMatchObject({ min_in: 0.09375, max_in: 0.25 })
  })
})

describe('tubes', () => {
  it.each([...TIE_ROD_TUBES.rows, ...DOM_SIZES.rows].map((each) => [each.size, each] as const))(
    '%s: outside is inside and two walls',
    (size, each) => {
      expect(size).toBe(`${each.od_in.toFixed(3)}x${each.wall_in.toFixed(3)}`)
      expect(each.id_in + 2 * each.wall_in).toBeCloseTo(each.od_in, 9)
      expect(each.id_in).toBeGreaterThan(0)
    },
  )

  it('run by outside diameter, then by wall, and tie rods are of stocked tube', () => {
    for (const table of [TIE_ROD_TUBES, DOM_SIZES]) expect(rising(table.rows.map((each) => each.od_in * 1000 + each.wall_in))).toBe(true)
    const stocked = DOM_SIZES.rows.map((each) => each.size)
    for (const each of TIE_ROD_TUBES.rows) expect(stocked).toContain(each.size)
  })

  it('hydraulic tube pressure follows Barlow at 50 000 psi and factor 4, to 50 psi', () => {
    for (const each of TUBE_PRESSURES.rows) {
      expect(each.id_in + 2 * each.wall_in).toBeCloseTo(each.od_in, 9)
      expect(inches(each.size.split('x')[0] ?? '')).toBe(each.od_in)
      expect(Math.abs((2 * 50_000 * each.wall_in) / each.od_in / 4 - each.working_psi)).toBeLessThanOrEqual(26)
    }
  })

  it('materials yield below their tensile strength, and copies that disagree stay apart', () => {
    for (const each of TUBE_MATERIALS.rows) expect(each.yield_ksi).toBeLessThan(each.tensile_ksi)
    expect(row(TUBE_MATERIALS, '1026 DOM').yield_ksi).toBe(70)
    expect(row(TUBE_MATERIALS, '1026 DOM, mill page').yield_ksi).toBe(75)
    expect(row(TUBE_MATERIALS, '4130 normalised').yield_ksi).toBe(50)
    expect(row(TUBE_MATERIALS, '4130 aircraft, to 0.188 wall').yield_ksi).toBe(75)
  })
})

describe('hoses', () => {
  it('bore is the dash in sixteenths, to the rounding of the nominal size', () => {
    for (const each of HOSE_RATINGS.rows) expect(Math.abs((-Number(each.dash) * 25.4) / 16 - each.bore_mm)).toBeLessThan(0.11)
    for (const each of HOSE_DASH_SIZES.rows) {
      expect(Math.abs(inches(each.bore_in) * 25.4 - each.bore_mm)).toBeLessThan(0.11)
      if (each.types === 'most') expect(inches(each.bore_in)).toBe(-Number(each.dash) / 16)
      else expect(inches(each.bore_in)).toBeLessThan(-Number(each.dash) / 16)
    }
  })

  it('pressure falls with the bore in 1SN and 2SN, stays in R17, and two braids carry more than one', () => {
    const of = (type: string) => HOSE_RATINGS.rows.filter((each) => each.type === type).map((each) => each.working_bar)
    expect(rising(of('1SN').toReversed())).toBe(true)
    expect(rising(of('2SN').toReversed())).toBe(true)
    expect(new Set(of('R17'))).toEqual(new Set([210]))
    for (const [i, one] of of('1SN').entries()) expect(of('2SN')[i]).toBeGreaterThan(one)
  })

  it('bend radius grows with the size', () => {
    expect(rising(HOSE_BEND_RADII.rows.map((each) => each.radius_mm))).toBe(true)
    const sizes = new Map(HOSE_RATINGS.rows.map((each) => [each.dn, each.dash]))
    for (const each of HOSE_BEND_RADII.rows) expect(sizes.get(each.dn)).toBe(each.dash)
  })

  it('velocity guides have a lower end below the upper, suction slowest', () => {
    for (const each of LINE_VELOCITIES.rows) if (each.min !== null) expect(each.min).toBeLessThan(each.max)
    const top = (line: string) =>
      Math.max(...LINE_VELOCITIES.rows.filter((each) => each.line === line && each.unit === 'm/s').map((each) => each.max))
    expect(rising([top('suction'), top('return'), top('pressure')])).toBe(true)
  })
})

describe('fluids', () => {
  it.each(VISCOSITY_GRADES.rows.map((each) => [each.grade, each] as const))(
    '%s spans its midpoint by a tenth either way',
    (grade, each) => {
      expect(grade).toBe(`VG ${each.mid_cst}`)
      expect(each.min_cst).toBeCloseTo(0.9 * each.mid_cst, 6)
      expect(each.max_cst).toBeCloseTo(1.1 * each.mid_cst, 6)
      if (each.typical_100_min_cst !== null) expect(each.typical_100_max_cst).toBeGreaterThanOrEqual(each.typical_100_min_cst)
    },
  )

  it('thins when hot', () => {
    for (const each of STEERING_FLUIDS.rows) {
      expect(rising([each.at_100_cst, each.at_40_min_cst, each.at_40_max_cst])).toBe(true)
      expect(each.density_min_kg_m3).toBeLessThan(each.density_max_kg_m3)
    }
  })
})

describe('tyre load indices', () => {
  it('run without a gap and rise with the index', () => {
    const [first] = LOAD_INDICES.rows
    expect(LOAD_INDICES.rows.map((each) => each.index)).toEqual(LOAD_INDICES.rows.map((_, i) => (first?.index ?? Number.NaN) + i))
    expect(rising(LOAD_INDICES.rows.map((each) => each.load_kg))).toBe(true)
  })

  it.each(LOAD_INDICES.rows.map((each) => [each.index, each.load_kg] as const))('%i is near 45 x 10^(index/80): %d kg', (index, load) => {
    // the rule the table was rounded from; its steps were rounded to 20, 40 or 50 kg at the top: within 2 %
    expect(Math.abs((45 * 10 ** (index / 80)) / load - 1)).toBeLessThan(0.02)
  })
})

describe('ram sizes', () => {
  it('name their figure and rise within a series', () => {
    for (const table of [RAM_BORES, RAM_RODS, RAM_STROKES]) {
      for (const each of table.rows) expect(each.size).toBe(`${each.value} ${each.unit}`)
      for (const series of new Set(table.rows.map((each) => each.series))) {
        expect(rising(table.rows.filter((each) => each.series === series).map((each) => each.value))).toBe(true)
      }
    }
  })

  it('pair a listed bore with a listed, thinner rod', () => {
    const listed = (table: typeof RAM_BORES | typeof RAM_RODS) => table.rows.filter((each) => each.unit === 'in').map((each) => each.value)
    for (const each of RAM_PAIRS.rows) {
      expect(each.size).toBe(`${each.bore_in}x${each.rod_in}`)
      expect(listed(RAM_BORES)).toContain(each.bore_in)
      expect(listed(RAM_RODS)).toContain(each.rod_in)
      expect(each.rod_in).toBeLessThan(each.bore_in)
    }
  })
})

describe('steering play', () => {
  it('allows an eighth of the wheel, as the rule prints it', () => {
    expect(FREE_PLAY_LIMITS.rows.map((each) => [each.wheel_in, each.lash_in])).toEqual([
      [16, 2],
      [18, 2.25],
      [20, 2.5],
      [22, 2.75],
    ])
    for (const each of FREE_PLAY_LIMITS.rows) expect(each.lash_in).toBe(each.wheel_in / 8)
  })

  it('covers every rim once', () => {
    expect(LINKAGE_PLAY_LIMITS.rows[0]?.over_in).toBe(0)
    for (const [i, each] of LINKAGE_PLAY_LIMITS.rows.entries()) if (i > 0) expect(each.over_in).toBe(LINKAGE_PLAY_LIMITS.rows[i - 1]?.to_in)
    expect(LINKAGE_PLAY_LIMITS.rows.at(-1)?.to_in).toBeNull()
    expect(rising(LINKAGE_PLAY_LIMITS.rows.map((each) => each.play_in))).toBe(true)
  })
})

describe('nuts and pins', () => {
  it.each(CASTLE_NUTS_INCH.rows.map((each) => [each.size, each] as const))(
    '%s in: slots clear the pin, and the floor lies inside the nut',
    (size, each) => {
      const pin = inches(row(COTTER_HOLES_INCH, size).pin_in)
      // a slot's least width is printed to 0.01 in: the pin may be nominally 0.0025 in wider and still pass, its wire being under size
      expect(each.slot_min_in + 0.0025).toBeGreaterThanOrEqual(pin)
      expect(rising([each.slot_min_in, each.slot_max_in])).toBe(true)
      expect(rising([each.floor_min_in, each.floor_max_in, inches(each.thickness_in)])).toBe(true)
      expect(inches(each.flats_in)).toBe(row(JAM_NUTS_INCH, size).flats_in)
      expect(each.slots).toBe(6)
    },
  )

  it.each(CASTLE_NUTS_METRIC.rows.map((each) => [each.size, each] as const))(
    '%s: slots clear the pin, and the floor lies inside the nut',
    (size, each) => {
      expect(each.slot_min_mm).toBeGreaterThan(row(COTTER_HOLES_METRIC, size).pin_mm)
      expect(rising([each.slot_min_mm, each.slot_max_mm])).toBe(true)
      expect(each.floor_max_mm).toBeLessThan(each.thickness_mm)
      expect(each.flats_mm).toBe(row(JAM_NUTS_METRIC, size).flats_mm)
    },
  )

  it('holes are a little larger than their pins and rise with the thread', () => {
    for (const each of COTTER_HOLES_INCH.rows) {
      expect(each.hole_in).toBeGreaterThan(inches(each.pin_in))
      expect(each.hole_in - inches(each.pin_in)).toBeLessThan(0.017)
      expect(each.hole_in).toBeLessThan(inches(each.size) / 3)
    }
    expect(rising(COTTER_HOLES_INCH.rows.map((each) => inches(each.size)))).toBe(true)
    expect(rising(COTTER_HOLES_METRIC.rows.map((each) => Number(each.size.slice(1))))).toBe(true)
  })

  it('jam nuts are 1.4 to 2 diameters wide and thinner than half a diameter and a bit', () => {
    for (const each of JAM_NUTS_INCH.rows) {
      expect(each.flats_in / inches(each.size)).toBeGreaterThan(1.3)
      expect(each.flats_in / inches(each.size)).toBeLessThan(1.8)
      expect(each.thickness_in / inches(each.size)).toBeLessThan(0.63)
      expect(each.flats_in * 64).toBe(Math.round(each.flats_in * 64))
      expect(each.thickness_in * 64).toBe(Math.round(each.thickness_in * 64))
    }
    // ISO 4035: half the diameter up to M30, but 3.2 for M6
    for (const each of JAM_NUTS_METRIC.rows) expect(each.thickness_mm).toBe(each.size === 'M6' ? 3.2 : Number(each.size.slice(1)) / 2)
    expect(rising(JAM_NUTS_METRIC.rows.map((each) => each.flats_mm))).toBe(true)
  })
})

describe('rod ends, clevises and splines', () => {
  it('name bore and a shank thread that exists, no smaller than the bore', () => {
    for (const each of ROD_ENDS.rows) {
      const [bore, thread] = each.id.split(' x ')
      expect(inches(bore ?? '')).toBe(each.bore_in)
      expect(thread).toBe(each.thread)
      expect(row(UNIFIED_THREADS, each.thread).major_in).toBeGreaterThanOrEqual(each.bore_in)
    }
    for (const each of CLEVIS_BORES.rows) expect(inches(each.size.replace(' in', ''))).toBe(each.bore_in)
  })

  it('input shafts name diameter and count, and measure under their nominal diameter', () => {
    for (const each of INPUT_SHAFT_SPLINES.rows) {
      expect(each.size).toBe(`${each.diameter_in}-${each.splines}`)
      if (each.measured_max_in !== null) expect(each.measured_max_in).toBeLessThan(inches(each.diameter_in))
    }
  })
})
