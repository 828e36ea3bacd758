import { useCallback, useEffect, useMemo, useRef, useState } from 'react'
import { Link } from 'wouter'
import type { Problem } from '../../../shared/contract/contract.ts'
import type { BuildFile } from '../../../shared/model/build.ts'
import type { FindingText } from '../../../shared/report/document.ts'
import { CHANGED_MEANWHILE, useBuildFile, useChange, useReread, useStoredNow } from '../../app/build-file.ts'
import { useKept } from '../../app/kept.ts'
import { useShortcut } from '../../app/keys.ts'
import { useNotice } from '../../app/notice.tsx'
import { type Units, useBuild } from '../../app/queries.ts'
import { useUnits } from '../../app/units.ts'
import { Arrived } from '../../parts/desk/Arrived.tsx'
import { Desk, limitsAddress } from '../../parts/desk/Desk.tsx'
import { Mark } from '../../parts/Mark.tsx'
import { ProblemList } from '../../parts/ProblemList.tsx'
import { type Comparison, compare } from '../../parts/what-if/compare.ts'
import { toTheDesk, WhatIfSheet } from '../../parts/what-if/WhatIfSheet.tsx'
import { GROUPS } from './fields.ts'
import { differs, formOf, type GeometryForm, withForm } from './form.ts'
import { GroupFields } from './GroupFields.tsx'
import { LimitsFields } from './LimitsFields.tsx'

/** Where the joints of the steering are and what can end its travel, group by group, each with a picture of how it is measured. */
export function Geometry({ id, field }: { readonly id: string; readonly field: string | null }) {
  const read = useBuildFile(id)
  const file = read.data?.ok === true ? read.data.value.file : undefined
  const [units, setUnits] = useUnits(file?.build.units ?? 'inch')
  return (
    <Desk
      title="Geometry and limits"
      {...(file === undefined ? {} : { below: `${file.build.name} · revision ${file.build.revision}` })}
      here="geometry"
      slim
      build={{ id, name: file?.build.name ?? 'Build' }}
      units={units}
      onUnits={setUnits}
    >
      <Arrived of={read} what="Reading the build">
        {(value) => <Fields id={id} file={value.file} units={units} field={field} />}
      </Arrived>
    </Desk>
  )
}

interface Draft {
  readonly form: GeometryForm
  readonly from: GeometryForm
}

/** Which group a place of the file is edited in. */
const groupOf = (place: string): string =>
  place === 'limits' || place.startsWith('limits.')
    ? 'limits'
    : (GROUPS.find((group) => group.fields.some((one) => one.place === place || one.place.startsWith(`${place}.`)))?.id ?? 'axle')

const askedIn = (group: string, findings: readonly FindingText[]): readonly FindingText[] =>
  findings.filter(
    ({ code, about }) =>
      code === 'measure' && ['axle', 'geometry', 'limits'].includes(String(about[0])) && groupOf(about.join('.')) === group,
  )

/** The field for a place; for a whole group its first empty one, else its heading. */
function fieldFor(box: HTMLElement, place: string): HTMLElement | null {
  const inside = '[data-place] input, [data-place] select'
  const own = box.querySelector<HTMLElement>(`[data-place="${CSS.escape(place)}"] :is(input, select)`)
  if (own !== null) return own
  const group = box.querySelector<HTMLElement>(`#group-${groupOf(place)}`)
  const empty = [...(group?.querySelectorAll<HTMLInputElement | HTMLSelectElement>(inside) ?? [])].find((one) => one.value === '')
  return empty ?? group?.querySelector<HTMLElement>('h2') ?? null
}

function Fields(props: { readonly id: string; readonly file: BuildFile; readonly units: Units; readonly field: string | null }) {
  const { id } = props
  const file = useStoredNow(id)() ?? props.file
  const [draft, keep] = useKept<Draft>(`geometry/${id}`)
  const laidOut = useMemo(() => formOf(file), [file])
  const form = draft?.form ?? laidOut
  const from = draft?.from ?? laidOut
  const plan = useBuild(id, props.units)
  const findings = plan.data?.ok === true ? plan.data.value.findings : []
  const change = useChange(id)
  const reread = useReread(id)
  const tell = useNotice()
  const [busy, setBusy] = useState(false)
  const [refused, setRefused] = useState<readonly Problem[]>([])
  const [compared, setCompared] = useState<Comparison | null>(null)
  const box = useRef<HTMLFormElement>(null)

  // where a finding led to
  useEffect(() => {
    if (props.field !== null && box.current !== null) fieldFor(box.current, props.field)?.focus()
  }, [props.field])

  const set = (next: GeometryForm) => {
    setRefused([])
    keep(differs(next, from) ? { form: next, from } : null)
  }
  const problemAt = (place: string): string | null => refused.find((problem) => problem.place === place)?.sentence ?? null
  const atField = ({ place }: Problem) => /^(?:axle|geometry|limits|vehicle\.wheelbase)/.test(place)
  const toRight = useCallback(
    (what: string, count: number) => {
      tell(`${what}: ${count === 1 ? 'one thing is' : `${count} things are`} to be put right.`, 'trouble')
      setTimeout(() => box.current?.querySelector<HTMLElement>('[aria-invalid="true"], .editor-refused')?.focus(), 60)
    },
    [tell],
  )
  const save = useCallback(async () => {
    if (busy || draft === undefined) return false
    setBusy(true)
    setCompared(null)
    const problems = await change((now) => withForm(now, draft.form, draft.from))
    setBusy(false)
    setRefused(problems)
    if (problems.length === 0) {
      keep(null)
      tell('The geometry is saved.')
      return true
    }
    if (problems.some((problem) => problem.code === CHANGED_MEANWHILE)) {
      await reread()
      tell(
        'Not saved yet: this build was changed elsewhere meanwhile and was read anew. What you typed stays; save again to put it there.',
        'trouble',
      )
      return false
    }
    toRight('Not saved', problems.length)
    return false
  }, [busy, draft, change, keep, reread, tell, toRight])
  useShortcut('s', save)
  // its button is never disabled meanwhile: the focus comes back to it from the sheet
  const look = async () => {
    if (busy || draft === undefined) return
    setBusy(true)
    const answer = await compare(id, withForm(file, draft.form, draft.from), props.units)
    setBusy(false)
    setRefused(answer.ok ? [] : answer.problems)
    if (answer.ok) setCompared(answer.value)
    else toRight('Not compared', answer.problems.length)
  }

  const elsewhere = refused.filter((problem) => !atField(problem))
  const groups = [...GROUPS.map(({ id: key, title }) => ({ key, title })), { key: 'limits', title: 'What can end the travel' }]
  return (
    <form
      ref={box}
      className="geometry"
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        void save()
      }}
    >
      <nav className="geometry-nav" aria-label="Groups">
        <ul className="plain">
          {groups.map(({ key, title }) => (
            <li key={key}>
              <button
                type="button"
                className="geometry-go"
                onClick={() => {
                  const heading = box.current?.querySelector<HTMLElement>(`#title-${key}`)
                  heading?.focus()
                  heading?.scrollIntoView({ block: 'start' })
                }}
              >
                <Mark state={askedIn(key, findings).length > 0 ? 'look' : 'none'} />
                <span>
                  {title}
                  {askedIn(key, findings).length > 0 && <span className="second">to measure</span>}
                </span>
              </button>
            </li>
          ))}
        </ul>
      </nav>
      <div className="geometry-groups">
        {elsewhere.length > 0 && (
          <section className="trouble editor-refused" role="alert" tabIndex={-1} aria-label="Not saved">
            <ProblemList problems={elsewhere} />
          </section>
        )}
        {GROUPS.map((group) => (
          <GroupFields
            key={group.id}
            group={group}
            asked={askedIn(group.id, findings)}
            values={form.values}
            problemAt={problemAt}
            onChange={(place, value) => set({ ...form, values: { ...form.values, [place]: value } })}
          />
        ))}
        <LimitsFields
          limits={form.limits}
          asked={askedIn('limits', findings)}
          problemAt={problemAt}
          onChange={(limits) => set({ ...form, limits })}
        />
        <div className="editor-foot">
          <button type="submit" className="button button-strong" disabled={busy || draft === undefined}>
            Save
          </button>
          {draft !== undefined && (
            <>
              <button type="button" className="button" aria-haspopup="dialog" onClick={() => void look()}>
                What would change?
              </button>
              <button type="button" className="button" onClick={() => set(from)}>
                Throw away what is typed
              </button>
            </>
          )}
          <span className="quiet">{draft === undefined ? 'Saved as it stands.' : 'With changes not saved yet.'}</span>
          <Link href={limitsAddress(id)} className="button">
            See what stops the wheels
          </Link>
        </div>
      </div>
      {compared !== null && (
        <WhatIfSheet
          comparison={compared}
          onKeep={() => void save().then((saved) => saved && toTheDesk())}
          onBack={() => setCompared(null)}
          onDrop={() => {
            setCompared(null)
            set(from)
            toTheDesk()
          }}
        />
      )}
    </form>
  )
}
