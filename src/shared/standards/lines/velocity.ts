import { defineTable } from '../table.ts'

export interface LineVelocityRow {
  readonly id: string
  readonly line: 'suction' | 'return' | 'pressure'
  readonly basis: string
  /** null where only an upper limit is given */
  readonly min: number | null
  readonly max: number
  /** as the source prints it */
  readonly unit: 'ft/s' | 'm/s'
  /** id of the source in this table */
  readonly source: string
}

/** Guidance on oil velocity, as each source prints it. Guides, not limits: they differ. */
export const LINE_VELOCITIES = defineTable<LineVelocityRow>({
  name: 'line-velocities',
  title: 'Oil velocity in lines',
  sources: [
    {
      id: 'tech-tip',
      cites: 'fluid-power technical tip on line sizing; its high-pressure band is printed as 20 to 25 and as below 30 ft/s',
      mark: 'published',
    },
    { id: 'nominal-width', cites: 'hydraulic supplier’s questions and answers, nominal width', mark: 'published' },
    { id: 'note-2000', cites: 'note on velocity and pressure drop, 2000', mark: 'published' },
    { id: 'sheet-73', cites: 'fluid-power data sheet 73: velocity by system pressure', mark: 'published' },
    { id: 'sae-sizing', cites: 'article on sizing tubes after SAE practice', mark: 'published' },
  ],
  key: 'id',
  columns: [
    { key: 'id', title: 'Row' },
    { key: 'line', title: 'Line' },
    { key: 'basis', title: 'Holds for' },
    { key: 'min', title: 'From' },
    { key: 'max', title: 'To' },
    { key: 'unit', title: 'Unit' },
    { key: 'source', title: 'Source' },
  ],
  rows: [
    { id: 'suction, ft/s', line: 'suction', basis: 'general', min: 2, max: 4, unit: 'ft/s', source: 'tech-tip' },
    { id: 'suction, m/s', line: 'suction', basis: 'general', min: 0.5, max: 1.5, unit: 'm/s', source: 'nominal-width' },
    { id: 'suction, m/s, 2000 note', line: 'suction', basis: 'general', min: 0.6, max: 1.2, unit: 'm/s', source: 'note-2000' },
    { id: 'return, ft/s', line: 'return', basis: 'general', min: 10, max: 15, unit: 'ft/s', source: 'tech-tip' },
    { id: 'return, m/s', line: 'return', basis: 'general', min: 2, max: 4, unit: 'm/s', source: 'nominal-width' },
    { id: 'return, m/s, 2000 note', line: 'return', basis: 'general', min: 1.5, max: 4, unit: 'm/s', source: 'note-2000' },
    { id: 'pressure, medium, ft/s', line: 'pressure', basis: 'medium pressure', min: 15, max: 20, unit: 'ft/s', source: 'tech-tip' },
    { id: 'pressure, medium, m/s', line: 'pressure', basis: 'medium pressure', min: 2, max: 5.5, unit: 'm/s', source: 'nominal-width' },
    { id: 'pressure, high, ft/s', line: 'pressure', basis: 'high pressure', min: 20, max: 30, unit: 'ft/s', source: 'tech-tip' },
    { id: 'pressure, high, m/s', line: 'pressure', basis: 'high pressure', min: 3, max: 10, unit: 'm/s', source: 'nominal-width' },
    { id: 'pressure to 1000 psi', line: 'pressure', basis: 'to 1000 psi', min: null, max: 10, unit: 'ft/s', source: 'sheet-73' },
    { id: 'pressure to 2000 psi', line: 'pressure', basis: '1000 to 2000 psi', min: null, max: 15, unit: 'ft/s', source: 'sheet-73' },
    { id: 'pressure to 3500 psi', line: 'pressure', basis: '2000 to 3500 psi', min: null, max: 20, unit: 'ft/s', source: 'sheet-73' },
    { id: 'pressure above 3500 psi', line: 'pressure', basis: 'above 3500 psi', min: null, max: 30, unit: 'ft/s', source: 'sheet-73' },
    { id: 'sizing limit, pressure', line: 'pressure', basis: 'sizing limit', min: null, max: 15, unit: 'ft/s', source: 'sae-sizing' },
    { id: 'sizing limit, return', line: 'return', basis: 'sizing limit', min: null, max: 10, unit: 'ft/s', source: 'sae-sizing' },
    { id: 'sizing limit, suction', line: 'suction', basis: 'sizing limit', min: null, max: 4, unit: 'ft/s', source: 'sae-sizing' },
  ],
})
