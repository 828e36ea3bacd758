import type { MenuItemConstructorOptions } from 'electron'
import { describe, expect, it, vi } from 'vitest'
import { buildMenu } from '../../../src/main/window/menu.ts'
import { FakeContents } from './fake-electron.ts'

vi.mock('electron', async () => (await import('./fake-electron.ts')).electronModule())

const contents = new FakeContents()
const menu = (platform: NodeJS.Platform, devTools = false) => buildMenu(platform, devTools, () => ({ webContents: contents }) as never)
const items = (template: MenuItemConstructorOptions[]): MenuItemConstructorOptions[] =>
  template.flatMap(({ submenu }) => (Array.isArray(submenu) ? submenu : []))
const find = (template: MenuItemConstructorOptions[], label: RegExp) => items(template).find((item) => label.test(item.label ?? ''))

describe('the menu', () => {
  it.each([
    ['linux', 'control'],
    ['win32', 'control'],
    ['darwin', 'meta'],
  ] as const)('presses the page’s own keys to import, print and change units (%s)', (platform, modifier) => {
    const from = contents.sendInputEvent.calls.length
    for (const label of [/Import/, /Print/, /metric/]) find(menu(platform), label)?.click?.({} as never, undefined, {} as never)
    expect(contents.sendInputEvent.calls.slice(from)).toEqual([
      [{ type: 'keyDown', keyCode: 'O', modifiers: [modifier] }],
      [{ type: 'keyDown', keyCode: 'P', modifiers: [modifier] }],
      [{ type: 'keyDown', keyCode: 'U', modifiers: [modifier] }],
    ])
  })

  it('leaves those keys to the page, so that one press acts once', () => {
    for (const label of [/Import/, /Print/, /metric/]) expect(find(menu('linux'), label)?.registerAccelerator).toBe(false)
  })

  it('does nothing, and does not fail, when no window is open', () => {
    const item = buildMenu('darwin', false, () => undefined)
    expect(() => find(item, /Import/)?.click?.({} as never, undefined, {} as never)).not.toThrow()
  })

  it('follows each platform: the program’s own menu and Close on a Mac, Quit elsewhere', () => {
    const roles = (platform: NodeJS.Platform) => [...menu(platform), ...items(menu(platform))].map(({ role }) => role)
    expect(roles('darwin')).toContain('appMenu')
    expect(roles('darwin')).toContain('close')
    expect(roles('linux')).toContain('quit')
    expect(roles('linux')).not.toContain('appMenu')
    for (const platform of ['linux', 'win32', 'darwin'] as const) {
      expect(roles(platform)).toEqual(expect.arrayContaining(['editMenu', 'windowMenu', 'help', 'zoomIn', 'zoomOut', 'resetZoom']))
    }
  })

  it('offers the developer tools only where they are allowed', () => {
    const offers = (devTools: boolean) => items(menu('linux', devTools)).some(({ role }) => role === 'toggleDevTools')
    expect([offers(true), offers(false)]).toEqual([true, false])
  })
})
