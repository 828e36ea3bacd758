import { describe, expect, it } from 'vitest'
import { DEMO_FILES } from '../../../src/main/procedures/demo.ts'
import { GROUPS, LIMIT_FIELDS, LIMIT_KINDS, LIMIT_SIDES } from '../../../src/renderer/screens/geometry/fields.ts'
import { differs, formOf, newLimit, withForm } from '../../../src/renderer/screens/geometry/form.ts'
import { PLATES } from '../../../src/renderer/screens/geometry/plates.tsx'
import { checkBuild } from '../../../src/shared/model/exchange.ts'
import { geometry } from '../../../src/shared/model/geometry.ts'
import { limit } from '../../../src/shared/model/survey.ts'
import { axle, vehicle } from '../../../src/shared/model/vehicle.ts'
import { fullGeometry } from '../../main/database/full-steering.ts'

const file = { ...DEMO_FILES.corrected, geometry: fullGeometry() }
const places = GROUPS.flatMap((group) => group.fields.map((field) => field.place))

describe('the fields of geometry and limits', () => {
  it('cover every key of the model once, and none that it does not know', () => {
    const known = Object.entries(geometry.shape).flatMap(([group, shape]) =>
      Object.keys(shape.unwrap().shape).map((key) => `geometry.${group}.${key}`),
    )
    const ofAxle = Object.keys(axle.shape).flatMap((key) => (['id', 'name', 'notes'].includes(key) ? [] : [`axle.${key}`]))
    expect(Object.keys(vehicle.shape)).toContain('wheelbase')
    expect([...places].sort()).toEqual([...known, ...ofAxle, 'vehicle.wheelbase'].sort())
    expect([...LIMIT_FIELDS.map((field) => field.key), 'id', 'what', 'side', 'note'].sort()).toEqual(Object.keys(limit.shape).sort())
    expect(limit.shape.what.options).toEqual([...LIMIT_KINDS])
    expect(limit.shape.side.options).toEqual([...LIMIT_SIDES])
  })

  it('have a picture a group', () => {
    expect(GROUPS.map((group) => group.id).filter((id) => PLATES[id] === undefined)).toEqual([])
  })

  it('give back the file they were laid out from, to the letter', () => {
    const form = formOf(file)
    expect(Object.keys(form.values)).toHaveLength(places.length)
    expect(withForm(file, form, form)).toEqual(file)
    // laid onto a file without any of it, all of it comes
    const { geometry: _, limits: __, axle: ___, ...bare } = file
    const { wheelbase: ____, ...car } = bare.vehicle
    const empty = { ...bare, vehicle: car }
    const whole = withForm(empty, form, formOf(empty))
    expect(whole.geometry).toEqual(file.geometry)
    expect(whole.limits).toEqual(file.limits)
    expect(whole.axle).toEqual({ ...file.axle, id: 'axle', name: 'Front axle' })
    expect(checkBuild(whole).ok).toBe(true)
  })

  it('change only what was changed, on whatever the file is by then', () => {
    const from = formOf(file)
    const form = { ...from, values: { ...from.values, 'axle.caster': '6°', 'geometry.corner.out': '', 'geometry.corner.ahead': ' ' } }
    expect(differs(form, from)).toBe(true)
    const meanwhile = { ...file, axle: { id: 'a', name: 'A', track: '70 in' }, limits: [] }
    const after = withForm(meanwhile, form, from)
    expect(after.axle).toEqual({ id: 'a', name: 'A', track: '70 in', caster: '6°' })
    expect(after.limits).toEqual([])
    // a group that holds nothing any more goes
    expect(after.geometry).not.toHaveProperty('corner')
  })

  it('give a new limit an id of its own', () => {
    const first = newLimit([], 'knuckle stop', 'left')
    expect(first.id).toBe('knuckle-stop-left')
    expect(newLimit([first], 'knuckle stop', 'left').id).toBe('knuckle-stop-left-2')
  })
})
