const KEY = 'steerwright-token'

/**
 * Takes the token out of the address (#token=…), keeps it for this tab and cleans the address, so that it is neither seen
 * nor bookmarked. Must run before routing starts, which reads the same part of the address.
 */
export function claimToken(): void {
  const found = /^#token=([^&/]+)$/.exec(window.location.hash)?.[1]
  if (found === undefined) return
  sessionStorage.setItem(KEY, decodeURIComponent(found))
  window.history.replaceState(null, '', `${window.location.pathname}${window.location.search}#/`)
}

/** The token of this tab; null where the page was opened without one. */
export const readToken = (): string | null => sessionStorage.getItem(KEY)
