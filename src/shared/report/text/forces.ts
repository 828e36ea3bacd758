import type { Finding } from '../../planner/plan.ts'
import type { FindingWords } from './findings.ts'
import type { Shown } from './linkage.ts'

type Facts = Finding['facts']

const list = (fact: unknown): string => (Array.isArray(fact) ? fact.join(', ') : String(fact))
const ROUTES: Readonly<Record<string, string>> = {
  'sizing sheet': 'the sizing sheets for hydrostatic steering (print width and kingpin offset)',
  'print and jacking': 'scrub of a round print and lifting (Barton and Fieldhouse)',
  'pressure law': 'the 1.5-power law with tyre pressure (Gough)',
}
const SIDES: Readonly<Record<string, string>> = {
  push: 'There the ram pushes, with its whole bore.',
  pull: 'There the ram pulls, and its rod takes up part of the bore.',
}
const MODES: Readonly<Record<string, string>> = {
  buckling: 'buckles as a column',
  'clamp bending': "yields beside the ram's clamp",
  jog: 'yields at its bend',
  'weld zone': 'yields beside the weld',
  thread: 'yields in the core of its thread',
  'thread strips': 'strips its thread',
  'stepped column': 'buckles, body and rod together',
  'rod alone': 'buckles by the rough check of the rod alone',
  slip: 'slips along the tie rod',
  bolts: 'yields in its bolts',
  bending: 'yields in bending',
}
/** How a way of giving way is named in a table. */
export const modeWords = (mode: string): string => MODES[mode] ?? mode
export const routeWords = (route: string): string => ROUTES[route] ?? route

/** Findings on demand, supply, speed, strength, flow and tightening in words; undefined for a code of another rule. */
export function forcesWords(code: string, facts: Facts, shown: Shown): FindingWords | undefined {
  return steering(code, facts, shown) ?? holding(code, facts, shown) ?? flowing(code, facts, shown)
}

function steering(code: string, facts: Facts, shown: Shown): FindingWords | undefined {
  const n = (name: string) => shown(name) ?? 'not known'
  const { turn } = facts
  switch (code) {
    case 'demand.spread':
      return {
        title: `Three published ways give torques that differ ${n('greatest over least')} times`,
        why: `What a standing tyre asks for cannot be known better than that. The plan counts with ${routeWords(String(facts.used))}.`,
        todo: 'Choose another way if it fits your tyres better; count with the greatest if in doubt.',
      }
    case 'demand.other_route':
      return {
        title: `Not worked out as chosen: ${routeWords(String(facts.wanted))}`,
        why: `Something it needs is not known. The plan counts with ${routeWords(String(facts.route))}.`,
        todo: 'Enter what is asked for below, or choose another way.',
      }
    case 'supply.too_weak':
      return {
        title: `Too weak to turn the wheels ${turn} standing`,
        why: `${n('force asked for')} is asked for along the tie rod, and ram and box bring ${n('force there is')}: ${n('times over')} times. The hand wheel has to bring the rest.`,
        todo: 'A larger bore, a higher relief pressure if every part is rated for it, longer arms, or more air in the tyres.',
      }
    case 'supply.weak_in_rock':
      return {
        title: `Strong enough to turn ${turn} on flat ground, not with a tyre wedged in rock`,
        why: `Flat ground asks for ${n('force asked for')}, rock for ${n('asked for in rock')}; there is ${n('force there is')}.`,
        todo: 'Accept it and do not force the wheel against rock, or take the next bore.',
      }
    case 'supply.enough':
      return {
        title: `Strong enough to turn ${turn}: ${n('times over')} times over`,
        why: `At the hardest place ${n('force asked for')} is asked for and ${n('force there is')} is there; in rock it is ${n('times over in rock')} times over.`,
        todo: 'Nothing to do.',
      }
    case 'supply.weaker_turn':
      return {
        title: `It steers less strongly to the ${turn}`,
        why: `${n('times over in the weaker turn')} times over there against ${n('times over in the stronger turn')}. ${SIDES[String(facts.side)] ?? 'The levers of the arms differ at the two stops.'}`,
        todo: 'Count with the weaker side.',
      }
    case 'sector.overloaded':
      return {
        title: "The sector shaft carries more than the box's maker allows",
        why: `${n('with the ram') === 'not known' ? n('without the ram') : n('with the ram')} at the hardest place; ${n('the most it may carry')} is allowed.`,
        todo: 'Let the ram take more of the load (a larger bore), or take a stronger box.',
      }
    case 'sector.carries':
      return {
        title: `The sector shaft carries ${shown('with the ram') ?? n('without the ram')}`,
        why: `Without the ram it would be ${n('without the ram')}.${shown('the most it may carry') ? ` The maker allows ${n('the most it may carry')}.` : ''}`,
        todo: 'Nothing to do.',
      }
    case 'hand.burst_hose':
      return {
        title: `After a burst hose the hand wheel takes ${n('pull at the rim')} standing`,
        why: `Without pressure only the mechanical link is left; a driver can pull about ${n('what a driver can pull')}. Rolling takes less, by how much is not published.`,
        todo: facts.tooMuch
          ? 'Do not try to turn it standing: keep rolling, hold the wheel, stop at once. Carry a spare hose and oil.'
          : 'Keep rolling, and stop at once.',
      }
    case 'speed.slow_at_idle':
      return {
        title: `Slow at idle: the hand wheel goes heavy above ${n('hand wheel before it goes heavy')}`,
        why: `Ram and box need so much oil that stop to stop takes ${n('stop to stop')} at idle. Turned faster, the pump no longer follows.`,
        todo: 'More flow at idle (pump, pulley), a smaller bore, or a little throttle when manoeuvring.',
      }
    case 'speed.at_idle':
      return {
        title: `At idle the hand wheel can be turned ${n('hand wheel before it goes heavy')}`,
        why: `Stop to stop takes ${n('stop to stop')} with the pump at idle.`,
        todo: 'Nothing to do.',
      }
    case 'speed.heat':
      return {
        title: `Held at a stop, the pump makes ${n('heat while a stop is held')} of heat`,
        why: 'The whole flow goes over the relief valve, and all of its power into the oil.',
        todo: 'Never hold it at the stop for more than a few seconds.',
      }
    case 'ram.smallest':
      return {
        title: `The smallest standard ram that passes: bore ${facts.bore}, rod ${facts.rod}, stroke ${facts.stroke}, ${facts.ended}-ended`,
        why: `It brings ${n('times over')} times what is asked for at the hardest place, and passes every other check that can be made.`,
        todo: 'See the table for the others and why they lost.',
      }
    case 'ram.none_passes':
      return {
        title: 'No standard ram passes every check',
        why: `The nearest, bore ${facts.bore}, rod ${facts.rod}, stroke ${facts.stroke}, loses by: ${list(facts.lost)}.`,
        todo: 'See the table; change pressure, flow, arms or tie rod, or accept the weakest point knowingly.',
      }
    default:
      return undefined
  }
}

function holding(code: string, facts: Facts, shown: Shown): FindingWords | undefined {
  const n = (name: string) => shown(name) ?? 'not known'
  switch (code) {
    case 'strength.gives_way':
      return {
        title: `Gives way: the ${facts.part} ${modeWords(String(facts.mode))}`,
        why: `With one wheel blocked and the full force of ram and box (${n('load, one wheel blocked')}) it holds ${n('holds so many times over')} times; below 1 it fails.`,
        todo: 'Make it stronger before the ram is connected: see its workings for what counts most.',
      }
    case 'strength.thin':
      return {
        title: `Little to spare: the ${facts.part} ${modeWords(String(facts.mode))} at ${n('holds so many times over')} times the load`,
        why: `The load is ${n('load, one wheel blocked')}, one wheel blocked and the ram at relief pressure. ${n('wanted')} times is wanted: common practice, no published source.`,
        todo: 'Make it stronger, or lower the relief pressure; see its workings for what counts most.',
      }
    case 'strength.first':
      return {
        title: `What gives way first: the ${facts.part} ${modeWords(String(facts.mode))}`,
        why: `Of everything that could be checked it holds least often over: ${n('holds so many times over')} times the load of a blocked wheel.`,
        todo: 'Look at this part first after a hard knock.',
      }
    case 'strength.euler':
      return {
        title: `${facts.part} is slender: a stronger alloy would not help`,
        why: `Its slenderness is ${n('slenderness')}, Euler begins at ${n('Euler begins at')}. It gives way at ${n('gives way at')} by its stiffness alone, and all steels are as stiff.`,
        todo: 'More diameter or less length, not another grade.',
      }
    case 'strength.johnson':
      return {
        title: `${facts.part} is of middling length: its strength counts as well as its stiffness`,
        why: `Its slenderness is ${n('slenderness')}, below ${n('Euler begins at')}: Johnson gives ${n('gives way at')}, where Euler would promise ${n('Euler load')}.`,
        todo: 'Nothing to do.',
      }
    case 'strength.alloy_no_help':
      return {
        title: `The stronger alloy does not raise the Euler load of the ${facts.which}`,
        why: `Yield went from ${n('yield before')} to ${n('yield now')}, and the Euler load stayed at ${n('Euler load, before and after')}: it depends on the modulus, which is the same for all steels. The link gives way at ${n('gives way at')} (before: ${n('gave way at')}).`,
        todo: 'More diameter or less length makes it hold more.',
      }
    case 'strength.sources_disagree':
      return {
        title: `Sources disagree on the strength of ${facts.material} (${facts.part})`,
        why: `Other copies print other values: ${list(facts.others)}.`,
        todo: "The mill's certificate has the last word; without it count with the least.",
      }
    case 'strength.double_ended':
      return {
        title: `Not checked against buckling: ${facts.part}`,
        why: 'The published method for cylinders (ISO/TS 13725) leaves double-ended ones out, and no other is known here.',
        todo: "Ask the maker for the push that the rod may carry at full stroke, or keep to the maker's mounting.",
      }
    case 'strength.bracket_lifts':
      return {
        title: `The bracket lifts before its bolts are loaded up: ${facts.what}`,
        why: `The pin's height pulls with ${n('pull in a bolt')} on a bolt that is tightened to ${n('preload of a bolt')}. A joint that opens works its bolts loose.`,
        todo: 'Set the rows of bolts further apart, lower the pin, or take larger bolts.',
      }
    case 'tightening.maker_differs':
      return {
        title: `The maker's torque differs from the others: ${facts.what} ${facts.size}`,
        why: `The maker asks for ${n("maker's value")}; the nearest other value is ${n('nearest other value')}.`,
        todo: "Use the maker's value, and check that it was read for this very thread and finish.",
      }
    default:
      return undefined
  }
}

function flowing(code: string, facts: Facts, shown: Shown): FindingWords | undefined {
  const n = (name: string) => shown(name) ?? 'not known'
  switch (code) {
    case 'flow.fast':
      return {
        title: `Oil runs fast in ${facts.part}`,
        why: `${n('velocity')} at the pump's full flow; the guide for a ${facts.line} line is ${n('guide for that line')}. It costs pressure and heat, and in a suction line it foams.`,
        todo: 'Take the next bore up, or accept it on a short line.',
      }
    case 'flow.tight_bend':
      return {
        title: `Bent too tightly: ${facts.part}`,
        why: `It bends to ${n('bend')}; wire-braid hose of that size takes ${n('least bend of wire-braid hose')}.`,
        todo: 'Route it wider or use an angled end.',
      }
    case 'flow.short_hose':
      return {
        title: `Too short: ${facts.part}`,
        why: `It is ${n('length of the hose')}; the longest way, with what a hose loses under pressure, needs ${n('length needed')}. It would be torn out of its ends at full lock.`,
        todo: 'Have a longer one made. Prove it by turning to both stops.',
      }
    case 'flow.swing':
      return {
        title: `The reservoir's level swings by ${n('oil that comes and goes')}`,
        why: `A single-ended ram's rod pushes that much out and takes it back: ${n('part of the reservoir')} of the reservoir.`,
        todo: facts.much
          ? 'Fill with the ram pulled in and leave room above; look that the pump draws no air with the ram out.'
          : 'Fill with the ram pulled in; look at the level with the ram out.',
      }
    default:
      return undefined
  }
}
