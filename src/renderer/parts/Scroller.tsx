import { type ReactNode, useEffect, useRef } from 'react'

/**
 * A box that may be wider or higher inside than out. While it is, the keyboard can reach and scroll it; while everything
 * fits, it is no stop on the way.
 */
export function Scroller(props: { readonly label: string; readonly className?: string; readonly children: ReactNode }) {
  const box = useRef<HTMLElement>(null)
  useEffect(() => {
    const element = box.current
    if (element === null) return
    const look = () => {
      const overflows = element.scrollWidth > element.clientWidth + 1 || element.scrollHeight > element.clientHeight + 1
      // Without a name a section is no landmark, so what fits adds nothing to a screen reader's list of regions either.
      if (overflows) {
        element.tabIndex = 0
        element.setAttribute('aria-label', props.label)
      } else {
        element.removeAttribute('tabindex')
        element.removeAttribute('aria-label')
      }
    }
    const observer = new ResizeObserver(look)
    observer.observe(element)
    for (const child of element.children) observer.observe(child)
    return () => observer.disconnect()
  }, [props.label])
  return (
    <section ref={box} className={`scroller ${props.className ?? ''}`}>
      {props.children}
    </section>
  )
}
