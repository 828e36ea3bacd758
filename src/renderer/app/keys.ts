import { useEffect } from 'react'

/**
 * A shortcut with Ctrl (Cmd on a Mac) and a letter. Never a letter alone: those trip people who speak to their machine
 * (WCAG 2.1.4). Silent while a dialog is open.
 */
export function useShortcut(letter: string, act: () => void): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey) return
      if (event.key.toLowerCase() !== letter || document.querySelector('[role="dialog"]') !== null) return
      event.preventDefault()
      act()
    }
    window.addEventListener('keydown', onKey)
    return () => window.removeEventListener('keydown', onKey)
  }, [letter, act])
}
