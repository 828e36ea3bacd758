import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { evaluate } from '../../src/shared/formulas/card.ts'
import { findFormula } from '../../src/shared/formulas/index.ts'
import { type Activity, criticalPath } from '../../src/shared/formulas/schedule/critical-path.ts'
import { type Dimension, si } from '../../src/shared/quantities/dimension.ts'
import { parseQuantity } from '../../src/shared/quantities/parse.ts'
import { inUnit } from '../../src/shared/quantities/print.ts'

/**
 * Numeric cases gathered from publications (`checks.json`; each names its source and the tolerance its rounding needs),
 * run against the cards. Cases that look a row up in a standard's table are run by `standards.checks.test.ts`.
 */
interface Case {
  readonly id: string
  readonly topic: string
  readonly inputs: Readonly<Record<string, { readonly value: unknown; readonly unit: string }>>
  readonly expected: { readonly value: number; readonly unit: string }
  readonly tolerance: { readonly type: string; readonly value: number }
  readonly source: string
  readonly formula: string
}
const CASES: readonly Case[] = JSON.parse(readFileSync(new URL('./checks.json', import.meta.url), 'utf8'))

/** One input of a case in base SI. */
type Get = (name: string, dimension: Dimension) => number
/** A symbol takes an input of the case by its name (in the symbol's dimension), or a value worked out of the inputs. */
type Mapping = Readonly<Record<string, string | number | ((get: Get) => number)>>

const bare = (unit: string): string => (['1', '1:x', 'index'].includes(unit) ? '' : unit.replace(' total', ''))

function read(value: unknown, unit: string, dimension: Dimension): number {
  const parsed = parseQuantity(`${String(value)} ${bare(unit)}`, dimension)
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues))
  return parsed.value.si
}

function via(card: string, values: Readonly<Record<string, number>>): number {
  const found = findFormula(card)
  if (!found) throw new Error(`no formula ${card}`)
  const result = evaluate(found, values as never)
  if (!result.ok) throw new Error(JSON.stringify(result.issues))
  return result.value
}

const length = (name: string) => (get: Get) => get(name, 'length')
const plain = (name: string) => (get: Get) => get(name, 'ratio')
const bore = (get: Get) => via('ram.cap-area', { D: get('D', 'length') })
const annulus = (get: Get) => via('ram.annulus-area', { D: get('D', 'length'), d: get('d', 'length') })
const stressArea = (get: Get) => via('thread.stress-area-metric', { d: get('d', 'length'), P: get('P', 'length') })
const pitch = (get: Get) => via('thread.pitch', { n: get('n', 'curvature') })
const tube = (card: string, outside: string, inside: (get: Get) => number) => (get: Get) =>
  via(card, { D: get(outside, 'length'), d: inside(get) })
const byWall = (get: Get) => get('do', 'length') - 2 * get('t', 'length')
const solid = () => 0
const weight = (get: Get) => get('m', 'mass') * get('g', 'acceleration')
const kelvin = (name: string) => (get: Get) => get(name, 'temperature') - 273.15 + get('K0', 'temperature')
const secant: Mapping = {
  P: 'P',
  e: 'e',
  E: 'E',
  L_e: 'Le',
  c: 'ro',
  A: (get) => via('tube.area', { D: 2 * get('ro', 'length'), d: 2 * get('ri', 'length') }),
  r: (get) => via('tube.radius-of-gyration', { D: 2 * get('ro', 'length'), d: 2 * get('ri', 'length') }),
}
const preloaded = (get: Get) => via('bolt.preload', { x: 0.75, S_p: get('Sp', 'pressure'), A_t: get('As', 'area') })

/** Which card a case is run by, and how its inputs go to the card's symbols. */
const BY_CARD: readonly (readonly [ids: string, card: string, mapping: Mapping])[] = [
  ['TM01 TM02 TM03 TM05 TM07 TM08 TM10 TM13 TM15 TM20 TM21 TM22 TM23', 'thread.stress-area-metric', { d: 'd', P: 'P' }],
  ['TI01 TI02 TI03 TI05 TI07 TI09 TI10 TI12 TI13', 'thread.stress-area-inch', { D: 'D', n: 'n' }],
  ['TP01', 'thread.pitch-diameter-60', { d: 'D', P: pitch }],
  ['TP02', 'thread.pitch-diameter-60', { d: 'd', P: 'P' }],
  ['TP03', 'thread.minor-internal-60', { d: 'd', P: 'P' }],
  ['PN02 PN03 PN04', 'thread.npt-e0', { D: 'OD', n: 'n' }],
  ['PN11', 'thread.npt-e1', { E_0: 'E0', L_1: 'L1' }],
  ['PB02 PB03', 'thread.pitch-diameter-55', { d: 'major', P: pitch }],
  ['PB11 PB12', 'thread.pitch', { n: 'n' }],
  ['LK01 LK03 LK04 LK06 LK07 LK10 LK11', 'thread.pitch-mismatch', { L: 0.01, P_a: 'Pa', P_b: 'Pb' }],
  ['TA03', 'taper.included-angle', { k: (get) => 1 / get('ratio', 'ratio') }],
  [
    'TA04',
    'taper.half-angle',
    { k: (get) => via('taper.ratio-from-diameters', { D_1: get('D1', 'length'), D_2: get('D2', 'length'), L: get('L', 'length') }) },
  ],
  ['TA06', 'taper.stand-off-shift', { dD: 'dD', k: 'tpf' }],
  ['RA01', 'ram.cap-area', { D: 'D' }],
  ['RA02', 'ram.annulus-area', { D: 'D', d: 'd' }],
  ['RA03 RA12 RA13', 'ram.force', { p: 'p', A: bore }],
  ['RA04', 'ram.force', { p: 'p', A: annulus }],
  ['RA05', 'ram.pressure', { F: 'F', A: bore }],
  ['RA06', 'ram.pressure', { F: 'F', A: annulus }],
  ['RA18', 'hydraulic.power', { Q: 'Q', p: 'p' }],
  ['RA21', 'ram.flow-for-time', { V: 'V', t: 't' }],
  ['RA23', 'column.euler', { n: 1, E: 'E', L: 'L', I: tube('tube.second-moment', 'd', solid) }],
  ['KT01 KT05', 'demand.effective-arm', { d: 'd', a: 'a' }],
  ['KT02', 'demand.scrub-moment', { mu: 'mu', h: 'h', W: weight }],
  ['KT08', 'demand.track-rod-force', { M_1: 'M1', gamma_1: 'g1', a_1: 'a1', M_2: 'M2', gamma_2: 'g2', a_2: 'a2' }],
  ['KT09', 'demand.power', { F: 'F', s: 's', t: 't' }],
  ['KT13', 'demand.uniform-disc', { W: 'W', mu: 'mu', B: 'B' }],
  ['KT14', 'demand.parking-law', { W: 'F', mu: 'mu', p: 'p' }],
  ['KT15', 'demand.uniform-disc-pressure', { W: 'F', mu: 'mu', p: 'p' }],
  ['CO03 CO04', 'column.euler', { n: 'n', E: 'E', L: 'L', I: tube('tube.second-moment', 'do', length('di')) }],
  ['CO06', 'column.euler', { n: 1, E: 'E', L: 'L', I: tube('tube.second-moment', 'D', solid) }],
  ['CO07', 'column.allowable', { P: 'P', N: 'N' }],
  ['CO08 CO15 CO25', 'column.constant', { E: 'E', S_y: 'sy' }],
  ['CO09', 'column.slenderness', { L_e: 'KL', r: tube('tube.radius-of-gyration', 'D', solid) }],
  [
    'CO11',
    'column.critical-load',
    {
      E: 'E',
      L_e: 'L',
      S_y: 'sy',
      A: tube('tube.area', 'D', solid),
      r: tube('tube.radius-of-gyration', 'D', solid),
    },
  ],
  ['CO12', 'column.johnson-diameter', { F: 'F', N: 'N', S_y: 'sy', E: 'E', L_e: 'L' }],
  ['CO16', 'column.secant-stress', secant],
  [
    'CO17',
    'column.eccentric-deflection',
    { e: 'e', L: 'L', P: 'P', E: 'E', I: (get) => (get('b', 'length') * get('h', 'length') ** 3) / 12 },
  ],
  ['CO20', 'tube.area', { D: 'do', d: byWall }],
  ['CO22', 'tube.section-modulus', { D: 'do', d: byWall }],
  ['CO23', 'column.euler', { n: 1, E: 'E', L: 'L', I: tube('tube.second-moment', 'do', byWall) }],
  ['CO24', 'column.slenderness', { L_e: 'L', r: tube('tube.radius-of-gyration', 'do', byWall) }],
  ['BP01 BP03 BP05 BP08 BP09', 'bolt.proof-load', { S_p: 'Sp', A_t: stressArea }],
  ['BF01 BF02 BF03 BF04 BF05 BF08', 'bolt.preload', { x: 0.75, S_p: 'Sp', A_t: 'At' }],
  ['BT01 BT02 BT04 BT06 BT07 BT08', 'bolt.torque', { K: 'K', d: 'D', F: 'F' }],
  ['BM02 BM03 BM04', 'bolt.torque', { K: 'K', d: 'd', F: preloaded }],
  ['BS03', 'bolt.service-stress', { C: 'C', P: 'P', A_t: 'At', s_i: 'si' }],
  ['SG01', 'ackermann.outer-angle', { delta_i: 'theta', w: 'c', l: 'b' }],
  ['SG02', 'turning.outer-front-radius', { l: 'b', delta_o: 'phi', b: 'a', w: 'c' }],
  ['SG03', 'turning.inner-rear-radius', { l: 'b', delta_i: 'theta', b: 'a', w: 'c' }],
  ['SG04', 'ackermann.outer-angle', { delta_i: 'theta', w: plain('c_over_b'), l: 1 }],
  ['SG05', 'davis.arm-angle', { w: 'c', l: 'b' }],
  ['SG06', 'trapezoid.outer-angle', { w: 'w', d: 'arm', beta: 'beta', delta_i: 'din' }],
  ['SG08', 'ackermann.percentage', { delta_i: 'din', delta_o: 'dout', w: 'w', l: 'l' }],
  ['SG09', 'steering.ratio', { theta_h: 'sw', theta_w: 'rw' }],
  ['SG11', 'toe.wheel-angle', { T: 'T', D: 'D' }],
  ['SG12', 'toe.total-distance', { D: 'D', theta: 'ang' }],
  ['SG13', 'sleeve.change-per-turn', { n: 'n' }],
  ['SG15', 'caster.from-sweep', { dc: 'dc', phi: (20 * Math.PI) / 180 }],
  ['SG17', 'bump.lateral-pull', { L: 'L', h: 'h', z: 'z' }],
  ['SG18 SG19', 'bump.steer-error', { L_d: 'Ld', h_d: 'hd', L_t: 'Lt', h_t: 'ht', z: 'z', r: 'r' }],
  ['FL01', 'flow.velocity', { Q: 'Q', d: 'd' }],
  ['FL02 FL03 FL04', 'flow.at-velocity', { v: 'v', d: 'd' }],
  ['FL12 FL14', 'flow.bore-for-velocity', { Q: 'Q', v: 'v' }],
  ['FL22', 'flow.reynolds', { v: 'v', d: 'd', nu: 'nu' }],
  ['FL23 FL31', 'friction.colebrook', { Re: 'Re', eps: 'eD' }],
  ['FL24 FL26', 'flow.head-loss', { f: 'f', L: 'L', d: 'd', v: 'v', g: 'g' }],
  ['FL33', 'friction.churchill', { Re: 'Re', eps: 'eD' }],
  ['FL36', 'flow.laminar-drop-from-velocity', { mu: 'mu', L: 'L', v: 'U', d: 'd' }],
  ['FL37', 'flow.laminar-drop', { mu: 'mu', L: 1, Q: 'Q', d: 'd' }],
  ['FL39', 'hose.content', { d: 'd', L: 'L' }],
  [
    'FL40',
    'flow.laminar-drop',
    {
      mu: (get) => via('flow.dynamic-viscosity', { nu: get('nu', 'kinematicViscosity'), rho: get('rho', 'density') }),
      L: 'L',
      Q: 'Q',
      d: 'd',
    },
  ],
  ['VT03 VT05', 'viscosity.at-temperature', { nu_1: 'v1', T_1: kelvin('t1'), nu_2: 'v2', T_2: kelvin('t2'), T: kelvin('t') }],
  ['VG03 VG05', 'viscosity.grade-minimum', { VG: 'vg' }],
  ['VG02 VG04 VG06', 'viscosity.grade-maximum', { VG: 'vg' }],
  ['BW01 BW03 BW05 BW06', 'tube.barlow', { S: 'S', t: 't', D: 'D', N: 'N' }],
  ['TY01 TY02 TY03', 'tyre.overall-diameter', { d_r: 'rim', w: 'w', a: 'ar' }],
]

/** Cases that only turn one unit into another: run through the parser and back. */
const CONVERSIONS: Readonly<Record<string, Dimension>> = {
  U02: 'length',
  U03: 'force',
  U04: 'pressure',
  U05: 'volume',
  U06: 'volume',
  U08: 'angle',
  U09: 'torque',
  U10: 'volume',
  U12: 'pressure',
  U14: 'angle',
  FT01: 'torque',
  FT04: 'torque',
}
/** Cases that name a row of a standard's table; there is nothing to work out. */
const LOOKUPS = 'PB22 FT12 FT13 FT14 FT21 FT22 FT23 FT32 FT36 SG22 TY10 TY12 TY15 TY16'.split(' ')
const NETWORKS = CASES.filter((c) => c.id.startsWith('CP')).map((c) => c.id)
const TAPER_AS_ONE_TO_X = 'TA07'

const byId = new Map(CASES.map((c) => [c.id, c]))
const found = (id: string): Case => {
  const c = byId.get(id)
  if (!c) throw new Error(`no case ${id}`)
  return c
}
const getter =
  (c: Case): Get =>
  (name, dimension) => {
    const input = c.inputs[name]
    if (!input) throw new Error(`${c.id} has no ${name}`)
    return read(input.value, input.unit, dimension)
  }
function expectClose(c: Case, got: number): void {
  const allowed = c.tolerance.type === 'rel' ? c.tolerance.value * Math.abs(c.expected.value) : c.tolerance.value
  expect(Math.abs(got - c.expected.value), `${got} against ${c.expected.value} ${c.expected.unit}: ${c.source}`).toBeLessThanOrEqual(
    allowed,
  )
}

describe('published cases', () => {
  const rows = BY_CARD.flatMap(([ids, card, mapping]) => ids.split(' ').map((id) => [id, card, mapping] as const))

  it('are all run, here or with the tables', () => {
    const run = [...rows.map(([id]) => id), ...Object.keys(CONVERSIONS), ...NETWORKS, ...LOOKUPS, TAPER_AS_ONE_TO_X]
    expect(run.toSorted()).toEqual(CASES.map((c) => c.id).toSorted())
    expect(CASES.filter((c) => c.formula === 'lookup').map((c) => c.id)).toEqual(LOOKUPS)
  })

  it.each(rows)('%s by %s', (id, card, mapping) => {
    const c = found(id)
    const get = getter(c)
    const formula = findFormula(card)
    if (!formula) throw new Error(`no formula ${card}`)
    const values = Object.fromEntries(
      Object.entries(mapping).map(([symbol, from]) => {
        if (typeof from === 'number') return [symbol, from]
        return [symbol, typeof from === 'string' ? get(from, formula.symbols[symbol]?.dimension ?? 'ratio') : from(get)]
      }),
    )
    const dimension = formula.result.dimension
    // a pressure drop over one metre, printed per metre
    const unit = c.expected.unit === 'Pa/m' ? 'Pa' : bare(c.expected.unit) || '1'
    expectClose(c, inUnit(si(via(card, values), dimension), unit, dimension))
  })

  it.each(Object.entries(CONVERSIONS))('%s as a %s', (id, dimension) => {
    const c = found(id)
    const input = c.inputs.x ?? c.inputs.T
    if (!input) throw new Error(id)
    expectClose(c, inUnit(si(read(input.value, input.unit, dimension), dimension), c.expected.unit, dimension))
  })

  it('TA07 as a taper of one in x', () => {
    const c = found(TAPER_AS_ONE_TO_X)
    expectClose(c, 1 / getter(c)('tpf', 'ratio'))
  })

  it.each(NETWORKS)('%s by the critical path', (id) => {
    const c = found(id)
    const network = c.inputs.network as unknown as {
      value: readonly { id: string; dur: number; pred: readonly string[] }[]
      unit: string
    }
    const activities = network.value.map(
      (a): Activity => ({ id: a.id, duration: si(read(a.dur, network.unit, 'time'), 'time'), after: a.pred }),
    )
    const path = criticalPath(activities)
    if (!path.ok) throw new Error(JSON.stringify(path.issues))
    const times = path.value.activities.find((a) => a.id === c.inputs.activity?.value)
    const quantities: Record<string, number | undefined> = {
      duration: path.value.duration,
      ES: times?.earliestStart,
      EF: times?.earliestFinish,
      LS: times?.latestStart,
      LF: times?.latestFinish,
      slack: times?.slack,
    }
    const got = quantities[String(c.inputs.quantity?.value)]
    if (got === undefined) throw new Error(`${id}: nothing asked for`)
    expectClose(c, inUnit(si(got, 'time'), c.expected.unit, 'time'))
  })
})
