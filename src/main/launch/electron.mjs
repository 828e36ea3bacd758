import { spawn } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'

const PROBE_MS = 3_000
const FETCH_MS = 180_000

/**
 * @typedef {{ path: string } | { path: null, why: string }} Runtime
 * @typedef {{ folder: string, version: string, base?: string, probeMs?: number, fetchMs?: number, say?: (line: string) => void }} Fetching
 */

/** Electron's package. Loading the package itself would start a download, so only its package.json is looked up. */
export function electronPackage() {
  try {
    const file = createRequire(import.meta.url).resolve('electron/package.json')
    return { folder: dirname(file), version: String(JSON.parse(readFileSync(file, 'utf8')).version) }
  } catch {
    return null
  }
}

/**
 * The path of Electron's runtime, when it is unpacked whole and of the package's own version.
 *
 * @param {{ folder: string, version: string }} electron
 * @returns {string | null}
 */
export function installedRuntime({ folder, version }) {
  try {
    if (readFileSync(join(folder, 'dist/version'), 'utf8').trim().replace(/^v/, '') !== version) return null
    const path = join(folder, 'dist', readFileSync(join(folder, 'path.txt'), 'utf8').trim())
    return existsSync(path) ? path : null
  } catch {
    return null
  }
}

/**
 * Finds Electron's runtime, or fetches it: a short probe first, so that a machine without the network waits seconds only, then
 * the package's own installer under a time limit.
 *
 * @param {Fetching} fetching
 * @returns {Promise<Runtime>}
 */
export async function findRuntime(fetching) {
  const { folder, version, probeMs = PROBE_MS, fetchMs = FETCH_MS, say = () => {} } = fetching
  const found = installedRuntime({ folder, version })
  if (found !== null) return { path: found }
  if (process.env.STEERWRIGHT_OFFLINE === '1') return { path: null, why: 'its runtime is not here' }
  const base = fetching.base ?? process.env.ELECTRON_MIRROR ?? 'https://github.com/electron/electron/releases/download/'
  if (!(await answers(new URL(`v${version}/SHASUMS256.txt`, base), probeMs))) {
    return { path: null, why: 'its runtime is not here and cannot be fetched' }
  }
  say(`Fetching Electron ${version}, once (${fetchMs / 60_000} minutes at most) …`)
  await runInstaller(join(folder, 'install.js'), fetchMs)
  const fetched = installedRuntime({ folder, version })
  return fetched === null ? { path: null, why: 'its runtime could not be fetched in time' } : { path: fetched }
}

/**
 * @param {URL} url
 * @param {number} limitMs
 */
async function answers(url, limitMs) {
  try {
    const response = await fetch(url, { method: 'HEAD', signal: AbortSignal.timeout(limitMs) })
    return response.ok
  } catch {
    return false
  }
}

/**
 * @param {string} script
 * @param {number} limitMs
 * @returns {Promise<void>}
 */
function runInstaller(script, limitMs) {
  return new Promise((done) => {
    const child = spawn(process.execPath, [script], { stdio: 'ignore', timeout: limitMs, killSignal: 'SIGKILL' })
    child.once('error', () => done())
    child.once('exit', () => done())
  })
}
