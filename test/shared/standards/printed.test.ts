import { describe, expect, it } from 'vitest'
import { BOLT_GRADES } from '../../../src/shared/standards/bolts/grades.ts'
import { PROPERTY_CLASSES } from '../../../src/shared/standards/bolts/property-classes.ts'
import { CASTLE_NUTS_INCH, CASTLE_NUTS_METRIC } from '../../../src/shared/standards/fasteners/castle-nuts.ts'
import { COTTER_HOLES_INCH, COTTER_HOLES_METRIC } from '../../../src/shared/standards/fasteners/cotter-holes.ts'
import { STEERING_FLUIDS } from '../../../src/shared/standards/fluids/viscosity.ts'
import { HOSE_BEND_RADII } from '../../../src/shared/standards/hoses/bend-radius.ts'
import { HOSE_RATINGS } from '../../../src/shared/standards/hoses/ratings.ts'
import { LINE_VELOCITIES } from '../../../src/shared/standards/lines/velocity.ts'
import { TUBE_MATERIALS } from '../../../src/shared/standards/materials/tubes.ts'
import { ISO_1179_PORTS } from '../../../src/shared/standards/ports/bsp-ports.ts'
import { CONE_24, ISO_6149_PORTS, ISO_9974_PORTS } from '../../../src/shared/standards/ports/metric-ports.ts'
import { ROD_ENDS } from '../../../src/shared/standards/rod-ends/bores.ts'
import { SECTOR_SHAFT_SPLINES } from '../../../src/shared/standards/splines/sector-shafts.ts'
import { FACE_SEAL_TORQUES } from '../../../src/shared/standards/torque/face-seal.ts'
import { FLARE_37_TORQUES } from '../../../src/shared/standards/torque/flare-37.ts'
import { METRIC_STUD_TORQUES } from '../../../src/shared/standards/torque/metric-studs.ts'
import { NUT_FACTORS } from '../../../src/shared/standards/torque/nut-factors.ts'
import { O_RING_BOSS_TORQUES } from '../../../src/shared/standards/torque/o-ring-boss.ts'

/**
 * Figures that no formula guards, written out a second time as their source prints them, line by line. A slip of a key in
 * either place shows.
 */
const lines = (text: string): string[] =>
  text
    .trim()
    .split('\n')
    .map((line) => line.trim())

describe('torque, as the manuals print it', () => {
  it('O-ring boss, farm chart: thread, N.m, lbf.ft', () => {
    expect(
      O_RING_BOSS_TORQUES.rows
        .filter((each) => each.series === 'low')
        .map((each) => `${each.thread} ${each.torque_nm} ${each.torque_lbf_ft}`),
    ).toEqual(
      lines(`3/8-24 8 6
        7/16-20 12 9
        1/2-20 16 12
        9/16-18 24 18
        3/4-16 46 34
        7/8-14 62 46
        1-1/16-12 102 75
        1-3/16-12 122 90
        1-5/16-12 142 105`),
    )
  })

  it('O-ring boss, diesel-engine manual: thread, N.m, tolerance, lbf.ft', () => {
    const ours = O_RING_BOSS_TORQUES.rows.filter((each) => each.series === 'high')
    expect(ours.map((each) => `${each.thread} ${each.torque_nm} ${each.tolerance_nm} ${each.torque_lbf_ft}`)).toEqual(
      lines(`5/16-24 5 1.5 4
        3/8-24 12 2 9
        7/16-20 22 2 16
        1/2-20 30 3 22
        9/16-18 48 5 35
        3/4-16 82 8 60
        7/8-14 143 15 105
        1-1/16-12 190 20 140
        1-3/16-12 250 25 185
        1-5/16-12 300 30 220`),
    )
  })

  it('37° flare nuts, both manuals: dash, N.m, tolerance, lbf.ft, flats', () => {
    expect(
      FLARE_37_TORQUES.rows.map((each) => `${each.dash} ${each.torque_nm} ${each.tolerance_nm} ${each.torque_lbf_ft} ${each.flats}`),
    ).toEqual(
      lines(`-2 5 1.5 4 null
        -3 11 2 8 null
        -4 16 4 12 null
        -5 20 5 15 null
        -6 25 5 18 null
        -8 50 7 37 null
        -10 65 7 48 null
        -12 100 10 75 null
        -16 135 15 100 null
        -3 8 null 6 1
        -4 12 null 9 1
        -5 16 null 12 1
        -6 24 null 18 1
        -8 46 null 34 1
        -10 62 null 46 1
        -12 102 null 75 0.75
        -16 142 null 105 0.75`),
    )
  })

  it('face seal nuts: dash, band', () => {
    expect(FACE_SEAL_TORQUES.rows.map((each) => `${each.dash} ${each.min_nm}-${each.max_nm}`).join(', ')).toBe(
      '-4 14-16, -6 24-27, -8 43-47, -10 60-68, -12 90-95, -16 125-135',
    )
  })

  it('metric studs and plugs: thread, N.m', () => {
    const of = (port: string) =>
      METRIC_STUD_TORQUES.rows
        .filter((each) => each.port === port)
        .map((each) => `${each.thread} ${each.torque_nm}`)
        .join(', ')
    expect(of('steel')).toBe('M10x1 15, M12x1.5 25, M14x1.5 35, M16x1.5 40, M18x1.5 45, M22x1.5 60, M33x2 160, M42x2 210, M48x2 260')
    expect(of('steel or grey iron')).toBe('M10x1 20, M12x1.5 35, M14x1.5 45, M16x1.5 55, M18x1.5 70, M22x1.5 100, M27x2 170, M33x2 310')
    expect(of('aluminium')).toBe('M10x1 10, M12x1.5 14, M14x1.5 15, M16x1.5 18, M18x1.5 23, M22x1.5 33, M27x2 57, M33x2 103')
  })

  it('nut factors', () => {
    expect(NUT_FACTORS.rows.map((each) => each.k)).toEqual([0.3, 0.2, 0.18, 0.16, 0.2, 0.17, 0.15])
  })
})

describe('strength, as printed', () => {
  it('SAE J429: grade, sizes, proof, yield, tensile', () => {
    expect(
      BOLT_GRADES.rows.map((each) => `${each.grade} ${each.over_in}-${each.to_in} ${each.proof_ksi} ${each.yield_ksi} ${each.tensile_ksi}`),
    ).toEqual(
      lines(`2 0.25-0.75 55 57 74
        2 0.75-1.5 33 36 60
        5 0.25-1 85 92 120
        5 1-1.5 74 81 105
        8 0.25-1.5 120 130 150`),
    )
  })

  it('ISO 898-1: class, proof, yield, tensile', () => {
    expect(PROPERTY_CLASSES.rows.map((each) => `${each.property_class} ${each.proof_mpa} ${each.yield_mpa} ${each.tensile_mpa}`)).toEqual(
      lines(`8.8 580 640 800
        8.8 600 660 830
        10.9 830 940 1040
        12.9 970 1100 1220`),
    )
  })

  it('tube: row, yield/tensile, and one modulus for every steel', () => {
    expect(TUBE_MATERIALS.rows.map((each) => `${each.id}: ${each.yield_ksi}/${each.tensile_ksi}`)).toEqual(
      lines(`1020 DOM: 60/70
        1020 DOM stress-relieved: 55/65
        1020 normalised: 35/50
        1020 DOM, mill page: 60/70
        1026 DOM: 70/80
        1026 DOM stress-relieved: 65/75
        1026 normalised: 40/60
        1026 DOM, mill page: 75/85
        4130 DOM: 85/95
        4130 normalised: 50/70
        4130 aircraft, to 0.188 wall: 75/95
        4130 aircraft, over 0.188 wall: 70/90`),
    )
    expect(new Set(TUBE_MATERIALS.rows.map((each) => each.modulus_ksi))).toEqual(new Set([29000]))
  })
})

describe('ports, as printed', () => {
  it('spot faces of DIN 3852 form X', () => {
    expect(ISO_9974_PORTS.rows.map((each) => each.spot_face_mm)).toEqual([15, 18, 20, 22, 24, 26, 28, 32, 33, 40, 50, 56])
    expect(ISO_1179_PORTS.rows.map((each) => each.spot_face_mm)).toEqual([15, 19, 23, 27, 33, 40, 50, 56])
  })

  it('washers and O-rings', () => {
    const washers = ISO_9974_PORTS.rows.map((each) => `${each.washer_inside_mm}x${each.washer_outside_mm}`).join(' ')
    expect(washers).toBe('10x13.5 12x15.5 14x18 16x20 18x22 20x24 22x27 26x31 27x32 33x39 42x49 48x55')
    const rings = ISO_6149_PORTS.rows.map((each) => `${each.o_ring_inside_mm}x${each.o_ring_section_mm}`).join(' ')
    expect(rings).toBe('6.1x1.6 8.1x1.6 9.3x2.2 11.3x2.2 13.3x2.2 15.3x2.2 19.3x2.2 23.6x2.9 29.6x2.9 38.6x2.9 44.6x2.9 56.6x2.9')
    expect(CONE_24.rows.map((each) => each.tube_mm)).toEqual([6, 8, 10, 12, 15, 18, 22, 28, 35, 42, 6, 8, 10, 12, 14, 16, 20, 25, 30, 38])
  })
})

describe('nuts, hoses and velocities, as printed', () => {
  it('slotted nuts, inch: flats, thickness, floor, slot', () => {
    const ours = CASTLE_NUTS_INCH.rows.map(
      (each) =>
        `${each.size} ${each.flats_in} ${each.thickness_in} ${each.floor_max_in} ${each.floor_min_in} ${each.slot_max_in} ${each.slot_min_in}`,
    )
    expect(ours).toEqual(
      lines(`1/4 7/16 7/32 0.14 0.12 0.1 0.07
        5/16 1/2 17/64 0.18 0.16 0.12 0.09
        3/8 9/16 21/64 0.21 0.19 0.15 0.12
        7/16 11/16 3/8 0.23 0.21 0.15 0.12
        1/2 3/4 7/16 0.29 0.27 0.18 0.15
        9/16 7/8 31/64 0.31 0.29 0.18 0.15
        5/8 15/16 35/64 0.34 0.32 0.24 0.18
        3/4 1-1/8 41/64 0.4 0.38 0.24 0.18
        7/8 1-5/16 3/4 0.52 0.49 0.24 0.18
        1 1-1/2 55/64 0.59 0.56 0.3 0.24
        1-1/8 1-11/16 31/32 0.64 0.61 0.33 0.24
        1-1/4 1-7/8 1-1/16 0.7 0.67 0.4 0.31`),
    )
  })

  it('castle nuts, metric: thickness, floor, flats, slot', () => {
    const ours = CASTLE_NUTS_METRIC.rows.map((each) => [
      each.size,
      each.thickness_mm,
      each.floor_max_mm,
      each.flats_mm,
      each.slot_min_mm,
      each.slot_max_mm,
    ])
    expect(ours.map((each) => each.join(' '))).toEqual(
      lines(`M6 7.5 5 10 2 2.25
        M8 9.5 6.5 13 2.5 2.75
        M10 12 8 16 2.8 3.05
        M12 15 10 18 3.5 3.8
        M14 16 11 21 3.5 3.8
        M16 19 13 24 4.5 4.8
        M18 21 15 27 4.5 4.8
        M20 22 16 30 4.5 4.8
        M22 26 18 34 5.5 5.8
        M24 27 19 36 5.5 5.8
        M27 30 22 41 5.5 5.8`),
    )
  })

  it('hose pressure by size, 1SN, 2SN, R17; bend radius', () => {
    const of = (type: string) => HOSE_RATINGS.rows.filter((each) => each.type === type).map((each) => each.working_bar)
    expect(of('1SN')).toEqual([225, 215, 180, 160, 130, 105, 88])
    expect(of('2SN')).toEqual([400, 350, 330, 275, 250, 215, 165])
    expect(HOSE_BEND_RADII.rows.map((each) => `${each.dn} ${each.radius_mm}`).join(', ')).toBe(
      '6 100, 10 130, 12 180, 16 200, 19 240, 25 300',
    )
  })

  it('velocity guides: line, from, to, unit', () => {
    expect(LINE_VELOCITIES.rows.map((each) => `${each.line} ${each.min} ${each.max} ${each.unit}`)).toEqual(
      lines(`suction 2 4 ft/s
        suction 0.5 1.5 m/s
        suction 0.6 1.2 m/s
        return 10 15 ft/s
        return 2 4 m/s
        return 1.5 4 m/s
        pressure 15 20 ft/s
        pressure 2 5.5 m/s
        pressure 20 30 ft/s
        pressure 3 10 m/s
        pressure null 10 ft/s
        pressure null 15 ft/s
        pressure null 20 ft/s
        pressure null 30 ft/s
        pressure null 15 ft/s
        return null 10 ft/s
        suction null 4 ft/s`),
    )
  })

  it('cotter pins by thread', () => {
    expect(COTTER_HOLES_METRIC.rows.map((each) => `${each.size} ${each.pin_mm}`).join(', ')).toBe(
      'M6 1.6, M8 2, M10 2.5, M12 3.2, M14 3.2, M16 4, M18 4, M20 4, M22 5, M24 5, M27 5',
    )
    expect(COTTER_HOLES_INCH.rows.map((each) => `${each.size} ${each.pin_in} ${each.hole_in}`).join(', ')).toBe(
      '1/4 1/16 0.078, 5/16 1/16 0.078, 3/8 3/32 0.109, 7/16 3/32 0.109, 1/2 1/8 0.141, 9/16 1/8 0.141, 5/8 5/32 0.172, 3/4 5/32 0.172, 7/8 5/32 0.172, ' +
        '1 3/16 0.203, 1-1/8 3/16 0.203, 1-1/4 7/32 0.234',
    )
  })

  it('what is only remembered: fluid, rod ends, sector shaft', () => {
    expect(
      STEERING_FLUIDS.rows.map((each) => [
        each.at_40_min_cst,
        each.at_40_max_cst,
        each.at_100_cst,
        each.density_min_kg_m3,
        each.density_max_kg_m3,
      ]),
    ).toEqual([[34, 40, 7.5, 850, 875]])
    expect(ROD_ENDS.rows.map((each) => each.ball_width_in)).toEqual([
      0.375,
      0.4375,
      0.5,
      0.5625,
      0.625,
      0.75,
      null,
      0.875,
      null,
      0.875,
      null,
      1.375,
    ])
    expect(SECTOR_SHAFT_SPLINES.rows.map((each) => each.splines)).toEqual([32])
  })
})
