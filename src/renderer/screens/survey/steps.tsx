import { type Ref, useImperativeHandle, useRef, useState } from 'react'
import { WHEEL_STOPPERS } from '../../../shared/model/survey.ts'
import type { Dimension } from '../../../shared/quantities/dimension.ts'
import { sentences } from '../../app/build-file.ts'
import { call, messageOf } from '../../app/client.ts'
import { useKept } from '../../app/kept.ts'
import { FieldShell } from '../../parts/fields/FieldShell.tsx'
import { DIVISIONS, METHODS, SURE, withUnit } from './form.ts'
import type { Leaving } from './MarkStep.tsx'
import type { Filling } from './useSurvey.ts'

/** What must be so before the tape is laid on. */
export function SureStep({ filling: { form, set } }: { readonly filling: Filling }) {
  return (
    <fieldset className="big-choices">
      <legend className="unseen">Made sure of</legend>
      {SURE.map(({ key, text, how }) => (
        <label key={key} className="big-choice">
          <input
            type="checkbox"
            checked={form.madeSure.includes(key)}
            onChange={(event) =>
              set({
                madeSure: SURE.map((one) => one.key).filter((one) => (one === key ? event.target.checked : form.madeSure.includes(one))),
              })
            }
          />
          <span>
            {text}
            <span className="second">{how}</span>
          </span>
        </label>
      ))}
    </fieldset>
  )
}

export function MethodStep({ filling: { form, set } }: { readonly filling: Filling }) {
  return (
    <fieldset className="big-choices">
      <legend className="unseen">How it is measured</legend>
      {METHODS.map(({ key, text, how }) => (
        <label key={key} className="big-choice">
          <input type="radio" name="method" checked={form.method === key} onChange={() => set({ method: key })} />
          <span>
            {text}
            <span className="second">{how}</span>
          </span>
        </label>
      ))}
    </fieldset>
  )
}

/** The tape's smallest division, and who reads it. */
export function TapeStep(props: {
  readonly ref: Ref<Leaving>
  readonly id: string
  readonly filling: Filling
  readonly by: string
  readonly onBy: (by: string) => void
  readonly unit: 'in' | 'mm'
}) {
  const { form, set } = props.filling
  const other = form.resolution !== '' && !DIVISIONS.some((one) => one === form.resolution)
  return (
    <div className="step-fields">
      <fieldset className="big-choices big-choices-two">
        <legend>Smallest division that is read</legend>
        {DIVISIONS.map((one) => (
          <label key={one} className="big-choice">
            <input type="radio" name="division" checked={form.resolution === one} onChange={() => set({ resolution: one })} />
            <span>{one}</span>
          </label>
        ))}
      </fieldset>
      <Committed
        ref={props.ref}
        place={`survey/${props.id}/resolution`}
        label="Another division"
        hint="1/8 in or 2 mm"
        dimension="length"
        unit={props.unit}
        value={other ? form.resolution : ''}
        onCommit={(resolution) => resolution !== '' && set({ resolution })}
      />
      <FieldShell label="Who reads" hint="stands beside each reading from now on">
        {({ id, describedBy }) => (
          <input
            id={id}
            type="text"
            autoComplete="off"
            aria-describedby={describedBy}
            value={props.by}
            onChange={(event) => props.onBy(event.target.value)}
          />
        )}
      </FieldShell>
    </div>
  )
}

/** What ended the travel on each side. */
export function EndsStep({ filling: { form, set } }: { readonly filling: Filling }) {
  return (
    <div className="ended">
      {(['left', 'right'] as const).map((side) => (
        <fieldset key={side} className="big-choices">
          <legend>On the {side}</legend>
          {WHEEL_STOPPERS.map((what) => (
            <label key={what} className="big-choice">
              <input
                type="radio"
                name={`ended-${side}`}
                checked={form.endedBy[side] === what}
                onChange={() => set({ endedBy: { ...form.endedBy, [side]: what } })}
              />
              <span>{what}</span>
            </label>
          ))}
        </fieldset>
      ))}
    </div>
  )
}

export function AngleStep(props: { readonly ref: Ref<Leaving>; readonly id: string; readonly filling: Filling }) {
  const { form, set } = props.filling
  return (
    <div className="step-fields">
      <p>
        Between the ram’s line and the tie rod, height and plan together, wheels straight. A ram that stands at an angle moves less than the
        rod. Leave it empty while there is no ram.
      </p>
      <Committed
        ref={props.ref}
        place={`survey/${props.id}/angle`}
        label="Angle of the ram"
        hint="4°"
        dimension="angle"
        unit="°"
        value={form.ramAngle}
        onCommit={(ramAngle) => set({ ramAngle })}
      />
    </div>
  )
}

export function NoteStep({ id: build, filling: { form, set } }: { readonly id: string; readonly filling: Filling }) {
  const [kept, keep] = useKept<string>(`survey/${build}/note`)
  const commit = () => {
    if (kept === undefined) return
    if (kept !== form.note) set({ note: kept })
    keep(null)
  }
  return (
    <div className="step-fields">
      <FieldShell label="Measured on">
        {({ id }) => <input id={id} type="date" value={form.takenOn} onChange={(event) => set({ takenOn: event.target.value })} />}
      </FieldShell>
      <FieldShell label="Note" hint="the datum, and what else the next one must know" wide>
        {({ id, describedBy }) => (
          <textarea
            id={id}
            rows={4}
            maxLength={4000}
            aria-describedby={describedBy}
            value={kept ?? form.note}
            onChange={(event) => keep(event.target.value)}
            onBlur={commit}
          />
        )}
      </FieldShell>
    </div>
  )
}

/** A quantity that counts once it is left, so that half a word is never saved; what is not understood stays in the field. */
function Committed(props: {
  readonly ref: Ref<Leaving>
  readonly place: string
  readonly label: string
  readonly hint: string
  readonly dimension: Dimension
  readonly unit: string
  readonly value: string
  readonly onCommit: (text: string) => void
}) {
  const [kept, keep] = useKept<string>(props.place)
  const [problem, setProblem] = useState<string | null>(null)
  const field = useRef<HTMLInputElement>(null)
  const take = async (): Promise<boolean> => {
    if (kept === undefined) return true
    const text = withUnit(kept, props.unit)
    try {
      const read = text === '' ? null : await call('quantity.read', { typed: text, dimension: props.dimension })
      if (read?.ok === false) {
        setProblem(sentences(read.problems))
        field.current?.focus()
        return false
      }
    } catch (error) {
      setProblem(messageOf(error))
      return false
    }
    setProblem(null)
    keep(null)
    props.onCommit(text)
    return true
  }
  useImperativeHandle(props.ref, () => ({ take }))
  return (
    <FieldShell label={props.label} hint={props.hint} problem={problem}>
      {({ id, describedBy, invalid }) => (
        <input
          id={id}
          ref={field}
          type="text"
          inputMode={props.unit === '°' ? 'decimal' : 'text'}
          autoComplete="off"
          spellCheck={false}
          aria-describedby={describedBy}
          aria-invalid={invalid}
          value={kept ?? props.value}
          onChange={(event) => {
            setProblem(null)
            keep(event.target.value)
          }}
          onBlur={() => void take()}
          onKeyDown={(event) => {
            if (event.key !== 'Enter') return
            event.preventDefault()
            void take()
          }}
        />
      )}
    </FieldShell>
  )
}
