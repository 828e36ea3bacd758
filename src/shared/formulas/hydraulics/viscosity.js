import { si } from '../../quantities/dimension.ts'
import { defineFormula } from '../card.ts'
import { arithmetic } from '../sources.ts'

const CST = 1e-6
const measured = { meaning: 'kinematic viscosity known', dimension: 'kinematicViscosity', min: 2e-6 }
const temperature = { dimension: 'temperature', min: 200, max: 500 }
const iso3448 = {
  id: 'iso-3448',
  cites: 'ISO 3448, viscosity grades: midpoint at 40 °C and 10 % either way',
  mark: 'published',
  read: 'reproductions of the table',
}
const grade = { meaning: 'viscosity grade: the midpoint at 40 °C', dimension: 'kinematicViscosity', above: 0 }
const doubleLog = (nu) => Math.log10(Math.log10(nu / CST + 0.7))
export const viscosityAtTemperature = defineFormula({
  id: 'viscosity.at-temperature',
  title: 'Viscosity of an oil at a temperature, from two known ones (ASTM D341)',
  equation:
    'nu = 1e-6 * (10^(10^(log10(log10(nu_1 / 1e-6 + 0.7)) + (log10(log10(nu_2 / 1e-6 + 0.7)) - log10(log10(nu_1 / 1e-6 + 0.7))) * log10(T / T_1) / log10(T_2 / T_1))) - 0.7)',
  symbols: {
    nu_1: { ...measured, meaning: 'kinematic viscosity at T_1' },
    T_1: { ...temperature, meaning: 'first temperature' },
    nu_2: { ...measured, meaning: 'kinematic viscosity at T_2' },
    T_2: { ...temperature, meaning: 'second temperature' },
    T: { ...temperature, meaning: 'temperature asked for' },
  },
  result: { symbol: 'nu', meaning: 'kinematic viscosity at T', dimension: 'kinematicViscosity' },
  requires: [
    { says: 'the two temperatures differ', holds: ({ T_1, T_2 }) => T_1 !== T_2 },
    { says: 'the oil is thinner where it is hotter', holds: ({ nu_1, T_1, nu_2, T_2 }) => (nu_1 - nu_2) * (T_2 - T_1) > 0 },
  ],
  source: {
    id: 'astm-d341',
    cites: 'ASTM D341, viscosity-temperature relation: log10 log10(v + 0.7) = A - B log10 T',
    mark: 'published',
    read: 'a spreadsheet made from it',
  },
  examples: [
    {
      given: { nu_1: '32 cSt', T_1: '313 K', nu_2: '5.4 cSt', T_2: '373 K', T: '353 K' },
      gives: '8.5 cSt',
      tolerance: 6e-3,
      because: 'two figures; the sheet takes T = t + 273',
      source: { id: 'd341-sheet', cites: 'Spreadsheet of ASTM D341, ISO VG 32 example', mark: 'published' },
    },
    {
      given: { nu_1: '32 cSt', T_1: '40 °C', nu_2: '5.4 cSt', T_2: '100 °C', T: '20 °C' },
      gives: '86.278 cSt',
      tolerance: 1e-4,
      because: 'five figures',
      source: arithmetic,
    },
  ],
  remark:
    'The 0.7 belongs to a viscosity in mm²/s. Below 2 mm²/s the standard adds terms that are not here; near the pour point no oil keeps to it.',
  compute: ({ nu_1, T_1, nu_2, T_2, T }) => {
    const slope = (doubleLog(nu_2) - doubleLog(nu_1)) / Math.log10(T_2 / T_1)
    return si(CST * (10 ** (10 ** (doubleLog(nu_1) + slope * Math.log10(T / T_1))) - 0.7), 'kinematicViscosity')
  },
})
export const viscosityGradeMinimum = defineFormula({
  id: 'viscosity.grade-minimum',
  title: 'Thinnest oil of an ISO viscosity grade, at 40 °C',
  equation: 'nu = 0.9 * VG',
  symbols: { VG: grade },
  result: { symbol: 'nu', meaning: 'least kinematic viscosity at 40 °C', dimension: 'kinematicViscosity' },
  source: iso3448,
  examples: [{ given: { VG: '46 cSt' }, gives: '41.4 cSt', tolerance: 1e-9, because: 'exact', source: iso3448 }],
  compute: ({ VG }) => si(0.9 * VG, 'kinematicViscosity'),
})
export const viscosityGradeMaximum = defineFormula({
  id: 'viscosity.grade-maximum',
  title: 'Thickest oil of an ISO viscosity grade, at 40 °C',
  equation: 'nu = 1.1 * VG',
  symbols: { VG: grade },
  result: { symbol: 'nu', meaning: 'greatest kinematic viscosity at 40 °C', dimension: 'kinematicViscosity' },
  source: iso3448,
  examples: [{ given: { VG: '32 cSt' }, gives: '35.2 cSt', tolerance: 1e-9, because: 'exact', source: iso3448 }],
  compute: ({ VG }) => si(1.1 * VG, 'kinematicViscosity'),
})
