import type { End } from '../../model/end/types.ts'
import { mm } from '../../quantities/make.ts'

/** Everything about an end that a verdict can depend on, as one text: ends of one class are one node of the search. */
export function endKey(end: End): string {
  const plain = Object.entries(end)
    .map(([name, value]) => `${name}=${typeof value === 'object' && value !== null ? value.designation : value}`)
    .sort()
  return plain.join(';')
}

const CELL = mm(1)
const TAPER_CELL = mm(2)
const cell = (value: number, size: number): number => Math.round(value / size)
const around = (n: number): readonly number[] => [n - 1, n, n + 1]

/** Threads that can be made to fit share their major diameter and pitch, whatever they are called (NPT in NPTF, R in Rc). */
const threadCell = (major: number, pitch: number): string => `s${Math.round(major * 1e6)}/${Math.round(pitch * 1e7)}`

/** The drawers an end lies in. Two ends that fit always share a drawer with one that the other looks in: see `drawersSought`. */
export function drawersOf(end: End): readonly string[] {
  switch (end.kind) {
    case 'thread':
      return [threadCell(end.thread.major, end.thread.pitch), ...(end.sex === 'male' ? [`r${cell(end.thread.major, CELL)}`] : [])]
    case 'port':
      return [threadCell(end.thread.major, end.thread.pitch)]
    case 'taper':
      return end.large === null ? [] : [`t${cell(end.large, TAPER_CELL)}`]
    case 'round':
      return [...(end.diameter === null ? [] : [`r${cell(end.diameter, CELL)}`]), ...(end.form === 'tube' ? ['w'] : [])]
    case 'spline':
      return end.count === null ? [] : [`n${end.count}`]
    case 'tail':
      return end.bore === null ? [] : [`h${cell(end.bore, CELL)}`]
    case 'weld':
      return ['w']
    case 'unmeasured':
      return []
  }
}

/** The drawers in which everything lies that can fit an end: its own, and those of the sizes next to it where a fit has play. */
export function drawersSought(end: End): readonly string[] {
  return drawersOf(end).flatMap((drawer) => {
    const kind = drawer[0] as string
    return 'rth'.includes(kind) ? around(Number(drawer.slice(1))).map((n) => `${kind}${n}`) : [drawer]
  })
}

/** What must be measured before an end can be matched with anything: codes as in verdicts. */
export function unmeasured(end: End): readonly string[] {
  switch (end.kind) {
    case 'unmeasured':
      return ['what this end is']
    case 'thread':
      return end.sex === null ? ['sex of the thread'] : []
    case 'port':
      return end.sex === null ? ['sex of the port'] : []
    case 'taper':
      return [
        ...(end.sex === null ? ['which is stud and which is hole'] : []),
        ...(end.ratio === null ? [`taper of the ${end.sex === 'female' ? 'hole' : 'stud'}`] : []),
        ...(end.large === null ? [`large diameter of the ${end.sex === 'female' ? 'hole' : 'stud'}`] : []),
      ]
    case 'round':
      return end.diameter === null ? [`diameter of the ${end.form}`] : []
    case 'spline':
      return [
        ...(end.sex === null ? ['which is shaft and which is hub'] : []),
        ...(end.count === null ? ['number of splines'] : []),
        ...(end.diameter === null ? ['outside diameter of the splines'] : []),
      ]
    case 'tail':
      return end.bore === null ? ['bore of the hose and size of the barb'] : []
    case 'weld':
      return []
  }
}

const PIPE: readonly string[] = ['npt', 'nptf', 'g', 'r', 'rc', 'rp']

/** Does oil run through this end? Ports, pipe threads and hose tails. */
export const carriesOil = (end: End): boolean =>
  end.kind === 'port' || end.kind === 'tail' || (end.kind === 'thread' && PIPE.includes(end.thread.family))
