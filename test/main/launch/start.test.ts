import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'

const root = resolve(import.meta.dirname, '../../..')
let data: string
let child: ChildProcess | undefined

beforeEach(() => {
  data = mkdtempSync(join(tmpdir(), 'steerwright-start-'))
})
afterEach(() => {
  child?.kill('SIGKILL')
  rmSync(data, { recursive: true })
})

interface Started {
  readonly output: () => string
  readonly address: Promise<string>
  readonly ended: Promise<{ code: number | null; signal: NodeJS.Signals | null }>
}

/** `npm start` on a machine without Electron's runtime, a network or a display. */
function start(env: Record<string, string> = {}): Started {
  const { DISPLAY: _, WAYLAND_DISPLAY: __, ...rest } = process.env
  const started = spawn(process.execPath, [join(root, 'src/main/launch/start.mjs')], {
    env: { ...rest, STEERWRIGHT_DATA: data, STEERWRIGHT_OFFLINE: '1', STEERWRIGHT_BROWSER: 'none', ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  child = started
  let output = ''
  const address = new Promise<string>((done, failed) => {
    for (const stream of [started.stdout, started.stderr]) {
      stream.setEncoding('utf8').on('data', (text: string) => {
        output += text
        const found = /http:\/\/127\.0\.0\.1:\d+\/#token=[\w-]+/.exec(output)
        if (found !== null) done(found[0])
      })
    }
    started.once('exit', (code) => failed(new Error(`ended with ${code}: ${output}`)))
  })
  const ended = new Promise<{ code: number | null; signal: NodeJS.Signals | null }>((done) =>
    started.once('exit', (code, signal) => done({ code, signal })),
  )
  return { output: () => output, address, ended }
}

async function ask(address: string, name: string, input: unknown): Promise<unknown> {
  const { origin, hash } = new URL(address)
  const headers = { Origin: origin, Authorization: `Bearer ${hash.slice('#token='.length)}`, 'Content-Type': 'application/json' }
  return (await fetch(`${origin}/rpc/${name}`, { method: 'POST', headers, body: JSON.stringify(input) })).json()
}

describe('start, where no window can open', () => {
  it.each(['SIGINT', 'SIGTERM'] as const)('says so in one line, serves the program, and ends well on %s', async (signal) => {
    const { output, address, ended } = start()
    const at = await address
    expect(
      output()
        .split('\n')
        .filter((line) => line.includes('Electron')),
    ).toHaveLength(1)
    expect(await ask(at, 'program.about', {})).toMatchObject({ host: 'browser', dataFolder: data, database: { ok: true } })
    expect(await ask(at, 'builds.list', {})).toEqual({ ok: true, value: [] })
    expect((await fetch(new URL('/', at))).headers.get('content-security-policy')).toContain("default-src 'none'")
    child?.kill(signal)
    expect(await ended).toEqual({ code: 0, signal: null })
    await expect(fetch(new URL('/', at))).rejects.toThrow()
  })

  it('keeps what was done for the next start', async () => {
    const first = start()
    expect(await ask(await first.address, 'demo.add', { which: 'corrected' })).toMatchObject({ ok: true })
    child?.kill('SIGINT')
    await first.ended
    const second = start()
    expect(await ask(await second.address, 'builds.list', {})).toMatchObject({ ok: true, value: [{ revision: expect.any(Number) }] })
  })

  it('ends once and well when Ctrl-C is pressed twice', async () => {
    const { address, ended } = start()
    await address
    child?.kill('SIGINT')
    child?.kill('SIGINT')
    expect(await ended).toEqual({ code: 0, signal: null })
  })
})
