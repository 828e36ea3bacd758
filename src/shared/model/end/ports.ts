import { BANJO_BOLTS } from '../../standards/ports/banjo.ts'
import { BSP_CONES, ISO_1179_PORTS } from '../../standards/ports/bsp-ports.ts'
import { DASH_PORTS } from '../../standards/ports/dash.ts'
import { CONE_24, ISO_6149_PORTS, ISO_9974_PORTS } from '../../standards/ports/metric-ports.ts'
import { TUBE_O_RING_NUTS } from '../../standards/ports/tube-o-ring.ts'
import { threadByDesignation } from './threads.ts'
import type { PortFamily, Thread } from './types.ts'

/** One size of a port family: how it is called, the tube it serves where it is named by tube, and its thread. */
export interface PortSize {
  readonly family: PortFamily
  readonly size: string
  readonly tube: string | null
  readonly thread: Thread
}

export const DASH_FAMILIES = ['flare 37', 'o-ring boss', 'face seal', 'flare 45', 'inverted flare'] as const satisfies readonly PortFamily[]

const dashColumn = {
  'flare 37': 'flare_37',
  'o-ring boss': 'o_ring_boss',
  'face seal': 'face_seal',
  'flare 45': 'flare_45',
  'inverted flare': 'inverted_flare',
} as const

const sizes: PortSize[] = []

function add(family: PortFamily, size: string, tube: string | null, designation: string): void {
  const thread = threadByDesignation(designation)
  if (!thread) throw new Error(`${family} ${size}: no table has the thread ${designation}`)
  sizes.push({ family, size, tube, thread })
}

for (const family of DASH_FAMILIES) {
  for (const row of DASH_PORTS.rows) {
    const thread = row[dashColumn[family]]
    if (thread !== null) add(family, row.dash, row.tube_in, thread)
  }
}
for (const row of ISO_6149_PORTS.rows) add('iso 6149', row.designation, null, row.designation)
for (const row of ISO_9974_PORTS.rows) add('iso 9974', row.designation, null, row.designation)
for (const row of ISO_1179_PORTS.rows) add('iso 1179', row.designation, null, row.designation)
for (const row of BSP_CONES.rows) add('bsp cone 60', row.designation, null, row.designation)
for (const row of BANJO_BOLTS.rows) add('banjo', row.designation, null, row.designation)
for (const row of TUBE_O_RING_NUTS.rows) add('tube o-ring', row.designation, null, row.designation)
for (const row of CONE_24.rows)
  add(row.series === 'light' ? 'cone 24 light' : 'cone 24 heavy', row.designation, `${row.tube_mm} mm`, row.thread)

/** Every size of one family, smallest first. */
export const portSizes = (family: PortFamily): readonly PortSize[] => sizes.filter((s) => s.family === family)

/** Every size of every family. */
export const allPortSizes = (): readonly PortSize[] => sizes
