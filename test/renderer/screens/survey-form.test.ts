import { describe, expect, it } from 'vitest'
import { DEMO_FILES } from '../../../src/main/procedures/demo.ts'
import { formOf, isDone, METHODS, STEPS, SURE, sayingOf, surveyOf, withUnit } from '../../../src/renderer/screens/survey/form.ts'
import { typedOnto } from '../../../src/renderer/screens/survey/Pad.tsx'
import { survey } from '../../../src/shared/model/survey.ts'

const stored = DEMO_FILES.corrected.survey
if (stored === undefined) throw new Error('the demo has no survey')

describe('the survey in its form', () => {
  it('comes back as it was, whatever the order of its keys', () => {
    expect(surveyOf(formOf(stored))).toEqual(stored)
    const turned = Object.fromEntries(Object.entries(stored).reverse()) as typeof stored
    expect(sayingOf(turned)).toBe(sayingOf(stored))
    expect(sayingOf({ ...stored, note: 'other' })).not.toBe(sayingOf(stored))
  })

  it('is none before method and tape are said', () => {
    const empty = formOf(undefined)
    expect(surveyOf({ ...empty, method: 'to the stops' })).toBeNull()
    expect(surveyOf({ ...empty, resolution: '1 mm' })).toBeNull()
    const least = surveyOf({ ...empty, method: 'to the stops', resolution: '1 mm' })
    expect(survey.safeParse(least).success).toBe(true)
  })

  it('asks for everything the model can hold', () => {
    expect(SURE.map((one) => one.key)).toEqual(survey.shape.madeSure.element.options)
    expect(METHODS.map((one) => one.key)).toEqual(survey.shape.method.options)
    expect(Object.keys(formOf(stored)).sort()).toEqual(Object.keys(survey.shape).sort())
    expect(STEPS.filter((step) => !isDone(step, formOf(stored)))).toEqual(['result'])
    expect(STEPS.filter((step) => isDone(step, formOf(undefined)))).toEqual([])
  })
})

describe('what is typed', () => {
  it.each([
    ['12 1/16', 'in', '12 1/16 in'],
    [' 12  1/16 ', 'in', '12 1/16 in'],
    ['12½', 'in', '12½ in'],
    ['410', 'mm', '410 mm'],
    ['410 mm', 'in', '410 mm'],
    ['12 1/16"', 'in', '12 1/16"'],
    ['4', '°', '4°'],
    ['4°', '°', '4°'],
    ['', 'in', ''],
  ])('%j with %s means %j', (typed, unit, meant) => expect(withUnit(typed, unit)).toBe(meant))

  it('keys set a fraction off from the whole', () => {
    expect(['1', '2', '3/8'].reduce(typedOnto, '')).toBe('12 3/8')
    expect(['3/8'].reduce(typedOnto, '')).toBe('3/8')
    expect(['1', '2', ' ', '1', '/', '1', '6'].reduce(typedOnto, '')).toBe('12 1/16')
  })
})
