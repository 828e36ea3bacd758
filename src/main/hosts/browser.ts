import { spawn } from 'node:child_process'

/** Whether there is a screen on which a browser could show something. */
export function hasDisplay(platform: NodeJS.Platform, env: Readonly<Record<string, string | undefined>>): boolean {
  if (env.STEERWRIGHT_BROWSER === 'none') return false
  return platform === 'darwin' || platform === 'win32' || Boolean(env.DISPLAY || env.WAYLAND_DISPLAY)
}

/** The system's own way to open an address. */
export function openCommand(platform: NodeJS.Platform, address: string): readonly [command: string, ...args: string[]] {
  if (platform === 'darwin') return ['open', address]
  if (platform === 'win32') return ['rundll32', 'url.dll,FileProtocolHandler', address]
  return ['xdg-open', address]
}

/** Opens the address in the user's browser. That it may not work is no trouble: the address is printed as well. */
export function openBrowser(address: string): void {
  const [command, ...args] = openCommand(process.platform, address)
  const child = spawn(command, args, { stdio: 'ignore', detached: true })
  child.once('error', () => {})
  child.unref()
}
