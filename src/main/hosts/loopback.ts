import { randomBytes, timingSafeEqual } from 'node:crypto'
import { createReadStream } from 'node:fs'
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { pipeline } from 'node:stream/promises'
import { type Answer, type Dispatch, refusal } from './dispatch.ts'
import type { Log } from './log.ts'
import { findPageFile, PAGE_HEADERS } from './page.ts'

export interface LoopbackOptions {
  readonly dispatch: Dispatch
  readonly log: Log
  /** folder of the built page */
  readonly renderer: string
  readonly limits?: Partial<Limits>
}

export interface Limits {
  /** bytes of one message: the largest exchange file the contract takes, with room for JSON's escapes */
  readonly bodyBytes: number
  /** milliseconds a caller has to send its headers */
  readonly headersMs: number
  /** milliseconds a caller has to send all of a request */
  readonly requestMs: number
  /** how often the two are looked at, milliseconds */
  readonly checkMs: number
  readonly connections: number
}

export const LIMITS: Limits = { bodyBytes: 32 * 1024 * 1024, headersMs: 10_000, requestMs: 60_000, checkMs: 2_000, connections: 64 }

export interface Loopback {
  /** what to open in a browser: the token is in the fragment, which a browser never sends on */
  readonly address: string
  readonly origin: string
  readonly token: string
  /** stops listening and lets go of every connection; may be called twice */
  readonly close: () => Promise<void>
}

/**
 * Serves the page and the procedures to this machine's own browser: 127.0.0.1 only, a port of the system's choosing, and a token
 * made anew at each start, without which no procedure answers.
 */
export async function startLoopback({ dispatch, log, renderer, limits: own }: LoopbackOptions): Promise<Loopback> {
  const limits = { ...LIMITS, ...own }
  const token = randomBytes(32).toString('base64url')
  const server = createServer({
    maxHeaderSize: 16 * 1024,
    headersTimeout: limits.headersMs,
    requestTimeout: limits.requestMs,
    connectionsCheckingInterval: limits.checkMs,
    keepAliveTimeout: 5_000,
  })
  server.maxConnections = limits.connections
  await listen(server)
  const host = `127.0.0.1:${(server.address() as AddressInfo).port}`
  const door: Door = { host, origin: `http://${host}`, token, bodyBytes: limits.bodyBytes, renderer, dispatch }

  server.on('request', (request, response) => {
    for (const [name, value] of Object.entries(PAGE_HEADERS)) response.setHeader(name, value)
    serve(door, request, response).catch((error: unknown) => {
      // a caller that went away in the middle is no fault of the program
      if (!request.destroyed) log('loopback', error)
      response.destroy()
    })
  })

  let closing: Promise<void> | undefined
  const close = (): Promise<void> => {
    closing ??= new Promise((done) => {
      server.close(() => done())
      server.closeAllConnections()
    })
    return closing
  }
  return { address: `${door.origin}/#token=${token}`, origin: door.origin, token, close }
}

interface Door {
  readonly host: string
  readonly origin: string
  readonly token: string
  readonly bodyBytes: number
  readonly renderer: string
  readonly dispatch: Dispatch
}

function listen(server: Server): Promise<void> {
  return new Promise((done, failed) => {
    server.once('error', failed)
    server.listen({ host: '127.0.0.1', port: 0, exclusive: true }, () => {
      server.off('error', failed)
      done()
    })
  })
}

async function serve(door: Door, request: IncomingMessage, response: ServerResponse): Promise<void> {
  // another name that points here is how a foreign page would reach this machine (DNS rebinding)
  if (request.headers.host !== door.host) return refuse(response, 421, 'host', 'This address is not served here.')
  const path = pathOf(request.url, door.origin)
  if (path === undefined) return refuse(response, 400, 'address', 'The address was not understood.')
  if (path.startsWith('/rpc/')) return serveCall(door, path.slice('/rpc/'.length), request, response)
  return servePage(door, path, request, response)
}

function pathOf(url: string | undefined, origin: string): string | undefined {
  if (url === undefined || !url.startsWith('/')) return undefined
  const parsed = URL.parse(origin + url)
  return parsed !== null && parsed.origin === origin ? parsed.pathname : undefined
}

async function servePage(door: Door, path: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.setHeader('Allow', 'GET, HEAD')
    return refuse(response, 405, 'method', 'This can only be read.')
  }
  const file = await findPageFile(door.renderer, path)
  if (file === undefined) return refuse(response, 404, 'no file', 'There is no such file.')
  response.writeHead(200, { 'Content-Type': file.mediaType })
  if (request.method === 'HEAD') response.end()
  else await pipeline(createReadStream(file.path), response)
}

async function serveCall(door: Door, name: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
  if (request.method !== 'POST') {
    response.setHeader('Allow', 'POST')
    return refuse(response, 405, 'method', 'A command is sent by POST.')
  }
  if (request.headers.origin !== door.origin) return refuse(response, 403, 'origin', 'Only the program’s own page may ask.')
  if (!carriesToken(request.headers.authorization, door.token)) {
    response.setHeader('WWW-Authenticate', 'Bearer')
    return refuse(response, 401, 'token', 'This page belongs to an earlier start of the program. Open the address that it printed last.')
  }
  if (!/^application\/json(?:\s*;\s*charset=utf-8)?$/i.test(request.headers['content-type'] ?? '')) {
    return refuse(response, 415, 'content type', 'A command is sent as JSON.')
  }
  const body = await readBody(request, door.bodyBytes)
  if (body === undefined) return refuse(response, 413, 'too large', 'That is more than the program takes at once.')
  const input = parseJson(body)
  if (input === undefined) return refuse(response, 400, 'json', 'The command is not JSON.')
  const answer = await door.dispatch(name, input.value)
  send(response, STATUS[answer.kind], answer.body)
}

const STATUS: Readonly<Record<Answer['kind'], number>> = { done: 200, unknown: 404, input: 400, bug: 500 }

function carriesToken(header: string | undefined, token: string): boolean {
  const given = Buffer.from(header ?? '')
  const wanted = Buffer.from(`Bearer ${token}`)
  return given.length === wanted.length && timingSafeEqual(given, wanted)
}

/** The body as text, or undefined when it is larger than the limit: by its own word, or by what has come so far. */
async function readBody(request: IncomingMessage, limit: number): Promise<string | undefined> {
  if (Number(request.headers['content-length'] ?? 0) > limit) return undefined
  const pieces: Buffer[] = []
  let bytes = 0
  for await (const piece of request.iterator({ destroyOnReturn: false })) {
    bytes += (piece as Buffer).length
    if (bytes > limit) return undefined
    pieces.push(piece as Buffer)
  }
  return Buffer.concat(pieces).toString('utf8')
}

function parseJson(text: string): { readonly value: unknown } | undefined {
  try {
    return { value: JSON.parse(text) }
  } catch {
    return undefined
  }
}

/** Refuses and lets the connection go, so that whatever else the caller meant to send is not read. */
function refuse(response: ServerResponse, status: number, code: string, sentence: string): void {
  response.setHeader('Connection', 'close')
  send(response, status, refusal(code, '', sentence))
}

function send(response: ServerResponse, status: number, body: unknown): void {
  const text = JSON.stringify(body)
  response.writeHead(status, { 'Content-Type': 'application/json; charset=utf-8', 'Content-Length': Buffer.byteLength(text) })
  response.end(text)
}
