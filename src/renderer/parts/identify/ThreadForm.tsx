import { FlareAngle, SealPlaces } from '../../drawings/measuring/seals.tsx'
import { InsideCrest, OutsideCrest, PitchOverTurns } from '../../drawings/measuring/threads.tsx'
import { FieldShell } from '../fields/FieldShell.tsx'
import { ReadingField } from './ReadingField.tsx'
import { SEALS, type Typed } from './readings.ts'

interface Props {
  readonly typed: Typed
  readonly problemAt: (name: string) => string | null
  readonly onChange: (changed: Typed) => void
}

/** What is read off a thread, step by step, each with a picture of where the tool goes. */
export function ThreadForm({ typed, problemAt, onChange }: Props) {
  const inside = typed.side === 'inside'
  const crest = inside ? 'id' : 'od'
  const byCount = typed.by === 'tpi'
  const set = (name: string, value: string) => onChange({ ...typed, [name]: value })
  const turn = (from: string, to: string, more: Typed) => onChange({ ...typed, ...more, [to]: typed[from] ?? '', [from]: '' })
  return (
    <>
      <section className="step" aria-labelledby="step-crest">
        <div className="step-fields">
          <h2 id="step-crest">1 Over the crests</h2>
          <Choices
            legend="Where is the thread"
            name="side"
            chosen={inside ? 'inside' : 'outside'}
            of={{ outside: 'outside (male)', inside: 'inside (female)' }}
            onChoose={(side) => side !== (inside ? 'inside' : 'outside') && turn(crest, inside ? 'od' : 'id', { side })}
          />
          <ReadingField
            reading={{
              name: crest,
              label: inside ? 'Diameter inside, at the crests' : 'Diameter outside, at the crests',
              hint: '22.1 mm',
              length: true,
            }}
            value={typed[crest] ?? ''}
            problem={problemAt(crest)}
            onChange={(value) => set(crest, value)}
          />
          <ReadingField
            reading={{ name: 'u', label: 'Within ±', hint: '0.05 mm', length: true }}
            value={typed.u ?? ''}
            problem={problemAt('u')}
            onChange={(value) => set('u', value)}
          />
        </div>
        {inside ? <InsideCrest /> : <OutsideCrest />}
      </section>
      <section className="step" aria-labelledby="step-pitch">
        <div className="step-fields">
          <h2 id="step-pitch">2 Pitch</h2>
          <Choices
            legend="How it is read"
            name="by"
            chosen={byCount ? 'tpi' : 'pitch'}
            of={{ pitch: 'crest to crest', tpi: 'threads per inch' }}
            onChoose={(by) => by !== (byCount ? 'tpi' : 'pitch') && onChange({ ...typed, by, pitch: '', tpi: '' })}
          />
          {byCount ? (
            <ReadingField
              reading={{ name: 'tpi', label: 'Threads per inch', hint: '18', length: false }}
              value={typed.tpi ?? ''}
              problem={problemAt('tpi')}
              onChange={(value) => set('tpi', value)}
            />
          ) : (
            <ReadingField
              reading={{ name: 'pitch', label: 'Pitch', hint: '1.81 mm', length: true }}
              value={typed.pitch ?? ''}
              problem={problemAt('pitch')}
              onChange={(value) => set('pitch', value)}
            />
          )}
          <ReadingField
            reading={{ name: 'upitch', label: 'Within ±', hint: '0.03 mm', length: true }}
            value={typed.upitch ?? ''}
            problem={problemAt('upitch')}
            onChange={(value) => set('upitch', value)}
          />
        </div>
        <PitchOverTurns />
      </section>
      <section className="step" aria-labelledby="step-seal">
        <div className="step-fields">
          <h2 id="step-seal">3 What it looks like</h2>
          <FieldShell label="How it seals" problem={problemAt('seal')}>
            {({ id, describedBy }) => (
              <select id={id} aria-describedby={describedBy} value={typed.seal ?? ''} onChange={(event) => set('seal', event.target.value)}>
                <option value="">not looked at</option>
                {Object.entries(SEALS).map(([seal, words]) => (
                  <option key={seal} value={seal}>
                    {words}
                  </option>
                ))}
              </select>
            )}
          </FieldShell>
          <Choices
            legend="Along the thread"
            name="taper"
            chosen={typed.taper ?? ''}
            of={{ '': 'not looked at', no: 'straight', yes: 'tapered' }}
            onChoose={(taper) => set('taper', taper)}
          />
          <Choices
            legend="Hand"
            name="hand"
            chosen={typed.hand ?? ''}
            of={{ '': 'not looked at', right: 'right', left: 'left' }}
            onChoose={(hand) => set('hand', hand)}
          />
          <Choices
            legend="Angle between the flanks"
            name="angle"
            chosen={typed.angle ?? ''}
            of={{ '': 'not looked at', '60': '60°', '55': '55°' }}
            onChoose={(angle) => set('angle', angle)}
          />
        </div>
        <div className="plates">
          <FlareAngle />
          <SealPlaces />
        </div>
      </section>
    </>
  )
}

function Choices(props: {
  readonly legend: string
  readonly name: string
  readonly chosen: string
  readonly of: Readonly<Record<string, string>>
  readonly onChoose: (value: string) => void
}) {
  // what is not looked at comes first, wherever an object keeps its keys
  const entries = Object.entries(props.of).sort(([a], [b]) => Number(a !== '') - Number(b !== ''))
  return (
    <fieldset className="pick">
      <legend>{props.legend}</legend>
      {entries.map(([value, label]) => (
        <label key={value} className="tickable">
          <input type="radio" name={props.name} value={value} checked={props.chosen === value} onChange={() => props.onChoose(value)} />
          {label}
        </label>
      ))}
    </fieldset>
  )
}
