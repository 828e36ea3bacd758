import { column, counted, state, text } from '../cells.ts'
import { GENERAL_CAUTIONS } from '../text/index.ts'
/** The first page: what this is, how it stands, and what to be careful of before anything else. */
export function summarySection(build, plan, units, printedOn) {
  const { vehicle } = build
  const rows = [
    [text('Vehicle'), text(vehicle.name, vehicle.description ?? null)],
    [text('Build'), text(build.build.name)],
    ...(build.axle ? [[text('Axle'), text(build.axle.name)]] : []),
    ...(vehicle.tyre?.size === undefined ? [] : [[text('Tyres'), text(vehicle.tyre.size)]]),
    [text('Revision'), text(String(build.build.revision), `printed ${printedOn}, shown in ${units === 'inch' ? 'inch' : 'metric'} units`)],
    [text('How it stands'), standing(plan)],
    [text('Parts'), text(partsStanding(plan))],
  ]
  const blocks = [
    { kind: 'table', caption: 'This build', columns: [column('', 1.2), column('', 4)], rows },
    { kind: 'paragraph', text: 'Before any work:', tone: 'plain' },
    ...GENERAL_CAUTIONS.map((caution) => ({ kind: 'paragraph', text: caution, tone: 'caution' })),
  ]
  return { id: 'summary', heading: 'At a glance', blocks }
}
function standing(plan) {
  const count = (severity) => plan.findings.filter((f) => f.severity === severity).length
  const [stops, looks] = [count('stops'), count('look')]
  const looking = looks === 0 ? 'nothing else to look at' : `${counted(looks, 'more point')} to look at`
  if (stops > 0) return state('stops', `${counted(stops, 'point')} ${stops === 1 ? 'stops' : 'stop'} the build, ${looking}`)
  if (looks > 0) return state('look', `nothing found that stops the build, ${counted(looks, 'point')} to look at`)
  return state('good', 'nothing found that stops the build')
}
function partsStanding({ parts: { lines } }) {
  const states = ['to order', 'ordered', 'here', 'fitted']
  const pieces = states
    .map((s) => ({ s, n: lines.filter((l) => l.state === s).reduce((sum, l) => sum + l.quantity, 0) }))
    .filter(({ n }) => n > 0)
  return pieces.length === 0 ? 'none listed' : pieces.map(({ s, n }) => `${n} ${s}`).join(', ')
}
