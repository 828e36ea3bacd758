import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useLocation } from 'wouter'
import { sentences } from '../../app/build-file.ts'
import { call, messageOf } from '../../app/client.ts'
import { useNotice } from '../../app/notice.tsx'
import { forgetAll, type Units } from '../../app/queries.ts'
import { partsAddress } from '../desk/Desk.tsx'
import { ChoiceField, TextField } from '../fields/PartField.tsx'
import { Sheet } from '../Sheet.tsx'

/** Begins a build: its name, the vehicle it is for, and the units its numbers are shown in first. */
export function NewBuild({ onClose }: { readonly onClose: () => void }) {
  const [name, setName] = useState('')
  const [vehicle, setVehicle] = useState('')
  const [units, setUnits] = useState<Units>('inch')
  const [asked, setAsked] = useState(false)
  const [refused, setRefused] = useState<string | null>(null)
  const [busy, setBusy] = useState(false)
  const [, go] = useLocation()
  const tell = useNotice()
  const missing = (typed: string, what: string): string | null => (asked && typed.trim() === '' ? what : null)

  const create = async () => {
    setAsked(true)
    if (busy || name.trim() === '' || vehicle.trim() === '') return
    setBusy(true)
    try {
      const answer = await call('builds.create', { name: name.trim(), vehicle: vehicle.trim(), units })
      if (answer.ok) {
        await forgetAll()
        go(partsAddress(answer.value.id))
        tell(`${name.trim()} is begun. It has no parts yet.`)
        return
      }
      setRefused(sentences(answer.problems))
    } catch (error) {
      setRefused(messageOf(error))
    }
    setBusy(false)
  }
  return (
    <Sheet title="New build" onClose={onClose}>
      <form
        className="fields"
        noValidate
        onSubmit={(event) => {
          event.preventDefault()
          void create()
        }}
      >
        <TextField
          label="Name of the build"
          hint="such as Front axle and assist"
          needed
          value={name}
          problem={missing(name, 'Give the build a name.')}
          onChange={setName}
        />
        <TextField
          label="Vehicle"
          hint="what you call it"
          needed
          value={vehicle}
          problem={missing(vehicle, 'Say which vehicle it is for.')}
          onChange={setVehicle}
        />
        <ChoiceField
          label="Units shown first"
          needed
          choices={['inch', 'metric']}
          value={units}
          problem={null}
          onChange={(chosen) => setUnits(chosen === 'metric' ? 'metric' : 'inch')}
        />
        {refused !== null && (
          <p className="field-wrong" role="alert">
            {refused}
          </p>
        )}
        <div className="sheet-foot">
          <Button type="submit" className="button button-strong" isDisabled={busy}>
            {busy ? 'Beginning…' : 'Begin'}
          </Button>
          <Button className="button" onPress={onClose}>
            Close
          </Button>
        </div>
      </form>
    </Sheet>
  )
}
