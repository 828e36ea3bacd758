import { describe, expect, it } from 'vitest'
import { allPortSizes, DASH_FAMILIES, portSizes } from '../../../../src/shared/model/end/ports.ts'
import { PORT_FAMILIES, type PortFamily } from '../../../../src/shared/model/end/types.ts'
import { end, trouble } from './read.ts'

describe('ports as the trade writes them', () => {
  it.each([
    ['-6 JIC', 'flare 37', '-6', null],
    ['JIC -6 male', 'flare 37', '-6', 'male'],
    ['6 JIC', 'flare 37', '-6', null],
    ['#6 JIC', 'flare 37', '-6', null],
    ['-06 JIC', 'flare 37', '-6', null],
    ['size 6 JIC', 'flare 37', '-6', null],
    ['AN-6 male', 'flare 37', '-6', 'male'],
    ['-6 AN swivel', 'flare 37', '-6', 'female'],
    ['-6 37° flare male', 'flare 37', '-6', 'male'],
    ['-6 37º flare male', 'flare 37', '-6', 'male'],
    ['-6 37˚ flare male', 'flare 37', '-6', 'male'],
    ['-6 37 deg flare male', 'flare 37', '-6', 'male'],
    ['−6 37° flare male', 'flare 37', '-6', 'male'],
    ['37° flare 9/16-18 male', 'flare 37', '-6', 'male'],
    ['9/16-18 JIC -6', 'flare 37', '-6', null],
    ['3/8 in tube JIC', 'flare 37', '-6', null],
    ['SAE J514 -8', 'flare 37', '-8', null],
    ['-6 O-ring boss female', 'o-ring boss', '-6', 'female'],
    ['-6 ORB port', 'o-ring boss', '-6', 'female'],
    ['-6 o ring boss plug', 'o-ring boss', '-6', 'male'],
    ['SAE J1926-1 9/16-18', 'o-ring boss', '-6', null],
    ['5/8-18 IF', 'inverted flare', '-6', null],
    ['3/8 inverted flare female', 'inverted flare', '-6', 'female'],
    ['-6 45° flare male', 'flare 45', '-6', 'male'],
    ['-6 face seal', 'face seal', '-6', null],
    ['11/16-16 ORFS male', 'face seal', '-6', 'male'],
    ['M16x1.5 ISO 6149 female', 'iso 6149', 'M16x1.5', 'female'],
    ['ISO 6149-1 m16 x 1,5 port', 'iso 6149', 'M16x1.5', 'female'],
    ['M16x1.5 ISO 9974 female', 'iso 9974', 'M16x1.5', 'female'],
    ['G 3/8 ISO 1179 female', 'iso 1179', 'G 3/8', 'female'],
    ['M16x1.5 24° cone 10L', 'cone 24 light', '10L', null],
    ['24° cone 10 L male', 'cone 24 light', '10L', 'male'],
    ['M16x1.5 24° cone 8S', 'cone 24 heavy', '8S', null],
    ['G 3/8 60° cone male', 'bsp cone 60', 'G 3/8', 'male'],
    ['banjo M12x1.5', 'banjo', 'M12x1.5', null],
    ['M18x1.5 O-ring tube nut female', 'tube o-ring', 'M18x1.5', 'female'],
    ['M16x1.5 tube O-ring male', 'tube o-ring', 'M16x1.5', 'male'],
  ] as const)('%s', (typed, family, size, sex) => {
    const read = end(typed, 'port')
    expect({ family: read.family, size: read.size, sex: read.sex }).toEqual({ family, size, sex })
  })

  it.each([
    ['JIC', 'end.no_size'],
    ['37° flare male', 'end.no_size'],
    ['banjo', 'end.no_size'],
    ['-7 JIC', 'end.unknown_size'],
    ['-99 JIC', 'end.unknown_size'],
    ['7/8-18 JIC', 'end.unknown_size'],
    ['-8 JIC 9/16-18', 'end.contradicts'],
    ['-6 JIC LH', 'end.contradicts'],
    ['-6 JIC ORB', 'end.leftover'],
    ['-6 -8 JIC', 'end.leftover'],
    ['M16x1.5 24° cone', 'end.unknown_size'],
    ['M18x1.5 24° cone 10L', 'end.contradicts'],
    ['24° cone 11L', 'end.unknown_size'],
    ['M19x1.5 ISO 6149', 'end.unknown_thread'],
    ['M24x2 ISO 6149', 'end.unknown_size'],
    ['-6 47° flare male', 'end.dash_without_family'],
    ['M16x1.5 ISO 6148', 'end.leftover'],
  ])('%s: %s', (typed, code) => {
    expect(trouble(typed)).toBe(code)
  })
})

/** Names that the trade has for each family. */
const NAMES: Readonly<Record<PortFamily, readonly string[]>> = {
  'flare 37': ['37° flare', '37 deg flare', 'JIC', 'AN', 'jic 37°', 'ISO 8434-2'],
  'o-ring boss': ['O-ring boss', 'o ring boss', 'ORB', 'SAE J1926', 'ISO 11926-1'],
  'flare 45': ['45° flare', '45 degree flare', 'SAE J512'],
  'inverted flare': ['inverted flare', 'inv flare', 'IF'],
  'face seal': ['face seal', 'O-ring face seal', 'ORFS', 'ISO 8434-3'],
  'iso 6149': ['ISO 6149', 'iso6149-1'],
  'iso 9974': ['ISO 9974', 'ISO 9974-1'],
  'iso 1179': ['ISO 1179', 'iso 1179-1'],
  'cone 24 light': ['24° cone', 'DIN 2353', 'ISO 8434-1'],
  'cone 24 heavy': ['24° cone', '24 deg cone'],
  'bsp cone 60': ['60° cone', 'BSP 60° cone', 'ISO 8434-6'],
  banjo: ['banjo'],
  'tube o-ring': ['O-ring tube nut', 'tube O-ring'],
}

describe('every row of every port table', () => {
  it.each(PORT_FAMILIES)('%s: is read by its own designation in many spellings as itself', (family) => {
    const sizes = portSizes(family)
    expect(sizes.length).toBeGreaterThan(0)
    for (const { size, thread, tube } of sizes) {
      const dash = DASH_FAMILIES.some((f) => f === family)
      for (const name of NAMES[family]) {
        const typed = [`${size} ${name}`, `${name} ${size} male`, `${name.toUpperCase()}  ${size}`, `female ${size} ${name.toLowerCase()}`]
        if (dash) {
          typed.push(`${thread.designation} ${name}`, `${thread.designation} ${name} ${size}`, `#${size.slice(1)} ${name}`)
          typed.push(`${size.replace('-', '−')} ${name}`)
          if (tube?.includes('/')) typed.push(`${tube} in ${name}`, `${tube}" ${name} female`)
        } else if (!family.startsWith('cone')) {
          typed.push(`${size.replace('x', ' × ')} ${name}`)
          if (size.startsWith('M')) typed.push(`${size.toLowerCase().replace('.', ',')} ${name}`)
        } else typed.push(`${thread.designation} ${name} ${size}`)
        for (const t of typed) {
          const read = end(t, 'port')
          expect({ t, family: read.family, size: read.size, thread: read.thread.designation }).toEqual({
            t,
            family,
            size,
            thread: thread.designation,
          })
        }
      }
    }
  })

  it('belongs to one family, once', () => {
    const all = allPortSizes().map((s) => `${s.family} ${s.size}`)
    expect(new Set(all).size).toBe(all.length)
  })
})
