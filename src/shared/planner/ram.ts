import { ramAnnulusArea, ramCapArea, ramForce, ramVolume } from '../formulas/hydraulics/ram.ts'
import type { Build } from '../model/build.ts'
import type { PartOf } from '../model/part.ts'
import { mm } from '../quantities/make.ts'
import { entered, type Known, type Ledger } from './ledger.ts'
import type { SurveyResult } from './survey.ts'

/** The volume that the ram holds at most, for the fluid; undefined where a dimension is missing. */
export type RamContent = { readonly part: string; readonly volume: Known<'volume'> | undefined }

/**
 * The ram's areas, forces both ways at relief pressure, content, and its stroke against the stroke wanted. More than one
 * ram is planned one by one; their numbers carry the part's id when there are several.
 */
export function planRams(build: Build, survey: SurveyResult | null, ledger: Ledger): readonly RamContent[] {
  const rams = build.parts.flatMap((part, i) => (part.kind === 'ram' ? [{ ram: part, i }] : []))
  const relief = reliefPressure(build, rams.length > 0, ledger)
  return rams.map(({ ram, i }) => {
    const id = (name: string) => (rams.length > 1 ? `ram.${ram.id}.${name}` : `ram.${name}`)
    checkStroke(ram, i, survey, ledger, id('stroke'))
    return { part: ram.id, volume: planRam(ram, i, relief, ledger, id) }
  })
}

/** The pressure at which the pump's relief valve opens; without it no force can be told. */
export function reliefPressure(build: Build, wanted: boolean, ledger: Ledger): Known<'pressure'> | undefined {
  const i = build.parts.findIndex((p) => p.kind === 'pump')
  const pump = build.parts[i]
  const relief = pump?.kind === 'pump' ? entered('pressure', pump.reliefPressure, ['parts', i, 'reliefPressure']) : undefined
  if (!relief && wanted) ledger.measure('relief pressure', i < 0 ? ['parts'] : ['parts', i, 'reliefPressure'])
  return relief
}

function planRam(
  ram: PartOf<'ram'>,
  i: number,
  relief: Known<'pressure'> | undefined,
  ledger: Ledger,
  id: (name: string) => string,
): Known<'volume'> | undefined {
  const bore = entered('length', ram.bore, ['parts', i, 'bore'])
  const rod = entered('length', ram.rod, ['parts', i, 'rod'])
  const stroke = entered('length', ram.stroke, ['parts', i, 'stroke'])
  for (const [what, known] of Object.entries({ bore, rod, stroke, ended: ram.ended })) {
    if (known === undefined) ledger.measure(`ram ${what}`, ['parts', i, what], { part: ram.name })
  }
  if (!bore || !rod || ram.ended === undefined) return undefined

  const annulus = ledger.compute(id('annulus-area'), ramAnnulusArea, { D: bore, d: rod })
  // a double-ended ram has the rod on both sides: it pushes and pulls on the annulus
  const push = ram.ended === 'single' ? ledger.compute(id('cap-area'), ramCapArea, { D: bore }) : annulus
  if (!annulus || !push) return undefined
  if (relief) {
    const pushes = ledger.compute(id('push'), ramForce, { p: relief, A: push })
    const pulls = ledger.compute(id('pull'), ramForce, { p: relief, A: annulus })
    if (pushes && pulls && ram.ended === 'single') {
      ledger.add({
        code: 'ram.weaker_pulling',
        severity: 'noted',
        about: ['parts', i],
        evidence: [
          { name: 'push at relief', dimension: 'force', si: pushes.si },
          { name: 'pull at relief', dimension: 'force', si: pulls.si },
        ],
        numbers: [id('push'), id('pull')],
      })
    }
  }
  return stroke && ledger.compute(id('content'), ramVolume, { A: push, s: stroke })
}

/** Stroke to be left on each side after the knuckle stop, beyond what the survey cannot tell. Chosen; common practice says "some". */
const ROOM_A_SIDE = mm(3)

/** The ram must neither bottom nor limit: its stroke against what the survey asks, with the survey's uncertainty. */
function checkStroke(ram: PartOf<'ram'>, i: number, survey: SurveyResult | null, ledger: Ledger, number: string): void {
  const wanted = survey?.stroke
  const stroke = ram.stroke
  if (!wanted || !stroke) return
  const margin = stroke.si - wanted.si
  const doubt = survey.uncertainty ?? 0
  const evidence = [
    { name: 'stroke of the ram', dimension: 'length', si: stroke.si },
    { name: 'stroke wanted', dimension: 'length', si: wanted.si },
    { name: 'left over', dimension: 'length', si: margin },
    { name: 'uncertainty of the travel', dimension: 'length', si: doubt },
    { name: 'room wanted a side', dimension: 'length', si: ROOM_A_SIDE },
  ] as const
  const finding = {
    about: ['parts', i, 'stroke'],
    evidence,
    numbers: ['survey.stroke', number].filter((n) => ledger.numbers.some((x) => x.id === n)),
  }
  if (margin < -doubt) ledger.add({ code: 'ram.stroke_short', severity: 'stops', ...finding })
  else if (margin <= doubt + 2 * ROOM_A_SIDE) ledger.add({ code: 'ram.stroke_no_room', severity: 'look', ...finding })
  else ledger.add({ code: 'ram.stroke_enough', severity: 'noted', ...finding })
}
