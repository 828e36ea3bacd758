import { portSizes } from '../../model/end/ports.ts'
import { pipeThread } from '../../model/end/threads.ts'
import type { Connection, PortFamily, Sex, ThreadFamily } from '../../model/end/types.ts'
import { CONE_24 } from '../../standards/ports/metric-ports.ts'
import type { Source } from '../../standards/source.ts'
import { write } from './end-text.ts'

/** How far an adapter made up from the tables can be counted on. */
export const COMMONLY_MADE: Source = {
  id: 'adapters-commonly-made',
  cites: 'Made up from the tables of both ends; common practice, no published source: ask the supplier whether it is made',
  mark: 'practice',
}

/** An adapter that is not on the shelf. */
export interface StandardAdapter {
  readonly id: string
  readonly ends: readonly [Connection, Connection]
  /** 0: the plainest form; more: sizes further apart, families met less often */
  readonly oddness: number
}

/** Sizes of bore as the trade steps them, by dash; an end's place in this list decides which sizes are made together. */
const STEPS: readonly number[] = [2, 3, 4, 5, 6, 7, 8, 10, 12, 14, 16, 20, 24, 32]

/** Which dash of bore a pipe size or a metric port is commonly made with: common practice, no published source. */
const PIPE_DASH: Readonly<Record<string, number>> = {
  '1/16': 2,
  '1/8': 2,
  '1/4': 4,
  '3/8': 6,
  '1/2': 8,
  '5/8': 10,
  '3/4': 12,
  '1': 16,
  '1-1/4': 20,
  '1-1/2': 24,
  '2': 32,
}
const METRIC_DASH: Readonly<Record<string, number>> = {
  M8x1: 2,
  M10x1: 3,
  'M12x1.5': 4,
  'M14x1.5': 5,
  'M16x1.5': 6,
  'M18x1.5': 6,
  'M20x1.5': 8,
  'M22x1.5': 8,
  'M26x1.5': 12,
  M27x2: 12,
  M33x2: 16,
  M42x2: 20,
  M48x2: 24,
  M60x2: 32,
}

interface Form {
  readonly connection: Connection
  readonly family: string
  readonly step: number
  /** families that nearly everything is made to go to */
  readonly hub: boolean
}

const HUBS: readonly string[] = ['flare 37', 'face seal', 'o-ring boss', 'npt']
/** Families that metric and British ends are made to go to as well, and what goes to them. */
const METRIC_HUBS: readonly string[] = ['iso 1179', 'bsp cone 60', 'cone 24 light', 'cone 24 heavy']
const METRIC: readonly string[] = [...METRIC_HUBS, 'iso 6149', 'iso 9974', 'r']
/** Families made as a union or a reducer in themselves. */
const UNIONS: readonly string[] = [...HUBS, 'bsp cone 60', 'cone 24 light', 'cone 24 heavy', 'flare 45', 'inverted flare', 'iso 1179']
/** Which sexes are made on an adapter: nuts and swivels are female, plain studs and port ends male. */
const PORTS: readonly (readonly [PortFamily, readonly Sex[]])[] = [
  ['flare 37', ['male', 'female']],
  ['face seal', ['male', 'female']],
  ['o-ring boss', ['male', 'female']],
  ['iso 6149', ['male', 'female']],
  ['iso 9974', ['male']],
  ['iso 1179', ['male', 'female']],
  ['bsp cone 60', ['male', 'female']],
  ['flare 45', ['male', 'female']],
  ['inverted flare', ['male', 'female']],
  ['cone 24 light', ['male', 'female']],
  ['cone 24 heavy', ['male', 'female']],
  ['tube o-ring', ['male']],
]
const PIPES: readonly (readonly [ThreadFamily, Sex])[] = [
  ['npt', 'male'],
  ['npt', 'female'],
  ['r', 'male'],
  ['rc', 'female'],
]

const tubeOfCone = new Map(CONE_24.rows.map((row) => [row.designation, row.tube_mm]))

/** The place of a size in STEPS; undefined for one that no adapter is made in here. */
function stepOf(family: PortFamily, size: string): number | undefined {
  const tube = family === 'cone 24 light' || family === 'cone 24 heavy' ? tubeOfCone.get(size) : undefined
  const dash =
    tube === undefined
      ? size.startsWith('-')
        ? Number(size.slice(1))
        : size.startsWith('G ')
          ? PIPE_DASH[size.slice(2)]
          : METRIC_DASH[size]
      : nearest((tube / 25.4) * 16)
  const step = dash === undefined ? -1 : STEPS.indexOf(dash)
  return step < 0 ? undefined : step
}

const nearest = (dash: number): number => STEPS.reduce((best, s) => (Math.abs(s - dash) < Math.abs(best - dash) ? s : best), 2)

function forms(): Form[] {
  const made: Form[] = []
  for (const [family, sexes] of PORTS) {
    for (const { size, thread } of portSizes(family)) {
      const step = stepOf(family, size)
      if (step === undefined) continue
      for (const sex of sexes) {
        made.push({ connection: write({ kind: 'port', family, size, thread, sex }), family, step, hub: HUBS.includes(family) })
      }
    }
  }
  for (const [family, sex] of PIPES) {
    for (const [size, dash] of Object.entries(PIPE_DASH)) {
      const thread = pipeThread(family, size)
      const step = STEPS.indexOf(dash)
      if (!thread) continue
      made.push({ connection: write({ kind: 'thread', thread, hand: 'right', sex }), family, step, hub: family === 'npt' })
    }
  }
  return made
}

/** How odd an adapter between two forms would be; undefined: not one that is commonly made. */
function oddness(a: Form, b: Form): number | undefined {
  const apart = Math.abs(a.step - b.step)
  const union = a.family === b.family && UNIONS.includes(a.family)
  const metric =
    METRIC.includes(a.family) && METRIC.includes(b.family) && (METRIC_HUBS.includes(a.family) || METRIC_HUBS.includes(b.family))
  if (!union && !metric && !a.hub && !b.hub) return undefined
  if (apart > 2) return undefined
  const rank = (f: Form) => (f.hub ? HUBS.indexOf(f.family) : HUBS.length)
  return apart * 16 + rank(a) + rank(b)
}

/**
 * Adapters that the trade commonly makes, made up from the tables: unions, reducers and changes of family among the hydraulic
 * ends, the same size or a neighbouring one at either end. None of them is looked up anywhere: see COMMONLY_MADE.
 */
export function standardAdapters(): readonly StandardAdapter[] {
  const all = forms()
  const made: StandardAdapter[] = []
  for (const [i, a] of all.entries()) {
    for (const b of all.slice(i)) {
      const odd = oddness(a, b)
      if (odd !== undefined) {
        made.push({ id: `${a.connection.typed} × ${b.connection.typed}`, ends: [a.connection, b.connection], oddness: odd })
      }
    }
  }
  return made
}
