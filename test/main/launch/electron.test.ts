import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { electronPackage, findRuntime, installedRuntime } from '../../../src/main/launch/electron.mjs'

const version = '45.5.0'
let folder: string
const servers: Server[] = []

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'steerwright-electron-'))
})
afterEach(() => {
  for (const server of servers.splice(0)) {
    server.close()
    server.closeAllConnections()
  }
  rmSync(folder, { recursive: true })
})

function unpack(of: string = version): string {
  mkdirSync(join(folder, 'dist'))
  writeFileSync(join(folder, 'dist/version'), `v${of}`)
  writeFileSync(join(folder, 'path.txt'), 'electron')
  writeFileSync(join(folder, 'dist/electron'), '')
  return join(folder, 'dist/electron')
}

/** A place to fetch from that answers as told: a status, or never. */
async function mirror(status: number | 'never'): Promise<string> {
  const server = createServer((_request, response) => {
    if (status !== 'never') response.writeHead(status).end()
  })
  servers.push(server)
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
  return `http://127.0.0.1:${(server.address() as AddressInfo).port}/`
}

const installer = (script: string) => writeFileSync(join(folder, 'install.js'), script)

describe('Electron’s runtime', () => {
  it('is found when it is whole and of the right version', () => {
    const path = unpack()
    expect(installedRuntime({ folder, version })).toBe(path)
  })

  it('is not found when absent, of another version, or half unpacked', () => {
    expect(installedRuntime({ folder, version })).toBeNull()
    const path = unpack('44.0.0')
    expect(installedRuntime({ folder, version })).toBeNull()
    writeFileSync(join(folder, 'dist/version'), version)
    expect(installedRuntime({ folder, version })).toBe(path)
    rmSync(path)
    expect(installedRuntime({ folder, version })).toBeNull()
  })

  it('is looked up in the package without loading the package', () => {
    expect(electronPackage()).toMatchObject({ version: expect.stringMatching(/^\d+\.\d+\.\d+$/) })
  })

  it('is given up within the probe’s time where nothing answers', async () => {
    const started = Date.now()
    const found = await findRuntime({ folder, version, base: await mirror('never'), probeMs: 200 })
    expect(found).toEqual({ path: null, why: expect.stringContaining('cannot be fetched') })
    // 200 ms for the probe; the rest is room for a busy machine
    expect(Date.now() - started).toBeLessThan(2_000)
  })

  it('is given up at once where the place has none of that version, or there is no such place', async () => {
    expect(await findRuntime({ folder, version, base: await mirror(404) })).toMatchObject({ path: null })
    expect(await findRuntime({ folder, version, base: 'http://127.0.0.1:1/' })).toMatchObject({ path: null })
  })

  it('is fetched by the package’s own installer where it can be', async () => {
    installer(`
      const fs = require('node:fs'), path = require('node:path')
      fs.mkdirSync(path.join(__dirname, 'dist'))
      fs.writeFileSync(path.join(__dirname, 'dist/version'), '${version}')
      fs.writeFileSync(path.join(__dirname, 'dist/electron'), '')
      fs.writeFileSync(path.join(__dirname, 'path.txt'), 'electron')
    `)
    const said: string[] = []
    const found = await findRuntime({ folder, version, base: await mirror(200), say: (line) => said.push(line) })
    expect(found).toEqual({ path: join(folder, 'dist/electron') })
    expect(said).toHaveLength(1)
  })

  it('is given up when the installer fails or takes too long', async () => {
    const base = await mirror(200)
    installer('process.exit(1)')
    expect(await findRuntime({ folder, version, base })).toMatchObject({ path: null })
    installer('setInterval(() => {}, 1000)')
    const started = Date.now()
    expect(await findRuntime({ folder, version, base, fetchMs: 300 })).toMatchObject({ path: null })
    expect(Date.now() - started).toBeLessThan(5_000)
  })
})
