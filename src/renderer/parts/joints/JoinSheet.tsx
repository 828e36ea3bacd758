import { useState } from 'react'
import { Button } from 'react-aria-components'
import type { Candidate } from '../../../shared/contract/contract.ts'
import type { JointAid } from '../../../shared/model/joint.ts'
import { useCandidates, useVerdict } from '../../app/asking.ts'
import type { Units } from '../../app/queries.ts'
import { Arrived } from '../desk/Arrived.tsx'
import { FieldShell } from '../fields/FieldShell.tsx'
import { StateTag } from '../Mark.tsx'
import { Scroller } from '../Scroller.tsx'
import { Sheet } from '../Sheet.tsx'
import { Aids } from './Aids.tsx'
import { VerdictView } from './VerdictView.tsx'

export interface From {
  /** "part/end" */
  readonly ref: string
  readonly part: string
  readonly end: string
  readonly connection: string
}

/** Picks what an end is joined to: every other free end with the verdict beside it, what fits first. */
export function JoinSheet(props: {
  readonly build: string
  readonly revision: number
  readonly from: From
  readonly units: Units
  readonly onClose: () => void
  readonly onJoin: (to: string, aids: readonly JointAid[]) => Promise<void>
}) {
  const { from, units } = props
  const [picked, setPicked] = useState<Candidate | null>(null)
  const candidates = useCandidates(props.build, props.revision, from.ref, units)
  return (
    <Sheet title={`Join ${from.part}, ${from.end}`} wide onClose={props.onClose}>
      <p>
        <code>{from.connection}</code>
      </p>
      {picked === null ? (
        <Arrived of={candidates} what="Trying every free end">
          {(value) => <Choose candidates={value.candidates} onPick={setPicked} />}
        </Arrived>
      ) : (
        <Picked {...props} picked={picked} onBack={() => setPicked(null)} />
      )}
      {picked === null && (
        <div className="sheet-foot">
          <Button className="button" onPress={props.onClose}>
            Close
          </Button>
        </div>
      )}
    </Sheet>
  )
}

function Choose(props: { readonly candidates: readonly Candidate[]; readonly onPick: (candidate: Candidate) => void }) {
  const [words, setWords] = useState('')
  const asked = words.toLowerCase().split(/\s+/).filter(Boolean)
  const shown = props.candidates.filter((one) => {
    const text = `${one.part} ${one.name} ${one.connection}`.toLowerCase()
    return asked.every((word) => text.includes(word))
  })
  if (props.candidates.length === 0) return <p>No other part of this build has a free end. Add a part first.</p>
  return (
    <>
      <FieldShell label="Find an end" hint="part, end or thread">
        {({ id, describedBy }) => (
          <input
            id={id}
            type="search"
            autoComplete="off"
            spellCheck={false}
            aria-describedby={describedBy}
            value={words}
            onChange={(event) => setWords(event.target.value)}
          />
        )}
      </FieldShell>
      <p role="status" className="quiet">
        {shown.length} of {props.candidates.length} free ends, what fits first
      </p>
      <Scroller label="Free ends" className="pick-list">
        <ul className="choices">
          {shown.map((one) => (
            <li key={one.end}>
              <Button className="choice candidate" onPress={() => props.onPick(one)}>
                <StateTag state={one.state} text={one.word} />
                <span className="choice-text">
                  <span>
                    {one.part}, {one.name}
                    {one.leftOpen && <span className="quiet"> (left open)</span>}
                  </span>
                  <span className="quiet">{one.connection}</span>
                  {one.because !== null && <span className="quiet">{one.because}</span>}
                </span>
              </Button>
            </li>
          ))}
        </ul>
      </Scroller>
    </>
  )
}

function Picked(props: {
  readonly from: From
  readonly picked: Candidate
  readonly units: Units
  readonly onBack: () => void
  readonly onJoin: (to: string, aids: readonly JointAid[]) => Promise<void>
}) {
  const { picked } = props
  const verdict = useVerdict(props.from.connection, picked.connection, props.units)
  const [aids, setAids] = useState<readonly JointAid[]>([])
  const [busy, setBusy] = useState(false)
  const good = picked.kind === 'fits' || picked.kind === 'fits if'
  return (
    <>
      <p>
        with <strong>{`${picked.part}, ${picked.name}`}</strong> <code>{picked.connection}</code>
      </p>
      <Arrived of={verdict} what="Judging">
        {(value) => <VerdictView verdict={value} />}
      </Arrived>
      <Aids
        legend="What goes with it"
        chosen={aids}
        onToggle={(aid) => setAids((now) => (now.includes(aid) ? now.filter((one) => one !== aid) : [...now, aid]))}
      />
      <div className="sheet-foot">
        <Button
          className={good ? 'button button-strong' : 'button'}
          isDisabled={busy}
          onPress={() => {
            setBusy(true)
            void props.onJoin(picked.end, aids)
          }}
        >
          {good ? 'Join these two' : 'Join them all the same'}
        </Button>
        <Button className="button" onPress={props.onBack}>
          ← Another end
        </Button>
      </div>
    </>
  )
}
