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
  tyre: 'tyre',
  printWidth: 'width of the print',
  kingpinSpacing: 'kingpin spacing',
  armLength: 'arm length',
  armAngle: 'arm angle',
  kingpinInclination: 'kingpin inclination',
  geometry: 'geometry',
  arms: 'arms',
  leftLength: 'length, left',
  leftAngle: 'angle, left',
  rightLength: 'length, right',
  rightAngle: 'angle, right',
  toeAt: 'diameter at which toe is measured',
  wheel: 'wheel',
  hubFace: 'hub face',
  loadedRadius: 'loaded radius',
  corner: 'front corner',
  pitman: 'pitman arm',
  ballAbove: 'height of the ball',
  armPoints: 'where the arm points',
  rodAlong: 'pin along the tie rod',
  rodAhead: 'pin ahead of the tie rod',
  rodAbove: 'pin above the tie rod',
  bodyLength: 'length of the body',
  bodyDiameter: 'diameter of the body',
  endsTravel: 'ram ends the travel',
  suspension: 'suspension',
  trackBarLength: 'length of the track bar',
  trackBarAbove: 'height of the track bar',
  trackBarFrameEnd: 'frame end of the track bar',
  eyeAbove: 'height of the spring eye',
  eyeAway: 'distance of the spring eye',
  casterSweep: 'caster sweep',
  leftOut: 'left wheel out',
  leftIn: 'left wheel in',
  rightOut: 'right wheel out',
  rightIn: 'right wheel in',
  tieRod: 'tie rod',
  dragLink: 'drag link',
  ramRod: 'rod of the ram',
  weldedEnds: 'welded ends',
  box: 'steering box',
  forces: 'forces and strength',
  ground: 'ground',
  friction: 'friction',
  rockFactor: 'rock factor',
  route: 'way of working out the torque',
  kingpinOffset: 'kingpin offset',
  handWheel: 'hand wheel',
  handForce: 'pull of the driver',
  losses: 'losses',
  hoseEnd: 'loss of a hose end',
  gear: 'efficiency of the gear',
  displacement: 'displacement',
  pulleyRatio: 'pulley ratio',
  idleSpeed: 'engine speed at idle',
  cruiseSpeed: 'engine speed at cruise',
  efficiency: 'efficiency',
  flowControl: 'flow control',
  pistonBore: 'bore of the piston',
  sectorRadius: 'radius of the sector',
  sectorRating: 'what the sector shaft may carry',
  oil: 'oil',
  at40: 'viscosity at 40 °C',
  at100: 'viscosity at 100 °C',
  cold: 'coldest start',
  hot: 'working temperature',
  material: 'material',
  weldMaterial: 'strength beside the weld',
  jog: 'jog',
  rodEnd: 'rod ends',
  studDiameter: 'diameter of the stud',
  studLever: 'lever of the stud',
  studYield: 'yield of the stud',
  yield: 'yield strength',
  steeringArm: 'steering arms',
  clampFriction: 'friction of the clamp',
  bolts: 'bolts',
  hoses: 'hoses',
  bend: 'tightest bend',
  longestWay: 'longest way',
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
