import { useCallback, useEffect, useRef, useState } from 'react'
import type { Problem } from '../../../shared/contract/contract.ts'
import { CHANGED_MEANWHILE, useChange, useReread, useStoredNow } from '../../app/build-file.ts'
import { keepNow, keptNow, useKept } from '../../app/kept.ts'
import { useNotice } from '../../app/notice.tsx'
import { formOf, type SurveyForm, sayingOf, surveyOf } from './form.ts'

/** What is filled in and not saved yet, and what the stored survey said when it was begun. */
interface Kept {
  readonly form: SurveyForm
  readonly from: string
}

/** How the survey stands against the database. */
export type Standing =
  | { readonly kind: 'saved' }
  | { readonly kind: 'saving' }
  /** method or tape are not said yet, and without them there is no survey to save */
  | { readonly kind: 'incomplete' }
  /** the survey itself was changed elsewhere */
  | { readonly kind: 'two' }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] }

/**
 * The survey of a build while it is filled in. Every change is kept in the window at once and written over the build it was
 * made from; what else was changed elsewhere meanwhile stays as it is there.
 */
export function useSurvey(id: string) {
  const key = `survey/${id}`
  const [kept] = useKept<Kept>(key)
  const storedNow = useStoredNow(id)
  const form = kept?.form ?? formOf(storedNow()?.survey)
  const [standing, setStanding] = useState<Standing>({ kind: 'saved' })
  const change = useChange(id)
  const reread = useReread(id)
  const tell = useNotice()
  const busy = useRef(false)
  const again = useRef(false)

  const saveOnce = useCallback(
    async (mine: boolean): Promise<Standing> => {
      const now = keptNow<Kept>(key)
      if (now === undefined) return { kind: 'saved' }
      const survey = surveyOf(now.form)
      if (survey === null) return { kind: 'incomplete' }
      let two = false
      const problems = await change((build) => {
        const there = sayingOf(build.survey)
        if (there === JSON.stringify(now.form)) return null
        two = !mine && there !== now.from
        return two ? null : { ...build, survey }
      })
      if (two) return { kind: 'two' }
      if (problems.some((problem) => problem.code === CHANGED_MEANWHILE)) {
        await reread()
        tell('This build was changed elsewhere meanwhile. It was read anew, and your survey is put to it; nothing of either is lost.')
        return saveOnce(mine)
      }
      if (problems.length > 0) return { kind: 'refused', problems }
      const after = keptNow<Kept>(key)
      if (after === now) keepNow(key, null)
      else if (after !== undefined) {
        keepNow<Kept>(key, { form: after.form, from: JSON.stringify(now.form) })
        again.current = true
      }
      return { kind: 'saved' }
    },
    [key, change, reread, tell],
  )
  const save = useCallback(
    async (mine = false) => {
      if (busy.current) {
        again.current = true
        return
      }
      busy.current = true
      setStanding({ kind: 'saving' })
      let now: Standing
      do {
        again.current = false
        now = await saveOnce(mine)
      } while (again.current)
      busy.current = false
      setStanding(now)
    },
    [saveOnce],
  )
  // what an earlier page left unsaved is tried again
  useEffect(() => {
    if (keptNow(key) !== undefined) void save()
  }, [key, save])

  const set = useCallback(
    (to: Partial<SurveyForm> | ((form: SurveyForm) => Partial<SurveyForm>)) => {
      const now = keptNow<Kept>(key)
      const stored = storedNow()?.survey
      const before = now?.form ?? formOf(stored)
      const patch = typeof to === 'function' ? to(before) : to
      keepNow<Kept>(key, { form: { ...before, ...patch }, from: now?.from ?? sayingOf(stored) })
      void save()
    },
    [key, storedNow, save],
  )
  return {
    form,
    standing,
    set,
    retry: () => void save(),
    keepMine: () => void save(true),
    takeTheirs: () => {
      keepNow(key, null)
      setStanding({ kind: 'saved' })
    },
  }
}

export type Filling = ReturnType<typeof useSurvey>
