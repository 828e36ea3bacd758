import { useState } from 'react'
import { useEnd } from '../../app/asking.ts'
import { sentences } from '../../app/build-file.ts'
import type { Units } from '../../app/queries.ts'
import { FieldShell } from '../fields/FieldShell.tsx'
import { useCarried } from './carried.ts'
import { EndChooser } from './EndChooser.tsx'
import { EndReading } from './EndReading.tsx'

/** An end as the trade writes it, read back while it is typed, with help for who does not write it every day. */
export function ConnectionField(props: {
  readonly label: string
  readonly value: string
  readonly units: Units
  readonly problem: string | null
  readonly onChange: (value: string) => void
}) {
  const [choosing, setChoosing] = useState(false)
  const carried = useCarried()
  const read = useEnd(props.value, props.units)
  const refused =
    props.value.trim() !== '' && read.data?.ok === false && !read.isPlaceholderData ? sentences(read.data.problems) : props.problem
  return (
    <div className="connection">
      <FieldShell label={props.label} hint="such as 7/8-18 LH female, or -6 37° flare male" problem={refused}>
        {({ id, describedBy, invalid }) => (
          <span className="field-row">
            <input
              id={id}
              type="text"
              autoComplete="off"
              spellCheck={false}
              required
              aria-describedby={describedBy}
              aria-invalid={invalid}
              value={props.value}
              onChange={(event) => props.onChange(event.target.value)}
            />
            <button type="button" className="button" aria-haspopup="dialog" onClick={() => setChoosing(true)}>
              Help me write it…
            </button>
            {carried !== null && carried !== props.value && (
              <button type="button" className="button" onClick={() => props.onChange(carried)}>
                Use “{carried}”
              </button>
            )}
          </span>
        )}
      </FieldShell>
      <EndReading typed={props.value} units={props.units} />
      {choosing && (
        <EndChooser
          units={props.units}
          onClose={() => setChoosing(false)}
          onChoose={(written) => {
            props.onChange(written)
            setChoosing(false)
          }}
        />
      )}
    </div>
  )
}
