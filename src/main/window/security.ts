import type { App, Session, WebPreferences } from 'electron'
import { isOwnPage } from './address.ts'

/**
 * What a window's page may do. Web security, insecure content, experimental and Blink features are left as they are: naming one
 * of them is how it gets switched the wrong way.
 */
export const webPreferences = (preload: string, devTools: boolean): WebPreferences => ({
  preload,
  sandbox: true,
  contextIsolation: true,
  nodeIntegration: false,
  nodeIntegrationInWorker: false,
  nodeIntegrationInSubFrames: false,
  webviewTag: false,
  spellcheck: false,
  devTools,
})

/** Every page there ever is: it may load itself again, but not lead away, open another, or hold a webview. */
export function confinePages(app: App): void {
  app.on('web-contents-created', (_event, contents) => {
    contents.on('will-navigate', keepHere)
    contents.on('will-frame-navigate', keepHere)
    contents.on('will-redirect', keepHere)
    contents.on('will-attach-webview', (event) => event.preventDefault())
    contents.setWindowOpenHandler(() => ({ action: 'deny' }))
  })
}

function keepHere(event: { readonly url: string; preventDefault(): void }): void {
  if (!isOwnPage(event.url)) event.preventDefault()
}

/** What a page may not ask for: any permission, any device, any address but the program's own. */
export function confineSession(session: Session): void {
  session.setPermissionRequestHandler((_contents, _permission, answer) => answer(false))
  session.setPermissionCheckHandler(() => false)
  session.setDevicePermissionHandler(() => false)
  session.webRequest.onBeforeRequest((details, answer) => answer({ cancel: !mayLoad(details.url) }))
}

/** Own files; data: for the empty favicon; blob: of the own page; the developer tools' own files. */
export function mayLoad(address: string): boolean {
  if (address.startsWith('blob:')) return isOwnPage(address.slice('blob:'.length))
  return isOwnPage(address) || /^(?:data|devtools):/.test(address)
}
