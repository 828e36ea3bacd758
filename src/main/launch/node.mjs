import { spawn } from 'node:child_process'
import { existsSync } from 'node:fs'
import { resolve } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The program's folder, where package.json lies. */
export const ROOT = resolve(fileURLToPath(new URL('.', import.meta.url)), '../../..')

/** The database's native part crashes without a message on an older Node, so nothing starts on one. */
const OLDEST_MAJOR = 24

/**
 * Runs on the Node that came with `npm ci` when this one is too old: starts the same script there, hands signals on, and ends
 * with its exit code. Gives true when the caller should go on, false when the other Node has done the work.
 *
 * @param {string} script the script's own file
 * @returns {Promise<boolean>}
 */
export async function onRightNode(script) {
  if (Number(process.versions.node.split('.')[0]) >= OLDEST_MAJOR) return true
  const node = resolve(ROOT, 'node_modules/node/bin', process.platform === 'win32' ? 'node.exe' : 'node')
  if (!existsSync(node)) {
    process.stderr.write(
      `Steerwright needs Node ${OLDEST_MAJOR} or newer (this is ${process.versions.node}). Run "npm ci" first: it brings its own.\n`,
    )
    // 3, as for any fault of the program's own: 1 would say that something stops the build
    process.exitCode = 3
    return false
  }
  const child = spawn(node, [script, ...process.argv.slice(2)], { stdio: 'inherit' })
  process.exitCode = await endsLike(child)
  return false
}

/**
 * Waits for a child, handing on the signals that end a program, and gives the exit code to end with.
 *
 * @param {import('node:child_process').ChildProcess} child
 * @returns {Promise<number>}
 */
export async function endsLike(child) {
  const signals = /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP'])
  const handOn = (/** @type {NodeJS.Signals} */ signal) => child.kill(signal)
  for (const signal of signals) process.on(signal, handOn)
  try {
    return await new Promise((done, failed) => {
      child.once('error', failed)
      child.once('exit', (code, signal) => done(code ?? (signal === null ? 1 : 128)))
    })
  } finally {
    for (const signal of signals) process.off(signal, handOn)
  }
}
