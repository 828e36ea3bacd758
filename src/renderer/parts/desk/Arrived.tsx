import type { ReactNode } from 'react'
import type { Problem } from '../../../shared/contract/contract.ts'
import { messageOf } from '../../app/client.ts'
import { ProblemList } from '../ProblemList.tsx'
import { Waiting } from '../Waiting.tsx'

interface Asked<T> {
  readonly isPending: boolean
  readonly isError: boolean
  readonly error: unknown
  readonly data: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problems: readonly Problem[] } | undefined
}

/** Shows what came, or that it is on its way, or why it did not come. */
export function Arrived<T>(props: { readonly of: Asked<T>; readonly what: string; readonly children: (value: T) => ReactNode }) {
  const { of } = props
  if (of.data === undefined) {
    if (of.isPending) return <Waiting what={props.what} />
    return (
      <p className="trouble" role="alert">
        {messageOf(of.error)}
      </p>
    )
  }
  if (of.data.ok) return props.children(of.data.value)
  return (
    <section className="trouble" role="alert" aria-label="Not shown">
      <ProblemList problems={of.data.problems} />
    </section>
  )
}
