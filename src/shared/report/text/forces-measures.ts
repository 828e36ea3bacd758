import type { Finding } from '../../planner/plan.ts'
import type { FindingWords } from './findings.ts'

type Facts = Finding['facts']

const missing = ({ missing: what }: Facts): string => (Array.isArray(what) ? what.join(', ') : 'some of it')

/** What the sums on forces need and do not have, why it matters, and how it is found. */
export const FORCES_MEASURES: Readonly<Record<string, (facts: Facts) => FindingWords>> = {
  'demand inputs': (f) => ({
    title: `Measure: what the tyres ask for (${missing(f)})`,
    why: 'Each of the published ways needs some of it; without any of them nobody knows whether the ram is strong enough.',
    todo: 'Weigh the front axle loaded; read the tyre pressure; chalk the print on the floor; kingpin line and middle of the print on the ground.',
  }),
  'tyre size': ({ typed }) => ({
    title: `Not understood: the tyre size ${typed}`,
    why: 'The width of the print follows from it where nobody measured it.',
    todo: 'Write it as it stands on the tyre: 36x12.50R17 or LT315/75R16.',
  }),
  'print width': () => ({
    title: 'Measure: the width of the tyre print',
    why: 'Until then it is taken as 0.775 of the section width: common practice, no published source.',
    todo: 'Chalk the tread, let it down on card at its working pressure, and measure across the print.',
  }),
  'sector rating': () => ({
    title: 'Look up: what the sector shaft may carry',
    why: 'Without it the load on the shaft can be told, not judged.',
    todo: "Ask the box's maker for the greatest output torque.",
  }),
  'inside of the box': () => ({
    title: 'Look up: piston and sector of the steering box',
    why: 'Ram and box work under one pressure and share the load as their forces; the share of the box follows from its piston and sector.',
    todo: "Ask the maker, or measure a dismantled one: bore of the piston, and the sector's radius to the middle of its teeth.",
  }),
  'hand effort': (f) => ({
    title: `Measure: what the hands are left with after a burst hose (${missing(f)})`,
    why: 'The mechanical link must do without oil; how hard that is should be known before.',
    todo: 'Diameter of the hand wheel; turns and sweep of the box; places of pitman arm and drag link.',
  }),
  'pump flow': (f) => ({
    title: `Look up: the flow of ${f.part} (${missing(f)})`,
    why: 'Without it nobody knows how fast it steers.',
    todo: "Take it from the maker's data, or give displacement, pulley ratio, efficiency and engine speed.",
  }),
  'tube material': ({ part, given }) => ({
    title: given === null ? `Look up: the material of ${part}` : `Not in the table of tube materials: ${given} (${part})`,
    why: 'The strength of a tube follows from grade and condition; 4130 normalised alone can mean 50 or 75 ksi.',
    todo: "Take the row of the table that the mill's certificate names.",
  }),
  'weld material': ({ part }) => ({
    title: `Look up: the strength beside the weld of the ${part}`,
    why: 'Welding takes the cold work out of drawn tube: beside the bung the normalised or hot-rolled value counts.',
    todo: 'Choose the normalised row of the same grade.',
  }),
  'link strength': (f) => ({
    title: `Measure: ${f.part} (${missing(f)})`,
    why: 'Whether it buckles cannot be told without it.',
    todo: 'Outside diameter and wall with a calliper; length from ball to ball; the ram and the relief pressure for the load.',
  }),
  'rod end yield': () => ({
    title: 'Look up: the yield strength of the rod ends',
    why: 'The core of their shank carries the whole load of the link.',
    todo: "Ask the maker; without it the thread's core cannot be judged.",
  }),
  'ram column': (f) => ({
    title: `Measure: ${f.part} (${missing(f)})`,
    why: 'A ram fully out is a column of two thicknesses; whether it buckles cannot be told without them.',
    todo: 'Length of the body from pin to gland, its outside diameter, closed length and stroke.',
  }),
  'bolt strength': ({ what, thread, grade, knownThread }) => ({
    title: knownThread ? `Look up: the grade of ${what}` : `Not understood: the thread ${thread} of ${what}`,
    why: `${knownThread ? `Grade ${grade ?? 'not said'} has no row for this size.` : 'A bolt is named by its thread.'} Preload and strength follow from both.`,
    todo: 'Read the marks on the head: lines for an inch grade, 8.8 or 10.9 for a metric class; thread as 1/2-13 or M12x1.75.',
  }),
  'bolt finish': ({ what }) => ({
    title: `Look: whether ${what} are plain, zinc-plated, cadmium-plated or oiled`,
    why: 'The torque for a preload depends on it: published factors go from 0.15 to 0.30.',
    todo: 'Write it into the bolts.',
  }),
  'bracket bolts': (f) => ({
    title: `Measure: ${f.what} (${missing(f)})`,
    why: "The ram's whole force goes through them.",
    todo: 'Count bolts and sheared planes; measure from the bolted face to the pin, and between the rows along the pull.',
  }),
  'clamp bolts': (f) => ({
    title: `Measure: ${f.what} (${missing(f)})`,
    why: 'A clamp that slips lets the ram push past the tie rod.',
    todo: 'Count the bolts, and enter ram and relief pressure.',
  }),
  'ball stud': (f) => ({
    title: `Measure: the ball studs (${missing(f)})`,
    why: "The stud bends under the tie rod's force, most at the root of its cone.",
    todo: 'Calliper at the root of the cone, and from there to the middle of the ball; ask the maker for the yield strength.',
  }),
  'steering arm': (f) => ({
    title: `Measure: the steering arms (${missing(f)})`,
    why: 'The arm of a blocked wheel carries the whole force.',
    todo: 'Thickness and width where the arm leaves the knuckle, and from there to the joint.',
  }),
  oil: (f) => ({
    title: `Look up: the oil (${missing(f)})`,
    why: 'Cold oil is the design case: at -10 °C it can be 25 times as thick as at 40 °C.',
    todo: "Viscosity at 40 and 100 °C stand in the oil's data sheet; the grade gives them nearly.",
  }),
  'hose line': ({ part }) => ({
    title: `Say what ${part} is: pressure, return, suction or ram`,
    why: 'How fast oil may run depends on it.',
    todo: 'Write it into the hose.',
  }),
}

/** What the program set where nobody typed it. */
export const FORCES_CHOICES: Readonly<Record<string, string>> = {
  'friction bound': '0.7, the upper bound of the published sheets, rubber on dry concrete',
  'print share': '0.775 of the section width; common practice (75 to 80 %), no published source',
  'ram efficiency': '90 % left after seals and back pressure; common practice (90 to 95 %), no published source',
  'box efficiency': '90 % left after seals and friction; common practice, no published source',
  'gear efficiency': '70 % through worm and sector without pressure; common practice, no published source',
  'rock factor': '1.5 times the standing force; common practice (1.25 to 1.5), no published source',
  'hand force': '300 N at the rim; common practice, no published source',
  'wheel goes out': 'the wheel goes away from straight ahead, so that the vehicle is lifted',
  'wheel comes back': 'the wheel comes back, so that the vehicle sinks',
  pinned: 'ball joints at both ends: pinned',
  solid: 'a solid rod has no hole',
  'steel modulus': '210 GPa, as on the cylinder maker’s page on buckling',
  'preload share': '75 % of the proof load, for joints that are taken apart again',
  'clamp friction': '0.12, steel on oily steel; common practice, no published source',
  'hose end': '1.5 velocity heads for one end with its bend; common practice, no published source',
  'two ends': 'a hose has two ends',
  'smooth hose': 'a hose is smooth inside',
  'hose shortens': 'by up to 4 % under pressure, SAE J517; from memory',
  'oil density': '860 kg/m³, steering fluid; from memory',
  'hot oil': '80 °C, a system with a cooler; common practice, no published source',
  'of the data sheet': 'the temperature at which data sheets give viscosity',
}
