/** The program's own scheme: its page has an origin of its own, which `file:` would not give it. */
export const SCHEME = 'app'
export const HOST = 'steerwright'
export const PAGE = `${SCHEME}://${HOST}/`

/** Whether an address is of the program's own page, told from the parsed address and never from how its text begins. */
export function isOwnPage(address: string): boolean {
  const url = URL.parse(address)
  return url !== null && url.protocol === `${SCHEME}:` && url.host === HOST && url.username === '' && url.password === ''
}
