import { defineTable } from '../table.ts'

export interface MetricStudTorqueRow {
  readonly id: string
  readonly thread: string
  readonly series: 'light' | 'plug'
  readonly port: 'steel' | 'steel or grey iron' | 'aluminium'
  readonly torque_nm: number
  /** upward tolerance; null where the source prints none */
  readonly plus_percent: number | null
  /** id of the source in this table */
  readonly source: string
}

/** Torque of metric studs with an O-ring and of metric screw plugs. */
export const METRIC_STUD_TORQUES = defineTable<MetricStudTorqueRow>({
  name: 'metric-stud-torques',
  title: 'Metric stud and plug torque',
  sources: [
    {
      id: 'form-f',
      cites: 'generator-set operation manual 33521029401, table 37: studs of form F with O-ring, series L, plus 10 %',
      mark: 'published',
    },
    { id: 'form-f-identity', cites: 'that these are the studs of ISO 6149-3, from memory', mark: 'memory' },
    {
      id: 'plugs',
      cites: 'engine manual M015655/05E, page 28 (MTN 5183-6): screw plugs in steel or grey iron and in aluminium',
      mark: 'published',
    },
    { id: 'plugs-identity', cites: 'that the steel column equals ISO 6149-2 series S, from memory', mark: 'memory' },
  ],
  key: 'id',
  columns: [
    { key: 'id', title: 'Row' },
    { key: 'thread', title: 'Thread' },
    { key: 'series', title: 'Series' },
    { key: 'port', title: 'Port material' },
    { key: 'torque_nm', title: 'Torque', unit: 'N·m' },
    { key: 'plus_percent', title: 'Tolerance, plus', unit: '%' },
    { key: 'source', title: 'Source' },
  ],
  rows: [
    { id: 'M10x1 light', thread: 'M10x1', series: 'light', port: 'steel', torque_nm: 15, plus_percent: 10, source: 'form-f' },
    { id: 'M12x1.5 light', thread: 'M12x1.5', series: 'light', port: 'steel', torque_nm: 25, plus_percent: 10, source: 'form-f' },
    { id: 'M14x1.5 light', thread: 'M14x1.5', series: 'light', port: 'steel', torque_nm: 35, plus_percent: 10, source: 'form-f' },
    { id: 'M16x1.5 light', thread: 'M16x1.5', series: 'light', port: 'steel', torque_nm: 40, plus_percent: 10, source: 'form-f' },
    { id: 'M18x1.5 light', thread: 'M18x1.5', series: 'light', port: 'steel', torque_nm: 45, plus_percent: 10, source: 'form-f' },
    { id: 'M22x1.5 light', thread: 'M22x1.5', series: 'light', port: 'steel', torque_nm: 60, plus_percent: 10, source: 'form-f' },
    { id: 'M33x2 light', thread: 'M33x2', series: 'light', port: 'steel', torque_nm: 160, plus_percent: 10, source: 'form-f' },
    { id: 'M42x2 light', thread: 'M42x2', series: 'light', port: 'steel', torque_nm: 210, plus_percent: 10, source: 'form-f' },
    { id: 'M48x2 light', thread: 'M48x2', series: 'light', port: 'steel', torque_nm: 260, plus_percent: 10, source: 'form-f' },
    {
      id: 'M10x1 plug steel',
      thread: 'M10x1',
      series: 'plug',
      port: 'steel or grey iron',
      torque_nm: 20,
      plus_percent: null,
      source: 'plugs',
    },
    {
      id: 'M12x1.5 plug steel',
      thread: 'M12x1.5',
      series: 'plug',
      port: 'steel or grey iron',
      torque_nm: 35,
      plus_percent: null,
      source: 'plugs',
    },
    {
      id: 'M14x1.5 plug steel',
      thread: 'M14x1.5',
      series: 'plug',
      port: 'steel or grey iron',
      torque_nm: 45,
      plus_percent: null,
      source: 'plugs',
    },
    {
      id: 'M16x1.5 plug steel',
      thread: 'M16x1.5',
      series: 'plug',
      port: 'steel or grey iron',
      torque_nm: 55,
      plus_percent: null,
      source: 'plugs',
    },
    {
      id: 'M18x1.5 plug steel',
      thread: 'M18x1.5',
      series: 'plug',
      port: 'steel or grey iron',
      torque_nm: 70,
      plus_percent: null,
      source: 'plugs',
    },
    {
      id: 'M22x1.5 plug steel',
      thread: 'M22x1.5',
      series: 'plug',
      port: 'steel or grey iron',
      torque_nm: 100,
      plus_percent: null,
      source: 'plugs',
    },
    {
      id: 'M27x2 plug steel',
      thread: 'M27x2',
      series: 'plug',
      port: 'steel or grey iron',
      torque_nm: 170,
      plus_percent: null,
      source: 'plugs',
    },
    {
      id: 'M33x2 plug steel',
      thread: 'M33x2',
      series: 'plug',
      port: 'steel or grey iron',
      torque_nm: 310,
      plus_percent: null,
      source: 'plugs',
    },
    { id: 'M10x1 plug aluminium', thread: 'M10x1', series: 'plug', port: 'aluminium', torque_nm: 10, plus_percent: null, source: 'plugs' },
    {
      id: 'M12x1.5 plug aluminium',
      thread: 'M12x1.5',
      series: 'plug',
      port: 'aluminium',
      torque_nm: 14,
      plus_percent: null,
      source: 'plugs',
    },
    {
      id: 'M14x1.5 plug aluminium',
      thread: 'M14x1.5',
      series: 'plug',
      port: 'aluminium',
      torque_nm: 15,
      plus_percent: null,
      source: 'plugs',
    },
    {
      id: 'M16x1.5 plug aluminium',
      thread: 'M16x1.5',
      series: 'plug',
      port: 'aluminium',
      torque_nm: 18,
      plus_percent: null,
      source: 'plugs',
    },
    {
      id: 'M18x1.5 plug aluminium',
      thread: 'M18x1.5',
      series: 'plug',
      port: 'aluminium',
      torque_nm: 23,
      plus_percent: null,
      source: 'plugs',
    },
    {
      id: 'M22x1.5 plug aluminium',
      thread: 'M22x1.5',
      series: 'plug',
      port: 'aluminium',
      torque_nm: 33,
      plus_percent: null,
      source: 'plugs',
    },
    { id: 'M27x2 plug aluminium', thread: 'M27x2', series: 'plug', port: 'aluminium', torque_nm: 57, plus_percent: null, source: 'plugs' },
    { id: 'M33x2 plug aluminium', thread: 'M33x2', series: 'plug', port: 'aluminium', torque_nm: 103, plus_percent: null, source: 'plugs' },
  ],
})
