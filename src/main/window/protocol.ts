import { readFile } from 'node:fs/promises'
import { type Protocol, protocol } from 'electron'
import { findPageFile, PAGE_HEADERS } from '../hosts/page.ts'
import { isOwnPage, SCHEME } from './address.ts'

/** Must run before the program is ready: gives the scheme an origin and the rules of a secure page. */
export function registerScheme(): void {
  protocol.registerSchemesAsPrivileged([{ scheme: SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true } }])
}

/** Serves the built page under the program's own scheme, every answer with the content security policy. */
export function servePage(on: Protocol, folder: string): void {
  on.handle(SCHEME, (request) => answer(request, folder))
}

async function answer(request: Request, folder: string): Promise<Response> {
  const nothing = new Response('There is no such file.', { status: 404, headers: { ...PAGE_HEADERS, 'Content-Type': 'text/plain' } })
  if (request.method !== 'GET' || !isOwnPage(request.url)) return nothing
  const file = await findPageFile(folder, new URL(request.url).pathname)
  if (file === undefined) return nothing
  return new Response(new Uint8Array(await readFile(file.path)), { headers: { ...PAGE_HEADERS, 'Content-Type': file.mediaType } })
}
