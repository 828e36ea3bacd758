import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic } from '../sources.ts'

/*
 * How the tie rod, the wheels and the ram move against each other for a little travel. By the principle of virtual work the same
 * ratios carry forces over: what moves slowly is pushed hard.
 */
const source = { id: 'virtual-work', cites: 'Principle of virtual work on the linkage, seen from above', mark: 'derived' } as const
const place = (meaning: string) => ({ meaning, dimension: 'length' }) as const
const lean = (side: string) =>
  ({ meaning: `lean of the ${side} arm inward, as it stands`, dimension: 'angle', min: -1.5, max: 1.5 }) as const
const arm = (side: string) => ({ meaning: `length of the ${side} arm in plan`, dimension: 'length', above: 0 }) as const
const straight = { meaning: 'lean of the arm inward, wheel straight', dimension: 'angle', min: -1.2, max: 1.2 } as const
const turn = { meaning: 'angle of the wheel, left turn positive', dimension: 'angle', min: -1.2, max: 1.2 } as const
const k = { meaning: 'where the rod lies: 1 behind the axle, -1 ahead of it', dimension: 'ratio', min: -1, max: 1 } as const
const i = { meaning: 'turn of the right wheel over turn of the left', dimension: 'ratio', above: 0 } as const
const lever = { meaning: 'travel of the rod for a radian of the left wheel', dimension: 'length', above: 0 } as const
const tilt = { meaning: 'tilt of the rod in plan', dimension: 'angle', min: -1.5, max: 1.5 } as const
const omega = { meaning: 'turning of the rod for its travel', dimension: 'curvature' } as const
const exact = { tolerance: 1e-6, because: 'seven figures', source: arithmetic } as const

export const linkageArmLeanLeft = defineFormula({
  id: 'linkage.arm-lean-left',
  title: 'Lean of the left arm as it stands',
  equation: 'phi = beta + k * delta',
  symbols: { beta: straight, k, delta: turn },
  result: { symbol: 'phi', meaning: 'lean of the left arm inward', dimension: 'angle' },
  source,
  examples: [{ given: { beta: '12°', k: '1', delta: '20°' }, gives: '32°', ...exact }],
  compute: ({ beta, k: way, delta }) => si(beta + way * delta, 'angle'),
})

export const linkageArmLeanRight = defineFormula({
  id: 'linkage.arm-lean-right',
  title: 'Lean of the right arm as it stands',
  equation: 'phi = beta - k * delta',
  symbols: { beta: straight, k, delta: turn },
  result: { symbol: 'phi', meaning: 'lean of the right arm inward', dimension: 'angle' },
  source,
  examples: [{ given: { beta: '12°', k: '1', delta: '20°' }, gives: '-8°', ...exact }],
  compute: ({ beta, k: way, delta }) => si(beta - way * delta, 'angle'),
})

export const linkageTiltRate = defineFormula({
  id: 'linkage.tilt-rate',
  title: 'How fast the tie rod turns in plan as it travels',
  equation:
    'omega = -((r_L * sin(phi_L) + i * r_R * sin(phi_R)) * cos(theta) + (i * r_R * cos(phi_R) - r_L * cos(phi_L)) * sin(theta)) / (c * l_L)',
  symbols: {
    r_L: arm('left'),
    r_R: arm('right'),
    phi_L: lean('left'),
    phi_R: lean('right'),
    i,
    theta: tilt,
    c: { meaning: 'length of the tie rod, joint to joint', dimension: 'length', above: 0 },
    l_L: lever,
  },
  result: { symbol: 'omega', meaning: omega.meaning, dimension: 'curvature' },
  source,
  examples: [
    {
      given: { r_L: '0.15 m', r_R: '0.17 m', phi_L: '30°', phi_R: '-10°', i: '0.8', theta: '0°', c: '1.2 m', l_L: '0.13 m' },
      gives: '-0.3293836 1/m',
      ...exact,
    },
    {
      given: { r_L: '0.15 m', r_R: '0.17 m', phi_L: '30°', phi_R: '-10°', i: '0.8', theta: '-2°', c: '1.2 m', l_L: '0.13 m' },
      gives: '-0.3282814 1/m',
      ...exact,
    },
  ],
  compute: ({ r_L, r_R, phi_L, phi_R, i: ratio, theta, c, l_L }) =>
    si(
      -(
        (r_L * Math.sin(phi_L) + ratio * r_R * Math.sin(phi_R)) * Math.cos(theta) +
        (ratio * r_R * Math.cos(phi_R) - r_L * Math.cos(phi_L)) * Math.sin(theta)
      ) /
        (c * l_L),
      'curvature',
    ),
})

export const linkageRodBackRate = defineFormula({
  id: 'linkage.rod-back-rate',
  title: 'How fast the middle of the tie rod goes ahead as it travels',
  equation: 'v_y = (r_L * sin(phi_L) - i * r_R * sin(phi_R)) / (2 * l_L)',
  symbols: { r_L: arm('left'), r_R: arm('right'), phi_L: lean('left'), phi_R: lean('right'), i, l_L: lever },
  result: { symbol: 'v_y', meaning: 'movement ahead for its travel', dimension: 'ratio' },
  source,
  examples: [
    {
      given: { r_L: '0.15 m', r_R: '0.17 m', phi_L: '30°', phi_R: '-10°', i: '0.8', l_L: '0.13 m' },
      gives: '0.3792929',
      ...exact,
    },
  ],
  compute: ({ r_L, r_R, phi_L, phi_R, i: ratio, l_L }) => si((r_L * Math.sin(phi_L) - ratio * r_R * Math.sin(phi_R)) / (2 * l_L), 'ratio'),
})

const pin = {
  x_p: place('pin on the tie rod, along the axle'),
  y_p: place('the same, fore and aft'),
  x_m: place('middle of the rod, along the axle'),
  y_m: place('middle of the rod, fore and aft'),
} as const

export const ramRate = defineFormula({
  id: 'ram.rate',
  title: 'How fast the ram gets longer as the tie rod travels',
  equation: 'i_r = ((x_p - x_b) * (k - (y_p - y_m) * omega) + (y_p - y_b) * (v_y + (x_p - x_m) * omega)) / L',
  symbols: {
    ...pin,
    x_b: place('pin on the axle, along the axle'),
    y_b: place('the same, fore and aft'),
    k,
    omega,
    v_y: { meaning: 'movement ahead of the middle of the rod for its travel', dimension: 'ratio' },
    L: { meaning: 'length of the ram, pin to pin', dimension: 'length', above: 0 },
  },
  result: {
    symbol: 'i_r',
    meaning: "change of the ram's length for the rod's travel to the left turn: also the share of its force that moves the rod",
    dimension: 'ratio',
  },
  source,
  examples: [
    {
      given: {
        x_p: '0.1 m',
        y_p: '-0.2 m',
        x_m: '0.02 m',
        y_m: '-0.15 m',
        x_b: '-0.4 m',
        y_b: '-0.1 m',
        k: '1',
        omega: '-0.3 1/m',
        v_y: '0.2',
        L: '0.51 m',
      },
      gives: '0.9311765',
      ...exact,
    },
  ],
  remark: 'Below zero it shortens: turning left then asks it to pull.',
  compute: ({ x_p, y_p, x_m, y_m, x_b, y_b, k: way, omega: turning, v_y, L }) =>
    si(((x_p - x_b) * (way - (y_p - y_m) * turning) + (y_p - y_b) * (v_y + (x_p - x_m) * turning)) / L, 'ratio'),
})

export const ramRateDouble = defineFormula({
  id: 'ram.rate-double',
  title: 'How fast the rod of a double-ended ram goes as the tie rod travels',
  equation: 'i_r = k - (y_p - y_m) * omega',
  symbols: { y_p: pin.y_p, y_m: pin.y_m, k, omega },
  result: {
    symbol: 'i_r',
    meaning: "movement of the ram's rod to the right for the tie rod's travel to the left turn",
    dimension: 'ratio',
  },
  source,
  examples: [{ given: { y_p: '-0.2 m', y_m: '-0.15 m', k: '1', omega: '-0.3 1/m' }, gives: '0.985', ...exact }],
  remark: 'Body held along the axle.',
  compute: ({ y_p, y_m, k: way, omega: turning }) => si(way - (y_p - y_m) * turning, 'ratio'),
})

export const demandRodForce = defineFormula({
  id: 'demand.rod-force',
  title: 'Force along the travel of the tie rod that both wheels ask for',
  equation: 'F = (M_L + i * M_R) / l_L',
  symbols: {
    M_L: { meaning: 'torque about the left kingpin', dimension: 'torque', min: 0 },
    M_R: { meaning: 'torque about the right kingpin', dimension: 'torque', min: 0 },
    i,
    l_L: lever,
  },
  result: { symbol: 'F', meaning: 'force on the rod, both wheels', dimension: 'force' },
  source,
  examples: [{ given: { M_L: '500 N·m', M_R: '500 N·m', i: '0.8', l_L: '0.13 m' }, gives: '6923.077 N', ...exact }],
  remark: 'Joints without friction.',
  compute: ({ M_L, M_R, i: ratio, l_L }) => si((M_L + ratio * M_R) / l_L, 'force'),
})
