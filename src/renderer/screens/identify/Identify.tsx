import { keepPreviousData, useQuery } from '@tanstack/react-query'
import { type ReactNode, useState } from 'react'
import { call, messageOf } from '../../app/client.ts'
import { useSettled } from '../../app/later.ts'
import { useUnits } from '../../app/units.ts'
import { SplineEnd, TubeEnd, TwoDiameters } from '../../drawings/measuring/others.tsx'
import { Desk } from '../../parts/desk/Desk.tsx'
import { Answer } from '../../parts/identify/Answer.tsx'
import { ReadingField } from '../../parts/identify/ReadingField.tsx'
import { type Reading, SPLINE, TAPER, TUBE, type Typed, type What, wordsOf } from '../../parts/identify/readings.ts'
import { ThreadForm } from '../../parts/identify/ThreadForm.tsx'

const WHATS: readonly (readonly [What, string])[] = [
  ['thread', 'a thread or fitting'],
  ['taper', 'a ball stud or its hole'],
  ['tube', 'a tube'],
  ['spline', 'a splined shaft'],
]

/** What was typed, by kind of thing; found again when the screen is opened anew. */
const kept: { what: What; typed: Readonly<Record<What, Typed>> } = {
  what: 'thread',
  typed: { thread: {}, taper: {}, tube: {}, spline: {} },
}

/** What is this? From what a calliper and a pitch gauge read, what it can be, and what to measure next. */
export function Identify() {
  const [units, setUnits] = useUnits()
  const [what, setWhat] = useState(kept.what)
  const [typed, setTyped] = useState(kept.typed)
  const change = (changed: Typed) => {
    kept.typed = { ...typed, [what]: changed }
    setTyped(kept.typed)
  }
  const now = typed[what]
  const readings = useSettled(JSON.stringify(wordsOf(what, now)))
  const words = JSON.parse(readings) as string[]
  const answer = useQuery({
    queryKey: ['identify', units, readings],
    queryFn: () => call('identify', { readings: words, units }),
    enabled: words.length > 0,
    placeholderData: keepPreviousData,
  })
  const problems = words.length > 0 && answer.data?.ok === false ? answer.data.problems : []
  const problemAt = (name: string): string | null => problems.find((problem) => problem.place === name)?.sentence ?? null
  const rows = (list: readonly Reading[], picture: ReactNode, title: string) => (
    <section className="step" aria-labelledby="step-rows">
      <div className="step-fields">
        <h2 id="step-rows">{title}</h2>
        {list.map((reading) => (
          <ReadingField
            key={reading.name}
            reading={reading}
            value={now[reading.name] ?? ''}
            problem={problemAt(reading.name)}
            onChange={(value) => change({ ...now, [reading.name]: value })}
          />
        ))}
      </div>
      {picture}
    </section>
  )
  return (
    <Desk title="What is this?" below="Found out by calliper and pitch gauge" here="identify" units={units} onUnits={setUnits}>
      <div className="identify">
        <div className="steps">
          <fieldset className="pick whats">
            <legend>What is in your hand</legend>
            {WHATS.map(([one, label]) => (
              <label key={one} className="tickable">
                <input
                  type="radio"
                  name="what"
                  value={one}
                  checked={what === one}
                  onChange={() => {
                    kept.what = one
                    setWhat(one)
                  }}
                />
                {label}
              </label>
            ))}
          </fieldset>
          {what === 'thread' && <ThreadForm typed={now} problemAt={problemAt} onChange={change} />}
          {what === 'taper' && rows(TAPER, <TwoDiameters />, 'The cone')}
          {what === 'tube' && rows(TUBE, <TubeEnd />, 'The tube')}
          {what === 'spline' && rows(SPLINE, <SplineEnd />, 'The splines')}
          <p>
            <button type="button" className="button" onClick={() => change({})}>
              Empty these fields
            </button>
          </p>
        </div>
        <section className="can" aria-labelledby="can" aria-live="polite">
          <h2 id="can">It can be</h2>
          <Said
            empty={words.length === 0}
            refused={problems.filter((problem) => !(problem.place in now)).map((problem) => problem.sentence)}
            error={answer.error}
            what={what}
          />
          {words.length > 0 && answer.data?.ok === true && <Answer words={answer.data.value} />}
        </section>
      </div>
    </Desk>
  )
}

/** What stands in the place of an answer. */
function Said(props: { readonly empty: boolean; readonly refused: readonly string[]; readonly error: unknown; readonly what: What }) {
  if (props.empty)
    return (
      <p className="quiet">
        {props.what === 'taper'
          ? 'Type two diameters and the distance between them.'
          : props.what === 'spline'
            ? 'Type the number of splines, or the diameter over them.'
            : 'Type a diameter; every reading more narrows it down.'}{' '}
        A reading may bring its own spread: 22.1 ± 0.05 mm.
      </p>
    )
  if (props.error !== null) return <p role="alert">{messageOf(props.error)}</p>
  return props.refused.map((sentence) => (
    <p key={sentence} className="field-wrong">
      {sentence}
    </p>
  ))
}
