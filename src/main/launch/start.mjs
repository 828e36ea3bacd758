import { spawn } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { electronPackage, findRuntime } from './electron.mjs'
import { ensureBuilt } from './ensure-built.mjs'
import { endsLike, onRightNode, ROOT } from './node.mjs'

/** A window that ends badly this soon never opened (no permission for the sandbox, a library missing). */
const NEVER_OPENED_MS = 10_000

if (await onRightNode(fileURLToPath(import.meta.url))) {
  if (await ensureBuilt()) await start()
  else process.exitCode = 1
}

/** Opens the window; where that cannot be, says so in one line and serves the same program to a browser. */
async function start() {
  const why = await openWindow()
  if (why === null) return
  process.stdout.write(`The Electron window cannot open: ${why}. The same program is served to your browser instead.\n`)
  await import('../../../out/main/host.js')
}

/** @returns {Promise<string | null>} null when a window was open and is closed again, else why it could not open */
async function openWindow() {
  if (process.platform === 'linux' && !process.env.DISPLAY && !process.env.WAYLAND_DISPLAY) return 'there is no display'
  const electron = electronPackage()
  if (electron === null) return 'Electron is not installed'
  const runtime = await findRuntime({ ...electron, say: (line) => process.stdout.write(`${line}\n`) })
  if (runtime.path === null) return runtime.why
  // an editor's terminal may set this; it would turn the window into a plain Node
  const { ELECTRON_RUN_AS_NODE: _, ...env } = process.env
  const startedAt = Date.now()
  let stopped = false
  const noteStop = () => {
    stopped = true
  }
  for (const signal of ['SIGINT', 'SIGTERM']) process.once(signal, noteStop)
  const code = await endsLike(spawn(runtime.path, [ROOT], { stdio: 'inherit', env }))
  if (stopped || code === 0) return null
  if (Date.now() - startedAt < NEVER_OPENED_MS) return `its runtime ended with code ${code}`
  process.exitCode = code
  return null
}
