import { BrowserWindow } from 'electron'
import { PAGE } from './address.ts'
import { webPreferences } from './security.ts'

/** Opens the program's window; it is shown once there is something to see. */
export function openWindow(preload: string, devTools: boolean): BrowserWindow {
  const window = new BrowserWindow({
    width: 1280,
    height: 860,
    minWidth: 480,
    minHeight: 400,
    show: false,
    title: 'Steerwright',
    webPreferences: webPreferences(preload, devTools),
  })
  window.once('ready-to-show', () => window.show())
  void window.loadURL(PAGE)
  return window
}

/** Brings the window to the front, for a second start of the program. */
export function bringForward(window: BrowserWindow): void {
  if (window.isMinimized()) window.restore()
  window.focus()
}
