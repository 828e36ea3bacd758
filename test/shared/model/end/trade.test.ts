import { describe, expect, it } from 'vitest'
import { parseEnd } from '../../../../src/shared/model/end/parse.ts'
import type { End } from '../../../../src/shared/model/end/types.ts'
import { trouble } from './read.ts'

/** What an end is, in few words. */
function brief(end: End): string {
  switch (end.kind) {
    case 'thread':
      return [end.thread.designation, end.hand === 'left' ? 'LH' : '', end.sex ?? '?'].filter(Boolean).join(' ')
    case 'port':
      return `${end.family} ${end.size} ${end.sex ?? '?'}`
    case 'round':
      return `${end.form} ${end.diameter === null ? '?' : Math.round(end.diameter * 1e6) / 1e3}`
    case 'spline':
      return `${end.count} splines ${end.diameter === null ? '?' : Math.round(end.diameter * 1e6) / 1e3} ${end.sex ?? '?'}`
    default:
      return end.kind
  }
}

const reading = (typed: string): string => {
  const read = parseEnd(typed)
  return read.ok ? brief(read.value) : read.issues.map((i) => i.code).join()
}

describe('designations as shops and catalogues type them', () => {
  it.each([
    // the series names the pitch
    ['1/2 UNF male', '1/2-20 male'],
    ['5/8 UNC', '5/8-11 ?'],
    ['1 UNF', '1-12 ?'],
    ['3/4"UNF female', '3/4-16 female'],
    ['10 UNF', '#10-32 ?'],
    ['1/2 UNF-2B', '1/2-20 female'],
    // other marks between size and pitch
    ['7/8 x 18 LH female', '7/8-18 LH female'],
    ['7/8 x 14 tpi', '7/8-14 ?'],
    ['7/8 14 tpi male', '7/8-14 male'],
    ['1 1/4 12 tpi male', '1-1/4-12 male'],
    ['3/4-16 threads per inch', '3/4-16 ?'],
    ['M18-1.5 male', 'M18x1.5 male'],
    ['M18-1.5-6g', 'M18x1.5 male'],
    ['M18 pitch 1.5', 'M18x1.5 ?'],
    ['M12-6g', 'M12x1.75 male'],
    ['metric M18x1.5 male', 'M18x1.5 male'],
    ['M13x1.25 female', 'M13x1.25 female'],
    // sides
    ['M12x1.75 bolt', 'M12x1.75 male'],
    ['bolt M12x1.75', 'M12x1.75 male'],
    ['1/2-20 bolt', '1/2-20 male'],
    ['M12 nut', 'M12x1.75 female'],
    ['7/8-14 bung', '7/8-14 female'],
    ['1/4 MNPT', '1/4-18 NPT male'],
    ['FNPT 1/4', '1/4-18 NPT female'],
    ['1/2 FNPTF', '1/2-14 NPTF female'],
    ['1/2 NPT M', '1/2-14 NPT male'],
    ['1/2 NPTF male', '1/2-14 NPTF male'],
    ['3/8 BSPT female', 'Rc 3/8 female'],
    ['3/8 FBSPT', 'Rc 3/8 female'],
    ['1/4 MBSPP', 'G 1/4 male'],
    ['7/8-18 UNS-2A', '7/8-18 male'],
    ['M16x1.5-6H', 'M16x1.5 female'],
    // a typist without capitals does not mean the small letter
    ['m16x1.5-6h', 'M16x1.5 ?'],
    ['7/8-18 LH threaded male', '7/8-18 LH male'],
    // dash families
    ['SAE -8 ORB', 'o-ring boss -8 ?'],
    ['SAE-6 ORB male', 'o-ring boss -6 male'],
    ['-8 SAE ORB port', 'o-ring boss -8 female'],
    ['9/16-18 ORB plug', 'o-ring boss -6 male'],
    ['-8 STOR', 'o-ring boss -8 ?'],
    ['-8 JIC swivel', 'flare 37 -8 female'],
    ['-8 JIC female swivel', 'flare 37 -8 female'],
    ['-6 JIC nut', 'flare 37 -6 female'],
    ['-6 JIC cap', 'flare 37 -6 female'],
    ['AN6 male', 'flare 37 -6 male'],
    ['6AN', 'flare 37 -6 ?'],
    ['-6AN female', 'flare 37 -6 female'],
    ['JIC6 male', 'flare 37 -6 male'],
    ['6JIC', 'flare 37 -6 ?'],
    ['-6 MJIC', 'flare 37 -6 male'],
    ['-6 FJIC', 'flare 37 -6 female'],
    ['FJIC -6 swivel', 'flare 37 -6 female'],
    ['37° JIC -6 male', 'flare 37 -6 male'],
    ['37 deg JIC flare -6', 'flare 37 -6 ?'],
    ['JIC 37 deg flare -6 male', 'flare 37 -6 male'],
    ['AN flare -6', 'flare 37 -6 ?'],
    ['-6 JIC male fitting', 'flare 37 -6 male'],
    ['8 ORFS female', 'face seal -8 female'],
    ['-8 FORFS', 'face seal -8 female'],
    ['3/8 SAE 45° flare nut', 'flare 45 -6 female'],
    ['SAE 45 -6 male', 'flare 45 -6 male'],
    ['-6 SAE flare male', 'flare 45 -6 male'],
    ['1/4 inverted flare nut male', 'inverted flare -4 male'],
    ['3/8-24 inverted flare nut', 'inverted flare -3 male'],
    ['3/16 IF port', 'inverted flare -3 female'],
    // metric and British
    ['M14x1.5 banjo bolt', 'banjo M14x1.5 male'],
    ['banjo bolt M10x1', 'banjo M10x1 male'],
    ['M18x1.5 ORB port', 'iso 6149 M18x1.5 female'],
    ['metric O-ring boss M16x1.5', 'iso 6149 M16x1.5 ?'],
    ['G1/2 bonded washer male', 'iso 1179 G 1/2 male'],
    ['1/2 BSPP male with bonded seal', 'iso 1179 G 1/2 male'],
    ['M14x1.5 bonded washer male', 'iso 9974 M14x1.5 male'],
    ['1/2 BSP ISO 1179 port', 'iso 1179 G 1/2 female'],
    ['1/4 BSP 60° cone male', 'bsp cone 60 G 1/4 male'],
    ['BSP 60° cone 3/8', 'bsp cone 60 G 3/8 ?'],
    ['G 1/4 male 30° seat', 'bsp cone 60 G 1/4 male'],
    ['BSPP 3/8 female swivel', 'bsp cone 60 G 3/8 female'],
    ['G 1/2 swivel', 'bsp cone 60 G 1/2 female'],
    ['DIN 12L male', 'cone 24 light 12L male'],
    ['M20x1.5 DIN 12S', 'cone 24 heavy 12S ?'],
    // sizes before the word
    ['1/2 in bolt', 'pin 12.7'],
    ['12 mm bore', 'bore 12'],
    ['1 1/4 in clamp', 'clamp 31.75'],
    ['1.25" tube', 'tube 31.75'],
    ['3/4 in rod end bore', 'bore 19.05'],
    // splines by size
    ['3/4-36 spline shaft', '36 splines 19.05 male'],
    ['13/16-36 splined hub', '36 splines 20.638 female'],
    ['36 splines 13/16 in hub', '36 splines 20.638 female'],
    ['32-spline hub', '32 splines ? female'],
    ['weld-in', 'weld'],
  ])('%s is %s', (typed, what) => {
    expect(reading(typed)).toBe(what)
  })
})

describe('designations that say too little, too much or two things', () => {
  it.each([
    // a series of many pitches names none
    ['1/2 UN', 'end.not_understood'],
    ['7/8 UNS', 'end.not_understood'],
    ['11/16 UNC', 'end.unknown_thread'],
    ['5/8 fine', 'end.not_understood'],
    // no such pitch, no such length
    ['M18-1.75', 'end.unknown_thread'],
    ['M10x1.5x40', 'end.leftover'],
    ['7/8 x 15', 'end.unknown_thread'],
    ['1/2 x 2 in', 'end.unknown_thread'],
    ['M13 male', 'end.unknown_thread'],
    // SAE alone may be a flare or a boss; BSP alone parallel or taper; pipe alone anything
    ['SAE -8', 'end.dash_without_family'],
    ['1/4 BSP male', 'end.not_understood'],
    ['3/8 pipe', 'end.not_understood'],
    ['1/2 NPSM', 'end.not_understood'],
    // SAE makes no metric port of these
    ['SAE M16x1.5 ISO 6149', 'end.leftover'],
    ['metric 7/8-14', 'end.leftover'],
    ['metric -6 JIC', 'end.leftover'],
    // both sides
    ['7/8-14 bolt nut', 'end.contradicts'],
    ['-6 MJIC female', 'end.contradicts'],
    ['-6 JIC nut male', 'end.contradicts'],
    ['3/8 inverted flare nut female', 'end.contradicts'],
    ['1/2-20-2B male', 'end.contradicts'],
    ['1/2-20-2A nut', 'end.contradicts'],
    ['M16x1.5-6g female', 'end.contradicts'],
    ['G 1/4 A female', 'end.contradicts'],
    ['R 1/4 nut', 'end.contradicts'],
    // words that are not said of an end, or say more than an end holds
    ['BSPP 3/8 female flat seat swivel', 'end.leftover'],
    ['7/8-18 jam nut', 'end.leftover'],
    ['-6 JIC male union', 'end.leftover'],
    ['-6 JIC ORFS male', 'end.leftover'],
    ['7/16-20 bonded washer', 'end.unknown_size'],
    ['M17x1.5 banjo bolt', 'end.unknown_size'],
    ['7 bolt', 'end.not_understood'],
    ['3/4-36', 'end.unknown_thread'],
    ['bolt 12', 'quantity.no_unit'],
  ])('%s: %s', (typed, code) => {
    expect(trouble(typed)).toBe(code)
  })

  it('names the pitches of a size whose series has none', () => {
    const read = parseEnd('11/16 UNC')
    expect(read.ok ? [] : read.issues[0]?.facts.others).toEqual(expect.arrayContaining(['11/16-16', '11/16-18', '11/16-24']))
  })
})
