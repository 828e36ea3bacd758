import { useCallback, useState } from 'react'
import type { Problem } from '../../../shared/contract/contract.ts'
import { sentences } from '../../app/build-file.ts'
import { messageOf } from '../../app/client.ts'
import { useNotice } from '../../app/notice.tsx'

type Answer<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problems: readonly Problem[] }

/**
 * Asks the program for something and tells of a refusal or a fault.
 * @returns whether something is being done now, and a function that gives the value, or null where nothing came of it
 */
export function useDoing() {
  const tell = useNotice()
  const [busy, setBusy] = useState(false)
  const run = useCallback(
    async <T>(ask: () => Promise<Answer<T>>): Promise<T | null> => {
      setBusy(true)
      try {
        const answer = await ask()
        if (answer.ok) return answer.value
        tell(sentences(answer.problems), 'trouble')
      } catch (error) {
        tell(messageOf(error), 'trouble')
      } finally {
        setBusy(false)
      }
      return null
    },
    [tell],
  )
  return { busy, run }
}
