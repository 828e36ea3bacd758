import { createContext, type ReactNode, useCallback, useContext, useMemo, useRef, useState } from 'react'
import { useLocation } from 'wouter'
import type { Problem } from '../../../shared/contract/contract.ts'
import { call, messageOf } from '../../app/client.ts'
import { useNotice } from '../../app/notice.tsx'
import { forgetAll } from '../../app/queries.ts'
import { RefusedDialog } from './RefusedDialog.tsx'
import { ReplaceDialog } from './ReplaceDialog.tsx'
import { useFilesFromOutside } from './useFilesFromOutside.ts'

/** The same bound as the contract's, so that a film dropped by mistake is not read into memory first. */
const LARGEST = 20_000_000

/** The one refusal that is a question: a build of this id is there already. */
const EXISTS = 'build.exists'

type State =
  | { readonly kind: 'idle' }
  | { readonly kind: 'reading' }
  | { readonly kind: 'refused'; readonly from: string; readonly problems: readonly Problem[] }
  | { readonly kind: 'exists'; readonly from: string; readonly text: string; readonly sentence: string }

interface Import {
  /** opens the file picker */
  readonly pick: () => void
  readonly reading: boolean
}

const ImportContext = createContext<Import>({ pick: () => undefined, reading: false })

export const useImport = (): Import => useContext(ImportContext)

/**
 * Takes build files in, however they come: chosen, dropped on the window or pasted. All of a file or nothing of it: what is
 * wrong is listed whole, and an id that exists asks first.
 */
export function ImportProvider({ children }: { readonly children: ReactNode }) {
  const [state, setState] = useState<State>({ kind: 'idle' })
  const picker = useRef<HTMLInputElement>(null)
  const tell = useNotice()
  const [, go] = useLocation()

  const take = useCallback(
    async (text: string, from: string, replace: boolean) => {
      setState({ kind: 'reading' })
      try {
        const answer = await call('builds.import', { text, replace })
        if (answer.ok) {
          await forgetAll()
          setState({ kind: 'idle' })
          go(`/build/${encodeURIComponent(answer.value.id)}`)
          tell(answer.value.replaced ? `${from} is in; it replaced the build that was there.` : `${from} is in.`)
          return
        }
        const exists = replace ? undefined : answer.problems.find((problem) => problem.code === EXISTS)
        if (exists === undefined) setState({ kind: 'refused', from, problems: answer.problems })
        else setState({ kind: 'exists', from, text, sentence: exists.sentence })
      } catch (error) {
        setState({ kind: 'idle' })
        tell(messageOf(error), 'trouble')
      }
    },
    [go, tell],
  )

  const takeFile = useCallback(
    async (file: File) => {
      if (file.size > LARGEST) {
        const sentence = 'The file is larger than 20 MB; a build file never is. It was not read.'
        setState({ kind: 'refused', from: file.name, problems: [{ code: 'file.size', place: '', sentence }] })
        return
      }
      await take(await file.text(), file.name, false)
    },
    [take],
  )
  const takeText = useCallback((text: string) => void take(text, 'What you pasted', false), [take])
  const dragging = useFilesFromOutside(takeFile, takeText)

  // While a file is being read the button stays where the keyboard left it (a disabled one would lose the focus) and does nothing.
  const reading = state.kind === 'reading'
  const pick = useCallback(() => {
    if (!reading) picker.current?.click()
  }, [reading])
  const idle = useCallback(() => setState({ kind: 'idle' }), [])
  const value = useMemo(() => ({ pick, reading }), [pick, reading])

  return (
    <ImportContext.Provider value={value}>
      {children}
      <input
        ref={picker}
        type="file"
        hidden
        aria-label="Build file"
        accept=".json,application/json"
        onChange={(event) => {
          const [file] = event.target.files ?? []
          if (file !== undefined) void takeFile(file)
          // So that the same file can be chosen again after it was mended.
          event.target.value = ''
        }}
      />
      {dragging && (
        <div className="dropping" aria-hidden="true">
          <p>Let go to take the build file in</p>
        </div>
      )}
      {state.kind === 'refused' && <RefusedDialog from={state.from} problems={state.problems} onClose={idle} onAgain={pick} />}
      {state.kind === 'exists' && (
        <ReplaceDialog sentence={state.sentence} onClose={idle} onReplace={() => void take(state.text, state.from, true)} />
      )}
    </ImportContext.Provider>
  )
}
