const KEY = 'steerwright-theme'

export type Theme = 'system' | 'light' | 'dark'

/** The look chosen earlier; `system` where none was, or where the browser keeps nothing. */
export function readTheme(): Theme {
  try {
    const kept = localStorage.getItem(KEY)
    return kept === 'light' || kept === 'dark' ? kept : 'system'
  } catch {
    return 'system'
  }
}

/** Shows the look on the page. `system` leaves it to the machine's own setting. */
export function showTheme(theme: Theme): void {
  if (theme === 'system') delete document.documentElement.dataset.theme
  else document.documentElement.dataset.theme = theme
}

/** Shows and keeps the look. A browser that keeps nothing loses it with the page, which harms nobody. */
export function keepTheme(theme: Theme): void {
  showTheme(theme)
  try {
    localStorage.setItem(KEY, theme)
  } catch (error) {
    console.info('The look is not kept:', error)
  }
}
