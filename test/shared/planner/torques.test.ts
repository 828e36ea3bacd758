import { describe, expect, it } from 'vitest'
import type { BuildFile } from '../../../src/shared/model/build.ts'
import { asked, bare, DEMO, found, part, planOf, shown } from './builds.ts'

type Record_ = NonNullable<BuildFile['torqueRecords']>[number]
type Spec = NonNullable<BuildFile['torqueSpecs']>[number]
const spec = (id: string, more: Partial<Spec> = {}): Spec => ({
  id,
  what: id,
  value: '85 lbf·ft',
  tolerance: '5 lbf·ft',
  from: 'maker',
  ...more,
})
const record = (id: string, on: string, value: string, more: Partial<Record_> = {}): Record_ => ({ id, spec: 's', on, value, ...more })
const planned = (records: readonly Record_[], specs: readonly Spec[] = [spec('s')]) =>
  planOf(bare({ torqueSpecs: [...specs], torqueRecords: [...records] }))
const last = (...records: readonly Record_[]) => planned(records).torques[0]?.lastRecord

const LBF_FT = 1.3558179483314

describe('the torque table', () => {
  it('has a line for every torque of the build, in its order, as typed', () => {
    const { torques } = planOf(DEMO.corrected)
    expect(torques.map((t) => t.spec)).toEqual(DEMO.corrected.torqueSpecs?.map((s) => s.id))
    expect(torques[0]).toMatchObject({ typedValue: '85 lbf·ft', from: 'maker', recheckAfter: '100 miles', lastRecord: null })
    expect(torques[0]?.value).toBeCloseTo(85 * LBF_FT, 9)
    const pitman = torques.find((t) => t.spec === 't-pitman')
    expect(pitman?.lastRecord?.within).toBe(true)
    expect(pitman?.lastRecord?.value).toBeCloseTo(188 * LBF_FT, 9)
  })

  it('asks for a value where there is none; an angle is one', () => {
    const { value: _value, ...none } = spec('s')
    expect(asked(planned([], [none]))).toContain('torque')
    expect(asked(planned([], [{ ...none, angle: '90°' }]))).not.toContain('torque')
  })

  it('names the joints that have none', () => {
    const file = bare({
      parts: [part('tube', 'rod', ['l: 7/8-18 LH female']), part('rod end', 'end', ['shank: 7/8-18 LH male'])],
      joints: [{ id: 'j', name: 'Rod and end', a: 'rod/l', b: 'end/shank' }],
    })
    expect(found(planOf(file), 'torque.none_for_joint')[0]?.facts.joints).toEqual(['Rod and end'])
    expect(found(planOf({ ...file, torqueSpecs: [spec('s', { joints: ['j'] })] }), 'torque.none_for_joint')).toEqual([])
  })
})

describe('records', () => {
  it('the newest counts, in whatever order they stand', () => {
    expect(last(record('a', '2026-03-02', '86 lbf·ft'), record('b', '2026-03-01', '80 lbf·ft'))?.on).toBe('2026-03-02')
    expect(last(record('b', '2026-03-01', '80 lbf·ft'), record('a', '2026-03-02', '86 lbf·ft'))?.on).toBe('2026-03-02')
  })

  it('of one day the later in the file counts', () => {
    expect(last(record('a', '2026-03-01', '80 lbf·ft'), record('b', '2026-03-01', '86 lbf·ft'))?.value).toBeCloseTo(86 * LBF_FT, 9)
  })

  it('a correction takes the place of the one it corrects, and leaves it in the file', () => {
    const records = [record('a', '2026-03-05', '58 lbf·ft'), record('b', '2026-03-04', '85 lbf·ft', { corrects: 'a' })]
    const file = bare({ torqueSpecs: [spec('s')], torqueRecords: records })
    const before = structuredClone(file)
    expect(planOf(file).torques[0]?.lastRecord).toMatchObject({ on: '2026-03-04', within: true })
    expect(file).toEqual(before)
  })

  it('a corrected correction does not come back', () => {
    expect(
      last(
        record('a', '2026-03-01', '50 lbf·ft'),
        record('b', '2026-03-01', '60 lbf·ft', { corrects: 'a' }),
        record('c', '2026-03-01', '85 lbf·ft', { corrects: 'b' }),
      )?.value,
    ).toBeCloseTo(85 * LBF_FT, 9)
  })

  it('that correct themselves or one another do not make what was applied disappear', () => {
    expect(last(record('a', '2026-03-01', '85 lbf·ft', { corrects: 'a' }))?.on).toBe('2026-03-01')
    expect(
      last(record('a', '2026-03-01', '85 lbf·ft', { corrects: 'b' }), record('b', '2026-03-02', '86 lbf·ft', { corrects: 'a' }))?.on,
    ).toBe('2026-03-02')
  })

  it('of another torque correct nothing of this one', () => {
    const { torques } = planned(
      [record('a', '2026-03-01', '85 lbf·ft'), record('b', '2026-03-02', '20 lbf·ft', { spec: 'other', corrects: 'a' })],
      [spec('s'), spec('other', { value: '20 lbf·ft' })],
    )
    expect(torques.map((t) => t.lastRecord?.on)).toEqual(['2026-03-01', '2026-03-02'])
  })

  it('out of tolerance stop the build, with the numbers; on its edge they do not', () => {
    const [finding] = found(planned([record('a', '2026-03-01', '79 lbf·ft')]), 'torque.out_of_tolerance')
    expect(finding).toMatchObject({ severity: 'stops', about: ['torqueSpecs', 0], facts: { what: 's', on: '2026-03-01' } })
    expect(shown(finding, 'torque applied')).toBeCloseTo(79 * LBF_FT, 9)
    for (const value of ['80 lbf·ft', '90 lbf·ft', '85 lbf·ft'])
      expect(found(planned([record('a', '2026-03-01', value)]), 'torque.out_of_tolerance')).toEqual([])
    expect(found(planned([record('a', '2026-03-01', '90.1 lbf·ft')]), 'torque.out_of_tolerance')).toHaveLength(1)
  })

  it('against a spec without a tolerance say neither yes nor no', () => {
    const { tolerance: _tolerance, ...loose } = spec('s')
    expect(planned([record('a', '2026-03-01', '20 lbf·ft')], [loose]).torques[0]?.lastRecord?.within).toBeNull()
  })
})
