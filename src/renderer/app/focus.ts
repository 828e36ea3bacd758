import { useEffect, useRef } from 'react'

/**
 * Moves the focus to a heading when what it heads changes, so that keyboard and screen reader go on from there. Not on the
 * first showing: a page just opened starts at its top.
 */
export function useFocusOnChange<T extends HTMLElement>(what: string) {
  const heading = useRef<T>(null)
  const last = useRef(what)
  useEffect(() => {
    if (last.current === what) return
    last.current = what
    heading.current?.focus({ preventScroll: true })
    window.scrollTo({ top: 0 })
    // on a narrow screen the heading lies below the rail: there the page goes to it, or the tap would seem to do nothing
    if (heading.current && heading.current.getBoundingClientRect().top > window.innerHeight / 2) heading.current.scrollIntoView()
  }, [what])
  return heading
}

export function usePageTitle(title: string): void {
  useEffect(() => {
    document.title = `${title} · Steerwright`
  }, [title])
}
