import { type ReactNode, useCallback, useEffect, useMemo, useRef, useState } from 'react'
import type { Problem } from '../../../shared/contract/contract.ts'
import { PART_KINDS, type PartFile, type PartKind } from '../../../shared/model/part.ts'
import { usePartCheck } from '../../app/asking.ts'
import { useShortcut } from '../../app/keys.ts'
import { useNotice } from '../../app/notice.tsx'
import type { Units } from '../../app/queries.ts'
import { BUYING, describing, type Field } from '../fields/kinds.ts'
import { ChoiceField, PartField, TextField } from '../fields/PartField.tsx'
import { ProblemList } from '../ProblemList.tsx'
import { Sheet } from '../Sheet.tsx'
import type { Comparison, compare as compareBuilds } from '../what-if/compare.ts'
import { toTheDesk, WhatIfSheet } from '../what-if/WhatIfSheet.tsx'
import { useDraft } from './drafts.ts'
import { EndsEditor } from './EndsEditor.tsx'
import { blankForm, differs, formOf, idFrom, NEW_KIND, type PartForm, partOf } from './form.ts'

export interface Save {
  readonly form: PartForm
  readonly part: PartFile
  /** the part that the fields were laid out from; null for a new one */
  readonly from: PartFile | null
}

/**
 * The fields of a part. What is typed is kept as a draft until it is saved or thrown away on purpose, so going elsewhere loses
 * nothing; what is wrong is said at its field, and what was typed stays.
 */
export function PartEditor(props: {
  /** where the draft is kept */
  readonly place: string
  readonly stored: PartFile | null
  readonly units: Units
  readonly saving: string
  /** gives the problems met; none where it is saved */
  readonly onSave: (save: Save) => Promise<readonly Problem[]>
  /** what the part as typed would change in the plan of its build; absent where it is in none */
  readonly compare?: (save: Save) => ReturnType<typeof compareBuilds>
  /** what can be done about a refusal that is about no field */
  readonly remedy?: ((problems: readonly Problem[]) => ReactNode) | undefined
  readonly children?: ReactNode
}) {
  const { stored, onSave, compare } = props
  const [draft, setDraft] = useDraft(props.place)
  const laidOut = useMemo(() => (stored === null ? blankForm(NEW_KIND) : formOf(stored)), [stored])
  const form = draft?.form ?? laidOut
  const from = draft === undefined ? stored : draft.from
  const part = partOf(form)
  const check = usePartCheck(part, props.units)
  const [asked, setAsked] = useState(false)
  const [busy, setBusy] = useState(false)
  const [refused, setRefused] = useState<readonly Problem[]>([])
  const [leaving, setLeaving] = useState(false)
  const [compared, setCompared] = useState<Comparison | null>(null)
  const [attempts, setAttempts] = useState(0)
  const box = useRef<HTMLFormElement>(null)
  // by then the fields know what is wrong with them, so the first that is can be gone to
  useEffect(() => {
    if (attempts > 0) box.current?.querySelector<HTMLElement>('[aria-invalid="true"], .editor-refused')?.focus()
  }, [attempts])
  const tell = useNotice()

  const change = (next: PartForm) => setDraft(differs(next, from) ? { form: next, from } : null)
  const set = (key: string, value: string) => change({ ...form, values: { ...form.values, [key]: value } })
  const fields = [...describing(form.kind), ...BUYING]
  const typedAt = (place: string): boolean => asked || textAt(form, place) !== ''
  const wrong = [...refused, ...(check.data?.ok === false ? check.data.problems : [])]
  const problemAt = (place: string): string | null =>
    typedAt(place) ? (wrong.find((problem) => problem.place === place)?.sentence ?? null) : null
  const elsewhere = refused.filter((problem) => !hasField(problem.place, fields))

  const refuse = useCallback(
    (what: string, problems: readonly Problem[]) => {
      setRefused(problems)
      tell(`${what}: ${problems.length === 1 ? 'one thing is' : `${problems.length} things are`} to be put right.`, 'trouble')
      setAttempts((now) => now + 1)
    },
    [tell],
  )
  const save = useCallback(async () => {
    if (busy) return false
    setAsked(true)
    setBusy(true)
    setCompared(null)
    const problems = await onSave({ form, part, from })
    setBusy(false)
    if (problems.length > 0) {
      refuse('Not saved', problems)
      return false
    }
    setRefused([])
    setAsked(false)
    setDraft(null)
    return true
  }, [busy, onSave, form, part, from, setDraft, refuse])
  useShortcut('s', save)
  const drop = () => {
    setLeaving(false)
    setCompared(null)
    setAsked(false)
    setRefused([])
    setDraft(null)
  }
  // its button is never disabled meanwhile: the focus comes back to it from the sheet
  const look = async () => {
    if (busy || compare === undefined) return
    setAsked(true)
    setBusy(true)
    const answer = await compare({ form, part, from })
    setBusy(false)
    if (!answer.ok) return refuse('Not compared', answer.problems)
    setRefused([])
    setCompared(answer.value)
  }

  return (
    <form
      ref={box}
      className="editor"
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        void save()
      }}
      onChange={() => refused.length > 0 && setRefused([])}
    >
      {elsewhere.length > 0 && (
        <section className="trouble editor-refused" role="alert" tabIndex={-1} aria-label="Not saved">
          <ProblemList problems={elsewhere} />
          {props.remedy?.(elsewhere)}
        </section>
      )}
      {props.children}
      <section aria-labelledby="what">
        <h2 id="what">What it is</h2>
        <div className="fields">
          <ChoiceField
            label="Kind"
            needed
            choices={PART_KINDS}
            value={form.kind}
            problem={problemAt('kind')}
            onChange={(kind) => change({ ...form, kind: kind as PartKind })}
          />
          <FieldsOf fields={describing(form.kind)} form={form} problemAt={problemAt} set={set} />
          {stored === null && (
            <TextField
              label="Id in files"
              hint="small letters, figures and hyphens"
              value={form.idFollows ? idFrom(form.values.name ?? '') : form.id}
              problem={problemAt('id')}
              onChange={(id) => change({ ...form, id, idFollows: false })}
            />
          )}
        </div>
      </section>
      <EndsEditor ends={form.ends} units={props.units} problemAt={problemAt} onChange={(ends) => change({ ...form, ends })} />
      <section aria-labelledby="buying">
        <h2 id="buying">Where it comes from</h2>
        <div className="fields">
          <FieldsOf fields={BUYING} form={form} problemAt={problemAt} set={set} />
        </div>
      </section>
      <div className="editor-foot">
        <button type="submit" className="button button-strong" disabled={busy}>
          {busy ? 'Saving…' : props.saving}
        </button>
        {draft !== undefined && (
          <>
            {compare !== undefined && (
              <button type="button" className="button" aria-haspopup="dialog" onClick={() => void look()}>
                What would change?
              </button>
            )}
            <button type="button" className="button" onClick={() => setLeaving(true)}>
              Throw away what I typed…
            </button>
            <p className="quiet">Not saved yet. It stays here while you look elsewhere.</p>
          </>
        )}
      </div>
      {leaving && (
        <Sheet title="Throw away what you typed?" role="alertdialog" onClose={() => setLeaving(false)}>
          <p>{stored === null ? 'The new part will be empty again.' : 'The fields will show the part as it is stored.'}</p>
          <div className="sheet-foot">
            <button type="button" className="button" onClick={() => setLeaving(false)}>
              Keep it
            </button>
            <button type="button" className="button button-danger" onClick={drop}>
              Throw it away
            </button>
          </div>
        </Sheet>
      )}
      {compared !== null && (
        <WhatIfSheet
          comparison={compared}
          onKeep={() => void save().then((saved) => saved && toTheDesk())}
          onBack={() => setCompared(null)}
          onDrop={() => {
            drop()
            toTheDesk()
          }}
        />
      )}
    </form>
  )
}

function FieldsOf(props: {
  readonly fields: readonly Field[]
  readonly form: PartForm
  readonly problemAt: (place: string) => string | null
  readonly set: (key: string, value: string) => void
}) {
  return props.fields.map((field) => (
    <PartField
      key={field.key}
      field={field}
      value={props.form.values[field.key] ?? ''}
      problem={props.problemAt(field.key)}
      onChange={(value) => props.set(field.key, value)}
    />
  ))
}

/** Place of a fault in an end: which end, and which of its fields. */
const END = /^ends\[(\d+)\]\.(name|connection|note)$/

function textAt(form: PartForm, place: string): string {
  const end = END.exec(place)
  if (end !== null) return form.ends[Number(end[1])]?.[end[2] as 'name' | 'connection' | 'note'] ?? ''
  return place === 'id' ? (form.idFollows ? (form.values.name ?? '') : form.id) : (form.values[place] ?? '')
}

const hasField = (place: string, fields: readonly Field[]): boolean =>
  END.test(place) || place === 'id' || place === 'kind' || fields.some((field) => field.key === place)
