import { type Ref, useImperativeHandle, useRef, useState } from 'react'
import type { FindingText } from '../../../shared/report/document.ts'
import { sentences } from '../../app/build-file.ts'
import { call, messageOf } from '../../app/client.ts'
import { useKept } from '../../app/kept.ts'
import { keyed } from '../../parts/keyed.ts'
import { StateTag } from '../../parts/Mark.tsx'
import { type MARKS, OFTEN, withUnit } from './form.ts'
import { Pad, typedOnto } from './Pad.tsx'
import type { Filling } from './useSurvey.ts'

type MarkOf = (typeof MARKS)[number]

/** What the foot of the screen asks of a step before it goes on. */
export interface Leaving {
  /** takes what is typed; false where it is not understood */
  readonly take: () => Promise<boolean>
}

/** One mark on the tie rod: read, added, read again. */
export function MarkStep(props: {
  readonly ref: Ref<Leaving>
  readonly id: string
  readonly mark: MarkOf
  readonly filling: Filling
  readonly unit: 'in' | 'mm'
  readonly onUnit: (unit: 'in' | 'mm') => void
  readonly by: string
  readonly findings: readonly FindingText[]
  readonly onEnter: () => void
}) {
  const { mark, filling, unit } = props
  const [kept, keep] = useKept<string>(`survey/${props.id}/reading ${mark.key}`)
  const typed = kept ?? ''
  const [problem, setProblem] = useState<string | null>(null)
  const [own, setOwn] = useState(false)
  const field = useRef<HTMLInputElement>(null)
  const taking = useRef(false)
  const all = filling.form.readings
  const readings = all.flatMap((reading, at) => (reading.mark === mark.key ? [{ reading, at }] : []))
  const apart = props.findings.flatMap(({ code, about }) => (code === 'survey.spread' && typeof about[2] === 'number' ? [about[2]] : []))

  const write = (text: string) => {
    setProblem(null)
    keep(text === '' ? null : text)
  }
  const take = async (): Promise<boolean> => {
    if (typed.trim() === '' || taking.current) return true
    taking.current = true
    const at = withUnit(typed, unit)
    try {
      const read = await call('quantity.read', { typed: at, dimension: 'length' })
      if (!read.ok) {
        setProblem(sentences(read.problems))
        field.current?.focus()
        return false
      }
      const by = props.by.trim()
      filling.set(({ readings: before }) => ({ readings: [...before, { mark: mark.key, at, ...(by === '' ? {} : { by }) }] }))
      keep(null)
      setProblem(null)
      return true
    } catch (error) {
      setProblem(messageOf(error))
      return false
    } finally {
      taking.current = false
    }
  }
  useImperativeHandle(props.ref, () => ({ take }))
  const takeOut = (at: number, text: string) => {
    filling.set({ readings: all.filter((_, other) => other !== at) })
    if (typed === '') write(text)
    field.current?.focus()
  }

  return (
    <div className="mark-step">
      <p id="how" className="mark-how">
        {mark.how}
      </p>
      <ol className="readings" aria-label={`Readings of the mark ${mark.name.toLowerCase()}`}>
        {keyed(readings, ({ reading }) => reading.at).map(({ key, item: { reading, at } }) => (
          <li key={key} data-apart={apart.includes(at)}>
            <button type="button" className="reading" onClick={() => takeOut(at, reading.at)}>
              {reading.at}
              <span aria-hidden="true"> ×</span>
              <span className="unseen">: take out, to read again</span>
            </button>
            {apart.includes(at) && <StateTag state="look" text="lies apart" />}
          </li>
        ))}
        {readings.length < OFTEN && (
          <li className="quiet">{readings.length === 0 ? `best read ${OFTEN} times` : `${OFTEN - readings.length} more is better`}</li>
        )}
      </ol>
      <form
        className="reading-form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault()
          if (typed.trim() === '') props.onEnter()
          else void take()
        }}
      >
        <label htmlFor="reading">{mark.name}: reading</label>
        <span className="reading-row">
          <input
            id="reading"
            ref={field}
            type="text"
            inputMode={own ? 'text' : 'none'}
            autoComplete="off"
            spellCheck={false}
            aria-describedby={problem === null ? 'how' : 'how reading-wrong'}
            aria-invalid={problem !== null}
            value={typed}
            onChange={(event) => write(event.target.value)}
          />
          {(['in', 'mm'] as const).map((one) => (
            <button
              key={one}
              type="button"
              className="unit-key"
              aria-pressed={unit === one}
              onPointerDown={(event) => event.preventDefault()}
              onClick={() => props.onUnit(one)}
            >
              {one}
            </button>
          ))}
        </span>
        {problem !== null && (
          <p id="reading-wrong" className="field-wrong" role="alert">
            {problem}
          </p>
        )}
      </form>
      {!own && (
        <Pad
          inch={unit === 'in'}
          onType={(key) => write(typedOnto(typed, key))}
          onBack={() => write(typed.slice(0, -1))}
          onAdd={() => void take()}
        />
      )}
      <button type="button" className="button button-small own-keys" aria-pressed={own} onClick={() => setOwn(!own)}>
        {own ? 'Back to the large keys' : 'Use the keyboard of the telephone'}
      </button>
    </div>
  )
}
