import { useEffect, useState } from 'react'

/** A value as it was when it last stood still for a moment: what is asked of the program waits for the end of a word. */
export function useSettled<T>(value: T, milliseconds = 150): T {
  const [settled, setSettled] = useState(value)
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), milliseconds)
    return () => clearTimeout(timer)
  }, [value, milliseconds])
  return settled
}
