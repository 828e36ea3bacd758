import { useState } from 'react'
import { Button, ComboBox, Input, Label, ListBox, ListBoxItem, Popover } from 'react-aria-components'
import { useEnd } from '../../app/asking.ts'
import { sentences } from '../../app/build-file.ts'
import type { Units } from '../../app/queries.ts'
import { FieldShell } from '../fields/FieldShell.tsx'
import { QuantityField } from '../fields/PartField.tsx'
import { Sheet } from '../Sheet.tsx'
import { type Choice, FAMILIES, type Family, writeEnd } from './designations.ts'
import { EndReading } from './EndReading.tsx'

const GROUPS = [...new Set(FAMILIES.map((family) => family.group))]
const FIRST = FAMILIES[0] as Family
const BLANK: Choice = { size: '', sex: 'female', left: false, jamNut: false, length: '', diameter: '' }

/** Writes an end from a few choices: family, size, which of the two it is, hand. What comes out is read back by the program. */
export function EndChooser(props: { readonly units: Units; readonly onClose: () => void; readonly onChoose: (written: string) => void }) {
  const [family, setFamily] = useState(FIRST)
  const [choice, setChoice] = useState(BLANK)
  const change = (part: Partial<Choice>) => setChoice((now) => ({ ...now, ...part }))
  const ready = family.sizes.length === 0 || family.sizes.includes(choice.size)
  const written = ready ? writeEnd(family, choice) : ''
  const read = useEnd(written, props.units)
  return (
    <Sheet title="Write an end" wide onClose={props.onClose}>
      <div className="chooser">
        <FieldShell label="What kind of end">
          {({ id }) => (
            <select
              id={id}
              value={family.id}
              onChange={(event) => {
                const next = FAMILIES.find((one) => one.id === event.target.value) ?? FIRST
                setFamily(next)
                if (!next.sizes.includes(choice.size)) change({ size: '' })
              }}
            >
              {GROUPS.map((group) => (
                <optgroup key={group} label={group}>
                  {FAMILIES.filter((one) => one.group === group).map((one) => (
                    <option key={one.id} value={one.id}>
                      {one.label}
                    </option>
                  ))}
                </optgroup>
              ))}
            </select>
          )}
        </FieldShell>
        {family.sizes.length > 0 && <SizeBox key={family.id} family={family} size={choice.size} onChoose={(size) => change({ size })} />}
        <Asked family={family} choice={choice} change={change} />
      </div>
      <div className="chosen">
        <p>
          {written === '' ? (
            <span className="quiet">Choose a size, and the end is written here.</span>
          ) : (
            <code className="written">{written}</code>
          )}
        </p>
        <EndReading typed={written} units={props.units} />
        {written !== '' && read.data?.ok === false && <p className="field-wrong">{sentences(read.data.problems)}</p>}
      </div>
      <div className="sheet-foot">
        <Button
          className="button button-strong"
          isDisabled={written === '' || read.data?.ok === false}
          onPress={() => props.onChoose(written)}
        >
          Use this
        </Button>
        <Button className="button" onPress={props.onClose}>
          Close
        </Button>
      </div>
    </Sheet>
  )
}

function SizeBox(props: { readonly family: Family; readonly size: string; readonly onChoose: (size: string) => void }) {
  const items = props.family.sizes.map((size) => ({ id: size, name: size === '?' ? 'not known' : size }))
  return (
    <ComboBox
      className="field combo"
      defaultItems={items}
      selectedKey={props.size === '' ? null : props.size}
      onSelectionChange={(key) => props.onChoose(key === null ? '' : String(key))}
      menuTrigger="focus"
    >
      <Label>{props.family.sizeLabel}</Label>
      <div className="field-row">
        <Input spellCheck="false" />
        <Button className="button combo-open" aria-label={`All sizes of ${props.family.label}`}>
          ▾
        </Button>
      </div>
      <Popover className="menu-popover combo-list">
        <ListBox className="menu">
          {(item: { readonly id: string; readonly name: string }) => (
            <ListBoxItem className="menu-item" textValue={item.name}>
              {item.name}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </ComboBox>
  )
}

/** Only what the family asks for. */
function Asked(props: { readonly family: Family; readonly choice: Choice; readonly change: (part: Partial<Choice>) => void }) {
  const { family, choice, change } = props
  const asks = (what: Family['asks'][number]) => family.asks.includes(what)
  const taper = family.id === 'taper'
  const [male, female] = taper ? ['stud', 'hole'] : family.id === 'spline' ? ['male (shaft)', 'female (hub)'] : ['male', 'female']
  const measured = (label: string, hint: string, key: 'diameter' | 'length') => (
    <QuantityField
      label={label}
      dimension="length"
      hint={hint}
      value={choice[key]}
      problem={null}
      onChange={(value) => change({ [key]: value })}
    />
  )
  return (
    <>
      {asks('sex') && (
        <Pick
          legend="Which of the two"
          chosen={choice.sex}
          of={{ male, female }}
          onPick={(sex) => change({ sex: sex === 'male' ? 'male' : 'female' })}
        />
      )}
      {asks('hand') && (
        <Pick
          legend="Hand"
          chosen={choice.left ? 'left' : 'right'}
          of={{ right: 'right (usual)', left: 'left' }}
          onPick={(hand) => change({ left: hand === 'left' })}
        />
      )}
      {asks('large') && measured('Diameter at the large end', '0.85 in or 22 mm', 'diameter')}
      {asks('diameter') && measured('Diameter', '1 1/2 in or 38 mm', 'diameter')}
      {asks('bore') && measured('Inside diameter of the hose', '3/8 in or 10 mm', 'diameter')}
      {asks('engaged') && measured('Length it engages, where known', '1 1/4 in or 32 mm', 'length')}
      {asks('seat') &&
        measured(
          choice.sex === 'male' ? 'Length of the cone, where known' : 'Thickness it goes through, where known',
          '3/4 in or 19 mm',
          'length',
        )}
      {asks('jam nut') && (
        <label className="tickable">
          <input type="checkbox" checked={choice.jamNut} onChange={(event) => change({ jamNut: event.target.checked })} />
          turned to adjust, and locked by a jam nut
        </label>
      )}
    </>
  )
}

function Pick(props: {
  readonly legend: string
  readonly chosen: string
  readonly of: Readonly<Record<string, string>>
  readonly onPick: (value: string) => void
}) {
  return (
    <fieldset className="pick">
      <legend>{props.legend}</legend>
      {Object.entries(props.of).map(([value, label]) => (
        <label key={value} className="tickable">
          <input type="radio" name={props.legend} value={value} checked={props.chosen === value} onChange={() => props.onPick(value)} />
          {label}
        </label>
      ))}
    </fieldset>
  )
}
