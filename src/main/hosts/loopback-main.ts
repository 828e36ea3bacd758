import { hasDisplay, openBrowser } from './browser.ts'
import { startLoopback } from './loopback.ts'
import { openProgram } from './open.ts'

const { program, dispatch, log, close } = openProgram({ host: 'browser' })
const loopback = await startLoopback({ dispatch, log, renderer: program.renderer })

/** Ctrl-C is how this program is ended, so it ends well. A second one while it ends changes nothing. */
const end = async (): Promise<void> => {
  await loopback.close()
  close()
  process.exit(0)
}
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => void end())

process.stdout.write(`Steerwright is at ${loopback.address}\nCtrl-C ends it.\n`)
if (hasDisplay(process.platform, process.env)) openBrowser(loopback.address)
