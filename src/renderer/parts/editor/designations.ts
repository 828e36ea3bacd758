import { portSizes } from '../../../shared/model/end/ports.ts'
import { threadByDesignation } from '../../../shared/model/end/threads.ts'
import type { PortFamily } from '../../../shared/model/end/types.ts'
import { INPUT_SHAFT_SPLINES } from '../../../shared/standards/splines/input-shafts.ts'
import { SECTOR_SHAFT_SPLINES } from '../../../shared/standards/splines/sector-shafts.ts'
import { TAPERS } from '../../../shared/standards/tapers.ts'
import { METRIC_THREADS } from '../../../shared/standards/threads/metric.ts'
import { G_R_THREADS, NPT_THREADS } from '../../../shared/standards/threads/pipe.ts'
import { UNIFIED_THREADS } from '../../../shared/standards/threads/unified.ts'

/** What has been chosen about an end so far; texts as typed. */
export interface Choice {
  readonly size: string
  readonly sex: 'male' | 'female'
  readonly left: boolean
  readonly jamNut: boolean
  /** engaged length, or a taper's length, with its unit */
  readonly length: string
  /** a diameter with its unit */
  readonly diameter: string
}

type Asks = 'sex' | 'hand' | 'jam nut' | 'engaged' | 'large' | 'seat' | 'diameter' | 'bore'

/** A family of ends: what it is called, its sizes out of the tables, what else it asks, and how the trade writes one. */
export interface Family {
  readonly id: string
  readonly label: string
  readonly group: string
  readonly sizes: readonly string[]
  readonly sizeLabel: string
  readonly asks: readonly Asks[]
  readonly write: (choice: Choice) => string
}

const facets = (...texts: readonly string[]): string =>
  texts
    .filter((text) => text !== '')
    .map((text) => `, ${text}`)
    .join('')
const ifTyped = (word: string, typed: string): string => (typed.trim() === '' ? '' : `${word} ${typed.trim()}`)

const thread = (id: string, label: string, sizes: readonly string[], asks: readonly Asks[]): Family => ({
  id,
  label,
  group: 'Screw threads',
  sizes,
  sizeLabel: 'Thread',
  asks,
  write: ({ size, sex, left, jamNut, length }) => {
    const hand = asks.includes('hand') && left ? ' LH' : ''
    return `${size}${hand} ${sex}${facets(ifTyped('engaged', length), asks.includes('jam nut') && jamNut ? 'jam nut' : '')}`
  },
})

const port = (family: PortFamily, label: string, written: string): Family => ({
  id: family,
  label,
  group: 'Hydraulic ends',
  sizes: portSizes(family).map(({ size }) => size),
  sizeLabel: 'Size',
  asks: ['sex'],
  write: ({ size, sex }) => `${size} ${written} ${sex}`,
})

const round = (form: 'clamp' | 'tube' | 'bore' | 'pin', label: string): Family => ({
  id: form,
  label,
  group: 'Plain and cone',
  sizes: [],
  sizeLabel: '',
  asks: ['diameter'],
  write: ({ diameter }) => `${form} ${diameter.trim() === '' ? '?' : diameter.trim()}`,
})

const tail = (form: 'hose' | 'barb', label: string): Family => ({
  id: form,
  label,
  group: 'Hose and others',
  sizes: [],
  sizeLabel: '',
  asks: ['bore'],
  write: ({ diameter }) => `${form} ${diameter.trim() === '' ? '?' : diameter.trim()}`,
})

const fixed = (id: string, label: string): Family => ({
  id,
  label,
  group: 'Hose and others',
  sizes: [],
  sizeLabel: '',
  asks: [],
  write: () => id,
})

const british = (letter: 'G' | 'R' | 'Rp' | 'Rc'): readonly string[] =>
  G_R_THREADS.rows.map((row) => `${letter} ${row.size}`).filter((name) => threadByDesignation(name) !== undefined)

const SCREW: readonly Asks[] = ['sex', 'hand', 'engaged', 'jam nut']

/** Every family the chooser offers. */
export const FAMILIES: readonly Family[] = [
  thread(
    'unified',
    'Unified inch thread',
    UNIFIED_THREADS.rows.map((row) => row.designation),
    SCREW,
  ),
  thread(
    'metric',
    'Metric thread',
    METRIC_THREADS.rows.map((row) => row.designation),
    SCREW,
  ),
  thread(
    'npt',
    'NPT taper pipe thread',
    NPT_THREADS.rows.map((row) => row.designation),
    ['sex', 'engaged'],
  ),
  thread('g', 'G parallel pipe thread', british('G'), ['sex', 'engaged']),
  thread('r', 'R taper pipe thread (outside)', british('R'), ['engaged']),
  thread('rc', 'Rc taper pipe thread (inside)', british('Rc'), ['engaged']),
  port('flare 37', '37° flare', '37° flare'),
  port('o-ring boss', 'O-ring boss', 'O-ring boss'),
  port('face seal', 'O-ring face seal', 'face seal'),
  port('flare 45', '45° flare', '45° flare'),
  port('inverted flare', 'Inverted flare', 'inverted flare'),
  port('tube o-ring', 'Tube nut with O-ring', 'O-ring tube nut'),
  port('banjo', 'Banjo', 'banjo'),
  port('iso 6149', 'ISO 6149 port', 'ISO 6149'),
  port('iso 9974', 'ISO 9974 flat face', 'ISO 9974'),
  port('iso 1179', 'ISO 1179 flat face', 'ISO 1179'),
  port('cone 24 light', '24° cone, light', '24° cone'),
  port('cone 24 heavy', '24° cone, heavy', '24° cone'),
  port('bsp cone 60', '60° cone on a G thread', '60° cone'),
  {
    id: 'taper',
    label: 'Ball-stud taper',
    group: 'Plain and cone',
    sizes: [...TAPERS.rows.map((row) => row.name), '?'],
    sizeLabel: 'Taper',
    asks: ['sex', 'large', 'seat'],
    write: ({ size, sex, diameter, length }) => {
      const rate = size === '?' ? 'taper ?' : `${size} taper`
      const seat = ifTyped(sex === 'male' ? 'length' : 'through', length)
      return `${rate} ${sex === 'male' ? 'stud' : 'hole'}${facets(ifTyped('large', diameter), seat)}`
    },
  },
  round('clamp', 'Clamp'),
  round('tube', 'Tube, outside'),
  round('bore', 'Bore for a bolt'),
  round('pin', 'Pin or bolt shank'),
  {
    id: 'spline',
    label: 'Splines',
    group: 'Plain and cone',
    sizes: [...new Set([...SECTOR_SHAFT_SPLINES.rows, ...INPUT_SHAFT_SPLINES.rows].map((row) => String(row.splines)))],
    sizeLabel: 'Number of splines',
    asks: ['sex', 'diameter'],
    write: ({ size, sex, diameter }) => `${size} splines ${diameter.trim() === '' ? '' : `${diameter.trim()} `}${sex}`,
  },
  tail('hose', 'Hose, cut end'),
  tail('barb', 'Barb'),
  fixed('weld', 'Welded'),
  fixed('not measured', 'Not measured yet'),
]

const OUTSIDE_ONLY = new Set(['r'])
const INSIDE_ONLY = new Set(['rc'])

/** The end as the trade writes it. What only comes as an outside or an inside thread says so by its name. */
export function writeEnd(family: Family, choice: Choice): string {
  const sex = OUTSIDE_ONLY.has(family.id) ? 'male' : INSIDE_ONLY.has(family.id) ? 'female' : choice.sex
  return family.write({ ...choice, sex })
}
