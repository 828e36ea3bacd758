import { fluidBottles, fluidOfSeveral, fluidToBuy, hoseContent } from '../formulas/hydraulics/fluid.ts'
import type { Build } from '../model/build.ts'
import { ratio } from '../quantities/make.ts'
import { chosen, entered, fromOrigin, type Known, type Ledger } from './ledger.ts'
import type { RamContent } from './ram.ts'

/** Oil lost while purging, where the build does not say: a quarter of what the system holds. Common practice, no published source. */
const PURGE = ratio(0.25)
/** What doubles may lose in adding bottles up. */
const ROUNDING = 1e-12
const VESSELS = ['pump', 'steering box', 'reservoir', 'cooler', 'filter'] as const

/** What the hydraulics hold, part by part, what to buy with the purge allowance, and in how many bottles. */
export function planFluid(build: Build, rams: readonly RamContent[], ledger: Ledger): void {
  const terms: Record<string, Known<'volume'>> = {}
  const unknown: string[] = []
  const take = (id: string, one: Known<'volume'> | undefined) => {
    const i = build.parts.findIndex((p) => p.id === id)
    const count = build.parts[i]?.quantity ?? 1
    const volume =
      one && count > 1
        ? ledger.compute(`fluid.several.${id}`, fluidOfSeveral, {
            n: fromOrigin('ratio', ratio(count), { kind: 'entered', path: ['parts', i, 'quantity'], typed: String(count) }),
            V_1: one,
          })
        : one
    if (volume) terms[id] = volume
    else unknown.push(build.parts[i]?.name ?? id)
  }
  for (const ram of rams) take(ram.part, ram.volume)
  build.parts.forEach((part, i) => {
    if (part.kind === 'hose') take(part.id, hoseVolume(build, i, ledger))
    else if (VESSELS.some((kind) => kind === part.kind)) {
      const volume = 'volume' in part ? entered('volume', part.volume, ['parts', i, 'volume']) : undefined
      if (!volume) ledger.measure('volume', ['parts', i, 'volume'], { part: part.name })
      take(part.id, volume)
    }
  })
  if (Object.keys(terms).length === 0) return

  const held = ledger.sum('fluid.held', 'volume', terms)
  const toBuy = ledger.compute('fluid.to-buy', fluidToBuy, {
    V: held,
    m: entered('ratio', build.build.purgeAllowance, ['build', 'purgeAllowance']) ?? chosen('ratio', PURGE, 'purge allowance'),
  })
  if (unknown.length > 0) {
    ledger.add({ code: 'fluid.incomplete', severity: 'look', about: ['parts'], facts: { parts: unknown }, numbers: ['fluid.held'] })
  }
  if (toBuy) planBottles(build, toBuy, ledger)
}

function hoseVolume(build: Build, i: number, ledger: Ledger): Known<'volume'> | undefined {
  const hose = build.parts[i]
  if (hose?.kind !== 'hose') return undefined
  const bore = entered('length', hose.bore, ['parts', i, 'bore'])
  const length = entered('length', hose.length, ['parts', i, 'length'])
  if (!bore) ledger.measure('hose bore', ['parts', i, 'bore'], { part: hose.name })
  if (!length) ledger.measure('hose length', ['parts', i, 'length'], { part: hose.name })
  if (!bore || !length) return undefined
  return ledger.compute(`hose.${hose.id}`, hoseContent, { d: bore, L: length })
}

/** Whole bottles, and whether as much stands in the parts list, where one fluid may stand on several lines: some here, some to order. */
function planBottles(build: Build, toBuy: Known<'volume'>, ledger: Ledger): void {
  const fluids = build.parts.flatMap((part, i) => (part.kind === 'fluid' ? [{ part, i }] : []))
  const [first] = fluids
  if (!first) {
    ledger.add({ code: 'fluid.none', severity: 'look', about: ['parts'], numbers: ['fluid.to-buy'] })
    return
  }
  for (const { part, i } of fluids) if (!part.bottle) ledger.measure('bottle', ['parts', i, 'bottle'], { part: part.name })
  const bottle = entered('volume', first.part.bottle, ['parts', first.i, 'bottle'])
  const bottles = bottle && ledger.compute('fluid.bottles', fluidBottles, { V_b: toBuy, b: bottle })
  if (!bottles) return
  const listed = fluids.reduce((n, { part }) => n + (part.quantity ?? 1), 0)
  const content = fluids.reduce((sum, { part }) => sum + (part.bottle?.si ?? 0) * (part.quantity ?? 1), 0)
  // the same allowance for rounding as in whole bottles: full to the brim is enough
  if (content * (1 + ROUNDING) >= toBuy.si) return
  ledger.add({
    code: 'fluid.too_few_bottles',
    severity: 'look',
    about: ['parts', first.i, 'quantity'],
    facts: { listed, wanted: bottles.si },
    numbers: ['fluid.bottles'],
  })
}
