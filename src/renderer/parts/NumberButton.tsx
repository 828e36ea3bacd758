import type { ReactNode } from 'react'
import { useNumbers } from './working/WorkingProvider.tsx'

/** A number that opens its working; where the plan has no working for it, the number alone. */
export function NumberButton(props: { readonly id: string; readonly label?: string; readonly children: ReactNode }) {
  const numbers = useNumbers()
  if (!numbers.has(props.id)) return <span className="number">{props.children}</span>
  return (
    <button type="button" className="number-button" aria-haspopup="dialog" onClick={() => numbers.open(props.id)}>
      {props.children}
      <span className="unseen">{props.label === undefined ? ': how it came about' : `, ${props.label}: how it came about`}</span>
    </button>
  )
}
