import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { FORMULAS } from '../../src/shared/formulas/index.ts'
import { readBuild } from '../../src/shared/model/exchange.ts'
import { comparePlans } from '../../src/shared/planner/compare.ts'
import { plan } from '../../src/shared/planner/index.ts'
import { STANDARD_RAMS } from '../../src/shared/planner/ram-choice/candidates.ts'
import { type RamNeeds, rankRams } from '../../src/shared/planner/ram-choice/rank.ts'
import { sensitivities } from '../../src/shared/planner/sensitivity.ts'
import { parseQuantity } from '../../src/shared/quantities/parse.ts'
import { middleOf, ms } from './measure.ts'

const CANDIDATES = 500
const CALLS = 20_000

const NEEDS: RamNeeds = {
  relief: 10e6,
  efficiency: 0.9,
  points: Array.from({ length: 61 }, (_, n) => ({
    demandLeft: 8000 + 20 * Math.abs(n - 30),
    demandRight: 8200 + 20 * Math.abs(n - 30),
    share: 0.98,
    sign: 1,
    box: 1500,
  })),
  rockFactor: 1.5,
  way: 0.2,
  room: 0.006,
  dead: 0.16,
  place: { shortest: 0.4, longest: 0.6, shiftLow: -0.4, shiftHigh: 0.5 },
  flow: 1.5e-4,
  boxVolume: 1e-4,
  slowest: 6,
  rodWanted: 3.5,
  body: { overStroke: 0.1, overBore: 0.01 },
  tieRod: { e: 0.06, a: 0.6, L: 1.4, A: 6.3e-4, I: 8.3e-8, Z: 4.36e-6, E: 200e9, S_y: 480e6, box: 8000, wanted: 1.5 },
}

/** Ranking 500 rams, the whole plan with forces, what-if, sensitivities, and calls a second of every card. */
export async function bench(): Promise<readonly string[]> {
  const rams = Array.from({ length: CANDIDATES }, (_, n) => STANDARD_RAMS[n % STANDARD_RAMS.length]).filter((r) => r !== undefined)
  const ranking = await middleOf(100, () => rankRams(rams, NEEDS))
  const read = readBuild(readFileSync(join(import.meta.dirname, '../../src/main/procedures/demo/corrected.json'), 'utf8'))
  if (!read.ok) throw new Error('the demo file is faulty')
  const planning = await middleOf(100, () => plan(read.value.build), 20)
  const planned = plan(read.value.build)
  const margins = planned.numbers.filter((n) => n.id.startsWith('margin.')).map((n) => n.id)
  const moving = await middleOf(100, () => sensitivities(planned.numbers, margins), 20)
  const comparing = await middleOf(50, () => comparePlans(planned, plan(read.value.build)))
  return [
    `ranking ${CANDIDATES} rams: ${ms(ranking)} (wanted: under 100 ms)`,
    `plan of the corrected demo, forces and all, warm: ${ms(planning)} (wanted: under 20 ms)`,
    `of which ${margins.length} margins with the inputs that move them: ${ms(moving)}`,
    `what-if, plan anew and compare: ${ms(comparing)}`,
    ...cards(),
  ]
}

/** Calls a second of each card on its own first example: all in a line, the slowest by name. */
function cards(): readonly string[] {
  const rates = FORMULAS.map((card) => {
    const given = card.examples[0]?.given ?? {}
    const inputs: Record<string, number> = {}
    for (const [symbol, typed] of Object.entries(given)) {
      const value = parseQuantity(typed, card.symbols[symbol]?.dimension ?? 'ratio')
      if (value.ok) inputs[symbol] = value.value.si
    }
    for (let n = 0; n < 200; n++) card.compute(inputs as never)
    const calls = card.procedure ? CALLS / 100 : CALLS
    const start = performance.now()
    for (let n = 0; n < calls; n++) card.compute(inputs as never)
    return { id: card.id, rate: calls / ((performance.now() - start) / 1000) }
  }).sort((a, b) => a.rate - b.rate)
  const said = (rate: number) => (rate >= 1e6 ? `${(rate / 1e6).toPrecision(3)} million` : Math.round(rate).toLocaleString('en'))
  return [
    `cards, calls a second: middle of ${rates.length} ${said(rates[Math.floor(rates.length / 2)]?.rate ?? 0)}`,
    ...rates.map(({ id, rate }) => `  ${id}: ${said(rate)}`),
  ]
}
