import { mkdirSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, utimesSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { ensureBuilt } from '../../../src/main/launch/ensure-built.mjs'
import { isFresh, STAMP, stateOf } from '../../../src/main/launch/fresh.mjs'
import { alone } from '../../../src/main/launch/lock.mjs'

let root: string
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'steerwright-build-'))
  for (const folder of ['src/shared', 'migrations', 'out']) mkdirSync(join(root, folder), { recursive: true })
  for (const file of ['src/shared/a.ts', 'src/b.ts', 'migrations/0000.sql', 'electron.vite.config.ts', 'package.json']) {
    writeFileSync(join(root, file), 'x')
  }
  for (const folder of ['src', 'src/shared', 'migrations']) utimesSync(join(root, folder), 1_000, 1_000)
})
afterEach(() => rmSync(root, { recursive: true }))

const works = (does = () => {}) => {
  let runs = 0
  const build = async () => {
    runs += 1
    does()
    return { code: 0, output: '' }
  }
  return { build, runs: () => runs }
}

describe('ensureBuilt', () => {
  it('builds once and then finds the build fresh', async () => {
    const { build, runs } = works()
    expect(await ensureBuilt({ root, build })).toBe(true)
    expect(isFresh(root)).toBe(true)
    expect(await ensureBuilt({ root, build })).toBe(true)
    expect(runs()).toBe(1)
  })

  it.each<[string, (root: string) => void]>([
    ['a source is saved', (at) => utimesSync(join(at, 'src/shared/a.ts'), 4e9, 4e9)],
    ['a source is added', (at) => writeFileSync(join(at, 'src/new.ts'), '')],
    ['a source is taken away', (at) => rmSync(join(at, 'src/b.ts'))],
    ['a source is renamed', (at) => renameSync(join(at, 'src/shared/a.ts'), join(at, 'src/shared/c.ts'))],
    [
      'an older, longer source is put in its place',
      (at) => {
        writeFileSync(join(at, 'src/b.ts'), 'longer')
        utimesSync(join(at, 'src/b.ts'), 1, 1)
      },
    ],
    ['a migration is saved', (at) => utimesSync(join(at, 'migrations/0000.sql'), 4e9, 4e9)],
    ['the build’s configuration is saved', (at) => utimesSync(join(at, 'electron.vite.config.ts'), 4e9, 4e9)],
    ['package.json is saved', (at) => utimesSync(join(at, 'package.json'), 4e9, 4e9)],
    ['out/ is thrown away', (at) => rmSync(join(at, 'out'), { recursive: true })],
  ])('builds again when %s', async (_what, change) => {
    const { build, runs } = works(() => mkdirSync(join(root, 'out'), { recursive: true }))
    await ensureBuilt({ root, build })
    change(root)
    expect(isFresh(root)).toBe(false)
    await ensureBuilt({ root, build })
    expect(runs()).toBe(2)
    expect(isFresh(root)).toBe(true)
  })

  it('builds a fresh one too when asked to', async () => {
    const { build, runs } = works()
    await ensureBuilt({ root, build })
    await ensureBuilt({ root, build, always: true })
    expect(runs()).toBe(2)
  })

  it('does not take a source saved during the build for built', async () => {
    const { build } = works(() => utimesSync(join(root, 'src/b.ts'), 4e9, 4e9))
    await ensureBuilt({ root, build })
    expect(isFresh(root)).toBe(false)
  })

  it('tells why a build failed, and does not take what is there for built', async () => {
    await ensureBuilt({ root, build: works().build })
    utimesSync(join(root, 'src/b.ts'), 4e9, 4e9)
    const said = vi.spyOn(process.stderr, 'write').mockReturnValue(true)
    expect(await ensureBuilt({ root, build: async () => ({ code: 1, output: 'no such export' }) })).toBe(false)
    expect(said.mock.calls.join('')).toContain('no such export')
    said.mockRestore()
    expect(isFresh(root)).toBe(false)
    expect(readdirSync(join(root, 'node_modules/.cache'))).toEqual([])
  })

  it('lets those that come at the same time wait for one build', async () => {
    let inside = 0
    let most = 0
    let runs = 0
    const build = async () => {
      runs += 1
      inside += 1
      most = Math.max(most, inside)
      await new Promise((done) => setTimeout(done, 30))
      inside -= 1
      return { code: 0, output: '' }
    }
    expect(await Promise.all(Array.from({ length: 5 }, () => ensureBuilt({ root, build })))).toEqual([true, true, true, true, true])
    expect({ most, runs }).toEqual({ most: 1, runs: 1 })
  })

  it('writes the state of the sources into out/', async () => {
    await ensureBuilt({ root, build: works().build })
    expect(readFileSync(join(root, STAMP), 'utf8')).toBe(stateOf(root))
  })
})

describe('the lock', () => {
  const lock = () => join(root, 'lock')

  it('is taken over from an owner that has died', async () => {
    mkdirSync(lock())
    // larger than any process number of the systems Node runs on
    writeFileSync(join(lock(), 'owner'), '2000000000')
    expect(await alone(lock(), async () => 'mine')).toBe('mine')
  })

  it('is taken over when its maker died before it signed', async () => {
    mkdirSync(lock())
    expect(await alone(lock(), async () => 'mine')).toBe('mine')
  }, 10_000)

  it('is left alone while its owner lives', async () => {
    mkdirSync(lock())
    writeFileSync(join(lock(), 'owner'), String(process.pid))
    let got = false
    const waiting = alone(lock(), async () => {
      got = true
    })
    await new Promise((done) => setTimeout(done, 200))
    expect(got).toBe(false)
    rmSync(lock(), { recursive: true })
    await waiting
    expect(got).toBe(true)
  })

  it('is given back when the work fails', async () => {
    await expect(
      alone(lock(), async () => {
        throw new Error('work')
      }),
    ).rejects.toThrow('work')
    expect(await alone(lock(), async () => 'next')).toBe('next')
  })
})
