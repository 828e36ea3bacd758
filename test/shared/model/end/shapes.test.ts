import { describe, expect, it } from 'vitest'
import { end, trouble } from './read.ts'

describe('tapers', () => {
  it.each([
    ['taper 1.5 in/ft stud', 0.125, 'male'],
    ['1.5 in/ft stud', 0.125, 'male'],
    ['1 1/2 in/ft', 0.125, null],
    ['1½ in/ft hole', 0.125, 'female'],
    ['1.5 in/ft taper hole', 0.125, 'female'],
    ['1:8 taper stud', 0.125, 'male'],
    ['1:8 male', 0.125, 'male'],
    ['taper 1:10 hole', 0.1, 'female'],
    ['1:10 tapered hole', 0.1, 'female'],
    ['taper 2 in/ft female', 1 / 6, 'female'],
    ['taper 12.5 % stud', 0.125, 'male'],
    ['taper stud', null, 'male'],
    ['taper hole', null, 'female'],
    ['taper ?', null, null],
    ['taper not measured hole', null, 'female'],
  ] as const)('%s', (typed, ratio, sex) => {
    const read = end(typed, 'taper')
    expect(read.sex).toBe(sex)
    if (ratio === null) expect(read.ratio).toBeNull()
    else expect(read.ratio).toBeCloseTo(ratio, 12)
  })

  it('takes an angle that says which angle it is: diameter changes by twice the tangent of the half angle', () => {
    expect(end('taper 7.15° included stud', 'taper').ratio).toBeCloseTo(2 * Math.tan((3.575 * Math.PI) / 180), 12)
    expect(end('taper 3.58° half stud', 'taper').ratio).toBeCloseTo(2 * Math.tan((3.58 * Math.PI) / 180), 12)
    expect(trouble('taper 7° stud')).toBe('end.angle_ambiguous')
    expect(trouble('taper 7 deg hole')).toBe('end.angle_ambiguous')
  })

  it('keeps diameters, length and cotter hole', () => {
    expect(end('taper 1.5 in/ft stud, large 0.870 in, small 0.74 in, length 1.10 in, cotter hole 1.3 in', 'taper')).toMatchObject({
      large: 0.022098,
      small: 0.018796,
      length: 0.02794,
      cotterHole: 0.03302,
    })
    expect(end('1:10 taper hole, large end 22 mm, through 19 mm', 'taper')).toMatchObject({ large: 0.022, length: 0.019 })
    expect(end('1:10 taper hole, large ?', 'taper').large).toBeNull()
  })

  it.each([
    ['taper 0 in/ft stud', 'quantity.out_of_range'],
    ['taper 3:1 stud', 'quantity.out_of_range'],
    ['taper 1:8 stud, large 0.7 in, small 0.8 in', 'end.contradicts'],
    ['taper 1:8 stud, large 0.7 in, large 0.8 in', 'end.leftover'],
    ['taper 1:8 stud, large 0.7', 'quantity.no_unit'],
    ['taper 1:8 stud, large 10 psi', 'quantity.wrong_dimension'],
    ['taper 1:8 stud, large -1 in', 'quantity.out_of_range'],
    ['taper 1:0 stud', 'quantity.zero_denominator'],
    ['taper round stud', 'quantity.not_a_number'],
    ['taper 1:8 stud, blue', 'end.leftover'],
    ['taper 1:8 stud, blue, large 1', 'end.leftover,quantity.no_unit'],
  ])('%s: %s', (typed, code) => {
    expect(trouble(typed)).toBe(code)
  })
})

describe('cylinders, tails, splines, welds', () => {
  it.each([
    ['clamp 1 1/4 in', 'clamp', 0.03175],
    ['clamp 1½ in', 'clamp', 0.0381],
    ['clamp 1 ½"', 'clamp', 0.0381],
    ['clamp for 1 1/4 in', 'clamp', 0.03175],
    ['clamp 1 1/4', 'clamp', 0.03175],
    ['Clamp 31.75 MM', 'clamp', 0.03175],
    ['tube 1 1/2 in', 'tube', 0.0381],
    ['bore 5/8 in', 'bore', 0.015875],
    ['hole 16 mm', 'bore', 0.016],
    ['rod-end bore 5/8 in', 'bore', 0.015875],
    ['eye 5/8″', 'bore', 0.015875],
    ['pin 1/2 in', 'pin', 0.0127],
    ['bolt 1/2 in', 'pin', 0.0127],
  ] as const)('%s', (typed, form, diameter) => {
    const read = end(typed, 'round')
    expect(read.form).toBe(form)
    expect(read.diameter).toBeCloseTo(diameter, 15)
  })

  it.each([
    ['hose 3/8 in', 'hose', 0.009525],
    ['3/8 hose', 'hose', 0.009525],
    ['barb 5/8 in', 'barb', 0.015875],
    ['3/8 hose barb', 'barb', 0.009525],
    ['hose barb 3/8', 'barb', 0.009525],
    ['9.5 mm barb', 'barb', 0.0095],
  ] as const)('%s', (typed, form, bore) => {
    expect(end(typed, 'tail')).toMatchObject({ form, bore })
  })

  it.each([
    ['36 splines 13/16 in male', 36, 0.0206375, 'male'],
    ['36-spline shaft', 36, null, 'male'],
    ['32 splines 1 1/4 in female', 32, 0.03175, 'female'],
    ['32 splines hole', 32, null, 'female'],
    ['36 spline x 13/16 in', 36, 0.0206375, null],
    ['? splines ? male', null, null, 'male'],
  ] as const)('%s', (typed, count, diameter, sex) => {
    const read = end(typed, 'spline')
    expect({ count: read.count, sex: read.sex }).toEqual({ count, sex })
    if (diameter === null) expect(read.diameter).toBeNull()
    else expect(read.diameter).toBeCloseTo(diameter, 15)
  })

  it('welds and what nobody measured', () => {
    for (const typed of ['weld', 'welded', 'weld on', 'Weld end']) expect(end(typed, 'weld')).toEqual({ kind: 'weld' })
    for (const typed of ['?', 'not measured', 'unknown', 'Not known']) expect(end(typed, 'unmeasured')).toEqual({ kind: 'unmeasured' })
    expect(end('clamp ?', 'round').diameter).toBeNull()
    expect(end('hose not measured', 'tail').bore).toBeNull()
  })

  it.each([
    ['clamp 12', 'quantity.no_unit'],
    ['clamp', 'end.not_understood'],
    ['clamp 0 in', 'quantity.out_of_range'],
    ['clamp -1 in', 'quantity.out_of_range'],
    ['clamp 1,250 in', 'quantity.ambiguous_comma'],
    ['clamp NaN mm', 'quantity.not_a_number'],
    ['clamp 1 in, large 2 in', 'end.leftover'],
    ['1000 splines male', 'end.not_understood'],
  ])('%s: %s', (typed, code) => {
    expect(trouble(typed)).toBe(code)
  })
})

describe('facets', () => {
  it('jam nut, material, length, in any order', () => {
    expect(end('7/8-18 LH male, engaged 1 1/4 in, jam nut', 'thread')).toMatchObject({ jamNut: true, length: 0.03175 })
    expect(end('7/8-18 LH male, jam nut, in aluminum, length 1.25 in', 'thread')).toMatchObject({
      jamNut: true,
      material: 'aluminium',
      length: 0.03175,
    })
    expect(end('7/8-18 male, length not measured', 'thread')).not.toHaveProperty('length')
  })
})
