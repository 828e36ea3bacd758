import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import bought from '../../../src/main/procedures/demo/bought.json' with { type: 'json' }
import corrected from '../../../src/main/procedures/demo/corrected.json' with { type: 'json' }
import type { BuildFile } from '../../../src/shared/model/build.ts'
import { buildFileJsonSchema, checkBuild, readBuild, writeBuild } from '../../../src/shared/model/exchange.ts'
import type { Issue } from '../../../src/shared/result/result.ts'
import { arbitraryBuild } from '../../main/database/arbitrary-build.ts'
import { fullBuild } from '../../main/database/full-build.ts'
import { faults } from './json-schema.ts'
import { leadsSomewhere, mutate, mutation } from './mutate.ts'

const demos = { bought, corrected } as unknown as Readonly<Record<string, BuildFile>>

const issuesOf = (value: unknown): readonly Issue[] => {
  const read = checkBuild(value)
  return read.ok ? [] : read.issues
}
const told = (value: unknown): string[] => issuesOf(value).map((i) => `${i.path.join('.')}: ${i.code}`)

type Group = Record<string, unknown>
/** The group that a path such as "parts.0.ends.0" leads into, and its last key. */
function into(file: Group, path: string): { group: Group; key: string } {
  const steps = path.split('.')
  const key = steps.pop() as string
  return { group: steps.reduce((group, step) => group[step] as Group, file), key }
}
type Spoil = (file: Group) => void
const put =
  (path: string, value: unknown): Spoil =>
  (file) => {
    const { group, key } = into(file, path)
    group[key] = value
  }
const drop =
  (path: string): Spoil =>
  (file) => {
    const { group, key } = into(file, path)
    delete group[key]
  }
const rename =
  (path: string, to: string): Spoil =>
  (file) => {
    const { group, key } = into(file, path)
    group[to] = group[key]
    delete group[key]
  }
/** The demo with something done to it. */
function spoilt(...spoils: readonly Spoil[]): unknown {
  const file: Group = structuredClone(bought)
  for (const spoil of spoils) spoil(file)
  return file
}

describe('a good file', () => {
  it.each(Object.entries(demos))('%s: what was typed survives to the letter', (_name, file) => {
    const text = writeBuild(file)
    const read = readBuild(text)
    expect(read.ok).toBe(true)
    if (!read.ok) return
    expect(writeBuild(read.value.file)).toBe(text)
    expect(read.value.file).toStrictEqual(file)
  })

  it('any build, and one in which every key is there', () => {
    fc.assert(
      fc.property(fc.oneof(arbitraryBuild, fc.constant(fullBuild())), (file) => {
        const text = writeBuild(file)
        const read = readBuild(text)
        if (!read.ok) throw new Error(JSON.stringify(read.issues))
        expect(writeBuild(read.value.file)).toBe(text)
      }),
      { numRuns: 200 },
    )
  })

  it('has in the model every quantity with what was typed beside it, and every end', () => {
    const read = checkBuild(bought)
    if (!read.ok) throw new Error(JSON.stringify(read.issues))
    const { build } = read.value
    expect(build.vehicle.tyre?.printWidth).toEqual({ typed: '9 1/2 in', si: 0.2413 })
    const ram = build.parts.find((p) => p.id === 'ram')
    expect(ram).toMatchObject({ bore: { typed: '1 3/4 in', si: 0.04445 }, workingPressure: { typed: '2500 psi' } })
    expect(ram?.ends[0]?.connection).toEqual({ typed: 'bore 5/8 in', end: { kind: 'round', form: 'bore', diameter: 0.015875 } })
  })

  it('may begin with a byte-order mark, as editors leave it', () => {
    expect(readBuild(`\uFEFF${writeBuild(demos.bought as BuildFile)}`).ok).toBe(true)
  })
})

describe('a bad file', () => {
  it.each([
    ['no JSON at all', '{', 'file.not_json'],
    ['nothing', '', 'file.not_json'],
    ['NaN as JSON has none', '{"format": "steerwright build", "version": NaN}', 'file.not_json'],
    ['a list', '[]', 'file.not_an_object'],
    ['null', 'null', 'file.not_an_object'],
    ['a text', '"build"', 'file.not_an_object'],
  ])('%s', (_what, text, code) => {
    const read = readBuild(text)
    expect(read.ok ? [] : read.issues.map((i) => i.code)).toEqual([code])
  })

  it('too large to be one is not even parsed', () => {
    const read = readBuild(' '.repeat(20_000_001))
    expect(read.ok ? [] : read.issues).toEqual([{ code: 'file.too_large', path: [], facts: { length: 20_000_001, largest: 20_000_000 } }])
  })

  it('an empty object: everything that must be there, at once', () => {
    expect(told({})).toEqual([
      'format: file.missing',
      'version: file.missing',
      'build: file.missing',
      'vehicle: file.missing',
      'parts: file.missing',
      'joints: file.missing',
    ])
  })

  it.each([
    ['unknown key', put('colour', 'red'), ['colour: file.unknown_key']],
    ['unknown key deep down', put('parts.0.colour', 'red'), ['parts.0.colour: file.unknown_key']],
    ['misspelt key', rename('vehicle.wheelbase', 'weelbase'), ['vehicle.weelbase: file.unknown_key']],
    ['a key of another kind of part', put('parts.0.stroke', '9 in'), ['parts.0.stroke: file.unknown_key']],
    ['wrong unit', put('vehicle.wheelbase', '112 psi'), ['vehicle.wheelbase: quantity.wrong_dimension']],
    ['no unit', put('vehicle.wheelbase', '112'), ['vehicle.wheelbase: quantity.no_unit']],
    ['a bare number', put('vehicle.wheelbase', 112), ['vehicle.wheelbase: file.wrong_type']],
    ['NaN in a text', put('vehicle.wheelbase', 'NaN mm'), ['vehicle.wheelbase: quantity.not_a_number']],
    ['below nothing', put('vehicle.wheelbase', '-1 in'), ['vehicle.wheelbase: quantity.out_of_range']],
    ['nothing where there must be something', put('vehicle.wheelbase', '0 in'), ['vehicle.wheelbase: quantity.out_of_range']],
    ['far too much', put('vehicle.wheelbase', '1 km'), ['vehicle.wheelbase: quantity.unknown_unit']],
    ['more than can be', put('vehicle.wheelbase', '11 m'), ['vehicle.wheelbase: quantity.out_of_range']],
    ['an end not understood', put('parts.0.ends.0.connection', 'what?'), ['parts.0.ends.0.connection: end.not_understood']],
    ['an end of no table', put('parts.0.ends.0.connection', '7/8-15 male'), ['parts.0.ends.0.connection: end.unknown_thread']],
    [
      'an end whose facets are both wrong',
      put('parts.0.ends.0.connection', 'taper 1:8 stud, blue, large 3'),
      ['parts.0.ends.0.connection: end.leftover', 'parts.0.ends.0.connection: quantity.no_unit'],
    ],
    [
      'no ends',
      drop('parts.2.ends'),
      ['parts.2.ends: file.missing', 'joints.3.a: reference.no_such_end', 'joints.7.a: reference.no_such_end'],
    ],
    ['no connection', drop('parts.0.ends.0.connection'), ['parts.0.ends.0.connection: file.missing']],
    ['no kind', drop('parts.0.kind'), ['parts.0.kind: file.missing']],
    ['a kind that there is not', put('parts.0.kind', 'wheel'), ['parts.0.kind: file.not_allowed']],
    ['a joint to a part that is not there', put('joints.0.a', 'nobody/left'), ['joints.0.a: reference.nothing_there']],
    ['a joint to an end that is not there', put('joints.0.a', 'tie-rod/middle'), ['joints.0.a: reference.no_such_end']],
    ['a joint to itself', put('joints.0.b', 'tie-rod/left'), ['joints.0.b: reference.to_itself']],
    ['a joint to something that is no end', put('joints.0.a', 'tie-rod'), ['joints.0.a: file.wrong_form']],
    ['a torque for no joint', put('torqueSpecs.0.joints', ['nobody']), ['torqueSpecs.0.joints.0: reference.nothing_there']],
    ['a task after none', put('tasks.1.after', ['inspect', 'nobody']), ['tasks.1.after.1: reference.nothing_there']],
    ['a task that needs none', put('tasks.1.needs', ['nobody']), ['tasks.1.needs.0: reference.nothing_there']],
    ['two parts of one id', put('parts.3.id', 'arm-right'), expect.arrayContaining(['parts.3.id: reference.twice'])],
    [
      'two ends of one name',
      put('parts.2.ends.1.name', 'tie-rod'),
      ['parts.2.ends.1.name: reference.end_twice', 'joints.7.a: reference.no_such_end'],
    ],
    ['two joints of one id', put('joints.1.id', 'tie-left-thread'), expect.arrayContaining(['joints.1.id: reference.twice'])],
    ['a list for a text', put('build.name', []), ['build.name: file.wrong_type']],
    ['null for a group', put('survey', null), ['survey: file.wrong_type']],
    ['half a revision', put('build.revision', 1.5), ['build.revision: file.wrong_type']],
    ['revision nought', put('build.revision', 0), ['build.revision: file.too_small']],
    ['an empty name', put('build.name', ''), ['build.name: file.too_small']],
    ['a name too long', put('build.name', 'x'.repeat(201)), ['build.name: file.too_big']],
    ['an id with a space', put('build.id', 'my build'), ['build.id: file.wrong_form']],
    ['a currency in small letters', put('build.currency', 'usd'), ['build.currency: file.wrong_form']],
    ['a price with a comma', put('parts.0.price', '12,50'), ['parts.0.price: file.wrong_form']],
    ['a day that is not', put('survey.takenOn', '2026-02-30'), ['survey.takenOn: file.wrong_form']],
    ['a newer version', put('version', 2), ['version: file.newer']],
    ['a version that never was', put('version', 0), ['version: file.not_allowed']],
    ['a version as text', put('version', '1'), ['version: file.not_allowed']],
    ['another format', put('format', 'something else'), ['format: file.other_format']],
  ] as const)('%s', (_what, spoil, expected) => {
    expect(told(spoilt(spoil))).toEqual(expected)
  })

  it('every fault at once, each with its path', () => {
    const found = told(
      spoilt(
        put('version', 9),
        put('colour', 'red'),
        put('vehicle.wheelbase', 'NaN mm'),
        put('vehicle.frontAxleLoad', '3 psi'),
        put('joints.0.a', 'nobody/left'),
        put('joints.0.with', ['glue']),
        drop('parts.1.ends.0.connection'),
        put('tasks.0.id', 'rods'),
        put('survey.resolution', '0 in'),
      ),
    )
    expect(found).toEqual(
      expect.arrayContaining([
        'version: file.newer',
        'colour: file.unknown_key',
        'vehicle.wheelbase: quantity.not_a_number',
        'vehicle.frontAxleLoad: quantity.wrong_dimension',
        'joints.0.a: reference.nothing_there',
        'joints.0.with.0: file.not_allowed',
        'parts.1.ends.0.connection: file.missing',
        'tasks.2.id: reference.twice',
        'survey.resolution: quantity.out_of_range',
      ]),
    )
  })

  it('keys that the language itself owns are keys like any other, and change nothing', () => {
    const text = writeBuild(demos.bought as BuildFile)
    for (const key of ['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty']) {
      for (const [before, path] of [
        ['"build": {', []],
        ['"revision": 3', ['build']],
        ['"kind": "axle housing"', ['parts', 0]],
        ['"name": "ram-pad"', ['parts', 0, 'ends', 0]],
      ] as const) {
        const read = readBuild(text.replace(before, `"${key}": {"polluted": true}, ${before}`))
        expect(read.ok ? 'read' : read.issues).toEqual([{ code: 'file.unknown_key', path: [...path, key], facts: { key } }])
      }
    }
    expect(({} as Record<string, unknown>).polluted).toBeUndefined()
  })

  it('more faults than a call takes arguments are still a list of faults', () => {
    const many = Object.fromEntries(Array.from({ length: 200_000 }, (_, i) => [`k${i}`, 1]))
    expect(issuesOf({ ...bought, ...many })).toHaveLength(200_000)
    expect(issuesOf({ ...bought, torqueRecords: Array.from({ length: 40_000 }, () => ({})) }).length).toBeGreaterThanOrEqual(160_000)
  })
})

describe('the JSON Schema', () => {
  const schema = buildFileJsonSchema() as { readonly [key: string]: unknown }

  it('says what it is', () => {
    expect(schema).toMatchObject({
      $id: 'steerwright-build-1',
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      type: 'object',
      additionalProperties: false,
      required: ['format', 'version', 'build', 'vehicle', 'parts', 'joints'],
    })
  })

  it('takes both demo files, a file with every key, and any other build that the program takes', () => {
    for (const file of [bought, corrected, fullBuild()]) expect(faults(schema, file)).toEqual([])
    fc.assert(
      fc.property(arbitraryBuild, (file) => {
        expect(faults(schema, file)).toEqual([])
      }),
      { numRuns: 50 },
    )
  })

  it('refuses what has the wrong keys or kinds', () => {
    expect(faults(schema, {})).not.toEqual([])
    expect(faults(schema, { ...bought, colour: 'red' })).not.toEqual([])
    expect(faults(schema, { ...bought, version: 2 })).not.toEqual([])
    expect(faults(schema, { ...bought, parts: [{ kind: 'wheel' }] })).not.toEqual([])
  })
})

describe('a hostile file', () => {
  /** Milliseconds for one file: the slowest seen takes a tenth of it; only a hang or an explosion takes more. */
  const LIMIT = 2_000
  const inTime = <T>(work: () => T): T => {
    const start = performance.now()
    const result = work()
    expect(performance.now() - start).toBeLessThan(LIMIT)
    return result
  }

  it('with things missing, doubled, replaced, put in: read, or refused with faults that lead somewhere', () => {
    fc.assert(
      fc.property(fc.constantFrom(...Object.keys(demos)), fc.array(mutation, { minLength: 1, maxLength: 6 }), (demo, mutations) => {
        const value = mutations.reduce<unknown>(mutate, demos[demo])
        const read = inTime(() => checkBuild(value))
        if (read.ok) expect(read.value.file).toBe(value)
        else {
          expect(read.issues.length).toBeGreaterThan(0)
          for (const { path, code } of read.issues)
            expect({ code, path, leads: leadsSomewhere(value, path) }).toEqual({ code, path, leads: true })
        }
        expect(({} as Record<string, unknown>).polluted).toBeUndefined()
      }),
      { numRuns: 400 },
    )
  })

  it('with its text cut, spliced and overwritten', () => {
    const text = writeBuild(demos.bought as BuildFile)
    const place = fc.nat(text.length)
    fc.assert(
      fc.property(
        fc.array(fc.tuple(place, fc.nat(40), fc.string({ unit: 'binary', maxLength: 20 })), { minLength: 1, maxLength: 4 }),
        (cuts) => {
          const hurt = cuts.reduce((t, [from, length, put]) => t.slice(0, from) + put + t.slice(from + length), text)
          const read = inTime(() => readBuild(hurt))
          if (!read.ok) expect(read.issues.length).toBeGreaterThan(0)
        },
      ),
      { numRuns: 400 },
    )
  })

  it('nested without end, or endless in breadth', () => {
    for (const text of [
      '['.repeat(1_000_000),
      `${'['.repeat(200_000)}${']'.repeat(200_000)}`,
      `${'{"build":'.repeat(100_000)}1${'}'.repeat(100_000)}`,
      `{"parts":${'['.repeat(100_000)}${']'.repeat(100_000)}}`,
      `{"format":"${'x'.repeat(10_000_000)}"}`,
      `{"parts":[${'{},'.repeat(1_000_000)}{}]}`,
      `{"joints":[${'{"a":"x/y","b":"x/y"},'.repeat(5_000)}{}]}`,
    ]) {
      const read = readBuild(text)
      expect(read.ok).toBe(false)
    }
  })
})
