import { createContext, type ReactNode, useCallback, useContext, useMemo, useState } from 'react'
import type { NumberText, WorkingText } from '../../../shared/report/document.ts'
import { WorkingSheet } from './WorkingSheet.tsx'

interface Numbers {
  /** opens a number's working; without one there is nothing to open */
  readonly open: (id: string) => void
  readonly has: (id: string) => boolean
  readonly find: (id: string) => NumberText | undefined
}

const NumbersContext = createContext<Numbers>({ open: () => undefined, has: () => false, find: () => undefined })

/** The numbers of the build shown, by id, and the way to their workings. */
export const useNumbers = (): Numbers => useContext(NumbersContext)

/**
 * Holds which working is open, as a trail: a value that was itself computed opens its own working, and back leads the same
 * way. The trail holds ids, so that after a change of units the open sheet shows the new words.
 */
export function WorkingProvider(props: {
  readonly numbers: readonly NumberText[]
  readonly workings: readonly WorkingText[]
  readonly children: ReactNode
}) {
  const [trail, setTrail] = useState<readonly string[]>([])
  const workings = useMemo(() => new Map(props.workings.map((working) => [working.id, working])), [props.workings])
  const numbers = useMemo(() => new Map(props.numbers.map((number) => [number.id, number])), [props.numbers])

  const open = useCallback((id: string) => setTrail((last) => (workings.has(id) ? [...last, id] : last)), [workings])
  const value = useMemo(
    () => ({ open, has: (id: string) => workings.has(id), find: (id: string) => numbers.get(id) }),
    [open, workings, numbers],
  )
  const shown = workings.get(trail.at(-1) ?? '')
  const before = workings.get(trail.at(-2) ?? '')

  return (
    <NumbersContext.Provider value={value}>
      {props.children}
      {shown !== undefined && (
        <WorkingSheet
          working={shown}
          back={before === undefined ? null : { label: before.label, go: () => setTrail((last) => last.slice(0, -1)) }}
          onClose={() => setTrail([])}
        />
      )}
    </NumbersContext.Provider>
  )
}
