import type { Build } from '../../model/build.ts'
import type { FlowLine, FlowLoss, Sensitivity, StrengthLine, TighteningLine, TorqueValue } from '../../planner/forces-types.ts'
import type { Plan } from '../../planner/plan.ts'
import { capital, column, state, text } from '../cells.ts'
import type { Block, DocumentCell, NumberText, Section } from '../document.ts'
import { movedTexts } from '../moved-by.ts'
import { modeWords } from '../text/forces.ts'
import { FAMILY_WORDS, labelOf } from '../text/index.ts'
import type { Show } from '../units.ts'
import { BLOCK_WORDS } from '../words.ts'

/** How many times over each part holds and what counts most; null where nothing of it is known. */
export function strengthSection(build: Build, { forces }: Plan, numbers: readonly NumberText[], show: Show): Section | null {
  if (forces.strength.length === 0 && forces.sensitivities.length === 0) return null
  const lines = [...forces.strength].sort((a, b) => a.factor - b.factor)
  const blocks: Block[] = []
  if (lines.length > 0) {
    blocks.push(
      {
        kind: 'paragraph',
        text: 'With one wheel blocked, the ram at relief pressure on its greater side and the box helping: how many times the load may grow before a part gives way. The first line gives way first.',
      },
      {
        kind: 'table',
        caption: 'What holds how often over',
        columns: [
          column('', 1.2),
          column('Part', 1.4),
          column('What it does then', 2.8),
          column('Times over', 1, 'right'),
          column('Wanted', 1, 'right'),
        ],
        rows: lines.map((l) => strengthRow(l, show)),
      },
    )
  }
  if (forces.sensitivities.length > 0) blocks.push(sensitivityTable(build, forces.sensitivities, show))
  if (numbers.length > 0) blocks.push({ kind: 'numbers', items: numbers })
  return { id: 'strength', heading: 'Will it hold', blocks }
}

function strengthRow(l: StrengthLine, show: Show): DocumentCell[] {
  const verdict =
    l.factor < 1 ? state('stops', 'gives way') : l.factor < l.wanted ? state('look', 'little to spare') : state('good', 'holds')
  return [verdict, text(capital(l.part)), text(modeWords(l.mode)), text(show(l.factor, 'ratio')), text(show(l.wanted, 'ratio'))]
}

/** The inputs that move each margin most, with what a tenth more and a tenth less of each does to it. */
function sensitivityTable(build: Build, all: readonly Sensitivity[], show: Show): Block {
  const [input, value, more, less] = BLOCK_WORDS.movedColumns
  return {
    kind: 'table',
    caption: 'What moves each margin most: the input 10 % greater, and 10 % smaller',
    columns: [column('Margin', 2.2), column(input, 3), column(value, 1.3, 'right'), column(more, 1, 'right'), column(less, 1, 'right')],
    rows: all.flatMap((one) =>
      movedTexts(build, one, show).map(({ name, value, greater, smaller }, n): DocumentCell[] => [
        text(n === 0 ? labelOf(one.margin) : ''),
        ...[name, value, greater, smaller].map((words) => text(words)),
      ]),
    ),
  }
}

/** Oil in every hose, cold and hot; null without one. */
export function flowSection({ forces }: Plan, numbers: readonly NumberText[], show: Show): Section | null {
  if (forces.flow.length === 0 && numbers.length === 0) return null
  const blocks: Block[] = []
  if (forces.flow.length > 0) {
    blocks.push({
      kind: 'table',
      caption: "Hoses at the pump's full flow",
      columns: [
        column('Hose', 2.2),
        column('Flow', 1.1, 'right'),
        column('Velocity', 1.1, 'right'),
        column('Guide', 1, 'right'),
        column('Lost, cold', 1.5, 'right'),
        column('Lost, hot', 1.5, 'right'),
      ],
      rows: forces.flow.map((f) => flowRow(f, show)),
    })
  }
  if (numbers.length > 0) blocks.push({ kind: 'numbers', items: numbers })
  return { id: 'flow', heading: 'Hoses and oil flow', blocks }
}

function flowRow(f: FlowLine, show: Show): DocumentCell[] {
  const loss = (l: FlowLoss | null): DocumentCell =>
    l === null
      ? text('not known')
      : text(show(l.drop, 'pressure'), l.regime === 'between' ? 'between laminar and turbulent: not sure' : l.regime)
  return [
    text(f.name, f.line),
    text(show(f.flow, 'flow')),
    f.velocity > f.velocityMost ? state('look', show(f.velocity, 'speed')) : text(show(f.velocity, 'speed')),
    text(show(f.velocityMost, 'speed')),
    loss(f.cold),
    loss(f.hot),
  ]
}

/** The maker's torque first, then every other published or computed one; null where nothing is to be tightened. */
export function tighteningBlocks({ forces }: Plan, show: Show): readonly Block[] {
  if (forces.tightening.length === 0) return []
  return [
    {
      kind: 'table',
      caption: 'Torque values side by side: the maker first, published series and computed values for comparison',
      columns: [column('What', 2), column('Maker', 1.2, 'right'), column('Others', 3.4), column('Maker less nearest other', 1.4, 'right')],
      rows: forces.tightening.map((t) => tighteningRow(t, show)),
    },
    {
      kind: 'paragraph',
      tone: 'quiet',
      text: 'The two conventions for the nut factor K differ by half for plain bolts: a torque is worth what its K is worth, and preload scatters by 25 to 30 % besides. The two series for O-ring bosses differ about two times; the low one is for adjustable ends and wherever the other is not called for (common practice).',
    },
  ]
}

function tighteningRow(t: TighteningLine, show: Show): DocumentCell[] {
  const family = FAMILY_WORDS[t.what as keyof typeof FAMILY_WORDS]
  const turn = t.turnOn === null ? null : `then on to the next slot, at most ${show(t.turnOn, 'angle')}; never back`
  const others = t.values.map((v) => valueWords(v, show)).join('; ')
  return [
    text(capital(`${family ?? t.what}${t.size === '' ? '' : ` ${t.size}`}`), t.joints.length > 1 ? `${t.joints.length} joints` : null),
    text(t.maker === null ? 'not known' : show(t.maker, 'torque')),
    text(others || 'no published value here: ask the maker', turn),
    text(t.difference === null ? '–' : t.difference === 0 ? 'within' : show(t.difference, 'torque')),
  ]
}

function valueWords({ low, high, from }: TorqueValue, show: Show): string {
  const value = low === high ? show(low, 'torque') : `${show(low, 'torque')} to ${show(high, 'torque')}`
  return 'table' in from ? `${value} (${from.row})` : `${value} (K = ${from.k}, ${from.convention})`
}
