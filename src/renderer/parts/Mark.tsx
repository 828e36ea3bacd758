import type { State } from '../../shared/report/document.ts'

/** The word that goes with each state's shape; the two always stand together, so colour is never needed. */
export const STATE_WORD: Readonly<Record<State, string>> = {
  stops: 'stops',
  look: 'look',
  noted: 'noted',
  good: 'good',
  unknown: 'not known',
}

const SHAPE = {
  stops: (
    <>
      <rect x="1" y="1" width="14" height="14" rx="1.5" className="mark-solid" />
      <path d="M8 4v5M8 11.2v1" className="mark-cut" />
    </>
  ),
  look: (
    <>
      <path d="M8 1.5 15 14.5H1Z" className="mark-solid" />
      <path d="M8 6v4M8 11.8v.8" className="mark-cut" />
    </>
  ),
  noted: (
    <>
      <circle cx="8" cy="8" r="6.5" className="mark-line" />
      <circle cx="8" cy="8" r="2.4" className="mark-solid" />
    </>
  ),
  good: (
    <>
      <circle cx="8" cy="8" r="7" className="mark-solid" />
      <path d="M4.6 8.3 7 10.7 11.4 5.6" className="mark-cut" />
    </>
  ),
  unknown: (
    <>
      <path d="M8 1 15 8 8 15 1 8Z" className="mark-line mark-dashed" />
      <path d="M6.4 6.4a1.7 1.7 0 1 1 2.3 1.6c-.5.2-.7.5-.7 1M8 10.6v.7" className="mark-line" />
    </>
  ),
  none: <circle cx="8" cy="8" r="6.5" className="mark-line" />,
} as const

/** The shape of a state; `none` for what has no state. Its word stands beside it, so it is silent itself. */
export function Mark({ state }: { readonly state: State | 'none' }) {
  return (
    <svg className={`mark state-${state}`} viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
      {SHAPE[state]}
    </svg>
  )
}

/** A state as shape and word. */
export function StateTag({ state, text }: { readonly state: State; readonly text?: string }) {
  return (
    <span className={`tag state-${state}`}>
      <Mark state={state} />
      <span>{text ?? STATE_WORD[state]}</span>
    </span>
  )
}
