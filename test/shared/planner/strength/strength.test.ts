import { describe, expect, it } from 'vitest'
import type { FailureMode, StrengthPart } from '../../../../src/shared/planner/forces-types.ts'
import type { Plan } from '../../../../src/shared/planner/plan.ts'
import { boltStrength, disagreeing, tubeMaterial } from '../../../../src/shared/planner/strength/materials.ts'
import { asked, found, number, planOf, shown } from '../builds.ts'
import { larchPart, type larch as larchWith } from '../larch-forces.ts'

const INCH = 0.0254
const LBF = 4.4482216152605
const PSI = 6894.757293168
const KSI = 1000 * PSI
/** The demo with a tie rod of 1 1/2 x 0.250 in, whatever tube the demo has. */
const larch = (more: Parameters<typeof larchWith>[0] = {}) => larchPart('tie-rod', { outsideDiameter: '1 1/2 in', wall: '0.250 in' }, more)
const plan = planOf(larch())
const factor = (p: Plan, part: StrengthPart, mode: FailureMode) => p.forces.strength.find((l) => l.part === part && l.mode === mode)?.factor

describe('the design load', () => {
  it('is the whole force of the ram without losses and what the box adds, one wheel blocked', () => {
    const ram = 1500 * PSI * (Math.PI / 4) * (1.75 * INCH) ** 2
    expect(number(plan, 'strength.ram-full').si).toBeCloseTo(ram, 6)
    const box = Math.max(number(plan, 'supply.left.box').si, number(plan, 'supply.right.box').si)
    expect(number(plan, 'strength.blocked').si).toBeCloseTo(ram + box, 6)
  })
  it('is the force of the ram alone where nothing is known of the box', () => {
    const p = planOf(larch({ forces: { box: { pistonBore: undefined } } }))
    expect(number(p, 'margin.tieRod-buckling').inputs.F?.origin).toEqual({ kind: 'number', id: 'strength.ram-full' })
  })
})

describe('the tie rod', () => {
  it('buckles at Euler’s load where it is slender, worked by hand', () => {
    const L = number(plan, 'linkage.rod-length').si / INCH
    const euler = (Math.PI ** 2 * 29e6 * 0.1994175) / L ** 2
    expect(number(plan, 'strength.tie-rod.critical').si / LBF).toBeCloseTo(euler, -1)
    expect(found(plan, 'strength.euler').map((f) => f.facts.part)).toContain('Tie rod')
  })
  it('does not hold more in a stronger alloy, and the plan says so', () => {
    const stronger = planOf(larch({ forces: { tieRod: { material: '4130 DOM' } } }))
    expect(number(stronger, 'strength.tie-rod.critical').si).toBeCloseTo(number(plan, 'strength.tie-rod.critical').si, 3)
    expect(number(stronger, 'strength.tie-rod.euler').si).toBe(number(plan, 'strength.tie-rod.euler').si)
  })
  it('bent holds less than straight, and less the more it is bent', () => {
    const at = (jog: string) => factor(planOf(larch({ forces: { tieRod: { jog } } })), 'tie rod', 'jog') ?? Number.NaN
    expect(at('1 in')).toBeLessThan(number(plan, 'margin.tieRod-buckling').si)
    expect(at('2 in')).toBeLessThan(at('1 in'))
    expect(at('0.001 in')).toBeCloseTo(number(plan, 'margin.tieRod-buckling').si, 1)
  })
  it('with welded bungs is held against the strength of the weld zone, which is asked for', () => {
    const welded = planOf(larch({ forces: { tieRod: { weldedEnds: true } } }))
    expect(asked(welded)).toContain('weld material')
    const known = planOf(larch({ forces: { tieRod: { weldedEnds: true, weldMaterial: '1026 normalised' } } }))
    const P = number(known, 'strength.blocked').si
    const A = (Math.PI / 4) * (1.5 ** 2 - 1) * INCH ** 2
    expect(factor(known, 'tie rod', 'weld zone')).toBeCloseTo((40 * KSI * A) / P, 9)
  })
  it('too thin gives way and stops the build', () => {
    const p = planOf(larchPart('tie-rod', { outsideDiameter: '0.75 in', wall: '0.083 in' }))
    const stops = found(p, 'strength.gives_way').map((f) => f.facts.mode)
    expect(stops).toContain('buckling')
    expect(found(p, 'strength.gives_way').every((f) => f.severity === 'stops')).toBe(true)
    expect(shown(found(p, 'strength.gives_way')[0], 'holds so many times over')).toBeLessThan(1)
  })
  it('without a material is not judged, and it is asked for; a name that is no row is not guessed at', () => {
    for (const material of [undefined, 'good steel']) {
      const p = planOf(larch({ forces: { tieRod: { material } } }))
      expect(factor(p, 'tie rod', 'buckling')).toBeUndefined()
      expect(asked(p)).toContain('tube material')
    }
  })
})

describe('what gives way first', () => {
  it('is the least of all, by what it is told', () => {
    const counted = plan.forces.strength.filter((l) => l.mode !== 'rod alone')
    const least = counted.reduce((a, b) => (a.factor <= b.factor ? a : b))
    expect(found(plan, 'strength.first')[0]?.facts).toEqual({ part: least.part, mode: least.mode })
  })
  it('leaves no margin beyond the travel of a double-ended ram, which no published method covers', () => {
    const p = planOf(larchPart('ram', { ended: 'double', closedLength: undefined }))
    expect(found(p, 'strength.double_ended')).toHaveLength(1)
    expect(factor(p, 'ram', 'stepped column')).toBeUndefined()
  })
})

describe('bolts, stud and arm', () => {
  const bracket = {
    id: 'bracket',
    what: 'Bracket bolts',
    place: 'ram bracket',
    thread: '1/2-13',
    grade: '8',
    count: 4,
    planes: 1,
    height: '2 in',
    rows: '3 in',
    finish: 'zinc',
  }
  it('of a bracket are sheared and pulled by the whole force, worked by hand', () => {
    const p = planOf(larch({ forces: { bolts: [bracket] } }))
    const F = number(p, 'strength.ram-full').si
    const A = 0.1419 * INCH ** 2
    const [tau, pull] = [F / (4 * A), (2 * F * 2) / (4 * 3)]
    // the stress area is printed to four figures
    expect(factor(p, 'ram bracket', 'bolts')).toBeCloseTo((130 * KSI) / Math.hypot(pull / A, Math.sqrt(3) * tau), 2)
  })
  it('too weak for the height of the pin let the bracket lift', () => {
    const p = planOf(larch({ forces: { bolts: [{ ...bracket, thread: '1/4-20', rows: '1 in', height: '6 in' }] } }))
    expect(found(p, 'strength.bracket_lifts')).toHaveLength(1)
  })
  it('of an unknown grade or thread are asked for, once', () => {
    for (const more of [{ grade: undefined }, { thread: 'half inch' }, { grade: '8.8' }]) {
      const p = planOf(larch({ forces: { bolts: [{ ...bracket, ...more }] } }))
      expect(asked(p).filter((w) => w === 'bolt strength')).toHaveLength(1)
      expect(factor(p, 'ram bracket', 'bolts')).toBeUndefined()
    }
  })
  it('stud and arm bend as a beam does', () => {
    const P = number(plan, 'strength.blocked').si
    expect(factor(plan, 'ball stud', 'bending')).toBeCloseTo((110 * KSI * Math.PI * (0.87 * INCH) ** 3) / (32 * P * 0.7 * INCH), 9)
    expect(factor(plan, 'steering arm', 'bending')).toBeCloseTo((60 * KSI * 1.125 * INCH * (2.25 * INCH) ** 2) / (6 * P * 5.5 * INCH), 9)
  })
})

describe('materials', () => {
  it('are rows of the table with where they come from, and disagreements between copies are found', () => {
    expect(tubeMaterial('1026 DOM')?.S_y).toMatchObject({ si: expect.closeTo(70 * KSI, 0), origin: { kind: 'table', row: '1026 DOM' } })
    expect(tubeMaterial('wrought iron')).toBeUndefined()
    const row = tubeMaterial('1026 DOM')?.row
    expect(row && disagreeing(row).map((r) => r.id)).toEqual(['1026 DOM, mill page'])
    const agreeing = tubeMaterial('1020 DOM')?.row
    expect(agreeing && disagreeing(agreeing)).toEqual([])
  })
  it.each([
    ['5', 1, 85],
    ['5', 1.125, 74],
    ['8', 0.25, 120],
    ['2', 0.25, 55],
    ['2', 0.875, 33],
  ])('grade %s of %s in has a proof strength of %s ksi', (grade, size, proof) => {
    expect(boltStrength(grade, size * INCH, 'inch')?.proof.si).toBeCloseTo(proof * KSI, 0)
  })
  it.each([
    ['8.8', 16, 580],
    ['8.8', 18, 600],
    ['10.9', 12, 830],
  ])('class %s of %s mm has a proof strength of %s MPa', (grade, size, proof) => {
    expect(boltStrength(grade, size / 1000, 'metric')?.proof.si).toBeCloseTo(proof * 1e6, 0)
  })
  it('beyond the tables there is none', () => {
    expect(boltStrength('8', 2 * INCH, 'inch')).toBeUndefined()
    expect(boltStrength('8.8', 0.05, 'metric')).toBeUndefined()
    expect(boltStrength('8.8', 0.012, 'inch')).toBeUndefined()
  })
})
