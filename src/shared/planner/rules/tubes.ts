import type { Build } from '../../model/build.ts'
import type { PartOf } from '../../model/part.ts'
import { mm } from '../../quantities/make.ts'
import type { Ledger } from '../ledger.ts'
import { checkEngagement } from './engagement.ts'

/** Two figures of one diameter that differ by more than this contradict each other. Chosen: more than a tube's own tolerance. */
const SAME = mm(0.5)

/** What a tube's own figures say of each other: wall against diameter, its end against its diameter, its threads against its bore. */
export function checkTubes(build: Build, ledger: Ledger): void {
  build.parts.forEach((part, i) => {
    if (part.kind !== 'tube') return
    checkDiameter(part, i, ledger)
    checkBore(part, i, ledger)
  })
  checkEngagement(build, ledger)
}

function checkDiameter(tube: PartOf<'tube'>, i: number, ledger: Ledger): void {
  const outside = tube.outsideDiameter?.si
  if (outside === undefined) return
  tube.ends.forEach((end, j) => {
    const { end: meant } = end.connection
    if (meant.kind !== 'round' || meant.form !== 'tube' || meant.diameter === null || Math.abs(meant.diameter - outside) <= SAME) return
    ledger.add({
      code: 'tube.two_diameters',
      severity: 'stops',
      about: ['parts', i, 'ends', j],
      facts: { part: tube.name, end: end.name },
      evidence: [
        { name: 'outside diameter of the part', dimension: 'length', si: outside },
        { name: 'diameter at its end', dimension: 'length', si: meant.diameter },
      ],
    })
  })
}

function checkBore(tube: PartOf<'tube'>, i: number, ledger: Ledger): void {
  const [outside, wall] = [tube.outsideDiameter?.si, tube.wall?.si]
  if (outside === undefined || wall === undefined) return
  const bore = outside - 2 * wall
  if (bore <= 0) {
    ledger.add({
      code: 'tube.impossible',
      severity: 'stops',
      about: ['parts', i, 'wall'],
      facts: { part: tube.name },
      evidence: [
        { name: 'outside diameter', dimension: 'length', si: outside },
        { name: 'wall', dimension: 'length', si: wall },
      ],
    })
    return
  }
  tube.ends.forEach((end, j) => {
    const { end: meant } = end.connection
    if (meant.kind !== 'thread' || meant.sex !== 'female' || bore < meant.thread.major) return
    ledger.add({
      code: 'tube.no_metal_for_thread',
      severity: 'stops',
      about: ['parts', i, 'ends', j],
      facts: { part: tube.name, end: end.name, thread: meant.thread.designation },
      evidence: [
        { name: 'bore of the tube', dimension: 'length', si: bore },
        { name: 'diameter of the thread', dimension: 'length', si: meant.thread.major },
      ],
    })
  })
}
