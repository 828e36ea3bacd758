import type { DemandPlan, RamCandidate, RamLoss, SpeedLine } from '../../planner/forces-types.ts'
import type { Plan } from '../../planner/plan.ts'
import { column, state, strong, text } from '../cells.ts'
import type { Block, DocumentCell, NumberText, Section } from '../document.ts'
import { forceCurves } from '../drawings/curves-force.ts'
import { routeWords } from '../text/forces.ts'
import type { Show, UnitSystem } from '../units.ts'

/** Demand against supply, how fast, and which ram; null where nothing of it is known. */
export function forcesSection({ forces }: Plan, numbers: readonly NumberText[], units: UnitSystem, show: Show): Section | null {
  const { demand, speed, candidates } = forces
  if (!demand && speed.length === 0 && !candidates) return null
  const blocks: Block[] = [...(demand ? demandBlocks(demand, units, show) : [])]
  if (speed.length > 0) blocks.push(speedTable(speed, show))
  if (candidates && candidates.length > 0) blocks.push(...ramBlocks(candidates, show))
  if (numbers.length > 0) blocks.push({ kind: 'numbers', items: numbers })
  return { id: 'forces', heading: 'Will it steer', blocks }
}

function demandBlocks({ routes, used, chosenByUser, curve, worst }: DemandPlan, units: UnitSystem, show: Show): Block[] {
  const blocks: Block[] = [
    {
      kind: 'table',
      caption: 'Torque about the kingpins, standing, by the published ways',
      columns: [column('Way', 4), column('One wheel', 1.3, 'right'), column('Both wheels', 1.3, 'right'), column('', 1.6)],
      rows: routes.map((r) => [
        text(routeWords(r.route)),
        text(show(r.perWheel, 'torque')),
        text(show(r.bothWheels, 'torque')),
        r.route === used ? state('good', chosenByUser ? 'used, as chosen' : 'used') : text(''),
      ]),
    },
  ]
  if (!curve) return blocks
  for (const turn of ['left', 'right'] as const) {
    const drawing = forceCurves(curve, worst, turn, units)
    blocks.push({
      kind: 'figure',
      drawing,
      caption: `Turning ${turn}: dashed what is asked for, full what there is, over the travel of the tie rod; the circle is the hardest place.`,
    })
  }
  return blocks
}

const known = (value: number | null, show: Show, dimension: Parameters<Show>[1]): DocumentCell =>
  text(value === null ? 'not known' : show(value, dimension))

function speedTable(speed: readonly SpeedLine[], show: Show): Block {
  return {
    kind: 'table',
    caption: 'Speed and heat',
    columns: [
      column('Engine', 1),
      column('Flow', 1.3, 'right'),
      column('Stop to stop, left', 1.4, 'right'),
      column('Stop to stop, right', 1.4, 'right'),
      column('Hand wheel before it goes heavy', 1.8, 'right'),
      column('Heat while a stop is held', 1.5, 'right'),
    ],
    rows: speed.map((s) => [
      text(`at ${s.at}`),
      text(show(s.flow, 'flow')),
      known(s.timeLeft, show, 'time'),
      known(s.timeRight, show, 'time'),
      known(s.handWheel, show, 'angularSpeed'),
      known(s.heat, show, 'power'),
    ]),
  }
}

const LOSSES: Readonly<Record<RamLoss, string>> = {
  weak: 'too weak standing',
  'weak in rock': 'too weak in rock',
  'short stroke': 'ends the travel before the stop',
  'too long': 'no place between the brackets',
  slow: 'too slow at idle',
  'rod buckles': 'buckles when it pushes fully out',
  'tie rod': 'too much for the tie rod',
}

function verdictOnRam({ smallest, own, lost }: RamCandidate): DocumentCell {
  const lead = own ? 'in the build: ' : ''
  if (smallest) return state('good', `${lead}smallest that passes`)
  return lost.length === 0 ? state('noted', `${lead}passes`) : state('look', `${lead}${lost.map((l) => LOSSES[l]).join('; ')}`)
}

function sizesOf({ bore, rod, stroke, ended, smallest, own }: RamCandidate): DocumentCell {
  const sizes = `${bore} × ${rod} × ${stroke}`
  return smallest || own ? { ...strong(sizes), second: `${ended}-ended` } : text(sizes, `${ended}-ended`)
}

function ramBlocks(candidates: readonly RamCandidate[], show: Show): Block[] {
  const own = candidates.filter((c) => c.own)
  const rows = [...own, ...candidates.filter((c) => !c.own)].map((c): DocumentCell[] => [
    verdictOnRam(c),
    sizesOf(c),
    text(show(c.push, 'force'), show(c.pull, 'force')),
    known(c.margin, show, 'ratio'),
    known(c.strokeOver, show, 'length'),
    known(c.time, show, 'time'),
    known(c.rodFactor, show, 'ratio'),
    known(c.tieRodFactor, show, 'ratio'),
  ])
  return [
    {
      kind: 'table',
      caption: own.length > 0 ? 'The ram of the build, then standard rams, best first' : 'Standard rams, best first',
      columns: [
        column('', 2.2),
        column('Bore × rod × stroke', 1.9),
        column('Push, pull', 1.3, 'right'),
        column('Force, times over', 1, 'right'),
        column('Stroke over', 1, 'right'),
        column('Stop to stop, idle', 1, 'right'),
        column('Buckling, times over', 1.1, 'right'),
        column('Tie rod, times over', 1, 'right'),
      ],
      rows,
    },
    {
      kind: 'paragraph',
      tone: 'quiet',
      text: 'Of each bore the smallest ram that passes is listed, and of those that lost the ones next to it, one for each reason. Strokes longer than the next two above what is needed are left out: they never win. Bores and rods of the standards are from memory; ask the seller.',
    },
  ]
}
