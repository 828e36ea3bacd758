import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { allThreads } from '../../../../src/shared/model/end/threads.ts'
import type { Sex, Thread } from '../../../../src/shared/model/end/types.ts'
import { crestOf } from '../../../../src/shared/planner/identify/crests.ts'
import { identify } from '../../../../src/shared/planner/identify/identify.ts'
import { readReadings } from '../../../../src/shared/planner/identify/read.ts'
import type { IdentifyResult, ThreadCandidate } from '../../../../src/shared/planner/identify/types.ts'
import { TAPERS } from '../../../../src/shared/standards/tapers.ts'
import { DOM_SIZES } from '../../../../src/shared/standards/tubes/dom-sizes.ts'

const ask = (...words: string[]): IdentifyResult => {
  const read = readReadings(words)
  if (!read.ok) throw new Error(JSON.stringify(read.issues))
  return identify(read.value)
}
const mmText = (metres: number): string => `${(metres * 1000).toFixed(4)}mm`
const names = (r: IdentifyResult, match?: string): string[] =>
  r.candidates.filter((c) => match === undefined || c.match === match).map((c) => (c.what === 'thread' ? c.thread.designation : c.row))
const thread = (designation: string): Thread => {
  const found = allThreads().find((t) => t.designation === designation)
  if (!found) throw new Error(designation)
  return found
}

describe('where the crests of a real thread lie', () => {
  // limits as the standards' own tables print them, from memory: ASME B1.1 class 2A/2B, ISO 965-2 6g/6H, ISO 228-1 class A
  it.each([
    ['7/8-14', 'male', 0.8631 * 25.4, 22.225],
    ['1/2-20', 'male', 0.4906 * 25.4, 12.7],
    ['3/8-24', 'female', 0.33 * 25.4, 0.34 * 25.4],
    ['7/8-14', 'female', 0.798 * 25.4, 0.814 * 25.4],
    ['#10-32', 'female', 0.156 * 25.4, 0.164 * 25.4],
    ['M16x1.5', 'male', 15.732, 16],
    ['M16x1.5', 'female', 14.376, 14.676],
    ['M10x1', 'female', 8.917, 9.153],
    ['G 1/2', 'male', 20.671, 20.955],
    ['G 1/4', 'female', 11.445, 11.89],
  ] as const)('%s %s: %f to %f mm', (designation, sex, least, most) => {
    const crest = crestOf(thread(designation), sex)
    // the formulas reproduce the printed limits to their rounding: 0.0005 in or 0.006 mm
    expect(Math.abs(crest.least * 1000 - least)).toBeLessThan(0.02)
    expect(Math.abs(crest.most * 1000 - most)).toBeLessThan(0.02)
  })

  it('is never wider than a turn of the thread is deep twice over, nor the wrong way round', () => {
    for (const t of allThreads()) {
      for (const sex of ['male', 'female'] as const) {
        const { least, most } = crestOf(t, sex)
        expect(most, t.designation).toBeGreaterThanOrEqual(least)
        expect(most - least, t.designation).toBeLessThan(t.pitch * 1.2)
      }
    }
  })
})

describe('every thread of the tables, measured as a real one is', () => {
  const cases = allThreads().flatMap((t) =>
    (['male', 'female'] as const)
      .filter((sex) => (t.family === 'r' ? sex === 'male' : t.family === 'rc' || t.family === 'rp' ? sex === 'female' : true))
      .map((sex) => [t, sex] as const),
  )
  const middle = (t: Thread, sex: Sex): number => {
    const { least, most } = crestOf(t, sex)
    return (least + most) / 2
  }
  it.each([
    ['right on', 0],
    ['0.05 mm over', 0.05e-3],
    ['0.05 mm under', -0.05e-3],
  ])('is among the consistent ones, %s', (_how, error) => {
    for (const [t, sex] of cases) {
      const result = ask(`${sex === 'male' ? 'od' : 'id'}=${mmText(middle(t, sex) + error)}`, `pitch=${mmText(t.pitch)}`)
      expect(names(result, 'consistent'), `${t.designation} ${sex}`).toContain(t.designation)
    }
  })

  it('stays so with the pitch a hundredth off, and by threads per inch', () => {
    for (const [t, sex] of cases) {
      const diameter = `${sex === 'male' ? 'od' : 'id'}=${mmText(middle(t, sex))}`
      expect(names(ask(diameter, `pitch=${mmText(t.pitch + 0.01e-3)}`), 'consistent')).toContain(t.designation)
      expect(names(ask(diameter, `tpi=${0.0254 / t.pitch}`), 'consistent')).toContain(t.designation)
    }
  })
})

describe('look-alikes', () => {
  it('names 7/8-14 and G 5/8 for 22.1 mm and 1.81 mm, and the gauge that parts them', () => {
    const result = ask('od=22.1mm', 'pitch=1.81mm')
    expect(names(result)).toEqual(['7/8-14', 'G 5/8'])
    expect(result.further?.property).toBe('flank angle')
    expect(result.further?.expected.map((e) => ('si' in e ? Math.round((e.si * 180) / Math.PI) : 0))).toEqual([60, 55])
  })

  // the pairs of the look-alike list that a calliper and a coarse look at the pitch take for one another
  it.each([
    ['1-1/16-12', 'M27x2', 'od=26.8mm', 'pitch=2.06mm', 'pitch over ten turns'],
    ['5/8-18', 'M16x1.5', 'od=15.8mm', 'pitch=1.45mm', 'pitch over ten turns'],
    ['9/16-18', 'M14x1.5', 'od=14mm', 'pitch=1.45mm', 'pitch over ten turns'],
    ['7/8-18', 'M22x1.5', 'od=22mm', 'pitch=1.46mm', 'pitch over ten turns'],
    ['3/4-16', '3/4-18', 'od=19mm', 'pitch=1.5mm', 'pitch over ten turns'],
    ['7/16-20', '7/16-24', 'od=11mm', 'pitch=1.16mm', 'pitch over ten turns'],
    ['1-14', '1-12', 'od=25.3mm', 'pitch=1.97mm', 'pitch over ten turns'],
    ['11/16-18', '11/16-16', 'od=17.4mm', 'pitch=1.5mm', 'pitch over ten turns'],
    ['7/8-18', '7/8-14', 'od=22.1mm', 'pitch=1.61mm', 'pitch over ten turns'],
  ])('%s and %s: both are named, and the pitch over ten turns parts them', (a, b, od, pitch, property) => {
    const result = ask(od, pitch, 'u=0.1mm', 'upitch=0.21mm')
    expect(names(result, 'consistent')).toEqual(expect.arrayContaining([a, b]))
    expect(result.further?.property).toBe(property)
  })

  it('keeps every pair of the list apart when each is measured well', () => {
    const pairs = [
      ['1/2-20', 'M12x1.25'],
      ['7/16-20', 'M12x1.25'],
      ['3/8-24', 'M10x1'],
      ['9/16-18', 'M14x1.5'],
      ['5/8-18', 'M16x1.5'],
      ['11/16-18', 'M18x1.5'],
      ['3/4-16', 'M18x1.5'],
      ['3/4-16', 'M20x1.5'],
      ['7/8-14', 'M22x1.5'],
      ['7/8-14', 'G 5/8'],
      ['7/8-18', 'M22x1.5'],
      ['1-1/16-12', 'M27x2'],
      ['1-5/16-12', 'M33x2'],
      ['G 1/4', 'M14x1.5'],
      ['G 1/4', '1/2-20'],
      ['G 3/8', 'M16x1.5'],
      ['G 1/8', 'M10x1'],
      ['G 1/2', 'M22x1.5'],
    ]
    for (const [real, taken] of pairs.flatMap(([a, b]) => [
      [a, b],
      [b, a],
    ]) as [string, string][]) {
      const t = thread(real)
      const { least, most } = crestOf(t, 'male')
      const result = ask(`od=${mmText((least + most) / 2)}`, `pitch=${mmText(t.pitch)}`, 'taper=no')
      expect(names(result)[0], `${real}, not ${taken}`).toBe(real)
      expect(names(result, 'consistent')).not.toContain(taken)
    }
  })

  it('says M22x1.75 is none of them: what was measured is 14 per inch', () => {
    expect(names(ask('od=22mm', 'pitch=1.75mm', 'upitch=0.07mm'))).toContain('7/8-14')
  })

  it('tells 1/2 NPT from G 1/2 and R 1/2, all of 14 per inch', () => {
    const open = ask('od=20.8mm', 'tpi=14')
    expect(names(open, 'consistent')).toEqual(expect.arrayContaining(['1/2-14 NPT', '1/2-14 NPTF', 'G 1/2', 'R 1/2']))
    expect(['taper', 'flank angle']).toContain(open.further?.property)
    expect(names(ask('od=20.8mm', 'tpi=14', 'taper=no'), 'consistent')).toEqual(['G 1/2'])
    const american = ask('od=20.8mm', 'tpi=14', 'taper=yes', 'angle=60')
    expect(names(american)).toEqual(['1/2-14 NPT', '1/2-14 NPTF'])
    // the same in every size: only a marking or the papers say which
    expect(american.candidates.map((c) => c.rank)).toEqual([1, 1])
    expect(american.further?.property).toBe('papers')
  })
})

describe('the seal that is seen', () => {
  const ports = (r: IdentifyResult) => (r.candidates[0] as ThreadCandidate).ports.map((p) => p.family)

  it('picks the family among those of one thread', () => {
    expect(ports(ask('od=14.2mm', 'tpi=18'))).toEqual(expect.arrayContaining(['flare 37', 'o-ring boss', 'face seal']))
    expect(ports(ask('od=14.2mm', 'tpi=18', 'seal=37° cone'))).toEqual(['flare 37'])
    expect(ports(ask('od=14.2mm', 'tpi=18', 'seal=flat face with O-ring'))).toEqual(['face seal'])
    expect(ports(ask('od=17.9mm', 'pitch=1.5mm', 'seal=o-ring on nose'))).toEqual(['tube o-ring'])
  })

  it('is what to look at next when only the seal is open', () => {
    const result = ask('od=20.5mm', 'tpi=16')
    expect(names(result, 'consistent')).toEqual(['13/16-16'])
    expect(result.further).toMatchObject({ property: 'seal' })
  })

  it('that no end of this thread has makes the candidate a doubtful one', () => {
    expect(ask('od=22mm', 'tpi=18', 'seal=37').candidates[0]).toMatchObject({ match: 'nearly', sealUnexplained: true })
  })

  it('is not asked of a left-hand thread, which no hydraulic end has', () => {
    const left = ask('od=22mm', 'tpi=18', 'hand=left')
    expect(left.candidates[0]).toMatchObject({ thread: { designation: '7/8-18' }, hand: 'left', ports: [] })
    expect(names(ask('od=20.8mm', 'tpi=14', 'hand=left'))).not.toContain('G 1/2')
  })
})

describe('tapers', () => {
  it('are found, each of them, by two good diameters', () => {
    for (const row of TAPERS.rows) {
      const result = ask(`d1=18mm`, `d2=${(18 - 25 * row.ratio).toFixed(5)}mm`, 'length=25mm', 'u=0.01mm', 'ulength=0.05mm')
      expect(names(result, 'consistent'), row.name).toContain(row.name)
      expect(names(result)[0]).toBe(row.name)
    }
  })

  it('7° and 1.5 in/ft are not told apart by a calliper over 20 mm, and it says what would', () => {
    const result = ask('d1=17.8mm', 'd2=15.3mm', 'length=20mm')
    expect(names(result, 'consistent').sort()).toEqual(['1:8', '7° included'])
    const { within = 0, expected } = result.further ?? { expected: [] }
    // REFERENCE 3.2: 0.15° apart, 0.002 in over 3/4 in
    expect(expected.map((e) => ('si' in e ? (e.si * 1000).toFixed(3) : ''))).toEqual(['2.500', '2.447'])
    const fine = ask('d1=17.8mm', 'd2=15.3mm', 'length=20mm', `u=${mmText(within * 0.8)}`, 'ulength=0.001mm')
    expect(names(fine, 'consistent')).toEqual(['1:8'])
  })

  it('does not mind which diameter comes first', () => {
    expect(names(ask('d2=17.8mm', 'd1=15.3mm', 'length=20mm'))).toEqual(names(ask('d1=17.8mm', 'd2=15.3mm', 'length=20mm')))
  })

  it('has no candidate for a cylinder or a 12° cone', () => {
    expect(ask('d1=17.8mm', 'd2=17.8mm', 'length=20mm').candidates).toEqual([])
    expect(ask('d1=20mm', 'd2=15.7mm', 'length=20mm').candidates).toEqual([])
  })
})

describe('tubes and splines', () => {
  it('finds every stocked tube by outside diameter and wall', () => {
    for (const row of DOM_SIZES.rows) {
      expect(names(ask('tube', `od=${row.od_in}in`, `wall=${row.wall_in}in`), 'consistent'), row.size).toContain(row.size)
    }
  })

  it('names all walls where only the outside was measured, and asks for the wall', () => {
    const result = ask('tube', 'od=1.5in')
    expect(names(result).sort()).toEqual(['1.500x0.120', '1.500x0.188', '1.500x0.250', '1.500x0.375'])
    expect(result.further?.property).toBe('wall')
  })

  it('finds input shafts by what their charts say is measured', () => {
    expect(names(ask('splines=36', 'od=0.803in'), 'consistent')).toEqual(['13/16-36'])
    expect(names(ask('splines=30', 'od=0.722in'), 'consistent')).toEqual(['3/4-30'])
    expect(ask('splines=36').further?.property).toBe('diameter over splines')
    expect(ask('splines=33').candidates).toEqual([])
  })
})

describe('readings as typed', () => {
  const codes = (...words: string[]): string[] => {
    const read = readReadings(words)
    return read.ok ? [] : read.issues.map((i) => i.code)
  }

  it.each(['od=22.1mm ± 0.05mm', 'od=22.1 ± 0.05 mm', 'od=22.1mm+-0.05mm', 'od=22.1 mm +/- 0.05 mm'])('%s', (word) => {
    const read = readReadings([word])
    expect(read.ok && read.value).toMatchObject({ diameter: { assumed: false } })
    const { diameter } = (read.ok ? read.value : {}) as { diameter: { value: number; u: number } }
    expect(diameter.value).toBeCloseTo(0.0221, 9)
    expect(diameter.u).toBeCloseTo(0.00005, 9)
  })

  it('have an uncertainty assumed and said so where none is given', () => {
    const read = readReadings(['od=22.1mm', 'pitch=1.81mm', 'u=0.02mm'])
    expect(read.ok && read.value).toMatchObject({ diameter: { assumed: false }, pitch: { assumed: true } })
  })

  it('report every fault at once', () => {
    expect(codes('odd=3', 'od=2 parsecs', 'pitch=1.5mm', 'tpi=14', 'seal=wax')).toEqual(
      expect.arrayContaining(['identify.unknown_name', 'quantity.unknown_unit', 'identify.contradicts', 'identify.not_allowed']),
    )
    expect(codes('pitch=1.5mm')).toEqual(['identify.missing'])
    expect(codes('od=22', 'od=22mm')).toEqual(expect.arrayContaining(['identify.twice', 'quantity.no_unit']))
    expect(codes('od=22mm', 'sex=female')).toEqual(['identify.contradicts'])
    expect(codes('d1=18mm', 'd2=16mm')).toEqual(['identify.missing'])
    expect(codes('od=-3mm')).toEqual(['quantity.out_of_range'])
    expect(codes('tube', 'od=20mm', 'id=30mm')).toEqual(['identify.contradicts'])
  })

  it('never throw, whatever is typed', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.oneof(
            fc.string(),
            fc
              .tuple(fc.constantFrom('od', 'id', 'd1', 'd2', 'length', 'tpi', 'taper', 'u', 'wall'), fc.string())
              .map(([n, v]) => `${n}=${v}`),
          ),
          { maxLength: 6 },
        ),
        (words) => {
          const read = readReadings(words)
          if (read.ok) identify(read.value)
          else expect(read.issues.length).toBeGreaterThan(0)
        },
      ),
      { numRuns: 3000 },
    )
  })
})

describe('the answer, whatever the readings', () => {
  it('has consistent candidates first, and loses none of them when the uncertainty grows', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 60, noNaN: true }),
        fc.double({ min: 0.5, max: 3.5, noNaN: true }),
        fc.double({ min: 0.01, max: 0.2, noNaN: true }),
        fc.constantFrom('od', 'id'),
        (diameter, pitch, u, name) => {
          const at = (factor: number) =>
            ask(
              `${name}=${diameter.toFixed(3)}mm`,
              `pitch=${pitch.toFixed(3)}mm`,
              `u=${(u * factor).toFixed(4)}mm`,
              `upitch=${(u * factor).toFixed(4)}mm`,
            )
          const [narrow, wide] = [at(1), at(1.2)]
          const matches = narrow.candidates.map((c) => c.match)
          expect(matches).toEqual([...matches].sort())
          const ranks = narrow.candidates.map((c) => c.rank)
          expect(ranks).toEqual([...ranks].sort((x, y) => x - y))
          if (wide.candidates.length < 12) expect(names(wide, 'consistent')).toEqual(expect.arrayContaining(names(narrow, 'consistent')))
          if (narrow.candidates.length > 1) expect(narrow.further).not.toBeNull()
        },
      ),
      { numRuns: 500 },
    )
  })
})
