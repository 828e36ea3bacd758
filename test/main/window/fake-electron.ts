/**
 * A stand-in for Electron that notes what the program asks of it. It proves what the program sets, not what Electron then does.
 * The notes are its own, since vitest clears those of its mocks before each test and the program starts once for all of them.
 */

type Listener = (...args: never[]) => unknown

/** A function that keeps every call made of it. */
export function noted<A extends unknown[], R>(does: (...args: A) => R): ((...args: A) => R) & { readonly calls: A[] } {
  const calls: A[] = []
  return Object.assign(
    (...args: A): R => {
      calls.push(args)
      return does(...args)
    },
    { calls },
  )
}

const nothing = (): void => {}

export class Emitter {
  readonly listeners = new Map<string, Listener[]>()

  on(name: string, listener: Listener): this {
    this.listeners.set(name, [...(this.listeners.get(name) ?? []), listener])
    return this
  }

  once(name: string, listener: Listener): this {
    return this.on(name, listener)
  }

  emit(name: string, ...args: unknown[]): void {
    for (const listener of this.listeners.get(name) ?? []) listener(...(args as never[]))
  }
}

type OpenHandler = (details: { url: string }) => { action: string }

export class FakeContents extends Emitter {
  readonly mainFrame = { url: 'app://steerwright/' }
  readonly setWindowOpenHandler = noted((_handler: OpenHandler) => {})
  readonly sendInputEvent = noted((_event: { type: string; keyCode: string; modifiers: string[] }) => {})
}

export class FakeWindow extends Emitter {
  static readonly made: FakeWindow[] = []
  static getAllWindows = () => FakeWindow.made
  readonly webContents = new FakeContents()
  readonly loadURL = noted(async (_url: string) => {})
  readonly show = noted(nothing)
  readonly focus = noted(nothing)
  readonly restore = noted(nothing)
  readonly isMinimized = () => true
  readonly options: { readonly webPreferences: Readonly<Record<string, unknown>> }

  constructor(options: { webPreferences: Record<string, unknown> }) {
    super()
    this.options = options
    FakeWindow.made.push(this)
    fake.app.emit('web-contents-created', {}, this.webContents)
  }
}

/** calls that must come in a certain order, in the order made */
const early: string[] = []

type IpcHandler = (event: unknown, input: unknown) => Promise<unknown>
const handlers = new Map<string, IpcHandler>()

type PermissionHandler = (contents: unknown, permission: string, answer: (allowed: boolean) => void) => void
type RequestHandler = (details: { url: string }, answer: (answer: { cancel: boolean }) => void) => void

/** what the user answers next when asked where to save */
const saveAnswer = { canceled: true, filePath: '' }

export const fake = {
  early,
  saveAnswer,
  app: Object.assign(new Emitter(), {
    isPackaged: false,
    enableSandbox: noted(() => void early.push('enableSandbox')),
    setPath: noted((_name: string, _path: string) => void early.push('setPath')),
    getPath: (name: string) => `/${name}`,
    quit: noted(nothing),
    requestSingleInstanceLock: noted(() => early.push('lock') > 0),
    whenReady: noted(async () => void early.push('whenReady')),
  }),
  protocol: { registerSchemesAsPrivileged: noted((_schemes: readonly unknown[]) => void early.push('registerScheme')) },
  session: {
    defaultSession: {
      protocol: { handle: noted((_scheme: string, _handler: (request: Request) => Promise<Response>) => {}) },
      setPermissionRequestHandler: noted((_handler: PermissionHandler) => {}),
      setPermissionCheckHandler: noted((_handler: () => boolean) => {}),
      setDevicePermissionHandler: noted((_handler: () => boolean) => {}),
      webRequest: { onBeforeRequest: noted((_handler: RequestHandler) => {}) },
    },
  },
  ipcMain: { handlers, handle: (name: string, handler: IpcHandler) => void handlers.set(name, handler) },
  dialog: { showSaveDialog: noted(async (_window: unknown, _options: unknown) => ({ ...saveAnswer })) },
  Menu: { buildFromTemplate: (template: unknown) => template, setApplicationMenu: noted((_menu: unknown) => {}) },
  contextBridge: { exposeInMainWorld: noted((_name: string, _api: Record<string, (input: unknown) => unknown>) => {}) },
  ipcRenderer: { invoke: async (...args: unknown[]) => args },
}

export const electronModule = () => ({ ...fake, BrowserWindow: FakeWindow })
