import { join } from 'node:path'
import { app, BrowserWindow, dialog, session } from 'electron'
import { mountProcedures } from './hosts/electron-ipc.ts'
import { openProgram, ownDataFolder } from './hosts/open.ts'
import { installMenu } from './window/menu.ts'
import { registerScheme, servePage } from './window/protocol.ts'
import { confinePages, confineSession } from './window/security.ts'
import { bringForward, openWindow } from './window/window.ts'

/** The program in a window of its own. What must be settled before Electron is ready is settled here, in order. */
app.enableSandbox()
registerScheme()
confinePages(app)
// the window's own caches lie with the data, so that two data folders are two programs
app.setPath('userData', join(ownDataFolder(), 'window'))

if (app.requestSingleInstanceLock()) run()
else app.quit()

function run(): void {
  let window: BrowserWindow | undefined
  const devTools = !app.isPackaged
  const { program, dispatch, log, close } = openProgram({ host: 'window', saveDialog })
  mountProcedures(dispatch, log)

  const show = (): void => {
    window = openWindow(program.preload, devTools)
    window.once('closed', () => {
      window = undefined
    })
  }
  app.on('second-instance', () => (window === undefined ? show() : bringForward(window)))
  app.on('window-all-closed', () => {
    if (process.platform !== 'darwin') app.quit()
  })
  app.on('will-quit', close)
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => app.quit())

  void app.whenReady().then(() => {
    confineSession(session.defaultSession)
    servePage(session.defaultSession.protocol, program.renderer)
    installMenu(devTools, () => window)
    show()
    app.on('activate', () => {
      if (BrowserWindow.getAllWindows().length === 0) show()
    })
  })

  async function saveDialog(suggested: string): Promise<string | null> {
    const options = { defaultPath: join(app.getPath('documents'), suggested) }
    const answer = window === undefined ? await dialog.showSaveDialog(options) : await dialog.showSaveDialog(window, options)
    return answer.canceled || answer.filePath === '' ? null : answer.filePath
  }
}
