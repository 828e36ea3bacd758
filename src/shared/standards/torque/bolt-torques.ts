import { defineTable } from '../table.ts'

export interface InchBoltTorqueRow {
  readonly id: string
  readonly thread: string
  readonly grade: '5' | '8'
  readonly clamp_lbf: number
  readonly torque_lbf_ft: number
  /** id of the source in this table */
  readonly source: string
}

/** Published clamp load and torque of inch bolts, plain, K = 0.2, at three quarters of the proof load. */
export const INCH_BOLT_TORQUES = defineTable<InchBoltTorqueRow>({
  name: 'bolt-torques-inch',
  title: 'Inch bolt torque, K = 0.2, 75 % of proof',
  sources: [
    { id: 'actuator', cites: 'actuator manual E2K-405-0218, appendix A.7: K = 0.2, clamp 75 % of proof', mark: 'published' },
    {
      id: 'ifi',
      cites:
        'tightening guide for grades 5 and 8 based on IFI data sheet N-12, plain, K = 0.2; a manual prints 33 633 lbf for 1-8 grade 5, a misprint for 38 633',
      mark: 'published',
      checked: 'clamp = 0.75 Sp At, T = K d F',
    },
  ],
  key: 'id',
  columns: [
    { key: 'id', title: 'Row' },
    { key: 'thread', title: 'Thread' },
    { key: 'grade', title: 'SAE grade' },
    { key: 'clamp_lbf', title: 'Clamp load', unit: 'lbf' },
    { key: 'torque_lbf_ft', title: 'Torque', unit: 'lbf·ft' },
    { key: 'source', title: 'Source' },
  ],
  rows: [
    { id: '7/16-14 grade 5', thread: '7/16-14', grade: '5', clamp_lbf: 6777, torque_lbf_ft: 49.4, source: 'actuator' },
    { id: '7/16-14 grade 8', thread: '7/16-14', grade: '8', clamp_lbf: 9567, torque_lbf_ft: 69.8, source: 'actuator' },
    { id: '1/2-13 grade 5', thread: '1/2-13', grade: '5', clamp_lbf: 9046, torque_lbf_ft: 75.4, source: 'actuator' },
    { id: '1/2-13 grade 8', thread: '1/2-13', grade: '8', clamp_lbf: 12771, torque_lbf_ft: 106, source: 'actuator' },
    { id: '1/2-20 grade 5', thread: '1/2-20', grade: '5', clamp_lbf: 10200, torque_lbf_ft: 85, source: 'ifi' },
    { id: '1/2-20 grade 8', thread: '1/2-20', grade: '8', clamp_lbf: 14400, torque_lbf_ft: 120, source: 'ifi' },
    { id: '9/16-18 grade 5', thread: '9/16-18', grade: '5', clamp_lbf: 12975, torque_lbf_ft: 122, source: 'ifi' },
    { id: '9/16-18 grade 8', thread: '9/16-18', grade: '8', clamp_lbf: 18300, torque_lbf_ft: 172, source: 'ifi' },
    { id: '5/8-11 grade 5', thread: '5/8-11', grade: '5', clamp_lbf: 14408, torque_lbf_ft: 150, source: 'actuator' },
    { id: '5/8-11 grade 8', thread: '5/8-11', grade: '8', clamp_lbf: 20340, torque_lbf_ft: 212, source: 'actuator' },
    { id: '5/8-18 grade 5', thread: '5/8-18', grade: '5', clamp_lbf: 16350, torque_lbf_ft: 170, source: 'ifi' },
    { id: '5/8-18 grade 8', thread: '5/8-18', grade: '8', clamp_lbf: 23025, torque_lbf_ft: 240, source: 'ifi' },
    { id: '3/4-10 grade 5', thread: '3/4-10', grade: '5', clamp_lbf: 21293, torque_lbf_ft: 266, source: 'actuator' },
    { id: '3/4-10 grade 8', thread: '3/4-10', grade: '8', clamp_lbf: 30060, torque_lbf_ft: 376, source: 'actuator' },
    { id: '3/4-16 grade 5', thread: '3/4-16', grade: '5', clamp_lbf: 23775, torque_lbf_ft: 297, source: 'ifi' },
    { id: '3/4-16 grade 8', thread: '3/4-16', grade: '8', clamp_lbf: 33600, torque_lbf_ft: 420, source: 'ifi' },
    { id: '7/8-14 grade 5', thread: '7/8-14', grade: '5', clamp_lbf: 32475, torque_lbf_ft: 474, source: 'ifi' },
    { id: '7/8-14 grade 8', thread: '7/8-14', grade: '8', clamp_lbf: 45825, torque_lbf_ft: 668, source: 'ifi' },
    { id: '1-8 grade 5', thread: '1-8', grade: '5', clamp_lbf: 38625, torque_lbf_ft: 644, source: 'ifi' },
  ],
})

export interface MetricBoltTorqueRow {
  readonly id: string
  readonly thread: string
  readonly property_class: '8.8' | '10.9'
  readonly torque_nm: number
}

/** Published torque of metric bolts, zinc-plated and dry; take a quarter off when lubricated. */
export const METRIC_BOLT_TORQUES = defineTable<MetricBoltTorqueRow>({
  name: 'bolt-torques-metric',
  title: 'Metric bolt torque, dry zinc, 75 % of proof',
  sources: [
    {
      id: 'mower',
      cites:
        'mower service manual, torque table after SAE J1199: dry zinc, 75 % of proof; a quarter less when lubricated. A sister manual prints 255 for M16 8.8, a misprint for 225',
      mark: 'published',
    },
  ],
  key: 'id',
  columns: [
    { key: 'id', title: 'Row' },
    { key: 'thread', title: 'Thread' },
    { key: 'property_class', title: 'Class' },
    { key: 'torque_nm', title: 'Torque', unit: 'N·m' },
  ],
  rows: [
    { id: 'M8x1.25 8.8', thread: 'M8x1.25', property_class: '8.8', torque_nm: 26 },
    { id: 'M8x1.25 10.9', thread: 'M8x1.25', property_class: '10.9', torque_nm: 38 },
    { id: 'M10x1.5 8.8', thread: 'M10x1.5', property_class: '8.8', torque_nm: 52 },
    { id: 'M10x1.5 10.9', thread: 'M10x1.5', property_class: '10.9', torque_nm: 73 },
    { id: 'M12x1.75 8.8', thread: 'M12x1.75', property_class: '8.8', torque_nm: 90 },
    { id: 'M12x1.75 10.9', thread: 'M12x1.75', property_class: '10.9', torque_nm: 126 },
    { id: 'M16x2 8.8', thread: 'M16x2', property_class: '8.8', torque_nm: 225 },
    { id: 'M16x2 10.9', thread: 'M16x2', property_class: '10.9', torque_nm: 310 },
    { id: 'M20x2.5 8.8', thread: 'M20x2.5', property_class: '8.8', torque_nm: 440 },
    { id: 'M20x2.5 10.9', thread: 'M20x2.5', property_class: '10.9', torque_nm: 610 },
  ],
})
