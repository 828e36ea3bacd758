import { describe, expect, it } from 'vitest'
import type { BuildFile } from '../../../src/shared/model/build.ts'
import { checkBuild } from '../../../src/shared/model/exchange.ts'
import { problemSentence } from '../../../src/shared/report/text/index.ts'

const build = (name: string, notes: string): BuildFile => ({
  format: 'steerwright build',
  version: 1,
  build: { id: 'larch', name, revision: 1, units: 'inch', notes },
  vehicle: { id: 'larch', name: 'Larch' },
  parts: [],
  joints: [],
})

describe('typed text', () => {
  it.each(['é', 'e\u0301', '\u{1f529}', '\ufffd', '\ufeffx', '\t'])('may be anything that comes back as it went in: %j', (text) => {
    expect(checkBuild(build(text, text)).ok).toBe(true)
  })

  it.each(['x\ud83d', '\udd29x', 'x\0y', '\0'])('may not hold what a file or a database loses: %j', (text) => {
    const checked = checkBuild(build(text, text))
    if (checked.ok) throw new Error('taken')
    expect(checked.issues.map(({ code, path }) => [code, path.join('.')])).toEqual([
      ['text.not_kept', 'build.name'],
      ['text.not_kept', 'build.notes'],
    ])
    for (const issue of checked.issues) expect(problemSentence(issue).sentence).toMatch(/^This text .+\.$/)
  })
})

describe('the joints that a torque speaks for', () => {
  it('must all be there', () => {
    const file = { ...build('Larch', ''), torqueSpecs: [{ id: 't', what: 'nuts', from: 'maker' as const, joints: ['a', 'b'] }] }
    const checked = checkBuild(file)
    expect(checked.ok ? [] : checked.issues.map(({ code, path }) => [code, path.join('.')])).toEqual([
      ['reference.nothing_there', 'torqueSpecs.0.joints.0'],
      ['reference.nothing_there', 'torqueSpecs.0.joints.1'],
    ])
  })
})
