import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { acrossCommand } from '../../../src/main/cli/commands/across.ts'
import { identifyCommand } from '../../../src/main/cli/commands/identify.ts'

let out = ''
let err = ''
let folder = ''
beforeEach(() => {
  out = ''
  err = ''
  folder = mkdtempSync(join(tmpdir(), 'shelf-'))
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    out += String(text)
    return true
  })
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    err += String(text)
    return true
  })
})
afterEach(() => {
  vi.restoreAllMocks()
  rmSync(folder, { recursive: true })
})

const file = (value: unknown): string => {
  const path = join(folder, 'shelf.json')
  writeFileSync(path, typeof value === 'string' ? value : JSON.stringify(value))
  return path
}
const part = (id: string, ends: readonly string[], more: object = {}) => ({
  kind: 'adapter',
  id,
  name: id,
  state: 'here',
  ends: ends.map((connection, i) => ({ name: `end-${i}`, connection })),
  ...more,
})

describe('across', () => {
  it('finds the adapter on a shelf that is a list of parts', async () => {
    const shelf = file([part('elbow', ['-6 37° flare female', '3/8 NPT male'], { price: '7.50', length: '40 mm' })])
    expect(await acrossCommand(['-6 37° flare male', '3/8 NPT female', '--shelf', shelf])).toBe(0)
    expect(out).toContain('elbow')
    expect(out).toContain('2 leak points, 7.50, 1.575 in long')
    expect(out).not.toContain('to buy')
  })

  it('reads a whole build as a shelf, and a pump is no adapter', async () => {
    const build = {
      format: 'steerwright build',
      version: 1,
      build: { id: 'b', name: 'B', revision: 1, units: 'inch' },
      vehicle: { id: 'v', name: 'V' },
      parts: [
        { ...part('pump', ['-6 37° flare female', '3/8 NPT male']), kind: 'pump' },
        part('tee', ['-6 37° flare female', '3/8 NPT male', '3/8 NPT male']),
      ],
      joints: [],
    }
    expect(await acrossCommand(['-6 37° flare male', '3/8 NPT female', '--shelf', file(build), '--json'])).toBe(0)
    const answer = JSON.parse(out)
    expect(answer).toMatchObject({ format: 'steerwright across', version: 1, outcome: 'found' })
    expect(answer.chains[0].pieces.map((p: { id: string }) => p.id)).toEqual(['tee'])
    // the tee leaves an end open; one adapter to buy leaks in fewer places
    expect(answer.buying[0]).toMatchObject({ leakPoints: 2, toBuy: 1 })
  })

  it('counts joints, not leaks, where no oil runs', async () => {
    const shelf = file([part('bung', ['weld', '7/8-18 LH female'])])
    expect(await acrossCommand(['tube 1 1/2 in', '7/8-18 LH male', '--shelf', shelf])).toBe(0)
    expect(out).toContain('1 piece from the shelf, 2 joints.')
  })

  it('gives every fault of the shelf and of the ends at once', async () => {
    const shelf = file([
      part('a', ['-6 blah', '3/8 NPT male']),
      part('b', ['-6 37° flare male'], { price: 'much' }),
      part('c', [], { colour: 'red' }),
    ])
    expect(await acrossCommand(['what', '3/8 NPT female', '--shelf', shelf])).toBe(2)
    expect(out).toBe('')
    expect(err.trim().split('\n')).toHaveLength(4)
  })

  it('tells two parts of one id, a file that is no JSON and one that is not there', async () => {
    expect(await acrossCommand(['-6 jic male', '3/8 NPT female', '--shelf', file([part('a', []), part('a', [])])])).toBe(2)
    expect(err).toContain('twice')
    expect(await acrossCommand(['-6 jic male', '3/8 NPT female', '--shelf', file('[')])).toBe(2)
    expect(await acrossCommand(['-6 jic male', '3/8 NPT female', '--shelf', join(folder, 'none.json')])).toBe(2)
  })

  it('exits with 0 where nothing is needed and 1 where nothing can be', async () => {
    expect(await acrossCommand(['-6 jic male', '-6 jic female'])).toBe(0)
    expect(out).toContain('No adapter is needed')
    expect(await acrossCommand(['-6 jic male', 'taper 1:8 stud, large 0.7 in'])).toBe(1)
    expect(out).toContain('carries oil')
    expect(await acrossCommand(['3/8 NPT', '-6 jic male'])).toBe(1)
    expect(out).toContain('measure: sex of the thread')
  })
})

describe('identify', () => {
  it('names the candidates and the measurement that parts them, with what was assumed', async () => {
    expect(await identifyCommand(['od=22.1mm', 'pitch=1.81mm'])).toBe(0)
    expect(out).toContain('7/8-14 male: consistent')
    expect(out).toContain('G 5/8 male: nearly')
    expect(out).toContain('assumed, calliper ±0.05 mm')
    expect(out).toContain('thread gauge')
  })

  it('answers in JSON that names itself', async () => {
    expect(await identifyCommand(['d1=17.8mm', 'd2=15.3mm', 'length=20mm', '--json'])).toBe(0)
    expect(JSON.parse(out)).toMatchObject({
      format: 'steerwright identify',
      version: 1,
      what: 'taper',
      candidates: [{ row: '1:8' }, { row: '7° included' }],
    })
  })

  it('exits with 1 where nothing explains the readings and 2 on bad input, all of it at once', async () => {
    expect(await identifyCommand(['od=3mm', 'pitch=3mm'])).toBe(1)
    expect(out).toContain('Measure again')
    expect(await identifyCommand(['od=3 parsecs', 'weight=3', 'taper=perhaps'])).toBe(2)
    expect(err.trim().split('\n')).toHaveLength(3)
  })
})
