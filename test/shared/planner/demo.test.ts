import { describe, expect, it } from 'vitest'
import type { Finding } from '../../../src/shared/planner/plan.ts'
import { findingTexts } from '../../../src/shared/report/index.ts'
import { built, DEMO, found, planOf, shown } from './builds.ts'

const bought = planOf(DEMO.bought)
const texts = findingTexts(built(DEMO.bought), bought, 'inch')
const INCH = 0.0254

/** Findings on the joint of this id. */
const on = (joint: string): readonly Finding[] => bought.findings.filter((f) => f.facts.joint === joint)

/** The mistakes planted in the demo as bought (issue 2, item 11): where, what, why, and the numbers that prove it. */
const MISTAKES: readonly {
  readonly what: string
  readonly joint: string
  readonly code: string
  readonly reason: string | null
  readonly proof: Readonly<Record<string, number>>
  readonly words: RegExp
}[] = [
  {
    what: 'a left-hand end where a right-hand one belongs',
    joint: 'tie-right-thread',
    code: 'fit.does_not_fit',
    reason: 'thread.hand',
    proof: {},
    words: /left-hand/,
  },
  {
    what: '7/8-14 in 7/8-18',
    joint: 'drag-arm-thread',
    code: 'fit.does_not_fit',
    reason: 'thread.binds',
    proof: { 'pitch, male': INCH / 14, 'pitch, female': INCH / 18, 'pitch drift over 10 mm': 0.01 * (1 - 14 / 18) },
    words: /7\/8-14 in 7\/8-18 binds after/,
  },
  {
    what: 'a 1:8 stud in a 1:10 arm',
    joint: 'drag-arm-stud',
    code: 'fit.wrong',
    reason: 'taper.rates_differ',
    // over the arm's 19 mm the cones differ by 19 (1/8 - 1/10) mm on diameter
    proof: { 'taper of the stud': 0.125, 'taper of the hole': 0.1, 'gap at the other end': 0.019 * 0.025 },
    words: /1:8 .*1:10/,
  },
  {
    what: 'a 37° flare hose on an O-ring boss port',
    joint: 'assist-left',
    code: 'fit.wrong',
    reason: 'port.same_thread_other_seal',
    proof: {},
    words: /37° flare has nothing to seal on in an O-ring boss/,
  },
  {
    what: 'a clamp for 1 1/4 in on a 1 1/2 in tube',
    joint: 'ram-clamp-tube',
    code: 'fit.does_not_fit',
    reason: 'clamp.too_small',
    proof: { 'outside diameter of the tube': 1.5 * INCH, 'bore of the clamp': 1.25 * INCH },
    words: /1\.25 in .*1\.5 in/,
  },
  {
    what: 'a pitman arm whose taper nobody measured',
    joint: 'drag-box-stud',
    code: 'fit.not_known',
    reason: null,
    proof: {},
    words: /taper of the hole/,
  },
]

describe('the demo as bought', () => {
  it.each(MISTAKES.map((m) => [m.what, m] as const))('%s is found once, stops the build, is proved and told in words', (_what, m) => {
    const findings = on(m.joint)
    expect(findings.map((f) => f.code)).toEqual([m.code])
    const [finding] = findings
    expect(finding?.severity).toBe('stops')
    expect(finding?.about).toEqual(['joints', DEMO.bought.joints.findIndex((j) => j.id === m.joint)])
    expect(finding?.verdict?.reasons[0]?.code ?? null).toBe(m.reason)
    for (const [name, si] of Object.entries(m.proof)) expect(shown(finding, name)).toBeCloseTo(si, 12)
    if (m.reason === null) expect(finding?.verdict?.measure).toEqual(['taper of the hole'])
    const text = texts[bought.findings.indexOf(finding as Finding)]
    for (const words of [text?.title, text?.why, text?.todo]) {
      expect(words?.length).toBeGreaterThan(20)
      expect(words).not.toMatch(/undefined|NaN|\?(?!$)/)
    }
    expect(`${text?.title} ${text?.why} ${text?.todo}`).toMatch(m.words)
    expect(text?.todo).not.toBe('Change one of the two.')
  })

  it('names the parts and what is written on each end in the title', () => {
    const titles = texts.filter((t) => t.severity === 'stops').map((t) => t.title)
    expect(titles).toContain(
      'Does not fit: Tie rod (7/8-18 RH female, engaged 1 1/2 in) on Tie-rod end (7/8-18 LH male, engaged 1 1/4 in, jam nut)',
    )
  })

  it('has nothing else that stops it', () => {
    expect(bought.findings.filter((f) => f.severity === 'stops')).toHaveLength(MISTAKES.length)
    expect(new Set(bought.findings.filter((f) => f.severity === 'stops').map((f) => f.facts.joint))).toEqual(
      new Set(MISTAKES.map((m) => m.joint)),
    )
  })

  it('puts what stops the build first', () => {
    const ranks = bought.findings.map((f) => ['stops', 'look', 'noted'].indexOf(f.severity))
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b))
  })

  it('finds no other fault in the joints: what is as it should be is said to fit', () => {
    const wrong = new Set(MISTAKES.map((m) => m.joint))
    for (const { joint, verdict, unmet } of bought.joints) {
      if (wrong.has(joint)) continue
      expect({ joint, kind: verdict.kind }).toEqual({ joint, kind: expect.stringMatching(/^fits/) })
      expect({ joint, unmet }).toEqual({ joint, unmet: [] })
    }
  })
})

describe('the demo as corrected', () => {
  const corrected = planOf(DEMO.corrected)

  it('has nothing that stops it', () => {
    expect(corrected.findings.filter((f) => f.severity === 'stops')).toEqual([])
    expect(corrected.joints.every((j) => j.verdict.kind === 'fits' || j.verdict.kind === 'fits if')).toBe(true)
    expect(corrected.joints.flatMap((j) => j.unmet)).toEqual([])
  })

  it('leaves no end that nobody has thought of', () => {
    for (const code of ['end.not_joined', 'end.joined_twice', 'end.joined_though_open']) expect(found(corrected, code)).toEqual([])
  })

  it('differs from the demo as bought in its mistakes and their remedies, not in its vehicle, axle, survey or limits', () => {
    for (const key of ['vehicle', 'axle', 'survey', 'limits', 'tasks', 'sessions'] as const) {
      expect(DEMO.corrected[key]).toEqual(DEMO.bought[key])
    }
  })
})
