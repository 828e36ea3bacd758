import { realpath, stat } from 'node:fs/promises'
import { extname, join, sep } from 'node:path'

/** Nothing but the program's own files and its own procedures; data: only for pictures (the empty favicon). */
export const CONTENT_SECURITY_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data:",
  "font-src 'self'",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ')

/** Sent with everything that either door serves. */
export const PAGE_HEADERS: Readonly<Record<string, string>> = {
  'Content-Security-Policy': CONTENT_SECURITY_POLICY,
  'X-Content-Type-Options': 'nosniff',
  'X-Frame-Options': 'DENY',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': 'camera=(), geolocation=(), microphone=(), usb=(), serial=(), hid=()',
  'Cache-Control': 'no-store',
}

const MEDIA_TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.ttf': 'font/ttf',
  '.json': 'application/json; charset=utf-8',
}

export interface PageFile {
  readonly path: string
  readonly mediaType: string
}

/**
 * The file of the built page that a URL's path names ("/" is the page itself), or undefined when there is none. A path that
 * leads out of the folder (by dots or by a link), a dot-file, a folder and a kind of file that the page has none of are all "none".
 */
export async function findPageFile(folder: string, urlPath: string): Promise<PageFile | undefined> {
  const name = decode(urlPath === '/' ? '/index.html' : urlPath)
  if (name === undefined) return undefined
  if (name.includes('\0') || name.includes('\\') || name.split('/').some((step) => step.startsWith('.'))) return undefined
  const mediaType = MEDIA_TYPES[extname(name)]
  if (mediaType === undefined) return undefined
  try {
    const path = await realpath(join(folder, name))
    const inside = path.startsWith((await realpath(folder)) + sep)
    return inside && (await stat(path)).isFile() ? { path, mediaType } : undefined
  } catch {
    return undefined
  }
}

function decode(urlPath: string): string | undefined {
  try {
    return decodeURIComponent(urlPath)
  } catch {
    return undefined
  }
}
