import type { Finding } from '../../planner/plan.ts'
import type { FindingWords } from './findings.ts'

type Facts = Finding['facts']
/** A piece of evidence by its name, printed; undefined where there is none of that name. */
export type Shown = (name: string) => string | undefined

/** Findings on linkage, limits, ram in space and bump steer in words; undefined for a code of another rule. */
export function linkageWords(code: string, facts: Facts, shown: Shown): FindingWords | undefined {
  const side = String(facts.side)
  const n = (name: string) => shown(name) ?? 'not known'
  switch (code) {
    case 'linkage.does_not_close':
      return {
        title: 'The tie rod does not fit between the arms',
        why: `It is ${n('rod tie rod')} long; with 10° of toe a wheel either way it would have to be between ${n('shortest tie rod')} and ${n('longest tie rod')}.`,
        todo: 'Measure again: kingpin spacing at the height of the rod, arm length and lean, rod from joint to joint.',
      }
    case 'linkage.toggle':
      return {
        title: `${capital(String(facts.what))} come into line to the ${side}`,
        why: `At a travel of ${n('travel at which they come into line')} the link can fold the other way and lock the wheels there${shown('travel of the first stop') ? `; the first stop is at ${n('travel of the first stop')}` : ''}.`,
        todo: 'Set the stop well before it, or choose longer arms. Check the sizes that were typed.',
      }
    case 'chain.does_not_close':
      return {
        title: 'The drag link does not reach from pitman arm to axle',
        why: `Seen from above it is ${n('drag link, seen from above')} long, and the joint is ${n('from sector shaft to joint')} from the sector shaft.`,
        todo: "Measure again: sector shaft, pitman arm and the drag link's joint, all from the axle.",
      }
    case 'chain.off_centre':
      return {
        title: `The pitman arm stands off its centre by ${n('pitman arm off its centre')}`,
        why: 'The box then has less travel on one side, and its tight spot is not where the vehicle goes straight.',
        todo: 'Set the drag link so that box and wheels stand at their centre together. Do not centre the hand wheel on its splines.',
      }
    case 'limits.ram_first':
      return {
        title: `The ram ends the travel first, to the ${side}`,
        why: `It comes to its end at ${n(`ram, travel ${side}`)}${after(shown, side)}. At full lock the pump then pushes the piston into its own end cap: seals, rod and clamp take it.`,
        todo: `${setStop(n, shown)}${moveClamp(shown)} Otherwise take a longer stroke.`,
      }
    case 'limits.box_first':
      return {
        title: `The steering box ends the travel first, to the ${side}`,
        why: `It comes to its end at ${n(`steering box, travel ${side}`)}${after(shown, side)}. The ram or a rock then twists the sector shaft against the box's own stop.`,
        todo: `${setStop(n, shown)} Otherwise a longer pitman arm, or centre the box.`,
      }
    case 'limits.tyre_first':
      return {
        title: `The tyre touches before the stop, to the ${side}`,
        why: `The clearance is used up at ${n(`tyre contact, travel ${side}`)}${after(shown, side)}.`,
        todo: `${setStop(n, shown)} Otherwise move what it touches, or take wheels with more outset.`,
      }
    case 'limits.ram_chosen':
      return {
        title: `The ram ends the travel to the ${side}, as chosen`,
        why: `It comes to its end at ${n(`ram, travel ${side}`)}. No stop takes the load: held at full lock the pump loads seals, rod, clamp and tie rod with all its pressure.`,
        todo: 'Back off from full lock at once, every time; tell everyone who drives it; look at seals and clamp at each oil change.',
      }
    case 'limits.no_positive_stop':
      return {
        title: `No knuckle stop to the ${side}`,
        why: 'Nothing solid ends the travel of the wheels.',
        todo: `Fit a stop bolt on the knuckle. ${setStop(n, shown)}`.trim(),
      }
    case 'limits.little_room':
      return {
        title: `Little room after the stop, to the ${side}`,
        why: `The stop ends the travel at ${n(`knuckle stop, travel ${side}`)}; ${thing(facts.next)} follows at ${n(`${facts.next}, travel ${side}`)}. Stops wear, and arms and rods give under load.`,
        todo: setStop(n, shown),
      }
    case 'limits.order_uncertain':
      return {
        title: `Not sure what stops first, to the ${side}`,
        why: `${capital(thing(facts.first))} and ${thing(facts.next)} lie so close that the order is the other way round with a chance of ${n('chance of the other order')}.`,
        todo: `Measure both again, with the ram's ports open. ${setStop(n, shown)}`,
      }
    case 'limits.in_order':
      return {
        title: `The stop ends the travel to the ${side}, as it should`,
        why: `It does so at ${n(`knuckle stop, travel ${side}`)}${facts.next === null ? '' : `; ${thing(facts.next)} would follow at ${n(`${facts.next}, travel ${side}`)}`}.`,
        todo: 'Prove it by turning to this stop with the ports of the ram open, before the hoses go on.',
      }
    case 'limits.sides_unequal':
      return {
        title: `More travel to the ${facts.more}`,
        why: `${n('travel left')} to the left and ${n('travel right')} to the right: the vehicle turns tighter one way, and a ram in the middle has less room on one side.`,
        todo: 'Check toe, drag-link length and the stop bolts; then set both sides alike.',
      }
    case 'ram.does_not_fit':
      return {
        title: `The ram is too ${facts.too} for its places`,
        why: `Its pins are ${n('between its pins, wheels straight')} apart with the wheels straight; it goes from ${n('fully closed')} to ${n('fully out')}.`,
        todo: 'Move the bracket or the clamp, or take another length. Measure the places again first.',
      }
    case 'ram.clamp_off_best':
      return {
        title: `The ram's clamp stands ${n('to move')} from its best place`,
        why: `Moved to the ${facts.way} it would have ${n('room a side then')} of room on both sides; now the least is ${n('least room now')}.`,
        todo: 'Move it before the tie rod is marked or the hoses are cut.',
      }
    case 'ram.touches_rod':
      return {
        title: "The ram's body runs into the tie rod",
        why: `Over the travel they come to ${n('least clearance to the tie rod')} of each other, surface to surface.`,
        todo: 'Raise or set off the clamp, or move the bracket.',
      }
    case 'ram.near_rod':
      return {
        title: "The ram's body comes near to the tie rod",
        why: `Over the travel the least clearance is ${n('least clearance to the tie rod')}.`,
        todo: 'Turn from stop to stop by hand and look; give it more room if dirt could jam it.',
      }
    case 'bump.steers':
      return {
        title: 'Bumps steer the vehicle',
        why: `With the hand wheel held, full bump steers by ${n('steer at full bump')} and full droop by ${n('steer at full droop')}.`,
        todo: bestHeight(shown),
      }
    case 'bump.little':
      return {
        title: 'Bumps hardly steer the vehicle',
        why: `With the hand wheel held, full bump steers by ${n('steer at full bump')} and full droop by ${n('steer at full droop')}.`,
        todo: bestHeight(shown),
      }
    case 'bump.does_not_reach':
      return {
        title: 'Drag link or track bar does not reach over the suspension’s travel',
        why: 'At full bump or droop the axle would tear at a link.',
        todo: 'Check lengths and heights, and the bump stops.',
      }
    default:
      return undefined
  }
}

const capital = (text: string): string => `${text[0]?.toUpperCase() ?? ''}${text.slice(1)}`
const thing = (what: unknown): string => (what === null ? 'nothing else' : `the ${what === 'tyre contact' ? 'tyre’s contact' : what}`)

const after = (shown: Shown, side: string): string => {
  const stop = shown(`knuckle stop, travel ${side}`)
  return stop ? `, before the stop at ${stop}` : ', and there is no stop'
}

function setStop(n: (name: string) => string, shown: Shown): string {
  if (!shown('set the stop at a travel of')) return 'Set the stop so that it comes first.'
  const angle = shown('that is a wheel angle of')
  const gap = shown('and a gap at the stop of')
  const [now, then] = [shown('turning circle now'), shown('turning circle then')]
  const more = [angle && `a wheel angle of ${angle}`, gap && `a gap of ${gap}`].filter(Boolean).join(' and ')
  const cost = now && then ? ` The turning circle goes from ${now} to ${then}.` : ''
  return `Set the stop at a travel of ${n('set the stop at a travel of')}${more ? `, which is ${more}` : ''}.${cost}`
}

function moveClamp(shown: Shown): string {
  const shift = shown('clamp to move along the tie rod, to the right')
  const room = shown('room a side then')
  if (!shift || !room) return ''
  const left = shift.startsWith('−')
  return ` Or move the clamp by ${shift.replace('−', '')} to the ${left ? 'left' : 'right'}, which leaves ${room.startsWith('−') ? 'too little stroke even then' : `${room} a side`}.`
}

function bestHeight(shown: Shown): string {
  const height = shown("best height of the drag link's joint")
  const offs = [shown('hand wheel off centre at full bump'), shown('hand wheel off centre at full droop')]
  const hand = offs.every(Boolean) ? ` The hand wheel stands off by ${offs.join(' and ')} there.` : ''
  return height
    ? `Least with the drag link's joint at the axle ${height} above the axle's centre line: then ${shown('most steer then') ?? 'less'} at most.${hand}`
    : `Make drag link and track bar parallel and equal in length.${hand}`
}

const missing = (facts: Facts): string => (Array.isArray(facts.missing) ? facts.missing.join(', ') : '')

/** What the geometry still needs. */
export const GEOMETRY_MEASURES: Readonly<Record<string, (facts: Facts) => FindingWords>> = {
  'linkage sizes': (facts) => ({
    title: `Measure: ${missing(facts)}`,
    why: 'Wheel angles, turning circle and what stops the wheels are not worked out without it.',
    todo: 'Kingpin to kingpin at the height of the tie rod; from kingpin to tie-rod joint seen from above; how far the joint leans in from straight back.',
  }),
  'pitman and drag link': (facts) => ({
    title: `Measure: ${missing(facts)}`,
    why: 'Without it nobody can say where the steering box ends the travel.',
    todo: "All from the axle: along it from a kingpin, ahead of the kingpins' line, above the axle's centre line.",
  }),
  'ram places': (facts) => ({
    title: `Measure: where ${facts.part} sits (${missing(facts)})`,
    why: 'Its length over the travel, its angle and what room it has follow from the places of its two pins.',
    todo: "Wheels straight: each pin along the axle from a kingpin, ahead of the kingpins' line, and in height; the clamp along the rod from a joint.",
  }),
  'ram closed length': ({ part }) => ({
    title: `Measure: the closed length of ${part}`,
    why: 'Whether it bottoms before the stop cannot be told without it.',
    todo: 'Ports open, push it fully in, and measure from pin to pin.',
  }),
  'ram body': () => ({
    title: "Measure: length and diameter of the ram's body, and the tie rod",
    why: 'Whether the body clears the tie rod over the travel cannot be told without them.',
    todo: 'From the pin on the axle to the end of the thick part, and across it; the diameter of the rod; the heights of both.',
  }),
  limits: () => ({
    title: 'Measure: what can stop the wheels',
    why: 'Nothing is entered that ends the travel.',
    todo: 'Turn to each side and note the travel, or the gap at the stop bolt and its distance from the kingpin.',
  }),
  'limits of a side': ({ side }) => ({
    title: `Measure: what stops the wheels to the ${side}`,
    why: 'Nothing is entered that ends the travel on this side.',
    todo: 'Turn to that side and note the travel, or the gap at the stop bolt and its distance from the kingpin.',
  }),
  limit: ({ what, side }) => ({
    title: `Measure: where the ${what} ends the travel to the ${side}`,
    why: 'It cannot be set against the others.',
    todo: 'Measure its travel along the tie rod; or its angle or gap, with the sizes of the linkage.',
  }),
  suspension: (facts) => ({
    title: `Measure: ${missing(facts)}`,
    why: 'How much bumps steer the vehicle is not worked out without it.',
    todo: 'Between joint centres, seen from the front, at ride height; heights from the axle’s centre line.',
  }),
  'leaf spring eye': () => ({
    title: "Measure: the leaf spring's fixed eye against the axle seat",
    why: 'Roll steer follows from how high and how far away it is.',
    todo: 'At ride height: level from the seat to the eye, and its height above or below.',
  }),
}

const PLACE: Readonly<Record<string, string>> = {
  'left-lock': 'at the left stop',
  'right-lock': 'at the right stop',
  straight: 'straight ahead',
}

const OF_STATE: Readonly<Record<string, string>> = {
  left: 'Left wheel',
  right: 'Right wheel',
  'true-rolling': 'Outer wheel for true rolling',
  ackermann: 'Share of true rolling',
  length: 'Ram, pin to pin',
  'rod-place': "Ram's rod from the middle of its body",
  angle: 'Ram to the axle',
  'via-middle': 'Middle of the tie rod',
  'via-tilt': 'Tilt of the tie rod',
  'via-back': 'Middle of the tie rod, fore and aft',
  'via-across': "Ram's pin along the axle",
  'via-ahead': "Ram's pin fore and aft",
}

const WHOLE: Readonly<Record<string, string>> = {
  'linkage.rod-length': 'Tie rod, joint to joint',
  'linkage.via-middle': 'Middle of the tie rod, straight ahead',
  'linkage.via-pitman': 'Sector shaft, along the axle',
  'linkage.via-ram': 'Ram’s pin on the axle, along it',
  'linkage.via-rod-over-ground': 'Tie rod over the ground',
  'linkage.ground-spacing': 'Kingpins at the ground',
  'linkage.pitman-turn': 'Turn of the pitman arm, stop to stop',
  'linkage.hand-wheel-turns': 'Hand wheel, turns from stop to stop',
  'ram-space.via-along': 'Clamp along the tie rod from its left joint',
  'ram-space.via-height': 'Height of the pin on the tie rod',
  'ram-space.spare-closed': 'Room before the ram is closed',
  'ram-space.spare-open': 'Room before the ram is fully out',
  'ram-space.least-clearance': 'Least clearance of the ram to the tie rod',
  'bump.roll-steer': 'Steer of the axle for its roll',
  'alignment.toe-set': 'Toe wanted, one wheel',
  'alignment.toe-set-total': 'Toe wanted, both wheels',
  'alignment.toe-wheel': 'Toe as read last, one wheel',
  'alignment.toe-total': 'Toe as read last, both wheels',
  'alignment.via-rod-now': 'Tie rod at the toe as read',
  'alignment.via-rod-wanted': 'Tie rod at the toe wanted',
  'alignment.rod-change': 'Tie rod to be made longer by',
  'alignment.turns': 'Turns of the tie rod for it',
  'alignment.scrub': 'Scrub radius',
}

/** The name of a number of linkage, limits, ram in space, bump steer or alignment; undefined for any other. */
export function linkageLabel(id: string): string | undefined {
  if (WHOLE[id]) return WHOLE[id]
  const [kind, a = '', b = ''] = id.split('.')
  const rest = id.split('.').at(-1) ?? ''
  if (kind === 'linkage' || kind === 'ram-space') return `${OF_STATE[b] ?? b}, ${PLACE[a] ?? a}`
  if (kind === 'turning') return `Turning circle to the ${a}, between ${b === 'kerb' ? 'kerbs' : 'walls'}`
  if (kind === 'alignment') return `${rest === 'caster' ? 'Caster' : 'Change of camber'}, ${a} wheel`
  if (kind !== 'limit') return undefined
  if (a === 'margin') return `Room after the first stop, ${b}`
  if (a === 'wrong-order') return `Chance of the other order, ${b}`
  const what = `Limit ${a}, ${b}`
  if (rest === b) return what
  return `${what}: ${rest === 'u' ? 'standard uncertainty' : rest.replace(/^(?:via|u)-/, 'by way of the ').replaceAll('-', ' ')}`
}

/** Words for the values that these rules choose. */
export const LINKAGE_CHOICES: Readonly<Record<string, string>> = {
  'no toe': 'no toe, since none was entered',
  'toe of the rod': "the toe that the tie rod's length gives",
  'straight ahead': 'wheels straight ahead',
}
