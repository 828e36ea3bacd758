import { type RefObject, useEffect, useState } from 'react'

/** Everything beside something on its way up to the page's body. */
function besideOf(element: HTMLElement): HTMLElement[] {
  const beside: HTMLElement[] = []
  for (let here: HTMLElement = element; here !== document.body && here.parentElement !== null; here = here.parentElement) {
    for (const other of here.parentElement.children) {
      if (other !== here && other instanceof HTMLElement && !other.hasAttribute('inert')) beside.push(other)
    }
  }
  return beside
}

/**
 * Lets something fill the window, with all else out of reach for keyboard and screen reader meanwhile; Esc brings it back. The
 * browser's own full screen needs a permission that the program gives to no page.
 */
export function useFull(what: RefObject<HTMLElement | null>): readonly [full: boolean, setFull: (full: boolean) => void] {
  const [full, setFull] = useState(false)
  useEffect(() => {
    const element = what.current
    if (!full || element === null) return
    const beside = besideOf(element)
    for (const other of beside) other.inert = true
    const before = document.body.style.overflow
    document.body.style.overflow = 'hidden'
    const onKey = (event: KeyboardEvent) => event.key === 'Escape' && setFull(false)
    window.addEventListener('keydown', onKey)
    return () => {
      for (const other of beside) other.inert = false
      document.body.style.overflow = before
      window.removeEventListener('keydown', onKey)
    }
  }, [full, what])
  return [full, setFull]
}
