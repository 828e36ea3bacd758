import { type ReactNode, useId } from 'react'

export interface FieldIds {
  readonly id: string
  /** what describes the field, for aria-describedby */
  readonly describedBy: string | undefined
  readonly invalid: boolean
}

/**
 * A field with its name above, its unit or an example beside the name, how it was understood under it, and what is wrong with
 * it in words.
 */
export function FieldShell(props: {
  readonly label: string
  readonly hint?: string | undefined
  readonly also?: ReactNode
  readonly problem?: string | null | undefined
  readonly wide?: boolean
  readonly children: (ids: FieldIds) => ReactNode
}) {
  const id = useId()
  const wrong = props.problem !== undefined && props.problem !== null && props.problem !== ''
  const described = [
    ...(props.hint === undefined ? [] : [`${id}hint`]),
    ...(props.also === undefined ? [] : [`${id}also`]),
    ...(wrong ? [`${id}wrong`] : []),
  ]
  return (
    <div className={props.wide === true ? 'field field-wide' : 'field'} data-wrong={wrong}>
      <div className="field-head">
        <label htmlFor={id}>{props.label}</label>
        {props.hint !== undefined && (
          <span id={`${id}hint`} className="field-hint">
            {props.hint}
          </span>
        )}
      </div>
      {props.children({ id, describedBy: described.length === 0 ? undefined : described.join(' '), invalid: wrong })}
      {props.also !== undefined && (
        <div id={`${id}also`} className="field-also">
          {props.also}
        </div>
      )}
      {wrong && (
        <p id={`${id}wrong`} className="field-wrong">
          <span className="unseen">Not understood: </span>
          {props.problem}
        </p>
      )}
    </div>
  )
}
