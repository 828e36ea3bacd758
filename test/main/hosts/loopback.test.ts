import { once } from 'node:events'
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { type IncomingHttpHeaders, type RequestOptions, request } from 'node:http'
import { connect } from 'node:net'
import { networkInterfaces, tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { makeDispatch } from '../../../src/main/hosts/dispatch.ts'
import { LIMITS, type Loopback, startLoopback } from '../../../src/main/hosts/loopback.ts'
import { stubProcedures } from './stub.ts'

interface Reply {
  readonly status: number
  readonly headers: IncomingHttpHeaders
  readonly text: string
}

let folder: string
let loopback: Loopback
let port: number
const asked: string[] = []

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'steerwright-loopback-'))
  const renderer = join(folder, 'renderer')
  mkdirSync(join(renderer, 'assets'), { recursive: true })
  writeFileSync(join(folder, 'secret.json'), '"outside"')
  writeFileSync(join(renderer, 'index.html'), '<!doctype html><title>page</title>')
  writeFileSync(join(renderer, 'assets', 'page.js'), 'void 0')
  writeFileSync(join(renderer, '.hidden.json'), '"hidden"')
  writeFileSync(join(renderer, 'program.sh'), 'exit')
  const procedures = stubProcedures({
    'builds.import': async ({ text }) => {
      asked.push(text)
      return { ok: true, value: { id: 'larch', replaced: false } }
    },
    'builds.export': async () => {
      throw new Error('a bug')
    },
  })
  loopback = await startLoopback({
    dispatch: makeDispatch(procedures, () => {}),
    log: () => {},
    renderer,
    limits: { bodyBytes: 100_000, headersMs: 400, requestMs: 800, checkMs: 100 },
  })
  port = Number(new URL(loopback.origin).port)
})

afterAll(async () => {
  await loopback.close()
  rmSync(folder, { recursive: true })
})

/** One request as written here, with no help from a client that would tidy the path or the headers. */
function send(path: string, options: RequestOptions = {}, body?: string | Buffer): Promise<Reply> {
  return new Promise((done, failed) => {
    const outgoing = request({ host: '127.0.0.1', port, path, agent: false, ...options }, (incoming) => {
      let text = ''
      incoming.setEncoding('utf8')
      incoming.on('data', (piece) => {
        text += piece
      })
      incoming.on('end', () => done({ status: incoming.statusCode ?? 0, headers: incoming.headers, text }))
    })
    outgoing.on('error', failed)
    outgoing.end(body)
  })
}

const own = (): Record<string, string> => ({
  Origin: loopback.origin,
  Authorization: `Bearer ${loopback.token}`,
  'Content-Type': 'application/json',
})

const call = (name: string, input: unknown, headers: Record<string, string | undefined> = {}, method = 'POST'): Promise<Reply> => {
  const all = { ...own(), ...headers }
  const set = Object.fromEntries(Object.entries(all).filter((entry): entry is [string, string] => entry[1] !== undefined))
  return send(`/rpc/${name}`, { method, headers: set }, typeof input === 'string' ? input : JSON.stringify(input))
}

describe('the loopback host, used as meant', () => {
  it('gives an address of this machine alone, with 32 random bytes in the fragment', async () => {
    expect(loopback.address).toBe(`http://127.0.0.1:${port}/#token=${loopback.token}`)
    expect(Buffer.from(loopback.token, 'base64url')).toHaveLength(32)
    const second = await startLoopback({ dispatch: makeDispatch(stubProcedures(), () => {}), log: () => {}, renderer: folder })
    expect(second.token).not.toBe(loopback.token)
    expect(second.origin).not.toBe(loopback.origin)
    await second.close()
    await second.close()
  })

  it('serves the page and its files with every protecting header', async () => {
    const page = await send('/')
    expect(page).toMatchObject({ status: 200, text: '<!doctype html><title>page</title>' })
    expect(page.headers).toMatchObject({
      'content-type': 'text/html; charset=utf-8',
      'content-security-policy': expect.stringMatching(/^default-src 'none'; script-src 'self';.*frame-ancestors 'none'$/),
      'x-content-type-options': 'nosniff',
      'x-frame-options': 'DENY',
      'referrer-policy': 'no-referrer',
      'cross-origin-opener-policy': 'same-origin',
      'cross-origin-resource-policy': 'same-origin',
      'cache-control': 'no-store',
    })
    expect(page.headers['content-security-policy']).not.toContain('unsafe')
    expect(page.headers['access-control-allow-origin']).toBeUndefined()
    expect(await send('/assets/page.js?v=1')).toMatchObject({ status: 200, text: 'void 0' })
    expect(await send('/', { method: 'HEAD' })).toMatchObject({ status: 200, text: '' })
  })

  it('answers a command', async () => {
    const reply = await call('builds.list', {})
    expect(reply).toMatchObject({ status: 200, text: '{"ok":true,"value":[]}' })
    expect(reply.headers['content-type']).toBe('application/json; charset=utf-8')
  })

  it('carries every letter through', async () => {
    const text = '7/8″-14 · Ø 31,75 · Lärche · \u0000 · 🛠'
    expect((await call('builds.import', { text, replace: false }, { 'Content-Type': 'application/json; charset=utf-8' })).status).toBe(200)
    expect(asked.at(-1)).toBe(text)
  })

  it('says what is wrong with a command: unknown, not understood, a bug', async () => {
    expect((await call('builds.destroy', {})).status).toBe(404)
    expect((await call('builds.open', { id: 3 })).status).toBe(400)
    expect((await call('builds.export', { id: 'larch' })).status).toBe(500)
    expect((await call('builds.open', '{"id":')).status).toBe(400)
    expect((await call('builds.open', '')).status).toBe(400)
  })
})

describe('the loopback host, attacked', () => {
  it.each(['localhost', 'evil.example', '127.0.0.1', '127.0.0.1:1', '0.0.0.0', '[::1]', '127.0.0.1.evil.example'])(
    'answers 421 to the host name "%s" (DNS rebinding)',
    async (name) => {
      const host = name === 'localhost' || name.startsWith('[') || name === '0.0.0.0' ? `${name}:${port}` : name
      expect((await send('/', { headers: { Host: host } })).status).toBe(421)
      expect((await call('builds.list', {}, { Host: host })).status).toBe(421)
    },
  )

  it('answers 421 to a caller that names no host', async () => {
    const socket = connect(port, '127.0.0.1')
    socket.write('GET / HTTP/1.0\r\n\r\n')
    const [reply] = (await once(socket, 'data')) as [Buffer]
    expect(reply.toString()).toMatch(/^HTTP\/1\.1 421 /)
    socket.destroy()
  })

  it.each([undefined, 'null', 'http://evil.example', 'http://localhost:80', 'https://127.0.0.1'])(
    'answers 403 to a command from the origin %s',
    async (origin) => {
      expect((await call('builds.list', {}, { Origin: origin })).status).toBe(403)
    },
  )

  it('answers 403 to an origin that only begins like its own', async () => {
    expect((await call('builds.list', {}, { Origin: `${loopback.origin}0` })).status).toBe(403)
    expect((await call('builds.list', {}, { Origin: `${loopback.origin}.evil.example` })).status).toBe(403)
  })

  it('answers 401 without the token of this start', async () => {
    const almost = loopback.token.slice(0, -1) + (loopback.token.endsWith('A') ? 'B' : 'A')
    for (const header of [
      undefined,
      '',
      'Bearer',
      'Bearer ',
      `Bearer ${almost}`,
      loopback.token,
      `Basic ${loopback.token}`,
      `Bearer ${loopback.token} x`,
    ]) {
      expect((await call('builds.list', {}, { Authorization: header })).status, String(header)).toBe(401)
    }
  })

  it('takes no token from the address', async () => {
    const { Authorization: _, ...rest } = own()
    expect((await send(`/rpc/builds.list?token=${loopback.token}`, { method: 'POST', headers: rest }, '{}')).status).toBe(401)
  })

  it.each(['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data', 'application/json-patch', 'text/json', '', undefined])(
    'answers 415 to the content type %s, which a form on a foreign page could send',
    async (type) => {
      expect((await call('builds.list', {}, { 'Content-Type': type })).status).toBe(415)
    },
  )

  it.each(['GET', 'HEAD', 'PUT', 'DELETE', 'PATCH', 'OPTIONS', 'TRACE'])('answers 405 to a command by %s', async (method) => {
    const reply = await send('/rpc/builds.list', { method, headers: own() })
    expect(reply.status).toBe(405)
    expect(reply.headers.allow).toBe('POST')
  })

  it.each(['POST', 'PUT', 'DELETE', 'OPTIONS'])('answers 405 to %s on a page', async (method) => {
    expect((await send('/', { method })).status).toBe(405)
  })

  it('answers 413 to a body that says it is too large, without reading it', async () => {
    const socket = connect(port, '127.0.0.1')
    const headers = Object.entries(own()).map(([name, value]) => `${name}: ${value}\r\n`)
    socket.write(`POST /rpc/builds.import HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\n${headers.join('')}Content-Length: 100001\r\n\r\n`)
    const [reply] = (await once(socket, 'data')) as [Buffer]
    expect(reply.toString()).toMatch(/^HTTP\/1\.1 413 /)
    socket.destroy()
  })

  it('answers 413 to a body that grows too large without saying so', async () => {
    const socket = connect(port, '127.0.0.1')
    socket.on('error', () => {})
    const headers = Object.entries(own()).map(([name, value]) => `${name}: ${value}\r\n`)
    socket.write(`POST /rpc/builds.import HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\n${headers.join('')}Transfer-Encoding: chunked\r\n\r\n`)
    const chunk = `4000\r\n${'x'.repeat(0x4000)}\r\n`
    for (let i = 0; i < 8; i += 1) socket.write(chunk)
    const [reply] = (await once(socket, 'data')) as [Buffer]
    expect(reply.toString()).toMatch(/^HTTP\/1\.1 413 /)
    socket.destroy()
  })

  it('takes a body of exactly the limit', async () => {
    const frame = '{"text":"","replace":false}'
    const text = 'x'.repeat(100_000 - frame.length)
    expect((await call('builds.import', { text, replace: false })).status).toBe(200)
    expect(asked.at(-1)).toHaveLength(text.length)
  })

  it('survives JSON nested a hundred thousand deep', async () => {
    const deep = '['.repeat(49_000) + ']'.repeat(49_000)
    expect((await call('builds.list', deep)).status).toBe(400)
    expect((await call('builds.list', {})).status).toBe(200)
  })

  it.each([
    '/../secret.json',
    '/../../etc/passwd',
    '/..%2fsecret.json',
    '/%2e%2e/secret.json',
    '/%2e%2e%2fsecret.json',
    '/..%5csecret.json',
    '/..\\secret.json',
    '/assets/../../secret.json',
    '/assets/%2e%2e/%2e%2e/secret.json',
    '//secret.json',
    '/%00index.html',
    '/index.html%00.js',
    '/%ff',
    '/%',
    '/.hidden.json',
    '/program.sh',
    '/assets',
    '/assets/',
    '/nothing.js',
  ])('finds nothing at %s', async (path) => {
    const reply = await send(path)
    expect([400, 404]).toContain(reply.status)
    expect(reply.text).not.toContain('outside')
    expect(reply.text).not.toContain('hidden')
  })

  it.each(['http://evil.example/', 'evil.example:80', '*', '@evil.example/'])('refuses the request target "%s"', async (target) => {
    expect([400, 404, 421]).toContain((await send(target)).status)
  })

  it('refuses headers larger than 16 kB', async () => {
    const reply = await send('/', { headers: { 'X-Filler': 'x'.repeat(17_000) } })
    expect(reply.status).toBe(431)
  })

  it('lets go of a caller that sends its headers drop by drop', async () => {
    const socket = connect(port, '127.0.0.1')
    socket.on('error', () => {})
    const closed = once(socket, 'close')
    socket.write(`GET / HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\n`)
    const drip = setInterval(() => socket.write('X-A: b\r\n'), 50)
    socket.resume()
    const started = Date.now()
    await closed
    clearInterval(drip)
    // 400 ms are allowed and looked at every 100 ms; the rest is room for a busy machine
    expect(Date.now() - started).toBeLessThan(5_000)
  })

  it('lets go of a caller that never ends its body', async () => {
    const socket = connect(port, '127.0.0.1')
    socket.on('error', () => {})
    const closed = once(socket, 'close')
    const headers = Object.entries(own()).map(([name, value]) => `${name}: ${value}\r\n`)
    socket.write(`POST /rpc/builds.list HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\n${headers.join('')}Content-Length: 90000\r\n\r\n`)
    const drip = setInterval(() => socket.write('x'), 50)
    socket.resume()
    const started = Date.now()
    await closed
    clearInterval(drip)
    expect(Date.now() - started).toBeLessThan(5_000)
    expect((await call('builds.list', {})).status).toBe(200)
  })

  it('goes on after callers that hang up in the middle', async () => {
    for (const text of [
      '',
      'G',
      'GET / HTTP/1.1\r\n',
      `POST /rpc/builds.list HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nContent-Length: 5\r\n\r\n{`,
      '\0\xff\r\n\r\n',
    ]) {
      const socket = connect(port, '127.0.0.1')
      socket.on('error', () => {})
      await once(socket, 'connect')
      socket.write(text)
      await wait(10)
      socket.destroy()
    }
    expect((await call('builds.list', {})).status).toBe(200)
  })

  it('does not listen on the machine’s other addresses', async () => {
    const others = Object.values(networkInterfaces())
      .flatMap((list) => list ?? [])
      .filter(({ internal, family }) => !internal && family === 'IPv4')
    for (const { address } of others) {
      const socket = connect({ port, host: address, timeout: 1_000 })
      const outcome = await new Promise((done) => {
        socket.once('connect', () => done('open'))
        socket.once('error', () => done('closed'))
        socket.once('timeout', () => done('closed'))
      })
      socket.destroy()
      expect(outcome, address).toBe('closed')
    }
  })

  it('does not follow a link out of the page’s folder', async () => {
    symlinkSync(join(folder, 'secret.json'), join(folder, 'renderer', 'link.json'))
    const reply = await send('/link.json')
    expect(reply.text).not.toContain('outside')
  })

  it('has limits in earnest where a test sets none', () => {
    expect(LIMITS.bodyBytes).toBeGreaterThanOrEqual(20_000_000)
    expect(LIMITS.bodyBytes).toBeLessThanOrEqual(64 * 1024 * 1024)
    expect(LIMITS.headersMs).toBeLessThanOrEqual(10_000)
    expect(LIMITS.requestMs).toBeLessThanOrEqual(60_000)
  })
})
