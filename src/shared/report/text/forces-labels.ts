const WHOLE: Readonly<Record<string, string>> = {
  'demand.both-sizing-sheet': 'Kingpin torque of both wheels, by the sizing sheets',
  'demand.both-driven': 'Kingpin torque of both wheels, driven, by one sizing sheet',
  'demand.wheel-sizing-sheet': 'Kingpin torque of one wheel, by the sizing sheets',
  'demand.wheel-print': 'Kingpin torque of one wheel, scrub of a round print',
  'demand.wheel-pressure': 'Kingpin torque of one wheel, by tyre pressure',
  'demand.via-wheel-load': 'Load on one front wheel',
  'demand.via-print': 'Diameter of a round tyre print',
  'demand.via-arm': 'Arm of the scrubbing print',
  'demand.via-print-width': 'Width of the tyre print, estimated',
  'demand.via-offset': 'Kingpin offset at the ground',
  'supply.left.force': 'Turning left: force there is along the tie rod',
  'supply.right.force': 'Turning right: force there is along the tie rod',
  'supply.ram-push': 'Push of the ram, less losses',
  'supply.ram-pull': 'Pull of the ram, less losses',
  'supply.sector-torque': "The box's own torque on the sector shaft",
  'supply.via-annulus': 'Area beside the rod',
  'supply.via-cap': 'Area of the bore',
  'supply.via-box-piston': 'Area of the piston in the box',
  'sector.before-ram': 'Torque on the sector shaft, box alone',
  'sector.after-ram': 'Torque on the sector shaft, with the ram',
  'hand.via-ratio': 'Ratio of the steering box',
  'hand.force': 'Pull at the rim after a burst hose, standing',
  'speed.idle-flow': 'Flow of the pump at idle',
  'speed.cruise-flow': 'Flow of the pump at cruise',
  'speed.idle-time-left': 'Stop to stop at idle, turning left',
  'speed.idle-time-right': 'Stop to stop at idle, turning right',
  'speed.cruise-time-left': 'Stop to stop at cruise, turning left',
  'speed.cruise-time-right': 'Stop to stop at cruise, turning right',
  'speed.idle-hand-wheel': 'Hand wheel before it goes heavy, at idle',
  'speed.cruise-hand-wheel': 'Hand wheel before it goes heavy, at cruise',
  'speed.idle-heat': 'Heat while a stop is held, at idle',
  'speed.cruise-heat': 'Heat while a stop is held, at cruise',
  'speed.via-ram-way': 'Way of the ram from stop to stop',
  'speed.via-pitman': 'Turn of the pitman arm from stop to stop',
  'speed.via-hand-turns': 'Turns of the hand wheel from stop to stop',
  'strength.ram-full': 'Full force of the ram at relief pressure',
  'strength.blocked': 'Load with one wheel blocked, ram and box',
  'strength.drag-link-push': 'Push in the drag link at relief pressure',
  'strength.via-ram-area': 'Greater area of the ram',
  'strength.via-clamp-offset': "Distance of the ram's line from the tie rod",
  'strength.via-drag-link': 'Length of the drag link, seen from above',
  'strength.via-stud': 'Bending stress of the ball stud',
  'strength.via-arm': 'Bending stress of the steering arm',
  'strength.ram.rod-alone': 'Buckling load of the ram, rod alone',
  'strength.ram.column': 'Buckling load of the ram, body and rod',
  'flow.viscosity-cold': 'Viscosity of the oil, cold',
  'flow.viscosity-hot': 'Viscosity of the oil, hot',
  'flow.return': 'Flow in the return lines as the ram is pulled in',
  'flow.rod-volume': "Oil that the ram's rod displaces",
  'flow.swing': 'Part of the reservoir that comes and goes',
  'margin.left': 'Turning left: there is over asked for',
  'margin.right': 'Turning right: there is over asked for',
  'margin.left-rock': 'Turning left in rock: there is over asked for',
  'margin.right-rock': 'Turning right in rock: there is over asked for',
  'margin.sector-shaft': 'Sector shaft: allowed over carried',
  'margin.ram-rod': 'Ram, rod alone: times over',
  'margin.ram-column': 'Ram, body and rod: times over',
  'margin.ball-stud': 'Ball stud: times over',
  'margin.steering-arm': 'Steering arm: times over',
}

/** The last word of an id, whatever stands before it. */
const LAST: Readonly<Record<string, string>> = {
  force: 'force asked for along the tie rod',
  rock: 'force asked for in rock',
  ram: "the ram's part at the tie rod",
  box: "the box's part at the tie rod",
  'via-place': 'hardest place of the travel',
  'via-middle': 'middle of the tie rod',
  'via-tilt': 'tilt of the tie rod',
  left: 'angle of the left wheel',
  right: 'angle of the right wheel',
  'via-lean-left': 'lean of the left arm',
  'via-lean-right': 'lean of the right arm',
  'via-wheel-ratio': 'right wheel over left wheel',
  'via-lever': 'lever of the tie rod',
  'via-tilt-rate': 'how fast the rod tilts',
  'via-back-rate': 'how fast the rod goes ahead',
  'via-pitman-rate': 'turn of the pitman arm for the travel',
  'via-back': 'middle of the rod, fore and aft',
  'via-pin-across': "the ram's pin, along the axle",
  'via-pin-ahead': "the ram's pin, fore and aft",
  'via-ram-length': 'length of the ram',
  'via-ram-rate': "change of the ram's length for the travel",
  'via-torque-left': 'torque of the left wheel',
  'via-torque-right': 'torque of the right wheel',
  'via-torque-left-lift': 'lifting at the left wheel',
  'via-torque-right-lift': 'lifting at the right wheel',
  'via-area-left': 'area that fills, turning left',
  'via-area-right': 'area that fills, turning right',
  'via-ram-left': 'oil into the ram, turning left',
  'via-ram-right': 'oil into the ram, turning right',
  'via-box-left': 'oil into the box, turning left',
  'via-box-right': 'oil into the box, turning right',
  'via-volume-left': 'oil from stop to stop, turning left',
  'via-volume-right': 'oil from stop to stop, turning right',
  'via-inside': 'inside diameter',
  'via-area': 'section area',
  'via-second-moment': 'second moment of area',
  'via-modulus': 'section modulus',
  'via-gyration': 'radius of gyration',
  'via-constant': 'slenderness where Euler begins',
  'via-direct': 'plain stress',
  'via-core': "stress in the thread's core",
  'via-stress-area': 'stress area of the thread',
  'via-pitch-diameter': 'pitch diameter',
  'via-strip': 'area that shears when it strips',
  'via-shear-yield': 'shear stress at yield',
  'via-shear': 'shear stress',
  'via-pull': 'pull in one bolt',
  'via-stress': 'comparable stress',
  'via-rod-area': 'section area of the rod',
  'via-rod-moment': 'second moment of area of the rod',
  'via-body-moment': 'second moment of area of the body',
  'via-rod-out': 'length of the rod, fully out',
  'via-length': 'length fully out',
  critical: 'gives way at',
  euler: 'Euler load',
  slenderness: 'slenderness',
  velocity: 'velocity',
  'via-reynolds': 'Reynolds number',
  'via-friction': 'friction factor',
  'via-hose': 'loss in the hose',
  'via-ends': 'loss in its ends',
  drop: 'pressure lost',
  burst: 'least burst pressure',
  'length-needed': 'length needed',
  preload: 'preload of one',
  slip: 'slips at',
  'torque-textbook': 'torque, K of the textbook',
  'torque-industry': 'torque, K of the industry charts',
}

const MINE = /^(?:demand|supply|sector|hand|speed|strength|flow|margin|bolts)\./
const LINKS: Readonly<Record<string, string>> = { tieRod: 'Tie rod', dragLink: 'Drag link', 'tie-rod': 'Tie rod', 'drag-link': 'Drag link' }
const WAYS: Readonly<Record<string, string>> = {
  buckling: 'buckling',
  clamp: 'bending at the clamp',
  jog: 'its bend',
  weld: 'weld zone',
  thread: 'core of the thread',
  strip: 'stripping of the thread',
}

/** Numbers that stand in the sections on forces, strength and flow, by what their ids begin with. */
export const isForcesNumber = (id: string): boolean =>
  /^(?:demand|supply|sector|hand|speed)\./.test(id) || /^margin\.(?:left|right|sector)/.test(id)
export const isStrengthNumber = (id: string): boolean =>
  /^(?:strength|bolts)\./.test(id) || (id.startsWith('margin.') && !isForcesNumber(id) && !id.startsWith('margin.hose-'))
export const isFlowNumber = (id: string): boolean => id.startsWith('flow.') || id.startsWith('margin.hose-')

/** The name of a number on forces, strength or flow; undefined for any other. */
export function forcesLabel(id: string): string | undefined {
  if (!MINE.test(id)) return undefined
  const whole = WHOLE[id]
  if (whole) return whole
  const [kind, ...rest] = id.split('.') as [string, ...string[]]
  if (kind === 'margin') return marginLabel(rest.join('.'))
  const last = LAST[rest.at(-1) ?? ''] ?? (rest.at(-1) ?? id).replaceAll('-', ' ')
  if (kind === 'bolts') return `Bolts no. ${Number(rest[0]) + 1}: ${last}`
  if (kind === 'demand' || kind === 'supply') return rest.length > 1 ? `Turning ${rest[0]}: ${last}` : capital(last)
  if (kind === 'strength') return `${LINKS[rest[0] ?? ''] ?? (rest[0] === 'ram' ? 'Ram' : 'Strength')}: ${middle(rest)}${last}`
  if (kind === 'flow') return `${capital(last)} (${rest[0]}${rest.includes('cold') ? ', cold' : rest.includes('hot') ? ', hot' : ''})`
  return capital(last)
}

/** Which end of a link is meant. */
const middle = (rest: readonly string[]): string => (rest.length > 2 ? `${rest[1]}, ` : '')

function marginLabel(rest: string): string {
  const hose = /^hose-(.+)$/.exec(rest)
  if (hose) return `Hose ${hose[1]}: working over relief pressure`
  const bolts = /^bolts-(\d+)$/.exec(rest)
  if (bolts) return `Bolts no. ${Number(bolts[1]) + 1}: times over`
  const [link, way, ...end] = rest.split('-')
  const name = LINKS[link ?? '']
  return name ? `${name}, ${WAYS[way ?? ''] ?? way}${end.length > 0 ? ` (${end.join('-')})` : ''}: times over` : `${rest}: times over`
}

const capital = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`
