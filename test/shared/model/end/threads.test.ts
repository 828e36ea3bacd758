import { describe, expect, it } from 'vitest'
import { parseEnd } from '../../../../src/shared/model/end/parse.ts'
import { allThreads, threadsNear } from '../../../../src/shared/model/end/threads.ts'
import { mm } from '../../../../src/shared/quantities/make.ts'
import { METRIC_THREADS } from '../../../../src/shared/standards/threads/metric.ts'
import { G_R_THREADS, NPT_THREADS } from '../../../../src/shared/standards/threads/pipe.ts'
import { UNIFIED_THREADS } from '../../../../src/shared/standards/threads/unified.ts'
import { end, trouble } from './read.ts'

describe('threads as the trade writes them', () => {
  // the designations of issue 3, item 2, and their like
  it.each([
    ['7/8-14 UNF LH', '7/8-14', 'left', null],
    ['7/8-18 LH female', '7/8-18', 'left', 'female'],
    ['7/8-18 L.H. female', '7/8-18', 'left', 'female'],
    ['LH 7/8-18 internal', '7/8-18', 'left', 'female'],
    ['7/8-18 left-hand female', '7/8-18', 'left', 'female'],
    ['7/8-18 left hand thread male', '7/8-18', 'left', 'male'],
    ['7/8-18 RH male', '7/8-18', 'right', 'male'],
    ['7/8-18 male', '7/8-18', 'right', 'male'],
    ['7/8"-18 male', '7/8-18', 'right', 'male'],
    ['7/8″-18 male', '7/8-18', 'right', 'male'],
    ['7/8 in - 18 male', '7/8-18', 'right', 'male'],
    ['⅞-18 male', '7/8-18', 'right', 'male'],
    ['7/8–18 male', '7/8-18', 'right', 'male'],
    ['7/8-18 tpi male', '7/8-18', 'right', 'male'],
    ['7/8-18 UNS-2A male', '7/8-18', 'right', 'male'],
    ['.875-14 UNF', '7/8-14', 'right', null],
    ['0.875-14', '7/8-14', 'right', null],
    ['1 1/4-12 UNF stud', '1-1/4-12', 'right', 'male'],
    ['1-1/4-12 UNF', '1-1/4-12', 'right', null],
    ['1¼-12', '1-1/4-12', 'right', null],
    ['1.25-12', '1-1/4-12', 'right', null],
    ['#10-32 male', '#10-32', 'right', 'male'],
    ['10-32 male', '#10-32', 'right', 'male'],
    ['No. 10-32 UNF', '#10-32', 'right', null],
    ['no 10-24', '#10-24', 'right', null],
    ['1-8 UNC', '1-8', 'right', null],
    ['m18 x 1.5', 'M18x1.5', 'right', null],
    ['M18×1.5 male', 'M18x1.5', 'right', 'male'],
    ['M18*1.5 male', 'M18x1.5', 'right', 'male'],
    ['M 18 x 1,5 male', 'M18x1.5', 'right', 'male'],
    ['M18x1.5-6g male', 'M18x1.5', 'right', 'male'],
    ['M12 female', 'M12x1.75', 'right', 'female'],
    ['M12x1.75 LH female', 'M12x1.75', 'left', 'female'],
    ['3/8 NPT', '3/8-18 NPT', 'right', null],
    ['3/8" NPT female', '3/8-18 NPT', 'right', 'female'],
    ['3/8″ NPT female', '3/8-18 NPT', 'right', 'female'],
    ['3/8-18 NPT male', '3/8-18 NPT', 'right', 'male'],
    ['NPT 3/8 male', '3/8-18 NPT', 'right', 'male'],
    ['1 1/4 NPT', '1-1/4-11.5 NPT', 'right', null],
    ['1-1/4 NPTF', '1-1/4-11.5 NPTF', 'right', null],
    ['1/4 nptf female', '1/4-18 NPTF', 'right', 'female'],
    // ISO 228-1 gives classes to the outside thread only
    ['G 3/8 A', 'G 3/8', 'right', 'male'],
    ['G3/8 male', 'G 3/8', 'right', 'male'],
    ['G 1 1/4 female', 'G 1-1/4', 'right', 'female'],
    ['3/8 BSPP male', 'G 3/8', 'right', 'male'],
    ['BSPT 3/8', 'R 3/8', 'right', 'male'],
    ['R 1/4', 'R 1/4', 'right', 'male'],
    ['Rc1/2', 'Rc 1/2', 'right', 'female'],
    ['Rp 1/2', 'Rp 1/2', 'right', 'female'],
  ] as const)('%s', (typed, designation, hand, sex) => {
    const read = end(typed, 'thread')
    expect({ designation: read.thread.designation, hand: read.hand, sex: read.sex }).toEqual({ designation, hand, sex })
  })

  it('keep their class, with the capitals that tell inside from outside', () => {
    expect(end('M18x1.5-6g', 'thread').fitClass).toBe('6g')
    expect(end('M18x1.5-6H female', 'thread').fitClass).toBe('6H')
    expect(end('7/8-14 UNF-2a', 'thread').fitClass).toBe('2A')
    expect(end('7/8-14UNF-3B female', 'thread').fitClass).toBe('3B')
    expect(end('G 3/8 A', 'thread').fitClass).toBe('A')
    expect(end('male G 3/8 A', 'thread').fitClass).toBe('A')
    expect(end('male g 3/8 b', 'thread').fitClass).toBe('B')
    expect(end('7/8-14', 'thread')).not.toHaveProperty('fitClass')
  })

  it.each([
    ['7/8-15', 'end.unknown_thread'],
    ['7/8-18 UNC', 'read as'],
    ['7/8-14 UNC', 'end.contradicts'],
    ['1/2-13 UNF', 'end.contradicts'],
    ['M22x1.75', 'end.unknown_thread'],
    ['M17', 'end.unknown_thread'],
    ['3/16 NPT', 'end.unknown_thread'],
    ['3/8-14 NPT', 'end.contradicts'],
    ['7/8-18 LH RH', 'end.contradicts'],
    ['7/8-18 male female', 'end.contradicts'],
    ['R 1/4 female', 'end.contradicts'],
    ['Rc 1/4 male', 'end.contradicts'],
    ['7/8-18 LH female somehow', 'end.leftover'],
    ['7/8-18 7/8-14', 'end.leftover'],
    ['M18x1.5x40', 'end.leftover'],
    ['7/8', 'end.not_understood'],
    ['1/0-13', 'end.not_understood'],
    ['', 'end.not_understood'],
    ['LH', 'end.not_understood'],
    ['-6', 'end.dash_without_family'],
    ['-6 male', 'end.dash_without_family'],
    ['x'.repeat(161), 'end.too_long'],
  ])('%s: %s', (typed, code) => {
    expect(trouble(typed)).toMatch(new RegExp(`^${code}`))
  })
})

describe('a designation that no table has gets a useful answer', () => {
  it('M22×1.75 is measured 1.81 mm: 14 per inch, so look at 7/8-14 or G 5/8', () => {
    for (const typed of ['M22×1.75', 'M22x1.81', 'm22 x 1.8 male']) {
      const read = parseEnd(typed)
      const facts = read.ok ? {} : (read.issues[0]?.facts ?? {})
      expect(facts.near).toContain('7/8-14')
      expect(facts.near).toContain('G 5/8')
      expect(facts.perInch).toBeCloseTo(25.4 / Number(/x ?(.+?)(?: |$)/i.exec(typed.replace('×', 'x'))?.[1]), 9)
    }
  })

  it('names the threads that the size has', () => {
    const read = parseEnd('7/8-40')
    expect(read.ok ? [] : read.issues[0]?.facts.others).toEqual(expect.arrayContaining(['7/8-9', '7/8-14', '7/8-18']))
  })

  it('comes nearest first, six at most, and never the inside forms of the same thread', () => {
    for (const t of allThreads()) {
      const near = threadsNear(t.major, t.pitch)
      expect(near.length).toBeLessThanOrEqual(6)
      expect(near.some((n) => ['nptf', 'rc', 'rp'].includes(n.family))).toBe(false)
    }
    expect(threadsNear(mm(18), mm(1.5))[0]?.designation).toBe('M18x1.5')
  })
})

const spellings = {
  unified: (size: string, tpi: number) => {
    const [, whole, fraction] = /^(?:(\d+)-)?(\d+\/\d+)$/.exec(size) ?? []
    const sizes = [
      size,
      ...(whole === undefined ? [] : [`${whole} ${fraction}`]),
      ...(size.startsWith('#') ? [`No. ${size.slice(1)}`] : []),
    ]
    return sizes.flatMap((s) => [
      `${s}-${tpi}`,
      `${s} - ${tpi}`,
      `  ${s}-${tpi}  `,
      `${s}-${tpi} UN`,
      `${s}–${tpi} male`,
      ...(s.startsWith('#') || s.startsWith('No') ? [] : [`${s}"-${tpi}`, `${s} in-${tpi}`]),
    ])
  },
  metric: (designation: string) => [
    designation,
    designation.toLowerCase(),
    designation.replace('x', '×'),
    designation.replace('x', ' x '),
    designation.replace('M', 'M '),
    designation.replace('.', ','),
    `${designation}-6g`,
  ],
}

describe('every row of every thread table', () => {
  it('Unified: is read by its own designation in many spellings as itself', () => {
    for (const row of UNIFIED_THREADS.rows) {
      const size = row.designation.slice(0, row.designation.lastIndexOf('-'))
      for (const typed of [
        ...spellings.unified(size, row.tpi),
        `${row.designation} ${row.series}`,
        `${row.designation} ${row.series}-2A`,
      ]) {
        expect({ typed, read: end(typed, 'thread').thread.designation }).toEqual({ typed, read: row.designation })
      }
      const { major, pitch } = end(row.designation, 'thread').thread
      expect(major).toBeCloseTo(row.major_in * 0.0254, 12)
      expect(pitch).toBeCloseTo(0.0254 / row.tpi, 12)
    }
  })

  it('metric: is read by its own designation in many spellings as itself', () => {
    for (const row of METRIC_THREADS.rows) {
      const designations = row.series === 'coarse' ? [`M${row.major_mm}`, `m ${row.major_mm} female`] : []
      for (const typed of [...spellings.metric(row.designation), ...designations]) {
        expect({ typed, read: end(typed, 'thread').thread.designation }).toEqual({ typed, read: row.designation })
      }
    }
  })

  it('American pipe: likewise', () => {
    for (const { size, tpi } of NPT_THREADS.rows) {
      for (const [family, name] of [
        ['npt', 'NPT'],
        ['nptf', 'NPTF'],
      ]) {
        const spaced = size.replace('-', ' ')
        for (const typed of [
          `${size} ${name}`,
          `${spaced} ${name}`,
          `${size}-${tpi} ${name}`,
          `${size}" ${name} male`,
          `${spaced} in ${name?.toLowerCase()}`,
          `${name} ${size}`,
          `${name} ${spaced} female`,
        ]) {
          const { thread } = end(typed, 'thread')
          expect({ typed, is: thread.designation, family: thread.family }).toEqual({ typed, is: `${size}-${tpi} ${name}`, family })
        }
      }
    }
  })

  it('British pipe: likewise', () => {
    for (const { size, r_exists } of G_R_THREADS.rows) {
      for (const [family, name, words] of [
        ['g', 'G', 'BSPP'],
        ['r', 'R', 'BSPT'],
        ['rc', 'Rc', undefined],
        ['rp', 'Rp', undefined],
      ] as const) {
        const spaced = size.replace('-', ' ')
        const typed = [`${name} ${size}`, `${name}${size}`, `${name} ${spaced}`, `${name.toLowerCase()} ${size}"`]
        if (words) typed.push(`${size} ${words}`, `${words} ${spaced}`, `${spaced} in ${words}`)
        for (const t of typed) {
          if (family !== 'g' && !r_exists) expect(trouble(t)).toBe('end.unknown_thread')
          else {
            const { thread } = end(t, 'thread')
            expect({ t, is: thread.designation, family: thread.family }).toEqual({ t, is: `${name} ${size}`, family })
          }
        }
      }
    }
  })

  it('has one designation only', () => {
    const all = allThreads().map((t) => t.designation)
    expect(new Set(all).size).toBe(all.length)
  })
})
