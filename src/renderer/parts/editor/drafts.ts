import { useCallback, useSyncExternalStore } from 'react'
import type { PartFile } from '../../../shared/model/part.ts'
import { inOwnWindow } from '../../app/client.ts'
import { newKey, type PartForm } from './form.ts'

/** What is being typed about a part, and the part it was begun from (null: a new one). */
export interface Draft {
  readonly form: PartForm
  readonly from: PartFile | null
}

const KEY = 'steerwright-drafts'

/** The program's own window keeps its address from start to start; a browser's page gets another one each time, so only the tab's memory is of use. */
const store = (): Storage => (inOwnWindow() ? localStorage : sessionStorage)

function read(): Map<string, Draft> {
  try {
    const kept = JSON.parse(store().getItem(KEY) ?? '[]') as [string, Draft][]
    return new Map(
      kept.map(([key, draft]) => [
        key,
        { ...draft, form: { ...draft.form, ends: draft.form.ends.map((end) => ({ ...end, key: newKey() })) } },
      ]),
    )
  } catch (error) {
    console.info('Earlier drafts cannot be read:', error)
    return new Map()
  }
}

let drafts: ReadonlyMap<string, Draft> | null = null
const listeners = new Set<() => void>()

const all = (): ReadonlyMap<string, Draft> => {
  drafts ??= read()
  return drafts
}

function put(next: ReadonlyMap<string, Draft>): void {
  drafts = next
  for (const listener of listeners) listener()
  try {
    store().setItem(KEY, JSON.stringify([...next]))
  } catch (error) {
    console.info('Drafts live only as long as this page:', error)
  }
}

const subscribe = (listener: () => void) => {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

export const keyOfShelf = (part: string | null): string => (part === null ? 'shelf' : `shelf/${part}`)
export const keyOfBuild = (build: string, part: string | null): string => (part === null ? `build/${build}` : `build/${build}/${part}`)

/** Everything typed and not saved yet, by place. Going elsewhere loses none of it; a page loaded anew finds it again. */
export const useDrafts = (): ReadonlyMap<string, Draft> => useSyncExternalStore(subscribe, all)

/** The draft at one place, and how to change it (null: it is done with). */
export function useDraft(key: string): readonly [Draft | undefined, (draft: Draft | null) => void] {
  const draft = useDrafts().get(key)
  const change = useCallback(
    (next: Draft | null) => {
      const changed = new Map(all())
      if (next === null) changed.delete(key)
      else changed.set(key, next)
      put(changed)
    },
    [key],
  )
  return [draft, change]
}

/** A browser asks before it closes a tab that holds something typed. The program's own window needs no question: it keeps it. */
export function guardDrafts(): void {
  if (inOwnWindow()) return
  window.addEventListener('beforeunload', (event) => {
    if (all().size > 0) event.preventDefault()
  })
}
