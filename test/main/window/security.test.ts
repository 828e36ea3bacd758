import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import { CONTRACT } from '../../../src/shared/contract/contract.ts'
import { type FakeContents, FakeWindow, fake } from './fake-electron.ts'

vi.mock('electron', async () => (await import('./fake-electron.ts')).electronModule())

const root = resolve(import.meta.dirname, '../../..')
/** The files under a folder of the source that say something. */
const saying = (folder: string, what: RegExp): string[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(?:ts|tsx|mjs|html|css)$/.test(name) && what.test(readFileSync(join(root, folder, name), 'utf8')))
    .map((name) => name.replaceAll('\\', '/'))

const data = mkdtempSync(join(tmpdir(), 'steerwright-window-'))
let window: FakeWindow
let contents: FakeContents

beforeAll(async () => {
  process.env.STEERWRIGHT_DATA = data
  await import('../../../src/main/index.ts')
  await vi.waitFor(() => expect(FakeWindow.made).toHaveLength(1))
  window = FakeWindow.made[0] as FakeWindow
  contents = window.webContents
})

afterAll(() => {
  fake.app.emit('will-quit')
  delete process.env.STEERWRIGHT_DATA
  rmSync(data, { recursive: true })
})

/** Sends an event to the page's contents; gives whether the program prevented it. */
function prevented(name: string, url: string): boolean {
  const event = { url, preventDefault: vi.fn() }
  contents.emit(name, event, url)
  return event.preventDefault.mock.calls.length > 0
}

const foreign = [
  'https://evil.example/',
  'http://127.0.0.1/',
  'file:///etc/passwd',
  'javascript:alert(1)',
  'app://steerwright.evil.example/',
  'app://evil/',
  'app://user@steerwright/',
  'data:text/html,x',
  'not an address',
]

describe('the twenty items of Electron’s security list', () => {
  it('1: loads its own page only, and no other address is even asked for', () => {
    expect(window.loadURL.calls).toEqual([['app://steerwright/']])
    const mayLoad = (url: string): boolean => {
      let cancelled: boolean | undefined
      fake.session.defaultSession.webRequest.onBeforeRequest.calls[0]?.[0]({ url }, (answer) => {
        cancelled = answer.cancel
      })
      return cancelled === false
    }
    for (const url of [
      'app://steerwright/',
      'app://steerwright/assets/a.js',
      'blob:app://steerwright/1-2',
      'data:,',
      'devtools://devtools/a.js',
    ]) {
      expect(mayLoad(url), url).toBe(true)
    }
    for (const url of [
      ...foreign.filter((one) => !one.startsWith('data:')),
      'ws://evil.example',
      'ftp://evil.example',
      'blob:https://evil.example/1',
    ]) {
      expect(mayLoad(url), url).toBe(false)
    }
  })

  it('2: no Node in the page, its workers or its frames', () => {
    expect(window.options.webPreferences).toMatchObject({
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
    })
  })

  it('3: the preload’s world is apart from the page’s', () => {
    expect(window.options.webPreferences.contextIsolation).toBe(true)
  })

  it('4: every process is sandboxed, from before Electron is ready', () => {
    expect(window.options.webPreferences.sandbox).toBe(true)
    expect(fake.early.indexOf('enableSandbox')).toBeGreaterThanOrEqual(0)
    expect(fake.early.indexOf('enableSandbox')).toBeLessThan(fake.early.indexOf('whenReady'))
  })

  it.each(['media', 'geolocation', 'notifications', 'clipboard-read', 'openExternal', 'fullscreen', 'unknown'])(
    '5: the permission "%s" is denied',
    (permission) => {
      const answer = vi.fn()
      const own = fake.session.defaultSession
      own.setPermissionRequestHandler.calls[0]?.[0](contents, permission, answer)
      expect(answer.mock.calls).toEqual([[false]])
      expect(own.setPermissionCheckHandler.calls[0]?.[0]()).toBe(false)
      expect(own.setDevicePermissionHandler.calls[0]?.[0]()).toBe(false)
    },
  )

  it.each([
    ['6', 'webSecurity'],
    ['8', 'allowRunningInsecureContent'],
    ['9', 'experimentalFeatures'],
    ['10', 'enableBlinkFeatures'],
    ['10', 'disableBlinkFeatures'],
  ])('%s: %s is left alone, in the window and in the whole source', (_item, name) => {
    expect(window.options.webPreferences).not.toHaveProperty(name)
    expect(saying('src', new RegExp(name))).toEqual([])
  })

  it('7: everything served carries a policy that starts from nothing and has no exception for inline code', async () => {
    const [scheme, serve] = fake.session.defaultSession.protocol.handle.calls[0] ?? []
    expect(scheme).toBe('app')
    for (const path of ['', 'nothing.js', '../package.json', '..%2fpackage.json']) {
      const policy = (await serve?.(new Request(`app://steerwright/${path}`)))?.headers.get('content-security-policy') ?? ''
      expect(policy).toMatch(/^default-src 'none';/)
      expect(policy).not.toMatch(/unsafe|\*|https?:/)
    }
  })

  it.each(['11', '12'])('%s: there is no webview, and one that tries to attach is refused', () => {
    expect(window.options.webPreferences.webviewTag).toBe(false)
    expect(saying('src/renderer', /<webview|allowpopups/i)).toEqual([])
    expect(prevented('will-attach-webview', 'app://steerwright/')).toBe(true)
  })

  it.each(['will-navigate', 'will-frame-navigate', 'will-redirect'])('13: %s leads nowhere but to the page itself', (name) => {
    for (const url of foreign) expect(prevented(name, url), url).toBe(true)
    expect(prevented(name, 'app://steerwright/')).toBe(false)
  })

  it('14: no page opens another window', () => {
    const open = contents.setWindowOpenHandler.calls[0]?.[0]
    for (const url of [...foreign, 'app://steerwright/']) expect(open?.({ url })).toEqual({ action: 'deny' })
  })

  it('15: nothing is handed to the system to open', () => {
    expect(saying('src', /\bopenExternal\b|\bshell\b.*from 'electron'/)).toEqual([])
  })

  it('16: Electron’s version is pinned, and is one that still gets repairs', () => {
    const { devDependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { devDependencies: Record<string, string> }
    expect(devDependencies.electron).toMatch(/^\d+\.\d+\.\d+$/)
    expect(Number(devDependencies.electron?.split('.')[0])).toBeGreaterThanOrEqual(45)
  })

  describe('17: the sender of every message is checked', () => {
    const ask = (event: unknown): Promise<unknown> | undefined => fake.ipcMain.handlers.get('steerwright:program.about')?.(event, {})

    it('answers the top frame of the own page', async () => {
      expect(await ask({ sender: contents, senderFrame: contents.mainFrame })).toMatchObject({ host: 'window', dataFolder: data })
    })

    it.each(foreign)('refuses the top frame of %s', async (url) => {
      const mainFrame = { url }
      expect(await ask({ sender: { mainFrame }, senderFrame: mainFrame })).toMatchObject({ ok: false, problems: [{ code: 'sender' }] })
    })

    it('refuses a frame within the page, and one that is gone', async () => {
      expect(await ask({ sender: contents, senderFrame: { url: 'app://steerwright/' } })).toMatchObject({ ok: false })
      expect(await ask({ sender: contents, senderFrame: null })).toMatchObject({ ok: false })
    })

    it('listens to the contract’s messages and to nothing else, in one file', () => {
      expect([...fake.ipcMain.handlers.keys()]).toEqual(Object.keys(CONTRACT).map((name) => `steerwright:${name}`))
      expect(saying('src', /\bipcMain\b/)).toEqual(['main/hosts/electron-ipc.ts'])
    })
  })

  it('18: the page comes by a scheme of its own, registered before Electron is ready', () => {
    expect(fake.protocol.registerSchemesAsPrivileged.calls).toEqual([
      [[{ scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true } }]],
    ])
    expect(fake.early.indexOf('registerScheme')).toBeLessThan(fake.early.indexOf('whenReady'))
    expect(saying('src/main', /\bloadFile\(|file:\/\//)).toEqual([])
  })

  it('19: the packaged program has the fuses it does not need blown', () => {
    const config = readFileSync(join(root, '.config/electron-builder.yml'), 'utf8')
    for (const line of [
      'runAsNode: false',
      'enableNodeOptionsEnvironmentVariable: false',
      'enableNodeCliInspectArguments: false',
      'enableEmbeddedAsarIntegrityValidation: true',
      'onlyLoadAppFromAsar: true',
      'enableCookieEncryption: true',
      'grantFileProtocolExtraPrivileges: false',
    ]) {
      expect(config).toContain(`  ${line}\n`)
    }
  })

  it('20: the page sees one function for each procedure and nothing of Electron', async () => {
    await import('../../../src/main/preload.ts')
    expect(fake.contextBridge.exposeInMainWorld.calls).toHaveLength(1)
    const [name, api] = fake.contextBridge.exposeInMainWorld.calls[0] ?? []
    expect(name).toBe('steerwright')
    expect(Object.keys(api ?? {})).toEqual(Object.keys(CONTRACT))
    for (const [procedure, ask] of Object.entries(api ?? {})) {
      expect(await ask({ id: 'larch' })).toEqual([`steerwright:${procedure}`, { id: 'larch' }])
    }
  })
})

describe('the program in its window', () => {
  it('runs once: a second start brings the first one’s window forward', () => {
    expect(fake.early).toContain('lock')
    fake.app.emit('second-instance')
    expect(window.restore.calls).toHaveLength(1)
    expect(window.focus.calls).toHaveLength(1)
    expect(FakeWindow.made).toHaveLength(1)
  })

  it('keeps the window’s own files with the data, before it asks whether it is the only one', () => {
    expect(fake.app.setPath.calls).toEqual([['userData', join(data, 'window')]])
    expect(fake.early.indexOf('setPath')).toBeLessThan(fake.early.indexOf('lock'))
  })

  it('shows the window once there is something to see', () => {
    expect(window.show.calls).toHaveLength(0)
    window.emit('ready-to-show')
    expect(window.show.calls).toHaveLength(1)
  })

  it('saves where the user says, under the suggested name only', async () => {
    const save = fake.ipcMain.handlers.get('steerwright:files.save')
    const event = { sender: contents, senderFrame: contents.mainFrame }
    const path = join(data, 'sheet.pdf')
    const file = { fileName: '../../sheet.pdf', mediaType: 'application/pdf', base64: Buffer.from('paper').toString('base64') }

    Object.assign(fake.saveAnswer, { canceled: true, filePath: '' })
    expect(await save?.(event, file)).toEqual({ ok: true, value: { saved: false, path: null } })
    expect(fake.dialog.showSaveDialog.calls).toEqual([[window, { defaultPath: join('/documents', 'sheet.pdf') }]])

    Object.assign(fake.saveAnswer, { canceled: false, filePath: path })
    expect(await save?.(event, file)).toEqual({ ok: true, value: { saved: true, path } })
    expect(readFileSync(path, 'utf8')).toBe('paper')

    Object.assign(fake.saveAnswer, { canceled: false, filePath: join(data, 'nowhere', 'sheet.pdf') })
    expect(await save?.(event, file)).toMatchObject({
      ok: false,
      problems: [{ sentence: expect.stringContaining('that folder does not exist') }],
    })
  })
})
