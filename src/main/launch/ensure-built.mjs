import { spawn } from 'node:child_process'
import { mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { isFresh, STAMP, stateOf } from './fresh.mjs'
import { alone } from './lock.mjs'
import { ROOT } from './node.mjs'

/**
 * Builds `out/` when the sources are newer than it. Quiet unless the build fails: then its output goes to stderr. Processes that
 * come while another builds wait for it and use what it made.
 *
 * @param {{ root?: string, always?: boolean, build?: (root: string) => Promise<{ code: number, output: string }> }} [options]
 * @returns {Promise<boolean>} whether `out/` is now fit to run
 */
export async function ensureBuilt({ root = ROOT, always = false, build = electronVite } = {}) {
  if (!always && isFresh(root)) return true
  const lock = join(root, 'node_modules/.cache/steerwright-build')
  mkdirSync(dirname(lock), { recursive: true })
  return alone(lock, async () => {
    if (!always && isFresh(root)) return true
    // taken before the build: a file saved while it runs makes the next start build again
    const state = stateOf(root)
    rmSync(join(root, STAMP), { force: true })
    const { code, output } = await build(root)
    if (code !== 0) {
      process.stderr.write(`${output.trimEnd()}\nThe build failed.\n`)
      return false
    }
    writeFileSync(join(root, STAMP), state)
    return true
  })
}

/**
 * @param {string} root
 * @returns {Promise<{ code: number, output: string }>}
 */
function electronVite(root) {
  const script = join(root, 'node_modules/electron-vite/bin/electron-vite.js')
  const child = spawn(process.execPath, [script, 'build', '--logLevel', 'warn'], { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] })
  let output = ''
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding('utf8')
    stream.on('data', (text) => {
      output += text
    })
  }
  return new Promise((done, failed) => {
    child.once('error', failed)
    child.once('close', (code) => done({ code: code ?? 1, output }))
  })
}
