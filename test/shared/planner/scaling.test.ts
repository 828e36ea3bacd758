import { describe, expect, it } from 'vitest'
import { parseQuantity } from '../../../src/shared/quantities/parse.ts'
import { number, planOf } from './builds.ts'
import { LARCH } from './larch-forces.ts'

/** Powers of the length's factor by which quantities grow when everything is made so much larger at the same pressures. */
const POWERS = [
  ['length', 1, 'm'],
  ['force', 2, 'N'],
  ['volume', 3, 'm³'],
  ['flow', 3, 'm³/s'],
  ['torque', 3, 'N·m'],
] as const
/** Texts that only look like quantities, or that name rows of tables. */
const KEPT = new Set([
  'connection',
  'name',
  'note',
  'notes',
  'description',
  'thread',
  'material',
  'size',
  'typed',
  'on',
  'price',
  'odometer',
])

/** The same build k times as large: every length, force, volume and flow in it. */
function grown(value: unknown, k: number, key = ''): unknown {
  if (Array.isArray(value)) return value.map((v) => grown(v, k, key))
  if (typeof value === 'object' && value !== null)
    return Object.fromEntries(
      Object.entries(value).map(([name, v]) => [name, name === 'tasks' || name === 'sessions' ? v : grown(v, k, name)]),
    )
  if (typeof value !== 'string' || KEPT.has(key)) return value
  for (const [dimension, power, unit] of POWERS) {
    const read = parseQuantity(value, dimension)
    if (read.ok && /[a-z″"]/i.test(value)) return `${read.value.si * k ** power} ${unit}`
  }
  return value
}

describe('everything made larger at the same pressures', () => {
  const k = 1.25
  const { bolts: _bolts, hoses: _hoses, ...forces } = LARCH.forces ?? {}
  const [small, large] = [planOf({ ...LARCH, forces }), planOf(grown({ ...LARCH, forces }, k))]
  const grows = (id: string, power: number) => expect(number(large, id).si / number(small, id).si).toBeCloseTo(k ** power, 6)

  it('leaves every margin that hangs on no table of sizes where it was', () => {
    for (const id of [
      'left',
      'right',
      'left-rock',
      'right-rock',
      'tieRod-buckling',
      'tieRod-clamp',
      'ram-rod',
      'ram-column',
      'ball-stud',
      'steering-arm',
    ])
      grows(`margin.${id}`, 0)
  })
  it('lets forces grow with its square, torques with its cube, and times stay', () => {
    grows('demand.left.force', 2)
    grows('supply.right.force', 2)
    grows('strength.tie-rod.critical', 2)
    grows('demand.wheel-sizing-sheet', 3)
    grows('sector.before-ram', 3)
    grows('speed.idle-time-left', 0)
    grows('speed.cruise-heat', 3)
    grows('flow.swing', 0)
  })
})
