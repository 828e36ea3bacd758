import { useEffect, useRef, useState } from 'react'
import type { Units } from '../../app/queries.ts'
import { TextField } from '../fields/PartField.tsx'
import { ConnectionField } from './ConnectionField.tsx'
import { type EndForm, endForm, freeId } from './form.ts'

/** The most ends a part can have. */
const MOST = 64

/** The ends of a part, in order: each with its name, how it joins, and whether it is left open on purpose. */
export function EndsEditor(props: {
  readonly ends: readonly EndForm[]
  readonly units: Units
  readonly problemAt: (place: string) => string | null
  readonly onChange: (ends: readonly EndForm[]) => void
}) {
  const { ends, onChange } = props
  const [arrived, setArrived] = useState<number | null>(null)
  const names = new Set(ends.map((end) => end.name))
  const add = (end: EndForm, at: number) => {
    onChange([...ends.slice(0, at), end, ...ends.slice(at)])
    setArrived(end.key)
  }
  const move = (at: number, by: number) => {
    const next = [...ends]
    const [end] = next.splice(at, 1)
    if (end !== undefined) next.splice(at + by, 0, end)
    onChange(next)
  }
  return (
    <section className="ends" aria-labelledby="ends">
      <div className="ends-head">
        <h2 id="ends">Ends</h2>
        <p className="quiet">Every place where this part meets another. What is not measured yet can say so: “not measured”.</p>
      </div>
      {ends.length === 0 && <p>No ends yet.</p>}
      <ol className="ends-list">
        {ends.map((end, at) => (
          <EndRow
            key={end.key}
            end={end}
            number={at + 1}
            last={at === ends.length - 1}
            arrived={arrived === end.key}
            units={props.units}
            problemAt={(key) => props.problemAt(`ends[${at}].${key}`)}
            onChange={(changed) => onChange(ends.map((one) => (one.key === end.key ? changed : one)))}
            onMove={(by) => move(at, by)}
            onDuplicate={() => add(endForm({ ...end, was: null, name: freeId(end.name, names) }), at + 1)}
            onRemove={() => onChange(ends.filter((one) => one.key !== end.key))}
          />
        ))}
      </ol>
      <p>
        <button
          type="button"
          className="button"
          disabled={ends.length >= MOST}
          onClick={() => add(endForm({ name: freeId(`end-${ends.length + 1}`, names) }), ends.length)}
        >
          Add an end
        </button>
      </p>
    </section>
  )
}

function EndRow(props: {
  readonly end: EndForm
  readonly number: number
  readonly last: boolean
  readonly arrived: boolean
  readonly units: Units
  readonly problemAt: (key: string) => string | null
  readonly onChange: (end: EndForm) => void
  readonly onMove: (by: 1 | -1) => void
  readonly onDuplicate: () => void
  readonly onRemove: () => void
}) {
  const { end, arrived } = props
  const change = (part: Partial<EndForm>) => props.onChange({ ...end, ...part })
  const called = end.name === '' ? `end ${props.number}` : end.name
  const row = useRef<HTMLLIElement>(null)
  useEffect(() => {
    if (arrived) row.current?.querySelector('input')?.focus()
  }, [arrived])
  return (
    <li ref={row} className="end">
      <fieldset>
        <legend>
          End {props.number}
          <span className="unseen">: {called}</span>
        </legend>
        <div className="end-fields">
          <TextField
            label="Name of the end"
            hint="such as left, or port-a"
            needed
            value={end.name}
            problem={props.problemAt('name')}
            onChange={(name) => change({ name })}
          />
          <ConnectionField
            label="How it joins"
            value={end.connection}
            units={props.units}
            problem={props.problemAt('connection')}
            onChange={(connection) => change({ connection })}
          />
          <TextField label="Note" value={end.note} problem={props.problemAt('note')} onChange={(note) => change({ note })} />
          <label className="tickable">
            <input type="checkbox" checked={end.leftOpen} onChange={(event) => change({ leftOpen: event.target.checked })} />
            left open on purpose: a plug or nothing belongs here
          </label>
        </div>
        <div className="end-tools">
          <button type="button" className="button button-small" disabled={props.number === 1} onClick={() => props.onMove(-1)}>
            <span aria-hidden="true">↑</span>
            <span className="unseen">Move {called} up</span>
          </button>
          <button type="button" className="button button-small" disabled={props.last} onClick={() => props.onMove(1)}>
            <span aria-hidden="true">↓</span>
            <span className="unseen">Move {called} down</span>
          </button>
          <button type="button" className="button button-small" onClick={props.onDuplicate}>
            Duplicate<span className="unseen"> {called}</span>
          </button>
          <button type="button" className="button button-small button-danger" onClick={props.onRemove}>
            Remove<span className="unseen"> {called}</span>
          </button>
        </div>
      </fieldset>
    </li>
  )
}
