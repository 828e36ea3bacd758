import type { Build } from '../../model/build.ts'

const WORDS: Readonly<Record<string, string>> = {
  build: 'build',
  vehicle: 'vehicle',
  axle: 'axle',
  survey: 'travel survey',
  readings: 'readings',
  madeSure: 'what was made sure of',
  endedBy: 'what stopped the wheels',
  ramAngle: "ram's angle",
  takenOn: 'day',
  reliefPressure: 'relief pressure',
  workingPressure: 'working pressure',
  closedLength: 'closed length',
  purgeAllowance: 'purge allowance',
  connection: 'connection',
  ended: 'single- or double-ended',
  with: 'what goes with it',
  at: 'place on the tape',
  outsideDiameter: 'outside diameter',
  idleFlow: 'flow at idle',
  cruiseFlow: 'flow at cruise',
  frontAxleLoad: 'load on the front axle',
  torqueSpecs: 'torque',
  torqueRecords: 'torque record',
  alignment: 'alignment',
  tasks: 'tasks',
  sessions: 'sessions',
  limits: 'limits',
  parts: 'parts',
  joints: 'joints',
  ends: 'ends',
}

/** A place in the build file in words: "assist ram › bore". Names take the place of positions where there are any. */
export function aboutText(build: Build, path: readonly (string | number)[]): string {
  const words: string[] = []
  let here: unknown = build
  for (const [i, step] of path.entries()) {
    const next = step in Object(here) ? (here as Record<string | number, unknown>)[step] : undefined
    if (typeof step === 'number') words.push(nameOf(next) ?? `no. ${step + 1}`)
    else if (typeof path[i + 1] !== 'number') words.push(WORDS[step] ?? step)
    here = next
  }
  return words.join(' › ')
}

function nameOf(thing: unknown): string | undefined {
  if (typeof thing !== 'object' || thing === null) return undefined
  const { name, what, id, a, b } = thing as Record<string, unknown>
  if (typeof name === 'string') return name
  if (typeof a === 'string' && typeof b === 'string') return `${a} – ${b}`
  return typeof what === 'string' ? what : typeof id === 'string' ? id : undefined
}

/** "parts[3].ends[0].connection": a place in the file as a programmer writes it, for the terminal and the import list. */
export function pathText(path: readonly (string | number)[]): string {
  return path.reduce<string>((text, step) => (typeof step === 'number' ? `${text}[${step}]` : text === '' ? step : `${text}.${step}`), '')
}
