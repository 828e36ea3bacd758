import type { RefObject } from 'react'
import { SHELF_SORTS } from '../../../shared/contract/contract.ts'
import { END_FAMILIES } from '../../../shared/model/end/family.ts'
import { PART_KINDS, PART_STATES } from '../../../shared/model/part.ts'
import type { Ask } from './ask.ts'
import { END_FAMILY_WORDS } from './families.ts'

/** What to look for on the shelf: words, filters, and the order. */
export function ShelfBar(props: {
  readonly ask: Ask
  readonly search: RefObject<HTMLInputElement | null>
  readonly onChange: (ask: Ask) => void
  readonly onLeave: () => void
}) {
  const { ask, onChange } = props
  return (
    <search className="shelf-bar">
      <div className="field shelf-search">
        <label htmlFor="shelf-search">Search</label>
        <input
          id="shelf-search"
          ref={props.search}
          type="search"
          autoComplete="off"
          spellCheck={false}
          maxLength={200}
          placeholder="name, number, supplier or end"
          value={ask.query}
          onChange={(event) => onChange({ ...ask, query: event.target.value })}
          onKeyDown={(event) => {
            if (event.key !== 'ArrowDown' && event.key !== 'Enter') return
            event.preventDefault()
            props.onLeave()
          }}
        />
      </div>
      <One
        label="Kind"
        all="every kind"
        of={PART_KINDS}
        chosen={ask.kinds?.[0]}
        word={(kind) => kind}
        onChoose={(kind) => onChange(only(ask, 'kinds', kind))}
      />
      <One
        label="State"
        all="every state"
        of={PART_STATES}
        chosen={ask.states?.[0]}
        word={(state) => state}
        onChoose={(state) => onChange(only(ask, 'states', state))}
      />
      <One
        label="With an end"
        all="of any family"
        of={END_FAMILIES}
        chosen={ask.families?.[0]}
        word={(family) => END_FAMILY_WORDS[family]}
        onChoose={(family) => onChange(only(ask, 'families', family))}
      />
      <One
        label="Sorted by"
        of={SHELF_SORTS}
        chosen={ask.sort}
        word={(sort) => sort}
        onChoose={(sort) => onChange({ ...ask, sort: sort ?? 'name' })}
      />
      <label className="tickable shelf-down">
        <input
          type="checkbox"
          checked={ask.descending ?? false}
          onChange={(event) => onChange({ ...ask, descending: event.target.checked })}
        />
        backwards
      </label>
    </search>
  )
}

/** The question with one filter set to one word, or without it. */
function only<K extends 'kinds' | 'states' | 'families'>(ask: Ask, key: K, word: NonNullable<Ask[K]>[number] | undefined): Ask {
  const { [key]: _, ...rest } = ask
  return word === undefined ? (rest as Ask) : { ...ask, [key]: [word] }
}

function One<T extends string>(props: {
  readonly label: string
  readonly all?: string
  readonly of: readonly T[]
  readonly chosen: T | undefined
  readonly word: (one: T) => string
  readonly onChoose: (one: T | undefined) => void
}) {
  const id = `shelf-${props.label.toLowerCase().replaceAll(' ', '-')}`
  return (
    <div className="field">
      <label htmlFor={id}>{props.label}</label>
      <select id={id} value={props.chosen ?? ''} onChange={(event) => props.onChoose(props.of.find((one) => one === event.target.value))}>
        {props.all !== undefined && <option value="">{props.all}</option>}
        {props.of.map((one) => (
          <option key={one} value={one}>
            {props.word(one)}
          </option>
        ))}
      </select>
    </div>
  )
}
