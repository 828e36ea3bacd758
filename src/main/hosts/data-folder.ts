import { isAbsolute, join, resolve } from 'node:path'

/** What the choice of the data folder depends on, handed in so that a test can be any machine. */
export interface Machine {
  readonly platform: NodeJS.Platform
  readonly env: Readonly<Record<string, string | undefined>>
  readonly home: string
}

/**
 * Where the user's data lie: STEERWRIGHT_DATA if it is set, else the platform's own folder for application data. The same for
 * the window and the browser, so that both show the same builds. An XDG_DATA_HOME that is not absolute is ignored, as its
 * specification asks.
 */
export function dataFolder({ platform, env, home }: Machine): string {
  const own = env.STEERWRIGHT_DATA
  if (own !== undefined && own !== '') return resolve(own)
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'Steerwright')
  if (platform === 'win32') return join(env.APPDATA || join(home, 'AppData', 'Roaming'), 'Steerwright')
  const xdg = env.XDG_DATA_HOME
  return join(xdg !== undefined && isAbsolute(xdg) ? xdg : join(home, '.local', 'share'), 'steerwright')
}
