import { defineTable } from '../table.ts'

export interface FaceSealTorqueRow {
  readonly dash: string
  readonly thread: string
  readonly min_nm: number
  readonly max_nm: number
}

/** Torque band of O-ring face seal nuts. */
export const FACE_SEAL_TORQUES = defineTable<FaceSealTorqueRow>({
  name: 'face-seal-torques',
  title: 'O-ring face seal nut torque',
  sources: [
    { id: 'windrower-manual', cites: 'windrower setup manual, form 169558 rev D, page 100: O-ring face seal fittings', mark: 'published' },
  ],
  key: 'dash',
  columns: [
    { key: 'dash', title: 'Dash' },
    { key: 'thread', title: 'Thread' },
    { key: 'min_nm', title: 'Torque, from', unit: 'N·m' },
    { key: 'max_nm', title: 'Torque, to', unit: 'N·m' },
  ],
  rows: [
    { dash: '-4', thread: '9/16-18', min_nm: 14, max_nm: 16 },
    { dash: '-6', thread: '11/16-16', min_nm: 24, max_nm: 27 },
    { dash: '-8', thread: '13/16-16', min_nm: 43, max_nm: 47 },
    { dash: '-10', thread: '1-14', min_nm: 60, max_nm: 68 },
    { dash: '-12', thread: '1-3/16-12', min_nm: 90, max_nm: 95 },
    { dash: '-16', thread: '1-7/16-12', min_nm: 125, max_nm: 135 },
  ],
})
