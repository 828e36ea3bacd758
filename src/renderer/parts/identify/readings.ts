import type { SealSeen } from '../../../shared/planner/identify/types.ts'

export type What = 'thread' | 'taper' | 'tube' | 'spline'

/** What stands in the fields, by the names the readings have in the terminal. */
export type Typed = Readonly<Record<string, string>>

export interface Reading {
  readonly name: string
  readonly label: string
  readonly hint: string
  /** whether the program can say it in the other units while it is typed */
  readonly length: boolean
}

const length = (name: string, label: string, hint: string): Reading => ({ name, label, hint, length: true })

export const TAPER: readonly Reading[] = [
  length('d1', 'One diameter (d1)', '17.8 mm'),
  length('d2', 'The other (d2)', '15.3 mm'),
  length('length', 'Distance between', '20 mm'),
  length('u', 'Diameters within ±', '0.05 mm'),
  length('ulength', 'Distance within ±', '0.2 mm'),
]
export const TUBE: readonly Reading[] = [
  length('od', 'Outside diameter', '1 1/2 in'),
  length('id', 'Inside diameter', '1.00 in'),
  length('wall', 'Wall', '0.250 in'),
  length('u', 'All within ±', '0.05 mm'),
]
export const SPLINE: readonly Reading[] = [
  { name: 'splines', label: 'Number of splines', hint: '36', length: false },
  length('od', 'Over the tips', '0.74 in'),
  length('u', 'Within ±', '0.05 mm'),
]

/** How an end can be seen to seal, as it looks to who holds it. */
export const SEALS: Readonly<Record<SealSeen, string>> = {
  none: 'no seal to be seen',
  'cone 37': 'a 37° cone',
  'cone 45': 'a 45° cone',
  'cone 24': 'a slim 24° cone',
  'cone 60': 'a 60° cone',
  'o-ring in chamfer': 'an O-ring into a chamfer',
  'o-ring in face': 'an O-ring in a flat face',
  'flat face': 'a flat face for a washer',
  'inverted seat': 'a raised seat inside',
  'o-ring on nose': 'an O-ring on the nose of the tube',
}

/** Names that belong to each kind of thing; a thread is measured over its crests outside or inside. */
const NAMES: Readonly<Record<What, readonly string[]>> = {
  thread: ['od', 'id', 'u', 'pitch', 'tpi', 'upitch', 'taper', 'seal', 'hand', 'angle'],
  taper: TAPER.map((one) => one.name),
  tube: TUBE.map((one) => one.name),
  spline: SPLINE.map((one) => one.name),
}

/** The readings as the program takes them; empty where nothing decisive is typed yet. */
export function wordsOf(what: What, typed: Typed): readonly string[] {
  const given = NAMES[what].flatMap((name) => {
    const value = (typed[name] ?? '').trim()
    return value === '' ? [] : [`${name}=${value.slice(0, 110)}`]
  })
  const decisive = { thread: ['od', 'id'], taper: ['d1', 'd2', 'length'], tube: ['od', 'id', 'wall'], spline: ['splines', 'od'] }[what]
  const has = (name: string): boolean => (typed[name] ?? '').trim() !== ''
  const enough = what === 'taper' ? decisive.every(has) : decisive.some(has)
  return enough ? [what, ...given] : []
}
