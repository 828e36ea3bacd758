import { globSync, readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Build } from '../../../src/shared/model/build.ts'
import { parseEnd } from '../../../src/shared/model/end/parse.ts'
import type { End } from '../../../src/shared/model/end/types.ts'
import { JOINT_AIDS } from '../../../src/shared/model/joint.ts'
import { fitEnds } from '../../../src/shared/planner/fit/fit.ts'
import type { Verdict } from '../../../src/shared/planner/fit/verdict.ts'
import { plan } from '../../../src/shared/planner/index.ts'
import type { Finding } from '../../../src/shared/planner/plan.ts'
import { DIMENSIONS } from '../../../src/shared/quantities/dimension.ts'
import { findingTexts, numberTexts, workingTexts } from '../../../src/shared/report/index.ts'
import { cautionText, findingWords, problemSentence, stepWords, verdictWords } from '../../../src/shared/report/text/index.ts'
import { chosenWords } from '../../../src/shared/report/text/labels.ts'
import { MEASURES } from '../../../src/shared/report/text/measures.ts'
import { showIn } from '../../../src/shared/report/units.ts'
import { arbitraryBuild } from '../../main/database/arbitrary-build.ts'
import { CONNECTIONS } from '../../main/database/arbitrary-part.ts'
import { bare, built, DEMO } from '../planner/builds.ts'

/*
 * Codes are for the program, words for the reader. The sources are read for every code that they can give, so that a new one
 * without words fails here and not on somebody's sheet.
 */
const ROOT = resolve(import.meta.dirname, '../../..')
const sources = (pattern: string): string =>
  globSync(pattern, { cwd: ROOT })
    .map((path) => readFileSync(resolve(ROOT, path), 'utf8'))
    .join('\n')
const planner = sources('src/shared/planner/{*,rules/*,linkage/*,demand/*,supply/*,ram-choice/*,strength/*,flow/*,tightening/*}.ts')
const fit = sources('src/shared/planner/fit/*.ts')

const PIPE_AND_FLAT = [
  '3/8 NPT male',
  '3/8 NPT female',
  'R 3/8',
  'Rc 3/8',
  'G 3/8 male',
  'G 3/8 female',
  'M16x1.5 ISO 9974 female',
  'M16x1.5 male',
]
  .concat([
    'banjo M16x1.5 male',
    'taper 1:8 stud, large 0.87 in',
    'taper 1:8 hole, large 0.85 in',
    'weld',
    '36 splines 1 in shaft',
    '36 splines 1 in hole',
  ])
  .concat(['hose 3/8', 'barb 3/8', '7/8-18 male, jam nut', '7/8-18 female', 'pin 5/8 in', 'bore 5/8 in'])

const end = (typed: string): End => {
  const read = parseEnd(typed)
  if (!read.ok) throw new Error(`${typed}: ${JSON.stringify(read.issues)}`)
  return read.value
}

/** Quoted texts in every match of the pattern. */
const quoted = (text: string, pattern: RegExp): string[] => [
  ...new Set([...text.matchAll(pattern)].flatMap((m) => [...m[0].matchAll(/'([^']+)'/g)].map((q) => q[1] as string))),
]

const show = showIn('inch')

describe('findings', () => {
  // `code: 'a.b'`, `code: x ? 'a.b' : 'c.d'`, and the table of verdicts
  const codes = [...quoted(planner, /\bcode: [^,\n]+/g), ...quoted(planner, /'fit\.[a-z_]+'/g)].filter((c) =>
    /^(?:[a-z]+\.[a-z_]+|measure)$/.test(c),
  )

  it('are found in the sources', () => {
    expect(codes.length).toBeGreaterThan(20)
    for (const code of ['fit.wrong', 'adjuster.slow', 'ram.stroke_no_room', 'tasks.circle', 'measure']) expect(codes).toContain(code)
  })

  it.each([...new Set(codes)])('%s has a title, a reason and a remedy', (code) => {
    const finding: Finding = { code, severity: 'look', about: [], facts: { what: 'ram bore', part: 'P' }, evidence: [], numbers: [] }
    const { title, why, todo } = findingWords(finding, show)
    expect(title).not.toBe(code)
    for (const words of [title, why, todo]) expect(words.length).toBeGreaterThan(5)
  })
})

describe('what is to be measured', () => {
  const asked = [
    ...quoted(planner, /ledger\.measure\(\s*'[^']+'/g),
    // planRam asks for what is missing of a ram under its key
    ...['bore', 'rod', 'stroke', 'ended'].map((key) => `ram ${key}`),
  ]
  it.each(asked)('%s: how it is done', (what) => {
    expect(Object.keys(MEASURES)).toContain(what)
  })
  it('and nothing is told that nobody asks', () => {
    expect(Object.keys(MEASURES).filter((what) => !asked.includes(what))).toEqual([])
  })
})

describe('verdicts', () => {
  const verdict = (more: Partial<Verdict>): Verdict => ({
    kind: 'fits',
    rule: 'threads',
    reasons: [],
    conditions: [],
    measure: [],
    ...more,
  })
  const source = { id: 's', cites: 'S', mark: 'memory' } as const
  const reasons = [...quoted(fit, /'(?:thread|pipe|port|taper|round|clamp|bolt|spline|tail)\.[a-z_]+'/g), 'kinds']

  it.each(reasons)('reason %s', (code) => {
    const [words] = verdictWords(verdict({ reasons: [{ code, facts: {}, evidence: [], source }] }), show).reasons
    expect(words).toBeDefined()
    expect(words).not.toContain(code)
  })

  it('conditions are things that a joint can name, and have words', () => {
    const ends = [...CONNECTIONS, ...PIPE_AND_FLAT].map(end)
    const conditions = new Set(ends.flatMap((a) => ends.flatMap((b) => fitEnds(a, b).conditions)))
    expect(conditions.size).toBeGreaterThan(5)
    for (const condition of conditions) {
      expect(JOINT_AIDS).toContain(condition)
      expect(verdictWords(verdict({ conditions: [condition] }), show).conditions).not.toEqual([condition])
    }
  })
})

describe('steps, cautions and chosen values', () => {
  const steps = sources('src/shared/planner/steps.ts')
  it.each(quoted(steps, /\{\s*code: '[a-z- ]+'/g))('step %s', (code) => {
    if (code === 'own task') return
    const { text } = stepWords({ code, about: [], cautions: [], after: [] }, built(bare()))
    expect(text).not.toBe(code)
    expect(text.length).toBeGreaterThan(15)
  })
  it.each(quoted(steps, /cautions: \[[^\]]+\]/g))('caution %s', (code) => {
    expect(cautionText(code).length).toBeGreaterThan(30)
  })
  it.each(quoted(planner, /chosen\([^()]*(?:\([^()]*\)[^()]*)*'[^']+'\)/g).filter((q) => !(q in DIMENSIONS)))('chosen: %s', (why) => {
    expect(chosenWords(why)).not.toBe(why)
  })
})

describe('faults', () => {
  // what the formulas say among themselves (a linkage that does not close, a circle of tasks) reaches the reader as a finding
  const told = sources('src/{shared/{quantities,model,planner,contract},main}/**/*.ts') + sources('src/shared/formulas/card.ts')
  const codes = [...quoted(told, /\bissue\(\s*'[a-z]+\.[a-z_]+'/g), ...quoted(told, /'(?:file|reference|formula|database)\.[a-z_]+'/g)]
  it.each(codes.filter((c, i) => /^[a-z]+\.[a-z_]+$/.test(c) && codes.indexOf(c) === i))('%s', (code) => {
    const { sentence } = problemSentence({ code, path: [], facts: {} })
    expect(sentence).not.toContain(code)
    expect(sentence.length).toBeGreaterThan(15)
  })
})

/** A raw code, or a hole where a fact should be. */
const RAW = /undefined|\bNaN\b|\[object|^[a-z]+\.[a-z_]+$|\b(?:fit|end|survey|ram|fluid|torque|adjuster|number)\.[a-z_]+/

function expectWords(build: Build): void {
  const planned = plan(build)
  for (const units of ['inch', 'metric'] as const) {
    for (const f of findingTexts(build, planned, units)) {
      for (const words of [f.title, f.why, f.todo, f.aboutText, ...f.evidence]) {
        // what the user typed may look like anything: only builds with plain names come here
        expect({ code: f.code, words }).toEqual({ code: f.code, words: expect.not.stringMatching(RAW) })
      }
      expect({ code: f.code, why: f.why, todo: f.todo }).toEqual({
        code: f.code,
        why: expect.stringMatching(/\.$/),
        todo: expect.stringMatching(/\.$/),
      })
      expect(`${f.title} ${f.why}`).not.toMatch(/(?<!\?)\? (?:is|to|of|and|on)\b/)
    }
    for (const n of numberTexts(build, planned, units)) {
      expect({ id: n.id, label: n.label }).toEqual({ id: n.id, label: expect.not.stringMatching(RAW) })
      expect(n.label).not.toBe(n.id)
    }
    for (const w of workingTexts(build, planned, units)) {
      for (const words of [w.label, w.title, w.result, ...w.inputs.flatMap((i) => [i.meaning, i.value, i.from])])
        expect(words).not.toMatch(/undefined|NaN/)
    }
  }
}

describe('no raw code reaches the reader', () => {
  it.each(Object.entries(DEMO))('of the demo as %s', (_name, file) => {
    expectWords(built(file))
  })

  it('of any build', () => {
    fc.assert(
      fc.property(arbitraryBuild, (file) => {
        expectWords(built(plainNames(file)))
      }),
      { numRuns: 60 },
    )
  })
})

/** The same build with every free text made plain, so that a code in the output is the program's. */
function plainNames(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(plainNames)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(
    Object.entries(value).map(([key, v]) => [
      key,
      ['name', 'what', 'note', 'notes', 'by', 'maker', 'supplier', 'source', 'description'].includes(key) &&
      typeof v === 'string' &&
      !/^[a-z0-9-]+$/.test(v) &&
      !isChoice(key, value)
        ? 'Plain words'
        : plainNames(v),
    ]),
  )
}
/** A limit's "what" is one of four words, and a group of bolts' "maker" the torque that the maker asks for. */
const isChoice = (key: string, holder: object): boolean => (key === 'what' && 'side' in holder) || (key === 'maker' && 'thread' in holder)
