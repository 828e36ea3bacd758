import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic, geometry } from '../sources.ts'
import { length } from './symbols.ts'

const exact = { because: 'exact', source: arithmetic } as const
const digits = { because: 'as many figures as it is written with', source: arithmetic } as const
const pin = (which: string) => ({
  x: length(`${which}, along the axle`),
  y: length(`${which}, fore and aft`),
  z: length(`${which}, height`),
})
const [base, clamp] = [pin('pin on the axle'), pin('pin on the tie rod')]

export const ramLengthInSpace = defineFormula({
  id: 'ram.length-in-space',
  title: 'Length of the ram, pin to pin',
  equation: 'L = sqrt((x_p - x_b)^2 + (y_p - y_b)^2 + (z_p - z_b)^2)',
  symbols: { x_p: clamp.x, y_p: clamp.y, z_p: clamp.z, x_b: base.x, y_b: base.y, z_b: base.z },
  result: { symbol: 'L', meaning: 'length of the ram, pin to pin', dimension: 'length' },
  source: geometry,
  examples: [
    {
      given: { x_p: '500 mm', y_p: '-180 mm', z_p: '20 mm', x_b: '100 mm', y_b: '-60 mm', z_b: '-20 mm' },
      gives: '419.5235 mm',
      tolerance: 1e-6,
      ...digits,
    },
  ],
  compute: ({ x_p, y_p, z_p, x_b, y_b, z_b }) => si(Math.hypot(x_p - x_b, y_p - y_b, z_p - z_b), 'length'),
})

export const ramRodPlace = defineFormula({
  id: 'ram.rod-place',
  title: 'Where the rod of a double-ended ram stands',
  equation: 'L = x_p - x_b',
  symbols: { x_p: clamp.x, x_b: length("middle of the ram's body, along the axle") },
  result: { symbol: 'L', meaning: "to the right of the body's middle", dimension: 'length' },
  source: geometry,
  examples: [{ given: { x_p: '120 mm', x_b: '100 mm' }, gives: '20 mm', tolerance: 1e-9, ...exact }],
  remark: 'Body held along the axle, the link between its rod and the tie rod taken as square to the axle.',
  compute: ({ x_p, x_b }) => si(x_p - x_b, 'length'),
})

export const ramAngleToRod = defineFormula({
  id: 'ram.angle-to-rod',
  title: 'Angle between the ram and the axle',
  equation: 'alpha = acos(abs(x_p - x_b) / L)',
  symbols: { x_p: clamp.x, x_b: base.x, L: { meaning: 'length of the ram, pin to pin', dimension: 'length', above: 0 } },
  result: { symbol: 'alpha', meaning: 'angle between the ram and the axle, in space', dimension: 'angle' },
  requires: [{ says: 'the ram is no shorter than it reaches along the axle', holds: ({ x_p, x_b, L }) => Math.abs(x_p - x_b) <= L }],
  source: geometry,
  examples: [{ given: { x_p: '500 mm', x_b: '100 mm', L: '419.5235 mm' }, gives: '17.5484°', tolerance: 1e-5, ...digits }],
  remark: 'The ram moves the rod with the cosine of this angle: its force, and its stroke, count for so much less.',
  compute: ({ x_p, x_b, L }) => si(Math.acos(Math.abs(x_p - x_b) / L), 'angle'),
})

export const ramSpareClosed = defineFormula({
  id: 'ram.spare-closed',
  title: 'Room of the ram before it bottoms',
  equation: 'm = L - L_c',
  symbols: {
    L: { meaning: 'shortest the ram gets', dimension: 'length' },
    L_c: { meaning: 'length of the ram fully closed', dimension: 'length', above: 0 },
  },
  result: { symbol: 'm', meaning: 'left over before it is closed; below zero it bottoms', dimension: 'length' },
  source: geometry,
  examples: [{ given: { L: '16 in', L_c: '15.25 in' }, gives: '0.75 in', tolerance: 1e-9, ...exact }],
  compute: ({ L, L_c }) => si(L - L_c, 'length'),
})

export const ramSpareOpen = defineFormula({
  id: 'ram.spare-open',
  title: 'Room of the ram before it is fully out',
  equation: 'm = L_c + s - L',
  symbols: {
    L: { meaning: 'longest the ram gets', dimension: 'length' },
    L_c: { meaning: 'length of the ram fully closed', dimension: 'length', above: 0 },
    s: { meaning: 'stroke of the ram', dimension: 'length', above: 0 },
  },
  result: { symbol: 'm', meaning: 'left over before it is fully out; below zero it is pulled to its end', dimension: 'length' },
  source: geometry,
  examples: [{ given: { L: '23.5 in', L_c: '15.25 in', s: '9 in' }, gives: '0.75 in', tolerance: 1e-9, ...exact }],
  compute: ({ L, L_c, s }) => si(L_c + s - L, 'length'),
})

const gap = { meaning: 'gap at the stop, wheels straight, measured straight across', dimension: 'length', min: 0 } as const
const reach = { meaning: 'from the kingpin to where the stop touches, seen from above', dimension: 'length', above: 0 } as const

export const stopAngleFromGap = defineFormula({
  id: 'stop.angle-from-gap',
  title: 'Wheel angle that a stop allows',
  equation: 'delta = 2 * asin(g / (2 * R))',
  symbols: { g: gap, R: reach },
  result: { symbol: 'delta', meaning: 'wheel angle at which the stop touches', dimension: 'angle' },
  requires: [{ says: 'the gap is within the circle of the stop: g <= 2 R', holds: ({ g, R }) => g <= 2 * R }],
  source: geometry,
  examples: [{ given: { g: '70 mm', R: '120 mm' }, gives: '33.91553°', tolerance: 1e-5, ...digits }],
  remark: 'The gap is the chord of the way that the touching point goes about the kingpin.',
  compute: ({ g, R }) => si(2 * Math.asin(g / (2 * R)), 'angle'),
})

export const stopGapFromAngle = defineFormula({
  id: 'stop.gap-from-angle',
  title: 'Gap to set at a stop for a wheel angle',
  equation: 'g = 2 * R * sin(delta / 2)',
  symbols: { R: reach, delta: { meaning: 'wheel angle at which the stop is to touch', dimension: 'angle', min: 0, max: 1.5 } },
  result: { symbol: 'g', meaning: 'gap at the stop, wheels straight', dimension: 'length' },
  source: geometry,
  examples: [{ given: { R: '120 mm', delta: '33.91553°' }, gives: '70 mm', tolerance: 1e-5, ...digits }],
  compute: ({ R, delta }) => si(2 * R * Math.sin(delta / 2), 'length'),
})

export const boxHandWheelTurns = defineFormula({
  id: 'box.hand-wheel-turns',
  title: 'Turns of the hand wheel for a turn of the pitman arm',
  equation: 'N = n * phi / S',
  symbols: {
    n: { meaning: 'turns of the box, end to end', dimension: 'ratio', above: 0 },
    phi: { meaning: 'turn of the pitman arm', dimension: 'angle', min: 0 },
    S: { meaning: 'sweep of the box, end to end', dimension: 'angle', above: 0 },
  },
  result: { symbol: 'N', meaning: 'turns of the hand wheel', dimension: 'ratio' },
  source: geometry,
  examples: [{ given: { n: '4', phi: '70°', S: '100°' }, gives: '2.8', tolerance: 1e-9, ...exact }],
  remark: 'For a box of one ratio over its sweep.',
  compute: ({ n, phi, S }) => si((n * phi) / S, 'ratio'),
})

export const pitmanAngle = defineFormula({
  id: 'pitman.angle',
  title: 'Where the pitman arm points',
  equation:
    'psi = atan2(y_d - y_s, x_d - x_s) + b * acos(((x_d - x_s)^2 + (y_d - y_s)^2 + p^2 - l^2) / (2 * p * sqrt((x_d - x_s)^2 + (y_d - y_s)^2)))',
  symbols: {
    x_d: length('joint of the drag link at the axle, along the axle'),
    y_d: length('the same, fore and aft'),
    x_s: length('sector shaft, along the axle'),
    y_s: length('sector shaft, fore and aft'),
    p: { meaning: 'length of the pitman arm', dimension: 'length', above: 0 },
    l: { meaning: 'length of the drag link, seen from above', dimension: 'length', above: 0 },
    b: { meaning: 'which of the two closings: 1 or -1', dimension: 'ratio', min: -1, max: 1 },
  },
  result: { symbol: 'psi', meaning: 'direction of the pitman arm, counted to the left from straight to the right', dimension: 'angle' },
  source: geometry,
  examples: [
    {
      given: { x_d: '600 mm', y_d: '200 mm', x_s: '-300 mm', y_s: '350 mm', p: '150 mm', l: '900 mm', b: '-1' },
      gives: '-90°',
      tolerance: 1e-5,
      ...digits,
    },
    {
      given: { x_d: '600 mm', y_d: '200 mm', x_s: '-300 mm', y_s: '350 mm', p: '150 mm', l: '900 mm', b: '1' },
      gives: '71.07556°',
      tolerance: 1e-5,
      ...digits,
    },
  ],
  requires: [
    {
      says: 'the drag link reaches: p, l and the way from shaft to joint make a triangle',
      holds: ({ x_d, y_d, x_s, y_s, p, l }) => {
        const apart = Math.hypot(x_d - x_s, y_d - y_s)
        return apart <= p + l && apart >= Math.abs(p - l) && apart > 0
      },
    },
  ],
  remark: 'Circle and circle.',
  compute: ({ x_d, y_d, x_s, y_s, p, l, b }) => {
    const [dx, dy] = [x_d - x_s, y_d - y_s]
    return si(Math.atan2(dy, dx) + b * Math.acos((dx ** 2 + dy ** 2 + p ** 2 - l ** 2) / (2 * p * Math.hypot(dx, dy))), 'angle')
  },
})

export const placeFromKingpin = defineFormula({
  id: 'place.from-kingpin',
  title: 'A place measured from a kingpin, along the axle',
  equation: 'x = h * (w / 2 - a)',
  symbols: {
    w: { meaning: 'distance between the kingpins', dimension: 'length', above: 0 },
    a: length('from that kingpin towards the other one'),
    h: { meaning: 'which kingpin: 1 right, -1 left', dimension: 'ratio', min: -1, max: 1 },
  },
  result: { symbol: 'x', meaning: 'to the right of the middle between the kingpins', dimension: 'length' },
  source: geometry,
  examples: [
    { given: { w: '58 in', a: '9 in', h: '1' }, gives: '20 in', tolerance: 1e-9, ...exact },
    { given: { w: '58 in', a: '9 in', h: '-1' }, gives: '-20 in', tolerance: 1e-9, ...exact },
  ],
  compute: ({ w, a, h }) => si(h * (w / 2 - a), 'length'),
})

export const placeFromRightEnd = defineFormula({
  id: 'place.from-right-end',
  title: 'A place on the tie rod measured from its right joint',
  equation: 's = c - a',
  symbols: {
    c: { meaning: 'length of the tie rod, joint to joint', dimension: 'length', above: 0 },
    a: length('along the rod from its right joint'),
  },
  result: { symbol: 's', meaning: 'along the rod from its left joint', dimension: 'length' },
  source: geometry,
  examples: [{ given: { c: '50 in', a: '12 in' }, gives: '38 in', tolerance: 1e-9, ...exact }],
  compute: ({ c, a }) => si(c - a, 'length'),
})

export const limitTravelASide = defineFormula({
  id: 'limit.travel-a-side',
  title: 'Travel to one side',
  equation: 't = abs(x)',
  symbols: { x: length('travel of the tie rod, left turn positive') },
  result: { symbol: 't', meaning: 'travel to that side', dimension: 'length' },
  source: geometry,
  examples: [{ given: { x: '-4 in' }, gives: '4 in', tolerance: 1e-9, ...exact }],
  compute: ({ x }) => si(Math.abs(x), 'length'),
})
