import { describe, expect, it } from 'vitest'
import type { BuildFile } from '../../../src/shared/model/build.ts'
import { poundsForce, squareInches } from '../../../src/shared/quantities/make.ts'
import { asked, bare, DEMO, found, number, part, planOf, shown } from './builds.ts'

const INCH = 0.0254
const IN3 = INCH ** 3
const QUART = (231 * IN3) / 4

const ram = (bore: string, rod: string, more: object = {}) =>
  part('ram', 'ram', [], { bore, rod, stroke: '8 in', ended: 'single', workingPressure: '3000 psi', ...more })
const pump = (reliefPressure: string) => part('pump', 'pump', [], { reliefPressure, volume: '0.1 L' })

/** Rows of the reference table of ram sizes (derived from A = π D²/4 and F = p A; printed to four figures). */
const ROWS = [
  ['1.5 in', '0.75 in', '1.7671', '1.3254', 1767, 1325, 2651, 1988, 10.6, 3.53],
  ['1.75 in', '0.75 in', '2.4053', '1.9635', 2405, 1963, 3608, 2945, 15.71, 3.53],
  ['2 in', '1 in', '3.1416', '2.3562', 3142, 2356, 4712, 3534, 18.85, 6.28],
  ['2 in', '1 1/4 in', '3.1416', '1.9144', 3142, 1914, 4712, 2872, 15.32, 9.82],
  ['2.5 in', '1.25 in', '4.9087', '3.6816', 4909, 3682, 7363, 5522, 29.45, 9.82],
  ['2.5 in', '1.5 in', '4.9087', '3.1416', 4909, 3142, 7363, 4712, 25.13, 14.14],
  ['3 in', '1.5 in', '7.0686', '5.3014', 7069, 5301, 10603, 7952, 42.41, 14.14],
] as const

describe('the ram', () => {
  it.each(ROWS)(
    '%s bore, %s rod: areas, forces and content of the reference table',
    (bore, rod, A, a, push1000, pull1000, push1500, pull1500, annulusVolume, rodVolume) => {
      for (const [relief, push, pull] of [
        ['1000 psi', push1000, pull1000],
        ['1500 psi', push1500, pull1500],
      ] as const) {
        const planned = planOf(bare({ parts: [ram(bore, rod), pump(relief)] }))
        // printed to four decimals of a square inch, and to the pound
        expect(number(planned, 'ram.cap-area').si / squareInches(1)).toBeCloseTo(Number(A), 4)
        expect(number(planned, 'ram.annulus-area').si / squareInches(1)).toBeCloseTo(Number(a), 4)
        expect(Math.abs(number(planned, 'ram.push').si / poundsForce(1) - push)).toBeLessThanOrEqual(0.55)
        expect(Math.abs(number(planned, 'ram.pull').si / poundsForce(1) - pull)).toBeLessThanOrEqual(0.55)
        // fully out it holds bore area times stroke, which is the annulus' volume and the rod's together
        expect(number(planned, 'ram.content').si / IN3).toBeCloseTo(annulusVolume + rodVolume, 1)
      }
    },
  )

  it('single-ended pulls less than it pushes, and the plan says so; double-ended does not', () => {
    const single = planOf(bare({ parts: [ram('2 in', '1 in'), pump('1000 psi')] }))
    const [noted] = found(single, 'ram.weaker_pulling')
    expect(noted?.severity).toBe('noted')
    expect(shown(noted, 'push at relief')).toBeCloseTo(number(single, 'ram.push').si, 9)
    const double = planOf(bare({ parts: [ram('2 in', '1 in', { ended: 'double' }), pump('1000 psi')] }))
    expect(found(double, 'ram.weaker_pulling')).toEqual([])
    expect(number(double, 'ram.push').si).toBe(number(double, 'ram.pull').si)
    expect(number(double, 'ram.push').si / poundsForce(1)).toBeCloseTo(2356.19, 1)
  })

  it('asks for what is missing, once, and gives no number on a guess', () => {
    const planned = planOf(bare({ parts: [part('ram', 'ram')] }))
    expect(asked(planned).sort()).toEqual([
      'ram bore',
      'ram ended',
      'ram rod',
      'ram stroke',
      'relief pressure',
      'travel survey',
      'working pressure',
    ])
    expect(planned.numbers).toEqual([])
  })

  it('with a rod thicker than its bore is a finding, not a number', () => {
    const planned = planOf(bare({ parts: [ram('1 in', '2 in'), pump('1000 psi')] }))
    expect(found(planned, 'number.outside_range').length).toBeGreaterThan(0)
    expect(planned.numbers.map((n) => n.id)).not.toContain('ram.pull')
  })

  it('several are planned each by itself, with numbers that cannot be taken for one another', () => {
    const planned = planOf(bare({ parts: [ram('2 in', '1 in'), { ...ram('1.5 in', '0.75 in'), id: 'other' }, pump('1000 psi')] }))
    expect(number(planned, 'ram.ram.cap-area').si).toBeGreaterThan(number(planned, 'ram.other.cap-area').si)
    const ids = planned.numbers.map((n) => n.id)
    expect(new Set(ids).size).toBe(ids.length)
  })
})

describe('stroke against travel', () => {
  const survey = DEMO.corrected.survey as NonNullable<BuildFile['survey']>
  const planned = (stroke: string) => planOf(bare({ survey, parts: [ram('1.75 in', '0.75 in', { stroke }), pump('1500 psi')] }))

  it('too short stops the build; within the uncertainty and 3 mm a side is for a person to look at; more is noted', () => {
    const wanted = number(planned('9 in'), 'survey.stroke').si
    const U = number(planned('9 in'), 'survey.total').uncertainty ?? Number.NaN
    const stroke = (metres: number) => planned(`${metres * 1000} mm`)
    for (const [metres, code, severity] of [
      [wanted - U * 1.01, 'ram.stroke_short', 'stops'],
      [wanted - U * 0.99, 'ram.stroke_no_room', 'look'],
      [wanted + U + 0.0059, 'ram.stroke_no_room', 'look'],
      [wanted + U + 0.0061, 'ram.stroke_enough', 'noted'],
    ] as const) {
      const findings = stroke(metres).findings.filter((f) => f.code.startsWith('ram.stroke'))
      expect(findings.map((f) => [f.code, f.severity])).toEqual([[code, severity]])
      expect(shown(findings[0], 'left over')).toBeCloseTo(metres - wanted, 9)
    }
  })
})

describe('fluid', () => {
  const parts = [
    ram('2 in', '1 in'),
    part('hose', 'hose', [], { bore: '3/8 in', length: '4 ft', line: 'return' }),
    part('reservoir', 'tank', [], { volume: '1 L' }),
    part('cooler', 'cooler', [], { volume: '0.25 L' }),
    part('filter', 'filter', [], { volume: '100 mL' }),
    part('steering box', 'box', [], { volume: '0.4 L' }),
    pump('1000 psi'),
  ]
  // by hand: π/4 2² 8 in³ + π/4 (3/8)² 48 in³, and 1.85 L in the vessels
  const held = (Math.PI * 8 + (Math.PI / 4) * 0.140625 * 48) * IN3 + 1.85e-3

  it('is the sum of what every part holds, each with its origin', () => {
    const planned = planOf(bare({ parts }))
    const sum = number(planned, 'fluid.held')
    expect(sum.si).toBeCloseTo(held, 12)
    expect(sum.card).toBe('sum')
    expect(Object.values(sum.inputs).reduce((s, v) => s + v.si, 0)).toBeCloseTo(sum.si, 15)
    expect(Object.keys(sum.inputs)).toHaveLength(7)
    expect(sum.inputs.hose?.origin).toEqual({ kind: 'number', id: 'hose.hose' })
    expect(sum.inputs.tank?.origin).toEqual({ kind: 'entered', path: ['parts', 2, 'volume'], typed: '1 L' })
    expect(found(planned, 'fluid.incomplete')).toEqual([])
  })

  it('to buy has a quarter more, or the share that the build names', () => {
    expect(number(planOf(bare({ parts })), 'fluid.to-buy').si).toBeCloseTo(held * 1.25, 12)
    const file = bare({ parts })
    expect(number(planOf({ ...file, build: { ...file.build, purgeAllowance: '50 %' } }), 'fluid.to-buy').si).toBeCloseTo(held * 1.5, 12)
    expect(number(planOf({ ...file, build: { ...file.build, purgeAllowance: '0 %' } }), 'fluid.to-buy').si).toBeCloseTo(held, 12)
  })

  it('counts a part as often as the build needs it', () => {
    const one = planOf(bare({ parts: [part('hose', 'hose', [], { bore: '3/8 in', length: '4 ft' })] }))
    const four = planOf(bare({ parts: [part('hose', 'hose', [], { bore: '3/8 in', length: '4 ft', quantity: 4 })] }))
    expect(number(four, 'fluid.held').si).toBeCloseTo(4 * number(one, 'fluid.held').si, 15)
  })

  it('gives every number a name of its own, whatever the parts are called', () => {
    const named = ['held', 'to-buy', 'bottles', 'several'].map((id) =>
      part('hose', id, [], { bore: '3/8 in', length: '4 ft', quantity: 2 }),
    )
    const planned = planOf(bare({ parts: [...named, part('fluid', 'oil', [], { bottle: '1 L' })] }))
    const ids = planned.numbers.map((n) => n.id)
    expect(new Set(ids).size).toBe(ids.length)
    expect(number(planned, 'fluid.held').card).toBe('sum')
  })

  const oil = (quantity: number, id = 'oil', bottle = '1 US qt') => part('fluid', id, [], { bottle, quantity })

  it('comes in whole bottles', () => {
    const bottles = Math.ceil((held * 1.25) / QUART)
    expect(bottles).toBe(4)
    const enough = planOf(bare({ parts: [...parts, oil(4)] }))
    expect(number(enough, 'fluid.bottles').si).toBe(4)
    expect(found(enough, 'fluid.too_few_bottles')).toEqual([])
    const few = planOf(bare({ parts: [...parts, oil(3)] }))
    expect(found(few, 'fluid.too_few_bottles')[0]).toMatchObject({
      severity: 'look',
      facts: { listed: 3, wanted: 4 },
      about: ['parts', 7, 'quantity'],
    })
  })

  it('may stand on several lines of the parts list, some here and some to order', () => {
    expect(found(planOf(bare({ parts: [...parts, oil(1), oil(3, 'more')] })), 'fluid.too_few_bottles')).toEqual([])
    expect(found(planOf(bare({ parts: [...parts, oil(1), oil(2, 'more')] })), 'fluid.too_few_bottles')[0]?.facts.listed).toBe(3)
    expect(found(planOf(bare({ parts: [...parts, oil(1), oil(1, 'can', '5 L')] })), 'fluid.too_few_bottles')).toEqual([])
  })

  it('full to the brim is enough: no bottle more for the rounding of doubles', () => {
    const file = bare({ parts: [part('reservoir', 'tank', [], { volume: '0.3 L' }), oil(3, 'oil', '0.1 L')] })
    const planned = planOf({ ...file, build: { ...file.build, purgeAllowance: '0 %' } })
    expect(number(planned, 'fluid.bottles').si).toBe(3)
    expect(found(planned, 'fluid.too_few_bottles')).toEqual([])
  })

  it('none listed, bottle not known, volumes not known: each is said', () => {
    expect(found(planOf(bare({ parts })), 'fluid.none')).toHaveLength(1)
    expect(asked(planOf(bare({ parts: [...parts, part('fluid', 'oil')] })))).toContain('bottle')
    const vague = planOf(bare({ parts: [...parts, part('cooler', 'second-cooler'), part('hose', 'loose')] }))
    expect(asked(vague)).toEqual(expect.arrayContaining(['volume', 'hose bore', 'hose length']))
    expect(found(vague, 'fluid.incomplete')[0]?.facts.parts).toEqual(['second-cooler', 'loose'])
    expect(number(vague, 'fluid.held').si).toBeCloseTo(held, 12)
  })

  it('nothing hydraulic: nothing said', () => {
    const dry = planOf(bare({ parts: [part('tube', 'rod')] }))
    expect(dry.findings.filter((f) => f.code.startsWith('fluid.'))).toEqual([])
  })
})

describe('pressure', () => {
  const hose = (line: string | undefined, workingPressure?: string) =>
    part('hose', 'hose', [], { bore: '3/8 in', length: '1 m', ...(line ? { line } : {}), ...(workingPressure ? { workingPressure } : {}) })
  const at = (relief: string, ...parts: BuildFile['parts']) => planOf(bare({ parts: [pump(relief), ...parts] }))

  it('what is rated below the relief valve stops the build, with both pressures as proof', () => {
    const [finding] = found(at('1500 psi', hose('pressure', '1000 psi')), 'pressure.below_relief')
    expect(finding).toMatchObject({ severity: 'stops', about: ['parts', 1, 'workingPressure'], facts: { part: 'hose' } })
    expect(shown(finding, 'working pressure')).toBeCloseTo(6894757.293, 2)
    expect(shown(finding, 'relief pressure')).toBeCloseTo(10342135.94, 2)
  })

  it('the rating itself is enough', () => {
    expect(found(at('1500 psi', hose('pressure', '1500 psi')), 'pressure.below_relief')).toEqual([])
  })

  it('counts for hoses on the pressure side, the ram and adapters, not for return and suction', () => {
    const low = (...parts: BuildFile['parts']) => found(at('1500 psi', ...parts), 'pressure.below_relief').length
    expect(low(hose('ram', '1000 psi'))).toBe(1)
    expect(low(hose(undefined, '1000 psi'))).toBe(1)
    expect(low(hose('return', '250 psi'))).toBe(0)
    expect(low(hose('suction', '30 psi'))).toBe(0)
    expect(low(ram('2 in', '1 in', { workingPressure: '1000 psi' }))).toBe(1)
    expect(low(part('adapter', 'adapter', [], { workingPressure: '1000 psi' }))).toBe(1)
  })

  it('not known is to be looked up, where it counts', () => {
    expect(asked(at('1500 psi', hose('pressure')))).toContain('working pressure')
    expect(asked(at('1500 psi', hose('return')))).not.toContain('working pressure')
  })

  it('without a relief pressure nothing is below it', () => {
    const planned = planOf(bare({ parts: [part('pump', 'pump'), hose('pressure', '1 psi'), ram('2 in', '1 in')] }))
    expect(found(planned, 'pressure.below_relief')).toEqual([])
    expect(asked(planned).filter((what) => what === 'relief pressure')).toHaveLength(1)
  })
})
