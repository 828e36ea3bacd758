import { boltTorque } from '../../formulas/fasteners/bolt.ts'
import type { Build } from '../../model/build.ts'
import type { PortEnd, TaperEnd, ThreadEnd } from '../../model/end/types.ts'
import type { BoltGroup } from '../../model/forces.ts'
import type { Joint } from '../../model/joint.ts'
import type { TorqueSpec } from '../../model/records.ts'
import { ratio } from '../../quantities/make.ts'
import { NUT_FACTORS } from '../../standards/torque/nut-factors.ts'
import { indexEnds, type PlacedEnd } from '../ends.ts'
import type { TighteningLine, TorqueValue } from '../forces-types.ts'
import { fromOrigin, type Ledger } from '../ledger.ts'
import type { KnownBolt } from '../strength/bolts.ts'
import { fittingTorques } from './fittings.ts'

/** A slotted nut has six slots: the next one is at most so far. */
const NEXT_SLOT = Math.PI / 3
/** The maker's value and a published one further apart than this part are told. Chosen: the scatter of torque to preload. */
const APART = 0.3

/** For every bolt, fitting, castle nut and jam nut: the maker's value first, then the published and computed ones, each with its source. */
export function planTightening(build: Build, bolts: readonly (KnownBolt | undefined)[], ledger: Ledger): readonly TighteningLine[] {
  const lines = [...(build.forces?.bolts ?? []).map((group, i) => boltLine(group, bolts[i], i, ledger)), ...jointLines(build)]
  for (const line of lines) tell(line, ledger)
  return lines
}

/** Grade, size and K give the torque; both conventions stand side by side, since for plain bolts they differ by half. */
function boltLine(group: BoltGroup, bolt: KnownBolt | undefined, i: number, ledger: Ledger): TighteningLine {
  const path = ['forces', 'bolts', i] as const
  if (group.finish === undefined) ledger.measure('bolt finish', path, { what: group.what })
  const values = NUT_FACTORS.rows
    .filter((r) => r.condition === group.finish)
    .sort((a, b) => Number(b.convention === group.convention) - Number(a.convention === group.convention))
    .flatMap((row): TorqueValue[] => {
      const K = fromOrigin('ratio', ratio(row.k), { kind: 'table', table: 'nut-factors', row: row.id, column: 'k' })
      if (!bolt) return []
      const number = `bolts.${i}.torque-${row.convention}`
      const T = ledger.compute(number, boltTorque, { K, d: bolt.d, F: bolt.F_i })
      return T ? [{ low: T.si, high: T.si, from: { k: row.k, convention: row.convention, number } }] : []
    })
  return withDifference({
    what: group.what,
    joints: [],
    bolts: group.id,
    kind: 'bolt',
    size: group.thread,
    maker: group.maker?.si ?? null,
    values,
    turnOn: null,
  })
}

type Bare = Omit<TighteningLine, 'difference'>

function withDifference(line: Bare): TighteningLine {
  const { maker, values } = line
  if (maker === null || values.length === 0) return { ...line, difference: null }
  const apart = values.map((v) => (maker < v.low ? maker - v.low : maker > v.high ? maker - v.high : 0))
  return { ...line, difference: apart.reduce((best, a) => (Math.abs(a) < Math.abs(best) ? a : best)) }
}

/** Joints of the same kind and size and with the same value of the maker share a line. */
function jointLines(build: Build): readonly TighteningLine[] {
  const found = new Map<string, Bare>()
  const ends = indexEnds(build)
  const fromMaker = new Map(
    (build.torqueSpecs ?? [])
      .filter((s) => s.from === 'maker')
      .flatMap((s) => (s.joints ?? []).map((joint) => [joint, s] as const))
      // the first that names a joint speaks for it
      .reverse(),
  )
  for (const joint of build.joints) {
    for (const line of linesOf(joint, ends, fromMaker.get(joint.id))) {
      const key = `${line.kind} ${line.size} ${line.maker}`
      const same = found.get(key)
      found.set(key, same ? { ...same, joints: [...same.joints, ...line.joints] } : line)
    }
  }
  return [...found.values()].map(withDifference)
}

function linesOf(joint: Joint, placed: ReadonlyMap<string, PlacedEnd>, spec: TorqueSpec | undefined): readonly Bare[] {
  const ends = [joint.a, joint.b].map((ref) => placed.get(ref)?.end.connection.end)
  const base = { joints: [joint.id], bolts: null, maker: spec?.value?.si ?? null, turnOn: null } as const
  const out: Bare[] = []
  const port = ends.find((e): e is PortEnd => e?.kind === 'port')
  if (port) {
    const size = `${port.size === port.thread.designation ? '' : `${port.size} `}${port.thread.designation}`
    out.push({ ...base, what: port.family, kind: 'fitting', size, values: fittingTorques(port) })
  }
  if (joint.with?.includes('castle nut and cotter')) {
    const stud = ends.find((e): e is TaperEnd => e?.kind === 'taper' && e.nut !== undefined)
    out.push({ ...base, what: 'castle nut', kind: 'castle nut', size: stud?.nut?.designation ?? '', values: [], turnOn: NEXT_SLOT })
  }
  if (joint.with?.includes('jam nut')) {
    const thread = ends.find((e): e is ThreadEnd => e?.kind === 'thread')
    out.push({ ...base, what: 'jam nut', kind: 'jam nut', size: thread?.thread.designation ?? '', values: [] })
  }
  return out
}

function tell(line: TighteningLine, ledger: Ledger): void {
  const { maker, difference, values } = line
  if (maker === null || difference === null || Math.abs(difference) <= APART * maker) return
  ledger.add({
    code: 'tightening.maker_differs',
    severity: 'noted',
    about: ['torqueSpecs'],
    facts: { what: line.what, size: line.size },
    evidence: [
      { name: "maker's value", dimension: 'torque', si: maker },
      { name: 'nearest other value', dimension: 'torque', si: maker - difference },
    ],
    numbers: values.flatMap((v) => ('number' in v.from ? [v.from.number] : [])),
  })
}
