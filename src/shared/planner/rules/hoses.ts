import type { Build } from '../../model/build.ts'
import type { PortEnd } from '../../model/end/types.ts'
import { inches } from '../../quantities/make.ts'
import type { Ledger } from '../ledger.ts'

/** A hose end that differs from the hose's bore by more than this share was made for another hose. Chosen: half a dash at -6. */
const SHARE = 0.15

/** Bore of a hose against the dash of its ends: a dash is the bore in sixteenths of an inch for most hoses of SAE J517. */
export function checkHoseEnds(build: Build, ledger: Ledger): void {
  build.parts.forEach((part, i) => {
    if (part.kind !== 'hose' || part.bore === undefined) return
    const bore = part.bore.si
    part.ends.forEach((end, j) => {
      const nominal = dashBore(end.connection.end)
      if (nominal === undefined || Math.abs(bore - nominal) <= SHARE * nominal) return
      ledger.add({
        code: bore < nominal ? 'hose.narrow' : 'hose.wide',
        severity: 'look',
        about: ['parts', i, 'ends', j],
        facts: { part: part.name, end: end.name, typed: end.connection.typed },
        evidence: [
          { name: 'bore of the hose', dimension: 'length', si: bore },
          { name: 'bore of that dash', dimension: 'length', si: nominal },
        ],
      })
    })
  })
}

function dashBore(end: PortEnd | { readonly kind: string }): number | undefined {
  const size = 'size' in end ? /^-(\d+)$/.exec(end.size) : null
  return size ? inches(Number(size[1]) / 16) : undefined
}

/** A hose that is clamped on a barb blows off under pressure: barbs are for return and suction lines only. */
export function checkBarbs(build: Build, ledger: Ledger): void {
  build.parts.forEach((part, i) => {
    if (part.kind !== 'hose' || part.line === 'return' || part.line === 'suction') return
    part.ends.forEach((end, j) => {
      if (end.connection.end.kind !== 'tail') return
      const known = part.line !== undefined
      ledger.add({
        code: known ? 'hose.barb_under_pressure' : 'hose.line_not_said',
        severity: known ? 'stops' : 'look',
        about: known ? ['parts', i, 'ends', j] : ['parts', i, 'line'],
        facts: { part: part.name, end: end.name, typed: end.connection.typed },
      })
    })
  })
}
