import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic, geometry, mechanics } from '../sources.ts'

const exact = { tolerance: 1e-6, because: 'exact, or seven figures', source: arithmetic } as const
const force = (meaning: string) => ({ meaning, dimension: 'force', min: 0 }) as const
const length = (meaning: string) => ({ meaning, dimension: 'length', above: 0 }) as const
const yieldStrength = { meaning: 'yield strength', dimension: 'pressure', above: 0 } as const
const push = { meaning: 'pushing load', dimension: 'force', above: 0 } as const
const modulus = { meaning: "modulus of elasticity (Young's)", dimension: 'pressure', above: 0 } as const
const area = { meaning: 'section area', dimension: 'area', above: 0 } as const
const loadFactor = {
  symbol: 'n',
  meaning: 'how many times the load may grow until the outermost fibre yields',
  dimension: 'ratio',
} as const

/** The load factor at which `stress` comes to the yield strength: it grows steadily and without bound towards the buckling load. */
function factorAtYield(stress: (n: number) => number, S_y: number, highest: number): number {
  let [low, high] = [0, highest]
  for (let step = 0; step < 200; step++) {
    const middle = (low + high) / 2
    if (middle <= low || middle >= high) break
    if (stress(middle) < S_y) low = middle
    else high = middle
  }
  return (low + high) / 2
}

export const clampLoadFactor = defineFormula({
  id: 'clamp.load-factor',
  title: "How far a tie rod with a ram's clamp is from yielding, by load",
  equation:
    'n * P / A + n * P * e / Z * max(abs(cos((L - a) * sqrt(n * P / (E * I)))) * sin(min(a * sqrt(n * P / (E * I)), pi / 2)), abs(cos(a * sqrt(n * P / (E * I)))) * sin(min((L - a) * sqrt(n * P / (E * I)), pi / 2))) / sin(L * sqrt(n * P / (E * I))) = S_y',
  procedure: true,
  symbols: {
    P: push,
    e: { meaning: "distance of the ram's line from the rod's axis", dimension: 'length', above: 0 },
    a: length("from one joint to the ram's clamp"),
    L: length('length between the joints'),
    A: area,
    I: { meaning: 'second moment of area', dimension: 'secondMomentOfArea', above: 0 },
    Z: { meaning: 'section modulus', dimension: 'volume', above: 0 },
    E: modulus,
    S_y: yieldStrength,
  },
  result: loadFactor,
  requires: [{ says: 'the clamp is between the joints: a < L', holds: ({ a, L }) => a < L }],
  source: { id: 'couple-on-column', cites: 'Pinned column under a push with a couple at one place, exact solution', mark: 'derived' },
  examples: [
    {
      given: {
        P: '20 kN',
        e: '50 mm',
        a: '400 mm',
        L: '1.2 m',
        A: '633.4 mm²',
        I: '83000 mm⁴',
        Z: '4357 mm³',
        E: '200 GPa',
        S_y: '480 MPa',
      },
      gives: '2.17545',
      tolerance: 1e-5,
      because: 'put back into the equation, the stress comes to 480 MPa',
      source: arithmetic,
    },
  ],
  remark:
    'By load and not by stress: bending grows faster than the load. The push is taken over the whole length, which is on the safe side.',
  compute: ({ P, e, a, L, A, I, Z, E, S_y }) => {
    const stress = (n: number): number => {
      const k = Math.sqrt((n * P) / (E * I))
      const near = Math.abs(Math.cos(k * (L - a))) * Math.sin(Math.min(k * a, Math.PI / 2))
      const far = Math.abs(Math.cos(k * a)) * Math.sin(Math.min(k * (L - a), Math.PI / 2))
      return n === 0 ? 0 : (n * P) / A + (((n * P * e) / Z) * Math.max(near, far)) / Math.sin(k * L)
    }
    return si(factorAtYield(stress, S_y, (Math.PI ** 2 * E * I) / (L ** 2 * P)), 'ratio')
  },
})

export const secantLoadFactor = defineFormula({
  id: 'column.secant-load-factor',
  title: 'How far a bent link is from yielding, by load (secant formula)',
  equation: 'n * P / A * (1 + e * c / r^2 / cos(L_e / (2 * r) * sqrt(n * P / (E * A)))) = S_y',
  procedure: true,
  symbols: {
    P: push,
    A: area,
    e: { meaning: 'the jog: how far its middle stands off the line between the joints', dimension: 'length', above: 0 },
    c: length('from the axis to the outermost fibre'),
    r: length('radius of gyration'),
    L_e: length('length between the joints'),
    E: modulus,
    S_y: yieldStrength,
  },
  result: loadFactor,
  source: { id: 'secant-formula', cites: 'Secant formula, mechanics of materials, course text 9.3', mark: 'published', read: 'web copy' },
  examples: [
    {
      given: {
        P: '5 kip',
        A: '4.5160 in²',
        e: '3 in',
        c: '3 in',
        r: '2.03485 in',
        L_e: '720 in',
        E: '29000 ksi',
        S_y: '6.34 ksi',
      },
      gives: '1',
      tolerance: 3e-3,
      because: 'the text finds 6.34 ksi at this very load',
      source: { id: 'secant-example', cites: 'Course text 9.3, hollow round post, fixed and free', mark: 'published', read: 'web copy' },
    },
  ],
  remark: 'A bent link takes the secant formula, never Euler alone.',
  compute: ({ P, A, e, c, r, L_e, E, S_y }) => {
    const stress = (n: number) => ((n * P) / A) * (1 + (e * c) / r ** 2 / Math.cos((L_e / (2 * r)) * Math.sqrt((n * P) / (E * A))))
    return si(factorAtYield(stress, S_y, (Math.PI ** 2 * E * A * r ** 2) / (L_e ** 2 * P)), 'ratio')
  },
})

export const stressDirect = defineFormula({
  id: 'stress.direct',
  title: 'Stress of a plain push or pull',
  equation: 's = F / A',
  symbols: { F: force('force'), A: area },
  result: { symbol: 's', meaning: 'stress', dimension: 'pressure' },
  source: mechanics,
  examples: [{ given: { F: '20 kN', A: '500 mm²' }, gives: '40 MPa', ...exact }],
  compute: ({ F, A }) => si(F / A, 'pressure'),
})

export const shearYield = defineFormula({
  id: 'stress.shear-yield',
  title: 'Shear stress at which steel yields',
  equation: 'tau_y = S_y / sqrt(3)',
  symbols: { S_y: yieldStrength },
  result: { symbol: 'tau_y', meaning: 'shear stress at yield', dimension: 'pressure' },
  source: { id: 'distortion-energy', cites: 'Distortion-energy (von Mises) criterion', mark: 'memory' },
  examples: [{ given: { S_y: '640 MPa' }, gives: '369.5042 MPa', ...exact }],
  compute: ({ S_y }) => si(S_y / Math.sqrt(3), 'pressure'),
})

export const threadStripArea = defineFormula({
  id: 'thread.strip-area',
  title: 'Area that shears when a thread strips',
  equation: 'A_s = pi * d_2 * L / 2',
  symbols: { d_2: length('pitch diameter'), L: length('length in engagement') },
  result: { symbol: 'A_s', meaning: 'shear area of the thread', dimension: 'area' },
  source: { id: 'strip-area', cites: 'Half of the cylinder at the pitch diameter, a common approximation', mark: 'memory' },
  examples: [{ given: { d_2: '21 mm', L: '30 mm' }, gives: '989.6017 mm²', ...exact }],
  remark: 'The standards count the overlap of the flanks with their tolerances, which gives a little more for a good thread.',
  compute: ({ d_2, L }) => si((Math.PI * d_2 * L) / 2, 'area'),
})

export const clampSlip = defineFormula({
  id: 'clamp.slip',
  title: 'Force at which a two-piece clamp slips along a tube',
  equation: 'F = 2 * mu * m * F_i',
  symbols: {
    mu: { meaning: 'friction of clamp on tube', dimension: 'ratio', above: 0, max: 1 },
    m: { meaning: 'number of bolts', dimension: 'ratio', min: 1 },
    F_i: force('preload of one bolt'),
  },
  result: { symbol: 'F', meaning: 'force along the tube at which it slips', dimension: 'force' },
  source: mechanics,
  examples: [{ given: { mu: '0.12', m: '4', F_i: '30 kN' }, gives: '28.8 kN', ...exact }],
  remark: 'Two halves pressing on opposite sides, the least that the bolts can give; an even hug gives pi in place of 2.',
  compute: ({ mu, m, F_i }) => si(2 * mu * m * F_i, 'force'),
})

const stressArea = { meaning: 'tensile stress area of the thread', dimension: 'area', above: 0 } as const

export const boltShearStress = defineFormula({
  id: 'bolt.shear-stress',
  title: 'Shear stress in the bolts of a bracket',
  equation: 'tau = F / (m * q * A_t)',
  symbols: {
    F: force('force across the bolts'),
    m: { meaning: 'number of bolts', dimension: 'ratio', min: 1 },
    q: { meaning: 'planes in which each is sheared', dimension: 'ratio', min: 1 },
    A_t: stressArea,
  },
  result: { symbol: 'tau', meaning: 'shear stress, thread in the plane', dimension: 'pressure' },
  source: mechanics,
  examples: [{ given: { F: '20 kN', m: '2', q: '2', A_t: '84.3 mm²' }, gives: '59.31198 MPa', ...exact }],
  remark: 'The thread is taken to lie in the sheared plane, and friction between the faces is left out: both on the safe side.',
  compute: ({ F, m, q, A_t }) => si(F / (m * q * A_t), 'pressure'),
})

export const boltOverturning = defineFormula({
  id: 'bolt.overturning',
  title: 'Pull in a bolt of a bracket from the height of the pin',
  equation: 'P = 2 * F * h / (m * b)',
  symbols: {
    F: force('force at the pin'),
    h: { meaning: 'from the bolted face to the pin', dimension: 'length', min: 0 },
    m: { meaning: 'number of bolts, half of them in each row', dimension: 'ratio', min: 1 },
    b: length('between the rows of bolts along the force'),
  },
  result: { symbol: 'P', meaning: 'pull in one bolt of the far row', dimension: 'force' },
  source: mechanics,
  examples: [{ given: { F: '20 kN', h: '60 mm', m: '4', b: '80 mm' }, gives: '7.5 kN', ...exact }],
  remark: 'The bracket tips about its near row of bolts, which is on the safe side.',
  compute: ({ F, h, m, b }) => si((2 * F * h) / (m * b), 'force'),
})

export const boltCombinedStress = defineFormula({
  id: 'bolt.combined-stress',
  title: 'Stress of a bolt pulled and sheared',
  equation: 's = sqrt((P / A_t)^2 + 3 * tau^2)',
  symbols: { P: force('pull in the bolt from the load'), A_t: stressArea, tau: { meaning: 'shear stress', dimension: 'pressure', min: 0 } },
  result: { symbol: 's', meaning: 'comparable stress', dimension: 'pressure' },
  source: { id: 'distortion-energy', cites: 'Distortion-energy (von Mises) criterion', mark: 'memory' },
  examples: [{ given: { P: '8.43 kN', A_t: '84.3 mm²', tau: '100 MPa' }, gives: '200 MPa', ...exact }],
  remark: 'Load alone, without the preload: how the two share is known only with both stiffnesses.',
  compute: ({ P, A_t, tau }) => si(Math.sqrt((P / A_t) ** 2 + 3 * tau ** 2), 'pressure'),
})

export const studBending = defineFormula({
  id: 'stud.bending-stress',
  title: 'Bending stress of a ball stud at the root of its cone',
  equation: 's = 32 * F * l / (pi * d^3)',
  symbols: { F: force('force of the link'), l: length('from the root of the cone to the middle of the ball'), d: length('diameter there') },
  result: { symbol: 's', meaning: 'bending stress', dimension: 'pressure' },
  source: mechanics,
  examples: [{ given: { F: '15 kN', l: '25 mm', d: '20 mm' }, gives: '477.4648 MPa', ...exact }],
  compute: ({ F, l, d }) => si((32 * F * l) / (Math.PI * d ** 3), 'pressure'),
})

export const armBending = defineFormula({
  id: 'arm.bending-stress',
  title: 'Bending stress at the root of a steering arm',
  equation: 's = 6 * F * l / (b * h^2)',
  symbols: {
    F: force('force of the tie rod'),
    l: length('from the root to the joint'),
    b: length('thickness of the arm, across the pull'),
    h: length('width of the arm, along the pull'),
  },
  result: { symbol: 's', meaning: 'bending stress', dimension: 'pressure' },
  source: mechanics,
  examples: [{ given: { F: '15 kN', l: '120 mm', b: '25 mm', h: '45 mm' }, gives: '213.3333 MPa', ...exact }],
  remark: 'A plain rectangle; twist from a joint above or below the arm is left out.',
  compute: ({ F, l, b, h }) => si((6 * F * l) / (b * h ** 2), 'pressure'),
})

export const tubeInsideDiameter = defineFormula({
  id: 'tube.inside-diameter',
  title: 'Inside diameter of a tube',
  equation: 'd = D - 2 * t',
  symbols: { D: length('outside diameter'), t: length('wall') },
  result: { symbol: 'd', meaning: 'inside diameter', dimension: 'length' },
  requires: [{ says: 'the tube has a hole: 2 t < D', holds: ({ D, t }) => 2 * t < D }],
  source: geometry,
  examples: [{ given: { D: '1.5 in', t: '0.25 in' }, gives: '1 in', ...exact }],
  compute: ({ D, t }) => si(D - 2 * t, 'length'),
})

export const clampOffset = defineFormula({
  id: 'clamp.offset',
  title: "Distance of the ram's line from the tie rod's axis",
  equation: 'e = sqrt(e_1^2 + e_2^2)',
  symbols: { e_1: { meaning: 'fore and aft', dimension: 'length' }, e_2: { meaning: 'in height', dimension: 'length' } },
  result: { symbol: 'e', meaning: "distance of the ram's pin from the rod's axis", dimension: 'length' },
  source: geometry,
  examples: [{ given: { e_1: '30 mm', e_2: '40 mm' }, gives: '50 mm', ...exact }],
  compute: ({ e_1, e_2 }) => si(Math.hypot(e_1, e_2), 'length'),
})

export const ramRodOut = defineFormula({
  id: 'ram.rod-out',
  title: 'Length of the rod of a ram that is fully out, with its eye',
  equation: 'L_2 = L_c + s - L_1',
  symbols: { L_c: length('closed length, pin to pin'), s: length('stroke'), L_1: length('length of the body with its eye') },
  result: { symbol: 'L_2', meaning: 'length of the thin part', dimension: 'length' },
  requires: [{ says: 'the body is shorter than the ram fully out', holds: ({ L_c, s, L_1 }) => L_1 < L_c + s }],
  source: geometry,
  examples: [{ given: { L_c: '15 in', s: '8 in', L_1: '12 in' }, gives: '11 in', ...exact }],
  compute: ({ L_c, s, L_1 }) => si(L_c + s - L_1, 'length'),
})
