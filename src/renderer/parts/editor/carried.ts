import { useSyncExternalStore } from 'react'

/*
 * An end that was found out and is on its way to the part it belongs to: the clipboard of the program itself, since the
 * machine's own may be closed to it.
 */

let carried: string | null = null
const listeners = new Set<() => void>()

const subscribe = (listener: () => void) => {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

/** The end carried now; null where there is none. */
export const useCarried = (): string | null => useSyncExternalStore(subscribe, () => carried)

/** Takes an end along, and copies it to the machine's clipboard where that is open. */
export async function carry(end: string): Promise<void> {
  carried = end
  for (const listener of listeners) listener()
  try {
    await navigator.clipboard.writeText(end)
  } catch (error) {
    console.info('The clipboard is closed; the end is carried inside the program:', error)
  }
}
