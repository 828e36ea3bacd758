import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic, fluidMechanics } from '../sources.ts'

const reference = {
  id: 'fluids-1.0.22',
  cites: 'Open-source library fluids 1.0.22 (Debian 12), run at Re = 100 000, roughness 0.0001',
  mark: 'published',
}
const turbulent = { meaning: 'Reynolds number', dimension: 'ratio', min: 4000, max: 1e8 }
const roughness = { meaning: 'roughness of the wall, as a part of the bore', dimension: 'ratio', min: 0, max: 0.05 }
const factor = { symbol: 'f', meaning: 'Darcy friction factor', dimension: 'ratio' }
export const frictionLaminar = defineFormula({
  id: 'friction.laminar',
  title: 'Friction factor of laminar flow',
  equation: 'f = 64 / Re',
  symbols: { Re: { meaning: 'Reynolds number', dimension: 'ratio', above: 0, max: 2300 } },
  result: factor,
  source: fluidMechanics,
  examples: [{ given: { Re: '640' }, gives: '0.1', tolerance: 1e-9, because: 'exact', source: arithmetic }],
  compute: ({ Re }) => si(64 / Re, 'ratio'),
})
export const frictionColebrook = defineFormula({
  id: 'friction.colebrook',
  title: 'Friction factor of turbulent flow (Colebrook)',
  equation: '1 / sqrt(f) = -2 * log10(eps / 3.7 + 2.51 / (Re * sqrt(f)))',
  procedure: true,
  symbols: { Re: turbulent, eps: roughness },
  result: factor,
  source: {
    id: 'colebrook',
    cites: 'Colebrook (1939), friction factor between smooth and rough pipes',
    mark: 'published',
    read: 'documentation of two programs',
  },
  examples: [
    { given: { Re: '100000', eps: '0.0001' }, gives: '0.018513866077', tolerance: 1e-9, because: 'eleven figures', source: reference },
    { given: { Re: '128000', eps: '0.0013' }, gives: '0.0225', tolerance: 0.015, because: 'read off a chart', source: fluidMechanics },
  ],
  compute: ({ Re, eps }) => {
    // with x = 1/√f the right side bends so gently that Newton's method settles in a few steps from any start here
    let x = 8
    for (let step = 0; step < 30; step++) {
      const inside = eps / 3.7 + (2.51 * x) / Re
      const miss = x + 2 * Math.log10(inside)
      const next = x - miss / (1 + (2 * 2.51) / (Re * inside * Math.LN10))
      if (Math.abs(next - x) <= 1e-15 * x) break
      x = next
    }
    return si(1 / x ** 2, 'ratio')
  },
})
export const frictionHaaland = defineFormula({
  id: 'friction.haaland',
  title: 'Friction factor of turbulent flow (Haaland)',
  equation: 'f = 1 / (1.8 * log10((eps / 3.7)^1.11 + 6.9 / Re))^2',
  symbols: { Re: turbulent, eps: roughness },
  result: factor,
  source: { id: 'haaland', cites: 'Haaland (1983), explicit friction factor', mark: 'published', read: 'a one-line program' },
  examples: [
    { given: { Re: '100000', eps: '0.0001' }, gives: '0.018265053', tolerance: 1e-8, because: 'eight figures', source: reference },
  ],
  remark: 'Within about 2 % of Colebrook.',
  compute: ({ Re, eps }) => si(1 / (1.8 * Math.log10((eps / 3.7) ** 1.11 + 6.9 / Re)) ** 2, 'ratio'),
})
export const frictionChurchill = defineFormula({
  id: 'friction.churchill',
  title: 'Friction factor of any flow (Churchill)',
  equation: 'f = 8 * ((8 / Re)^12 + 1 / ((-2.457 * log((7 / Re)^0.9 + 0.27 * eps))^16 + (37530 / Re)^16)^1.5)^(1 / 12)',
  symbols: { Re: { meaning: 'Reynolds number', dimension: 'ratio', above: 0, max: 1e8 }, eps: roughness },
  result: factor,
  source: {
    id: 'churchill',
    cites: 'Churchill (1977), friction factor over all regimes of flow',
    mark: 'memory',
    checked: 'agrees with the library fluids 1.0.22',
  },
  examples: [
    { given: { Re: '100000', eps: '0.0001' }, gives: '0.018462624566', tolerance: 1e-9, because: 'eleven figures', source: reference },
  ],
  remark: 'Goes smoothly from laminar to turbulent; in between (about 2300 to 4000) no formula is sure.',
  compute: ({ Re, eps }) => {
    const a = (-2.457 * Math.log((7 / Re) ** 0.9 + 0.27 * eps)) ** 16
    const b = (37530 / Re) ** 16
    return si(8 * ((8 / Re) ** 12 + 1 / (a + b) ** 1.5) ** (1 / 12), 'ratio')
  },
})
