import { findFormula } from '../../formulas/index.ts'
import type { Finding } from '../../planner/plan.ts'
import type { Show } from '../units.ts'
import { forcesWords } from './forces.ts'
import { labelOf } from './labels.ts'
import { linkageWords } from './linkage.ts'
import { MEASURES } from './measures.ts'
import { verdictWords } from './verdicts.ts'

export interface FindingWords {
  readonly title: string
  readonly why: string
  readonly todo: string
}

/** A finding in words: what it is, why it matters, what to do about it. */
export function findingWords(finding: Finding, show: Show): FindingWords {
  const { code, facts, evidence } = finding
  const n = (name: string): string => {
    const found = evidence.find((e) => e.name === name)
    return found ? show(found.si, found.dimension) : '?'
  }
  const list = (fact: unknown): string => (Array.isArray(fact) ? fact.join('; ') : String(fact))
  const pair = `${facts.partA} (${facts.typedA}) on ${facts.partB} (${facts.typedB})`
  switch (code) {
    case 'fit.does_not_fit':
      return {
        title: `Does not fit: ${pair}`,
        why: `${sentence(reasons(finding, show))} It cannot be put together as it should.`,
        todo: remedy(finding),
      }
    case 'fit.wrong':
      return {
        title: `Goes together and is wrong: ${pair}`,
        why: `${sentence(reasons(finding, show))} It can be assembled, and fails in use.`,
        todo: remedy(finding),
      }
    case 'fit.not_known':
      return {
        title: `Not known whether it fits: ${pair}`,
        why: 'A dimension that decides is missing. Nobody should put a steering joint together on a guess.',
        todo: `Measure: ${finding.verdict?.measure.join('; ') ?? ''}. Then write it into the part's end.`,
      }
    case 'fit.condition':
      return {
        title: `Needs something more: ${facts.partA} on ${facts.partB}`,
        why: `The two fit only with ${list(facts.unmet)}, which the joint does not name.`,
        todo: 'Get it, and name it on the joint.',
      }
    case 'end.not_joined':
      return {
        title: `Joined to nothing: ${facts.part}, ${facts.end} (${facts.typed})`,
        why: 'Every end of every part is joined, plugged, or left open on purpose; this one is none of these.',
        todo: 'Join it, or mark it as left open on purpose.',
      }
    case 'end.joined_twice':
      return {
        title: `Joined ${facts.times} times: ${facts.part}, ${facts.end}`,
        why: 'One end holds one other end.',
        todo: 'Take out the joint that is wrong, or raise the quantity of the part.',
      }
    case 'end.joined_though_open':
      return {
        title: `Marked as left open, and joined: ${facts.part}, ${facts.end}`,
        why: 'One of the two is wrong.',
        todo: 'Take the mark away or the joint.',
      }
    case 'adjuster.none':
      return {
        title: `Cannot be adjusted: ${facts.part} has a ${facts.hand}-hand thread at both ends`,
        why: `Turning the tube of a ${facts.serves} screws it on at one end as far as it screws off at the other. Toe or centre can be set only by taking an end off.`,
        todo: 'Make one end left-hand and the other right-hand.',
      }
    case 'adjuster.slow':
      return {
        title: `Adjusts slowly: ${facts.part} has the same hand at both ends`,
        why: 'With two pitches of one hand a turn moves the ends by the difference of the pitches only.',
        todo: 'Use one left-hand and one right-hand end unless this is wanted.',
      }
    case 'adjuster.not_locked':
      return {
        title: `Not locked: ${facts.part}, ${facts.end}`,
        why: 'A thread that sets the length of a steering link turns itself loose on the road unless something locks it.',
        todo: 'Add a jam nut or the clamp of a sleeve, and name it on the joint.',
      }
    case 'hose.narrow':
    case 'hose.wide':
      return {
        title: `Hose and end are of two sizes: ${facts.part}, ${facts.end} (${facts.typed})`,
        why: `The hose has a bore of ${n('bore of the hose')}; the end's dash stands for ${n('bore of that dash')}. ${code === 'hose.narrow' ? 'The hose throttles the flow.' : 'The end throttles the flow.'}`,
        todo: 'Check both on the part. Some hose kinds count their dash by an old tube size; then the maker says so.',
      }
    case 'hose.barb_under_pressure':
      return {
        title: `Blows off: ${facts.part}, ${facts.end} (${facts.typed})`,
        why: 'A hose clamped on a barb holds a return line. Under pump pressure it blows off and sprays hot oil.',
        todo: 'Take a hose with crimped ends for this line.',
      }
    case 'hose.line_not_said':
      return {
        title: `Which line is it? ${facts.part}`,
        why: 'A hose clamped on a barb is for return and suction lines only, and this one does not say what line it is.',
        todo: 'Say whether it is a pressure, return, suction or ram hose.',
      }
    case 'tube.impossible':
      return {
        title: `Cannot be: ${facts.part}`,
        why: `A wall of ${n('wall')} leaves no bore in ${n('outside diameter')}.`,
        todo: 'Measure both again.',
      }
    case 'tube.two_diameters':
      return {
        title: `Two diameters for one tube: ${facts.part}`,
        why: `The part says ${n('outside diameter of the part')}, its end ${facts.end} says ${n('diameter at its end')}. A clamp is judged by one and the strength by the other.`,
        todo: 'Measure it and put both right.',
      }
    case 'tube.no_metal_for_thread':
      return {
        title: `No metal for the thread: ${facts.part}, ${facts.end} (${facts.thread})`,
        why: `The bore is ${n('bore of the tube')} and the thread ${n('diameter of the thread')}: there is nothing to cut it in.`,
        todo: 'Weld in a threaded bung and list it as a part, or take a tube with a thicker wall.',
      }
    case 'survey.impossible_order':
      return {
        title: "The survey's marks are in an order that cannot be",
        why: `The centre mark (${n('mark centre')}) must lie between full left (${n('mark left')}) and full right (${n('mark right')}).`,
        todo: 'Check which mark is which, and that all were read from the same datum. Measure again if in doubt.',
      }
    case 'survey.not_made_sure':
      return {
        title: 'The survey does not say what was made sure of',
        why: `Not ticked: ${list(facts.left)}. The marks can be off by more than the tape shows.`,
        todo: 'Tick it if it was so; measure again if it was not.',
      }
    case 'survey.read_once':
      return {
        title: `Read once only: ${list(facts.marks)}`,
        why: 'A single reading cannot show a slip of the tape, and says nothing about scatter.',
        todo: 'Read each mark three times, with the straight edge set anew each time.',
      }
    case 'survey.spread':
      return {
        title: `Readings of the ${facts.mark} mark lie far apart`,
        why: `They spread over ${n('spread of the readings')}, with divisions of ${n('smallest division')}. One of them may not belong.`,
        todo: 'Read that mark again, and leave out the reading that a slip explains.',
      }
    case 'survey.off_centre':
      return {
        title: `Off centre: the middle of the travel lies ${n('off centre')} to the ${facts.more}`,
        why: `${n('travel left')} to the left and ${n('travel right')} to the right. A ram set in the middle would run out on one side first.`,
        todo: 'Check first: hand wheel and box at centre, drag-link length, toe, stop bolts, a bent arm. Then measure again.',
      }
    case 'ram.stroke_short':
      return {
        title: `The ram is too short in stroke by ${n('left over').replace('−', '')}`,
        why: `It has ${n('stroke of the ram')} and ${n('stroke wanted')} is wanted (± ${n('uncertainty of the travel')}). It would end the wheels' travel: the load goes into its seals and the tie rod.`,
        todo: 'Take a ram of more stroke, or set the knuckle stops earlier and measure again.',
      }
    case 'ram.stroke_no_room':
      return {
        title: 'The ram has hardly any stroke to spare',
        why: `It has ${n('stroke of the ram')} and ${n('stroke wanted')} is wanted (± ${n('uncertainty of the travel')}). With less than ${n('room wanted a side')} left on each side nobody can be sure that the knuckle stop comes before the ram.`,
        todo: 'Set the knuckle stops a little earlier, or take the next stroke up. Prove it by turning to both stops with the ports open.',
      }
    case 'ram.stroke_enough':
      return {
        title: `The ram has ${n('left over')} of stroke to spare`,
        why: `It has ${n('stroke of the ram')} and ${n('stroke wanted')} is wanted. Mounted in the middle, half of the rest is left on each side.`,
        todo: 'Mount it so that both sides have room; see the step with the ports open.',
      }
    case 'ram.weaker_pulling':
      return {
        title: 'The ram pulls less than it pushes',
        why: `At relief pressure it pushes ${n('push at relief')} and pulls ${n('pull at relief')}, because the rod takes up area.`,
        todo: 'Count with the pull when asking whether it is strong enough.',
      }
    case 'pressure.below_relief':
      return {
        title: `Rated below the relief valve: ${facts.part}`,
        why: `It may work at ${n('working pressure')}; the pump goes up to ${n('relief pressure')} at full lock.`,
        todo: 'Take a part of a higher rating.',
      }
    case 'fluid.incomplete':
      return {
        title: 'The fluid is more than counted',
        why: `The volume of some parts is not known: ${list(facts.parts)}. The figures are the least it can be.`,
        todo: 'Look the volumes up or fill with water and weigh; keep one more bottle in hand until then.',
      }
    case 'fluid.none':
      return {
        title: 'No fluid in the parts list',
        why: 'The system has to be filled and purged.',
        todo: "Add the fluid the pump's maker names, with the bottle's content.",
      }
    case 'fluid.too_few_bottles':
      return {
        title: `Too few bottles: ${facts.listed} listed, ${facts.wanted} needed`,
        why: 'Purging stops half way with an empty reservoir, and the pump runs dry.',
        todo: 'Raise the quantity.',
      }
    case 'torque.none_for_joint':
      return {
        title: `No torque given for ${Array.isArray(facts.joints) ? facts.joints.length : 0} joints`,
        why: `${list(facts.joints)}. What is not in the table is not tightened by it, nor checked again.`,
        todo: "Look up the makers' values and add them; one line may speak for several joints of a kind.",
      }
    case 'torque.out_of_tolerance':
      return {
        title: `Out of tolerance: ${facts.what}`,
        why: `On ${facts.on} ${n('torque applied')} was applied; ${n('torque wanted')} ± ${n('tolerance')} is wanted.`,
        todo: 'Loosen, check the parts, use new pins or nuts, tighten again and write it down.',
      }
    case 'tasks.circle':
      return { title: 'The tasks wait for each other in a circle', why: 'None of them can be first.', todo: 'Take out one "after".' }
    case 'number.outside_range':
      return {
        title: `Not computed: ${labelOf(String(facts.number))}`,
        why: `${outsideRange(facts)} No number is given rather than a wrong one.`,
        todo: 'Check the values that were typed.',
      }
    case 'measure': {
      const words = MEASURES[String(facts.what)]
      return words ? words(facts) : { title: `Measure: ${facts.what}`, why: 'It is not known.', todo: 'Measure it and write it in.' }
    }
    default: {
      const shown = (name: string) => (evidence.some((e) => e.name === name) ? n(name) : undefined)
      return linkageWords(code, facts, shown) ?? forcesWords(code, facts, shown) ?? { title: code, why: '', todo: '' }
    }
  }
}

/** Why a formula gives nothing for the values at hand. */
function outsideRange({ formula, symbol, says }: Finding['facts']): string {
  if (typeof says === 'string') return `The formula asks that ${says}; with these values it is not so.`
  const meaning = findFormula(String(formula))?.symbols[String(symbol)]?.meaning
  return meaning === undefined
    ? 'The formula has no answer for these values.'
    : `The formula does not hold for this value of one of its symbols: ${meaning} (${symbol}).`
}

const reasons = (finding: Finding, show: Show): string => (finding.verdict ? verdictWords(finding.verdict, show).reasons.join('; ') : '')

const sentence = (text: string): string => (text === '' ? '' : `${text[0]?.toUpperCase()}${text.slice(1)}.`)

/** What to do about a pair that does not belong together, by the first reason. */
function remedy(finding: Finding): string {
  const code = finding.verdict?.reasons[0]?.code ?? ''
  if (code === 'thread.hand') return 'Take the end of the other hand, or change this one: a left-hand end needs a left-hand thread.'
  if (code.startsWith('thread.'))
    return 'Take an end of the same thread, size and pitch. Do not force it and do not chase the thread to suit.'
  if (code.startsWith('port.') || code.startsWith('pipe.')) {
    return 'Put an adapter between that has the right end on each side, or take a hose with the right end. Do not tighten harder.'
  }
  if (code.startsWith('taper.'))
    return 'Ream the arm with the reamer of this stud, fit a tapered insert made for it, or take another stud. Do not tighten harder.'
  if (code.startsWith('clamp.')) return "Take a clamp of the tube's diameter."
  if (code.startsWith('bolt.')) return 'Take a bolt of the diameter of the bore, or bush the bore properly.'
  return 'Change one of the two.'
}
