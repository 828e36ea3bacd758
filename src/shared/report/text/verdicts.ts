import type { PORT_FAMILIES } from '../../model/end/types.ts'
import type { Reason, Verdict, VerdictKind } from '../../planner/fit/verdict.ts'
import type { State } from '../document.ts'
import type { Show } from '../units.ts'

const STATE: Readonly<Record<VerdictKind, State>> = {
  fits: 'good',
  'fits if': 'noted',
  'does not fit': 'stops',
  'goes together and is wrong': 'stops',
  'not known': 'unknown',
}

const WORD: Readonly<Record<VerdictKind, string>> = {
  fits: 'fits',
  'fits if': 'fits, on a condition',
  'does not fit': 'does not fit',
  'goes together and is wrong': 'goes together and is wrong',
  'not known': 'not known yet',
}

export const FAMILY_WORDS: Readonly<Record<(typeof PORT_FAMILIES)[number], string>> = {
  'flare 37': '37° flare',
  'o-ring boss': 'O-ring boss',
  'flare 45': '45° flare',
  'inverted flare': 'inverted flare',
  'face seal': 'O-ring face seal',
  'iso 6149': 'ISO 6149 port',
  'iso 9974': 'ISO 9974 flat-face port',
  'iso 1179': 'ISO 1179 flat-face port',
  'cone 24 light': '24° cone, light series',
  'cone 24 heavy': '24° cone, heavy series',
  'bsp cone 60': '60° cone on a G thread',
  banjo: 'banjo',
  'tube o-ring': 'tube nut with O-ring',
}
const family = (f: unknown): string => FAMILY_WORDS[f as (typeof PORT_FAMILIES)[number]] ?? String(f)

/** "an O-ring boss", "a 37° flare" */
const article = (noun: string): string => `${/^[aeiou]/i.test(noun) ? 'an' : 'a'} ${noun}`

export interface VerdictWords {
  readonly word: string
  readonly state: State
  readonly reasons: readonly string[]
  readonly conditions: readonly string[]
  readonly measure: readonly string[]
}

/** A verdict in words: state, reasons with their numbers, conditions and what to measure. */
export function verdictWords(verdict: Verdict, show: Show): VerdictWords {
  return {
    word: WORD[verdict.kind],
    state: STATE[verdict.kind],
    reasons: verdict.reasons.map((r) => reasonWords(r, show)),
    conditions: verdict.conditions.map((c) => CONDITIONS[c] ?? c),
    measure: [...verdict.measure],
  }
}

const CONDITIONS: Readonly<Record<string, string>> = {
  sealant: 'sealant for oil and pressure on the male thread, none on the first two turns',
  'bonded washer': 'a bonded washer or profile ring between shoulder and flat face',
  'crush washers': 'a new crush washer on each side of the eye',
  'jam nut': 'a jam nut, locked after setting',
  'castle nut and cotter': 'a castle nut with a new cotter pin, or a new prevailing-torque nut where the maker uses one',
  'lock nut': 'a bolt of the right class with a new lock nut',
  weld: 'welded by a qualified welder and inspected; local rules may forbid welded steering parts',
  'hose clamp': 'a hose clamp, on return and suction lines only',
  'pinch bolt': 'its pinch bolt, or the nut of a sector shaft, at its torque, the master splines in line',
}

function reasonWords({ code, facts, evidence }: Reason, show: Show): string {
  const n = (name: string): string => {
    const found = evidence.find((e) => e.name === name)
    return found ? show(found.si, found.dimension) : '?'
  }
  const turns =
    typeof facts.turns !== 'number'
      ? 'any number of turns'
      : facts.turns < 1
        ? 'less than one turn'
        : facts.turns < 1.5
          ? 'about one turn'
          : `about ${Math.round(facts.turns)} turns`
  switch (code) {
    case 'thread.same':
      return `both are ${facts.thread}${facts.hand === 'left' ? ' left-hand' : ''}`
    case 'thread.same_sex':
      return `both are ${facts.sex} threads`
    case 'thread.hand':
      return 'one is a left-hand thread, the other right-hand: they cannot start on each other'
    case 'thread.does_not_start':
      return `${facts.male} is too big to start in ${facts.female}`
    case 'thread.falls_through':
      return `${facts.male} is too small for ${facts.female}: it drops in, or wobbles on the tips of the thread and holds nothing`
    case 'thread.binds':
      return `${facts.male} in ${facts.female} binds after ${turns}: pitches ${n('pitch, male')} and ${n('pitch, female')} drift ${n('pitch drift over 10 mm')} apart over ${show(0.01, 'length')}`
    case 'thread.slides':
      return `${facts.male} turns into ${facts.female} for ${turns} and feels right, but bears on a part of its flanks only and strips or weeps under load`
    case 'thread.short_engagement':
      return `only ${n('engagement')} of thread is engaged where ${n('engagement wanted')} is wanted in ${facts.material}`
    case 'pipe.dryseal':
      return 'both are the dryseal form and seal on their threads'
    case 'pipe.taper_seals_with_sealant':
      return 'a taper thread seals on its flanks with sealant'
    case 'pipe.parallel_needs_washer':
      return 'a parallel G thread does not seal on its thread: a washer under the shoulder does'
    case 'pipe.does_not_seal':
      return `${facts.male} screws into ${facts.female}, but neither the threads nor a face seal`
    case 'pipe.wrong_pair':
      return `${facts.male} does not belong in ${facts.female}`
    case 'port.same':
      return `both are ${family(facts.male)} ${facts.maleSize}`
    case 'port.same_sex':
      return `both are ${facts.sex}: a union or another hose end is needed`
    case 'port.other_seal':
      return `${family(facts.male)} and ${family(facts.female)} seal in different ways`
    case 'port.same_thread_other_seal':
      return facts.male === facts.female
        ? `the thread ${facts.thread} is the same, but the sizes ${facts.maleSize} and ${facts.femaleSize} are not`
        : `the thread ${facts.thread} is the same and screws together, but a ${family(facts.male)} has nothing to seal on in ${article(family(facts.female))}`
    case 'port.banjo_on_flat_face':
      return `the banjo's washers have the flat face they need on the ${family(facts.female)}`
    case 'port.no_seal':
      return `the thread ${facts.thread} is the same, but a plain thread brings no seal to ${article(family(facts.family))}`
    case 'port.washer_under_shoulder':
      return `a washer under the shoulder seals on the flat face of the ${family(facts.family)}`
    case 'taper.same':
      return `same taper; the shoulder stands ${n('stand-off of the shoulder')} off the arm, inside ${n('stand-off wanted at least')} to ${n('stand-off wanted at most')}; ${n('bore error')} of error in the bore moves it by ${n('moves the shoulder by')}`
    case 'taper.same_sex':
      return `both are ${facts.sex === 'male' ? 'studs' : 'holes'}`
    case 'taper.rates_differ':
      return `stud taper ${rate(evidence, 'taper of the stud')}, hole taper ${rate(evidence, 'taper of the hole')}: it touches at the ${facts.contactsAt} only and leaves ${n('gap at the other end')} of play on diameter over ${n('length compared')}${facts.assumedLength ? ' of length' : ''}; drawn up, it feels tight, works loose and breaks the stud`
    case 'taper.shoulder_bottoms':
      return 'the shoulder meets the arm before the taper is tight'
    case 'taper.sits_too_deep':
      return `the shoulder stands only ${n('stand-off of the shoulder')} off the arm; ${n('stand-off wanted at least')} is wanted: the hole is worn or reamed too big`
    case 'taper.sits_too_high':
      return `the shoulder stands ${n('stand-off of the shoulder')} off the arm; ${n('stand-off wanted at most')} is the most: the hole is too small for this stud`
    case 'taper.bore_beyond_cone':
      return `the arm is ${n('thickness of the arm')} thick and reaches beyond the stud's cone of ${n('length of the cone')}`
    case 'round.same_sex':
      return `a ${facts.a} does not hold a ${facts.b}`
    case 'clamp.same':
      return `clamp bore ${n('bore of the clamp')}, tube ${n('outside diameter of the tube')}`
    case 'clamp.too_small':
      return `the clamp's bore of ${n('bore of the clamp')} does not go over the tube of ${n('outside diameter of the tube')}`
    case 'clamp.too_big':
      return `the clamp's bore of ${n('bore of the clamp')} does not close on the tube of ${n('outside diameter of the tube')}`
    case 'clamp.narrow':
      return `the clamp is only ${n('width of the clamp')} wide on a tube of ${n('outside diameter of the tube')}: it turns and slips`
    case 'clamp.thin_wall':
      return `the tube's wall of ${n('wall of the tube')} is too thin under a clamp: it is crushed before it holds`
    case 'bolt.tilt':
      return `the joint tilts ${n('tilt over the travel')} over the travel; the rod end is made for ${n('tilt of the rod end')}: it binds and bends its shank`
    case 'cotter.above_slots':
      return `the middle of the cotter hole stands ${n('middle of the cotter hole above the arm')} above the arm, over the top of the ${facts.nut} nut at ${n('top of the nut')}: the taper sits too deep, or a washer is missing`
    case 'cotter.below_slots':
      return `the lower edge of the cotter hole stands ${n('lower edge of the cotter hole above the arm')} above the arm, under the slots of the ${facts.nut} nut at ${n('floor of the slots')}: the nut covers it`
    case 'bolt.same':
      return `bolt ${n('diameter of the bolt')} in bore ${n('diameter of the bore')}`
    case 'bolt.too_big':
      return `a bolt of ${n('diameter of the bolt')} does not go into a bore of ${n('diameter of the bore')}`
    case 'bolt.too_small':
      return `a bolt of ${n('diameter of the bolt')} is far too thin for a bore of ${n('diameter of the bore')}`
    case 'bolt.play':
      return `a bolt of ${n('diameter of the bolt')} has ${n('play')} of play in a bore of ${n('diameter of the bore')}: it hammers the hole oval`
    case 'spline.same':
      return `both have ${facts.a} splines`
    case 'spline.same_sex':
      return `both are ${facts.sex === 'male' ? 'shafts' : 'hubs'}`
    case 'spline.count':
      return `${facts.a} splines and ${facts.b} splines`
    case 'spline.diameter':
      return `the same ${facts.a} splines, but ${n('diameter over the splines')} and ${n('the other')} across`
    case 'tail.same':
      return 'hose and barb are of one nominal bore'
    case 'tail.same_sex':
      return facts.form === 'hose' ? 'two hoses: a barb goes between' : 'two barbs: a hose goes between'
    case 'tail.bore':
      return `bores of ${n('one')} and ${n('the other')}`
    case 'weld':
      return 'a place made to be welded'
    case 'kinds':
      return `a ${facts.a} end and a ${facts.b} end have no way of holding each other`
    default:
      return code
  }
}

function rate(evidence: Reason['evidence'], name: string): string {
  const k = evidence.find((e) => e.name === name)?.si
  return k === undefined ? '?' : taperRate(k)
}

/** "1:8 (1.5 in/ft)": a taper's rate in both ways the trade writes it. */
export function taperRate(k: number): string {
  const trim = (v: number, digits: number) => String(Number(v.toFixed(digits)))
  return `1:${trim(1 / k, 2)} (${trim(k * 12, 3)} in/ft)`
}
