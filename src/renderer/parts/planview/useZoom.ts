import { type RefObject, useCallback, useEffect, useRef, useState } from 'react'

const LEAST = 1
const MOST = 8
const STEP = 1.25

/**
 * How large a picture is shown in its box, 1 for all of it; with the place under the pointer (or the middle) kept where it is.
 *
 * @param box the scrolling box around the picture; Ctrl and the wheel on it zoom
 */
export function useZoom(box: RefObject<HTMLElement | null>) {
  const [zoom, setZoom] = useState(LEAST)
  const keep = useRef<{ readonly x: number; readonly y: number; readonly left: number; readonly top: number } | null>(null)
  const now = useRef(zoom)
  now.current = zoom

  const to = useCallback(
    (next: number, at?: { readonly x: number; readonly y: number }) => {
      const element = box.current
      const wanted = Math.min(MOST, Math.max(LEAST, next))
      if (element === null || wanted === now.current) return
      const left = at?.x ?? element.clientWidth / 2
      const top = at?.y ?? element.clientHeight / 2
      keep.current = { x: (element.scrollLeft + left) / now.current, y: (element.scrollTop + top) / now.current, left, top }
      setZoom(wanted)
    },
    [box],
  )

  useEffect(() => {
    const element = box.current
    const kept = keep.current
    if (element === null || kept === null) return
    element.scrollTo({ left: kept.x * zoom - kept.left, top: kept.y * zoom - kept.top })
  }, [box, zoom])

  useEffect(() => {
    const element = box.current
    if (element === null) return
    const onWheel = (event: WheelEvent) => {
      if (!(event.ctrlKey || event.metaKey)) return
      // the page itself must not zoom along
      event.preventDefault()
      const frame = element.getBoundingClientRect()
      to(now.current * (event.deltaY < 0 ? STEP : 1 / STEP), { x: event.clientX - frame.left, y: event.clientY - frame.top })
    }
    element.addEventListener('wheel', onWheel, { passive: false })
    return () => element.removeEventListener('wheel', onWheel)
  }, [box, to])

  return {
    zoom,
    in: useCallback(() => to(now.current * STEP), [to]),
    out: useCallback(() => to(now.current / STEP), [to]),
    fit: useCallback(() => to(LEAST), [to]),
  }
}
