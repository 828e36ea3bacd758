import { type BrowserWindow, Menu, type MenuItemConstructorOptions } from 'electron'

/**
 * The menu after the platform's custom. What belongs to the page (import, print, units) presses the page's own keys, so that menu and
 * keyboard do the same thing in one place and the page needs no further door.
 */
export function buildMenu(
  platform: NodeJS.Platform,
  devTools: boolean,
  window: () => BrowserWindow | undefined,
): MenuItemConstructorOptions[] {
  const mac = platform === 'darwin'
  const pageKey = (label: string, letter: string): MenuItemConstructorOptions => ({
    label,
    accelerator: `CmdOrCtrl+${letter}`,
    registerAccelerator: false,
    click: () => window()?.webContents.sendInputEvent({ type: 'keyDown', keyCode: letter, modifiers: [mac ? 'meta' : 'control'] }),
  })
  return [
    ...(mac ? [{ role: 'appMenu' } as const] : []),
    {
      label: '&File',
      submenu: [
        pageKey('&Import a build …', 'O'),
        pageKey('&Print the shop sheet …', 'P'),
        { type: 'separator' },
        { role: mac ? 'close' : 'quit' },
      ],
    },
    { role: 'editMenu' },
    {
      label: '&View',
      submenu: [
        pageKey('&Inch or metric', 'U'),
        { type: 'separator' },
        { role: 'resetZoom' },
        { role: 'zoomIn' },
        { role: 'zoomOut' },
        { type: 'separator' },
        { role: 'togglefullscreen' },
        ...(devTools ? [{ role: 'toggleDevTools' } as const] : []),
      ],
    },
    { role: 'windowMenu' },
    { role: 'help', submenu: [{ label: '&About Steerwright', role: 'about' }] },
  ]
}

export function installMenu(devTools: boolean, window: () => BrowserWindow | undefined): void {
  Menu.setApplicationMenu(Menu.buildFromTemplate(buildMenu(process.platform, devTools, window)))
}
