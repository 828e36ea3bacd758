import { describe, expect, it } from 'vitest'
import { DEMO_FILES } from '../../../src/main/procedures/demo.ts'
import type { PartFile } from '../../../src/shared/model/part.ts'
import { got, openedDatabase, problems, proceduresOn } from './made.ts'

const own = () => proceduresOn(openedDatabase())

describe('an end', () => {
  it.each([
    ['7/8-18 LH female', 'Unified thread, 7/8-18, left-hand, female, major diameter 0.875 in, pitch 18 per inch (0.0556 in)'],
    [
      'M18x1.5 male, engaged 20 mm',
      'metric thread, M18x1.5, right-hand, male, major diameter 0.709 in, pitch 1.5 mm (16.93 per inch), length 0.787 in',
    ],
    ['-6 JIC male', '37° flare, -6, male, thread 9/16-18, pitch 18 per inch (0.0556 in)'],
    ['3/8 NPT', 'NPT taper pipe thread, 3/8-18 NPT, right-hand, sex not said, major diameter 0.675 in, pitch 18 per inch (0.0556 in)'],
    ['taper 1.5 in/ft stud, large 0.70 in', "ball stud's cone, 1:8 (1.5 in/ft), large diameter 0.7 in"],
    ['taper ? hole', 'tapered hole, taper not measured, large diameter not measured'],
    ['clamp 1 1/2 in, wide 2 in', 'clamp, diameter 1.5 in, length 2 in'],
    ['bore ?', 'bore, diameter not measured'],
    ['32 splines 1 1/4 in male', 'splined shaft, splines 32, diameter 1.25 in'],
    ['barb 3/8 in', 'barb, bore 0.375 in'],
    ['weld', 'place to be welded'],
    ['not measured', 'not measured yet'],
  ])('"%s" is read and printed back', async (typed, line) => {
    const read = got(await own()['end.read']({ typed }))
    expect(read.line).toBe(line)
    expect(read.facts[0]?.value).toBe(line.split(',')[0])
  })

  it('is printed in the units asked for, and a wrong one says what is wrong', async () => {
    const procedures = own()
    expect(got(await procedures['end.read']({ typed: 'clamp 1 in', units: 'metric' })).line).toBe('clamp, diameter 25.4 mm')
    expect(problems(await procedures['end.read']({ typed: 'M22x1.75' }))).toEqual(['end.unknown_thread'])
    expect(problems(await procedures['end.read']({ typed: '' }))).toEqual(['end.not_understood'])
  })
})

describe('a part', () => {
  it('is checked before it is saved anywhere', async () => {
    const part: PartFile = { kind: 'adapter', id: 'a', name: 'A', state: 'here', ends: [{ name: 'in', connection: 'weld' }] }
    const procedures = own()
    expect(got(await procedures['part.check']({ part })).ends).toMatchObject([{ name: 'in', understood: { kind: 'weld' } }])
    const faulty = {
      ...part,
      price: '1,20',
      ends: [
        { name: 'in', connection: '-6' },
        { name: 'in', connection: 'weld' },
      ],
      colour: 1,
    }
    expect(problems(await procedures['part.check']({ part: faulty as never }))).toEqual([
      'price: file.wrong_form',
      'ends[0].connection: end.dash_without_family',
      'colour: file.unknown_key',
      'ends[1].name: reference.end_twice',
    ])
  })
})

describe('two ends', () => {
  it('get the verdict with its rule and sources', async () => {
    const verdict = got(await own()['fit.ends']({ a: '7/8-18 LH male', b: '7/8-18 LH female', units: 'inch' }))
    expect(verdict).toMatchObject({ kind: 'fits', rule: 'threads', state: 'good', word: 'fits', reasons: ['both are 7/8-18 left-hand'] })
    expect(verdict.sources.length).toBeGreaterThan(0)
    for (const { cites } of verdict.sources) expect(cites).not.toBe('')
  })

  it('are told of where they are not understood, each by its place', async () => {
    expect(problems(await own()['fit.ends']({ a: 'M22x1.75 male', b: 'what', units: 'inch' }))).toEqual([
      'a: end.unknown_thread',
      'b: end.not_understood',
    ])
  })
})

describe('the ends that may be joined to an end', () => {
  it('are all free ends of other parts, what fits first', async () => {
    const file = DEMO_FILES.corrected
    const bare = { ...file, joints: [], torqueSpecs: [], torqueRecords: [] }
    const procedures = own()
    const { candidates } = got(await procedures['fit.candidates']({ build: { file: bare }, end: 'tie-rod/left', units: 'inch' }))
    const others = file.parts.filter((p) => p.id !== 'tie-rod').flatMap((p) => p.ends.map((e) => `${p.id}/${e.name}`))
    expect(candidates.map((c) => c.end).sort()).toEqual([...others].sort())
    const kinds = ['fits', 'fits if', 'not known', 'goes together and is wrong', 'does not fit']
    const order = candidates.map((c) => kinds.indexOf(c.kind))
    expect(order).toEqual([...order].sort((x, y) => x - y))
    expect(candidates[0]).toMatchObject({ end: 'tie-end-left/shank', part: 'Tie-rod end, left-hand', leftOpen: false })
    // each verdict is the one that the two ends get by themselves
    const typed = file.parts.find((p) => p.id === 'tie-rod')?.ends.find((e) => e.name === 'left')?.connection ?? ''
    for (const one of candidates.filter((_, i) => i % 7 === 0)) {
      expect(got(await procedures['fit.ends']({ a: typed, b: one.connection, units: 'inch' })).kind).toBe(one.kind)
    }
  })

  it('leave out what is joined already, in the build that is stored', async () => {
    const procedures = own()
    const { id } = got(await procedures['demo.add']({ which: 'corrected' }))
    const { candidates } = got(await procedures['fit.candidates']({ build: { id }, end: 'tie-rod/left', units: 'metric' }))
    const joined = new Set(DEMO_FILES.corrected.joints.flatMap((j) => [j.a, j.b]))
    expect(candidates.filter((c) => joined.has(c.end))).toEqual([])
  })

  it('are refused where there is no such end or build, or the build is faulty', async () => {
    const procedures = own()
    const { id } = got(await procedures['demo.add']({ which: 'corrected' }))
    for (const end of ['tie-rod/middle', 'nothing/left', 'tie-rod']) {
      expect(problems(await procedures['fit.candidates']({ build: { id }, end, units: 'inch' }))).toEqual(['end: reference.no_such_end'])
    }
    expect(problems(await procedures['fit.candidates']({ build: { id: 'x' }, end: 'a/b', units: 'inch' }))).toEqual(['build.unknown'])
    const faulty = { ...DEMO_FILES.corrected, joints: [{ id: 'j', a: 'x/y', b: 'y/z' }], torqueSpecs: [], torqueRecords: [] }
    expect(problems(await procedures['fit.candidates']({ build: { file: faulty }, end: 'a/b', units: 'inch' }))).toHaveLength(2)
  })
})

describe('the way across', () => {
  const ask = { a: '-6 37° flare male', b: '3/8 NPT female', units: 'inch' } as const
  const adapter: PartFile = {
    kind: 'adapter',
    id: 'elbow',
    name: 'Elbow',
    price: '9.50',
    length: '1 1/2 in',
    state: 'here',
    ends: [
      { name: 'flare', connection: '-6 37° flare female' },
      { name: 'pipe', connection: '3/8 NPT male' },
    ],
  }

  it('goes by the shelf as it is now, then by what can be bought', async () => {
    const procedures = own()
    const bought = got(await procedures['fit.across'](ask))
    expect(bought).toMatchObject({ outcome: 'found', chains: [{ pieces: [{ from: 'to buy' }] }] })
    got(await procedures['shelf.save']({ part: adapter, replace: false }))
    const own1 = got(await procedures['fit.across'](ask))
    expect(own1.chains[0]).toMatchObject({ title: '2 leak points, 9.50, 1.5 in long', pieces: [{ id: 'elbow', from: 'on the shelf' }] })
    got(await procedures['shelf.remove']({ id: 'elbow' }))
    expect(got(await procedures['fit.across'](ask))).toEqual(bought)
    expect(got(await procedures['fit.across']({ ...ask, buy: false }))).toMatchObject({ outcome: 'none', chains: [] })
  })

  it('offers another hose end only on the side that is a hose', async () => {
    const procedures = own()
    const { instead } = got(await procedures['fit.across']({ ...ask, hoseEnds: ['b'] }))
    expect(instead.length).toBeGreaterThan(0)
    for (const sentence of instead) expect(sentence).toContain('the second end')
    expect(got(await procedures['fit.across']({ ...ask, hoseEnds: [] })).instead).toEqual([])
    expect(problems(await procedures['fit.across']({ ...ask, b: 'what' }))).toHaveLength(1)
  })
})

describe('what this is', () => {
  it('is answered from readings, with the measurement that tells the leading ones apart', async () => {
    const procedures = own()
    const words = got(await procedures.identify({ readings: ['od=22.1mm', 'pitch=1.81mm'], units: 'metric' }))
    expect(words.candidates[0]).toMatchObject({ name: '7/8-14 male', rank: 1 })
    expect(words.further?.expected).toEqual(['7/8-14: 60°', 'G 5/8: 55°'])
    expect(problems(await procedures.identify({ readings: ['od=22.1', 'colour=red'], units: 'inch' }))).toEqual([
      'identify.unknown_name',
      'od: quantity.no_unit',
    ])
  })
})
