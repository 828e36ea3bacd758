import type { Finding } from '../../planner/plan.ts'
import type { FindingWords } from './findings.ts'
import { FORCES_MEASURES } from './forces-measures.ts'
import { GEOMETRY_MEASURES } from './linkage.ts'

type Facts = Finding['facts']

/** What is not known, why it matters and how it is measured or looked up. */
export const MEASURES: Readonly<Record<string, (facts: Facts) => FindingWords>> = {
  ...GEOMETRY_MEASURES,
  ...FORCES_MEASURES,
  'travel survey': () => ({
    title: 'Measure: the lock-to-lock travel',
    why: 'Without it nobody knows what stroke the ram needs, nor what stops the wheels.',
    todo: 'On stands, ram off: straight edge in one seat on the axle, a mark on the tie rod at straight ahead, full left and full right; read the tape three times each.',
  }),
  'survey mark': ({ mark }) => ({
    title: `Measure: the ${mark} mark`,
    why: 'All three marks are needed for the travel to each side.',
    todo: `Turn the wheels to ${mark === 'centre' ? 'straight ahead' : `full ${mark}`}, straight edge in the same seat, and read the tape.`,
  }),
  'what stopped the wheel': ({ side }) => ({
    title: `Look: what stopped the wheels on the ${side}`,
    why: 'The stop on the knuckle must end the travel, not tyre, box or ram.',
    todo: 'Turn to that lock and look: stop bolt, tyre on spring or frame, or hand wheel at its end.',
  }),
  'ram angle': () => ({
    title: "Measure: the ram's angle to the tie rod",
    why: 'A ram at an angle moves less than the tie rod; until it is known the stroke is given for a parallel ram.',
    todo: 'With the wheels straight ahead, measure how far the two ends of the ram are from the tie rod, and how far apart along it.',
  }),
  'relief pressure': () => ({
    title: "Look up: the pump's relief pressure",
    why: 'Force, hoses and tie rod all depend on it.',
    todo: "Take it from the pump maker's data, or have it measured with a gauge; never hold the test valve shut for more than five seconds.",
  }),
  'ram bore': ({ part }) => ram(part, 'bore', 'Ask the maker, or measure a dismantled one. The outside says nothing about it.'),
  'ram rod': ({ part }) => ram(part, 'rod diameter', 'Measure the chromed rod with a calliper.'),
  'ram stroke': ({ part }) => ram(part, 'stroke', 'Ports open, push it in and pull it out, and measure the difference.'),
  'ram ended': ({ part }) => ram(part, 'kind', 'A rod out of one end: single. Out of both ends: double.'),
  volume: ({ part }) => ({
    title: `Look up: how much ${part} holds`,
    why: 'It is part of the fluid to buy.',
    todo: "Take it from the maker's data, or fill it and measure what went in.",
  }),
  'hose bore': ({ part }) => hose(part, 'bore', 'Read it on the lay line, or measure the inside at a cut end.'),
  'hose length': ({ part }) => hose(part, 'length', 'Measure from seat to seat along the hose, with the slack it needs at both locks.'),
  bottle: ({ part }) => ({
    title: `Look up: what one bottle of ${part} holds`,
    why: 'The number of bottles follows from it.',
    todo: 'Read it on the bottle.',
  }),
  'working pressure': ({ part }) => ({
    title: `Look up: the working pressure of ${part}`,
    why: 'It must be at least the relief pressure; burst pressure does not count.',
    todo: "Read it on the lay line or in the maker's data.",
  }),
  engagement: ({ part }) => ({
    title: `Measure: how far the end is screwed into ${part}`,
    why: 'A thread that fits still pulls out when too little of it is engaged: one diameter at least in steel.',
    todo: 'With the length set, measure the thread inside (whole thread less what stands out) and write "engaged …" at the end.',
  }),
  torque: ({ spec }) => ({
    title: `Look up: the torque for ${spec}`,
    why: 'A line without a value is not tightened to anything.',
    todo: "Take the maker's value; where there is none, a published table for the size and class.",
  }),
}

const ram = (part: unknown, what: string, todo: string): FindingWords => ({
  title: `Measure: the ${what} of ${part}`,
  why: 'Forces, oil and stroke are not given without it.',
  todo,
})

const hose = (part: unknown, what: string, todo: string): FindingWords => ({
  title: `Measure: the ${what} of ${part}`,
  why: 'Its oil is not counted without it.',
  todo,
})
